import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ElectrodeShape } from '../../src/electrodes/electrode.ts';
import { electrodeResistance } from '../../src/electrodes/electrode-resistance.ts';
import type { SoilLayers } from '../../src/soil/layers.ts';
import { exact } from '../../src/units/interval.ts';
import { drilled, footM, inchM, ohmOf, rod, rods, soil } from './shapes.ts';

/** One of each kind, every figure known. */
const shapes: readonly ElectrodeShape[] = [
  rod(2.44, 0.0159),
  { ...rod(30, 0.15), kind: 'well casing' },
  drilled(3, 0.016, 0.15, 2.5),
  rods(3, 'triangle', 4.9, 2.44, 0.0159),
  { kind: 'wire', lengthM: exact(20), radiusM: exact(0.004), depthM: exact(0.6) },
  { kind: 'pipe', lengthM: exact(12), diameterM: exact(0.05), depthM: exact(1) },
  { kind: 'ring', lengthM: exact(40), radiusM: exact(0.004), depthM: exact(0.75) },
  { kind: 'star', count: 4, armLengthM: exact(10), radiusM: exact(0.002), depthM: exact(0.3) },
  { kind: 'plate', widthM: exact(0.9), heightM: exact(0.9), depthM: exact(1.5), stands: 'on edge' },
  {
    kind: 'encased',
    lengthM: exact(6.1),
    widthM: exact(0.4),
    heightM: exact(0.5),
    topM: exact(0.3),
    concreteOhmM: exact(60),
    coreDiameterM: exact(0.0127),
  },
  { kind: 'surface strap', lengthM: exact(15), widthM: exact(0.05) },
];

const figuresOf = (shape: ElectrodeShape): readonly string[] =>
  Object.entries(shape).flatMap(([name, value]) => (typeof value === 'object' && value !== null ? [name] : []));

describe.each(shapes.map((shape) => [shape.kind, shape] as const))('%s', (_, shape) => {
  it('has a resistance, its formula and where that comes from', () => {
    const { ohm, formula, source, missing } = electrodeResistance(shape, soil(100));
    expect(missing).toEqual([]);
    expect(ohm!.value).toBeGreaterThan(0);
    expect(ohm!.low).toBe(ohm!.value);
    expect(ohm!.high).toBe(ohm!.value);
    expect(formula).not.toBe('');
    expect(source.document).not.toBe('');
  });

  it.each(figuresOf(shape))('has none while %s is unknown, and says which', (name) => {
    const { ohm, missing } = electrodeResistance({ ...shape, [name]: null } as ElectrodeShape, soil(100));
    expect(ohm).toBeNull();
    expect(missing).toEqual([name]);
  });

  it('holds every case within its ranges', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const names = figuresOf(shape);
    fc.assert(
      fc.property(fc.array(share, { minLength: names.length, maxLength: names.length }), share, (shares, soilShare) => {
        const stretched: Record<string, unknown> = { ...shape };
        const inside: Record<string, unknown> = { ...shape };
        for (const [at, name] of names.entries()) {
          const { low } = (shape as unknown as Record<string, { low: number }>)[name]!;
          stretched[name] = { low, high: low * 1.4 };
          inside[name] = exact(low * (1 + 0.4 * shares[at]!));
        }
        const wide = electrodeResistance(stretched as unknown as ElectrodeShape, [
          { resistivityOhmM: { low: 50, high: 300 }, thicknessM: null },
        ]).ohm!;
        const own = ohmOf(electrodeResistance(inside as unknown as ElectrodeShape, soil(50 + 250 * soilShare)));
        expect(own).toBeGreaterThanOrEqual(wide.low * (1 - 1e-10));
        expect(own).toBeLessThanOrEqual(wide.high * (1 + 1e-10));
        expect(wide.value).toBeGreaterThan(wide.low);
        expect(wide.value).toBeLessThan(wide.high);
      }),
      { numRuns: 30 },
    );
  });
});

