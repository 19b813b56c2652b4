import type { Comparison } from '../compare/comparison.ts';
import type { Study } from '../study/study.ts';
import { type LeaveOut, statementWords } from '../words/statement-words.ts';

export interface StatementInput {
  readonly before: Study;
  readonly after: Study;
  readonly comparison: Comparison;
}

const shortest = 3;
/** Keys whose texts are words of the study itself, which a person may be called like: they are never the owner's own. */
const studyWords = new Set([
  'section',
  'present',
  'known',
  'severity',
  'outcome',
  'family',
  'rule',
  'aim',
  'which',
  'why',
]);

/**
 * Both studies and their comparison without what the owner keeps back: the fields are blank, and wherever the same text
 * stands again (in a sentence, a name, a note) it is struck out. A text of one or two letters is blanked in its field only.
 */
export function redacted(input: StatementInput, leaveOut: ReadonlySet<LeaveOut>): StatementInput {
  const texts = [input.before, input.after].flatMap((s) => keptBack(s, leaveOut)).filter((t) => t.length >= shortest);
  const blank = {
    before: withoutFields(input.before, leaveOut),
    after: withoutFields(input.after, leaveOut),
    comparison: input.comparison,
  };
  const sorted = [...new Set(texts)].sort((a, b) => b.length - a.length || (a < b ? -1 : 1));
  if (sorted.length === 0) return blank;
  // as they are stored: a study may work out its texts only when they are read
  const stored = JSON.parse(JSON.stringify(blank)) as StatementInput;
  return struck(stored, new RegExp(sorted.map(whole).join('|'), 'gu'));
}

function keptBack(study: Study, leaveOut: ReadonlySet<LeaveOut>): readonly string[] {
  const { site } = study;
  const people = [site.owner, site.prepared.by, site.prepared.for, ...study.parts.map((p) => p.owner)];
  const agreed = [...study.findings.map((f) => f.agreed?.by), ...(study.agreements ?? []).map((a) => a.by)];
  const texts = [
    ...(leaveOut.has('address') ? [site.address] : []),
    ...(leaveOut.has('names') ? [...people, ...agreed] : []),
    ...(leaveOut.has('site') ? [site.name, site.file] : []),
    ...(leaveOut.has('permit') ? [site.permit] : []),
  ];
  return texts.filter((t): t is string => typeof t === 'string' && t.trim() !== '');
}

function withoutFields(study: Study, leaveOut: ReadonlySet<LeaveOut>): Study {
  const { site } = study;
  const keep = <T>(kind: LeaveOut, value: T): T | null => (leaveOut.has(kind) ? null : value);
  const { prepared } = site;
  return {
    ...study,
    prices: keep('prices', study.prices ?? null),
    site: {
      ...site,
      name: keep('site', site.name),
      file: leaveOut.has('site') ? statementWords.leftOutValue : site.file,
      address: keep('address', site.address),
      owner: keep('names', site.owner),
      permit: keep('permit', site.permit),
      prepared: { ...prepared, by: keep('names', prepared.by), for: keep('names', prepared.for) },
    },
  };
}

function struck<T>(value: T, pattern: RegExp): T {
  if (typeof value === 'string') return value.replace(pattern, statementWords.leftOutValue) as T;
  if (Array.isArray(value)) return value.map((inner) => struck(inner, pattern)) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [key, studyWords.has(key) ? inner : struck(inner, pattern)]),
  ) as T;
}

/** Not in the midst of a longer word. */
function whole(text: string): string {
  const escaped = text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return `(?<![\\p{L}\\p{N}])${escaped}(?![\\p{L}\\p{N}])`;
}
