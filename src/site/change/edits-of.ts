import { isMap, isScalar, isSeq } from 'yaml';
import { addEntry, dropEntry, type Edits, indentOf, replaceValue } from './group-edits.ts';
import { afterColon, type Entry, endOf, entryOf, type Group, isBelow, lineBreak, lineEnd } from './layout.ts';
import type { SiteChange } from './site-change.ts';
import { type ChangeValue, type WritingStyle, writeGroup, writeText, writeValue } from './write-value.ts';

/** The text of a file, its outermost group, and how names are written in it. */
export interface Source {
  readonly text: string;
  readonly root: Group;
  readonly style: WritingStyle;
}

/** What stands in the way of a change. */
export type ChangeFault = 'id there' | 'not there' | 'layout' | 'reaches further';

/** Edits that make a change, or why there are none. */
export function editsOf(source: Source, change: SiteChange): Edits | ChangeFault {
  const section = entryOf(source.root, change.section);
  if (change.is === 'add') return addPart(source, section, change);
  const members = section === null ? null : groupIn(section);
  if (change.is === 'remove') return removePart(source, section, change.id);
  if (change.id === null) return setIn(source, section, change);
  const part = members === null ? null : entryOf(members, change.id);
  if (members === null || part === null) return 'not there';
  return setIn(source, part, change);
}

function addPart(source: Source, section: Entry | null, change: SiteChange & { is: 'add' }): Edits | ChangeFault {
  const { text, style } = source;
  const part = `${writeText(change.id, style)}: ${writeGroup(change.fields, style)}`;
  if (section === null) return addSection(source, change.section, part);
  const members = groupIn(section);
  if (members === null) return fillSection(source, section, part);
  if (entryOf(members, change.id) !== null) return 'id there';
  return addEntry(text, members, part);
}

/** A new section with one entry, at the end of the file with a blank line before it. */
function addSection({ text, root, style }: Source, section: string, entry: string): Edits {
  if (root.flow === true) return addEntry(text, root, `${writeText(section, style)}: {${entry}}`);
  const line = lineBreak(text, 0);
  const written = `${section}:${line}${memberIndent(text, root)}${entry}`;
  // Behind a mark that ends the document nothing of it may stand.
  if (/^(?:---|\.\.\.)/m.test(text)) return addEntry(text, root, written);
  const end = text.endsWith('\n') ? '' : line;
  const gap = /\n[ \t]*\r?\n$/.test(text) ? '' : line;
  return [{ start: text.length, end: text.length, text: `${end}${gap}${written}${line}` }];
}

/** The first part of a section that was blank or `none`; the comment on its line stays. */
function fillSection({ text, root }: Source, section: Entry, part: string): Edits {
  if (root.flow === true) return replaceValue(text, section, `{${part}}`);
  const behind = afterColon(section);
  const end = endOf(section, text);
  const at = lineEnd(text, end);
  const line = `${lineBreak(text, at)}${memberIndent(text, root)}${part}`;
  return [
    { start: behind, end, text: '' },
    { start: at, end: at, text: line },
  ];
}

/** The indent of the first part that stands on a line of its own; two spaces where there is none. */
function memberIndent(text: string, root: Group): string {
  for (const section of root.items) {
    const first = groupIn(section)?.items[0];
    const indent = first === undefined || groupIn(section)?.flow === true ? null : indentOf(text, first);
    if (indent !== null) return indent;
  }
  return '  ';
}

function removePart({ text, style }: Source, section: Entry | null, id: string): Edits | ChangeFault {
  const members = section === null ? null : groupIn(section);
  const part = members === null ? null : entryOf(members, id);
  if (section === null || members === null || part === null) return 'not there';
  if (members.items.length > 1) return dropEntry(text, members, part);
  if (members.flow === true) return replaceValue(text, section, writeText('none', style));
  const dropped = dropEntry(text, members, part);
  const at = afterColon(section);
  return dropped === null ? null : [{ start: at, end: at, text: ' none' }, ...dropped];
}

/** Sets or takes out a field of what an entry holds; `entry: null`: the section is not in the file. */
function setIn(
  { text, root, style }: Source,
  entry: Entry | null,
  { section, field, value }: SiteChange & { is: 'set' },
): Edits | ChangeFault {
  if (entry !== null && section === 'places' && isPosition(entry))
    return setBesidePosition(text, entry, field, value, style);
  const fields = entry === null ? null : groupIn(entry);
  const old = fields === null ? null : entryOf(fields, field);
  if (value === null) return fields === null || old === null ? 'not there' : dropEntry(text, fields, old);
  if (old !== null) return replaceValue(text, old, writeValue(value, style));
  const written = `${writeText(field, style)}: ${writeValue(value, style)}`;
  if (fields !== null) return addEntry(text, fields, written);
  return entry === null
    ? addSection({ text, root, style }, section, written)
    : replaceValue(text, entry, `{${written}}`);
}

/** A place that is typed as a position alone keeps it as `at`. */
function setBesidePosition(
  text: string,
  place: Entry,
  field: string,
  value: ChangeValue | null,
  style: WritingStyle,
): Edits | ChangeFault {
  if (field === 'at') return replaceValue(text, place, value === null ? 'unknown' : writeValue(value, style));
  if (value === null) return 'not there';
  const [start = 0] = (place.value as { range?: readonly number[] }).range ?? [];
  const position = text.slice(start, endOf(place, text));
  if (isBelow(place) || /[\r\n]/.test(position)) return null;
  const at = `${writeText('at', style)}: ${position}`;
  return replaceValue(text, place, `{${at}, ${writeText(field, style)}: ${writeValue(value, style)}}`);
}

function isPosition({ value }: Entry): boolean {
  if (isMap(value)) return entryOf(value as Group, 'from') !== null;
  return isSeq(value) || (isScalar(value) && String(value.value ?? '').trim() !== 'unknown' && value.value !== '');
}

function groupIn({ value }: Entry): Group | null {
  return isMap(value) ? (value as Group) : null;
}
