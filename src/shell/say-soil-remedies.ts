import { conditionName, percent } from '../drawing/chart-names.ts';
import type { StudyDepthCurve, StudyRodLine, StudySpacingGain } from '../study/study-earth.ts';
import { soilCommandWords } from '../words/soil-command-words.ts';
import { reachLength } from './reach-length.ts';
import { frostLines } from './say-soil-frost.ts';
import { bullet, figureOf, headed, ohmOf, type SoilPage } from './soil-page.ts';

const { deeper, more } = soilCommandWords;
/** NEC 250.53(A)(2), exception: what a lone rod may have (from memory). A yardstick elsewhere. */
const limitOhm = 25;
/** Share of what two rods far from each other would bring that makes a distance useful: nine tenths. */
const usefulShare = 0.9;
const half = 0.5;
const asTyped = 'as typed';

/** What a longer rod, one more rod and a place below the frost would do, by calculation. */
export function helpBlock(page: SoilPage): string {
  const { depthCurves, spacingGains, rodLines } = page.study.earth;
  const electrodes = [...new Set(depthCurves.map((c) => c.electrode))];
  const lines = [
    ...electrodes.flatMap((id) =>
      deeperLines(
        page,
        depthCurves.filter((c) => c.electrode === id),
      ),
    ),
    ...spacingGains.flatMap((g) => moreLines(page, g)),
    ...rodLines.flatMap((l) => countLines(page, l)),
    ...outOfReach(page),
    ...frostLines(page),
  ];
  return headed(
    page,
    soilCommandWords.headings.help,
    lines.map((text) => bullet(page, text)),
  );
}

function deeperLines(page: SoilPage, curves: readonly StudyDepthCurve[]): readonly string[] {
  const { sentence } = page;
  const [now, ...others] = curves;
  if (now === undefined || now.points.length < 2) return [];
  const { electrode, lengthM } = now;
  const list = toldPoints(now).map((p) =>
    sentence(p.lengthM === lengthM ? deeper.now : deeper.at, {
      ohm: ohmOf(p.ohm),
      length: figureOf(page, p.lengthM, 'length'),
    }),
  );
  const said = sentence(deeper.one, { electrode, list: list.join('; ') });
  return [[said, reachText(page, now, others), ...hardly(now)].join(' ')];
}

/** As it is (or the shortest tried), the next, about twice, about four times, and the longest tried. */
function toldPoints({ points, lengthM }: StudyDepthCurve): StudyDepthCurve['points'] {
  const longer = points.filter((p) => lengthM === null || p.lengthM >= lengthM * 0.999);
  const first = longer[0];
  if (first === undefined) return points.slice(-1);
  const wanted = [
    first,
    ...[2, 4].map((times) => nearest(longer, (p) => p.lengthM, times * first.lengthM)),
    longer.at(-1)!,
  ];
  return [...new Set(wanted)];
}

/** The condition in which it is worst at its own length. */
function worstOf(curves: readonly StudyDepthCurve[]): StudyDepthCurve | null {
  const atOwn = (c: StudyDepthCurve) =>
    c.points.find((p) => p.lengthM === c.lengthM)?.ohm.high ?? Number.POSITIVE_INFINITY;
  return curves.reduce<StudyDepthCurve | null>((w, c) => (w === null || atOwn(c) > atOwn(w) ? c : w), null);
}

/** Where it comes down to the limit as the soil is, and in the worst of the other conditions. */
function reachText(page: SoilPage, now: StudyDepthCurve, others: readonly StudyDepthCurve[]): string {
  const worst = worstOf(others);
  const list = [now, ...(worst === null ? [] : [worst])].map((c) => reachIn(page, c)).join('; ');
  return page.sentence(deeper.reach, { limit: figureOf(page, limitOhm, 'resistance'), list });
}

function reachIn(page: SoilPage, curve: StudyDepthCurve): string {
  const { sentence } = page;
  const { fromM, toM, already } = reachLength(curve, limitOhm);
  const condition = conditionName(curve.condition);
  if (already) return sentence(deeper.already, { condition });
  const length = (m: number) => figureOf(page, m, 'length', 2);
  const longest = length(curve.points.at(-1)!.lengthM);
  if (fromM === null) return sentence(deeper.never, { longest, condition });
  if (toM === null) return sentence(deeper.perhaps, { longest, length: length(fromM), condition });
  return sentence(deeper.reachAt, { length: figureOf(page, { low: fromM, high: toM }, 'length', 2), condition });
}

