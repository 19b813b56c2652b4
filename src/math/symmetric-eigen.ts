/** Eigenvalues rising, and the eigenvector of each as a column: `vectors[row * size + k]`. */
export interface SymmetricEigen {
  readonly values: Float64Array;
  readonly vectors: Float64Array;
}

/**
 * All eigenvalues and orthonormal eigenvectors of a symmetric matrix (row by row): Householder reflections to three diagonals,
 * then implicit QL. Backward stable: each value is right to some 1e-15 of the largest. Some 9 n^3 multiplications. Error if
 * a value does not settle in 60 sweeps, which a matrix of finite numbers does not bring about.
 *
 * Source: R. S. Martin, C. Reinsch, J. H. Wilkinson, Numer. Math. 11 (1968) 181-195; H. Bowdler et al., ibid. 293-306.
 */
export function symmetricEigen(matrix: Float64Array, size: number): SymmetricEigen {
  if (matrix.length !== size * size) throw new RangeError(`expected ${size} rows of ${size} numbers`);
  // rows of `z` are the columns of the transformation: QL then turns whole rows
  const z = Float64Array.from(matrix);
  const diagonal = new Float64Array(size);
  const beside = new Float64Array(size);
  reduce(z, diagonal, beside, size);
  iterate(z, diagonal, beside, size);
  return sorted(z, diagonal, size);
}

/** Reflects away all but three diagonals, last row first; then builds the product of the reflections, transposed, in `z`. */
function reduce(z: Float64Array, diagonal: Float64Array, beside: Float64Array, size: number): void {
  const reflectors: (Float64Array | null)[] = new Array(size).fill(null);
  const room = new Float64Array(size * size);
  const scaled = new Float64Array(size);
  for (let last = size - 1; last > 0; last--) {
    const row = last * size;
    const norm = rowNorm(z, row, last);
    const pivot = z[row + last - 1]!;
    diagonal[last] = z[row + last]!;
    if (norm === Math.abs(pivot)) {
      beside[last] = pivot;
      continue;
    }
    const target = pivot > 0 ? -norm : norm;
    beside[last] = target;
    const reflector = room.subarray(row, row + last);
    for (let k = 0; k < last; k++) reflector[k] = z[row + k]!;
    reflector[last - 1] = pivot - target;
    // half the square of its length
    const half = norm * norm - pivot * target;
    reflectors[last] = reflector;
    reflectBoth(z, size, reflector, half, scaled);
  }
  diagonal[0] = z[0]!;
  beside[0] = 0;
  z.fill(0);
  for (let k = 0; k < size; k++) z[k * (size + 1)] = 1;
  for (let last = 1; last < size; last++) {
    const reflector = reflectors[last];
    if (reflector != null) reflectRows(z, size, reflector);
  }
}

/** A - v q' - q v' on the leading block, with q = p - (v'p / 2 half) v and p = A v / half. */
function reflectBoth(z: Float64Array, size: number, v: Float64Array, half: number, q: Float64Array): void {
  const count = v.length;
  let share = 0;
  for (let i = 0; i < count; i++) {
    q[i] = rowProduct(z, i * size, v) / half;
    share += q[i]! * v[i]!;
  }
  share /= 2 * half;
  for (let i = 0; i < count; i++) q[i] = q[i]! - share * v[i]!;
  for (let i = 0; i < count; i++) {
    takeOff(z, i * size, v, q[i]!);
    takeOff(z, i * size, q, v[i]!, count);
  }
}

// Small loops in functions of their own: the engine compiles those once and for all.

/** Length of a part of a row, scaled so that no square overflows. */
function rowNorm(z: Float64Array, start: number, count: number): number {
  let most = 0;
  for (let k = 0; k < count; k++) most = Math.max(most, Math.abs(z[start + k]!));
  if (most === 0) return 0;
  let sum = 0;
  for (let k = 0; k < count; k++) sum += (z[start + k]! / most) ** 2;
  return most * Math.sqrt(sum);
}

function rowProduct(z: Float64Array, start: number, v: Float64Array): number {
  let sum = 0;
  for (let j = 0; j < v.length; j++) sum += z[start + j]! * v[j]!;
  return sum;
}

function takeOff(z: Float64Array, start: number, v: Float64Array, factor: number, count = v.length): void {
  for (let j = 0; j < count; j++) z[start + j] = z[start + j]! - factor * v[j]!;
}

function rotate(z: Float64Array, low: number, high: number, size: number, sine: number, cosine: number): void {
  for (let k = 0; k < size; k++) {
    const [a, b] = [z[low + k]!, z[high + k]!];
    z[high + k] = sine * a + cosine * b;
    z[low + k] = cosine * a - sine * b;
  }
}

/** Rows of `z` (columns of the product) reflected: only the leading block is touched yet. */
function reflectRows(z: Float64Array, size: number, v: Float64Array): void {
  const count = v.length;
  let half = 0;
  for (let k = 0; k < count; k++) half += v[k]! * v[k]!;
  half /= 2;
  for (let i = 0; i < count; i++) takeOff(z, i * size, v, rowProduct(z, i * size, v) / half);
}

const mostSweeps = 60;

function iterate(z: Float64Array, d: Float64Array, e: Float64Array, size: number): void {
  for (let i = 1; i < size; i++) e[i - 1] = e[i]!;
  if (size > 0) e[size - 1] = 0;
  for (let first = 0; first < size; first++) {
    for (let sweep = 0; ; sweep++) {
      const last = split(d, e, first, size);
      if (last === first) break;
      if (sweep === mostSweeps) throw new Error('an eigenvalue did not settle');
      turn(z, d, e, first, last, size);
    }
  }
}

/** Where the next element beside the diagonal counts for nothing. */
function split(d: Float64Array, e: Float64Array, first: number, size: number): number {
  let at = first;
  while (at < size - 1) {
    const near = Math.abs(d[at]!) + Math.abs(d[at + 1]!);
    if (Math.abs(e[at]!) <= Number.EPSILON * near) break;
    at++;
  }
  return at;
}

/** One implicit QL sweep of the block from `first` to `last`. */
function turn(z: Float64Array, d: Float64Array, e: Float64Array, first: number, last: number, size: number): void {
  let g = (d[first + 1]! - d[first]!) / (2 * e[first]!);
  let r = Math.hypot(g, 1);
  g = d[last]! - d[first]! + e[first]! / (g + (g >= 0 ? r : -r));
  let [sine, cosine, p] = [1, 1, 0];
  for (let i = last - 1; i >= first; i--) {
    const f = sine * e[i]!;
    const b = cosine * e[i]!;
    r = Math.hypot(f, g);
    e[i + 1] = r;
    if (r === 0) {
      d[i + 1] = d[i + 1]! - p;
      e[last] = 0;
      return;
    }
    sine = f / r;
    cosine = g / r;
    g = d[i + 1]! - p;
    r = (d[i]! - g) * sine + 2 * cosine * b;
    p = sine * r;
    d[i + 1] = g + p;
    g = cosine * r - b;
    rotate(z, i * size, (i + 1) * size, size, sine, cosine);
  }
  d[first] = d[first]! - p;
  e[first] = g;
  e[last] = 0;
}

function sorted(z: Float64Array, d: Float64Array, size: number): SymmetricEigen {
  const order = Array.from(d, (_, k) => k).sort((a, b) => d[a]! - d[b]!);
  const vectors = new Float64Array(size * size);
  order.forEach((from, to) => {
    for (let row = 0; row < size; row++) vectors[row * size + to] = z[from * size + row]!;
  });
  return { values: Float64Array.from(order, (k) => d[k]!), vectors };
}
