import { isBond, knownBonds, possibleBonds } from '../bonding/bond-choice.ts';
import { components } from '../bonding/components.ts';
import type { BondingGraph } from '../bonding/graph-builder.ts';
import type { Tie } from '../bonding/tie.ts';
import type { RangedBranch } from '../currents/bounds.ts';
import { joints } from '../materials/joints.ts';
import { hull, type Interval, middle } from '../units/interval.ts';

/** Nodes and branches of what hangs together by bonds that are there or may be, by index. */
export interface GroupNetwork {
  readonly nodes: readonly string[];
  readonly indexOf: ReadonlyMap<string, number>;
  readonly branches: readonly RangedBranch[];
  /** The part that each branch belongs to. */
  readonly parts: readonly string[];
  /** Which span of a conductor each branch is; null: none. */
  readonly spans: readonly (number | null)[];
  /** Nodes of equal number hang together by bonds that are known to be there. */
  readonly bonded: readonly number[];
}

/** A joint of a kind that nobody knows is one of the kinds there are. */
const anyJointOhm: Interval = joints
  .filter((j) => j.name !== 'none')
  .map((j) => j.resistanceOhm)
  .reduce(hull);

/**
 * The pieces of metal that bonds join, each as a network of resistances: bonds alone, as an instrument sees them with lines
 * lifted. A bond that is not known to be there counts at its low end alone. Linear time, but for the sorting of ids.
 */
export function groupNetworks(graph: BondingGraph): readonly GroupNetwork[] {
  const bonded = new Map(
    components(graph, knownBonds(graph)).flatMap((ids, group) => ids.map((id) => [id, group] as const)),
  );
  const pieces = components(graph, possibleBonds(graph)).map((nodes) => ({
    nodes,
    indexOf: new Map(nodes.map((id, i) => [id, i])),
    branches: [] as RangedBranch[],
    parts: [] as string[],
    spans: [] as (number | null)[],
    bonded: nodes.map((id) => bonded.get(id)!),
  }));
  const pieceOf = new Map(pieces.flatMap((piece) => piece.nodes.map((id) => [id, piece] as const)));
  graph.forEachEdge((_key, tie, a, b, factsA, factsB) => {
    if (!isBond(tie)) return;
    const { indexOf, branches, parts, spans } = pieceOf.get(a)!;
    const atJoint = factsA.kind === 'joint' || factsB.kind === 'joint';
    parts.push(tie.part);
    spans.push(tie.span ?? null);
    const range = rangeOf(tie, atJoint);
    const sure = tie.is === 'there' ? range : perhaps(range);
    branches.push({ from: indexOf.get(a)!, to: indexOf.get(b)!, ...sure });
  });
  return pieces;
}

function perhaps({ resistanceOhm }: Pick<RangedBranch, 'resistanceOhm'>) {
  const none = Number.POSITIVE_INFINITY;
  return { resistanceOhm: { low: resistanceOhm.low, high: none }, nominalOhm: none };
}

/**
 * A tie of unknown resistance may be anything from 0 up. A fresh tie by metal of no known section, such as a tower's own
 * steel, counts from 0 up; its figure is not guessed.
 */
export function rangeOf(tie: Tie, atJoint: boolean): Pick<RangedBranch, 'resistanceOhm' | 'nominalOhm'> {
  const known = tie.resistanceOhm ?? (tie.body === 'contact' && atJoint ? anyJointOhm : null);
  if (known === null) return { resistanceOhm: { low: 0, high: Number.POSITIVE_INFINITY }, nominalOhm: null };
  return { resistanceOhm: known, nominalOhm: middle(known) };
}
