import { factorCholesky, solveFactored } from '../math/dense.ts';
import type { SolvedBodies } from './solve-bodies.ts';

/**
 * Potential that a body carrying no current takes on, per volt of bodies that a current from far away lifts together:
 * V = R_uG R_GG^-1 1. null where the bodies coincide. Indexes as in the solve.
 */
export function transferredShare(solved: SolvedBodies, lifted: readonly number[], body: number): number | null {
  const count = solved.aloneOhm.length;
  const own = Float64Array.from(lifted.flatMap((a) => lifted.map((b) => solved.resistanceOhm[a * count + b]!)));
  const factored = factorCholesky(own, lifted.length);
  if (!factored.ok) return null;
  const { solution } = solveFactored(factored, new Float64Array(lifted.length).fill(1));
  return lifted.reduce((sum, b, k) => sum + solved.resistanceOhm[body * count + b]! * solution[k]!, 0);
}
