import { drawingWords } from '../words/drawing-words.ts';
import { type Speech, say } from '../words/say.ts';
import { soilDrawingWords } from '../words/soil-drawing-words.ts';
import { contourStroke, drawContourLabel } from './contour-lines.ts';
import { edgeStroke, stepBar, stepLineStroke } from './contour-step.ts';
import { symbolEntries } from './diagram-legend.ts';
import { drawLegend, type LegendEntry } from './legend.ts';
import { type Run, runStroke } from './plan-runs.ts';
import { line } from './svg.ts';
import type { SymbolName } from './symbols.ts';
import { textWidth } from './text-width.ts';

const words = soilDrawingWords.contour;

/** What the map shows: its lines, then runs and symbols as on the plan; at x = 0. */
export function contourLegend(
  speech: Speech,
  shown: { readonly symbols: ReadonlySet<SymbolName>; readonly runs: readonly Run[] },
  widthMm: number,
  topMm: number,
) {
  const own: readonly LegendEntry[] = [
    { sample: levelSample, says: words.level },
    { sample: (x, y) => [line([x - 4.5, y], [x + 4.5, y], stepLineStroke)], says: words.line },
    { sample: (x, y) => stepBar([x - 3, y], [x + 3, y]), says: say(words.step, {}, speech) },
    { sample: (x, y) => [line([x - 4.5, y], [x + 4.5, y], edgeStroke)], says: words.edge },
  ];
  const bare: readonly LegendEntry[] = shown.runs.some((r) => r.look === 'bare')
    ? [{ sample: bareSample, says: say(drawingWords.legend.bare, {}, speech) }]
    : [];
  const symbols = symbolEntries(speech, (name) => shown.symbols.has(name));
  return drawLegend(drawingWords.legend.heading, [...own, ...bare, ...symbols], widthMm, topMm);
}

function levelSample(x: number, y: number) {
  const says = '20 %';
  const width = textWidth(says, 2.3) + 1;
  const rect = { x: x - width / 2, y: y - 1.45, width, height: 2.9 };
  return [line([x - 4.5, y], [x + 4.5, y], contourStroke(20)), ...drawContourLabel({ rect, says })];
}

function bareSample(x: number, y: number) {
  return [line([x - 4.5, y], [x + 4.5, y], runStroke('bare', 'yes'))];
}