describe('what is not known', () => {
  it('soil', () => {
    expect(electrodeResistance(rod(2.4, 0.016), [])).toMatchObject({ ohm: null, missing: ['soil.layers'] });
  });

  it('counts, layouts and which way a plate stands', () => {
    const group = rods(3, null, 3, 2.4, 0.016);
    expect(electrodeResistance(group, soil(100)).missing).toEqual(['layout']);
    expect(electrodeResistance({ ...group, count: null, layout: 'ring' }, soil(100)).missing).toEqual(['count']);
    expect(
      electrodeResistance({ ...group, count: null, layout: 'ring', spacingM: null, radiusM: exact(3) }, soil(100))
        .missing,
    ).toEqual(['count']);
    expect(electrodeResistance({ ...shapes[8]!, stands: null } as ElectrodeShape, soil(100)).missing).toEqual([
      'stands',
    ]);
  });

  it('one rod of a group needs neither spacing nor layout', () => {
    const one = { ...rods(1, null, 3, 2.4, 0.016), spacingM: null };
    // the self term of a group is that of even leakage, 0.02 % above the slender form
    expect(
      ohmOf(electrodeResistance(one, soil(100))) / ohmOf(electrodeResistance(rod(2.4, 0.016), soil(100))),
    ).toBeCloseTo(1, 3);
  });

  it('a figure open above gives a lower end of 0 and no value', () => {
    const over = { ...rod(2.44, 0.0159), lengthM: { low: 2.44, high: Infinity } };
    const { ohm } = electrodeResistance(over, soil(100));
    expect(ohm).toMatchObject({ value: null, low: 0 });
    expect(ohm!.high).toBe(ohmOf(electrodeResistance(rod(2.44, 0.0159), soil(100))));
  });

  it('a figure that may be 0 leaves the upper end open', () => {
    const under = { ...rod(2.44, 0.0159), lengthM: { low: 0, high: 2.44 } };
    expect(electrodeResistance(under, soil(100)).ohm).toMatchObject({ high: Infinity });
  });

  it('a rod shorter than thick, a hole smaller than its rod, rods inside each other are out of range', () => {
    expect(electrodeResistance(rod(0.01, 0.016), soil(100))).toMatchObject({
      ohm: null,
      outOfRange: ['lengthM', 'diameterM'],
    });
    expect(electrodeResistance(drilled(3, 0.016, 0.01, 30), soil(100))).toMatchObject({
      outOfRange: ['holeDiameterM'],
    });
    expect(electrodeResistance(rods(2, 'line', 0.001, 3, 0.016), soil(100))).toMatchObject({
      outOfRange: ['spacingM'],
    });
  });
});

describe('layered soil', () => {
  const layers = (upper: number, lower: number, thickness: number): SoilLayers => [
    { resistivityOhmM: exact(upper), thicknessM: exact(thickness) },
    { resistivityOhmM: exact(lower), thicknessM: null },
  ];

  // A 10 ft x 5/8 in rod at grade, worked out apart from this program: boundary elements with images in both layers, and the
  // same rule of shared conductance, which is up to 20 % off.
  it.each([
    [100, 300, 6, 34.773, 33.09],
    [300, 100, 6, 95.1551, 99.27],
    [300, 100, 1.5, 45.8527, 49.25],
    [100, 300, 1.5, 54.8373, 50.03],
    [1000, 100, 1, 44.0316, 46.95],
    [100, 1000, 1.5, 75.8568, 60.95],
  ])('%d over %d ohm m at %d m: %d ohm, %d by the rule', (upper, lower, thickness, solved, byRule) => {
    const ohm = electrodeResistance(rod(10 * footM, 0.625 * inchM), layers(upper, lower, thickness)).ohm!;
    expect(solved).toBeGreaterThan(ohm.low);
    expect(solved).toBeLessThan(ohm.high);
    expect(Math.abs(ohm.value! - byRule)).toBeLessThan(0.00501);
  });

  it('lies between the two soils taken alone', () => {
    const { ohm } = electrodeResistance(rod(3, 0.016), layers(300, 100, 2));
    expect(ohm!.low).toBe(ohmOf(electrodeResistance(rod(3, 0.016), soil(100))));
    expect(ohm!.high).toBe(ohmOf(electrodeResistance(rod(3, 0.016), soil(300))));
    // 2 m at 300, 1 m at 100: 3 / (2 / 300 + 1 / 100) = 180 ohm m
    expect(ohm!.value).toBeCloseTo(1.8 * ohm!.low, 9);
  });

  it('a wire lies in the layer at its depth, at the boundary in the lower one', () => {
    const wire = (depthM: number): ElectrodeShape => ({ ...shapes[4]!, depthM: exact(depthM) }) as ElectrodeShape;
    const ratio = (depthM: number): number =>
      ohmOf(electrodeResistance(wire(depthM), layers(300, 100, 2))) /
      ohmOf(electrodeResistance(wire(depthM), soil(100)));
    expect(ratio(0.5)).toBeCloseTo(3, 12);
    expect(ratio(2)).toBeCloseTo(1, 12);
    expect(ratio(3)).toBeCloseTo(1, 12);
  });

  it('of one resistivity is uniform, however many layers', () => {
    expect(electrodeResistance(rod(3, 0.016), layers(100, 100, 1)).ohm).toEqual(
      electrodeResistance(rod(3, 0.016), soil(100)).ohm,
    );
  });

  it('of unknown thickness has bounds and no value', () => {
    const unknown: SoilLayers = [{ ...layers(300, 100, 2)[0]!, thicknessM: null }, layers(300, 100, 2)[1]!];
    const { ohm, missing } = electrodeResistance(rod(3, 0.016), unknown);
    expect(missing).toEqual(['soil.layers[0].thicknessM']);
    expect(ohm).toMatchObject({ value: null, low: ohmOf(electrodeResistance(rod(3, 0.016), soil(100))) });
  });
});
