import { describe, expect, it } from 'vitest';
import { depthCurve } from '../../src/electrodes/depth-curve.ts';
import { type ScaledSoil, scaledSoils } from '../../src/electrodes/scaled-soil.ts';
import { layeredSoil } from '../../src/soil/layered-soil.ts';
import { footM, inchM } from './shapes.ts';
import { finest, off, ohmOfBody, run } from './solved.ts';

const soil = (ohmM: readonly number[], thickM: readonly number[] = []): ScaledSoil =>
  scaledSoils()(layeredSoil(ohmM, thickM));
const rod = { radiusM: 0.3125 * inchM, topM: 0 };

describe('resistance of a rod against its length', () => {
  it('in one soil falls a little slower than the length grows', () => {
    const curve = depthCurve(rod, [1.5, 3, 6, 12], soil([100])) as readonly number[];
    for (let k = 1; k < curve.length; k++) {
      const ratio = curve[k - 1]! / curve[k]!;
      expect(ratio).toBeGreaterThan(1.7);
      expect(ratio).toBeLessThan(2);
    }
  });

  // exact-kernel and boundary-element references worked out apart from this program
  it('meets the references on its way: 8 and 10 ft of 5/8 in at 100 ohm m', () => {
    const [eight, ten] = depthCurve(rod, [8 * footM, 10 * footM], soil([100])) as readonly [number, number];
    expect(off(eight, 39.519)).toBeLessThan(0.005);
    expect(off(ten, 32.797)).toBeLessThan(0.005);
  });

  it.each([
    [[300, 100], 1.5, 45.8527],
    [[100, 1000], 1.5, 75.8568],
    [[1000, 100], 1, 44.0316],
  ])('10 ft in %j ohm m, boundary at %d m: %d', (ohmM, boundaryM, ohm) => {
    expect(off(depthCurve(rod, [10 * footM], soil(ohmM, [boundaryM]))[0]!, ohm)).toBeLessThan(0.005);
  });

  it.each([
    [[100], []],
    [[300, 60], [2]],
    [[60, 3000], [2]],
    [
      [4000, 300, 60],
      [0.9, 2],
    ],
  ])('is at each length what that rod has by itself, cut finely: %j ohm m, %j m', (ohmM, thickM) => {
    const lengths = [1.2, 1.8, 2.4, 3, 3.05, 6.1, 18.3];
    const { images } = soil(ohmM, thickM);
    const curve = depthCurve({ ...rod, topM: 0.1 }, lengths, { images, factor: 2 }) as readonly number[];
    lengths.forEach((lengthM, k) => {
      const alone = ohmOfBody({ runs: [run([0, 0, 0.1], [0, 0, 0.1 + lengthM], rod.radiusM)] }, images, finest);
      expect(off(curve[k]!, 2 * alone)).toBeLessThan(0.005);
    });
  });

  it('bends down where the rod reaches better soil, and hardly falls where it leaves it', () => {
    const lengths = [1.5, 2.5, 3.5, 5];
    const better = depthCurve(rod, lengths, soil([1000, 20], [3])) as readonly number[];
    // above the boundary a metre takes off a third, across it nine tenths
    expect(better[1]! / better[0]!).toBeGreaterThan(0.55);
    expect(better[2]! / better[1]!).toBeLessThan(0.15);
    const worse = depthCurve(rod, lengths, soil([20, 1000], [3])) as readonly number[];
    expect(worse[3]! / worse[2]!).toBeGreaterThan(0.95);
    for (const curve of [better, worse]) {
      for (let k = 1; k < curve.length; k++) expect(curve[k]).toBeLessThan(curve[k - 1]!);
    }
  });

  it('frost lifts a short rod far more than a long one', () => {
    const lengths = [1.2, 6];
    const [shortWarm, longWarm] = depthCurve(rod, lengths, soil([100])) as readonly [number, number];
    const [shortCold, longCold] = depthCurve(rod, lengths, soil([3000, 100], [0.9])) as readonly [number, number];
    expect(shortCold / shortWarm).toBeGreaterThan(2);
    expect(longCold / longWarm).toBeLessThan(1.35);
  });

  it('has no figure for what is no rod', () => {
    expect(depthCurve(rod, [0, -1, 0.01, Number.NaN, 3], soil([100])).slice(0, 4)).toEqual([null, null, null, null]);
  });
});
