import type { BondingRun } from '../bonding/bonding-of.ts';
import type { Interval } from '../units/interval.ts';

/** Of each joint, the range of its contact with what it is on. */
export function jointOhm({ graph }: Pick<BondingRun, 'graph'>): ReadonlyMap<string, Interval> {
  const found = new Map<string, Interval>();
  graph.forEachEdge((_key, tie, a, b) => {
    if (tie.body !== 'contact' || tie.resistanceOhm === null) return;
    for (const node of [a, b]) {
      if (graph.getNodeAttribute(node, 'kind') === 'joint' && !found.has(node)) found.set(node, tie.resistanceOhm);
    }
  });
  return found;
}
