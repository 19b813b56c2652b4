import type { SiteChange } from './site-change.ts';
import type { ChangeValue } from './write-value.ts';

/** What a file says, without where and how it is written: text, nothing, lists, and groups in their order. */
export type Said = string | null | readonly Said[] | ReadonlyMap<string, Said>;

/** Of a YAML document turned into plain texts, lists and maps. */
export function saidOf(value: unknown): Said {
  if (value instanceof Map) return new Map([...value].map(([key, inner]) => [String(key).trim(), saidOf(inner)]));
  if (Array.isArray(value)) return value.map(saidOf);
  return value === null || value === undefined || value === '' ? null : String(value);
}

/** What a file must say after a change, worked out without its text. */
export function afterChange(said: Said, change: SiteChange): Said {
  const root = groupOf(said);
  const section = root.get(change.section) ?? null;
  if (change.is === 'remove') return withEntry(root, change.section, without(groupOf(section), change.id) ?? 'none');
  if (change.is === 'add') {
    const part = saidValue(change.fields);
    return withEntry(root, change.section, withEntry(groupOf(section), change.id, part));
  }
  if (change.id === null) return withEntry(root, change.section, withField(section, change));
  const members = groupOf(section);
  return withEntry(
    root,
    change.section,
    withEntry(members, change.id, withField(members.get(change.id) ?? null, change)),
  );
}

function withField(part: Said, { section, field, value }: SiteChange & { is: 'set' }): Said {
  const isPosition = section === 'places' && isPlacePosition(part);
  if (isPosition && field === 'at') return value === null ? 'unknown' : saidValue(value);
  const fields = isPosition ? new Map([['at', part]]) : groupOf(part);
  return value === null ? without(fields, field) : withEntry(fields, field, saidValue(value));
}

/** A place may be typed as a position alone. */
function isPlacePosition(part: Said): boolean {
  return part instanceof Map ? part.has('from') : part !== null && part !== 'unknown';
}

function groupOf(said: Said): ReadonlyMap<string, Said> {
  return said instanceof Map ? said : new Map();
}

function withEntry(group: ReadonlyMap<string, Said>, key: string, value: Said): ReadonlyMap<string, Said> {
  return new Map([...group, [key, value]]);
}

/** null: nothing is left. */
function without(group: ReadonlyMap<string, Said>, key: string): ReadonlyMap<string, Said> | null {
  const left = new Map([...group].filter(([name]) => name !== key));
  return left.size === 0 ? null : left;
}

function saidValue(value: ChangeValue): Said {
  if (value === '') return null;
  if (typeof value === 'string' || typeof value === 'number') return String(value);
  if (Array.isArray(value)) return value.map(saidValue);
  return new Map(Object.entries(value).map(([key, inner]): [string, Said] => [key, saidValue(inner)]));
}

/** Whether two files say the same; an empty group says as much as nothing. */
export function saysSame(a: Said, b: Said): boolean {
  return JSON.stringify(plain(a)) === JSON.stringify(plain(b));
}

function plain(said: Said): unknown {
  if (typeof said === 'string' || said === null) return said;
  if (said instanceof Map) return said.size === 0 ? null : { group: [...said].map(([k, v]) => [k, plain(v)]) };
  return (said as readonly Said[]).map(plain);
}
