import { describe, expect, it } from 'vitest';
import { figureExceededBy, type StrokeDistribution, shareAbove } from '../../src/surge/stroke-distribution.ts';
import { strokeExceededBy, strokeStatistic, strokeStatistics } from '../../src/surge/stroke-statistics.ts';

const above = (id: string, figure: number) => shareAbove(strokeStatistic(id)!.distribution, figure);
const exceededBy = (id: string, share: number) => figureExceededBy(strokeStatistic(id)!.distribution, share);

describe('published statistics', () => {
  // CIGRE TB 63 (from memory): 4, 20 and 90 kA are exceeded by 98, 80 and 5 % of first strokes.
  it.each([
    [4e3, 0.98],
    [20e3, 0.8],
    [90e3, 0.05],
  ])('two slopes: %d A is exceeded by %d', (peak, share) => {
    expect(above('cigre-63', peak)).toBeCloseTo(share, 2);
  });

  // The same formula by hand at 200 kA: 1 / (1 + (200/31)^2.6) = 0.78 %; an article (read) says about 1 %.
  it('about 1 % exceed 200 kA', () => {
    expect(above('ieee', 200e3)! * 100).toBeCloseTo(0.78, 2);
    expect(above('iec-annex-a', 200e3)).toBeCloseTo(0.01, 10);
  });

  // IEC table against the lognormal: 1.2 times at 50 kA, 6.6 times at 200 kA, since it counts positive ones (hand).
  it.each([
    [50e3, 1.2],
    [200e3, 6.6],
  ])('at %d A the table of the standard has %d times the lognormal', (peak, ratio) => {
    expect(above('iec-annex-a', peak)! / above('cigre-63', peak)!).toBeCloseTo(ratio, 1);
  });

  // CIGRE TB 549, its summary (read): median 30 kA, standard deviation of the logarithm to base 10 0.265.
  it('one standard deviation above the median of 30 kA lies 16 %', () => {
    expect(exceededBy('cigre-549', 0.5)).toBeCloseTo(30e3, 6);
    expect(above('cigre-549', 30e3 * 10 ** 0.265)).toBeCloseTo(0.158655, 6);
  });

  // Medians of Anderson and Eriksson (from memory), first and subsequent.
  it.each([
    ['electra-69-peak', 31.1e3],
    ['electra-69-front', 3.83e-6],
    ['electra-69-steepness', 24.3e9],
    ['electra-69-charge', 4.65],
    ['electra-69-energy', 57e3],
    ['electra-69-tail', 77.5e-6],
    ['electra-69-subsequent-peak', 12.3e3],
    ['electra-69-subsequent-front', 0.67e-6],
    ['electra-69-subsequent-steepness', 39.9e9],
    ['electra-69-subsequent-charge', 0.938],
    ['electra-69-subsequent-energy', 5.5e3],
    ['electra-69-subsequent-tail', 30.2e-6],
  ])('%s has the median %d', (id, median) => {
    expect(exceededBy(id, 0.5)! / median).toBeCloseTo(1, 12);
  });

  // Two counts of the same strokes: 5 % of first strokes exceed 80 kA (1975), the lognormal of 1980 has about 69.
  it('counts of the same strokes agree to a fifth', () => {
    expect(exceededBy('electra-41-peak', 0.05)).toBeCloseTo(80e3, 6);
    expect(exceededBy('electra-69-peak', 0.05)! / 80e3).toBeGreaterThan(0.8);
  });

  it('says nothing where nothing was published', () => {
    expect(above('iec-annex-a', 2e3)).toBeNull();
    expect(above('iec-annex-a', 201e3)).toBeNull();
    expect(exceededBy('electra-41-positive-peak', 0.01)).toBeNull();
    expect(exceededBy('electra-41-positive-peak', 0.05)).toBeCloseTo(250e3, 5);
    expect(exceededBy('electra-41-positive-peak', 0.95)).toBeCloseTo(4.6e3, 5);
    expect(strokeStatistic('nobody')).toBeNull();
  });

  it.each(strokeStatistics.map((s) => [s.id, s.distribution] as const))(
    '%s: figure and share undo each other',
    (_, d) => {
      for (const share of [0.06, 0.3, 0.5, 0.7, 0.94]) {
        expect(shareAbove(d, figureExceededBy(d, share)!)).toBeCloseTo(share, 8);
      }
    },
  );

  it.each(strokeStatistics.map((s) => [s.id, s.distribution] as const))('%s: more strokes exceed less', (_, d) => {
    const figures = Array.from({ length: 90 }, (__, i) => figureExceededBy(d, 0.05 + i / 100)!);
    for (const [at, figure] of figures.entries()) if (at > 0) expect(figure).toBeLessThanOrEqual(figures[at - 1]!);
  });

  it('has no two of one name', () => {
    expect(new Set(strokeStatistics.map((s) => s.id)).size).toBe(strokeStatistics.length);
  });

  it.each([0, -1, Number.NaN, Infinity])('a figure of %d is refused', (figure) => {
    const d: StrokeDistribution = { kind: 'lognormal', median: 1, sigmaLn: 1 };
    expect(() => shareAbove(d, figure)).toThrow(RangeError);
  });
});

describe('strokes by percentile', () => {
  it('the median first negative stroke is 30 kA 1/200', () => {
    const median = strokeExceededBy('first-negative', 0.5)!;
    expect(median.wave.peakA).toBeCloseTo(30e3, 6);
    expect(median.wave).toMatchObject({ tau1S: 1.82e-6, tau2S: 285e-6 });
    expect(median.statistic.source.provenance).toBe('read');
  });

  // Hand: 12.3 kA exp(0.53 x 1.64485) = 29.41 kA.
  it('5 % of subsequent strokes exceed 29.4 kA', () => {
    expect(strokeExceededBy('subsequent', 0.05)!.wave.peakA / 1e3).toBeCloseTo(29.41, 2);
  });

  it('positive ones only from 5 to 95 %', () => {
    expect(strokeExceededBy('first-positive', 0.5)!.wave.peakA).toBeCloseTo(35e3, 6);
    expect(strokeExceededBy('first-positive', 0.02)).toBeNull();
  });

  it.each([0, 1, 5, Number.NaN])('a share of %d is refused', (share) => {
    expect(() => strokeExceededBy('subsequent', share)).toThrow(RangeError);
  });
});
