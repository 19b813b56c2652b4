import type { Study, StudyGuy, StudyPart } from '../study/study.ts';
import { byCodeUnit } from '../units/by-code-unit.ts';
import type { ChangedPart, ComparedPart, FieldChange } from './comparison.ts';
import type { Names } from './matching/names.ts';

/** A tape does not tell less apart. */
const sameM = 0.01;

export interface PartOfBoth {
  readonly before: StudyPart;
  readonly after: StudyPart;
}

/** Of the parts on both sides those that somebody typed otherwise, or that stand or run elsewhere; by id before. */
export function changedParts(
  pairs: readonly PartOfBoth[],
  before: Study,
  after: Study,
  names: Names,
): readonly ChangedPart[] {
  const guysOf = ({ guys }: Study, support: string) => guys.filter((g) => g.support === support);
  return pairs.flatMap(({ before: b, after: a }) => {
    const guys = guyChanges(guysOf(before, b.id), guysOf(after, a.id), names);
    const fields = [...fieldChanges(withoutGuys(b), withoutGuys(a), names), ...guys];
    const movedM = moved(b.positionM, a.positionM);
    const routeChanged = !isSameRoute(b.routeM, a.routeM);
    if (fields.length === 0 && !(movedM !== null && movedM > sameM) && !routeChanged) return [];
    return [
      { before: comparedPart(b), after: comparedPart(a), fields, movedM, routeChanged, presence: presence(b, a) },
    ];
  });
}

/** What a plan and a table need of a part. */
export function comparedPart(p: StudyPart): ComparedPart {
  const { id, section, kind, present, known, count, positionM, routeM, heightM, typed } = p;
  return { id, section, kind, present, known, count, positionM, routeM, heightM, typed };
}

type Typed = Readonly<Record<string, string>>;

/** Guys are told one by one. */
function withoutGuys({ typed }: StudyPart): Typed {
  const { guys: _, ...rest } = typed;
  return rest;
}

/** Fields that say something else, names of things apart; in the order of their names. */
export function fieldChanges(before: Typed, after: Typed, names: Pick<Names, 'saysSame'>): readonly FieldChange[] {
  const fields = [...new Set([...Object.keys(before), ...Object.keys(after)])].sort(byCodeUnit);
  return fields.flatMap((field) => {
    const [b, a] = [before[field] ?? null, after[field] ?? null];
    const same = b === null || a === null ? b === a : names.saysSame(b, a);
    return same ? [] : [{ field, before: b, after: a }];
  });
}

/** `guys.g1.bypass`; a guy that is only on one side has all its fields on that side. */
function guyChanges(before: readonly StudyGuy[], after: readonly StudyGuy[], names: Names): readonly FieldChange[] {
  const mine = new Map(before.map((g) => [names.toAfter(g.id), g]));
  const theirs = new Map(after.map((g) => [g.id, g]));
  const ids = [...new Set([...mine.keys(), ...theirs.keys()])].sort(byCodeUnit);
  return ids.flatMap((id) => {
    const [b, a] = [mine.get(id), theirs.get(id)];
    const name = b?.id ?? id;
    return fieldChanges(b?.typed ?? {}, a?.typed ?? {}, names).map((c) => ({ ...c, field: `guys.${name}.${c.field}` }));
  });
}

function moved(b: StudyPart['positionM'], a: StudyPart['positionM']): number | null {
  if (b === null && a === null) return 0;
  if (b === null || a === null) return null;
  const apartM = Math.hypot(...b.map((x, i) => x - a[i]!));
  return apartM > sameM ? apartM : 0;
}

function isSameRoute(b: StudyPart['routeM'], a: StudyPart['routeM']): boolean {
  return b.length === a.length && b.every((p, i) => (moved(p, a[i]!) ?? 0) === 0);
}

function presence(b: StudyPart, a: StudyPart): ChangedPart['presence'] {
  if ((b.present === 'no') === (a.present === 'no')) return null;
  return b.present === 'no' ? 'came' : 'went';
}
