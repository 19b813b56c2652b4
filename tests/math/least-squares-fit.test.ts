import { describe, expect, it } from 'vitest';
import { leastSquaresFit, type SquaresProblem } from '../../src/math/least-squares-fit.ts';

const free = { low: [-1e9, -1e9], high: [1e9, 1e9] };

/** Rosenbrock's valley (Computer Journal 3, 1960): least at (1, 1), where it is 0. */
const valley: SquaresProblem = {
  ...free,
  residuals: ([x, y]) => Float64Array.of(10 * (y! - x! * x!), 1 - x!),
  slopes: ([x]) => [Float64Array.of(-20 * x!, -1), Float64Array.of(10, 0)],
};

/** exp(a + b t) at t = 0, 1, 2 against 1, 3, 7. */
const growth: SquaresProblem = {
  ...free,
  residuals: ([a, b]) => Float64Array.of(1, 3, 7).map((y, t) => Math.exp(a! + b! * t) - y),
  slopes: ([a, b]) => [0, 1].map((p) => Float64Array.of(0, 1, 2).map((t) => Math.exp(a! + b! * t) * t ** p)),
};

describe('a sum of squares made small', () => {
  it('goes down a bent valley from afar', () => {
    for (const start of [
      [-1.2, 1],
      [5, -20],
      [-30, 0.5],
    ]) {
      const { parameters, sumOfSquares } = leastSquaresFit(valley, start, 500);
      expect(parameters[0]).toBeCloseTo(1, 6);
      expect(parameters[1]).toBeCloseTo(1, 6);
      expect(sumOfSquares).toBeLessThan(1e-12);
    }
  });

  it('ends where slopes across all residuals cancel, in a fit that leaves something over', () => {
    const { parameters } = leastSquaresFit(growth, [0, 0]);
    const left = growth.residuals(parameters);
    for (const column of growth.slopes(parameters)) {
      expect(column.reduce((sum, slope, i) => sum + slope * left[i]!, 0)).toBeCloseTo(0, 4);
    }
  });

  it('stays within bounds: least on the bound, not where the free one is cut off', () => {
    // x <= 0.5 in the valley: y = x^2, so the least is (0.5, 0.25) with 0.25 left over
    const bounded = { ...valley, high: [0.5, 1e9] };
    const { parameters, sumOfSquares } = leastSquaresFit(bounded, [-1.2, 1], 500);
    expect(parameters[0]).toBeCloseTo(0.5, 9);
    expect(parameters[1]).toBeCloseTo(0.25, 6);
    expect(sumOfSquares).toBeCloseTo(0.25, 9);
  });

  it('comes off a bound that it was begun on or beyond', () => {
    const bounded = { ...valley, low: [-3, -3], high: [3, 3] };
    expect(leastSquaresFit(bounded, [3, -90], 500).parameters[0]).toBeCloseTo(1, 6);
  });

  it('does not go to what is no number', () => {
    // the root of x below 0 is none; least of (sqrt x + 1)^2 is at the edge
    const edge: SquaresProblem = {
      low: [-5],
      high: [5],
      residuals: ([x]) => Float64Array.of(Math.sqrt(x!) + 1),
      slopes: ([x]) => [Float64Array.of(0.5 / Math.sqrt(x!))],
    };
    const { parameters, sumOfSquares } = leastSquaresFit(edge, [1]);
    expect(parameters[0]).toBeGreaterThanOrEqual(0);
    expect(sumOfSquares).toBeLessThan(4);
    expect(sumOfSquares).toBeGreaterThanOrEqual(1);
  });

  it('of no slope is where it began', () => {
    const flat: SquaresProblem = { ...free, residuals: () => Float64Array.of(2), slopes: () => [Float64Array.of(0)] };
    expect(leastSquaresFit(flat, [0.7])).toEqual({ parameters: Float64Array.of(0.7), sumOfSquares: 4 });
  });
});
