import { type Document, isMap, isScalar, parseDocument, Scalar } from 'yaml';
import { type ChangeFault, editsOf } from './change/edits-of.ts';
import { afterChange, type Said, saidOf, saysSame } from './change/expected.ts';
import { applyEdits, entryOf, type Group, startOf } from './change/layout.ts';
import type { SiteChange } from './change/site-change.ts';
import type { WritingStyle } from './change/write-value.ts';
import type { Problem } from './problem.ts';
import { readSite } from './read-site.ts';
import { yamlOptions } from './reading/read-yaml.ts';
import { newReport, refuse } from './reading/report.ts';
import { sourceText } from './reading/source-text.ts';

export type { SiteChange } from './change/site-change.ts';
export type { ChangeValue } from './change/write-value.ts';

export type ChangedText = { readonly text: string } | { readonly problem: Problem };

/**
 * Makes changes to a site by editing its source text, one after the other: only the lines that a change is about differ;
 * comments, order, blank lines and line ends of all others stay as they are. The new text says what the old one said with
 * exactly these changes, and can be read; else the problem says why not, at a place of the text as far as it was changed.
 * Comments on the line of what is taken out go with it; those above it stay. Never throws.
 */
export function changeText(text: string, changes: readonly SiteChange[]): ChangedText {
  const [already] = readSite(text, '').problems;
  if (already !== undefined) return { problem: already };
  let now = parsed(text);
  for (const change of changes) {
    const expected = afterChange(now.says, change);
    const next = changeOnce(now, change);
    if ('problem' in next) return next;
    if (!saysSame(next.says, expected)) return { problem: problemOf(now, change, 'reaches further') };
    now = next;
  }
  const [problem] = readSite(now.text, '').problems;
  return problem === undefined ? { text: now.text } : { problem };
}

/** A text, and what was read from it. */
interface Parsed {
  readonly text: string;
  readonly root: Group | null;
  readonly says: Said;
}

function parsed(text: string): Parsed {
  const document = parseDocument(text, { ...yamlOptions, keepSourceTokens: true });
  const root = isMap(document.contents) ? (document.contents as Group) : null;
  return { text, root, says: whatIsSaid(document) };
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
