import { factorCholesky, solveFactored } from '../math/dense.ts';

/** 1 where a segment (row) belongs to a body (column). */
export function membership(body: Int32Array, bodyCount: number): Float64Array {
  const columns = new Float64Array(body.length * bodyCount);
  body.forEach((b, i) => {
    columns[i * bodyCount + b] = 1;
  });
  return columns;
}

/** Conductance matrix of the bodies: current of each per volt of each, from that of each segment per volt of each. */
export function conductanceOf(leakage: Float64Array, body: Int32Array, bodyCount: number): Float64Array {
  const sums = new Float64Array(bodyCount * bodyCount);
  body.forEach((row, i) => {
    for (let column = 0; column < bodyCount; column++) {
      sums[row * bodyCount + column] = sums[row * bodyCount + column]! + leakage[i * bodyCount + column]!;
    }
  });
  return sums;
}

/** Inverse of a symmetric positive definite matrix, exactly symmetric; null where it is not positive definite. */
export function inverseOf(matrix: Float64Array, size: number): Float64Array | null {
  const factored = factorCholesky(matrix, size);
  if (!factored.ok) return null;
  const { solution } = solveFactored(factored, identity(size), size);
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < row; column++) {
      const mean = (solution[row * size + column]! + solution[column * size + row]!) / 2;
      solution[row * size + column] = mean;
      solution[column * size + row] = mean;
    }
  }
  return solution;
}

function identity(size: number): Float64Array {
  const matrix = new Float64Array(size * size);
  for (let at = 0; at < size; at++) matrix[at * (size + 1)] = 1;
  return matrix;
}
