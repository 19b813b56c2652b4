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
}

/** A joint of a kind that nobody knows is one of the kinds there are. */
const anyJointOhm: Interval = joints
  .filter((j) => j.name !== 'none')
  .map((j) => j.resistanceOhm)
  .reduce(hull);

/** Kinds of tie that a direct current between bonded parts uses: bonds alone, as an instrument sees them with lines lifted. */
export const bonds: ReadonlySet<Tie['kind']> = new Set(['metal', 'feeder']);

/** The bonds among these nodes as resistances. A tie of unknown resistance may be anything from 0 up. */
export function groupNetwork(graph: BondingGraph, nodes: readonly string[]): GroupNetwork {
  const indexOf = new Map(nodes.map((id, i) => [id, i]));
  const branches: RangedBranch[] = [];
  const parts: string[] = [];
  graph.forEachEdge((_key, tie, a, b) => {
    const [from, to] = [indexOf.get(a), indexOf.get(b)];
    if (from === undefined || to === undefined || tie.is !== 'there' || !bonds.has(tie.kind)) return;
    parts.push(tie.part);
    branches.push({
      from,
      to,
      ...rangeOf(tie, graph.getNodeAttribute(a, 'kind') === 'joint' || graph.getNodeAttribute(b, 'kind') === 'joint'),
    });
  });
  return { nodes, indexOf, branches, parts };
}

/** A fresh tie by metal of no known section, such as a tower's own steel, counts from 0 up; its figure is not guessed. */
function rangeOf(tie: Tie, atJoint: boolean): Pick<RangedBranch, 'resistanceOhm' | 'nominalOhm'> {
  const known = tie.resistanceOhm ?? (tie.body === 'contact' && atJoint ? anyJointOhm : null);
  if (known === null) return { resistanceOhm: { low: 0, high: Number.POSITIVE_INFINITY }, nominalOhm: null };
  return { resistanceOhm: known, nominalOhm: middle(known) };
}
