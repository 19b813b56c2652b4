import type { Comparison } from '../compare/comparison.ts';
import type { Study } from '../study/study.ts';
import { compareDrawingWords as words } from '../words/compare-drawing-words.ts';
import { type Speech, say } from '../words/say.ts';
import { drawFateCluster, drawFateLabel, fateLabelRoom, fateNumbers, withSigns } from './compare-clusters.ts';
import { type Fate, fateInk, fateSign } from './compare-fate.ts';
import { comparePlanLegend } from './compare-legend.ts';
import { drawFateRunLabel, drawFateRuns } from './compare-runs.ts';
import { fateLists, type Union, unionOf } from './compare-union.ts';
import { buildingNames, buildingWalls, drawBuildings } from './draw-buildings.ts';
import { drawLeader } from './draw-clusters.ts';
import { type DrawnRun, placeRunLabels, runsOnPaper } from './draw-runs.ts';
import { itemNumbers } from './item-numbers.ts';
import { type Obstacles, placeLabels } from './place-labels.ts';
import { type Cluster, clustersOf, placedParts, symbolRoom } from './plan-clusters.ts';
import { northArrow, scaleBars } from './plan-furniture.ts';
import { type Run, runsOf } from './plan-runs.ts';
import { type Ground, type PlanScale, planScale } from './plan-scale.ts';
import type { Rect } from './rect.ts';
import { hasPlan, withLabel } from './site-plan.ts';
import { speechOf } from './speech.ts';
import { circle, drawing, element, group, line, type Point, type Svg, text } from './svg.ts';
import { ink } from './symbols.ts';

export interface ComparePlanOptions {
  readonly widthMm: number;
  /** Height of the plan itself at most. */
  readonly tallestMm: number;
  /** all: what stayed is named too; changes: it is drawn without a name. */
  readonly names: 'all' | 'changes';
  /** Sections of the file whose changed pieces bear numbers; null: all. */
  readonly numbered: readonly string[] | null;
}

export const fullPlan: ComparePlanOptions = { widthMm: 180, tallestMm: 150, names: 'all', numbered: null };

/** Whether enough places are known before and after to draw to scale. */
export function hasComparePlan(before: Study, after: Study, comparison: Comparison): boolean {
  return hasPlan(unionOf(before, after, comparison.parts).study);
}

/**
 * Both studies on one plan to scale as SVG text: added, removed and changed pieces each with a stroke and a sign of its own,
 * what stayed thin and pale, what moved with a mark where it stood; north arrow, scale bars in both systems, legend.
 */
export function comparePlan(before: Study, after: Study, comparison: Comparison, options = fullPlan): string {
  const union = unionOf(before, after, comparison.parts);
  const speech = speechOf(after);
  const runs = [...runsOf(union.study), ...formerRoutes(before, union, comparison)];
  const scale = planScale(groundPoints(union, runs), options.widthMm, speech.unitsFirst, options.tallestMm);
  const frame: Rect = { x: 0.3, y: 0.3, width: options.widthMm - 0.6, height: scale.heightMm };
  const arrowAt: Point = [options.widthMm - 10, 11];
  const drawn = runsOnPaper(
    runs.map((r) => signed(r, union)),
    scale,
  );
  const { children, runLabels } = planBody({ union, scale, frame, arrowAt, drawn, options });
  const barsMm = isSketch(options) ? 12 : 20;
  const shown = {
    fates: new Set(fatesShown(union, drawn)),
    symbols: new Set(placedParts(union.study).map((p) => p.symbol)),
    isMoved: union.moved.length > 0,
    numbered: withLabel(runs, runLabels),
  };
  const legend = comparePlanLegend(speech, shown, options.widthMm, scale.heightMm + barsMm);
  const site = after.site.name ?? after.site.file;
  const sheet = {
    widthMm: options.widthMm,
    heightMm: scale.heightMm + barsMm + legend.heightMm,
    title: say(words.title, { site }, speech),
    description: say(words.description, fateLists(union, words.nothing), speech),
  };
  return drawing(sheet, [
    element('rect', { ...frame, fill: '#ffffff', stroke: ink, 'stroke-width': 0.35 }),
    ...children,
    group({}, northArrow(arrowAt, after.site.northDeg)),
    group({}, underPlan(scale, speech, options)),
    group({}, legend.children),
  ]);
}

