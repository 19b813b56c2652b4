import type { ChangeValue } from '../../study/written-lists.ts';
import { readQuantity } from '../../units/quantity.ts';

/** A bend in the owner's words; null: that figure was not typed. */
export interface TypedBend {
  readonly angle: string | null;
  readonly radius: string | null;
}

/**
 * The bends of a conductor one by one, read from its field as typed. null where the text cannot be taken apart for certain:
 * the angles that were found have to come to the sum that the study has.
 */
export function typedBends(typed: string, sumDeg: number): readonly TypedBend[] | null {
  const value = typed.startsWith('[') || typed.startsWith('{') ? inBrackets(typed) : inLines(typed);
  const items = value === null || Array.isArray(value) ? (value as readonly ChangeValue[] | null) : [value];
  const bends = items?.map(bendOf) ?? [];
  if (bends.length === 0 || bends.includes(null)) return null;
  const all = bends.map((b) => b!);
  const foundDeg = all.reduce((sum, { angle }) => sum + degrees(angle), 0);
  return Math.abs(foundDeg - sumDeg) < 1e-6 ? all : null;
}

/** As the study adds them up: what nobody knows is nothing, a range its upper end. */
function degrees(angle: string | null): number {
  if (angle === null || angle === 'unknown') return 0;
  const read = readQuantity(angle, 'angle');
  return read.ok ? read.interval.high : Number.NaN;
}

/** A turn alone, or its angle and its radius. */
function bendOf(item: ChangeValue): TypedBend | null {
  if (typeof item === 'string') return { angle: item, radius: null };
  const { angle = null, radius = null } = item as Readonly<Record<string, ChangeValue>>;
  const texts = [angle, radius].map(plainOf);
  return texts.includes(undefined) ? null : { angle: texts[0]!, radius: texts[1]! };
}

/** A figure that says how it is known is taken for the figure. */
function plainOf(value: ChangeValue | null): string | null | undefined {
  if (value === null || typeof value === 'string') return value;
  return plainOf((value as Readonly<Record<string, ChangeValue>>).is ?? null) ?? undefined;
}

interface Taken {
  readonly value: ChangeValue;
  readonly rest: string;
}

function inBrackets(text: string): ChangeValue | null {
  const taken = take(text);
  return taken === null || taken.rest !== '' ? null : taken.value;
}

/** The value that a text begins with, and what stands behind it; null: it is cut off, or written in another way. */
function take(text: string): Taken | null {
  if (text.startsWith('[')) return takeMany(text.slice(1).trim(), ']', []);
  if (text.startsWith('{')) return takeMany(text.slice(1).trim(), '}', []);
  const found = /^"([^"\\]*)"|^'([^']*)'|^([^,[\]{}#*&"'][^,[\]{}#]*)/.exec(text);
  if (found === null) return null;
  const value = (found[1] ?? found[2] ?? found[3] ?? '').trim();
  return { value, rest: text.slice(found[0].length).trim() };
}

const key = /^["']?(angle|radius|is|known)["']?\s*:\s*/;

function takeMany(text: string, end: ']' | '}', before: readonly (readonly [string, ChangeValue])[]): Taken | null {
  if (text.startsWith(end)) {
    const value = end === ']' ? before.map(([, item]) => item) : Object.fromEntries(before);
    return { value, rest: text.slice(1).trim() };
  }
  const name = end === '}' ? key.exec(text) : null;
  const item = end === '}' && name === null ? null : take(text.slice(name?.[0].length ?? 0));
  if (item === null) return null;
  const isOpen = item.rest.startsWith(',');
  if (!isOpen && !item.rest.startsWith(end)) return null;
  return takeMany(isOpen ? item.rest.slice(1).trim() : item.rest, end, [...before, [name?.[1] ?? '', item.value]]);
}

/** Written below one another, each behind a dash; or one alone. */
function inLines(text: string): ChangeValue | null {
  if (!text.startsWith('- ')) return itemOf(text);
  const items = ` ${text}`
    .split(/\s-\s+/)
    .slice(1)
    .map(itemOf);
  return items.includes(null) ? null : items.map((item) => item!);
}

function itemOf(text: string): ChangeValue | null {
  const found = /^(angle|radius):\s+([^:#]*?)(?:\s+(angle|radius):\s+([^:#]*))?$/.exec(text);
  if (found === null) return inBrackets(text);
  const pairs = [found.slice(1, 3), found.slice(3, 5)].filter(([name]) => name !== undefined);
  const values = pairs.map(([name, value]) => [name!, take(value!)?.value ?? null] as const);
  return values.some(([, value]) => value === null) ? null : (Object.fromEntries(values) as ChangeValue);
}
