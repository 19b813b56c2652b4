import { compareDrawingWords as words } from '../words/compare-drawing-words.ts';
import { drawingWords } from '../words/drawing-words.ts';
import type { Speech } from '../words/say.ts';
import { drawSign, type Fate, fateInk, fateStroke, fates } from './compare-fate.ts';
import { symbolEntries } from './diagram-legend.ts';
import { drawLegend, type LegendEntry } from './legend.ts';
import { letterEntries } from './plan-legend.ts';
import type { Run } from './plan-runs.ts';
import { circle, line } from './svg.ts';
import type { SymbolName } from './symbols.ts';

export interface CompareShown {
  readonly fates: ReadonlySet<Fate>;
  readonly symbols: ReadonlySet<SymbolName>;
  readonly isMoved: boolean;
  /** Those that bear a number, whose letters are to be explained. */
  readonly numbered: readonly Run[];
}

/** Only what the drawing shows: strokes with their signs, the mark of a former place, symbols. */
export function comparePlanLegend(speech: Speech, shown: CompareShown, widthMm: number, topMm: number) {
  const moved: LegendEntry = {
    sample: (x, y) => [
      line([x - 3, y], [x + 4, y], { stroke: fateInk.changed, 'stroke-width': 0.3, 'stroke-dasharray': '0.4 0.8' }),
      circle([x - 3, y], 0.9, { fill: '#ffffff', stroke: fateInk.changed, 'stroke-width': 0.3 }),
    ],
    says: words.moved,
  };
  const entries = [
    ...fateEntries(shown.fates),
    ...(shown.isMoved ? [moved] : []),
    ...letterEntries(shown.numbered),
    ...symbolEntries(speech, (name) => shown.symbols.has(name)),
  ];
  return drawLegend(drawingWords.legend.heading, entries, widthMm, topMm);
}

export function fateEntries(shown: ReadonlySet<Fate>): readonly LegendEntry[] {
  return fates
    .filter((fate) => shown.has(fate))
    .map((fate) => ({
      sample: (x, y) => [line([x - 4.5, y], [x + 4.5, y], fateStroke(fate)), ...drawSign(fate, [x, y], 1.8)],
      says: words.fates[fate],
    }));
}
