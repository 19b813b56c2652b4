import { addCosts } from '../rework/cost/cost-of.ts';
import { remainingOf } from '../rework/plan/remaining-of.ts';
import type { Step, Work } from '../rework/work.ts';
import { moneyText } from '../units/money-text.ts';
import { worksPageWords } from '../words/works-page-words.ts';
import { type Block, cell, listCell, paragraph, type Row, row, type Section, subheading, tableIfAny } from './block.ts';
import { sayIn } from './page-context.ts';
import { titleOf, type WorksContext } from './works-context.ts';
import {
  costText,
  countsText,
  currencyOf,
  hasPrices,
  hoursOfCost,
  labourNote,
  materialText,
  totalText,
} from './works-cost.ts';

const words = worksPageWords.list;

/** The works in order, on one table. */
export function worksListSection(page: WorksContext): Section {
  const notes: readonly Block[] = [
    paragraph(sayIn(page, words.shortMeans)),
    ...labourNote(page).map(paragraph),
    ...limitNote(page).map(paragraph),
  ];
  const table = tableIfAny({
    id: 'works-table',
    caption: words.caption,
    head: headOf(),
    rows: rowsOf(page),
    look: 'wide',
  });
  const blocks = [...table, ...notes];
  return { id: 'list', heading: words.heading, blocks };
}

/** The answer first: how it stands, how it would stand, what all of it costs, and where to begin. */
export function worksSummarySection(page: WorksContext): Section {
  const { before, after, steps, stopped } = page.plan;
  const { heading, all, allMaterial, first, step } = worksPageWords.summary;
  const now = sayIn(page, words.now, { now: countsText(page, remainingOf(before.findings)) });
  const notes = stopped ? [paragraph(words.stopped)] : [];
  if (steps.length === 0) return { id: 'summary', heading, blocks: [paragraph(`${now} ${words.none}`), ...notes] };
  const then = sayIn(page, words.after, { after: countsText(page, remainingOf(after.findings)) });
  const total = addCosts(steps.map((s) => s.cost));
  const values = {
    cost: totalText(page, worksOf(page), total),
    material: materialText(page, total),
    hours: hoursOfCost(total),
  };
  const allOf = sayIn(page, hasPrices(page) ? all : allMaterial, values);
  const items = steps
    .slice(0, 3)
    .map((s) => sayIn(page, step, { title: titleOf(page, s), cost: costText(page, s.cost) }));
  return {
    id: 'summary',
    heading,
    blocks: [
      paragraph(`${now} ${then}`),
      ...notes,
      paragraph(allOf),
      subheading(first),
      { is: 'list', ordered: true, items },
    ],
  };
}

function worksOf({ plan }: WorksContext): readonly Work[] {
  return plan.steps.map((s) => s.work);
}

function headOf(): readonly string[] {
  return [words.number, words.work, words.takes, words.cost, words.hours, words.remains];
}

function rowsOf(page: WorksContext): readonly Row[] {
  const { steps } = page.plan;
  if (steps.length === 0) return [];
  const total = addCosts(steps.map((s) => s.cost));
  const last = steps.at(-1)!.inTurn.after;
  return [
    ...steps.map((s, i) => stepRow(page, s, i)),
    row(
      cell(words.all),
      cell(''),
      cell(''),
      cell(totalText(page, worksOf(page), total)),
      cell(hoursOfCost(total)),
      cell(countsText(page, last, true)),
    ),
  ];
}

function stepRow(page: WorksContext, step: Step, index: number): Row {
  const { steps } = page.plan;
  const needs = step.work.needs.flatMap((id) => steps.flatMap((s, i) => (s.work.id === id ? [String(i + 1)] : [])));
  const needed = needs.length === 0 ? null : sayIn(page, words.needs, { list: needs });
  return row(
    cell(String(index + 1)),
    cell(titleOf(page, step), needed),
    listCell(takesText(page, step)),
    cell(costText(page, step.cost)),
    cell(hoursOfCost(step.cost)),
    cell(countsText(page, step.inTurn.after, true)),
  );
}

/** How many of each severity, and how many nobody can tell any more; which ones stands further down. */
function takesText(page: WorksContext, { inTurn }: Step): readonly string[] {
  const [cleared, unsettled] = [inTurn.cleared, inTurn.unsettled].map((of) => of.filter((f) => f.under === null));
  const taken = (['hazard', 'defect', 'advice'] as const).flatMap((severity) => {
    const n = cleared!.filter((f) => f.severity === severity).length;
    return n === 0 ? [] : [sayIn(page, words.takesCount[severity], { n })];
  });
  const n = unsettled!.length;
  const lines = n === 0 ? taken : [...taken, sayIn(page, words.unsettles, { n })];
  return lines.length === 0 ? [sayIn(page, words.nothing)] : lines;
}

function limitNote(page: WorksContext): readonly string[] {
  const { budget, hours } = page.plan.limits;
  const limits = [
    ...(budget === null ? [] : [moneyText({ low: budget, high: budget }, currencyOf(page))!]),
    ...(hours === null ? [] : [sayIn(page, words.hoursLimit, { hours })]),
  ];
  return limits.length === 0 ? [] : [sayIn(page, words.limits, { limits: limits.join(', ') })];
}
