import { leastSquares } from '../math/least-squares.ts';
import { pinDistances, pinFactorPerM, type SoundingPins } from './sounding-pins.ts';

/**
 * Weights that turn what the soil sends back at some wavenumbers into apparent resistivities: relative to that of the first
 * layer, reading i is 1 + sum over j of rows[i][j] K(lambdas[j]).
 */
export interface ApparentWeights {
  /** 1/m, falling. */
  readonly lambdas: Float64Array;
  readonly rows: readonly Float64Array[];
}

/** Wavenumbers fall by this factor, as a logarithm: the finest waves of K that they see hold 2e-10 of it. */
const step = 0.22;
/** Exponents tried for each wavenumber. */
const exponentsPerLambda = 1.8;
/** The first wavenumber times the least exponent: exp(-30) is nothing. */
const first = 30;
/** The last one, times the greatest distance: beyond it pins in pairs feel nothing. */
const last = 1e-3;
/** Keeps weights small where exponents leave them open. */
const ridge = 1e-11;

/**
 * Weights for some arrangements of pins over soils whose first layer is at least `thinnestTopM` thick, worked out once.
 *
 * What a soil sends back is a sum of exp(-lambda u) with u from twice the first thickness on (its images); each has a transform
 * known in closed form, 1 / sqrt(r^2 + u^2). The weights are those that turn every exponential with u in that range into its
 * own transform, by linear least squares: 1e-8 of the first layer's resistivity, summed over images.
 *
 * Source: a digital filter in the sense of D. P. Ghosh, Geophysical Prospecting 19 (1971) (from memory), for these very
 * distances rather than for any; the choice of wavenumbers is our own and is measured in its tests.
 */
export function apparentWeights(pins: readonly SoundingPins[], thinnestTopM: number): ApparentWeights {
  const greatestM = Math.max(...pins.flatMap((p) => pinDistances(p).map(({ distanceM }) => distanceM)));
  const from = first / (2 * thinnestTopM);
  const to = Math.min(last / greatestM, from / 100);
  const lambdas = spread(from, to, step);
  const exponentsM = spread(2 * thinnestTopM, 10 / to, step / exponentsPerLambda);
  const columns = Array.from(lambdas, (lambda) => exponentsM.map((exponentM) => Math.exp(-lambda * exponentM)));
  const sides = pins.map((p) => exponentsM.map((exponentM) => sentBack(p, exponentM)));
  return { lambdas, rows: leastSquares(columns, sides, ridge) };
}

function spread(from: number, to: number, stepSize: number): Float64Array {
  const direction = Math.sign(to - from);
  const count = Math.ceil(Math.abs(Math.log(to / from)) / stepSize) + 1;
  return Float64Array.from({ length: count }, (_, at) => from * Math.exp(direction * stepSize * at));
}

/** What exp(-lambda exponent) adds to a reading, relative to the reading over the first layer alone. */
function sentBack(pins: SoundingPins, exponentM: number): number {
  const twiceDepthM = 2 * pins.pinDepthM;
  const sum = pinDistances(pins).reduce((total, { sign, distanceM }) => {
    const near = (depthM: number): number => 1 / Math.hypot(distanceM, depthM);
    // a source and a receiver at a depth see each image from above, from below and twice level
    const images = near(exponentM - twiceDepthM) + 2 * near(exponentM) + near(exponentM + twiceDepthM);
    return total + (sign * images) / 4;
  }, 0);
  return (2 * sum) / pinFactorPerM(pins);
}
