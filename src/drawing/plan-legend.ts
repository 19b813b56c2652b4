import { drawingWords } from '../words/drawing-words.ts';
import { type Speech, say } from '../words/say.ts';
import { symbolEntries } from './diagram-legend.ts';
import { drawLegend, type LegendEntry } from './legend.ts';
import { type Run, type RunLook, runStroke } from './plan-runs.ts';
import { line, text } from './svg.ts';
import { ink, type SymbolName } from './symbols.ts';

const words = drawingWords.legend;

/** Only what the plan shows; `numbered`: the runs whose number found room. */
export function planLegend(
  speech: Speech,
  shown: {
    readonly runs: readonly Run[];
    readonly numbered: readonly Run[];
    readonly symbols: ReadonlySet<SymbolName>;
  },
  widthMm: number,
  topMm: number,
) {
  const entries = [
    ...runEntries(speech, shown.runs),
    ...letterEntries(shown.numbered),
    ...symbolsShown(speech, shown.symbols),
  ];
  return drawLegend(words.heading, entries, widthMm, topMm);
}

function runEntries(speech: Speech, runs: readonly Run[]): readonly LegendEntry[] {
  const has = (look: RunLook, buried: Run['buried']) => runs.some((r) => r.look === look && r.buried === buried);
  const all = [
    {
      when: has('conductor', 'no') || has('conductor', 'unknown'),
      look: 'conductor',
      buried: 'no',
      says: words.bondAbove,
    },
    { when: has('conductor', 'yes'), look: 'conductor', buried: 'yes', says: words.bondBuried },
    { when: has('line', 'no'), look: 'line', buried: 'no', says: words.lineAbove },
    { when: has('line', 'yes'), look: 'line', buried: 'yes', says: words.lineBuried },
    { when: has('bare', 'yes'), look: 'bare', buried: 'yes', says: words.bare },
    { when: has('metal', 'no') || has('metal', 'yes'), look: 'metal', buried: 'no', says: words.metal },
    { when: has('guy', 'no'), look: 'guy', buried: 'no', says: words.guy },
  ] as const;
  return all
    .filter((e) => e.when)
    .map(({ look, buried, says }) => ({
      sample: (x: number, y: number) => [line([x - 4.5, y], [x + 4.5, y], runStroke(look, buried))],
      says: say(says, {}, speech),
    }));
}

/** What the letters before numbers mean, and the mark of what may lie in the soil. */
export function letterEntries(runs: readonly Pick<Run, 'letter' | 'buried'>[]): readonly LegendEntry[] {
  const letters: Readonly<Record<string, string>> = words.letters;
  const shown = [...new Set(runs.map((r) => r.letter))].filter((l) => l !== '').sort();
  const entries = shown.map((letter) => ({ sample: letterSample(letter), says: letters[letter] ?? letter }));
  const unsure = { sample: letterSample('?'), says: words.inSoilUnknown };
  return runs.some((r) => r.buried === 'unknown') ? [...entries, unsure] : entries;
}

function letterSample(letter: string): LegendEntry['sample'] {
  return (x, y) => [text(letter, { x: x - 1, y: y + 0.9, 'font-size': 2.5, 'font-weight': 'bold', fill: ink })];
}

function symbolsShown(speech: Speech, symbols: ReadonlySet<SymbolName>): readonly LegendEntry[] {
  return symbolEntries(speech, (name) => symbols.has(name));
}
