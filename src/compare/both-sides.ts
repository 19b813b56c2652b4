import type { Sides } from './comparison.ts';

/** A figure of each side of a row; null on the side that has no row. */
export function bothSides<R, T>({ before, after }: Sides<R | null>, read: (row: R) => T): Sides<T | null> {
  return { before: before === null ? null : read(before), after: after === null ? null : read(after) };
}
