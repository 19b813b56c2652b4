import type { ImageSet } from '../soil/layer-images.ts';

/**
 * The images of a set by how far off they are, and what all of them from each one on make together
 * near the origin.
 */
export interface SortedImages {
  readonly count: number;
  readonly strengthOhmM: Float64Array;
  /** 1 or -1, as in `ImageSet`. */
  readonly sign: Float64Array;
  /** The absolute value rises. */
  readonly offsetM: Float64Array;
  /** Twice six numbers for each image and for none: see `tailPotential`. */
  readonly tails: Float64Array;
}

/** Sorted before: many bodies are solved in one soil. */
const kept = new WeakMap<ImageSet, SortedImages>();

/** Sorts a set, and sums its tails from the last image back. */
export function sortedImages(set: ImageSet): SortedImages {
  const known = kept.get(set) ?? sorted(set);
  kept.set(set, known);
  return known;
}

function sorted(set: ImageSet): SortedImages {
  const { count } = set;
  const order = Array.from({ length: count }, (_, k) => k).sort(
    (a, b) => Math.abs(set.offsetM[a]!) - Math.abs(set.offsetM[b]!) || a - b,
  );
  const strengthOhmM = Float64Array.from(order, (k) => set.strengthOhmM[k]!);
  const sign = Float64Array.from(order, (k) => set.sign[k]!);
  const offsetM = Float64Array.from(order, (k) => set.offsetM[k]!);
  const tails = new Float64Array(2 * terms * (count + 1));
  for (let k = count - 1; k >= 0; k--) {
    const at = 2 * terms * k;
    tails.copyWithin(at, at + 2 * terms, at + 4 * terms);
    // an image at the origin ends no tail: its field has no such series
    if (offsetM[k] === 0) continue;
    const first = at + (sign[k]! > 0 ? 0 : terms);
    let term = strengthOhmM[k]! / Math.abs(offsetM[k]!);
    for (let n = 0; n < terms; n++) {
      tails[first + n] = tails[first + n]! + term;
      term /= offsetM[k]!;
    }
  }
  return { count, strengthOhmM, sign, offsetM, tails };
}

/** Terms of the polynomial of a tail. */
const terms = 6;

/**
 * Potential of all images from number `from` on, where their offsets are many times the way to the receiver: a harmonic
 * polynomial, the first six terms of (1 / |o|) sum of (R / o)^n P_n(h / R) with R^2 = level^2 + h^2; the height h is `apart`
 * for images of sign 1 and `mirrored` for those of sign -1. At offsets of u times R the error is below
 * (1 / u)^6 / (1 - 1 / u) of what each image makes.
 *
 * Source: the inverse distance as a series of Legendre polynomials, M. Abramowitz, I. A. Stegun, Handbook of Mathematical
 * Functions, 22.9.12 (from memory).
 */
export function tailPotential(
  tails: Float64Array,
  from: number,
  levelSquared: number,
  apart: number,
  mirrored: number,
): number {
  const at = 2 * terms * from;
  return polynomial(tails, at, levelSquared, apart) + polynomial(tails, at + terms, levelSquared, mirrored);
}

/** Sum of t_n R^n P_n(h / R): 1, h, h^2 - s / 2, h (h^2 - 3 s / 2), and so on, s the square of the level distance. */
function polynomial(tails: Float64Array, at: number, s: number, h: number): number {
  const square = h * h;
  const even = tails[at]! + (square - s / 2) * tails[at + 2]!;
  const odd = tails[at + 1]! + (square - 1.5 * s) * tails[at + 3]!;
  const fourth = (square * (square - 3 * s) + 0.375 * s * s) * tails[at + 4]!;
  const fifth = (square * (square - 5 * s) + 1.875 * s * s) * tails[at + 5]!;
  return even + fourth + h * (odd + fifth);
}
