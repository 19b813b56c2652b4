/**
 * Functions of a wavenumber as sums of decaying exponentials: f(lambda) = sum of strengths[k] exp(-lambda depths[k]), with
 * the depths spaced evenly on a logarithmic scale, each `depthRatio` times the one before. For what dies away above
 * 1 / depths[0] and is analytic right of the imaginary axis (there, between two boundaries that reflect almost fully, poles
 * may lie close by); `fitError` says how far it is met.
 *
 * Linear least squares by Householder reflections, held by a ridge: G. H. Golub, C. F. Van Loan, Matrix Computations,
 * algorithm 5.3.2 (from memory). The choice of depths is our own; how far it holds is measured in its tests.
 */
export interface ExponentialBasis {
  readonly depths: Float64Array;
  /** Where f has to be sampled. */
  readonly lambdas: Float64Array;
  /** Strengths for the samples of one function. */
  readonly fit: (samples: Float64Array) => Float64Array;
}

/**
 * Error of a fit, of functions as large as 1 near their poles (up to ten times that for an exponential of a depth just beyond
 * the least; beyond 1e-10 rounding rules). The exponentials side by
 * side on a logarithmic scale, exp(-exp x), carry waves of x in proportion to the gamma function of an imaginary argument,
 * which falls off as exp(-pi w / 2); the finest wave that depths in this ratio can carry has w = pi / ln(ratio).
 */
export function fitError(depthRatio: number): number {
  return Math.exp(-(Math.PI ** 2) / (2 * Math.log(depthRatio)));
}

/** Depths before the least one: what dies away by it needs some on both sides. */
const lead = 4;
/** Samples per depth. */
const samplesPerDepth = 2.5;
/** Weight that keeps strengths small where samples leave them open, relative to a sample. */
const ridge = 1e-11;
/** Samples begin here, in units of 1 / the first depth: exp(-30) is nothing beside the aim. */
const firstSample = 30;
/** They end here, in units of 1 / the last depth. */
const lastSample = 1e-3;

/**
 * Depths from `leastDepth` to `greatestDepth` or somewhat beyond (at most 1e12 times). Same depths, same basis. Ratios from
 * 1.2 (below it, rounding rules) to 2.
 */
export function exponentialBasis(leastDepth: number, greatestDepth: number, depthRatio = 1.3): ExponentialBasis {
  const ratio = Math.min(Math.max(greatestDepth / leastDepth, 1), 1e12);
  // in steps of four, so that few bases serve all soils
  const count = 4 * (1 + Math.ceil(Math.log(ratio) / Math.log(depthRatio) / 4)) + lead;
  const unit = unitBasis(count, depthRatio);
  return {
    depths: unit.depths.map((depth) => depth * leastDepth),
    lambdas: unit.lambdas.map((lambda) => lambda / leastDepth),
    fit: (samples) => solveTriangle(unit, rotate(unit, samples)),
  };
}

/** The same for a least depth of 1: the exponents do not change with the unit of length. */
interface UnitBasis {
  readonly depths: Float64Array;
  readonly lambdas: Float64Array;
  readonly rows: number;
  /** Column by column: reflections below the diagonal, the triangle above it. */
  readonly columns: readonly Float64Array[];
  readonly diagonal: Float64Array;
}

const unitBases = new Map<string, UnitBasis>();

function unitBasis(count: number, depthRatio: number): UnitBasis {
  const key = `${count} ${depthRatio}`;
  const kept = unitBases.get(key);
  if (kept !== undefined) return kept;
  const made = triangulate(count, depthRatio);
  unitBases.set(key, made);
  return made;
}

function triangulate(count: number, depthRatio: number): UnitBasis {
  const depths = Float64Array.from({ length: count }, (_, k) => depthRatio ** (k - lead));
  const spread = Math.log((firstSample / lastSample) * depthRatio ** (count - 1));
  const samples = Math.ceil((samplesPerDepth * spread) / Math.log(depthRatio));
  const lambdas = Float64Array.from(
    { length: samples },
    (_, j) => (firstSample / depths[0]!) * Math.exp((-spread * j) / (samples - 1)),
  );
  const rows = samples + count;
  const columns = Array.from(depths, (depth, k) => {
    const column = new Float64Array(rows);
    lambdas.forEach((lambda, j) => {
      column[j] = Math.exp(-lambda * depth);
    });
    column[samples + k] = ridge;
    return column;
  });
  const diagonal = new Float64Array(count);
  for (let k = 0; k < count; k++) {
    diagonal[k] = reflectColumn(columns[k]!, k);
    for (let later = k + 1; later < count; later++) apply(columns[k]!, k, columns[later]!);
  }
  return { depths, lambdas, rows, columns, diagonal };
}

/** Turns a column from its diagonal down into the reflection that clears it, of length sqrt 2; gives the diagonal. */
function reflectColumn(column: Float64Array, from: number): number {
  let squares = 0;
  for (let row = from; row < column.length; row++) squares += column[row]! ** 2;
  const diagonal = column[from]! > 0 ? -Math.sqrt(squares) : Math.sqrt(squares);
  column[from] = column[from]! - diagonal;
  const length = Math.sqrt(-diagonal * column[from]!);
  for (let row = from; row < column.length; row++) column[row] = column[row]! / length;
  return diagonal;
}

function apply(reflection: Float64Array, from: number, to: Float64Array): void {
  let along = 0;
  for (let row = from; row < to.length; row++) along += reflection[row]! * to[row]!;
  for (let row = from; row < to.length; row++) to[row] = to[row]! - along * reflection[row]!;
}

function rotate({ rows, columns }: UnitBasis, samples: Float64Array): Float64Array {
  const turned = new Float64Array(rows);
  turned.set(samples);
  columns.forEach((reflection, k) => {
    apply(reflection, k, turned);
  });
  return turned;
}

function solveTriangle({ columns, diagonal }: UnitBasis, turned: Float64Array): Float64Array {
  const strengths = new Float64Array(columns.length);
  for (let k = columns.length - 1; k >= 0; k--) {
    let rest = turned[k]!;
    for (let later = k + 1; later < columns.length; later++) rest -= columns[later]![k]! * strengths[later]!;
    strengths[k] = rest / diagonal[k]!;
  }
  return strengths;
}
