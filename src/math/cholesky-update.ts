/** Most columns whose products are taken off at once: two rows and three columns of them stay in the nearest cache. */
export const updateDepth = 72;

/** Rows of columns kept at once: a hundred kilobytes, for the second cache. */
const keptRows = 192;

/**
 * Takes the products of columns [from, from + depth) off what stands to their right: for j in [first, end) and every row
 * i from j on, entry (i, j) less the sum of L(i, k) L(j, k). `depth` is at most `updateDepth`. The lower triangle stands
 * row after row without gaps. Nearly all the work of a factorisation is done here.
 *
 * Source: K. Goto, R. A. van de Geijn, Anatomy of high-performance matrix multiplication (2008), from memory: a small block
 * of sums held in registers, its rows copied to where they are read in order.
 */
export function choleskyUpdate(
  lower: Float64Array,
  size: number,
  from: number,
  depth: number,
  first: number,
  end: number,
): void {
  for (let block = first; block < end; block += keptRows) {
    const blockEnd = Math.min(end, block + keptRows);
    for (let j = block; j < blockEnd; j++) tile.keepColumn(lower, rowStart(j) + from, depth, j - block);
    for (let i = block; i < size; i += 2) {
      // the last row of an odd number stands for both
      tile.keepRows(lower, rowStart(i) + from, rowStart(Math.min(i + 1, size - 1)) + from, depth);
      updatePair(lower, size, depth, i, block, blockEnd);
    }
  }
}

/** Where a row of a lower triangle begins that stands row after row without gaps. */
export function rowStart(row: number): number {
  return (row * (row + 1)) / 2;
}

/** Rows i and i + 1 of the entries in columns from `block` to the diagonal, but before `blockEnd`. */
function updatePair(
  lower: Float64Array,
  size: number,
  depth: number,
  i: number,
  block: number,
  blockEnd: number,
): void {
  // tiles that lie on or below the diagonal as a whole
  const whole = i + 1 < size ? Math.min(blockEnd, i + 1) : block;
  const start = rowStart(i);
  let j = block;
  for (; j + 3 <= whole; j += 3) tile.subtract((j - block) / 3, depth, lower, start + j, start + i + 1 + j);
  for (; j < blockEnd && j <= i + 1; j += 3) {
    tile.subtract((j - block) / 3, depth, edge.fill(0), 0, 3);
    addEdge(lower, size, i, j, blockEnd);
  }
}

/** The entries of a tile that are in the lower triangle and before `end`. */
function addEdge(lower: Float64Array, size: number, i: number, j: number, end: number): void {
  for (let row = i; row < i + 2 && row < size; row++) {
    for (let column = j; column < j + 3 && column < end && column <= row; column++) {
      const at = rowStart(row) + column;
      lower[at] = lower[at]! + edge[3 * (row - i) + column - j]!;
    }
  }
}

/** Where the sums of a tile go that is not whole. */
const edge = new Float64Array(6);

/**
 * Six sums at a time: two rows by three columns. More sums would not fit the registers together with their products, which
 * the engine works out first. The rows lie in arrays that exist once, inside one function: so the engine knows where they
 * are and how long, and a step costs two checks of bounds rather than five (measured: twice as fast).
 */
const tile = (() => {
  const rowA = new Float64Array(updateDepth);
  const rowB = new Float64Array(updateDepth);
  const length = (keptRows / 3) * updateDepth;
  const columns = [new Float64Array(length), new Float64Array(length), new Float64Array(length)] as const;
  const [columnX, columnY, columnZ] = columns;

  const keepRows = (from: Float64Array, at: number, below: number, depth: number): void => {
    for (let k = 0; k < depth; k++) {
      rowA[k] = from[at + k]!;
      rowB[k] = from[below + k]!;
    }
  };
  const keepColumn = (from: Float64Array, at: number, depth: number, column: number): void => {
    const to = columns[column % 3]!;
    const start = Math.floor(column / 3) * updateDepth;
    for (let k = 0; k < depth; k++) to[start + k] = from[at + k]!;
  };
  const subtract = (triple: number, depth: number, into: Float64Array, at: number, below: number): void => {
    let ax = 0;
    let ay = 0;
    let az = 0;
    let bx = 0;
    let by = 0;
    let bz = 0;
    // the masks change nothing; they tell the engine that no index leaves the small whole numbers
    const steps = depth & 127;
    const start = (triple & 63) * updateDepth;
    for (let p = 0; p < steps; p++) {
      const q = start + p;
      const a = rowA[p]!;
      const b = rowB[p]!;
      const x = columnX[q]!;
      const y = columnY[q]!;
      const z = columnZ[q]!;
      ax += a * x;
      ay += a * y;
      az += a * z;
      bx += b * x;
      by += b * y;
      bz += b * z;
    }
    into[at] = into[at]! - ax;
    into[at + 1] = into[at + 1]! - ay;
    into[at + 2] = into[at + 2]! - az;
    into[below] = into[below]! - bx;
    into[below + 1] = into[below + 1]! - by;
    into[below + 2] = into[below + 2]! - bz;
  };
  return { keepRows, keepColumn, subtract };
})();
