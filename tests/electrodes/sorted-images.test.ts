import { describe, expect, it } from 'vitest';
import { sortedImages, tailPotential } from '../../src/electrodes/sorted-images.ts';
import { soilImages } from '../../src/soil/layer-images.ts';
import { layeredSoil } from '../../src/soil/layered-soil.ts';

const soil = layeredSoil([2000, 100, 30, 300], [0.2, 1.6, 4.2]);
const sets = [0, 1, 2, 3].flatMap((source) =>
  [0, 1, 2, 3].map((receiver) => soilImages(soil).between(source, receiver)),
);

describe('images by how far off they are', () => {
  it('are the same images', () => {
    for (const set of sets) {
      const sorted = sortedImages(set);
      const rows = ({ strengthOhmM, sign, offsetM }: typeof set | typeof sorted): string[] =>
        Array.from(offsetM, (offset, k) => `${offset} ${sign[k]} ${strengthOhmM[k]}`).sort();
      expect(rows(sorted)).toEqual(rows(set));
      expect(sorted.offsetM.every((o, k) => k === 0 || Math.abs(o) >= Math.abs(sorted.offsetM[k - 1]!))).toBe(true);
    }
  });

  // (1 / 5)^6 / (1 - 1 / 5) = 8e-5 of what the nearest image of the tail makes
  it('make together what they make one by one, from five times the way on', () => {
    for (const set of sets) {
      const { count, strengthOhmM, sign, offsetM, tails } = sortedImages(set);
      for (const [levelM, sourceM, depthM] of [
        [0, 0.1, 0.7],
        [3, 0.5, 0.5],
        [2, 4, 0],
        [30, 1, 6],
      ] as const) {
        const way = Math.hypot(levelM, sourceM + depthM);
        const from = offsetM.findIndex((o) => Math.abs(o) >= 5 * way);
        let [exact, size] = [0, 0];
        for (let k = from; k < count; k++) {
          const share = strengthOhmM[k]! / Math.hypot(levelM, depthM - offsetM[k]! - sign[k]! * sourceM);
          exact += share;
          size += Math.abs(share);
        }
        const tail = tailPotential(tails, from, levelM * levelM, depthM - sourceM, depthM + sourceM);
        expect(Math.abs(tail - exact) / size).toBeLessThan(8e-5);
        expect(size).toBeGreaterThan(0);
      }
    }
  });

  // By hand: 7 ohm m at 10 m and -3 ohm m at -20 m, both mirrored, seen from 1 m level and heights of 2 and 3 m.
  it('make what the distances give, by hand', () => {
    const set = {
      count: 2,
      strengthOhmM: Float64Array.of(-3, 7),
      sign: Int8Array.of(-1, -1),
      offsetM: Float64Array.of(-20, 10),
    };
    const { tails, offsetM } = sortedImages(set);
    expect(Array.from(offsetM)).toEqual([10, -20]);
    const exact = 7 / Math.sqrt(1 + 49) - 3 / Math.sqrt(1 + 23 * 23);
    expect(tailPotential(tails, 0, 1, 123, 3)).toBeCloseTo(exact, 3);
    expect(tailPotential(tails, 2, 1, 2, 3)).toBe(0);
  });
});
