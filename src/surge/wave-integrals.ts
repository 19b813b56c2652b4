import { gaussLegendre } from '../math/quadrature.ts';
import { currentAt, type Wave } from './wave.ts';
import { waveTimes } from './wave-times.ts';

/** What a wave carries from its start to a time. */
export interface WaveIntegrals {
  /** Integral of the current, coulomb. */
  readonly chargeC: number;
  /** Integral of its square (action integral, W/R), joule per ohm = A2 s. */
  readonly specificEnergyJPerOhm: number;
}

const rule = gaussLegendre(16);

/** Panels a little longer each than the one before: the poles of a Heidler wave lie pi/n of its time away from it. */
const growth = 1.25;

/**
 * Charge and action integral of a wave up to a time, the whole of it unless a time is given. Gauss-Legendre on panels that
 * grow with time, 16 points each: 1e-10 of themselves for every wave that `checkWave` lets pass.
 */
export function waveIntegrals(wave: Wave, untilS = Infinity): WaveIntegrals {
  if (Number.isNaN(untilS)) throw new RangeError('until when is not a number');
  const { fastS, endS, halfTurnS } = waveTimes(wave);
  const last = Math.min(untilS, endS);
  let [chargeC, energy, from] = [0, 0, 0];
  for (
    let to = fastS / 16;
    from < last;
    [from, to] = [to, to + Math.min(Math.max(to * (growth - 1), fastS / 16), halfTurnS)]
  ) {
    const half = (Math.min(to, last) - from) / 2;
    for (let i = 0; i < rule.points.length; i++) {
      const current = currentAt(wave, from + half * (1 + rule.points[i]!));
      const share = half * rule.weights[i]! * current;
      chargeC += share;
      energy += share * current;
    }
  }
  return { chargeC, specificEnergyJPerOhm: energy };
}