/** Parts and guys before or after that have no place on the plan, of those that something became of, as they are called in the union. */
export function changesNotOnPlan(before: Study, after: Study, comparison: Comparison): readonly string[] {
  const union = unionOf(before, after, comparison.parts);
  const there = new Set([...placedParts(union.study).map((p) => p.id), ...runsOf(union.study).map((r) => r.id)]);
  const isSeen = (id: string) => union.study.parts.some((p) => p.id === id && p.section === 'joints');
  return [...union.fates].filter(([id, fate]) => fate !== 'same' && !there.has(id) && !isSeen(id)).map(([id]) => id);
}

/** The route that something had, where it has another one now. */
function formerRoutes(before: Study, union: Union, comparison: Comparison): readonly Run[] {
  const rerouted = new Set(comparison.parts.changed.filter((c) => c.routeChanged).map((c) => c.before.id));
  return runsOf(before)
    .filter((r) => rerouted.has(r.id))
    .map((r) => ({ ...r, id: formerId(union.idOfBefore(r.id)) }));
}

/** No part can be called so: names have no line ends. */
const formerId = (id: string) => `${id}\nformer route`;
const isFormer = (id: string) => id.endsWith('\nformer route');

function fateOf(union: Union, id: string): Fate {
  return isFormer(id) ? 'removed' : (union.fates.get(id) ?? 'same');
}

function signed(run: Run, union: Union): Run {
  return { ...run, letter: `${fateSign[fateOf(union, run.id)]}${run.letter}` };
}

function fatesShown(union: Union, drawn: readonly DrawnRun[]): readonly Fate[] {
  const ids = [...placedParts(union.study).map((p) => p.id), ...drawn.map((r) => r.run.id)];
  return ids.map((id) => fateOf(union, id));
}

function groundPoints(union: Union, runs: readonly Run[]): readonly Ground[] {
  const corners = union.study.buildings.flatMap((b) => b.cornersM.map(([e, n]): Ground => [e, n]));
  const parts = placedParts(union.study).map((p) => p.ground);
  return [...corners, ...parts, ...runs.flatMap((r) => r.points), ...union.moved.map((m) => m.from)];
}

interface Body {
  readonly union: Union;
  readonly scale: PlanScale;
  readonly frame: Rect;
  readonly arrowAt: Point;
  readonly drawn: readonly DrawnRun[];
  readonly options: ComparePlanOptions;
}

