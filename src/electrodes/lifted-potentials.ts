import { factorCholesky, solveFactored } from '../math/dense.ts';
import type { SolvedBodies } from './solve-bodies.ts';

/**
 * Potential of every body, per volt of those that a current from far away lifts together; from no other one current leaves.
 * Bodies of one set in `floating` are tied to each other; every other one floats by itself. With G = R^-1 over lifted and tied
 * ones, sums over each set being 0 give the potentials of the sets, then the currents I, then V = R I. What is not there
 * (Infinity alone) has 0. null where bodies coincide or nothing is lifted. Indexes as in the solve.
 */
export function liftedPotentials(
  solved: SolvedBodies,
  lifted: readonly number[],
  floating: readonly (readonly number[])[] = [],
): Float64Array | null {
  const count = solved.aloneOhm.length;
  const { resistanceOhm } = solved;
  const isThere = (body: number): boolean => Number.isFinite(solved.aloneOhm[body]!);
  const sets = [lifted, ...floating].map((set) => set.filter(isThere)).filter((set, i) => i === 0 || set.length > 0);
  if (sets[0]!.length === 0) return null;
  const all = sets.flat();
  const own = Float64Array.from(all.flatMap((a) => all.map((b) => resistanceOhm[a * count + b]!)));
  const factored = factorCholesky(own, all.length);
  if (!factored.ok) return null;
  const setOf = sets.flatMap((set, s) => set.map(() => s));
  const atOneVolt = setOf.flatMap((of) => sets.map((_, s) => (s === of ? 1 : 0)));
  const currents = solveFactored(factored, Float64Array.from(atOneVolt), sets.length).solution;
  const setV = potentialsOfSets(currents, setOf, sets.length);
  if (setV === null) return null;
  return Float64Array.from({ length: count }, (_, body) => {
    if (!isThere(body)) return 0;
    let volt = 0;
    for (const [row, source] of all.entries()) {
      let ampere = 0;
      for (let s = 0; s < sets.length; s++) ampere += currents[row * sets.length + s]! * setV[s]!;
      volt += resistanceOhm[body * count + source]! * ampere;
    }
    return volt;
  });
}

/** The first at one volt, the others at what makes their currents sum to nothing. */
function potentialsOfSets(currents: Float64Array, setOf: readonly number[], count: number): readonly number[] | null {
  const sums = new Float64Array(count * count);
  for (const [row, of] of setOf.entries())
    for (let s = 0; s < count; s++) sums[of * count + s]! += currents[row * count + s]!;
  const free = count - 1;
  if (free === 0) return [1];
  const matrix = new Float64Array(free * free);
  for (let i = 0; i < free; i++) for (let j = 0; j < free; j++) matrix[i * free + j] = sums[(i + 1) * count + j + 1]!;
  const factored = factorCholesky(matrix, free);
  if (!factored.ok) return null;
  const right = Float64Array.from({ length: free }, (_, i) => -sums[(i + 1) * count]!);
  return [1, ...solveFactored(factored, right).solution];
}
