import { describe, expect, it } from 'vitest';
import { rodInLayers } from '../../src/electrodes/rod-in-layers.ts';
import { solveBodies } from '../../src/electrodes/solve-bodies.ts';
import { conditionSoil } from '../../src/soil/condition-soil.ts';
import { soilImages } from '../../src/soil/layer-images.ts';
import type { LayeredSoil } from '../../src/soil/layered-soil.ts';

const exactly = (figure: number) => ({ low: figure, high: figure });

/** 100 ohm m, frozen down to a depth. */
function frozenSoil(frostM: number, times: number): LayeredSoil {
  const soil = [{ resistivityOhmM: exactly(100), thicknessM: null }];
  const { low, likely, high } = conditionSoil(soil, { frostM: exactly(frostM), frozenRatio: exactly(times) });
  expect([low, high]).toEqual([likely, likely]);
  return likely!;
}

const rod = (soil: LayeredSoil): number => rodInLayers(10 * 0.3048, (0.625 / 2) * 0.0254, soil);

function wire(soil: LayeredSoil): number {
  const run = { from: [0, 0, 0.5], to: [20, 0, 0.5], radiusM: 0.005, sheath: null } as const;
  const solved = solveBodies([{ runs: [run] }], soilImages(soil));
  return solved.ok ? solved.resistanceOhm[0]! : Number.NaN;
}

/**
 * Boundary elements on the images of two layers, worked out apart from this program: resistance over that in unfrozen soil,
 * frozen soil of 5, 10 and 50 times the resistivity, by frost depth (m); a rod of 10 ft x 5/8 in, a wire of 20 m at 0.5 m.
 */
const table: readonly (readonly [number, readonly [number, number, number], readonly [number, number, number]])[] = [
  [0.3, [1.071, 1.081, 1.089], [1.061, 1.072, 1.08]],
  [0.6, [1.155, 1.178, 1.197], [2.529, 4.293, 18.22]],
  [0.9, [1.253, 1.295, 1.331], [3.055, 5.52, 25.13]],
  [1.2, [1.372, 1.441, 1.502], [3.305, 6.094, 28.3]],
  [1.5, [1.519, 1.629, 1.729], [3.477, 6.487, 30.47]],
];

describe('frost', () => {
  const thawed = { resistivityOhmM: [100], thicknessM: [] };
  const [rodThawed, wireThawed] = [rod(thawed), wire(thawed)];

  it.each(table)('%d m deep: rod and wire to 2 %', (frostM, rods, wires) => {
    for (const [at, times] of [5, 10, 50].entries()) {
      const soil = frozenSoil(frostM, times);
      const [onRod, onWire] = [rod(soil) / rodThawed, wire(soil) / wireThawed];
      expect(Math.abs(onRod / rods[at]! - 1), `rod, ${times} times: ${onRod}`).toBeLessThan(0.02);
      expect(Math.abs(onWire / wires[at]! - 1), `wire, ${times} times: ${onWire}`).toBeLessThan(0.02);
    }
  });

  it('takes from a rod what stands in it and no more, however cold', () => {
    // the table's 1.295 at 10 times and 1.331 at 50 go on straight, over 1 / times, to 1.340
    expect(Math.abs(rod(frozenSoil(0.9, 1e4)) / rodThawed / 1.34 - 1)).toBeLessThan(0.01);
  });
});
