import type { StudyFinding } from '../study/study.ts';
import { pageWords } from '../words/page.ts';
import { type Block, type CheckItem, paragraph, type Section } from './block.ts';
import { type PageContext, partNames, sayIn } from './page-context.ts';

const words = pageWords.lookAt;

/** What could not be told, turned round: each thing to look at once, with all that it decides. */
export function lookAtSection(page: PageContext): Section {
  const open = page.study.findings.filter((f) => f.outcome === 'cannot tell');
  const blocks: readonly Block[] =
    open.length === 0
      ? [paragraph(words.none)]
      : [paragraph(words.intro), { is: 'checklist', items: checkItems(page, open) }];
  return { id: 'look-at', heading: words.heading, blocks };
}

function checkItems(page: PageContext, open: readonly StudyFinding[]): readonly CheckItem[] {
  const byTask = new Map<string, StudyFinding[]>();
  for (const f of open) byTask.set(f.remedy, [...(byTask.get(f.remedy) ?? []), f]);
  return [...byTask].map(([task, findings]) => ({
    text: task === '' ? findings[0]!.because.text : task,
    at: partNames(page, [...new Set(findings.flatMap((f) => f.at))]),
    decides: sayIn(page, words.decides, { titles: [...new Set(findings.map((f) => f.title))].join('; ') }),
  }));
}
