import { bracketSlips } from './bracket-slips.ts';
import { colonSlips } from './colon-slips.ts';
import { commaSlips } from './comma-slips.ts';
import { commentSlips } from './comment-slips.ts';
import { type CorrectedText, correctedText } from './corrected-text.ts';
import { lexemesOf } from './lexemes.ts';
import { markSlips } from './mark-slips.ts';
import type { Edit, Slip, Source } from './slip.ts';
import { tabSlips } from './tab-slips.ts';

const finders: readonly ((source: Source) => readonly Slip[])[] = [
  tabSlips,
  commentSlips,
  markSlips,
  commaSlips,
  colonSlips,
];

/** A slip can hide others: a comment that swallows a closing brace. What is still hidden then shows once these are mended. */
const rounds = 4;
/** A file with more of them than this has one cause, not a hundred. */
const slipLimit = 100;

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
  const source: Source = { text: corrected.text, lexemes: lexemesOf(corrected.text) };
  const found: Slip[] = [];
  const taken = [...editsOf(earlier)];
  const all = finders.flatMap((find) => find(source));
  /** Brackets are counted once nothing else is left: a comment may have swallowed the one that closes. */
  const some = all.length > 0 ? all : bracketSlips(source);
  for (const slip of some.map((s) => inOriginal(s, corrected))) {
    if (earlier.length + found.length >= slipLimit) break;
    if (slip.edits.some((edit) => taken.some((other) => overlap(edit, other)))) continue;
    found.push(slip);
    taken.push(...slip.edits);
  }
  return found;
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
