import { factorLu, solveFactored } from '../math/dense.ts';

interface NewBranch {
  readonly from: number;
  readonly to: number;
  readonly resistanceOhm: number;
}

/**
 * Resistance to earth of a node once branches are added to a solved network, without solving it again: with z the old
 * resistance of the node, u_b the volts across the ends of branch b for 1 A put into the node, and Z the volts across branch
 * a for 1 A sent through branch b, z' = z - u^T (Z + diag(r))^-1 u. `transfer[b]` gives the potential of a node for 1 A put
 * into `from` of branch b and taken out of `to`; u_b follows from it by reciprocity. NaN where something is not known.
 *
 * Source: the matrix inversion lemma of Sherman, Morrison and Woodbury (M. A. Woodbury, Inverting modified matrices, 1950;
 * from memory); in a network it is Kirchhoff's voltage law round the loops that the branches close.
 */
export function withBranches(
  ohm: number,
  node: number,
  branches: readonly NewBranch[],
  transfer: readonly ((node: number) => number)[],
): number {
  const size = branches.length;
  const across = transfer.map((of) => of(node));
  const matrix = new Float64Array(size * size);
  branches.forEach(({ from, to, resistanceOhm }, a) => {
    transfer.forEach((of, b) => {
      matrix[a * size + b] = of(from) - of(to) + (a === b ? resistanceOhm : 0);
    });
  });
  if (size === 0) return ohm;
  if (![ohm, ...matrix, ...across].every(Number.isFinite)) return Number.NaN;
  const factored = factorLu(matrix, size);
  if (!factored.ok) return Number.NaN;
  const { solution } = solveFactored(factored, Float64Array.from(across));
  return ohm - across.reduce((sum, volt, b) => sum + volt * solution[b]!, 0);
}
