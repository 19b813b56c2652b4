import type { Study } from '../study/study.ts';
import type { StudyStrike } from '../study/study-strike.ts';
import { type Speech, say } from '../words/say.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { buildingNames, buildingWalls, drawBuildings } from './draw-buildings.ts';
import { drawCluster, drawLabel, drawLeader } from './draw-clusters.ts';
import { type DrawnRun, runsOnPaper } from './draw-runs.ts';
import { itemNumbers, partOfPoint } from './item-numbers.ts';
import { placeLabels } from './place-labels.ts';
import { labelRoom, type PlacedPart, placedParts, symbolMm, symbolRoom } from './plan-clusters.ts';
import { northArrow, scaleBars } from './plan-furniture.ts';
import { type Run, runsOf } from './plan-runs.ts';
import { type Ground, type PlanScale, planScale } from './plan-scale.ts';
import type { Rect } from './rect.ts';
import { hasPlan } from './site-plan.ts';
import { speechOf } from './speech.ts';
import { drawBolt } from './strike-bolt.ts';
import { type StrikeCurrent, sayCurrent, strikeCurrents } from './strike-currents.ts';
import { runLabels, strikeClusters, strikeSite } from './strike-labels.ts';
import { inLanes } from './strike-lanes.ts';
import { strikePlanLegend } from './strike-plan-legend.ts';
import { drawStrikeRuns } from './strike-runs.ts';
import { circle, drawing, element, group, type Point, type Svg, text } from './svg.ts';
import { ink, soft } from './symbols.ts';

const words = strikeReportWords.plan;
const widthMm = 180;
const barsMm = 20;
const arrowAt: Point = [widthMm - 10, 11];
/** Where the leader of a run's label lands: it may have crossed other runs. */
const anchorMm = 0.55;
const anchorLook = { fill: '#ffffff', stroke: soft, 'stroke-width': 0.25 } as const;
/** Of an entry for those who cannot see the plan. */
const mostTold = 8;

export interface StrikePlan {
  readonly svg: string;
  /** What carries but is not drawn: no place is known, or it is too short to be seen. */
  readonly missing: readonly string[];
}

/**
 * Where the current of a strike goes, on the plan: each conductor, line and support as wide as its greatest current and with
 * its figure, what each electrode lets into the soil, and what is struck, as SVG text. null where nothing that carries has
 * a place, or fewer than two places are known.
 */
export function strikePlan(study: Study, strike: StudyStrike): StrikePlan | null {
  const currents = strikeCurrents(strike);
  const site = strikeSite(study, strike, currents);
  const runs = runsOf(study).filter((r) => r.look !== 'guy');
  const places = placedParts(site);
  const carries = [...runs, ...places].some((r) => currents.has(r.id));
  if (!carries || !hasPlan(study)) return null;
  const speech = speechOf(study);
  const grounds = [...corners(study), ...places.map((p) => p.ground), ...runs.flatMap((r) => r.points)];
  const scale = planScale(grounds, widthMm, speech.unitsFirst);
  const drawn = inLanes(runsOnPaper(runs, scale));
  const greatestA = Math.max(...drawn.map((r) => currents.get(r.run.id)?.alongA ?? 0));
  const struckAt = struckPlace(strike.at, places, runs);
  const struck = struckAt === null ? null : scale.toPaper(struckAt);
  const shown = {
    runs: drawn,
    currents,
    greatestA,
    isStruckShown: struck !== null,
    symbols: new Set(places.map((p) => p.symbol)),
  };
  const legend = strikePlanLegend(speech, shown, widthMm, scale.heightMm + barsMm);
  const sheet = {
    widthMm,
    heightMm: scale.heightMm + barsMm + legend.heightMm,
    title: say(words.title, { at: strike.at }, speech),
    description: describe(currents, speech),
  };
  const frame: Rect = { x: 0.3, y: 0.3, width: widthMm - 0.6, height: scale.heightMm };
  const svg = drawing(sheet, [
    element('rect', { ...frame, fill: '#ffffff', stroke: ink, 'stroke-width': 0.35 }),
    ...body(study, site, { drawn, currents, greatestA, scale, frame, struck }),
    group({}, northArrow(arrowAt, study.site.northDeg)),
    ...scaleBars([2, scale.heightMm + 5], scale.ratio),
    text(words.numbers, { x: 66, y: scale.heightMm + 6.8, 'font-size': 2.6, fill: ink }),
    group({}, legend.children),
  ]);
  const there = new Set([...drawn.map((r) => r.run.id), ...places.map((p) => p.id)]);
  return { svg, missing: [...currents.keys()].filter((id) => !there.has(id)) };
}

