import { DoubleDouble } from '../math/double-double.ts';
import { type ExtendedVector, solveElimination } from '../math/solve-elimination.ts';
import { groundCluster } from './contraction.ts';
import { type Imbalance, worstImbalance } from './imbalance.ts';
import { rootOf, strandedRoots } from './islands.ts';
import type { Injection } from './network.ts';
import type { SolvedNetwork } from './solve-network.ts';
import { fillZeroOhmCurrents } from './zero-ohm-currents.ts';

/** Where given currents go. */
export interface Flow extends Imbalance {
  /** Against remote earth; null on an island that has no way to earth. */
  readonly potentialV: readonly (number | null)[];
  /**
   * From `from` to `to`; null where current was put into an island that it cannot leave, and in a loop of branches of
   * 0 ohm, among which it may share as it likes.
   */
  readonly branchA: readonly (number | null)[];
  /** Into the soil by each electrode; null as above. */
  readonly earthA: readonly (number | null)[];
  /** Nodes of injections that have no way to earth nor back out of their island. */
  readonly stranded: readonly number[];
  /** Potentials in double-double, for `differenceV`; on an island against its own root. */
  readonly extended: ExtendedVector;
}

/** Potentials and currents for currents put into nodes (A), several into one node adding up. */
export function flow(solved: SolvedNetwork, injections: readonly Injection[]): Flow {
  const injected = gather(solved, injections);
  const stranded = strandedRoots(solved, injections);
  const extended = solveElimination(solved.elimination, injected);
  const branchA = branchCurrents(solved, extended, stranded);
  const earthA = earthCurrents(solved, extended);
  const imbalance = worstImbalance(solved, injections, { branchA, earthA }, stranded);
  fillZeroOhmCurrents(solved, injections, branchA, earthA);
  return {
    potentialV: potentials(solved, extended),
    branchA,
    earthA,
    stranded: injections.map(({ node }) => node).filter((node) => stranded.has(rootOf(solved, node))),
    extended,
    ...imbalance,
  };
}

/**
 * Potential of a against b, right to the last digit where both are nearly equal. null where one of them stands on an
 * island without earth that the other is not on, or on one that holds stranded current.
 */
export function differenceV(solved: SolvedNetwork, flowed: Flow, a: number, b: number): number | null {
  const roots = [rootOf(solved, a), rootOf(solved, b)];
  const floats = [a, b].some((node) => flowed.potentialV[node] === null);
  if (floats && (roots[0] !== roots[1] || flowed.stranded.some((node) => rootOf(solved, node) === roots[0])))
    return null;
  return difference(solved, flowed.extended, a, b);
}

/** Share of a current put into the node that each branch and each electrode takes (signed as in Flow). */
export function currentShares(solved: SolvedNetwork, node: number): Pick<Flow, 'branchA' | 'earthA'> {
  return flow(solved, [{ node, currentA: 1 }]);
}

/** Potential difference of two nodes of the same solve. */
export function difference(
  { contraction }: SolvedNetwork,
  { high, low }: ExtendedVector,
  a: number,
  b: number,
): number {
  const [from, to] = [contraction.clusterOf[a]!, contraction.clusterOf[b]!];
  const sum = new DoubleDouble();
  if (from !== groundCluster) sum.add(high[from]!, low[from]!);
  if (to !== groundCluster) sum.subtract(high[to]!, low[to]!);
  return sum.toNumber();
}

function gather({ contraction }: SolvedNetwork, injections: readonly Injection[]): ExtendedVector {
  const high = new Float64Array(contraction.clusterCount);
  const low = new Float64Array(contraction.clusterCount);
  const sum = new DoubleDouble();
  for (const { node, currentA } of injections) {
    const cluster = contraction.clusterOf[node];
    if (cluster === undefined || !Number.isFinite(currentA)) throw new RangeError(`${currentA} A into node ${node}`);
    if (cluster === groundCluster) continue;
    sum.set(high[cluster]!, low[cluster]!).add(currentA);
    high[cluster] = sum.high;
    low[cluster] = sum.low;
  }
  return { high, low };
}

function potentials({ contraction, elimination }: SolvedNetwork, { high, low }: ExtendedVector): (number | null)[] {
  return Array.from(contraction.clusterOf, (cluster) => {
    if (cluster === groundCluster) return 0;
    return elimination.floats[cluster] === 1 ? null : high[cluster]! + low[cluster]!;
  });
}

/** Branches of 0 ohm are left null. */
function branchCurrents(
  solved: SolvedNetwork,
  extended: ExtendedVector,
  stranded: ReadonlySet<number>,
): (number | null)[] {
  const { network, branchConductance, contraction } = solved;
  const product = new DoubleDouble();
  return network.branches.map(({ from, to, resistanceOhm }, at) => {
    if (resistanceOhm === Infinity) return 0;
    const known = branchConductance[at]!;
    if (known === null || stranded.has(rootOf(solved, from)) || stranded.has(rootOf(solved, to))) return null;
    const [a, b] = [contraction.clusterOf[from]!, contraction.clusterOf[to]!];
    product.set(0);
    if (a !== groundCluster) product.add(extended.high[a]!, extended.low[a]!);
    if (b !== groundCluster) product.subtract(extended.high[b]!, extended.low[b]!);
    return product.multiply(known.high, known.low).toNumber();
  });
}

/** Electrodes of 0 ohm are left null; one that is not there carries nothing. */
function earthCurrents(solved: SolvedNetwork, { high, low }: ExtendedVector): (number | null)[] {
  const { network, earthBlocks, contraction } = solved;
  const { nodes } = network.earth;
  const earthA: (number | null)[] = network.earth.resistanceOhm.map((row, i) =>
    (typeof row === 'number' ? row : row[i]) === 0 ? null : 0,
  );
  const sum = new DoubleDouble();
  for (const { electrodes, high: gHigh, low: gLow } of earthBlocks) {
    for (const [row, i] of electrodes.entries()) {
      sum.set(0);
      for (const [column, j] of electrodes.entries()) {
        const cluster = contraction.clusterOf[nodes[j]!]!;
        const at = row * electrodes.length + column;
        if (cluster !== groundCluster) sum.addProduct(gHigh[at]!, gLow[at]!, high[cluster]!, low[cluster]!);
      }
      earthA[i] = sum.toNumber();
    }
  }
  return earthA;
}
