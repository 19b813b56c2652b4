import { describe, expect, it } from 'vitest';
import { slenderRod } from '../../src/electrodes/rod.ts';
import { rodDepthReadings } from '../../src/electrodes/rod-depth-readings.ts';
import { type LayeredSoil, layerAt } from '../../src/soil/layered-soil.ts';
import { footM, inchM } from './shapes.ts';

const radiusM = (0.625 / 2) * inchM;
const reading = (feet: number, ohm: number) => ({ lengthM: feet * footM, ohm });
const near = (ours: number, known: number, share: number): void => {
  expect(Math.abs(ours / known - 1)).toBeLessThan(share);
};

/**
 * Common practice, no source: 750 ohm with 10 ft in the ground, 5 ohm with 55 ft, the drop at 45 ft. Soils that have both, from
 * rod-in-layers.py (boundary elements on the endless series of images) with a root found by scipy: boundary (ft), upper and
 * lower resistivity.
 */
describe('750 ohm at 10 ft and 5 ohm at 55 ft', () => {
  const answer = rodDepthReadings([reading(10, 750), reading(55, 5)], radiusM, { dropM: 45 * footM });
  const byScipy: readonly (readonly [number, number, number])[] = [
    [15, 2486, 50.2],
    [20, 2424, 44.8],
    [30, 2373, 33.7],
    [40, 2350, 21.9],
    [45, 2343, 15.6],
    [50, 2337, 8.8],
  ];

  it('are no uniform soil: the one means 2270 ohm m, the other 66', () => {
    expect(answer.fitsUniform).toBe(false);
    // R = rho / (2 pi L) (ln(8 L / d) - 1), which reads 0.5 to 0.9 % high
    near(answer.uniformOhmM.high, 2268, 0.01);
    near(answer.uniformOhmM.low, 65.5, 0.01);
  });

  it('are two layers with the boundary anywhere from 15 to 50 ft, the lower one of 50 to 9 ohm m', () => {
    near(answer.boundaryM!.low, 15 * footM, 1e-9);
    near(answer.boundaryM!.high, 50 * footM, 1e-9);
    expect(Math.round(answer.lowerOhmM!.high)).toBe(50);
    expect(Math.round(answer.lowerOhmM!.low)).toBe(9);
    expect(answer.reason).toBeNull();
  });

  it('have the layers that another hand finds for each boundary', () => {
    for (const [feet, upper, lower] of byScipy) {
      const fit = answer.layers.find((l) => Math.abs(l.boundaryM - feet * footM) < 1e-6)!;
      near(fit.upperOhmM, upper, 0.005);
      near(fit.lowerOhmM, lower, 0.006);
    }
  });

  it('with the drop seen at 45 ft the lower layer has about 15 ohm m', () => {
    near(answer.atDrop!.lowerOhmM, 15.6, 0.006);
    near(answer.atDrop!.upperOhmM, 2343, 0.005);
  });
});

/** Quick, for what does not hang on figures: each metre gives off as the conductance of its layer allows. */
function byConductance(lengthM: number, radius: number, soil: LayeredSoil): number {
  const metres = Array.from({ length: 200 }, (_, at) => ((at + 0.5) * lengthM) / 200);
  const conductance = metres.reduce((sum, depthM) => sum + 1 / soil.resistivityOhmM[layerAt(soil, depthM)]!, 0) / 200;
  return slenderRod({ lengthM, topM: 0 }, 2 * radius) / conductance;
}

describe('readings of one rod at several depths', () => {
  // rod-in-layers.py: 400 over 80 ohm m at 4 m, radius 8 mm
  const layered = [
    { lengthM: 2, ohm: 177.73 },
    { lengthM: 4, ohm: 90.16 },
    { lengthM: 6, ohm: 28.27 },
    { lengthM: 9, ohm: 15.21 },
  ];

  it('settle the boundary where there are four', () => {
    const { layers, atDrop, boundaryM } = rodDepthReadings(layered, 0.008, { dropM: 4, errorShare: 0.03 });
    near(atDrop!.upperOhmM, 400, 0.01);
    near(atDrop!.lowerOhmM, 80, 0.01);
    expect(layers.length).toBeGreaterThan(0);
    expect(boundaryM!.low).toBeGreaterThan(3);
    expect(boundaryM!.high).toBeLessThan(5);
  });

  it('do not ask for layers where uniform soil has them', () => {
    // rod-in-layers.py, 100 ohm m
    const answer = rodDepthReadings(
      [
        { lengthM: 3, ohm: 33.23 },
        { lengthM: 10, ohm: 11.9 },
      ],
      0.008,
    );
    expect(answer).toMatchObject({ fitsUniform: true, layers: [], boundaryM: null, reason: 'uniform' });
    near(answer.uniformOhmM.low, 100, 0.005);
  });

  it('at one depth tell of one layer only', () => {
    expect(rodDepthReadings([{ lengthM: 3, ohm: 33 }], 0.008)).toMatchObject({ layers: [], reason: 'one depth' });
    const twice = rodDepthReadings(
      [
        { lengthM: 3, ohm: 33 },
        { lengthM: 3, ohm: 60 },
      ],
      0.008,
      { dropM: 2 },
    );
    expect(twice).toMatchObject({ fitsUniform: false, layers: [], atDrop: null, reason: 'one depth' });
  });

  it('that rise as the rod goes down are no soil at all: more metal never reads more', () => {
    const answer = rodDepthReadings(
      [
        { lengthM: 2, ohm: 40 },
        { lengthM: 4, ohm: 60 },
      ],
      0.008,
    );
    expect(answer).toMatchObject({ fitsUniform: false, layers: [], boundaryM: null, reason: 'no two layers' });
  });

  it('that no two layers have between them are refused', () => {
    const bumpy = [
      { lengthM: 2, ohm: 150 },
      { lengthM: 4, ohm: 20 },
      { lengthM: 6, ohm: 19.5 },
      { lengthM: 9, ohm: 3 },
    ];
    expect(rodDepthReadings(bumpy, 0.008, { solve: byConductance })).toMatchObject({
      layers: [],
      reason: 'no two layers',
    });
  });

  it('come in any order', () => {
    const [a, b] = [layered, [...layered].reverse()].map((all) =>
      rodDepthReadings(all, 0.008, { solve: byConductance, errorShare: 0.2 }),
    );
    expect(a!.layers.length).toBeGreaterThan(0);
    expect(a).toEqual(b);
  });

  it('are above 0 ohm', () => {
    expect(() => rodDepthReadings([], 0.008)).toThrow(RangeError);
    expect(() => rodDepthReadings([{ lengthM: 3, ohm: 0 }], 0.008)).toThrow(RangeError);
    expect(() => rodDepthReadings([{ lengthM: Number.NaN, ohm: 5 }], 0.008)).toThrow(RangeError);
  });
});
