import { describe, expect, it } from 'vitest';
import { type SoilImages, soilImages } from '../../src/soil/layer-images.ts';
import { boundariesM, type LayeredSoil, layeredSoil } from '../../src/soil/layered-soil.ts';
import { pointPotential } from '../../src/soil/point-potential.ts';
import { twoLayerSeries } from './two-layer-series.ts';

const imagesOf = (ohmM: readonly number[], thickM: readonly number[] = []): SoilImages =>
  soilImages(layeredSoil(ohmM, thickM));
/** A soil as it stands: equal layers are not taken together. */
const asIs = (resistivityOhmM: readonly number[], thicknessM: readonly number[]): SoilImages =>
  soilImages({ resistivityOhmM, thicknessM });

/** Surface, middles, boundaries from both sides, and below them all. */
function depthsOf(soil: LayeredSoil): readonly number[] {
  const feet = boundariesM(soil);
  return [
    0,
    ...feet.flatMap((foot, at) => [(foot + (feet[at - 1] ?? 0)) / 2, foot, foot * (1 + 1e-12)]),
    4 * feet.at(-1)!,
  ];
}

const frosts: readonly SoilImages[] = [
  imagesOf([5000, 100, 1000], [0.3, 3]),
  imagesOf([5000, 100, 1000, 20], [0.3, 1, 3]),
  imagesOf([20, 3000, 50, 800], [0.02, 8, 0.2]),
  imagesOf([1e4, 1, 1e4, 1], [0.3, 1, 3]),
];

describe('potential of a point in layers', () => {
  it('in one layer is that of the source and its mirror image', () => {
    const soil = imagesOf([100]);
    expect(soil.between(0, 0).count).toBe(2);
    // 100 / (4 pi) (1 / 0.5 + 1 / hypot(0.3, 1.2)), by hand: 15.91549 + 6.43346
    expect(pointPotential(soil, 0.8, 0.4, 0.3)).toBeCloseTo(15.91549 + 6.43346, 4);
    // at the surface 100 / (2 pi r)
    expect(pointPotential(soil, 0, 0, 10)).toBeCloseTo(100 / (20 * Math.PI), 14);
  });

  it('in equal layers is that of uniform soil', () => {
    const uniform = imagesOf([100]);
    for (const layers of [asIs([100, 100], [2]), asIs([100, 100, 100, 100], [0.3, 1, 3])]) {
      for (const source of depthsOf(layers.soil)) {
        for (const depth of depthsOf(layers.soil)) {
          const ohm = pointPotential(uniform, source, depth, 1.7);
          expect(pointPotential(layers, source, depth, 1.7) / ohm).toBeCloseTo(1, 7);
        }
      }
    }
    // taken together already when the soil is made, wherever they stand
    expect(layeredSoil([100, 100, 30], [1, 2])).toEqual(layeredSoil([100, 30], [3]));
  });

  it('changes with nothing when a layer is cut in two', () => {
    const whole = imagesOf([5000, 100, 1000], [0.3, 3]);
    const cut = asIs([5000, 100, 100, 1000], [0.3, 1, 2]);
    for (const source of depthsOf(cut.soil)) {
      for (const depth of depthsOf(cut.soil)) {
        expect(pointPotential(cut, source, depth, 2) / pointPotential(whole, source, depth, 2)).toBeCloseTo(1, 6);
      }
    }
  });

  // Worked out by a direct solution of the layer conditions at each wavenumber, apart from this program, to six figures.
  it.each([
    [[100, 300], 2, 0.5, 0.8, 1, 18.077086],
    [[100, 300], 2, 0.5, 3, 1, 10.284459],
    [[100, 300], 2, 3, 0.5, 1, 10.284459],
    [[100, 300], 2, 3, 4, 1.5, 13.491058],
    [[100, 300], 2, 0.3, 0, 2, 12.942647],
    [[300, 100], 1.5, 0.5, 0.8, 1, 24.102954],
    [[300, 100], 1.5, 0.5, 3, 1, 6.220362],
    [[300, 100], 1.5, 3, 0.5, 1, 6.220362],
    [[300, 100], 1.5, 3, 4, 1.5, 5.965409],
    [[300, 100], 1.5, 0.3, 0, 2, 13.154652],
  ] as const)('%j ohm m, boundary at %d m: %d m, %d m, %d m: %d', (ohmM, boundaryM, source, depth, distance, ohm) => {
    expect(pointPotential(imagesOf(ohmM, [boundaryM]), source, depth, distance) / ohm).toBeCloseTo(1, 6);
    expect(twoLayerSeries(ohmM, boundaryM, source, depth, distance) / ohm).toBeCloseTo(1, 6);
  });

  it.each([-0.98, -0.9, -0.5, -0.1, 0.1, 0.5, 0.9, 0.98])('two layers, K = %d: the endless series to 1e-6', (k) => {
    const ohmM = [100, (100 * (1 + k)) / (1 - k)] as const;
    for (const boundaryM of [0.05, 2, 40]) {
      const soil = imagesOf(ohmM, [boundaryM]);
      for (const source of depthsOf(soil.soil)) {
        for (const depth of depthsOf(soil.soil)) {
          for (const distance of [0.02, 0.3, 1, 5, 20, 300]) {
            const ohm = twoLayerSeries(ohmM, boundaryM, source, depth, distance);
            expect(Math.abs(pointPotential(soil, source, depth, distance) / ohm - 1)).toBeLessThan(1e-6);
          }
        }
      }
    }
  });
});

