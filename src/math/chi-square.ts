/** Shares of chance that a limit leaves inside. */
export type Level = 0.95 | 0.99 | 0.999;

/** Quantiles of the normal distribution: one-sided, then two-sided (tables, from memory). */
const normal: Readonly<Record<Level, readonly [oneSided: number, twoSided: number]>> = {
  0.95: [1.64485, 1.95996],
  0.99: [2.32635, 2.57583],
  0.999: [3.09023, 3.29053],
};

/**
 * What a sum of `freedom` squares of normal numbers stays below in a share `level` of cases. Exact for one and two, else by E. B.
 * Wilson and M. M. Hilferty, Proc. Nat. Acad. Sci. 17 (1931), from memory: within 2 %, above 5 within 1 %.
 */
export function chiSquareLimit(freedom: number, level: Level): number {
  const [oneSided, twoSided] = normal[level];
  if (freedom === 1) return twoSided ** 2;
  if (freedom === 2) return -2 * Math.log(1 - level);
  const spread = 2 / (9 * freedom);
  return freedom * (1 - spread + oneSided * Math.sqrt(spread)) ** 3;
}
