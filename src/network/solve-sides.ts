import { type RangedNetwork, type SolvedRange, solveLikely } from '../currents/bounds.ts';
import { type SolvedNetwork, solveNetwork } from '../currents/solve-network.ts';

/**
 * The network at its low, its likely and its high figures; null where one of them makes no sense. Unlike `solveRange` it asks
 * for no order between the earth matrices: both were worked out for soils that enclose the likely one, so that they are in
 * order but for the errors of two solves. A stated figure of an electrode takes the range of the soil out of its own term and
 * not out of what others feel of it; there the order holds term by term: no resistance to earth can fall when a term rises
 * while every electrode takes current away (the flow at the high terms would lose less at the low ones).
 *
 * Source: Thomson's principle (P. G. Doyle, J. L. Snell, Random Walks and Electric Networks, 1984, section 1.3.5; from
 * memory); that what electrodes feel of each other rises with every layer's resistivity is seen, not proven.
 */
export function solveSides(network: RangedNetwork): SolvedRange | null {
  const { nodeCount, earth } = network;
  const solved = (side: 'low' | 'high'): SolvedNetwork | null => {
    const branches = network.branches.map((b) => ({ from: b.from, to: b.to, resistanceOhm: b.resistanceOhm[side] }));
    const resistanceOhm = side === 'low' ? earth.lowOhm : earth.highOhm;
    const answer = solveNetwork({ nodeCount, branches, earth: { nodes: earth.nodes, resistanceOhm } });
    return answer.ok ? answer : null;
  };
  const [low, high] = [solved('low'), solved('high')];
  if (low === null || high === null) return null;
  const isNamed = network.branches.every((b) => b.nominalOhm !== null);
  const value = isNamed ? solveLikely(network, Number.POSITIVE_INFINITY) : null;
  return value !== null && !value.ok ? null : { ok: true, low, value, high };
}