function planBody({ union, scale, frame, arrowAt, drawn, options }: Body) {
  const { study } = union;
  const fates = new Map(drawn.map((r) => [r.run.id, fateOf(union, r.run.id)]));
  for (const [id, fate] of union.fates) fates.set(id, fate);
  const numbers = itemNumbers(study);
  const whole = clustersOf(study, numbers, scale);
  const sections = new Map(study.parts.map((p) => [p.id, p.section]));
  const isNumbered = (id: string) => options.numbered?.includes(sections.get(id) ?? 'guys') ?? true;
  const isTold = (id: string) => isNumbered(id) && (options.names === 'all' || fates.get(id) !== 'same');
  const named = withSigns(whole, fates, isTold);
  const arrow: Rect = { x: arrowAt[0] - 9, y: 0, width: 19, height: 21 };
  const symbolRooms = whole.map(symbolRoom);
  const pieces = drawn.flatMap((r) => piecesOf(r.points));
  const names = buildingNames(study, scale, { symbols: symbolRooms, runs: pieces });
  const blocked = [arrow, ...names, ...symbolRooms];
  const numbered = drawn.filter((r) => fates.get(r.run.id) !== 'same' && !isFormer(r.run.id) && isNumbered(r.run.id));
  const runLabels = placeRunLabels(numbered, numbers, blocked);
  const obstacles = {
    sheet: { x: frame.x + 1, y: frame.y + 1, width: frame.width - 2, height: frame.height - 2 },
    blocked: [...blocked, ...runLabels.map((l) => l.rect)],
    lines: [...pieces, ...buildingWalls(study, scale).flatMap(piecesOf)],
  };
  const told = named.filter((c) => c.entries.length > 0);
  const { clusters, places } = labelled(told, obstacles, fates, options);
  const children: readonly Svg[] = [
    ...drawBuildings(study, scale, names),
    ...drawFateRuns(drawn, fates),
    ...movedMarks(union, scale),
    ...places.flatMap(drawLeader),
    ...whole.flatMap((c) => drawFateCluster(c, fates)),
    ...runLabels.flatMap((l) => drawFateRunLabel(l, fates.get(l.id) ?? 'same')),
    ...clusters.flatMap((c, i) => drawFateLabel(c, places[i]!, fates)),
  ];
  return { children, runLabels };
}

/** Names where there is room for all of them; else, for those that found none, and on a sketch for all, the numbers alone. */
function labelled(
  clusters: readonly Cluster[],
  obstacles: Obstacles,
  fates: ReadonlyMap<string, Fate>,
  { names }: ComparePlanOptions,
) {
  const place = (list: readonly Cluster[]) =>
    placeLabels(
      list.map((c) => ({ at: c.at, ...fateLabelRoom(c) })),
      obstacles,
    );
  const start = names === 'all' ? clusters : clusters.map((c) => fateNumbers(c, fates));
  const first = place(start);
  if (first.every((p) => p !== null)) return { clusters: start, places: first };
  const shorter = start.map((c, i) => (first[i] === null ? fateNumbers(c, fates) : c));
  return { clusters: shorter, places: place(shorter) };
}

function piecesOf(points: readonly Point[]): readonly (readonly [Point, Point])[] {
  return points.slice(1).map((p, i) => [points[i]!, p]);
}

const leastMoveMm = 3;

/** A small ring where something stood, and a dotted line to where it stands. */
function movedMarks({ study, moved }: Union, scale: PlanScale): readonly Svg[] {
  const grounds = new Map(placedParts(study).map((p) => [p.id, p.ground]));
  return moved.flatMap(({ id, from }) => {
    const to = grounds.get(id);
    if (to === undefined) return [];
    const [a, b] = [scale.toPaper(from), scale.toPaper(to)];
    return Math.hypot(a[0] - b[0], a[1] - b[1]) < leastMoveMm ? [] : drawMove(a, b);
  });
}

export function drawMove(from: Point, to: Point): readonly Svg[] {
  const stroke = { stroke: fateInk.changed, 'stroke-width': 0.3 };
  return [
    line(from, to, { ...stroke, 'stroke-dasharray': '0.4 0.8' }),
    circle(from, 0.9, { fill: '#ffffff', ...stroke }),
  ];
}

/** Too narrow for sentences beside the scale bars. */
const isSketch = ({ widthMm }: ComparePlanOptions) => widthMm < 150;

function underPlan(scale: PlanScale, speech: Speech, options: ComparePlanOptions): readonly Svg[] {
  const paper = speech.terms === 'us' ? 'Letter' : 'A4';
  const top = scale.heightMm + 5;
  const says = [say(words.scale, { ratio: String(scale.ratio), paper }, speech), words.note, words.strokes];
  if (isSketch(options)) return scaleBars([2, top - 2], scale.ratio, [options.widthMm / 2, 0]);
  const lines = says.map((t, i) => text(t, { x: 66, y: top + 1.8 + i * 4.4, 'font-size': 2.6, fill: ink }));
  return [...scaleBars([2, top], scale.ratio), ...lines];
}
