import { describe, expect, it } from 'vitest';
import { exponentialBasis, fitError } from '../../src/math/exponential-fit.ts';

/** Worst |f - fit|, over what rounding leaves of the largest f, on wavenumbers far closer together than the samples, and beyond both of their ends. */
function worstError(f: (lambda: number) => number, depthRatio: number, greatestDepth = 1e6): number {
  const basis = exponentialBasis(1, greatestDepth, depthRatio);
  const strengths = basis.fit(basis.lambdas.map(f));
  let worst = 0;
  for (let exponent = -14; exponent < 3; exponent += 0.0037) {
    const lambda = 10 ** exponent;
    let sum = 0;
    basis.depths.forEach((depth, k) => {
      sum += strengths[k]! * Math.exp(-lambda * depth);
    });
    worst = Math.max(worst, Math.abs(sum - f(lambda)) - 3e-12 * f(1e-14));
  }
  return worst;
}

/** Depths just beyond the least one are hardest; below 1e-10 rounding rules. */
const bound = (depthRatio: number): number => 10 * fitError(depthRatio) + 1e-10;

/** What returns between two boundaries that reflect `k` together: 1 / (1 - k exp(-lambda)) - 1. */
const returned = (k: number) => (lambda: number) => 1 / (1 - k * Math.exp(-lambda)) - 1;

describe('sums of exponentials', () => {
  it('the stated error falls steeply with the ratio of depths', () => {
    // exp(-pi^2 / (2 ln r)) by hand: r = e gives exp(-4.9348) = 0.007191
    expect(fitError(Math.E)).toBeCloseTo(0.007191, 5);
    expect(fitError(1.3)).toBeLessThan(1e-8);
  });

  describe.each([1.6, 1.45, 1.3, 1.25, 1.2])('depths in the ratio %d', (depthRatio) => {
    it.each([1, 1.1, 1.5, 7.3, 1234.5, 9e5])('one exponential of a depth of its own, %d', (depth) => {
      expect(worstError((lambda) => Math.exp(-lambda * depth), depthRatio)).toBeLessThan(bound(depthRatio));
    });

    // poles at 2 pi i, 4 pi i ... with hardly a distance from the imaginary axis
    it.each([-0.98, -0.9999, -1, 0.5, 0.98, 0.9999])('endless reflection, %d at a time', (k) => {
      expect(worstError(returned(k), depthRatio)).toBeLessThan(bound(depthRatio));
    });

    it('reflection of many layers: fast and slow parts together', () => {
      const many = (lambda: number): number => {
        const deep = (0.9 - 0.99 * Math.exp(-200 * lambda)) / (1 - 0.9 * 0.99 * Math.exp(-200 * lambda));
        const beyond = deep * Math.exp(-2 * lambda);
        return (0.95 + beyond) / (1 + 0.95 * beyond) - 0.95;
      };
      expect(worstError(many, depthRatio)).toBeLessThan(bound(depthRatio));
    });
  });

  it('does not change with the unit of length', () => {
    const [one, other] = [exponentialBasis(1, 1000), exponentialBasis(0.02, 20)];
    expect(other.depths.length).toBe(one.depths.length);
    other.depths.forEach((depth, k) => {
      expect(depth / one.depths[k]!).toBeCloseTo(0.02, 12);
    });
    const strengths = one.fit(one.lambdas.map(returned(0.9)));
    other.fit(other.lambdas.map((l) => returned(0.9)(0.02 * l))).forEach((strength, k) => {
      expect(strength).toBeCloseTo(strengths[k]!, 6);
    });
  });

  it('reaches what is asked for, and no more than 1e12 times the least depth', () => {
    for (const most of [0.5, 1, 3, 1e4, 1e12, 1e300]) {
      const { depths } = exponentialBasis(1, most);
      expect(depths[0]).toBeLessThanOrEqual(1);
      expect(depths.at(-1)).toBeGreaterThanOrEqual(Math.min(most, 1e12));
      expect(depths.at(-1)).toBeLessThan(20 * Math.min(Math.max(most, 1), 1e12));
    }
  });

  it('of nothing is nothing', () => {
    const basis = exponentialBasis(1, 100);
    expect([...basis.fit(new Float64Array(basis.lambdas.length))].every((s) => Math.abs(s) === 0)).toBe(true);
  });
});
