/** Exact fractions of whole numbers, for checking arithmetic that claims more digits than a number has. */
export interface Fraction {
  readonly over: bigint;
  readonly under: bigint;
}

/** The fraction that an ordinary number is. */
export function fraction(value: number): Fraction {
  let under = 1n;
  let scaled = value;
  while (!Number.isInteger(scaled)) {
    scaled *= 2;
    under *= 2n;
  }
  return { over: BigInt(scaled), under };
}

export const add = (a: Fraction, b: Fraction): Fraction => ({
  over: a.over * b.under + b.over * a.under,
  under: a.under * b.under,
});

export const multiply = (a: Fraction, b: Fraction): Fraction => ({ over: a.over * b.over, under: a.under * b.under });

export const divide = (a: Fraction, b: Fraction): Fraction =>
  b.over < 0n
    ? { over: -a.over * b.under, under: -a.under * b.over }
    : { over: a.over * b.under, under: a.under * b.over };

/** |a - b| relative to |b|, as an ordinary number. */
export function relativeGap(a: Fraction, b: Fraction): number {
  const over = a.over * b.under - b.over * a.under;
  const under = a.under * b.over;
  if (over === 0n) return 0;
  if (under === 0n) return Number.POSITIVE_INFINITY;
  const size = (x: bigint): bigint => (x < 0n ? -x : x);
  return Number((size(over) * 10n ** 60n) / size(under)) / 1e60;
}
