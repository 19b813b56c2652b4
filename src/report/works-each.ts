import type { Step, WorkEffect } from '../rework/work.ts';
import type { StudyFinding } from '../study/study.ts';
import { formatQuantity } from '../units/format.ts';
import { workReason } from '../words/work-title.ts';
import { worksPageWords } from '../words/works-page-words.ts';
import { type Block, type Section, subheading } from './block.ts';
import { sayIn } from './page-context.ts';
import { stepsOf, titleOf, type WorksContext } from './works-context.ts';
import { costText, countsText, hasPrices, hoursOfCost, materialText, unpricedOf } from './works-cost.ts';

const words = worksPageWords.works;

/** Each work with what it takes away, alone and in its turn, and what it costs. */
export function worksEachSection(page: WorksContext): Section {
  return { id: 'each', heading: words.heading, blocks: page.plan.steps.flatMap((s, i) => stepBlocks(page, s, i)) };
}

function stepBlocks(page: WorksContext, step: Step, index: number): readonly Block[] {
  const { work, alone, inTurn } = step;
  const reason = workReason(work, page.speech);
  const advice = inTurn.appeared.filter((f) => f.severity === 'advice');
  const items = [
    reason === '' ? stepsOf(page, step).join(' ') : reason,
    ...takesTexts(page, inTurn),
    ...(advice.length === 0 ? [] : [sayIn(page, words.brings, { list: titles(advice) })]),
    sayIn(page, words.alone, { alone: countsText(page, alone.after), inTurn: countsText(page, inTurn.after) }),
    ...earthLine(page, step),
    costLine(page, step),
  ];
  const title = sayIn(page, words.title, { number: index + 1, title: titleOf(page, step) });
  return [subheading(title), { is: 'list', ordered: false, items }];
}

/** What it clears, and apart from that what nobody can tell any more. */
function takesTexts(page: WorksContext, { cleared, unsettled }: WorkEffect): readonly string[] {
  const lines = [
    [words.takes, cleared],
    [words.unsettles, unsettled],
  ] as const;
  const said = lines.flatMap(([template, findings]) => {
    const list = findings
      .filter((f) => f.under === null)
      .map((f) => sayIn(page, words.one, { title: f.title, severity: worksPageWords.severity[f.severity] }));
    return list.length === 0 ? [] : [sayIn(page, template, { list: [...new Set(list)].join('; ') })];
  });
  return said.length === 0 ? [words.takesNothing] : said;
}

function titles(findings: readonly StudyFinding[]): string {
  return [...new Set(findings.map((f) => f.title))].join('; ');
}

/** Only where it is another figure on paper. */
function earthLine(page: WorksContext, { inTurn }: Step): readonly string[] {
  const [before, after] = [inTurn.earthOhm.before, inTurn.earthOhm.after].map((ohm) =>
    formatQuantity(ohm, 'resistance', 'si', { digits: 2 }),
  );
  if (before === after || before == null || after == null) return [];
  return [sayIn(page, words.earth, { before, after })];
}

function costLine(page: WorksContext, { cost }: Step): string {
  const material = materialText(page, cost);
  const hours = hoursOfCost(cost);
  if (cost.price?.high === 0) return sayIn(page, words.free, { hours });
  if (!hasPrices(page)) return sayIn(page, words.takesMaterial, { material, hours });
  if (cost.price === null) return sayIn(page, words.costsNot, { list: unpricedOf(page, cost), material, hours });
  return sayIn(page, words.costs, { price: costText(page, cost), material, hours });
}
