import { describe, expect, it } from 'vitest';
import { cholesky } from '../../src/math/cholesky.ts';
import { stripWidth } from '../../src/math/cholesky-strip.ts';
import { updateDepth } from '../../src/math/cholesky-update.ts';
import { factorCholesky, solveFactored } from '../../src/math/dense.ts';
import { entryOf, positiveDefinite } from './positive-definite.ts';

/** The other hand: one entry after the other, row by row, as in every textbook; the first row that fails, or -1. */
function rowByRow(matrix: Float64Array, size: number): { rows: number[][]; failingRow: number; pivot: number } {
  const rows: number[][] = [];
  for (let i = 0; i < size; i++) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      let rest = matrix[i * size + j]!;
      for (let k = 0; k < j; k++) rest -= row[k]! * (j === i ? row[k]! : rows[j]![k]!);
      const diagonal = matrix[i * size + i]!;
      const pivot = diagonal > 0 ? rest / diagonal : diagonal;
      if (j === i && !(pivot > size * Number.EPSILON)) return { rows, failingRow: i, pivot };
      row.push(j === i ? Math.sqrt(rest) : rest / rows[j]![j]!);
    }
    rows.push(row);
  }
  return { rows, failingRow: -1, pivot: 0 };
}

function around(size: number): number[] {
  return [size - 1, size, size + 1];
}

/** Strips and panels that are whole, short of one, and one over; odd and even; more rows than are kept at once (192). */
const sizes = [
  ...[1, 2, 3, 4, 5, 6, 7],
  ...around(stripWidth),
  ...around(2 * stripWidth),
  ...around(updateDepth),
  ...around(updateDepth + stripWidth),
  ...around(2 * updateDepth),
  ...around(192),
  ...around(updateDepth + 192),
  ...around(2 * 192 + updateDepth),
];

describe('Cholesky in blocks', () => {
  it.each(sizes)('is what comes out row by row, at size %i', (size) => {
    const matrix = positiveDefinite(size);
    const { lower, failingRow } = cholesky(matrix, size);
    const { rows } = rowByRow(matrix, size);
    expect(failingRow).toBeNull();
    expect(lower.length).toBe((size * (size + 1)) / 2);
    let worst = 0;
    rows.forEach((row, i) => {
      row.forEach((entry, j) => {
        worst = Math.max(worst, Math.abs(entry - entryOf(lower, i, j)) / Math.sqrt(matrix[i * size + i]!));
      });
    });
    expect(worst).toBeLessThan(1e-13);
  });

  it.each([1, 13, 73, 200])('multiplied with itself is the matrix, at size %i', (size) => {
    const matrix = positiveDefinite(size);
    const { lower } = cholesky(matrix, size);
    let worst = 0;
    for (let i = 0; i < size; i++) {
      for (let j = 0; j <= i; j++) {
        let sum = 0;
        for (let k = 0; k <= j; k++) sum += entryOf(lower, i, k) * entryOf(lower, j, k);
        const scale = Math.sqrt(matrix[i * size + i]! * matrix[j * size + j]!);
        worst = Math.max(worst, Math.abs(sum - matrix[i * size + j]!) / scale);
      }
    }
    // size * epsilon: Golub and Van Loan, section 4.2.6 (from memory)
    expect(worst).toBeLessThan(size * Number.EPSILON + Number.EPSILON);
  });

  it('goes with the scale of every row to the last bit, where scales are powers of two', () => {
    const size = 150;
    const matrix = positiveDefinite(size);
    const scale = (row: number): number => 2 ** ((row * 37) % 200) / 2 ** 100;
    const scaled = matrix.map((entry, at) => entry * scale(Math.floor(at / size)) * scale(at % size));
    const plain = cholesky(matrix, size);
    const stretched = cholesky(scaled, size);
    expect(stretched.smallestPivot).toBe(plain.smallestPivot);
    for (let i = 0; i < size; i++) {
      for (let j = 0; j <= i; j++) {
        expect(entryOf(stretched.lower, i, j) === entryOf(plain.lower, i, j) * scale(i)).toBe(true);
      }
    }
  });

  it('does not read the upper triangle', () => {
    const size = 100;
    const matrix = positiveDefinite(size);
    const spoilt = matrix.map((entry, at) => (at % size > Math.floor(at / size) ? 1e9 : entry));
    expect(cholesky(spoilt, size)).toEqual(cholesky(matrix, size));
  });

  it('leaves the matrix as it was', () => {
    const matrix = positiveDefinite(80);
    const before = matrix.slice();
    cholesky(matrix, 80);
    expect(matrix).toEqual(before);
  });

  // By hand: all ones and d more on the diagonal has the pivots d (d + k + 1) / (d + k), k = 0, 1, ...
  it.each([10, 80, 250])('says how near to singular a matrix is, at size %i', (size) => {
    const d = 1e-6;
    const matrix = Float64Array.from({ length: size * size }, (_, at) => (at % (size + 1) === 0 ? 1 + d : 1));
    const known = (d * (d + size)) / (d + size - 1) / (1 + d);
    expect(cholesky(matrix, size).smallestPivot / known).toBeCloseTo(1, 8);
  });

  it('gives the only figure of a matrix of one', () => {
    expect(cholesky(Float64Array.of(9), 1)).toEqual({ lower: Float64Array.of(3), failingRow: null, smallestPivot: 1 });
    expect(cholesky(new Float64Array(0), 0)).toMatchObject({ failingRow: null });
  });
});

