import { isBond, knownBonds } from '../bonding/bond-choice.ts';
import { components } from '../bonding/components.ts';
import type { BondingGraph } from '../bonding/graph-builder.ts';
import type { Tie } from '../bonding/tie.ts';
import type { RangedBranch } from '../currents/bounds.ts';
import { joints } from '../materials/joints.ts';
import { hull, type Interval, middle } from '../units/interval.ts';

/** Nodes and branches of one bonded group, by index. */
export interface GroupNetwork {
  readonly nodes: readonly string[];
  readonly indexOf: ReadonlyMap<string, number>;
  readonly branches: readonly RangedBranch[];
  /** The part that each branch belongs to. */
  readonly parts: readonly string[];
  /** Which span of a conductor each branch is; null: none. */
  readonly spans: readonly (number | null)[];
}

/** A joint of a kind that nobody knows is one of the kinds there are. */
const anyJointOhm: Interval = joints
  .filter((j) => j.name !== 'none')
  .map((j) => j.resistanceOhm)
  .reduce(hull);

/**
 * The pieces of metal that bonds join, each as a network of resistances: bonds alone, as an instrument sees them with lines
 * lifted. Linear time, but for the sorting of ids.
 */
export function groupNetworks(graph: BondingGraph): readonly GroupNetwork[] {
  const pieces = components(graph, knownBonds(graph)).map((nodes) => ({
    nodes,
    indexOf: new Map(nodes.map((id, i) => [id, i])),
    branches: [] as RangedBranch[],
    parts: [] as string[],
    spans: [] as (number | null)[],
  }));
  const pieceOf = new Map(pieces.flatMap((piece) => piece.nodes.map((id) => [id, piece] as const)));
  graph.forEachEdge((_key, tie, a, b, factsA, factsB) => {
    if (tie.is !== 'there' || !isBond(tie)) return;
    const { indexOf, branches, parts, spans } = pieceOf.get(a)!;
    const atJoint = factsA.kind === 'joint' || factsB.kind === 'joint';
    parts.push(tie.part);
    spans.push(tie.span ?? null);
    branches.push({ from: indexOf.get(a)!, to: indexOf.get(b)!, ...rangeOf(tie, atJoint) });
  });
  return pieces;
}

/**
 * A tie of unknown resistance may be anything from 0 up. A fresh tie by metal of no known section, such as a tower's own
 * steel, counts from 0 up; its figure is not guessed.
 */
function rangeOf(tie: Tie, atJoint: boolean): Pick<RangedBranch, 'resistanceOhm' | 'nominalOhm'> {
  const known = tie.resistanceOhm ?? (tie.body === 'contact' && atJoint ? anyJointOhm : null);
  if (known === null) return { resistanceOhm: { low: 0, high: Number.POSITIVE_INFINITY }, nominalOhm: null };
  return { resistanceOhm: known, nominalOhm: middle(known) };
}
