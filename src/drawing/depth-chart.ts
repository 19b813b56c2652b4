import type { Study } from '../study/study.ts';
import type { StudyDepthCurve } from '../study/study-earth.ts';
import { type Speech, say } from '../words/say.ts';
import { soilDrawingWords } from '../words/soil-drawing-words.ts';
import { drawAxes, fittingScale, type Scale } from './chart-axes.ts';
import {
  type CurveLook,
  curveLook,
  drawBand,
  drawCurve,
  drawEndLabels,
  rangeFill,
  strokeOfCurve,
} from './chart-curves.ts';
import { chartLength } from './chart-length.ts';
import { conditionName, ohmRange } from './chart-names.ts';
import { drawLegend, type LegendEntry } from './legend.ts';
import type { Rect } from './rect.ts';
import { speechOf } from './speech.ts';
import { drawing, element, line, type Point, polyline, type Svg } from './svg.ts';
import { ink } from './symbols.ts';
import { fitText } from './text-width.ts';

const words = soilDrawingWords.depth;
/** Two charts stand side by side on a sheet of paper. */
const widthMm = 88;
const namesMm = 21;
const plot: Rect = { x: 14, y: 9, width: widthMm - 14 - namesMm, height: 40 };
const underMm = 11;

/**
 * Resistance of electrodes alone against their length, as SVG text: curves told apart by dash and marker, those of the first
 * electrode named by their condition of the ground, those of others by the electrode; a strip from low to high behind the
 * first, and the lengths as they are marked.
 */
export function depthChart(study: Study, curves: readonly StudyDepthCurve[]): string {
  const speech = speechOf(study);
  const unit = chartLength(speech);
  const points = curves.flatMap((c) => c.points);
  const x = fittingScale(
    points.map((p) => unit.of(p.lengthM)),
    [plot.x, plot.x + plot.width],
  );
  const y = fittingScale(
    points.flatMap((p) => [p.ohm.low, p.ohm.high ?? p.ohm.value ?? p.ohm.low]),
    [plot.y + plot.height, plot.y],
  );
  const ownM = [...new Set(curves.flatMap((c) => (c.lengthM === null ? [] : [Number(c.lengthM.toFixed(3))])))];
  const drawn = curves.map((c, i) => ({ curve: c, look: curveLook(i), at: placed(c, x, y, unit.of) }));
  const legendTop = plot.y + plot.height + underMm;
  const legend = drawLegend(
    soilDrawingWords.legend,
    legendEntries(ownM.length > 0, conditionName(curves[0]!.condition), speech),
    widthMm,
    legendTop,
  );
  const sheet = {
    widthMm,
    heightMm: legendTop + legend.heightMm,
    title: say(words.title, { list: electrodesOf(curves) }, speech),
    description: say(words.description, { list: electrodesOf(curves), now: nowText(curves, speech) }, speech),
  };
  return drawing(sheet, [
    ...drawAxes(plot, x, y, { x: `${words.length}, ${unit.name}`, y: soilDrawingWords.ohm }),
    ...drawn.slice(0, 1).map(({ at, look }) => drawBand(at.low, at.high, look)),
    ...ownM.flatMap((lengthM) => ownLength(x.at(unit.of(lengthM)))),
    ...drawn.flatMap(({ at, look }) => (at.value.length > 0 ? drawCurve(at.value, look) : leastOnly(at.low, look))),
    ...names(drawn),
    ...legend.children,
  ]);
}

function electrodesOf(curves: readonly StudyDepthCurve[]): readonly string[] {
  return [...new Set(curves.map((c) => c.electrode))];
}

type Placed = ReturnType<typeof placed>;

/** A figure without an upper bound runs to the upper edge; one without a likely figure has a strip and no curve. */
function placed({ points }: StudyDepthCurve, x: Scale, y: Scale, of: (lengthM: number) => number) {
  const at = (pick: (p: StudyDepthCurve['points'][number]) => number | null) =>
    points.flatMap((p): readonly Point[] => {
      const ohm = pick(p);
      return ohm === null ? [] : [[x.at(of(p.lengthM)), y.at(ohm)]];
    });
  return { low: at((p) => p.ohm.low), high: at((p) => p.ohm.high ?? Infinity), value: at((p) => p.ohm.value) };
}

function names(drawn: readonly { readonly curve: StudyDepthCurve; readonly look: CurveLook; readonly at: Placed }[]) {
  const labels = drawn.flatMap(({ curve, look, at }) => {
    const end = at.value.at(-1) ?? at.low.at(-1);
    const isFirst = curve.electrode === drawn[0]!.curve.electrode;
    return end === undefined
      ? []
      : [{ at: end, says: isFirst ? conditionName(curve.condition) : curve.electrode, look }];
  });
  return drawEndLabels(labels, plot.x + plot.width, namesMm, [plot.y + 2, plot.y + plot.height - 1]);
}

/** Where only the least is known, the strip's edge is all there is to tell it by. */
function leastOnly(low: readonly Point[], look: CurveLook): readonly Svg[] {
  return [polyline(low, strokeOfCurve(look, 0.25))];
}

function ownLength(x: number): readonly Svg[] {
  return [line([x, plot.y], [x, plot.y + plot.height], ownStroke)];
}

const ownStroke = { stroke: ink, 'stroke-width': 0.35, 'stroke-dasharray': '0.6 0.9' } as const;

function legendEntries(hasOwn: boolean, condition: string, speech: Speech): readonly LegendEntry[] {
  const own: LegendEntry = { sample: (x, y) => [line([x, y - 2], [x, y + 2], ownStroke)], says: words.own };
  const strip: LegendEntry = {
    sample: (x, y) => [element('rect', { x: x - 4.5, y: y - 1.4, width: 9, height: 2.8, ...rangeFill })],
    says: fitText(say(words.strip, { condition }, speech), 2.5, widthMm - 34),
  };
  return hasOwn ? [own, strip] : [strip];
}

/** For those who cannot see it: each curve's range at the length as it is. */
function nowText(curves: readonly StudyDepthCurve[], speech: Speech): string {
  const list = curves.flatMap(({ electrode, condition, lengthM, points }) => {
    const now = lengthM === null ? undefined : points.find((p) => Math.abs(p.lengthM - lengthM) < lengthM * 1e-3);
    if (lengthM === null || now === undefined) return [];
    const values = { electrode, condition: conditionName(condition), lengthM, ohm: ohmRange(now.ohm) };
    return [say(words.nowOf, values, speech)];
  });
  return list.length === 0 ? '' : say(words.now, { list }, speech);
}
