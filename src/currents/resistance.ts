import { inverseDiagonal } from '../math/inverse-diagonal.ts';
import { solveElimination } from '../math/solve-elimination.ts';
import { groundCluster } from './contraction.ts';
import { difference } from './flow.ts';
import { rootOf } from './islands.ts';
import type { SolvedNetwork } from './solve-network.ts';

/** Resistance of every node to remote earth, all at once; null on an island that has no way to earth. */
export function resistancesToEarth({ contraction, elimination }: SolvedNetwork): readonly (number | null)[] {
  const { high, low } = inverseDiagonal(elimination);
  return Array.from(contraction.clusterOf, (cluster) => {
    if (cluster === groundCluster) return 0;
    return elimination.floats[cluster] === 1 ? null : high[cluster]! + low[cluster]!;
  });
}

/** Resistance between two nodes through metal and soil; null where neither joins them. */
export function resistanceBetween(solved: SolvedNetwork, a: number, b: number): number | null {
  const { contraction, elimination } = solved;
  const [from, to] = [contraction.clusterOf[a], contraction.clusterOf[b]];
  if (from === undefined || to === undefined) throw new RangeError(`no node ${from === undefined ? a : b}`);
  if (from === to) return 0;
  const floats = [from, to].some((cluster) => cluster !== groundCluster && elimination.floats[cluster] === 1);
  if (floats && rootOf(solved, a) !== rootOf(solved, b)) return null;
  const high = new Float64Array(contraction.clusterCount);
  if (from !== groundCluster) high[from] = 1;
  if (to !== groundCluster) high[to] = -1;
  const extended = solveElimination(elimination, { high, low: new Float64Array(high.length) });
  return difference(solved, extended, a, b);
}
