import { braceSlips } from './brace-slips.ts';
import { bracketSlips } from './bracket-slips.ts';
import { colonSlips } from './colon-slips.ts';
import { commaSlips } from './comma-slips.ts';
import { commentSlips } from './comment-slips.ts';
import { type CorrectedText, correctedText } from './corrected-text.ts';
import { dashSlips } from './dash-slips.ts';
import { lexemesOf } from './lexemes.ts';
import { markSlips } from './mark-slips.ts';
import { quoteSlips } from './quote-slips.ts';
import { type Edit, type Slip, type Source, slipLimit, sourceOf } from './slip.ts';
import { spaceSlips } from './space-slips.ts';
import { tabSlips } from './tab-slips.ts';

/**
 * A slip can hide others, or show as others: a comment swallows a closing brace, a colon without its space makes a name of
 * half a group. So they are looked for in this order, and the next ones only in a text that is free of those before.
 */
const phases: readonly (readonly ((source: Source) => readonly Slip[])[])[] = [
  [tabSlips, commentSlips, quoteSlips],
  [dashSlips],
  [spaceSlips],
  [braceSlips],
  [markSlips, commaSlips, colonSlips],
  [bracketSlips],
];

const rounds = 12;

export interface Slips {
  /** In the order of the file; places are those of the text as typed. */
  readonly slips: readonly Slip[];
  /** The text as it was meant, as far as the slips go. */
  readonly corrected: CorrectedText;
}

/** What YAML would silently take in another way than it was meant, and the text without it. */
export function findSlips(text: string): Slips {
  const slips: Slip[] = [];
  let corrected = correctedText(text, []);
  for (let round = 0; round < rounds; round++) {
    const found = findIn(corrected, slips);
    if (found.length === 0) break;
    slips.push(...found);
    corrected = correctedText(text, editsOf(slips));
  }
  return { slips: slips.sort((a, b) => a.at.start - b.at.start), corrected };
}

/** The slips of the corrected text, in places of the text as typed, without those that touch what was mended already. */
function findIn(corrected: CorrectedText, earlier: readonly Slip[]): readonly Slip[] {
  const source = sourceOf(corrected.text, lexemesOf(corrected.text));
  const found: Slip[] = [];
  const taken = [...editsOf(earlier)];
  for (const slip of firstFound(source).map((s) => inOriginal(s, corrected))) {
    if (earlier.length + found.length >= slipLimit) break;
    if (slip.edits.some((edit) => taken.some((other) => overlap(edit, other)))) continue;
    found.push(slip);
    taken.push(...slip.edits);
  }
  return found;
}

function firstFound(source: Source): readonly Slip[] {
  for (const finders of phases) {
    const found = finders.flatMap((find) => find(source));
    if (found.length > 0) return found;
  }
  return [];
}

function editsOf(slips: readonly Slip[]): readonly Edit[] {
  return slips.flatMap((s) => s.edits);
}

function inOriginal(slip: Slip, { originalOf }: CorrectedText): Slip {
  const moved = <S extends { start: number; end: number }>(span: S): S => {
    return { ...span, start: originalOf(span.start), end: originalOf(span.end) };
  };
  return { ...slip, at: moved(slip.at), edits: slip.edits.map(moved) };
}

function overlap(a: Edit, b: Edit): boolean {
  return a.start === b.start || (a.start < b.end && b.start < a.end);
}
