import type { Study } from '../study/study.ts';
import type { StudySurface } from '../study/study-earth.ts';
import { type Speech, say } from '../words/say.ts';
import { soilDrawingWords } from '../words/soil-drawing-words.ts';
import { conditionName, percent } from './chart-names.ts';
import { contourLegend } from './contour-legend.ts';
import {
  contoursOnPaper,
  drawContourLabel,
  drawContours,
  type PaperContour,
  placeContourLabels,
} from './contour-lines.ts';
import { contourProfile, profileText } from './contour-profile.ts';
import { contourSite } from './contour-site.ts';
import { barRoom, drawStepLine, edgeStroke, stepLineOf } from './contour-step.ts';
import { buildingNames, drawBuildings } from './draw-buildings.ts';
import { drawCluster, drawLabel, drawLeader } from './draw-clusters.ts';
import { drawRuns, runsOnPaper } from './draw-runs.ts';
import { itemNumbers } from './item-numbers.ts';
import { placeLabels } from './place-labels.ts';
import { clustersOf, labelRoom, placedParts, symbolRoom } from './plan-clusters.ts';
import { northArrow, scaleBars } from './plan-furniture.ts';
import { runsOf } from './plan-runs.ts';
import { type Ground, type PlanScale, planScale } from './plan-scale.ts';
import type { Rect } from './rect.ts';
import { speechOf } from './speech.ts';
import { drawing, element, group, line, type Point, text } from './svg.ts';
import { ink } from './symbols.ts';

const words = soilDrawingWords.contour;
const widthMm = 180;
/** Map at the left; at its right the curve along the line, and below that the legend. */
const mapMm = 119;
const rightMm = 124;
const profile: Rect = { x: rightMm + 9, y: 6, width: widthMm - rightMm - 11, height: 30 };
const legendTopMm = 49;
const barsMm = 18;
const arrowAt: Point = [mapMm - 10, 11];

/**
 * Lines of equal potential of the surface when one group is at 100 per cent, to scale over its electrodes, supports and
 * buildings, with the line of the step figure and the worst step on it, and the potential along that line as a curve, as SVG
 * text. The study of the whole site is asked for so that parts have the numbers of the plan.
 */
export function contourMap(study: Study, surface: StudySurface): string {
  const speech = speechOf(study);
  const site = contourSite(study, surface);
  const scale = planScale(groundPoints(site, surface), mapMm, speech.unitsFirst);
  const frame: Rect = { x: 0.3, y: 0.3, width: mapMm - 0.6, height: scale.heightMm };
  const contours = contoursOnPaper(surface, scale);
  const symbols = new Set(placedParts(site).map((p) => p.symbol));
  const legend = contourLegend(speech, { symbols, runs: runsOf(site) }, widthMm - rightMm, legendTopMm);
  const sheet = {
    widthMm,
    heightMm: Math.max(scale.heightMm + barsMm, legendTopMm + legend.heightMm),
    title: say(words.title, { group: surface.group }, speech),
    description: describe(surface, contours, speech),
  };
  return drawing(sheet, [
    element('rect', { ...frame, fill: '#ffffff', stroke: ink, 'stroke-width': 0.35 }),
    ...body(study, site, { surface, scale, frame, contours }),
    group({}, northArrow(arrowAt, study.site.northDeg)),
    ...underMap(scale, surface, speech),
    ...(surface.line.points.length < 2 ? [] : contourProfile(surface, profile, speech)),
    group({ transform: `translate(${rightMm} 0)` }, legend.children),
  ]);
}

interface OnPaper {
  readonly surface: StudySurface;
  readonly scale: PlanScale;
  readonly frame: Rect;
  readonly contours: readonly PaperContour[];
}

/** Ends of the worked-out square, and whatever stands on it. */
function groundPoints(site: Study, surface: StudySurface): readonly Ground[] {
  const corners = site.buildings.flatMap((b) => b.cornersM.map(([e, n]): Ground => [e, n]));
  return [...gridCorners(surface), ...corners, ...runsOf(site).flatMap((r) => r.points), surface.line.toM];
}

