import type { Study } from '../study/study.ts';
import { drawingWords } from '../words/drawing-words.ts';
import { type Speech, say } from '../words/say.ts';
import { buildingNames, buildingWalls, drawBuildings } from './draw-buildings.ts';
import { drawCluster, drawLabel, drawLeader } from './draw-clusters.ts';
import { drawRunLabel, drawRuns, placeRunLabels, type RunLabel, runsOnPaper } from './draw-runs.ts';
import { itemNumbers } from './item-numbers.ts';
import { type Obstacles, placeLabels } from './place-labels.ts';
import { type Cluster, clustersOf, labelRoom, numbersOnly, placedParts, symbolRoom } from './plan-clusters.ts';
import { northArrow, scaleBars } from './plan-furniture.ts';
import { planLegend } from './plan-legend.ts';
import { type Run, runsOf } from './plan-runs.ts';
import { type Ground, type PlanScale, planScale } from './plan-scale.ts';
import type { Rect } from './rect.ts';
import { speechOf } from './speech.ts';
import { drawing, element, group, type Point, type Svg, text } from './svg.ts';
import { ink } from './symbols.ts';

const words = drawingWords.plan;
const widthMm = 180;
const barsMm = 24;

/** Whether enough is known to draw to scale: two different positions at least. */
export function hasPlan(study: Study): boolean {
  const places = new Set(placedParts(study).map((p) => p.ground.join(' ')));
  return places.size >= 2;
}

/** Parts that the plan leaves out because nobody knows where they are. */
export function notOnPlan(study: Study): readonly string[] {
  const runs = new Set(runsOf(study).map((r) => r.id));
  const lost = study.parts.filter((p) => p.positionM === null && !runs.has(p.id) && p.section !== 'joints');
  const guys = study.guys.filter((g) => g.anchorM === null);
  return [...lost, ...guys].map((p) => p.id);
}

/**
 * The site seen from above, to scale, as SVG text: buildings, runs (dashed in soil), parts under their numbers, north
 * arrow, scale bars in both systems, legend. Only for a study with at least two positions (hasPlan).
 */
export function sitePlan(study: Study): string {
  const speech = speechOf(study);
  const scale = planScale(groundPoints(study), widthMm, speech.unitsFirst);
  const frame: Rect = { x: 0.3, y: 0.3, width: widthMm - 0.6, height: scale.heightMm };
  const arrowAt: Point = [widthMm - 10, 11];
  const { children, ...shown } = planBody(study, scale, frame, arrowAt);
  const legend = planLegend(speech, shown, widthMm, scale.heightMm + barsMm);
  const sheet = {
    widthMm,
    heightMm: scale.heightMm + barsMm + legend.heightMm,
    title: say(words.title, { site: study.site.name ?? study.site.file }, speech),
    description: describe(study, speech),
  };
  const border = element('rect', { ...frame, fill: '#ffffff', stroke: ink, 'stroke-width': 0.35 });
  return drawing(sheet, [
    border,
    ...children,
    group({}, northArrow(arrowAt, study.site.northDeg)),
    group({}, underPlan(scale, speech)),
    group({}, legend.children),
  ]);
}

function groundPoints(study: Study): readonly Ground[] {
  const corners = study.buildings.flatMap((b) => b.cornersM.map(([e, n]): Ground => [e, n]));
  const parts = placedParts(study).map((p) => p.ground);
  return [...corners, ...parts, ...runsOf(study).flatMap((r) => r.points)];
}

function planBody(study: Study, scale: PlanScale, frame: Rect, arrowAt: Point) {
  const numbers = itemNumbers(study);
  const runs = runsOnPaper(runsOf(study), scale);
  const clusters = clustersOf(study, numbers, scale);
  const arrow: Rect = { x: arrowAt[0] - 9, y: 0, width: 19, height: 21 };
  const symbolRooms = clusters.map(symbolRoom);
  const pieces = runs.map((r) => r.points).flatMap(piecesOf);
  const names = buildingNames(study, scale, { symbols: symbolRooms, runs: pieces });
  const blocked = [arrow, ...names, ...symbolRooms];
  const runLabels = placeRunLabels(runs, numbers, blocked);
  const lines = [...pieces, ...buildingWalls(study, scale).flatMap(piecesOf)];
  const obstacles = { sheet: inset(frame), blocked: [...blocked, ...runLabels.map((l) => l.rect)], lines };
  const { clusters: labelled, places } = placeClusters(clusters, obstacles);
  const labels: readonly Svg[] = labelled.flatMap((c, i) => drawLabel(c, places[i]!));
  const children = [
    ...drawBuildings(study, scale, names),
    ...drawRuns(runs),
    ...places.flatMap(drawLeader),
    ...clusters.flatMap(drawCluster),
    ...runLabels.flatMap(drawRunLabel),
    ...labels,
  ];
  const all = runs.map((r) => r.run);
  return { children, symbols: symbolsIn(study), runs: all, numbered: withLabel(all, runLabels) };
}

/** Whose number stands on the plan. */
export function withLabel(runs: readonly Run[], labels: readonly RunLabel[]): readonly Run[] {
  const ids = new Set(labels.map((l) => l.id));
  return runs.filter((r) => ids.has(r.id));
}

/** Names where there is room for all of them; else, for those that found none, the numbers alone. */
function placeClusters(clusters: readonly Cluster[], obstacles: Obstacles) {
  const place = (list: readonly Cluster[]) =>
    placeLabels(
      list.map((c) => ({ at: c.at, ...labelRoom(c) })),
      obstacles,
    );
  const first = place(clusters);
  if (first.every((p) => p !== null)) return { clusters, places: first };
  const shorter = clusters.map((c, i) => (first[i] === null ? numbersOnly(c) : c));
  return { clusters: shorter, places: place(shorter) };
}

function piecesOf(points: readonly Point[]): readonly (readonly [Point, Point])[] {
  return points.slice(1).map((p, i) => [points[i]!, p]);
}

function symbolsIn(study: Study) {
  return new Set(placedParts(study).map((p) => p.symbol));
}

function inset({ x, y, width, height }: Rect): Rect {
  return { x: x + 1, y: y + 1, width: width - 2, height: height - 2 };
}

function underPlan(scale: PlanScale, speech: Speech): readonly Svg[] {
  const paper = speech.terms === 'us' ? 'Letter' : 'A4';
  const top = scale.heightMm + 5;
  const values = { ratio: String(scale.ratio), feet: String(scale.ratio / 12), paper };
  const inInches = speech.unitsFirst === 'us' && scale.ratio % 12 === 0;
  const says = [say(inInches ? words.scaleInches : words.scale, values, speech), words.straight, words.flagged];
  const lines = says.map((t, i) => text(t, { x: 66, y: top + 1.8 + i * 4.4, 'font-size': 2.6, fill: ink }));
  return [...scaleBars([2, top], scale.ratio), ...lines];
}

function describe(study: Study, speech: Speech): string {
  const values = { parts: String(placedParts(study).length), buildings: String(study.buildings.length) };
  return say(words.description, values, speech);
}