describe('a matrix that is not positive definite', () => {
  const places = [0, 1, 11, 12, 13, 71, 72, 73, 100, 191, 192, 193, 263, 264, 299];

  it.each(places)('is refused by the first row that fails, row %i', (row) => {
    const size = 300;
    const matrix = positiveDefinite(size);
    // the row less its own share of what is left: its pivot turns from p to -p; later rows may fail as well
    const pivot = entryOf(cholesky(matrix, size).lower, row, row) ** 2;
    matrix[row * (size + 1)] = matrix[row * (size + 1)]! - 2 * pivot;
    const other = rowByRow(matrix, size);
    const factor = factorCholesky(matrix, size);
    expect(other.failingRow).toBe(row);
    expect(factor).toMatchObject({ ok: false, failingRow: row });
    expect(factor.smallestPivot / other.pivot).toBeCloseTo(1, 10);
  });

  it('is refused where a diagonal is zero or negative, by that diagonal', () => {
    for (const diagonal of [0, -3]) {
      const matrix = positiveDefinite(90);
      matrix[80 * 91] = diagonal;
      expect(factorCholesky(matrix, 90)).toEqual({ ok: false, failingRow: 80, smallestPivot: diagonal });
    }
  });

  it('is refused where two rows are the same', () => {
    const size = 160;
    const matrix = positiveDefinite(size);
    const [twin, of] = [130, 20];
    for (let k = 0; k < size; k++) matrix[twin * size + k] = matrix[of * size + k]!;
    for (let k = 0; k < size; k++) matrix[k * size + twin] = matrix[k * size + of]!;
    matrix[twin * (size + 1)] = matrix[of * (size + 1)]!;
    expect(factorCholesky(matrix, size)).toMatchObject({ ok: false, failingRow: twin });
  });

  // Pivots of a Hilbert matrix fall by 1 / 16 and more a row, so that rounding error is reached at row 12 or 13.
  it('is refused near the row where the rounding error is reached, as it is row by row', () => {
    const size = 40;
    const hilbert = Float64Array.from(
      { length: size * size },
      (_, at) => 1 / (Math.floor(at / size) + (at % size) + 1),
    );
    const factor = factorCholesky(hilbert, size);
    const { failingRow } = rowByRow(hilbert, size);
    expect(factor.ok).toBe(false);
    expect(failingRow).toBeGreaterThan(8);
    if (!factor.ok) expect(Math.abs(factor.failingRow - failingRow)).toBeLessThanOrEqual(1);
  });
});

describe('a solve with many right hand sides', () => {
  it('is to the last bit that of each alone', () => {
    const [size, columns] = [100, 7];
    const factor = factorCholesky(positiveDefinite(size), size);
    if (!factor.ok) throw new Error('refused');
    const right = Float64Array.from({ length: size * columns }, (_, at) => Math.sin(at));
    const all = solveFactored(factor, right, columns);
    for (let column = 0; column < columns; column++) {
      const own = right.filter((_, at) => at % columns === column);
      const alone = solveFactored(factor, own);
      expect(all.solution.filter((_, at) => at % columns === column)).toEqual(alone.solution);
    }
    expect(all.residual).toBeLessThan(1e-14);
  });

  it('says so where a factor is not that of its matrix', () => {
    const matrix = positiveDefinite(90);
    const factor = factorCholesky(matrix, 90);
    if (!factor.ok) throw new Error('refused');
    const other = matrix.slice();
    other[5 * 91] = other[5 * 91]! * 1.001;
    const { residual, worstRow } = solveFactored({ ...factor, matrix: other }, new Float64Array(90).fill(1));
    expect(residual).toBeGreaterThan(1e-6);
    expect(worstRow).toBe(5);
  });
});
