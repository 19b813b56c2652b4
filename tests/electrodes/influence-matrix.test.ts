import { describe, expect, it } from 'vitest';
import type { Run } from '../../src/electrodes/body.ts';
import { influenceMatrix } from '../../src/electrodes/influence-matrix.ts';
import { type Segments, segmentsOf } from '../../src/electrodes/segments.ts';
import { soilImages } from '../../src/soil/layer-images.ts';
import { type LayeredSoil, layeredSoil } from '../../src/soil/layered-soil.ts';
import { doubleIntegral, type Line } from './double-integral.ts';

const radiusM = 0.004;
const run = (from: Run['from'], to: Run['to'], sheath: Run['sheath'] = null): Run => ({ from, to, radiusM, sheath });

function lineOf({ middleM, along, lengthM }: Segments, i: number): Line {
  return {
    middle: [middleM[3 * i]!, middleM[3 * i + 1]!, middleM[3 * i + 2]!],
    along: [along[3 * i]!, along[3 * i + 1]!, along[3 * i + 2]!],
    length: lengthM[i]!,
  };
}

function isSame(a: Line, b: Line): boolean {
  return a.middle.every((x, axis) => x === b.middle[axis]) && a.along.every((x, axis) => x === b.along[axis]);
}

/**
 * The other hand: every image of a segment in its place, and a numerical double integral for each. `size` is what all images
 * would make if none took anything off another.
 */
function entryByIntegral(segments: Segments, soil: LayeredSoil, i: number, j: number): { ohm: number; size: number } {
  const set = soilImages(soil).between(segments.layer[j]!, segments.layer[i]!);
  const source = lineOf(segments, j);
  let ohm = 0;
  let size = 0;
  for (let k = 0; k < set.count; k++) {
    const turn = set.sign[k]!;
    const image: Line = {
      middle: [source.middle[0], source.middle[1], set.offsetM[k]! + turn * source.middle[2]],
      along: [source.along[0], source.along[1], turn * source.along[2]],
      length: source.length,
    };
    const share = set.strengthOhmM[k]! * doubleIntegral(lineOf(segments, i), image, radiusM);
    ohm += share;
    size += Math.abs(share);
  }
  return { ohm, size };
}

const soils = [
  layeredSoil([100]),
  layeredSoil([300, 50], [1.2]),
  layeredSoil([40, 900], [0.6]),
  layeredSoil([2000, 100, 400], [0.25, 1.4]),
];

/** Level, upright and sloping wire in a heap: near and far, crossing layers, touching and parallel. */
const heap: readonly Run[] = [
  run([0, 0, 0.1], [4, 0, 0.1]),
  run([0, 0, 0.1], [0, 0, 2.5]),
  run([4, 0, 0.1], [4.5, 3, 2]),
  run([0, 0.5, 0.4], [4, 0.5, 0.4]),
  run([1, 6, 0], [1.1, 6, 0.9]),
  run([20, -15, 0.5], [26, -15, 0.5]),
];

describe('influence of segments on each other', () => {
  it.each(soils)('is that of all images, by a numerical double integral: $resistivityOhmM ohm m', (soil) => {
    const segments = segmentsOf([{ runs: heap }], soil, () => 3);
    const matrix = influenceMatrix(segments, soilImages(soil));
    let worst = 0;
    for (let i = 0; i < segments.count; i++) {
      for (let j = 0; j <= i; j++) {
        const { ohm, size } = entryByIntegral(segments, soil, i, j);
        worst = Math.max(worst, Math.abs(matrix[i * segments.count + j]! - ohm) / size);
      }
    }
    // what second moments leave from four lengths on
    expect(worst).toBeLessThan(3e-4);
  });

  it('is out by less than 3e-4 from touching to far, however two wires lie', () => {
    const soil = layeredSoil([100]);
    const directions = [0, 0.5, 1, Math.PI / 2, 2.4].map((angle) => [Math.cos(angle), Math.sin(angle)] as const);
    let worst = 0;
    for (const apart of [0.5, 1.2, 2.1, 2.4, 2.51, 2.8, 3.5, 3.99, 4.01, 6]) {
      for (const [x, z] of directions) {
        for (const [u, w] of directions) {
          for (const length of [0.3, 1]) {
            const [cx, cz] = [apart * x, 9 + apart * z];
            const runs = [
              run([-0.5, 0, 9], [0.5, 0, 9]),
              run(
                [cx - (u * length) / 2, 0.05, cz - (w * length) / 2],
                [cx + (u * length) / 2, 0.05, cz + (w * length) / 2],
              ),
            ];
            const segments = segmentsOf([{ runs }], soil, () => 1);
            const ohm = influenceMatrix(segments, soilImages(soil))[1]!;
            worst = Math.max(worst, Math.abs(ohm / entryByIntegral(segments, soil, 1, 0).ohm - 1));
          }
        }
      }
    }
    expect(worst).toBeLessThan(3e-4);
  });

  it('is mutual to the last bit, also across layers', () => {
    for (const soil of soils) {
      const segments = segmentsOf([{ runs: heap }], soil, () => 12);
      const matrix = influenceMatrix(segments, soilImages(soil));
      const { count } = segments;
      expect(matrix.every((ohm, at) => ohm === matrix[(at % count) * count + Math.floor(at / count)])).toBe(true);
    }
  });

  it('does not depend on the order of the wires', () => {
    for (const soil of soils) {
      const [there, back] = [heap, heap.toReversed()].map((runs) => segmentsOf([{ runs }], soil, () => 4));
      const first = influenceMatrix(there!, soilImages(soil));
      const second = influenceMatrix(back!, soilImages(soil));
      const count = there!.count;
      const partner = Array.from({ length: count }, (_, i) =>
        Array.from(back!.lengthM).findIndex((__, k) => isSame(lineOf(there!, i), lineOf(back!, k))),
      );
      for (let i = 0; i < count; i++) {
        for (let j = 0; j < count; j++) {
          const other = second[partner[i]! * count + partner[j]!]!;
          // images of a source in another layer are fitted for each direction by itself
          expect(Math.abs(first[i * count + j]! / other - 1)).toBeLessThan(1e-6);
        }
      }
    }
  });

  // By hand: rho ln(D / d) / (2 pi l) = 30 ln(0.15 / 0.01) / (2 pi 3) = 4.3100 ohm.
  it('has what concrete adds on the diagonal alone', () => {
    const soil = layeredSoil([100]);
    const bare = { from: [0, 0, 0.5], to: [0, 0, 3.5], radiusM: 0.15, sheath: null } as const;
    const cased = { ...bare, sheath: { resistivityOhmM: 30, coreRadiusM: 0.01 } };
    const next = run([5, 0, 0.5], [5, 0, 3.5]);
    const [without, within] = [bare, cased].map((own) =>
      influenceMatrix(
        segmentsOf([{ runs: [own, next] }], soil, () => 1),
        soilImages(soil),
      ),
    );
    expect(within![0]! - without![0]!).toBeCloseTo(4.31, 3);
    expect(within!.slice(1)).toEqual(without!.slice(1));
  });
});
