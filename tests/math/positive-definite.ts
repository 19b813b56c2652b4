/** Numbers from -1 to 1, the same in every run (Lehmer, 2^31 - 1). */
export function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return (2 * state) / 2147483647 - 1;
  };
}

/** B B' and something on the diagonal, for a random B of a few columns: full, symmetric, positive definite. */
export function positiveDefinite(size: number, seed = size): Float64Array {
  const next = numbers(seed);
  const rows = Array.from({ length: size }, () => Array.from({ length: 6 }, next));
  return Float64Array.from({ length: size * size }, (_, at) => {
    const [a, b] = [rows[Math.floor(at / size)]!, rows[at % size]!];
    const product = a.reduce((sum, entry, k) => sum + entry * b[k]!, 0);
    return at % (size + 1) === 0 ? product + 0.5 : product;
  });
}

/** Entry (row, column) of a lower triangle that stands row after row without gaps. */
export function entryOf(lower: Float64Array, row: number, column: number): number {
  return lower[(row * (row + 1)) / 2 + column]!;
}