describe('laws of the potential in layers', () => {
  it('reciprocity across layers to 1e-9, source and receiver changed over', () => {
    for (const soil of frosts) {
      const depths = depthsOf(soil.soil);
      for (const source of depths) {
        for (const depth of depths) {
          for (const distance of [0.05, 1, 30, 1000]) {
            const [there, back] = [
              pointPotential(soil, source, depth, distance),
              pointPotential(soil, depth, source, distance),
            ];
            expect(Math.abs(there / back - 1)).toBeLessThan(1e-9);
          }
        }
      }
    }
  });

  it('the potential is the same on both sides of a boundary', () => {
    for (const soil of frosts) {
      for (const boundary of boundariesM(soil.soil)) {
        for (const source of depthsOf(soil.soil)) {
          for (const distance of [0.05, 1, 30, 1000]) {
            const [above, below] = [boundary * (1 - 1e-13), boundary * (1 + 1e-13)];
            const ohm = pointPotential(soil, source, above, distance);
            expect(Math.abs(pointPotential(soil, source, below, distance) / ohm - 1)).toBeLessThan(2e-6);
          }
        }
      }
    }
  });

  it('the current that goes down through a boundary arrives below it', () => {
    const soil = frosts[1]!;
    const { resistivityOhmM } = soil.soil;
    boundariesM(soil.soil).forEach((boundary, at) => {
      const step = boundary * 1e-4;
      const flow = (layer: number, side: 1 | -1): number => {
        // second order differences from within one layer
        const v = [0.5, 1.5, 2.5].map((n) => pointPotential(soil, 0.1, boundary + side * n * step, 0.7));
        return (side * (2 * v[0]! - 3 * v[1]! + v[2]!)) / step / resistivityOhmM[layer]!;
      };
      expect(flow(at, -1) / flow(at + 1, 1)).toBeCloseTo(1, 3);
    });
  });

  it('no current leaves through the surface', () => {
    for (const soil of frosts) {
      const at = (depthM: number): number => pointPotential(soil, 0.15, depthM, 0.5);
      const slope = (depthM: number): number => (at(depthM + 1e-4) - at(depthM)) / 1e-4;
      expect(Math.abs(slope(0))).toBeLessThan(1e-2 * Math.abs(slope(0.1)));
    }
  });

  it('far away the last layer rules: rho / (2 pi r)', () => {
    for (const soil of frosts) {
      const { resistivityOhmM, thicknessM } = soil.soil;
      const total = thicknessM.reduce((sum, thick) => sum + thick, 0);
      const contrast = Math.max(...resistivityOhmM) / Math.min(...resistivityOhmM);
      const distance = 1000 * total * contrast;
      for (const source of depthsOf(soil.soil)) {
        const ohm = pointPotential(soil, source, 0, distance);
        expect((ohm * 2 * Math.PI * distance) / resistivityOhmM.at(-1)!).toBeCloseTo(1, 4);
      }
    }
  });

  it('rises with the resistivity of any layer when source and receiver are at one place', () => {
    const least = imagesOf([100, 200, 50], [1, 2]);
    const at = (soil: SoilImages): number =>
      pointPotential(soil, 0.5, 0.5, 0.01) - pointPotential(least, 0.5, 0.5, 0.01);
    expect(at(imagesOf([100, 210, 50], [1, 2]))).toBeGreaterThan(0);
    expect(at(imagesOf([100, 200, 55], [1, 2]))).toBeGreaterThan(0);
    expect(at(imagesOf([101, 200, 50], [1, 2]))).toBeGreaterThan(0);
  });

  it('all figures of length and resistivity scale it', () => {
    const [one, other] = [imagesOf([100, 20, 3000], [0.3, 2]), imagesOf([700, 140, 21000], [0.9, 6])];
    // resistivities times 7, lengths times 3
    expect(pointPotential(other, 0.6, 3, 6) / pointPotential(one, 0.2, 1, 2)).toBeCloseTo(7 / 3, 9);
  });

  it('twelve layers and layers without an end in sight stay figures', () => {
    const ohmM = Array.from({ length: 12 }, (_, i) => (i % 2 === 0 ? 1e3 : 1));
    const soil = imagesOf(ohmM, new Array(11).fill(0.001));
    for (const source of [0, 0.0055, 1]) {
      const set = pointPotential(soil, source, 0.0035, 0.2);
      expect(set).toBeGreaterThan(0);
      expect(Number.isFinite(set)).toBe(true);
    }
    // a second layer from 1e9 m down is never met
    expect(pointPotential(imagesOf([100, 5], [1e9]), 1, 0, 3) / pointPotential(imagesOf([100]), 1, 0, 3)).toBeCloseTo(
      1,
      6,
    );
    expect(pointPotential(imagesOf([100, 5], [1e300]), 1, 0, 3) / pointPotential(imagesOf([100]), 1, 0, 3)).toBeCloseTo(
      1,
      6,
    );
  });
});
