import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../src/math/least-squares.ts';

const of = (...numbers: number[]): Float64Array => Float64Array.from(numbers);

describe('linear least squares', () => {
  it('is the line through points by hand', () => {
    // y = 1, 2, 2 at x = 0, 1, 2: mean 5/3, slope 1/2, so 7/6 + x/2
    const [line] = leastSquares([of(1, 1, 1), of(0, 1, 2)], [of(1, 2, 2)]);
    expect(line![0]).toBeCloseTo(7 / 6, 12);
    expect(line![1]).toBeCloseTo(1 / 2, 12);
  });

  it('meets a square system exactly, for several right hand sides', () => {
    const [first, second] = leastSquares([of(2, 1), of(1, 3)], [of(5, 10), of(3, 4)]);
    expect([...first!].map((v) => Math.round(v * 1e9) / 1e9)).toEqual([1, 3]);
    expect([...second!].map((v) => Math.round(v * 1e9) / 1e9)).toEqual([1, 1]);
  });

  it('draws to zero with a ridge: x = b a / (a a + ridge ridge)', () => {
    const [x] = leastSquares([of(3, 4)], [of(6, 8)], 5);
    expect(x![0]).toBeCloseTo(50 / (25 + 25), 12);
  });

  it('gives 0 to a column that says nothing new, and changes neither matrix nor sides', () => {
    const columns = [of(1, 2, 3), of(2, 4, 6)];
    const side = of(1, 2, 3);
    const [x] = leastSquares(columns, [side]);
    expect([...x!].map((v) => Math.round(v * 1e9) / 1e9)).toEqual([1, 0]);
    expect([...columns[0]!, ...side]).toEqual([1, 2, 3, 1, 2, 3]);
    expect([...leastSquares([of(0, 0)], [of(1, 1)])[0]!]).toEqual([0]);
  });
});