/** Twice the length and hardly fewer ohms: worse soil below. */
function hardly({ points, lengthM }: StudyDepthCurve): readonly string[] {
  const own = points.find((p) => p.lengthM === lengthM)?.ohm.value ?? null;
  if (own === null || lengthM === null) return [];
  const twice = nearest(points, (p) => p.lengthM, 2 * lengthM);
  const isTwice = twice.lengthM > 1.7 * lengthM;
  return isTwice && (twice.ohm.value ?? 0) > hardlyLess * own ? [deeper.barely] : [];
}
const hardlyLess = 0.75;

function moreLines(page: SoilPage, { electrode, points }: StudySpacingGain): readonly string[] {
  const { sentence } = page;
  if (points.length === 0) return [];
  const curve = page.study.earth.depthCurves.find((c) => c.electrode === electrode);
  const lengthM = curve?.lengthM ?? null;
  const list = toldSpacings(points, lengthM)
    .map((p) => sentence(more.at, { gain: percent(p.gainShare), distanceM: p.spacingM }))
    .join('; ');
  const useful = points.find((p) => p.gainShare >= usefulShare * half) ?? null;
  const condition = conditionName(curve?.condition ?? asTyped);
  return [
    [
      sentence(more.one, { electrode, list, half: percent(half) }),
      useful === null
        ? more.notUseful
        : sentence(more.useful, { both: ohmOf(single(useful.ohm)), distanceM: useful.spacingM, condition }),
    ].join(' '),
  ];
}

function single(ohm: number) {
  return { value: ohm, low: ohm, high: ohm };
}

function toldSpacings(points: StudySpacingGain['points'], lengthM: number | null): StudySpacingGain['points'] {
  const middle = points[Math.floor(points.length / 2)]!;
  const own = lengthM === null ? [middle] : [1, 2].map((times) => nearest(points, (p) => p.spacingM, times * lengthM));
  return [...new Set([points[0]!, ...own, points.at(-1)!])];
}

/** How many: one, two, three and so on in a line, and where that comes down to the limit. */
function countLines(page: SoilPage, { electrode, spacingM, ohm }: StudyRodLine): readonly string[] {
  const { sentence } = page;
  const unsolved = ohm.indexOf(null);
  const known = (unsolved < 0 ? ohm : ohm.slice(0, unsolved)).flatMap((figure) => (figure === null ? [] : [figure]));
  if (known.length < 2) return [];
  const curve = page.study.earth.depthCurves.find((c) => c.electrode === electrode);
  const list = known.map((figure) => String(Number(figure.toPrecision(2))));
  const condition = conditionName(curve?.condition ?? asTyped);
  const line = sentence(more.line, { electrode, distanceM: spacingM, list, count: known.length, condition });
  const limit = figureOf(page, limitOhm, 'resistance');
  const enough = known.findIndex((figure) => figure <= limitOhm);
  // n joined rods are never below the n-th part of one: each only lifts the soil round the others.
  const least = String(Math.ceil(known[0]! / limitOhm));
  if (enough === 0) return [line];
  const last =
    enough < 0 ? sentence(more.atLeast, { limit, count: least }) : sentence(more.enough, { limit, count: enough + 1 });
  return [`${line} ${last}`];
}

/** Said once, where neither a longer rod nor more of them comes down to the limit in the likely soil. */
function outOfReach(page: SoilPage): readonly string[] {
  const { depthCurves, rodLines } = page.study.earth;
  const now = depthCurves.filter((c) => c.condition === depthCurves[0]?.condition);
  const tried = [...rodLines.flatMap((l) => l.ohm), ...now.flatMap((c) => c.points.map((p) => p.ohm.value))].filter(
    (ohm) => ohm !== null,
  );
  if (tried.length === 0 || tried.some((ohm) => ohm <= limitOhm)) return [];
  const limit = figureOf(page, limitOhm, 'resistance');
  return [page.sentence(soilCommandWords.outOfReach, { limit })];
}

function nearest<T>(all: readonly T[], pick: (one: T) => number, wanted: number): T {
  return all.reduce((best, one) => (Math.abs(pick(one) - wanted) < Math.abs(pick(best) - wanted) ? one : best));
}
