import type { LeftOut } from '../rework/work.ts';
import { moneyText } from '../units/money-text.ts';
import { workTitle } from '../words/work-title.ts';
import { worksCommandWords } from '../words/works-command-words.ts';
import { worksPageWords } from '../words/works-page-words.ts';
import { cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import { sayIn } from './page-context.ts';
import { whyKey } from './why-key.ts';
import type { WorksContext } from './works-context.ts';
import { currencyOf } from './works-cost.ts';

/** Findings that still stand with all works done, with what would put each right. */
export function worksRemainSection(page: WorksContext): Section {
  const words = worksPageWords.remain;
  const standing = page.plan.after.findings.filter((f) => f.under === null && f.agreed === null);
  const rows = standing
    .filter((f) => f.outcome === 'not met')
    .map((f) => row(cell(worksPageWords.severity[f.severity]), cell(f.title), cell(f.remedy)));
  const doubts = new Set(standing.filter((f) => f.outcome === 'cannot tell').map((f) => `${f.rule}:${f.at.join('+')}`));
  const head = [words.severity, words.finding, words.remedy];
  const blocks = [
    paragraph(rows.length === 0 ? words.none : sayIn(page, words.intro)),
    ...tableIfAny({ id: 'remain-table', caption: words.caption, head, rows }),
    ...(doubts.size === 0 ? [] : [paragraph(sayIn(page, words.cannotTell, { n: doubts.size }))]),
  ];
  return { id: 'remain', heading: words.heading, blocks };
}

/** Works that are not in the list, each with its reason. */
export function worksLeftSection(page: WorksContext): Section {
  const words = worksPageWords.left;
  const rows = page.plan.leftOut.map((l) => {
    const title = workTitle(l.work, page.speech);
    return row(cell(title), cell(whyText(page, l)));
  });
  const table = tableIfAny({ id: 'left-table', caption: words.caption, head: [words.work, words.why], rows });
  return { id: 'left', heading: words.heading, blocks: rows.length === 0 ? [paragraph(words.none)] : table };
}

function whyText(page: WorksContext, { why, brings, because }: LeftOut): string {
  const words = worksCommandWords.why;
  const { budget, hours } = page.plan.limits;
  const money = budget === null ? '' : moneyText({ low: budget, high: budget }, currencyOf(page))!;
  const list = brings.length > 0 ? brings.map((f) => f.title) : because;
  return sayIn(page, words[whyKey({ why, brings, because })], { list, budget: money, hours: String(hours ?? '') });
}
