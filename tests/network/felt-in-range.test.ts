import { describe, expect, it } from 'vitest';
import { solveBodies } from '../../src/electrodes/solve-bodies.ts';
import { soilImages } from '../../src/soil/layer-images.ts';
import { type LayeredSoil, layeredSoil } from '../../src/soil/layered-soil.ts';
import { profileBounds } from '../../src/soil/profile-bounds.ts';
import { bodies, run } from './joined-ohm.ts';
import { random } from './random.ts';

/** Two rods and what each feels of the other, ohm. */
function mutualOhm(soil: LayeredSoil, lengthsM: readonly [number, number], apartM: number): number {
  const rods = bodies([
    run([0, 0, 0], [0, 0, lengthsM[0]], 0.008),
    run([apartM, 0, 0], [apartM, 0, lengthsM[1]], 0.008),
  ]);
  const solved = solveBodies(rods, soilImages(soil));
  if (!solved.ok) throw new Error(solved.reason);
  return solved.resistanceOhm[1]!;
}

/** What bounds with a stated electrode in soil of a range rest on; nobody has proven it. */
describe('what electrodes feel of each other', () => {
  const next = random(19870911);
  const between = (low: number, high: number): number => low * (high / low) ** next();
  const cases = Array.from({ length: 24 }, (_, i) => {
    const count = 2 + Math.floor(3 * next());
    const layers = Array.from({ length: count }, (_layer, at) => {
      const ohmM = between(20, 2000);
      const thickM = between(0.3, 4);
      return {
        resistivityOhmM: { low: ohmM, high: ohmM * between(1.1, 4) },
        thicknessM: at === count - 1 ? null : { low: thickM, high: thickM * between(1, 1.6) },
      };
    });
    return [i + 1, layers, [between(0.5, 6), between(0.5, 6)] as const, between(0.3, 40)] as const;
  });

  it.each(cases)(
    'case %i lies between what it is in the two soils that enclose theirs',
    (_i, layers, lengthsM, apartM) => {
      const { low, high } = profileBounds(layers);
      const [least, most] = [mutualOhm(low!, lengthsM, apartM), mutualOhm(high!, lengthsM, apartM)];
      expect(least).toBeGreaterThan(0);
      for (let tried = 0; tried < 4; tried++) {
        const pick = ({ low: a, high: b }: { readonly low: number; readonly high: number }): number =>
          tried < 2 ? (next() < 0.5 ? a : b) : between(a, b);
        const soil = layeredSoil(
          layers.map((l) => pick(l.resistivityOhmM)),
          layers.slice(0, -1).map((l) => pick(l.thicknessM!)),
        );
        const ohm = mutualOhm(soil, lengthsM, apartM);
        expect(ohm).toBeGreaterThan(least * 0.998);
        expect(ohm).toBeLessThan(most * 1.002);
      }
    },
  );
});
