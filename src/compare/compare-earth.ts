import type { Bounded, Study } from '../study/study.ts';
import type { ComparedEarth, OhmRow } from './comparison.ts';
import type { Names } from './matching/names.ts';
import { pairRows } from './pair-rows.ts';
import { isSameBounded } from './same-figure.ts';
import { standingOf } from './standing.ts';

/** Resistance of the service's group, and of each electrode alone, side by side. */
export function compareEarth(before: Study, after: Study, names: Names): ComparedEarth {
  const [was, is] = [before.earth, after.earth];
  const sides = (read: (earth: Study['earth']) => Bounded | null) => ({ before: read(was), after: read(is) });
  const [resistanceOhm, withServicesOhm] = [sides((e) => e.resistanceOhm), sides((e) => e.withServicesOhm)];
  const isSame = [resistanceOhm, withServicesOhm].every((s) => isSameBounded(s.before, s.after));
  const rows = pairRows(
    was.electrodes,
    is.electrodes,
    (e) => names.toAfter(e.id),
    (e) => e.id,
  );
  return {
    standing: isSame ? 'same' : 'changed',
    resistanceOhm,
    withServicesOhm,
    electrodes: rows.map(({ before: b, after: a }): OhmRow => {
      const id = { before: b?.id ?? null, after: a?.id ?? null };
      const ohm = { before: b?.aloneOhm ?? null, after: a?.aloneOhm ?? null };
      return { id, standing: standingOf(id, isSameBounded(ohm.before, ohm.after)), ohm };
    }),
  };
}
