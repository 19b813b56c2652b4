import { speechOf } from '../drawing/speech.ts';
import { whyKey } from '../report/why-key.ts';
import { orderText } from '../report/works-order.ts';
import { addCosts } from '../rework/cost/cost-of.ts';
import { addMaterials } from '../rework/cost/counts-of.ts';
import { remainingOf } from '../rework/plan/remaining-of.ts';
import type { Material, Remaining, Step, Work, WorkCost, WorkEffect, WorksPlan } from '../rework/work.ts';
import type { StudyFinding } from '../study/study.ts';
import { hoursText } from '../units/hours-text.ts';
import type { Interval } from '../units/interval.ts';
import { moneyText } from '../units/money-text.ts';
import { kindWords } from '../words/kind-words.ts';
import { say, type Values } from '../words/say.ts';
import { workTitle } from '../words/work-title.ts';
import { worksCommandWords as words } from '../words/works-command-words.ts';
import { severityMarks } from './severity-marks.ts';
import { plain, type Terminal, wrap } from './terminal.ts';
import { noWorkFor } from './works-json.ts';

export interface WorksAsk {
  readonly file: string;
  readonly output?: string;
  readonly written: boolean;
  readonly budget?: string;
  readonly hours?: string;
}

type Sentence = (template: string, values?: Values) => string;

/** The terminal's page of works: each with cost, effect and what remains; material; what was left out; verdict, next command. */
export function sayWorks(plan: WorksPlan, ask: WorksAsk, terminal: Terminal): string {
  const { before, steps } = plan;
  const speech = speechOf(before);
  const sentence: Sentence = (template, values = {}) => plain(say(template, values, speech));
  const page = { plan, ask, terminal, sentence, paragraph: paragraphs(terminal) };
  const blocks = [
    head(page),
    ...(plan.stopped ? [page.paragraph(words.stopped)] : []),
    ...(steps.length === 0 ? [page.paragraph(sentence(words.none, { file: ask.file }))] : stepBlocks(page)),
    leftOutBlock(page),
    unansweredBlock(page),
    terminal.paint(page.paragraph(sentence(words.caution)), 'dim'),
    closing(page),
  ];
  return `${blocks.filter((b) => b !== '').join('\n\n')}\n`;
}

interface Page {
  readonly plan: WorksPlan;
  readonly ask: WorksAsk;
  readonly terminal: Terminal;
  readonly sentence: Sentence;
  readonly paragraph: (text: string, indent?: number, hang?: number) => string;
}

function paragraphs({ width }: Terminal): Page['paragraph'] {
  return (text, indent = 0, hang = 0) => wrap(text, width, indent, hang);
}

function head({ plan, terminal, sentence, paragraph }: Page): string {
  const { before, steps } = plan;
  const state = before.state.id === 'as typed' ? '' : sentence(words.inState, { state: before.state.id });
  const title = sentence(words.title, { site: (before.site.name ?? words.unnamed) + state });
  const counts = countsText(remainingOf(before.findings), sentence);
  return [
    terminal.paint(paragraph(title), 'bold'),
    paragraph(sentence(words.now, { counts })),
    ...(steps.length === 0 ? [] : [paragraph(plain(orderText(plan, speechOf(before))))]),
  ].join('\n');
}

function stepBlocks(page: Page): readonly string[] {
  const { plan, terminal, sentence, paragraph } = page;
  const total = sentence(words.total, { cost: costText(addCosts(plan.steps.map((s) => s.cost)), page) });
  return [
    ...plan.steps.map((step, i) => stepBlock(step, i + 1, page)),
    terminal.paint(paragraph(total), 'bold'),
    materialBlock(page),
  ];
}

function stepBlock({ work, cost, inTurn }: Step, number: number, page: Page): string {
  const { terminal, sentence, paragraph } = page;
  const line = (text: string) => paragraph(text, 4, 2);
  const counts = countsText(inTurn.after, sentence);
  const advice = inTurn.appeared.filter((f) => f.severity === 'advice');
  return [
    terminal.paint(paragraph(`${number}. ${titleOf(work, page)}`, 0, 3), 'bold'),
    ...(work.needs.length === 0 ? [] : [line(sentence(words.work.needs, { list: needsOf(work, page) }))]),
    ...takesTexts(inTurn, sentence).map(line),
    ...(advice.length === 0 ? [] : [line(sentence(words.work.brings, { list: titles(advice) }))]),
    ...earthLine(inTurn.earthOhm, sentence).map(line),
    line(costText(cost, page)),
    line(sentence(words.work.remains, { counts })),
  ].join('\n');
}

/** What has to be done before it, as the list calls it; what is not in the list by its id. */
function needsOf({ needs }: Work, page: Page): readonly string[] {
  const byId = new Map(page.plan.steps.map((s) => [s.work.id, s.work]));
  return needs.map((id) => (byId.has(id) ? titleOf(byId.get(id)!, page) : id));
}

/** What it is called. */
function titleOf(work: Work, { plan }: Pick<Page, 'plan'>): string {
  return plain(workTitle(work, speechOf(plan.before)));
}

/** What it clears, and apart from that what nobody can tell any more. */
function takesTexts({ cleared, unsettled }: WorkEffect, sentence: Sentence): readonly string[] {
  if (cleared.length + unsettled.length === 0) return [words.work.takesNothing];
  return [
    ...(cleared.length === 0 ? [] : [sentence(words.work.takes, { list: titles(cleared) })]),
    ...(unsettled.length === 0 ? [] : [sentence(words.work.unsettles, { list: titles(unsettled) })]),
  ];
}

