import { describe, expect, it } from 'vitest';
import { clampLoop, looksLikeMetal } from '../../src/electrodes/clamp-loop.ts';
import { probeError, probesAgree, trueProbeShare } from '../../src/electrodes/fall-of-potential.ts';
import { probeOfSlope, slopeProbe } from '../../src/electrodes/slope-method.ts';

describe('fall of potential', () => {
  // hemisphere theory worked out apart from this program, in per cent, for D = 5, 10, 20 and 50 radii
  it.each([
    [0.5, [-20, -10, -5, -2], 0],
    [0.55, [-11.9, -6, -3, -1.2], 1],
    [0.65, [6.4, 3.2, 1.6, 0.6], 1],
    // by hand, r = D / 10: (1 / 0.3 - 1 / 0.7 - 1) / 10 = 0.0905
    [0.7, [18.1, 9.05, 4.5, 1.8], 1],
  ] as const)('a probe at %d of the way errs by %j %%', (share, percents, digits) => {
    for (const [at, radii] of [5, 10, 20, 50].entries()) {
      const error = 100 * probeError(1, share * radii, radii);
      expect(Math.abs(error - percents[at]!)).toBeLessThanOrEqual(0.5 * 10 ** -digits + 1e-9);
    }
  });

  it('reads the truth at the golden section: 61.8 % (MIL-HDBK-419A volume I, 2-46, read in part)', () => {
    expect(trueProbeShare).toBeCloseTo(0.618, 4);
    for (const radii of [5, 10, 50]) expect(probeError(1, trueProbeShare * radii, radii)).toBeCloseTo(0, 12);
  });

  // a tester's manual (read), one rod of 1 in driven 6 to 30 ft: distances of the two probes, feet. Up to 12 ft they are a
  // convenient 0.625, beyond it 0.614 to 0.617; a small electrode errs by 2.3 % at most there.
  it.each([
    [45, 72],
    [50, 80],
    [55, 88],
    [60, 96],
    [71, 115],
    [74, 120],
    [86, 140],
  ])('the printed distances %d and %d ft are near it', (probeFt, currentFt) => {
    const share = probeFt / currentFt;
    expect(Math.round(share * 1000) / 1000).toBeGreaterThanOrEqual(0.614);
    expect(share).toBeLessThanOrEqual(0.625);
    expect(Math.abs(probeError(currentFt / 10, probeFt, currentFt))).toBeLessThan(0.0075);
  });

  it('a probe that does not stand between both is refused', () => {
    expect(() => probeError(1, 12, 10)).toThrow(RangeError);
    expect(() => probeError(1, 0.5, 10)).toThrow(RangeError);
  });

  it('three readings agree within 5 % of the middle one', () => {
    expect(probesAgree([24, 25, 26]).agrees).toBe(true);
    expect(probesAgree([19, 20, 21]).agrees).toBe(true);
    const rising = probesAgree([24, 25, 27]);
    expect(rising.agrees).toBe(false);
    expect(rising.worstShare).toBeCloseTo(0.08, 12);
    expect(probesAgree([20, 25, 25]).worstShare).toBeCloseTo(-0.2, 12);
    expect(() => probesAgree([0, 1, 1])).toThrow(RangeError);
  });

  it('a current probe too near shows: five radii off, the readings of a small electrode do not agree', () => {
    const reading = (radii: number) => (share: number) => 10 * (1 + probeError(1, share * radii, radii));
    const three = (radii: number) => [0.52, 0.62, 0.72].map(reading(radii)) as [number, number, number];
    expect(probesAgree(three(5)).agrees).toBe(false);
    expect(probesAgree(three(50)).agrees).toBe(true);
  });
});

