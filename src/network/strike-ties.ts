import { chosen } from '../bonding/bond-choice.ts';
import type { BondingRun } from '../bonding/bonding-of.ts';
import { components } from '../bonding/components.ts';
import type { Tie, TieKind } from '../bonding/tie.ts';
import type { RangedBranch } from '../currents/bounds.ts';
import type { GroupNetwork } from './dc-network.ts';

/** Ties that carry a strike's current as plain metal: bonds and all that only a surge or a plug makes one metal of. */
const carrying: ReadonlySet<TieKind> = new Set(['metal', 'feeder', 'shield', 'cord', 'case', 'loose-metal']);

/** All that is there and carries a strike's current, as one network, and the tie of each of its branches. */
export interface StrikeTies {
  readonly whole: GroupNetwork;
  readonly ties: readonly Tie[];
  /** What may carry current too and is not counted: the field that decides, of each. */
  readonly notCounted: readonly string[];
}

/**
 * The site's metal as a strike finds it: bonds, shields, protective conductors of cords and feeders, cases, metalwork. Guys,
 * cores, gaps and what passes static alone are left out; so is what may not be there.
 */
export function strikeTies({ graph }: Pick<BondingRun, 'graph'>): StrikeTies {
  const nodes = graph.nodes().sort();
  const indexOf = new Map(nodes.map((id, i) => [id, i]));
  const edges = chosen(graph, (tie) => tie.is === 'there' && carrying.has(tie.kind));
  const [branches, ties]: [RangedBranch[], Tie[]] = [[], []];
  const open = new Set<string>();
  for (const key of graph.edges().sort()) {
    const tie = graph.getEdgeAttributes(key);
    if (!carrying.has(tie.kind)) continue;
    if (tie.is === 'unknown' && tie.decidedBy !== null) open.add(tie.decidedBy);
    if (!edges.edge(key)) continue;
    const [from, to] = graph.extremities(key).map((node) => indexOf.get(node)!) as [number, number];
    branches.push({ from, to, resistanceOhm: tie.resistanceOhm ?? none, nominalOhm: 0 });
    ties.push(tie);
  }
  const groups = new Map(components(graph, edges).flatMap((ids, group) => ids.map((id) => [id, group] as const)));
  const whole: GroupNetwork = {
    nodes,
    indexOf,
    branches,
    parts: ties.map(({ part }) => part),
    spans: ties.map(({ span, kind }) => (kind === 'metal' || kind === 'feeder' ? (span ?? null) : null)),
    bonded: nodes.map((id) => groups.get(id)!),
  };
  return { whole, ties, notCounted: [...open].sort() };
}

const none = { low: 0, high: 0 };
