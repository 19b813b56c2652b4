import { describe, expect, it } from 'vitest';
import { drawAxes, fittingScale, linearScale, logScale } from '../../src/drawing/chart-axes.ts';
import { textsOf } from './drawn.ts';

const told = (scale: { readonly ticks: readonly { readonly says: string }[] }) =>
  scale.ticks.map((t) => t.says).filter((s) => s !== '');

describe('a linear scale', () => {
  it('steps by 1, 2 or 5 and begins and ends on a step', () => {
    expect(told(linearScale([0, 30], [0, 100]))).toEqual(['0', '5', '10', '15', '20', '25', '30']);
    expect(told(linearScale([3, 17], [0, 100]))).toEqual(['2', '4', '6', '8', '10', '12', '14', '16', '18']);
    expect(told(linearScale([0, 0.33], [0, 100]))).toEqual(['0', '0.05', '0.1', '0.15', '0.2', '0.25', '0.3', '0.35']);
  });

  it('puts a quarter of the way at a quarter of the paper, whichever way it runs', () => {
    expect(linearScale([0, 40], [20, 120]).at(10)).toBeCloseTo(45, 9);
    expect(linearScale([0, 40], [120, 20]).at(10)).toBeCloseTo(95, 9);
  });

  it('keeps what lies beyond an end at the end, an open bound too', () => {
    const scale = linearScale([0, 40], [20, 120]);
    expect([scale.at(-3), scale.at(Infinity)]).toEqual([20, 120]);
  });

  it('has room for a single figure, and for nought', () => {
    for (const figure of [7, 0, 1234.5]) {
      const { low, high, at } = linearScale([figure, figure], [0, 100]);
      expect(high).toBeGreaterThan(low);
      expect(Number.isFinite(at(figure))).toBe(true);
    }
  });
});

describe('a logarithmic scale', () => {
  it('puts the geometric mean in the middle', () => {
    const scale = logScale([1, 100], [0, 80]);
    expect(scale.at(10)).toBeCloseTo(40, 9);
    // log10(2) = 0.30103: a fifth and a half of a decade.
    expect(scale.at(2)).toBeCloseTo(40 * 0.30103, 4);
  });

  it('says 1, 2 and 5 over few decades and powers of ten over many, and draws 2 to 9 all the same', () => {
    expect(told(logScale([3, 170], [0, 80]))).toEqual(['2', '5', '10', '20', '50', '100', '200']);
    const wide = logScale([0.5, 30_000], [0, 80]);
    expect(told(wide)).toEqual(['1', '10', '100', '1000', '10000']);
    expect(wide.ticks.map((t) => t.value)).toEqual(expect.arrayContaining([0.5, 3, 700, 40_000]));
    expect(wide.high).toBe(50_000);
  });

  it('refuses nought, which has no place on it', () => {
    expect(() => logScale([0, 10], [0, 80])).toThrow(RangeError);
  });

  it('is taken where figures differ tenfold, and else the scale is linear from 0', () => {
    expect(fittingScale([20, 210], [0, 1]).at(20)).toBeCloseTo(0, 9);
    expect(fittingScale([20, 190], [0, 1]).low).toBe(0);
  });
});

it('figures stand under and beside their own lines', () => {
  const x = linearScale([0, 20], [30, 130]);
  const y = logScale([1, 10], [90, 10]);
  const svg = drawAxes({ x: 30, y: 10, width: 100, height: 80 }, x, y, { x: 'here', y: 'there' })
    .map((s) => s.svg)
    .join('');
  const five = textsOf(svg).filter((t) => t.text === '5');
  const under = five.find((t) => t.yMm > 90)!;
  // Two figures of Helvetica at 2.7 mm are 0.556 wide each; the middle of the one stands under 25 % of 100 mm.
  expect(under.xMm + (0.556 * 2.7) / 2).toBeCloseTo(30 + 25, 1);
  const beside = five.find((t) => t.xMm < 30)!;
  // log10(5) = 0.69897 of 80 mm upwards from 90.
  expect(beside.yMm - 0.95).toBeCloseTo(90 - 80 * 0.69897, 1);
});
