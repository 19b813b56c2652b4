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

const words = soilDrawingWords.depth;
const widthMm = 180;
const namesMm = 34;
const plot: Rect = { x: 16, y: 9, width: widthMm - 16 - namesMm, height: 58 };
const underMm = 11;

/**
 * Resistance of one electrode alone against its length, as SVG text: a curve for each condition of the ground, told apart
 * by dash and marker and named at its end, a strip from low to high behind it, and the length as it is marked.
 */
export function depthChart(study: Study, electrode: string, curves: readonly StudyDepthCurve[]): string {
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
  const ownM = curves.map((c) => c.lengthM).find((l) => l !== null) ?? null;
  const drawn = curves.map((c, i) => ({ curve: c, look: curveLook(i), at: placed(c, x, y, unit.of) }));
  const legendTop = plot.y + plot.height + underMm;
  const legend = drawLegend(soilDrawingWords.legend, legendEntries(ownM !== null), widthMm, legendTop);
  const sheet = {
    widthMm,
    heightMm: legendTop + legend.heightMm,
    title: say(words.title, { electrode }, speech),
    description: say(words.description, { electrode, now: nowText(curves, speech) }, speech),
  };
  return drawing(sheet, [
    ...drawAxes(plot, x, y, { x: `${words.length}, ${unit.name}`, y: soilDrawingWords.ohm }),
    ...drawn.map(({ at, look }) => drawBand(at.low, at.high, look)),
    ...(ownM === null ? [] : ownLength(x.at(unit.of(ownM)))),
    ...drawn.flatMap(({ at, look }) => (at.value.length > 0 ? drawCurve(at.value, look) : leastOnly(at.low, look))),
    ...names(drawn),
    ...legend.children,
  ]);
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
    return end === undefined ? [] : [{ at: end, says: conditionName(curve.condition), look }];
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

function legendEntries(hasOwn: boolean): readonly LegendEntry[] {
  const own: LegendEntry = { sample: (x, y) => [line([x, y - 2], [x, y + 2], ownStroke)], says: words.own };
  const strip: LegendEntry = {
    sample: (x, y) => [element('rect', { x: x - 4.5, y: y - 1.4, width: 9, height: 2.8, ...rangeFill })],
    says: words.strip,
  };
  return hasOwn ? [own, strip] : [strip];
}

/** For those who cannot see it: each condition's range at the length as it is. */
function nowText(curves: readonly StudyDepthCurve[], speech: Speech): string {
  const lengthM = curves.map((c) => c.lengthM).find((l) => l !== null) ?? null;
  if (lengthM === null) return '';
  const list = curves.flatMap((c) => {
    const now = c.points.find((p) => Math.abs(p.lengthM - lengthM) < lengthM * 1e-3);
    const condition = conditionName(c.condition);
    return now === undefined ? [] : [say(words.nowOf, { condition, ohm: ohmRange(now.ohm) }, speech)];
  });
  return list.length === 0 ? '' : say(words.now, { lengthM, list }, speech);
}
