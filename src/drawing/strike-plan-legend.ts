import { drawingWords } from '../words/drawing-words.ts';
import { type Speech, say } from '../words/say.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { symbolEntries } from './diagram-legend.ts';
import type { DrawnRun } from './draw-runs.ts';
import { drawLegend, type LegendEntry } from './legend.ts';
import { runStroke } from './plan-runs.ts';
import { drawBolt } from './strike-bolt.ts';
import { ampere, intoSoil, type StrikeCurrent } from './strike-currents.ts';
import { currentStroke, currentWidth } from './strike-runs.ts';
import { line, text } from './svg.ts';
import { ink, type SymbolName } from './symbols.ts';

const words = strikeReportWords.plan;

export interface StrikePlanShown {
  readonly runs: readonly DrawnRun[];
  readonly currents: ReadonlyMap<string, StrikeCurrent>;
  readonly greatestA: number;
  readonly isStruckShown: boolean;
  readonly symbols: ReadonlySet<SymbolName>;
}

/** Only what the plan of currents shows: widths, dashes, the mark of the strike, symbols. */
export function strikePlanLegend(speech: Speech, shown: StrikePlanShown, widthMm: number, topMm: number) {
  const busy = shown.runs.filter((r) => (shown.currents.get(r.run.id)?.alongA ?? null) !== null);
  const struck: LegendEntry = { sample: (x, y) => [drawBolt([x - 0.3, y + 1.9], 0.65)], says: words.struck };
  const buried: LegendEntry = {
    sample: (x, y) => [line([x - 4.5, y], [x + 4.5, y], currentStroke(0.8, true))],
    says: words.buried,
  };
  const soil: LegendEntry = {
    sample: (x, y) => [text(intoSoil, { x: x - 1, y: y + 0.9, 'font-size': 2.7, fill: ink })],
    says: say(words.soil, {}, speech),
  };
  const entries = [
    ...(busy.length === 0 ? [] : widths(shown.greatestA, speech)),
    ...(busy.some((r) => r.run.buried === 'yes') ? [buried] : []),
    ...idleEntries(shown, speech),
    ...([...shown.currents.values()].some((c) => c.soilA !== null) ? [soil] : []),
    ...(shown.isStruckShown ? [struck] : []),
    ...symbolEntries(speech, (name) => shown.symbols.has(name)),
  ];
  return drawLegend(drawingWords.legend.heading, entries, widthMm, topMm);
}

/** The greatest, a third and a tenth of it, in round figures. */
function widths(greatestA: number, speech: Speech): readonly LegendEntry[] {
  return [1, 1 / 3, 1 / 10].map((share) => {
    const currentA = Number((greatestA * share).toPrecision(1));
    const stroke = currentStroke(currentWidth(currentA, greatestA), false);
    return {
      sample: (x: number, y: number) => [line([x - 4.5, y], [x + 4.5, y], stroke)],
      says: say(words.width, { currentA: ampere(currentA) }, speech),
    };
  });
}

function idleEntries({ runs, currents }: StrikePlanShown, speech: Speech): readonly LegendEntry[] {
  const idle = runs.filter((r) => (currents.get(r.run.id)?.alongA ?? null) === null);
  const sampleOf = (look: 'bare' | 'line') => (x: number, y: number) => {
    const stroke = look === 'bare' ? runStroke('bare', 'yes') : { stroke: '#a9b3bc', 'stroke-width': 0.2 };
    return [line([x - 4.5, y], [x + 4.5, y], stroke)];
  };
  const bare = { sample: sampleOf('bare'), says: say(words.bare, {}, speech) };
  const other = { sample: sampleOf('line'), says: words.idle };
  return [
    ...(idle.some((r) => r.run.look === 'bare') ? [bare] : []),
    ...(idle.some((r) => r.run.look !== 'bare') ? [other] : []),
  ];
}
