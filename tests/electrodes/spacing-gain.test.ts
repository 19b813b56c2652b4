import { describe, expect, it } from 'vitest';
import { type ScaledSoil, scaledSoils } from '../../src/electrodes/scaled-soil.ts';
import { rodsInLine, spacingGains } from '../../src/electrodes/spacing-gain.ts';
import { layeredSoil } from '../../src/soil/layered-soil.ts';
import { footM, inchM } from './shapes.ts';
import { off } from './solved.ts';

const soil = (ohmM: readonly number[], thickM: readonly number[] = []): ScaledSoil =>
  scaledSoils()(layeredSoil(ohmM, thickM));
const rod = { lengthM: 10 * footM, radiusM: 0.3125 * inchM, topM: 0 };

describe('what the next rod brings', () => {
  // boundary elements worked out apart from this program, 40 to a rod, 100 ohm m: times half of one rod
  it.each([
    [0.1, 23.402, 1.425],
    [0.25, 21.255, 1.294],
    [0.5, 19.791, 1.205],
    [1, 18.554, 1.13],
    [2, 17.636, 1.074],
    [4, 17.061, 1.039],
    [10, 16.682, 1.016],
  ])('a second one %d lengths off: %d ohm together, %d times half of one', (lengths, ohm, factor) => {
    const [gain] = spacingGains(rod, [lengths * rod.lengthM], soil([100]));
    expect(off(gain!.ohm, ohm)).toBeLessThan(0.005);
    expect(off(2 * (1 - gain!.gainShare), factor)).toBeLessThan(0.005);
    expect(gain!.spacingM).toBe(lengths * rod.lengthM);
  });

  it('grows with the distance, up to a half', () => {
    for (const ground of [soil([100]), soil([1000, 50], [1]), soil([50, 1000], [1])]) {
      const gains = spacingGains(rod, [0.5, 1, 2, 4, 8, 100], ground).map((g) => g.gainShare);
      for (let k = 1; k < gains.length; k++) expect(gains[k]).toBeGreaterThan(gains[k - 1]!);
      expect(gains.at(-1)).toBeLessThanOrEqual(0.5);
    }
  });

  it('over rock the second rod brings less than over clay', () => {
    const at = (ground: ScaledSoil) => spacingGains(rod, [3], ground)[0]!.gainShare;
    expect(at(soil([100, 5000], [3.5]))).toBeLessThan(at(soil([100])));
    expect(at(soil([100, 5], [3.5]))).toBeGreaterThan(at(soil([100])));
  });

  // the same: factor times one over n, in a straight line, 12 to a rod
  it.each([
    [1, [1.13, 1.221, 1.292, 1.35, 1.398]],
    [2, [1.074, 1.124, 1.162, 1.193, 1.218]],
    [4, [1.039, 1.065, 1.084, 1.1, 1.113]],
  ])('in a line at %d lengths, two to six: %j times one over their number', (lengths, factors) => {
    const line = rodsInLine(rod, lengths * rod.lengthM, 6, soil([100])) as readonly number[];
    factors.forEach((factor, k) => {
      expect(off(((k + 2) * line[k + 1]!) / line[0]!, factor)).toBeLessThan(0.005);
    });
  });

  it('each further rod brings less than the one before', () => {
    const line = rodsInLine(rod, 3, 6, soil([300, 60], [2])) as readonly number[];
    const steps = line.slice(1).map((ohm, k) => line[k]! - ohm);
    for (let k = 0; k < steps.length; k++) {
      expect(steps[k]).toBeGreaterThan(0);
      if (k > 0) expect(steps[k]).toBeLessThan(steps[k - 1]!);
    }
  });
});
