import type { Study } from '../study/study.ts';
import type { Bounded } from '../study/study-earth.ts';
import { earthOhmText } from '../words/earth-ohm.ts';

/** The whole, or one group, in each condition of the ground. */
export interface SeasonSubject {
  /** null: the whole, at the service. */
  readonly group: string | null;
  readonly conditions: readonly { readonly id: string; readonly ohm: Bounded | null }[];
}

/**
 * The whole first, then each group in the order of the study; those of which nothing is known in any condition are left
 * out, and so is the group of the service, which is the whole but for the wire to the service's bar.
 */
export function seasonSubjects(study: Study): readonly SeasonSubject[] {
  const { conditions } = study.earth;
  const whole = { group: null, conditions: conditions.map((c) => ({ id: c.id, ohm: known(c.resistanceOhm) })) };
  const ids = [...new Set(conditions.flatMap((c) => c.groups.map((g) => g.id)))];
  const groups = ids.map((group) => ({
    group,
    conditions: conditions.map((c) => ({ id: c.id, ohm: known(c.groups.find((g) => g.id === group)?.resistanceOhm) })),
  }));
  const service = new Set(study.bonding.groups.filter((g) => g.hasService === true).map((g) => g.id));
  const isWhole = (g: SeasonSubject) => service.has(g.group ?? '') && whole.conditions.some((c) => c.ohm !== null);
  const others = groups.filter((g) => !isWhole(g));
  return [whole, ...others].filter((s) => s.conditions.some((c) => c.ohm !== null));
}

/** Nothing is known where only the metal on the way bounds it. */
function known(ohm: Bounded | null | undefined): Bounded | null {
  return ohm == null || earthOhmText(ohm) === null ? null : ohm;
}
