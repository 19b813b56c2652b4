import { describe, expect, it } from 'vitest';
import { shareInside, stepShare, surfacePotential } from '../../src/electrodes/fall-off.ts';
import { footM, inchM } from './shapes.ts';

const oneInch = (feet: number) => ({ lengthM: feet * footM, radiusM: inchM / 2 });

/** MIL-HDBK-419A volume I, section 2 (read). `right`: the print is right to its own last digit. */
describe('fall-off of potential in print', () => {
  it.each([
    { feet: 10, printed: 0.85, worked: 0.8498 },
    { feet: 100, printed: 0.89, worked: 0.8921 },
  ])('share of a rod of 1 in x $feet ft within its own length: $printed', ({ feet, printed, worked }) => {
    const share = shareInside(oneInch(feet), feet * footM);
    expect(share).toBeCloseTo(worked, 4);
    expect(Math.abs(share - printed)).toBeLessThanOrEqual(0.005);
  });

  it.each([
    { feet: 5, printed: 0.75, worked: 0.752, right: true },
    // read off a chart: a digit beside the formula it is drawn from
    { feet: 10, printed: 0.68, worked: 0.673, right: false },
    { feet: 20, printed: 0.61, worked: 0.604, right: false },
    { feet: 50, printed: 0.53, worked: 0.531, right: true },
    { feet: 100, printed: 0.48, worked: 0.486, right: false },
  ])('first pace of 3 ft off a rod of 1 in x $feet ft: $printed', ({ feet, printed, worked, right }) => {
    const step = stepShare(oneInch(feet), null, 3 * footM);
    expect(Math.abs(step / worked - 1)).toBeLessThan(0.001);
    expect(Math.abs(step / printed - 1)).toBeLessThan(0.0125);
    expect(Math.abs(step - printed) <= 0.005).toBe(right);
  });
});

describe('fall-off of potential', () => {
  const rod = { lengthM: 3, radiusM: 0.008 };

  // worked out apart from this program: the formula, and boundary elements (80 to the rod)
  it.each([
    [0.1, 0.6486, 0.6236],
    [0.3, 0.4749, 0.4601],
    [0.5, 0.3947, 0.3843],
    [1, 0.288, 0.283],
    [2, 0.1892, 0.188],
    [3, 0.1396, 0.1394],
    [5, 0.0901, 0.0904],
    [10, 0.0468, 0.0471],
  ])('3 m x 16 mm at %d m: %d of the rod, %d by boundary elements', (distanceM, formula, solved) => {
    const share = 1 - shareInside(rod, distanceM);
    expect(Math.abs(share - formula)).toBeLessThanOrEqual(0.00005);
    expect(Math.abs(share / solved - 1)).toBeLessThan(distanceM < 2 ? 0.041 : 0.0075);
  });

  it('far away is that of a point: 1 / (2 pi x)', () => {
    expect(surfacePotential(rod, 3000) * 2 * Math.PI * 3000).toBeCloseTo(1, 6);
  });

  it('paces one after the other add up to the share inside', () => {
    const paces = [stepShare(rod, null, 1), stepShare(rod, 1, 1), stepShare(rod, 2, 1), stepShare(rod, 3, 1)];
    expect(paces.reduce((sum, step) => sum + step, 0)).toBeCloseTo(shareInside(rod, 4), 12);
    expect([...paces].sort((a, b) => b - a)).toEqual(paces);
  });

  it('begins at the surface of the rod', () => {
    expect(() => surfacePotential(rod, 0.007)).toThrow(RangeError);
    expect(() => surfacePotential(rod, Number.NaN)).toThrow(RangeError);
  });
});
