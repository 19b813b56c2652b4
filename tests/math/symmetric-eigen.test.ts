import { expect, it } from 'vitest';
import { symmetricEigen } from '../../src/math/symmetric-eigen.ts';
import { random as seededRandom } from '../network/random.ts';

function residual(a: Float64Array, n: number): number {
  const { values, vectors } = symmetricEigen(a, n);
  let worst = 0;
  for (let k = 0; k < n; k++) {
    for (let i = 0; i < n; i++) {
      let sum = -values[k]! * vectors[i * n + k]!;
      for (let j = 0; j < n; j++) sum += a[i * n + j]! * vectors[j * n + k]!;
      worst = Math.max(worst, Math.abs(sum));
    }
  }
  return worst;
}

it('has the eigenvalues of a chain of equal springs, 2 - 2 cos(k pi / (n + 1)) (textbook)', () => {
  const n = 40;
  const a = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    a[i * (n + 1)] = 2;
    if (i > 0) a[i * n + i - 1] = a[(i - 1) * n + i] = -1;
  }
  const { values } = symmetricEigen(a, n);
  values.forEach((value, k) => {
    expect(Math.abs(value - (2 - 2 * Math.cos(((k + 1) * Math.PI) / (n + 1))))).toBeLessThan(1e-13);
  });
});

it('takes random matrices apart: A v = w v, orthonormal, trace kept', () => {
  const random = seededRandom(5);
  for (const n of [1, 2, 3, 17, 60]) {
    const a = new Float64Array(n * n);
    for (let i = 0; i < n; i++) for (let j = 0; j <= i; j++) a[i * n + j] = a[j * n + i] = random() - 0.5;
    expect(residual(a, n)).toBeLessThan(1e-13 * n);
    const { values, vectors } = symmetricEigen(a, n);
    let [trace, sum] = [0, 0];
    for (let i = 0; i < n; i++) [trace, sum] = [trace + a[i * (n + 1)]!, sum + values[i]!];
    expect(Math.abs(trace - sum)).toBeLessThan(1e-13 * n);
    for (let p = 0; p < n; p++) {
      for (let q = 0; q <= p; q++) {
        let dot = p === q ? -1 : 0;
        for (let i = 0; i < n; i++) dot += vectors[i * n + p]! * vectors[i * n + q]!;
        expect(Math.abs(dot)).toBeLessThan(1e-13 * n);
      }
    }
  }
});

it('takes zeros, equal values and a diagonal as they are', () => {
  expect([...symmetricEigen(new Float64Array(9), 3).values]).toEqual([0, 0, 0]);
  expect([...symmetricEigen(Float64Array.of(3, 0, 0, 1), 2).values]).toEqual([1, 3]);
  const ones = symmetricEigen(new Float64Array(16).fill(1), 4).values;
  expect(Math.abs(ones[3]! - 4)).toBeLessThan(1e-14);
  expect(Math.abs(ones[0]!)).toBeLessThan(1e-14);
  expect(() => symmetricEigen(new Float64Array(3), 2)).toThrow(RangeError);
});
