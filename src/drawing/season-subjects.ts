import type { Study } from '../study/study.ts';
import type { Bounded } from '../study/study-earth.ts';

/** The whole, or one group, in each condition of the ground. */
export interface SeasonSubject {
  /** null: the whole, at the service. */
  readonly group: string | null;
  readonly conditions: readonly { readonly id: string; readonly ohm: Bounded | null }[];
}

/**
 * The whole first, then each group in the order of the study; those of which nothing is known in any condition are left
 * out, and so is the group of the service where it has the figures of the whole.
 */
export function seasonSubjects(study: Study): readonly SeasonSubject[] {
  const { conditions } = study.earth;
  const whole = { group: null, conditions: conditions.map((c) => ({ id: c.id, ohm: c.resistanceOhm })) };
  const ids = [...new Set(conditions.flatMap((c) => c.groups.map((g) => g.id)))];
  const groups = ids.map((group) => ({
    group,
    conditions: conditions.map((c) => ({ id: c.id, ohm: c.groups.find((g) => g.id === group)?.resistanceOhm ?? null })),
  }));
  const service = new Set(study.bonding.groups.filter((g) => g.hasService === true).map((g) => g.id));
  const others = groups.filter((g) => !(service.has(g.group) && isSame(g, whole)));
  return [whole, ...others].filter((s) => s.conditions.some((c) => c.ohm !== null));
}

/** To two parts in a hundred: the whole is measured at the service's bar, a wire away from the group. */
function isSame(a: SeasonSubject, b: SeasonSubject): boolean {
  return a.conditions.every(({ ohm }, i) => {
    const other = b.conditions[i]!.ohm;
    if (ohm === null || other === null) return ohm === other;
    return near(ohm.low, other.low) && near(ohm.high, other.high);
  });
}

function near(a: number | null, b: number | null): boolean {
  if (a === null || b === null) return a === b;
  return Math.abs(a - b) <= 0.02 * Math.max(Math.abs(a), Math.abs(b));
}
