import type { commonFields } from '../format/common-fields.ts';
import type { ValuesOf } from '../format/field.ts';
import type { TypedMember } from '../reading/typed-part.ts';
import type { Condition, PartBase, PartSection, Where } from '../site.ts';
import type { Places } from './places.ts';

type Common = ValuesOf<typeof commonFields>;
type Own = { readonly condition?: Condition | null; readonly within_reach?: readonly string[] | null };

/** Supports, antennas and electrodes are outside unless said. */
const outside: readonly PartSection[] = ['supports', 'antennas', 'electrodes'];

/**
 * What every part carries, out of the fields of every part: a record of its own each time. What a section adds is assigned to
 * it: a literal that begins with a spread and goes on with many fields is some fifty times slower in a short run.
 */
export function partBase<S extends PartSection>(
  section: S,
  member: Omit<TypedMember<unknown>, 'values'> & { readonly values: Common & Own },
  places: Places,
): PartBase & { readonly section: S } {
  const { id, kind, values, fieldKnown, typed, source } = member;
  const otherwise: Where = outside.includes(section) ? 'outside' : null;
  return {
    id,
    section,
    kind,
    present: values.present ?? ('present' in typed ? 'unknown' : 'yes'),
    known: values.known ?? 'told',
    fieldKnown,
    condition: values.condition ?? 'unknown',
    position: places.position(values.at),
    place: places.name(values.at),
    where: whereOf(member, places, otherwise),
    on: values.on,
    bonded: values.bonded ?? ('bonded' in typed ? 'unknown' : null),
    near: [...nearOf(values.near), ...places.near(values.at)],
    withinReach: values.within_reach ?? [],
    owner: values.owner,
    count: values.count ?? 1,
    note: values.note,
    photo: values.photo ?? [],
    source,
    typed,
  };
}

/** `where: unknown` is unknown, not the default of the section. */
function whereOf(
  { values, typed }: { readonly values: Common; readonly typed: Readonly<Record<string, string>> },
  places: Places,
  otherwise: Where,
): Where {
  const saidUnknown = values.where === null && 'where' in typed;
  return saidUnknown ? null : places.where(values.where, values.at, otherwise);
}

function nearOf(near: Common['near']): PartBase['near'] {
  return (near ?? []).flatMap(({ part, distance }) => (part === null ? [] : [{ part, distanceM: distance }]));
}
