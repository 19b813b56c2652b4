import { describe, expect, it } from 'vitest';
import {
  boundariesM,
  greatestContrast,
  layerAt,
  layeredSoil,
  mostLayers,
  thinnestLayerM,
} from '../../src/soil/layered-soil.ts';
import { profileBounds } from '../../src/soil/profile-bounds.ts';

describe('soil of plain layers', () => {
  it.each([
    ['no layer', [], []],
    ['a thickness too few', [100, 200], []],
    ['a thickness too many', [100], [1]],
    ['resistivity 0', [0], []],
    ['a negative resistivity', [100, -5], [1]],
    ['more than 1e8', [1e9], []],
    ['less than 1e-3', [1e-4], []],
    ['a resistivity that is no number', [Number.NaN], []],
    ['an endless resistivity', [Number.POSITIVE_INFINITY], []],
    ['a layer of no thickness', [100, 200], [0]],
    ['a negative thickness', [100, 200], [-1]],
    ['a layer under a millimetre', [100, 200], [0.0009]],
    ['a thickness that is no number', [100, 200], [Number.NaN]],
    ['an endless thickness over another layer', [100, 200], [Number.POSITIVE_INFINITY]],
    ['more than a million apart', [1, 1.1e6], [1]],
  ])('refuses %s', (_, ohmM, thickM) => {
    expect(() => layeredSoil(ohmM, thickM)).toThrow(RangeError);
  });

  it('refuses thirteen different layers, and takes thirteen of which two are one', () => {
    const ohmM = Array.from({ length: mostLayers + 1 }, (_, i) => 100 + i);
    const thickM = new Array<number>(mostLayers).fill(1);
    expect(() => layeredSoil(ohmM, thickM)).toThrow(RangeError);
    expect(layeredSoil([100, ...ohmM.slice(0, -1)], thickM).resistivityOhmM).toHaveLength(mostLayers);
  });

  it('takes figures at its limits', () => {
    expect(layeredSoil([1e-3, 1e3], [thinnestLayerM]).resistivityOhmM).toEqual([1e-3, 1e3]);
    expect(layeredSoil([1e8, 1e8 / greatestContrast], [1]).resistivityOhmM).toEqual([1e8, 100]);
  });

  it('a boundary belongs to the layer above it', () => {
    const soil = layeredSoil([100, 20, 300], [0.5, 2]);
    expect(boundariesM(soil)).toEqual([0.5, 2.5]);
    expect([0, 0.5, 0.500001, 2.5, 2.500001, 1e9].map((depthM) => layerAt(soil, depthM))).toEqual([0, 0, 1, 1, 2, 2]);
  });
});

describe('bounds of soil more than a million apart', () => {
  const exact = (figure: number) => ({ low: figure, high: figure });
  const layers = [
    { resistivityOhmM: exact(1), thicknessM: exact(2) },
    { resistivityOhmM: exact(5e7), thicknessM: null },
  ];

  it('are brought nearer outward and say so; there is no likely soil', () => {
    const { low, high, likely, merged } = profileBounds(layers);
    expect(low!.resistivityOhmM).toEqual([1, 1e6]);
    expect(high!.resistivityOhmM).toEqual([50, 5e7]);
    expect(likely).toBeNull();
    expect(merged).toBe(2);
  });
});
