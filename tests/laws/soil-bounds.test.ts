import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rodInLayers } from '../../src/electrodes/rod-in-layers.ts';
import { layeredSoil } from '../../src/soil/layered-soil.ts';
import type { SoilLayers } from '../../src/soil/layers.ts';
import { profileBounds } from '../../src/soil/profile-bounds.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });
const between = (least: number, greatest: number) =>
  fc.tuple(share, share).map(([a, b]) => ({
    low: least * (greatest / least) ** Math.min(a, b),
    high: least * (greatest / least) ** Math.max(a, b),
  }));
const layers: fc.Arbitrary<SoilLayers> = fc.array(
  fc.record({ resistivityOhmM: between(10, 3000), thicknessM: between(0.3, 8) }),
  { minLength: 2, maxLength: 3 },
);

describe('Rayleigh: resistance to earth rises with resistivity everywhere', () => {
  // the solver's own error, up to 0.5 % on either side, is no breach
  it('a rod in any admitted soil lies between the same rod in the two bounds', () => {
    fc.assert(
      fc.property(layers, fc.array(share, { minLength: 6, maxLength: 6 }), share, (soil, at, deep) => {
        const lengthM = 1 + 9 * deep;
        const within = ({ low, high }: { low: number; high: number }, s: number): number => low * (1 - s) + high * s;
        const admitted = layeredSoil(
          soil.map((l, i) => within(l.resistivityOhmM, at[i]!)),
          soil.slice(0, -1).map((l, i) => within(l.thicknessM!, at[3 + i]!)),
        );
        const { low, high } = profileBounds(soil);
        const ohm = rodInLayers(lengthM, 0.008, admitted);
        expect(ohm).toBeGreaterThanOrEqual(rodInLayers(lengthM, 0.008, low!) * 0.995);
        expect(ohm).toBeLessThanOrEqual(rodInLayers(lengthM, 0.008, high!) * 1.005);
      }),
      { numRuns: 40 },
    );
  });
});
