import { describe, expect, it } from 'vitest';
import { influenceMatrix } from '../../src/electrodes/influence-matrix.ts';
import { meanInverseDistance } from '../../src/electrodes/line-pair.ts';
import { segmentsOf } from '../../src/electrodes/segments.ts';
import { soilImages } from '../../src/soil/layer-images.ts';
import { layeredSoil } from '../../src/soil/layered-soil.ts';
import { doubleIntegral, type Line, line } from './double-integral.ts';

function mean(a: Line, b: Line, width: number): number {
  const way = a.middle.map((x, axis) => x - b.middle[axis]!) as [number, number, number];
  return meanInverseDistance(...way, ...a.along, a.length, ...b.along, b.length, width * width);
}

const unit = line([0, 0, 0], [1, 0, 0]);
const turned = (angle: number, length: number): Line =>
  line([0, 0, 0], [length * Math.cos(angle), length * Math.sin(angle), 0]);

const pairs: readonly (readonly [string, Line, Line])[] = [
  ['a line with itself', unit, unit],
  ['parallel, side by side', unit, line([0.3, 0.1, 0], [2.3, 0.1, 0])],
  ['parallel, the other way round', unit, line([3, 0.2, 0], [1.5, 0.2, 0])],
  ['end to end', unit, line([1, 0, 0], [3, 0, 0])],
  ['end to end with a gap', unit, line([-5, 0, 0], [-0.4, 0, 0])],
  ['a right angle with a shared end', unit, line([0, 0, 0], [0, 1, 0])],
  ['a right angle with a short arm', unit, line([0, 0, 0], [0, 0.05, 0])],
  ['a tee', unit, line([0.4, 0, 0], [0.4, 1, 0])],
  ['crossing', line([-0.3, 0, 0], [0.7, 0, 0]), line([0, -0.4, 0], [0, 0.6, 0])],
  ['three arms of a star', unit, turned((2 * Math.PI) / 3, 2)],
  ['neighbouring chords of a ring', unit, turned(Math.PI - 0.065, 1)],
  ['a narrow fork', unit, turned(1e-3, 1)],
  ['a hair from parallel', unit, turned(1e-4, 1.5)],
  ['skew', unit, line([0.3, -0.2, 0.3], [0.5, 0.6, 0.9])],
  ['skew and near', unit, line([0.3, -0.2, 0.02], [0.5, 0.6, 0.02])],
  ['a slope and its mirror image', line([0, 0, 0.5], [1, 0, 0.9]), line([0, 0, -0.5], [1, 0, -0.9])],
  ['a slope from the surface and its mirror image', line([0, 0, 0], [0.6, 0, 0.8]), line([0, 0, 0], [0.6, 0, -0.8])],
  ['a long one and a short one', line([0, 0, 0], [40, 0, 0]), line([3, 0.1, 0.2], [3.05, 0.3, 0.25])],
  ['far', unit, line([30, 40, 3], [31, 42, 2])],
];

describe('mean of 1 / distance between two lines', () => {
  it('the integral that it is held against, by hand: a line with itself, 2 (asinh(1 / w) - sqrt(1 + w^2) + w)', () => {
    for (const w of [0.001, 0.05, 2]) {
      const exact = 2 * (Math.asinh(1 / w) - Math.sqrt(1 + w * w) + w);
      expect(doubleIntegral(unit, unit, w) / exact).toBeCloseTo(1, 11);
    }
  });

  it.each(pairs)('%s: as a numerical double integral', (_, a, b) => {
    for (const width of [1e-3, 0.008, 0.05]) {
      expect(mean(a, b, width) / doubleIntegral(a, b, width)).toBeCloseTo(1, 7);
      expect(mean(b, a, width) / mean(a, b, width)).toBeCloseTo(1, 9);
    }
  });

  it('from just not parallel to parallel: 1e-5', () => {
    for (const angle of [1e-5, 5e-6, 3e-6, 1e-6, 1e-8, 0]) {
      for (const fromM of [
        [0, 0, 0],
        [0.4, 0.5, 0.1],
        [-1, 0, 0],
      ] as const) {
        for (const way of [1, -1]) {
          const to = [fromM[0] + way * Math.cos(angle), fromM[1] + Math.sin(angle), fromM[2]] as const;
          const b = line(fromM, to);
          expect(Math.abs(mean(unit, b, 0.008) / doubleIntegral(unit, b, 0.008) - 1)).toBeLessThan(1e-5);
        }
      }
    }
  });

  it('lengths times three, a third', () => {
    const tripled = ({ middle: [x, y, z], along, length }: Line): Line => ({
      middle: [3 * x, 3 * y, 3 * z],
      along,
      length: 3 * length,
    });
    for (const [, a, b] of pairs) expect((3 * mean(tripled(a), tripled(b), 0.03)) / mean(a, b, 0.01)).toBeCloseTo(1, 7);
  });
});

describe('lines from four lengths of the longer one on, by second moments', () => {
  // one segment each in 4 pi ohm m with no surface near: the entry is the mean of 1 / distance itself
  const entry = (a: Line, b: Line): number => {
    const runs = [a, b].map(({ middle: [x, y, z], along: [u, v, w], length }) => ({
      from: [x - (u * length) / 2, y - (v * length) / 2, 1e6 + z - (w * length) / 2] as const,
      to: [x + (u * length) / 2, y + (v * length) / 2, 1e6 + z + (w * length) / 2] as const,
      radiusM: 0.004,
      sheath: null,
    }));
    const soil = layeredSoil([4 * Math.PI]);
    const segments = segmentsOf([{ runs }], soil, () => 1);
    return influenceMatrix(segments, soilImages(soil))[1]! - 1 / 2e6;
  };

  it('are out by less than 3e-4, whichever way they lie', () => {
    let worst = 0;
    const ways = [0, 0.4, 0.9, Math.PI / 2, 2.2];
    for (const bearing of ways) {
      for (const one of ways) {
        for (const other of ways) {
          for (const apart of [4.0001, 5, 8]) {
            const a = line([0, 0, 0], [Math.cos(one), Math.sin(one), 0]);
            const at = [a.middle[0] + apart * Math.cos(bearing), a.middle[1] + apart * Math.sin(bearing)] as const;
            const half = [Math.cos(other) / 2, Math.sin(other) / 2] as const;
            const b = line([at[0] - half[0], at[1] - half[1], 0], [at[0] + half[0], at[1] + half[1], 0]);
            worst = Math.max(worst, Math.abs(entry(a, b) / doubleIntegral(a, b, 0.004) - 1));
          }
        }
      }
    }
    expect(worst).toBeLessThan(3e-4);
    expect(worst).toBeGreaterThan(1e-5);
  });
});