/** Each title once, as the findings are ordered. */
function titles(findings: readonly StudyFinding[]): readonly string[] {
  return [...new Set(findings.map((f) => f.title))];
}

/** Only where it changed by more than a hundredth. */
function earthLine({ before, after }: { before: number | null; after: number | null }, sentence: Sentence) {
  if (before === null && after === null) return [];
  if (before !== null && after !== null && Math.abs(before - after) < 0.01 * before) return [];
  return [sentence(words.work.earth, { before: ohm(before, sentence), after: ohm(after, sentence) })];
}

/** What hangs on a length or a joint that nobody knows has no one figure. */
function ohm(resistanceOhm: number | null, sentence: Sentence): string {
  if (resistanceOhm === null) return words.work.onlyRange;
  return sentence('{resistanceOhm}', { resistanceOhm });
}

/** Price, material and hours in one sentence. */
function costText(cost: WorkCost, { plan, sentence }: Page): string {
  const prices = plan.before.prices ?? null;
  const material = materialText(cost, sentence);
  const hours = hoursText(cost.hours);
  if (prices === null || prices.lines.length === 0) return sentence(words.work.costsPlain, { material, hours });
  if (cost.price === null) {
    const list = cost.unpriced.map((name) => materialName(name, sentence));
    return sentence(words.work.costsNot, { list, material, hours });
  }
  return sentence(words.work.costs, { price: moneyText(cost.price, prices.currency)!, material, hours });
}

function materialText({ conductorM, rods, joints }: WorkCost, sentence: Sentence): string {
  const length = conductorM.high > 0 ? [lengthText(conductorM, sentence)] : [];
  const count = (n: number, one: string, more: string) =>
    n === 0 ? [] : [sentence(n === 1 ? one : more, { count: String(n) })];
  const all = [
    ...length,
    ...count(rods, words.work.rod, words.work.rods),
    ...count(joints, words.work.joint, words.work.joints),
  ];
  return all.length === 0 ? words.work.nothing : all.join(', ');
}

function lengthText(lengthM: Interval, sentence: Sentence): string {
  const isUnknown = lengthM.low === 0 && !Number.isFinite(lengthM.high);
  return isUnknown ? words.work.unknownLength : sentence('{lengthM}', { lengthM });
}

/** What has to be bought for all steps, by name. */
function materialBlock({ plan, terminal, sentence, paragraph }: Page): string {
  const materials = addMaterials(plan.steps.map((s) => s.work));
  if (materials.length === 0) return '';
  const pieces = materials.filter((m) => m.unit === 'each');
  const lengths = materials.filter((m) => m.unit === 'm');
  const lines = [...pieces, ...lengths].map((m) =>
    paragraph(sentence(words.material, { name: materialName(m.name, sentence), count: countText(m, sentence) }), 2, 2),
  );
  return [terminal.paint(words.materials, 'bold'), ...lines].join('\n');
}

/** In the words of the region, as the pages have it. */
function materialName(name: string, sentence: Sentence): string {
  return Object.hasOwn(kindWords, name) ? sentence(kindWords[name]!) : plain(name);
}

function countText({ unit, count }: Material, sentence: Sentence): string {
  if (unit === 'm') return lengthText(count, sentence);
  return count.low === count.high ? String(count.low) : `${count.low} to ${count.high}`;
}

function leftOutBlock(page: Page): string {
  const { plan, ask, terminal, sentence, paragraph } = page;
  if (plan.leftOut.length === 0) return '';
  const lines = plan.leftOut.map((l) => {
    const list = l.brings.length > 0 ? l.brings.map((f) => f.title) : l.because;
    const why = sentence(words.why[whyKey(l)], { list, budget: ask.budget ?? '', hours: ask.hours ?? '' });
    return paragraph(`- ${titleOf(l.work, page)}: ${why}`, 2, 2);
  });
  return [terminal.paint(words.leftOut, 'bold'), ...lines].join('\n');
}

/** What still stands when all is done. */
function unansweredBlock({ plan, terminal, paragraph }: Page): string {
  const left = noWorkFor(plan.after);
  if (left.length === 0) return '';
  const lines = left.map((f) => paragraph(plain(`- ${severityMarks[f.severity]} ${f.title}: ${f.remedy}`), 2, 2));
  return [terminal.paint(words.unanswered, 'bold'), ...lines].join('\n');
}

function closing({ plan, ask, sentence, paragraph }: Page): string {
  const { file, output, written } = ask;
  const counts = countsText(remainingOf(plan.after.findings), sentence);
  const isNothing = plan.steps.length === 0;
  const verdict = sentence(isNothing ? words.verdictNone : words.verdict, { counts });
  const said = output === undefined ? [] : [sentence(written ? words.written : words.notWritten, { output })];
  const next = isNothing ? words.nextCheck : output === undefined || !written ? words.next : words.nextCompare;
  return [...said.map((s) => paragraph(s)), `${verdict} ${sentence(next, { file, output: output ?? '' })}`].join('\n');
}

function countsText({ hazards, defects, advices, cannotTell }: Remaining, sentence: Sentence): string {
  return sentence(words.counts, {
    hazards: String(hazards),
    defects: String(defects),
    advices: String(advices),
    cannotTell: String(cannotTell),
  });
}
