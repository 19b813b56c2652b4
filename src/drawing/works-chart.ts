import { middleOf, moneyOf, weights } from '../rework/plan/burden-of.ts';
import type { Remaining, WorksPlan } from '../rework/work.ts';
import { moneyText } from '../units/money-text.ts';
import { type Speech, say } from '../words/say.ts';
import { worksPageWords } from '../words/works-page-words.ts';
import { drawAxes, linearScale, type Scale } from './chart-axes.ts';
import { type CurveLook, curveLook, drawEndLabels, drawMarker, strokeOfCurve } from './chart-curves.ts';
import { chartLength } from './chart-length.ts';
import type { Rect } from './rect.ts';
import { speechOf } from './speech.ts';
import { drawing, line, type Point, polyline, type Svg, text } from './svg.ts';
import { ink, soft } from './symbols.ts';
import { textWidth } from './text-width.ts';

const words = worksPageWords.chart;
const widthMm = 180;
const namesMm = 24;
const plot: Rect = { x: 12, y: 13, width: widthMm - 12 - namesMm, height: 52 };
const size = 2.7;
/** Curves that lie on one another are drawn so far apart, mm. */
const besideMm = 0.25;

const kinds = ['hazards', 'defects', 'advices'] as const;

/** What has been spent after each step: what the axis is, and a figure for each. */
interface Spent {
  readonly title: string;
  readonly against: string;
  /** Before the first step: 0. */
  readonly at: readonly number[];
  readonly says: readonly string[];
}

/**
 * How many hazards, defects and pieces of advice remain against the money of the works so far, in the order of the plan, as
 * SVG text; against their material where a work has no price. Curves are told apart by dash and marker and named at their
 * ends, works by their number above the plot.
 */
export function worksChart(plan: WorksPlan): string {
  const speech = speechOf(plan.before);
  const spent = spentOf(plan, speech);
  const remaining = remainingOf(plan);
  const x = linearScale([0, Math.max(...spent.at)], [plot.x, plot.x + plot.width], 8);
  const most = Math.max(1, ...remaining.flatMap((r) => kinds.map((k) => r[k])));
  const y = linearScale([0, most], [plot.y + plot.height, plot.y], Math.min(7, most));
  const curves = kinds.map((kind, i) => stairs(kind, i, { spent, remaining, x, y }));
  const sheet = {
    widthMm,
    heightMm: plot.y + plot.height + 15,
    title: say(words.title, { site: plan.before.site.name ?? plan.before.site.file }, speech),
    description: say(words.description, { against: spent.against, list: listOf(spent, remaining, speech) }, speech),
  };
  const labels = curves.map(({ says, look, corners }) => ({ says, look, at: corners.at(-1)! }));
  return drawing(sheet, [
    ...drawAxes(plot, x, y, { x: spent.title, y: '' }),
    text(words.remaining, { x: 0, y: 4, 'font-size': size, fill: ink }),
    ...stepNumbers(spent.at.slice(1).map(x.at)),
    ...curves.flatMap(({ corners, marks, look }) => [
      polyline(corners, strokeOfCurve(look, 0.55)),
      ...marks.map((m) => drawMarker(m, look)),
    ]),
    ...drawEndLabels(labels, plot.x + plot.width, namesMm, [plot.y + 2, plot.y + plot.height - 1]),
    text(words.number, { x: plot.x, y: plot.y + plot.height + 13, 'font-size': 2.4, fill: soft }),
  ]);
}

/** Money where every step has a price, else material as the order weighs it. */
function spentOf({ steps, before, weighedBy }: WorksPlan, speech: Speech): Spent {
  const currency = before.prices?.currency ?? null;
  if (weighedBy === 'price' && steps.every((s) => s.cost.price !== null)) {
    const at = running(steps.map((s) => middleOf(s.cost.price!)));
    const title = say(words.price, { currency: currency === null ? '' : `, ${currency}` }, speech);
    return { title, against: words.byPrice, at, says: at.map((m) => moneyText({ low: m, high: m }, currency)!) };
  }
  const unit = chartLength(speech);
  const [rod, joint] = [weights.rodM, weights.jointM].map((m) => `${Math.round(unit.of(m))} ${unit.name}`);
  const at = running(steps.map((s) => unit.of(moneyOf(s.cost, 'material'))));
  const title = say(words.material, { unit: unit.name, rod: rod!, joint: joint! }, speech);
  return { title, against: words.byMaterial, at, says: at.map((m) => `${Math.round(m)} ${unit.name}`) };
}

function running(figures: readonly number[]): readonly number[] {
  const sums = [0];
  for (const f of figures) sums.push(sums.at(-1)! + f);
  return sums;
}

function remainingOf({ steps }: WorksPlan): readonly Remaining[] {
  const [first] = steps;
  const none: Remaining = { hazards: 0, defects: 0, advices: 0, cannotTell: 0 };
  return [first?.inTurn.before ?? none, ...steps.map((s) => s.inTurn.after)];
}

interface Figures {
  readonly spent: Spent;
  readonly remaining: readonly Remaining[];
  readonly x: Scale;
  readonly y: Scale;
}

/** Level until a work is paid, then at once what remains after it. */
function stairs(kind: (typeof kinds)[number], place: number, { spent, remaining, x, y }: Figures) {
  const look: CurveLook = curveLook(place);
  const beside = (place - 1) * besideMm;
  const height = (i: number) => y.at(remaining[i]![kind]) + beside;
  const marks = spent.at.map((s, i): Point => [x.at(s), height(i)]);
  const corners = spent.at.flatMap((s, i): readonly Point[] => [
    ...(i === 0 ? [] : [[x.at(s), height(i - 1)] as const]),
    [x.at(s), height(i)],
  ]);
  return { says: words[kind], look, marks, corners };
}

/** Numbers of the works over where they are paid; one that has no room left is left to the list. */
function stepNumbers(places: readonly number[]): readonly Svg[] {
  let free = -Infinity;
  return places.flatMap((x, i): readonly Svg[] => {
    const says = String(i + 1);
    const left = x - textWidth(says, size) / 2;
    const thread = line([x, plot.y - 1], [x, plot.y + plot.height], {
      stroke: soft,
      'stroke-width': 0.12,
      'stroke-dasharray': '0.5 0.9',
    });
    if (left < free) return [thread];
    free = left + textWidth(says, size) + 0.8;
    return [thread, text(says, { x: left, y: plot.y - 1.6, 'font-size': size, 'font-weight': 'bold', fill: ink })];
  });
}

function listOf({ says }: Spent, remaining: readonly Remaining[], speech: Speech): readonly string[] {
  return remaining.map(({ hazards, defects, advices }, i) => {
    const values = { hazards: String(hazards), defects: String(defects), advices: String(advices) };
    if (i === 0) return say(words.before, values, speech);
    return say(words.after, { ...values, number: String(i), spent: says[i]! }, speech);
  });
}
