import type { BondingRun } from '../bonding/bonding-of.ts';
import { components } from '../bonding/components.ts';
import type { Tie, TieKind } from '../bonding/tie.ts';
import type { RangedBranch } from '../currents/bounds.ts';
import type { GroupNetwork } from './dc-network.ts';
import { strikeGuys } from './strike-guys.ts';

/** Ties that carry a strike's current as plain metal: bonds and all that only a surge or a plug makes one metal of. */
const carrying: ReadonlySet<TieKind> = new Set(['metal', 'feeder', 'shield', 'cord', 'case', 'loose-metal', 'guy']);

/** All that is there and carries a strike's current, as one network, and the tie of each of its branches. */
export interface StrikeTies {
  readonly whole: GroupNetwork;
  readonly ties: readonly Tie[];
  /** What may carry current too and is not counted: the field that decides, of each. */
  readonly notCounted: readonly string[];
}

/**
 * The site's metal as a strike finds it: bonds, shields, protective conductors of cords and feeders, cases, metalwork, guys.
 * Cores, gaps and what passes static alone are left out; so is what may not be there.
 */
export function strikeTies(run: Pick<BondingRun, 'graph' | 'site'>): StrikeTies {
  const { graph } = run;
  const nodes = graph.nodes().sort();
  const indexOf = new Map(nodes.map((id, i) => [id, i]));
  const guyOf = strikeGuys(run);
  const [branches, ties]: [RangedBranch[], Tie[]] = [[], []];
  const [kept, open] = [new Set<string>(), new Set<string>()];
  for (const key of graph.edges().sort()) {
    const typed = graph.getEdgeAttributes(key);
    if (!carrying.has(typed.kind)) continue;
    const guy = typed.kind === 'guy' ? guyOf(key, typed) : { tie: typed, top: null };
    if ('open' in guy) {
      if (guy.open !== null) open.add(guy.open);
      continue;
    }
    const { tie, top } = guy;
    if (tie.is === 'unknown' && tie.decidedBy !== null) open.add(tie.decidedBy);
    if (tie.is !== 'there') continue;
    kept.add(key);
    const ends = graph.extremities(key);
    const [from, to] = ends.map((node) => indexOf.get(top !== null && node === tieSupport(top) ? top : node)!);
    branches.push({ from: from!, to: to!, resistanceOhm: tie.resistanceOhm ?? none, nominalOhm: 0 });
    ties.push(tie);
  }
  const edges = { edge: (key: string) => kept.has(key) };
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

function tieSupport(top: string): string {
  return top.slice(0, -'@top'.length);
}

const none = { low: 0, high: 0 };
