import { notNegative, positive } from './positive.ts';

/**
 * Area that a building on flat ground draws strikes from, square metres: L W + 6 H (L + W) + 9 pi H^2, in metres. IEC
 * 62305-2:2010 annex A (from memory): everything within three heights of its walls.
 */
export function collectionArea(lengthM: number, widthM: number, heightM: number): number {
  const [length, width] = [notNegative(lengthM, 'length'), notNegative(widthM, 'width')];
  const height = positive(heightM, 'height');
  return length * width + 6 * height * (length + width) + 9 * Math.PI * height ** 2;
}

/** The same of a mast or a tower that is thin against its height: 9 pi H^2. */
export function mastCollectionArea(heightM: number): number {
  return collectionArea(0, 0, heightM);
}
