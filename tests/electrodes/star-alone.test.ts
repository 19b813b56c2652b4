import { describe, expect, it } from 'vitest';
import { aloneErrorShare } from '../../src/electrodes/solved-resistance.ts';
import { starAlone } from '../../src/electrodes/star-alone.ts';
import { starRuns } from '../../src/electrodes/star-runs.ts';
import { layered, ohmOfBody, uniform } from './solved.ts';

const section = { depthM: 0.1, radiusM: 0.001, sheath: null };

describe('a star alone, one arm solved under all', () => {
  const frozen = layered([2000, 100, 30], [0.3, 2]);
  it.each([
    ['three arms, plain soil', 3, 10, uniform],
    ['eight arms, plain soil', 8, 5, uniform],
    ['sixteen arms, a frozen top over two layers', 16, 8, frozen],
    ['thirty-six arms, a frozen top over two layers', 36, 20, frozen],
  ])('%s: the figure of all arms solved together', (_, count, armLengthM, images) => {
    const arms = starRuns(count, armLengthM, section);
    const whole = ohmOfBody({ runs: arms }, images, { errorShare: aloneErrorShare });
    expect(starAlone(arms, images, aloneErrorShare)! / whole).toBeCloseTo(1, 6);
  });

  it('ever more arms come down to the disc of their reach', () => {
    // a disc on the surface of the soil: rho / (4 a); the classic limit, from memory
    const [some, many] = [120, 480].map((count) => {
      const arms = starRuns(count, 20, { ...section, depthM: 0.02 });
      return starAlone(arms, uniform, aloneErrorShare)! / (100 / (4 * 20));
    }) as [number, number];
    expect(many).toBeGreaterThan(1);
    expect(many).toBeLessThan(1.03);
    expect(some).toBeGreaterThan(many);
    expect(some).toBeLessThan(1.1);
  });

  it('no figure where arms lie on each other', () => {
    const [arm] = starRuns(1, 10, section);
    const ohm = starAlone([arm!, arm!], uniform, aloneErrorShare);
    expect(ohm).toSatisfy((figure: number | null) => figure === null || Number.isFinite(figure));
  });
});
