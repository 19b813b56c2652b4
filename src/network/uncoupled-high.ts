import type { RangedEarth, RangedNetwork } from '../currents/bounds.ts';
import { resistancesToEarth } from '../currents/resistance.ts';
import { solveNetwork } from '../currents/solve-network.ts';

/** At most so many single electrodes are tried. */
const mostTried = 24;

/**
 * Highest resistance to earth of every node where some electrodes have no place, so that nobody knows what they feel of each
 * other: no network rises when metal is added, so each of them by itself, or all with a place together, bounds it from
 * above; the least of those bounds. Infinity where there is none.
 */
export function uncoupledHigh(network: RangedNetwork, isPlaced: readonly boolean[]): readonly number[] {
  const { nodeCount, earth, branches } = network;
  const own = earth.highOhm.map((row, i) => (typeof row === 'number' ? row : row[i]!));
  const placed = own.flatMap((_, i) => (isPlaced[i] ? [i] : []));
  const single = own
    .flatMap((ohm, i) => (isPlaced[i] || ohm === Number.POSITIVE_INFINITY ? [] : [i]))
    .sort((a, b) => own[a]! - own[b]!)
    .slice(0, mostTried);
  const choices = [...(placed.length > 0 ? [placed] : []), ...single.map((i) => [i])];
  const bounds = choices.map((chosen) => {
    const solved = solveNetwork({
      nodeCount,
      branches: branches.map((b) => ({ from: b.from, to: b.to, resistanceOhm: b.resistanceOhm.high })),
      earth: { nodes: earth.nodes, resistanceOhm: onlyOf(earth.highOhm, own, new Set(chosen)) },
    });
    return solved.ok ? resistancesToEarth(solved) : [];
  });
  return Array.from({ length: nodeCount }, (_, node) => {
    const known = bounds.flatMap((of) => (of[node] == null ? [] : [of[node]]));
    return known.length === 0 ? Number.POSITIVE_INFINITY : Math.min(...known);
  });
}

/** The earth of some electrodes, as if the others were not there. */
function onlyOf(
  highOhm: RangedEarth['highOhm'],
  own: readonly number[],
  chosen: ReadonlySet<number>,
): RangedEarth['highOhm'] {
  const ownOf = (i: number): number => (chosen.has(i) ? own[i]! : Number.POSITIVE_INFINITY);
  const rows = highOhm.filter((row) => typeof row !== 'number');
  if (rows.length < highOhm.length) return own.map((_, i) => ownOf(i));
  return rows.map((row, i) => (chosen.has(i) ? row : row.map((ohm, j) => (i === j ? ownOf(i) : ohm))));
}