/** Where a part stands, or where a line begins that a surge comes in on. */
function struckPlace(at: string, places: readonly PlacedPart[], runs: readonly Run[]): Ground | null {
  const id = partOfPoint(at);
  return places.find((p) => p.id === id)?.ground ?? runs.find((r) => r.id === id)?.points[0] ?? null;
}

interface OnPaper {
  readonly drawn: readonly DrawnRun[];
  readonly currents: ReadonlyMap<string, StrikeCurrent>;
  readonly greatestA: number;
  readonly scale: PlanScale;
  readonly frame: Rect;
  readonly struck: Point | null;
}

function body(study: Study, site: Study, { drawn, currents, greatestA, scale, frame, struck }: OnPaper) {
  const numbers = itemNumbers(study);
  const clusters = strikeClusters(site, numbers, currents, scale);
  const named = new Set(clusters.flatMap((c) => c.entries.map((e) => e.id)));
  const labels = runLabels(drawn, numbers, currents, named);
  const symbolRooms = clusters.map(symbolRoom);
  const pieces = drawn.flatMap((r) => piecesOf(r.points));
  const names = buildingNames(study, scale, { symbols: symbolRooms, runs: pieces });
  const arrow: Rect = { x: arrowAt[0] - 9, y: 0, width: 19, height: 21 };
  const wanted = [...clusters, ...labels];
  const places = placeLabels(
    wanted.map((c) => ({ at: c.at, ...labelRoom(c) })),
    {
      sheet: inset(frame),
      blocked: [arrow, ...names, ...symbolRooms, ...(struck === null ? [] : [boltRoom(struck)])],
      lines: [...pieces, ...buildingWalls(study, scale).flatMap(piecesOf)],
    },
  );
  return [
    ...drawBuildings(study, scale, names),
    ...drawStrikeRuns(drawn, currents, greatestA),
    ...places.flatMap(drawLeader),
    ...labels.map((l) => circle(l.at, anchorMm, anchorLook)),
    ...clusters.flatMap(drawCluster),
    ...(struck === null ? [] : [drawBolt(tipAt(struck))]),
    ...wanted.flatMap((c, i): readonly Svg[] => drawLabel(c, places[i]!)),
  ];
}

/** The tip stands on the upper edge of the symbol. */
function tipAt([x, y]: Point): Point {
  return [x, y - symbolMm / 2];
}

function boltRoom(struck: Point): Rect {
  const [x, y] = tipAt(struck);
  return { x: x - 1.4, y: y - 6.4, width: 3.7, height: 6.4 };
}

function corners(study: Study): readonly Ground[] {
  return study.buildings.flatMap((b) => b.cornersM.map(([e, n]): Ground => [e, n]));
}

function piecesOf(points: readonly Point[]): readonly (readonly [Point, Point])[] {
  return points.slice(1).map((p, i) => [points[i]!, p]);
}

function inset({ x, y, width, height }: Rect): Rect {
  return { x: x + 1, y: y + 1, width: width - 2, height: height - 2 };
}

function describe(currents: ReadonlyMap<string, StrikeCurrent>, speech: Speech): string {
  const size = ({ alongA, soilA }: StrikeCurrent) => Math.max(alongA ?? 0, soilA ?? 0);
  const most = [...currents].sort(([, a], [, b]) => size(b) - size(a)).slice(0, mostTold);
  const list = most.map(([part, c]) => say(words.entry, { part, current: sayCurrent(c) }, speech));
  return say(words.description, { list }, speech);
}
