import { type Document, isMap, isScalar, parseDocument, Scalar } from 'yaml';
import { type ChangeFault, editsOf } from './change/edits-of.ts';
import { afterChange, type Said, saidOf, saysSame } from './change/expected.ts';
import { applyEdits, type Edit, entryOf, type Group, startOf } from './change/layout.ts';
import type { SiteChange } from './change/site-change.ts';
import type { WritingStyle } from './change/write-value.ts';
import type { Problem } from './problem.ts';
import { readSite } from './read-site.ts';
import { yamlOptions } from './reading/read-yaml.ts';
import { newReport, refuse } from './reading/report.ts';
import { sourceText } from './reading/source-text.ts';
import type { Site } from './site.ts';

export type { SiteChange } from './change/site-change.ts';
export type { ChangeValue } from './change/write-value.ts';

export type ChangedText = { readonly text: string } | { readonly problem: Problem };

/** A text with changes made, and the site that is read from it. */
export type ChangedSite = { readonly text: string; readonly site: Site } | { readonly problem: Problem };

/** As `changeSite`, the text alone. */
export function changeText(text: string, changes: readonly SiteChange[]): ChangedText {
  const changed = changeSite(text, '', changes);
  return 'problem' in changed ? changed : { text: changed.text };
}

/**
 * Makes changes to a site by editing its source text, one after the other: only the lines that a change is about differ;
 * comments, order, blank lines and line ends of all others stay as they are. The new text says what the old one said with
 * exactly these changes, and can be read; else the problem says why not, at a place of the text as far as it was changed.
 * Comments on the line of what is taken out go with it; those above it stay. Never throws.
 */
export function changeSite(text: string, fileName: string, changes: readonly SiteChange[]): ChangedSite {
  return newChanger(fileName)(text, changes);
}

/** Changes texts one after another, as `changeSite`; a text that it read or wrote lately is not taken apart again. */
export type Changer = (text: string, changes: readonly SiteChange[]) => ChangedSite;

/** As many texts are kept: the one that everything is tried on, and a few of those that grow from it. */
const keptTexts = 4;

/** `known`: a text that a site was read from already. */
export function newChanger(fileName: string, known: KnownSite | null = null): Changer {
  const kept = new Map<string, Readable>();
  const keep = (read: Readable): Readable => {
    kept.set(read.now.text, read);
    const [first, second] = kept.keys();
    // the first text of all stays: most is tried on it
    if (kept.size > keptTexts) kept.delete(first === read.now.text ? first : second!);
    return read;
  };
  return (text, changes) => {
    const begun = kept.get(text) ?? begin(text, fileName, known);
    if ('problem' in begun) return begun;
    if (!kept.has(text)) keep(begun);
    const changed = atOnce(begun.now, changes) ?? oneByOne(begun.now, changes);
    if ('problem' in changed) return changed;
    const read = readable(changed, fileName);
    return 'problem' in read ? read : { text: keep(read).now.text, site: read.site };
  };
}

/** A text, and the site that was read from it. */
export interface KnownSite {
  readonly text: string;
  readonly site: Site;
}

interface Readable {
  readonly now: Parsed;
  readonly site: Site;
}

function begin(text: string, fileName: string, known: KnownSite | null): ReturnType<typeof readable> {
  return known?.text === text ? { now: parsed(text), site: known.site } : readable(parsed(text), fileName);
}

function readable(now: Parsed, fileName: string): Readable | { readonly problem: Problem } {
  const { site, problems } = readSite(now.text, fileName, now.document);
  return site === null ? { problem: problems[0]! } : { now, site };
}

/** All changes in one go, where none stands on another; null where that does not come out as one by one does. */
function atOnce(before: Parsed, changes: readonly SiteChange[]): Parsed | null {
  if (changes.length < 2 || before.root === null || changes.some((c) => c.is === 'remove' || c.id === null))
    return null;
  const added = new Set(changes.filter((c) => c.is === 'add').map(({ section, id }) => `${section} ${id}`));
  if (changes.some((c) => c.is === 'set' && added.has(`${c.section} ${c.id}`))) return null;
  const source = { text: before.text, root: before.root, style: styleOf(before.root) };
  const edits: Edit[] = [];
  // backwards: what is put in at one place stands in the order of the changes
  for (const change of [...changes].reverse()) {
    const own = editsOf(source, change);
    if (own === null || typeof own === 'string') return null;
    edits.push(...own);
  }
  const after = parsed(applyEdits(before.text, edits));
  return saysSame(after.says, changes.reduce(afterChange, before.says)) ? after : null;
}

function oneByOne(before: Parsed, changes: readonly SiteChange[]): Parsed | { readonly problem: Problem } {
  let now = before;
  for (const change of changes) {
    const expected = afterChange(now.says, change);
    const next = changeOnce(now, change);
    if ('problem' in next) return next;
    if (!saysSame(next.says, expected)) return { problem: problemOf(now, change, 'reaches further') };
    now = next;
  }
  return now;
}

/** A text, and what was read from it. */
interface Parsed {
  readonly text: string;
  readonly document: Document.Parsed;
  readonly root: Group | null;
  readonly says: Said;
}

function parsed(text: string): Parsed {
  const document = parseDocument(text, { ...yamlOptions, keepSourceTokens: true });
  const root = isMap(document.contents) ? (document.contents as Group) : null;
  return { text, document, root, says: whatIsSaid(document) };
}

/** Nothing where a repeat with `*` has lost what it repeats. */
function whatIsSaid(document: Document.Parsed): Said {
  try {
    return saidOf(document.toJS({ mapAsMap: true, maxAliasCount: -1 }));
  } catch {
    return null;
  }
}

function changeOnce(now: Parsed, change: SiteChange): Parsed | { readonly problem: Problem } {
  const { text, root } = now;
  const edits = root === null ? null : editsOf({ text, root, style: styleOf(root) }, change);
  if (edits === null) return { problem: problemOf(now, change, 'layout') };
  return typeof edits === 'string' ? { problem: problemOf(now, change, edits) } : parsed(applyEdits(text, edits));
}

/** JSON where the outermost braces hold names in double quotes. */
function styleOf(root: Group): WritingStyle {
  const key = root.items[0]?.key;
  return root.flow === true && isScalar(key) && key.type === Scalar.QUOTE_DOUBLE ? 'json' : 'yaml';
}

/** Why a change cannot be made → key of the words for it. */
const keys: Readonly<Record<ChangeFault, string>> = {
  'id there': 'change-id-there',
  'not there': 'change-not-there',
  layout: 'change-layout',
  'reaches further': 'change-reaches-further',
};

/** The problem, at the section that the change is about, else at the start of the file. */
function problemOf({ text, root }: Parsed, change: SiteChange, fault: ChangeFault): Problem {
  const report = newReport(sourceText(text));
  const steps = [change.section, change.id, change.is === 'set' ? change.field : null];
  const path = steps.filter((step) => step !== null).join('.');
  const section = root === null ? null : entryOf(root, change.section);
  const at = section === null ? 0 : startOf(section);
  refuse({ path, report }, { start: at, end: at }, keys[fault], { id: change.id ?? change.section });
  return report.problems[0]!;
}