function gridCorners({ grid }: StudySurface): readonly Ground[] {
  const [west, south] = [grid.westM, grid.southM];
  const [east, north] = [west + (grid.columns - 1) * grid.stepM, south + (grid.rows - 1) * grid.stepM];
  return [
    [west, south],
    [east, south],
    [east, north],
    [west, north],
  ];
}

function body(study: Study, site: Study, { surface, scale, frame, contours }: OnPaper) {
  const runs = runsOnPaper(runsOf(site), scale);
  const clusters = clustersOf(site, itemNumbers(study), scale);
  const symbolRooms = clusters.map(symbolRoom);
  const step = stepLineOf(surface, scale, symbolRooms);
  const names = buildingNames(site, scale, { symbols: symbolRooms, runs: [] });
  const arrow: Rect = { x: arrowAt[0] - 9, y: 0, width: 19, height: 21 };
  const blocked = [arrow, ...symbolRooms, ...names, ...step.letters.map((l) => l.rect), barRoom(step.bar)];
  const lines = [...runs.map((r) => r.points), ...contours.map((c) => c.points)].flatMap(piecesOf);
  const places = placeLabels(
    clusters.map((c) => ({ at: c.at, ...labelRoom(c) })),
    { sheet: inset(frame), blocked, lines: [...lines, [step.from, step.to]] },
  );
  const labelRects = places.flatMap((p) => (p === null ? [] : [p.rect]));
  const levels = placeContourLabels(contours, inset(frame), [...blocked, ...labelRects]);
  return [
    ...drawBuildings(site, scale, names),
    ...edgeOfGrid(surface, scale),
    ...drawRuns(runs),
    ...drawContours(contours),
    ...drawStepLine(step),
    ...places.flatMap(drawLeader),
    ...clusters.flatMap(drawCluster),
    ...levels.flatMap(drawContourLabel),
    ...clusters.flatMap((c, i) => drawLabel(c, places[i]!)),
  ];
}

function edgeOfGrid(surface: StudySurface, scale: PlanScale) {
  const corners = gridCorners(surface).map(scale.toPaper);
  return corners.map((c, i) => line(c, corners[(i + 1) % corners.length]!, edgeStroke));
}

function piecesOf(points: readonly Point[]): readonly (readonly [Point, Point])[] {
  return points.slice(1).map((p, i) => [points[i]!, p]);
}

function inset({ x, y, width, height }: Rect): Rect {
  return { x: x + 1, y: y + 1, width: width - 2, height: height - 2 };
}

function underMap(scale: PlanScale, surface: StudySurface, speech: Speech) {
  const paper = speech.terms === 'us' ? 'Letter' : 'A4';
  const top = scale.heightMm + 5;
  const values = { ratio: String(scale.ratio), feet: String(scale.ratio / 12), paper };
  const inInches = speech.unitsFirst === 'us' && scale.ratio % 12 === 0;
  const condition = say(words.condition, { condition: conditionName(surface.condition) }, speech);
  const says = [say(inInches ? words.scaleInches : words.scale, values, speech), condition];
  const lines = says.map((t, i) => text(t, { x: 2, y: top + 8.6 + i * 3.8, 'font-size': 2.6, fill: ink }));
  return [...scaleBars([2, top], scale.ratio, [60, 0]), ...lines];
}

function describe(surface: StudySurface, contours: readonly PaperContour[], speech: Speech): string {
  const levels = [...new Set(contours.map((c) => String(c.level)))];
  const { group: of, step, line } = surface;
  const values = { group: of, levels, step: percent(step.share), atM: step.atM };
  const along = line.points.length < 2 ? '' : ` ${profileText(surface, speech)}`;
  return `${say(words.description, values, speech)}${along}`;
}
