import { type Interval, sum } from '../../units/interval.ts';
import { ask, below } from '../reading/report.ts';
import type { Checked } from './checked.ts';
import { sayLength } from './say-length.ts';

/** Two figures that differ by no more than this agree: each may have been rounded. */
const roundedBy = 0.01;

/** Asks about pieces that do not add up to the whole that was typed beside them. */
export function askLengths({ typed, site }: Checked): void {
  for (const { values, typed: texts, spot, fieldAt } of [...typed.parts.lines, ...typed.parts.conductors]) {
    const { length, lengths } = values;
    const pieces = lengths === null || lengths.length === 0 ? null : sum(lengths);
    if (length === null || pieces === null || agree(length, pieces)) continue;
    const said = { sum: sayLength(pieces, site), text: texts.length ?? '' };
    ask(below(spot, 'length'), fieldAt.get('length')!, 'lengths-and-length', said);
  }
}

function agree(a: Interval, b: Interval): boolean {
  return a.low <= b.high * (1 + roundedBy) && b.low <= a.high * (1 + roundedBy);
}
