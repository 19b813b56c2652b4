import type { WireMetal } from './internal-impedance.ts';
import { positive } from './positive.ts';
import { mu0 } from './skin-depth.ts';

/** Branches side by side, for each metre of a wire: one resistance with one inductance in series each. */
export interface SkinLadder {
  readonly branches: readonly { readonly resistanceOhmPerM: number; readonly inductanceHPerM: number }[];
  /** Largest |Z / Z exact - 1| from 0 Hz up to the frequency it was asked for. */
  readonly error: number;
}

/**
 * Internal impedance of a round wire as a few R-L branches side by side (Foster's second form, all elements positive), for
 * each metre: a wire of concentric layers, the inner ones the slower. Follows `internalImpedance` from 0 Hz to `highestHz` to
 * the error that it states (2.2 % at most); at 0 Hz it is exact. The outside inductance stands in series with all of them.
 *
 * In terms of x = omega mu r^2 / rho all round wires are one: the shares of conductance and the times below are fits to
 * (2 / z) I1(z) / I0(z), z^2 = j x, by another program, each with the reach in x that it was made for. Its exact expansion is
 * 4 / (z^2 + j0n^2) summed over the zeros of J0, which would take hundreds of branches.
 */
export function skinLadder(metal: WireMetal, radiusM: number, highestHz: number): SkinLadder {
  const areaM2 = Math.PI * positive(radiusM, 'radius') ** 2;
  const resistance = positive(metal.resistivityOhmM, 'resistivity') / areaM2;
  const mu = mu0 * positive(metal.relativePermeability, 'relative permeability');
  const timeS = (mu * radiusM * radiusM) / metal.resistivityOhmM;
  const reach = 2 * Math.PI * positive(highestHz, 'highest frequency') * timeS;
  const fit = fits.find((f) => reach <= f.reach);
  if (fit === undefined) throw new RangeError(`a round wire of radius ${radiusM} m up to ${highestHz} Hz`);
  // six printed figures do not add up to 1 quite
  const whole = fit.shares.reduce((sum, share) => sum + share, 0);
  const branches = fit.shares.map((share, k) => {
    const own = (resistance * whole) / share;
    return { resistanceOhmPerM: own, inductanceHPerM: own * fit.times[k]! * timeS };
  });
  return { branches, error: fit.error / (1 - fit.error) };
}

interface LadderFit {
  /** Greatest omega mu r^2 / rho. */
  readonly reach: number;
  /** Largest of the admittance. */
  readonly error: number;
  /** Of the conductance at 0 Hz; together 1. */
  readonly shares: readonly number[];
  /** L / R of each, in mu r^2 / rho. */
  readonly times: readonly number[];
}

/** Fits in relative error, the peaks made level: scipy's least squares, tests/reference/skin-ladder.py. */
const fits: readonly LadderFit[] = [
  {
    reach: 1e1,
    error: 0.00121,
    shares: [0.70516, 0.29484],
    times: [0.171123, 0.0144684],
  },
  {
    reach: 1e2,
    error: 0.00582,
    shares: [0.710714, 0.169513, 0.119773],
    times: [0.168636, 0.0230936, 0.00237699],
  },
  {
    reach: 1e3,
    error: 0.01105,
    shares: [0.72404, 0.168946, 0.0656786, 0.0413356],
    times: [0.164716, 0.019461, 0.00298788, 0.00028096],
  },
  {
    reach: 1e4,
    error: 0.01431,
    shares: [0.730699, 0.170112, 0.0622778, 0.0232696, 0.0136417],
    times: [0.162663, 0.0177839, 0.00244775, 0.000341649, 3.05313e-5],
  },
  {
    reach: 1e5,
    error: 0.01654,
    shares: [0.734757, 0.170326, 0.060786, 0.0218321, 0.00787604, 0.00442311],
    times: [0.161378, 0.0168564, 0.00218011, 0.000282187, 3.70256e-5, 3.20456e-6],
  },
  {
    reach: 1e6,
    error: 0.01814,
    shares: [0.737513, 0.17034, 0.0596881, 0.0210446, 0.007388, 0.00260528, 0.00142176],
    times: [0.160497, 0.0162554, 0.00202007, 0.000250287, 3.10125e-5, 3.90573e-6, 3.30662e-7],
  },
  {
    reach: 1e7,
    error: 0.01935,
    shares: [0.739509, 0.170299, 0.0588803, 0.0204643, 0.00709118, 0.00245098, 0.000850691, 0.000454816],
    times: [0.159857, 0.0158329, 0.00191213, 0.000230036, 2.75972e-5, 3.31722e-6, 4.0575e-7, 3.38007e-8],
  },
  {
    reach: 1e8,
    error: 0.02027,
    shares: [0.740982, 0.170244, 0.0582817, 0.0200419, 0.00687315, 0.00235461, 0.000803626, 0.000275082, 0.000144734],
    times: [0.159383, 0.0155276, 0.00183632, 0.000216235, 2.53797e-5, 2.97119e-6, 3.48022e-7, 4.15393e-8, 3.41334e-9],
  },
  {
    reach: 1e9,
    error: 0.02105,
    shares: [
      0.742208, 0.170181, 0.057783, 0.0196951, 0.00669355, 0.0022724, 0.000771062, 0.000261258, 8.88194e-5, 4.61741e-5,
    ],
    times: [
      0.158986, 0.0152777, 0.00177558, 0.000205408, 2.36881e-5, 2.72892e-6, 3.14368e-7, 3.63158e-8, 4.26982e-9,
      3.47701e-10,
    ],
  },
];
