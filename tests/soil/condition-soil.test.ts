import { describe, expect, it } from 'vitest';
import { namedCondition } from '../../src/materials/soil-conditions.ts';
import type { Interval } from '../../src/math/interval.ts';
import { conditionSoil } from '../../src/soil/condition-soil.ts';

const exactly = (figure: number): Interval => ({ low: figure, high: figure });
const twoLayers = [
  { resistivityOhmM: exactly(100), thicknessM: exactly(2) },
  { resistivityOhmM: exactly(40), thicknessM: null },
];

describe('soil of a condition', () => {
  it('with nothing changed is the soil itself', () => {
    expect(conditionSoil(twoLayers, {}).likely).toEqual({ resistivityOhmM: [100, 40], thicknessM: [2] });
  });

  it('a frozen top over two layers is three layers', () => {
    const { low, likely, high } = conditionSoil(twoLayers, { frostM: exactly(0.75), frozenRatio: exactly(10) });
    const three = { resistivityOhmM: [1000, 100, 40], thicknessM: [0.75, 1.25] };
    expect([low, likely, high]).toEqual([three, three, three]);
  });

  it('frost through the first layer freezes both', () => {
    const { likely } = conditionSoil(twoLayers, { frostM: exactly(3), frozenRatio: exactly(10) });
    expect(likely).toEqual({ resistivityOhmM: [1000, 400, 40], thicknessM: [2, 1] });
  });

  it('is wet below the frost, as far as it is wet', () => {
    const { likely } = conditionSoil(twoLayers, {
      frostM: exactly(0.5),
      frozenRatio: exactly(8),
      wetDepthM: exactly(1.5),
      wetRatio: exactly(0.75),
    });
    expect(likely).toEqual({ resistivityOhmM: [800, 75, 100, 40], thicknessM: [0.5, 1, 0.5] });
    const deepFrost = { frostM: exactly(2.5), frozenRatio: exactly(8), wetDepthM: exactly(1), wetRatio: exactly(0.5) };
    expect(conditionSoil(twoLayers, deepFrost).likely).toEqual({
      resistivityOhmM: [800, 320, 40],
      thicknessM: [2, 0.5],
    });
  });

  it('takes the named conditions as they come', () => {
    const of = (name: Parameters<typeof namedCondition>[0]) =>
      conditionSoil(twoLayers, namedCondition(name, exactly(0.9)));
    const top = (name: Parameters<typeof namedCondition>[0]): number => of(name).likely!.resistivityOhmM[0]!;
    expect(top('wet')).toBeLessThan(100);
    expect(top('dry')).toBeGreaterThan(100);
    expect(top('winter')).toBeGreaterThan(top('summer'));
    for (const name of ['wet', 'dry', 'summer', 'winter'] as const) {
      expect(of(name).merged).toBe(0);
      expect(of(name).low!.resistivityOhmM.at(-1)).toBe(40);
    }
  });

  it('refuses a depth without its ratio', () => {
    expect(() => conditionSoil(twoLayers, { frostM: exactly(1) })).toThrow(RangeError);
    expect(() => conditionSoil(twoLayers, { dryDepthM: exactly(1), dryRatio: exactly(0) })).toThrow(RangeError);
  });
});
