import { nearName } from '../../units/near-name.ts';
import type { Fields, ValuesOf } from '../format/field.ts';
import type { SectionFormat } from '../format/format.ts';
import { jointKind } from '../format/joint-uses.ts';
import { idPattern, reservedIds } from '../format/points.ts';
import { howKnown, isUnknown, readValue, unwrapped } from '../format/read-value.ts';
import { plainWord } from '../format/words.ts';
import type { HowKnown } from '../site.ts';
import { meantName } from './meant-name.ts';
import { ask, below, isFull, placeOf, refuse, type Spot } from './report.ts';
import { type Entry, type MapNode, sayNode, type TreeNode } from './tree.ts';
import type { TypedMember } from './typed-part.ts';
import { typedTexts } from './typed-texts.ts';

export type SectionState = 'listed' | 'none' | 'missing';

/** Reads the members of a section, and whether it was typed, typed as none, or not looked at. */
export function readMembers<F extends Fields>(
  format: SectionFormat,
  node: TreeNode | null,
  spot: Spot,
): { readonly state: SectionState; readonly members: readonly TypedMember<F>[] } {
  if (node === null || isUnknown(node)) return { state: 'missing', members: [] };
  if (node.is === 'text' && node.text.trim() === 'none') return { state: 'none', members: [] };
  if (node.is !== 'map') {
    refuse(spot, node.at, 'not-parts', { found: sayNode(node), section: format.name });
    return { state: 'missing', members: [] };
  }
  const members = node.entries.map((entry) => readMember<F>(format, entry, below(spot, entry.key)));
  return { state: members.length > 0 ? 'listed' : 'missing', members };
}

function readMember<F extends Fields>(format: SectionFormat, entry: Entry, spot: Spot): TypedMember<F> {
  checkId(entry, spot);
  const node = asGroup(format, entry.value, spot);
  const kind = node === null || format.kinds === null ? 'unknown' : readKind(format, node, spot);
  return {
    id: entry.key,
    kind,
    ...readFields<F>(format, node, kind, spot),
    at: entry.keyAt,
    node,
    spot,
    source: placeOf(spot, entry.keyAt),
  };
}

/** A member is a group of fields, or blank; a place may also be a position alone. */
function asGroup(format: SectionFormat, node: TreeNode, spot: Spot): MapNode | null {
  const isPosition = node.is === 'map' && node.entries.some(({ key }) => key === 'from');
  if (format.name === 'places' && !isUnknown(node) && (node.is !== 'map' || isPosition)) {
    return { is: 'map', entries: [{ key: 'at', keyAt: node.at, value: node }], braces: true, at: node.at };
  }
  if (node.is === 'map') return node;
  if (!isUnknown(node))
    refuse(spot, node.at, 'not-a-group', {
      found: sayNode(node),
      keys: [...(format.kinds === null ? [] : ['kind']), ...Object.keys(format.fields).slice(0, 5)].join(', '),
    });
  return null;
}

function checkId({ key, keyAt }: Entry, spot: Spot): void {
  if (!idPattern.test(key)) refuse(spot, keyAt, 'id-letters', { id: key });
  else if (reservedIds.includes(key.toLowerCase()))
    refuse(spot, keyAt, 'id-reserved', { id: key, reserved: reservedIds.join(', ') });
}

/** The kind of a member; 'unknown' where left out or refused. */
function readKind(format: SectionFormat, node: MapNode, spot: Spot): string {
  const entry = node.entries.find(({ key }) => key === 'kind');
  if (entry === undefined || isUnknown(unwrapped(entry.value))) return 'unknown';
  const at = below(spot, 'kind');
  const value = unwrapped(entry.value);
  if (format.kindsAre === 'joint') return jointKind.read(value, at) ?? 'unknown';
  if (value.is !== 'text')
    return refuse(at, value.at, 'not-text', { found: sayNode(value), expects: 'a kind' }) ?? 'unknown';
  const typed = value.text.trim();
  const kinds = Object.keys(format.kinds ?? {});
  const same = kinds.find((kind) => plainWord(kind) === plainWord(typed));
  if (same !== undefined) return same;
  const near = nearName(typed, kinds);
  if (format.kindsAre === 'free') {
    if (near !== null && isSlipOf(typed, near)) ask(at, value.at, 'kind-near', { kind: typed, near });
    return typed;
  }
  refuse(at, value.at, 'kind-unknown', { kind: typed, kinds: kinds.join(', ') }, meantName(typed, kinds));
  return 'unknown';
}

/** Whether each word is near the other's word in its place: a loop is no slip for a foot, whatever stands before it. */
function isSlipOf(typed: string, kind: string): boolean {
  const [a, b] = [typed, kind].map((text) => plainWord(text).split(' '));
  return a!.length !== b!.length || a!.every((word, i) => word === b![i] || nearName(word, [b![i]!]) !== null);
}

/** Reads the fields of a group. */
export function readFields<F extends Fields>(format: SectionFormat, node: MapNode | null, kind: string, spot: Spot) {
  const { fields } = format;
  const values: Record<string, unknown> = Object.fromEntries(Object.keys(fields).map((key) => [key, null]));
  const known: [string, HowKnown][] = [];
  for (const entry of node?.entries ?? []) {
    if (entry.key === 'kind' && format.kinds !== null) continue;
    const found = Object.hasOwn(fields, entry.key) ? fields[entry.key] : undefined;
    if (found === undefined) {
      refuseKey(format, kind, entry, spot);
      continue;
    }
    const inner = below(spot, entry.key);
    const listedKind =
      format.kinds !== null && Object.hasOwn(format.kinds, kind) && kind !== 'other' && kind !== 'unknown';
    if (found.kinds !== null && listedKind && !found.kinds.includes(kind)) {
      refuse(inner, entry.keyAt, 'key-of-other-kind', { key: entry.key, kind, kinds: found.kinds.join(', ') });
      continue;
    }
    const how = howKnown(entry.value, inner);
    if (how !== null) known.push([entry.key, how]);
    values[entry.key] = readValue(found.type, entry.value, inner);
  }
  return { values: values as ValuesOf<F>, fieldKnown: Object.fromEntries(known), ...typedOf(node, spot) };
}

/** What a conductor has and a line has not. */
const lineEnds = ['from', 'to', 'between', 'ends'];

function refuseKey(format: SectionFormat, kind: string, { key, keyAt }: Entry, spot: Spot): void {
  if (isFull(spot)) return;
  const keys = Object.entries(format.fields)
    .filter(([, f]) => f.kinds === null || f.kinds.includes(kind))
    .map(([name]) => name);
  const all = format.kinds === null ? keys : ['kind', ...keys];
  if (format.name === 'lines' && lineEnds.includes(key)) {
    refuse(below(spot, key), keyAt, 'key-line-end', { key });
    return;
  }
  refuse(below(spot, key), keyAt, 'key-unknown', { key, keys: all.join(', ') }, nearName(key, all));
}

/** The text of every field as typed, on one line, and where it stands. */
function typedOf(node: MapNode | null, spot: Spot) {
  const entries = node?.entries ?? [];
  return {
    typed: typedTexts(entries, spot.report.source.text),
    fieldAt: new Map(entries.map(({ key, value }) => [key, unwrapped(value).at])),
  };
}
