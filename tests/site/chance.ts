/** Repeatable chance: the same seed gives the same row of numbers. */
export interface Chance {
  /** A whole number from 0 to below `n`. */
  readonly below: (n: number) => number;
  readonly pick: <T>(items: readonly T[]) => T;
  /** True this often: 0.25 is one time in four. */
  readonly often: (share: number) => boolean;
}

/** A generator with 32 bits of state (an added constant, then mixed by shifts and products). */
export function chance(seed: number): Chance {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (n: number) => Math.floor(next() * n);
  return { below, pick: (items) => items[below(items.length)]!, often: (share) => next() < share };
}