describe('slope method', () => {
  // handbook of an earth tester, page 19 (read), thousandths; the second figure worked out apart from this program
  it.each([
    [0.4, 643, 0.6433],
    [0.45, 636, 0.6361],
    [0.5, 629, 0.6288],
    [0.55, 621, 0.6213],
    [0.57, 618, 0.6183],
    [0.6, 614, 0.6136],
    [0.8, 580, 0.5803],
    [0.85, 571, 0.5713],
    [0.9, 562, 0.5618],
    [0.95, 552, 0.552],
    [0.99, 544, 0.5437],
    [1.2, 494, 0.4942],
    [1.25, 480, 0.4803],
    [1.3, 465, 0.4652],
    [1.35, 448, 0.4489],
    [1.39, 434, 0.4347],
  ])('slope %d: probe at %d thousandths', (slope, printed, worked) => {
    const answer = probeOfSlope(slope);
    expect(answer.ok && Math.abs(answer.probeShare - printed / 1000)).toBeLessThanOrEqual(0.001);
    expect(answer.ok && Math.abs(answer.probeShare - worked)).toBeLessThanOrEqual(0.0001);
  });

  it.each([
    [0.7, 0.5975],
    [1, 0.5416],
    [1.1, 0.5193],
    [1.5, 0.3889],
    [1.59, 0.3405],
  ])('slope %d, not in print: probe at %d', (slope, worked) => {
    const answer = probeOfSlope(slope);
    expect(answer.ok && Math.abs(answer.probeShare - worked)).toBeLessThanOrEqual(0.0001);
  });

  it('finds the 61.8 % of a small electrode from its own readings', () => {
    const [at20, at40, at60] = [0.2, 0.4, 0.6].map((share) => 10 * (1 + probeError(0.02, share, 1)));
    const answer = slopeProbe(at20!, at40!, at60!);
    expect(answer.ok && answer.slope).toBeCloseTo(0.5714, 4);
    expect(answer.ok && answer.probeShare).toBeCloseTo(trueProbeShare, 9);
  });

  it('finds the true reading of an electrode whose centre lies aside', () => {
    // a small electrode of 10 ohm, distances typed from a point 0.15 D nearer to the probes than its centre
    const [radius, aside] = [0.03, 0.15];
    const read = (share: number): number => 10 * (1 + probeError(radius, share + aside, 1 + aside));
    const answer = slopeProbe(read(0.2), read(0.4), read(0.6));
    expect(answer.ok && read(answer.probeShare)).toBeCloseTo(10, 9);
  });

  it.each([
    ['readings that do not rise', slopeProbe(5, 5, 6), 'no-rise'],
    ['readings that fall', slopeProbe(5, 6, 5.5), 'no-rise'],
    ['a reading that is no number', slopeProbe(5, Number.NaN, 6), 'no-rise'],
    ['a slope below the table', slopeProbe(5, 7, 7.5), 'slope-low'],
    ['a slope above the table', slopeProbe(5, 6, 7.7), 'slope-high'],
  ])('refuses %s', (_, answer, reason) => {
    expect(answer).toMatchObject({ ok: false, reason });
  });
});

describe('stakeless measurement', () => {
  // an earth-tester booklet, pages 49 and 50 (read): what is printed, and the same by hand
  it.each([
    ['six of 10 ohm', 10, new Array<number>(5).fill(10), 12, 12],
    ['sixty of 10 ohm', 10, new Array<number>(59).fill(10), 10.17, 10.1695],
    ['one of 100 ohm among five of 10', 100, new Array<number>(5).fill(10), 102, 102],
    ['one of 10 ohm in that set', 10, [100, 10, 10, 10, 10], 12.4, 12.439],
  ])('%s', (_, clamped, others, printed, byHand) => {
    const { readsOhm, traps } = clampLoop(clamped, others);
    expect(readsOhm).toBeCloseTo(byHand, 3);
    expect(Number(readsOhm!.toPrecision(String(printed).replace('.', '').length))).toBe(printed);
    expect(traps).toEqual([]);
  });

  it('has no loop round a lone electrode', () => {
    expect(clampLoop(25, [])).toEqual({ readsOhm: null, traps: ['no-loop'] });
  });

  it('reads the sum of two', () => {
    expect(clampLoop(25, [40], 0.2)).toEqual({ readsOhm: 65.2, traps: ['sum-of-two'] });
  });

  it('suspects metal below an ohm, and reads low where electrodes stand close', () => {
    expect(clampLoop(0.3, [0.4, 0.5]).traps).toEqual(['metal-loop']);
    expect(looksLikeMetal(0.02)).toBe(true);
    expect(looksLikeMetal(12)).toBe(false);
    expect(clampLoop(10, [10, 10, 10], 0, 0.5).traps).toEqual(['too-near']);
    expect(clampLoop(10, [10, 10, 10], 0, 2).traps).toEqual([]);
  });

  it('refuses a resistance that is none', () => {
    expect(() => clampLoop(0, [10])).toThrow(RangeError);
    expect(() => clampLoop(10, [Number.NaN])).toThrow(RangeError);
  });
});
