import { notNegative, positive } from './positive.ts';

/** Figures of a metal that a conductor is sized against fusing with; K0 of the standard is `zeroBelowK`. */
export interface FusingFigures {
  readonly resistivityOhmM: number;
  readonly temperatureCoefficientPerK: number;
  readonly zeroBelowK: number;
  readonly fusingCelsius: number;
  readonly heatJPerM3K: number;
}

/**
 * Steady (rms) current, ampere, that brings a conductor from its surroundings' temperature to fusing in a time, without loss:
 *
 *     q sqrt(heat / (t alpha rho) ln((K0 + Tm) / (K0 + Ta)))
 *
 * section in square metres. IEEE Std 80-2000 equation 37 (from memory). For fault currents of cycles to seconds; for a surge
 * see `temperatureRise`.
 */
export function fusingCurrent(metal: FusingFigures, areaM2: number, durationS: number, ambientCelsius = 40): number {
  return positive(areaM2, 'section') * fusingDensity(metal, durationS, ambientCelsius);
}

/** The least section, square metres, that a steady current, ampere, does not fuse in a time: the same formula. */
export function leastFusingArea(
  metal: FusingFigures,
  currentA: number,
  durationS: number,
  ambientCelsius = 40,
): number {
  return notNegative(currentA, 'current') / fusingDensity(metal, durationS, ambientCelsius);
}

/**
 * How much more a fault current heats by its direct part at the start: the rms current of a fault is multiplied by it. Time
 * constant X / (omega R). IEEE Std 80-2000 equation 79 (from memory).
 */
export function decrementFactor(xOverR: number, frequencyHz: number, durationS: number): number {
  const timeConstantS = notNegative(xOverR, 'X/R') / (2 * Math.PI * positive(frequencyHz, 'frequency'));
  const ratio = timeConstantS / positive(durationS, 'duration');
  return ratio === 0 ? 1 : Math.sqrt(1 - ratio * Math.expm1(-2 / ratio));
}

/**
 * Steady current, ampere, that fuses a round wire in still air: factor x diameter^1.5, diameter in metres. W. H. Preece. For
 * wires of fractions of a millimetre up to a few; never for surges.
 */
export function steadyFusingCurrent(factorAPerM1p5: number, diameterM: number): number {
  return positive(factorAPerM1p5, 'factor') * positive(diameterM, 'diameter') ** 1.5;
}

/** One circular mil, square metres. */
const circularMilM2 = (Math.PI / 4) * 25.4e-6 ** 2;

/**
 * Current, ampere, that fuses a copper wire in a time without loss: A sqrt(log10((1083 - Ta) / (234 + Ta) + 1) / (33 t)), A in
 * circular mils. I. M. Onderdonk, constants as quoted on the history of the equation (read). Up to some ten seconds.
 */
export function copperFusingCurrent(areaM2: number, durationS: number, ambientCelsius: number): number {
  const warming = (1083 - checkAmbient(ambientCelsius, 1083)) / (234 + ambientCelsius);
  const area = positive(areaM2, 'section') / circularMilM2;
  return area * Math.sqrt(Math.log10(warming + 1) / (33 * positive(durationS, 'duration')));
}

/** Ampere per square metre. */
function fusingDensity(metal: FusingFigures, durationS: number, ambientCelsius: number): number {
  const { zeroBelowK: k0, fusingCelsius } = metal;
  const start = checkAmbient(ambientCelsius, fusingCelsius);
  const perSecond = positive(metal.heatJPerM3K, 'heat') / positive(durationS, 'duration');
  const growth = positive(metal.temperatureCoefficientPerK, 'temperature coefficient');
  const resistance = growth * positive(metal.resistivityOhmM, 'resistivity');
  return Math.sqrt((perSecond / resistance) * Math.log((k0 + fusingCelsius) / (k0 + start)));
}

function checkAmbient(celsius: number, fusingCelsius: number): number {
  if (!(celsius >= -100 && celsius < fusingCelsius)) throw new RangeError(`no surroundings at ${celsius} C`);
  return celsius;
}
