/** What a typed figure may fall short of the printed one by rounding alone. */
const rounding = 3e-3;

/**
 * The least figure that meets a clause which prints it in both unit systems, rounded apart (20 ft beside 6.0 m): either
 * print is met by a figure as printed.
 */
export function leastAsPrinted(us: number, si: number): number {
  return Math.min(us, si) * (1 - rounding);
}

/** The same of a greatest figure. */
export function mostAsPrinted(us: number, si: number): number {
  return Math.max(us, si) * (1 + rounding);
}
