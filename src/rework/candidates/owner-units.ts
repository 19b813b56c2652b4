import { footM } from '../../units/unit-table.ts';

export type Units = 'ft' | 'm';

/** A length as somebody types it who plans: rounded up to whole feet or half metres, at least one of them. */
export function plannedLength(lengthM: number, units: Units): { readonly text: string; readonly lengthM: number } {
  const step = units === 'ft' ? footM : 0.5;
  // a millionth of a step is what a sum of figures leaves behind
  const steps = Math.max(1, Math.ceil(lengthM / step - 1e-6));
  const count = units === 'ft' ? steps : steps / 2;
  return { text: `${count} ${units}`, lengthM: steps * step };
}

/** A place as typed: to half a foot or a tenth of a metre. */
export function typedPlace(atM: readonly [number, number], units: Units): readonly [number, number] {
  const [east, north] = atM.map((m) => (units === 'ft' ? Math.round((m / footM) * 2) / 2 : Math.round(m * 10) / 10));
  return [east! + 0, north! + 0];
}

/** A height as typed: as a place is. */
export function typedHeight(heightM: number, units: Units): number {
  return typedPlace([heightM, 0], units)[0];
}

/** Metres of a place as typed. */
export function placeM([east, north]: readonly [number, number], units: Units): readonly [number, number] {
  return units === 'ft' ? [east * footM, north * footM] : [east, north];
}
