import type { StudyStrike } from '../study/study-strike.ts';
import { formatQuantity } from '../units/format.ts';
import { partOfPoint } from './item-numbers.ts';

/** Greatest current along a part, and into the soil from it; null: none is known. */
export interface StrikeCurrent {
  readonly alongA: number | null;
  readonly soilA: number | null;
}

/** Less than this share of the stroke is left to the tables. */
const toldShare = 0.01;

/** What each conductor, support, line and electrode carries, by the part's id; of several spans the most. */
export function strikeCurrents(strike: StudyStrike): ReadonlyMap<string, StrikeCurrent> {
  const least = toldShare * (strike.stroke?.peakA ?? 0);
  const currents = new Map<string, StrikeCurrent>();
  const put = (point: string, with_: (old: StrikeCurrent) => StrikeCurrent) => {
    const id = partOfPoint(point);
    currents.set(id, with_(currents.get(id) ?? { alongA: null, soilA: null }));
  };
  for (const { id, peakA } of strike.conductors)
    if (peakA >= least) put(id, (old) => ({ ...old, alongA: Math.max(peakA, old.alongA ?? 0) }));
  for (const { id, peakA } of strike.electrodes)
    if (peakA >= least) put(id, (old) => ({ ...old, soilA: Math.max(peakA, old.soilA ?? 0) }));
  return currents;
}

/** `12.4 kA`, and with an arrow down what goes into the soil. */
export function sayCurrent({ alongA, soilA }: StrikeCurrent): string {
  const says = [alongA === null ? null : ampere(alongA), soilA === null ? null : `${intoSoil} ${ampere(soilA)}`];
  return says.filter((s) => s !== null).join(', ');
}

export const intoSoil = '↓';

export function ampere(currentA: number): string {
  return formatQuantity(currentA, 'current', 'si') ?? '';
}
