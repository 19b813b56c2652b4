import { drawingWords } from '../words/drawing-words.ts';
import { type Speech, say } from '../words/say.ts';
import { drawMark } from './draw-boxes.ts';
import { drawLegend, type LegendEntry } from './legend.ts';
import { line, type Svg, text } from './svg.ts';
import { ink, type SymbolName, symbol, symbolNames } from './symbols.ts';
import { strokeOf, type TieStyle, tieStyles } from './tie-style.ts';

const words = drawingWords.legend;

/** Ties, the mark of weak points, and the symbols of parts; guys are no bonds and not in the diagram. */
export function diagramLegend(speech: Speech, widthMm: number, topMm: number) {
  const mark: LegendEntry = { sample: (x, y) => drawMark('W1', [x - 3.5, y]), says: words.weak };
  const ties = tieStyles.map((style) => ({ sample: tieSample(style), says: say(words[style], {}, speech) }));
  return drawLegend(
    words.heading,
    [...ties, mark, ...symbolEntries(speech, (name) => name !== 'guyAnchor')],
    widthMm,
    topMm,
  );
}

export function symbolEntries(speech: Speech, isShown: (name: SymbolName) => boolean): readonly LegendEntry[] {
  return symbolNames.filter(isShown).map((name: SymbolName) => ({
    sample: (x, y) => [symbol(name, [x, y], 3.4)],
    says: say(words[name], {}, speech),
  }));
}

function tieSample(style: TieStyle): (x: number, y: number) => readonly Svg[] {
  return (x, y) => [
    line([x - 4.5, y], [x + 4.5, y], strokeOf(style)),
    ...(style === 'unknown' ? [text('?', { x: x - 0.6, y: y - 0.8, 'font-size': 2.5, fill: ink })] : []),
  ];
}
