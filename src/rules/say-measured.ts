import { dimensionOfKey } from '../units/format.ts';
import type { Speech } from '../words/say.ts';
import type { Measured } from './rule.ts';
import { sayFigureOf } from './say-figure.ts';

const units: Readonly<Record<string, string>> = {
  length: 'm',
  area: 'm2',
  resistance: 'ohm',
  angle: 'deg',
  voltage: 'V',
  inductance: 'H',
};

/** A figure against its limit, in words of both unit systems and as numbers with their unit. */
export function sayMeasured(m: Measured, speech: Speech) {
  const dimension = dimensionOfKey(m.key);
  const show = (figure: Measured['value']) =>
    dimension === null ? plain(figure) : sayFigureOf(figure, dimension, speech);
  const text = `${show(m.value)}; ${m.sense === 'least' ? 'at least' : 'at most'} ${show(m.limit)} is asked`;
  return { value: m.value, unit: dimension === null ? '' : (units[dimension] ?? dimension), limit: m.limit, text };
}

function plain(figure: Measured['value']): string {
  if (typeof figure === 'number') return String(figure);
  return figure.low === figure.high ? String(figure.low) : `${figure.low} to ${figure.high}`;
}
