import type { StudyFinding } from '../study/study.ts';
import { statementWords } from '../words/statement-words.ts';
import { type PageContext, sayIn } from './page-context.ts';

const words = statementWords.open;

/** Findings of one condition as one entry: the first by its title, the others by what they are about. */
export function alikeEntries(page: PageContext, findings: readonly StudyFinding[]): readonly string[] {
  const byRule = new Map<string, StudyFinding[]>();
  for (const f of findings) {
    const key = `${f.severity} ${f.rule}`;
    byRule.set(key, [...(byRule.get(key) ?? []), f]);
  }
  return [...byRule.values()].map((same) => entryOf(page, same));
}

function entryOf(page: PageContext, same: readonly StudyFinding[]): string {
  const [first, ...others] = same;
  const title = sayIn(page, words.entry, { title: first!.title.trim(), severity: words.severities[first!.severity] });
  if (others.length === 0) return title;
  const list = others.map((f) => f.at.join(' + ')).join(', ');
  return sayIn(page, words.alike, { title, n: String(others.length), list });
}

/** As many entries as there is room for, and how many more there are: none goes unsaid. */
export function someEntries(page: PageContext, entries: readonly string[], most: number): string {
  const list = entries.slice(0, most).join('; ');
  const more = entries.length - most;
  return more <= 0 ? list : sayIn(page, words.more, { list, n: String(more) });
}

/** As a check counts them: what is folded under another finding is not counted again. */
export function standing(findings: readonly StudyFinding[], outcome: StudyFinding['outcome']): readonly StudyFinding[] {
  return findings.filter((f) => f.outcome === outcome && f.under === null && f.agreed === null);
}
