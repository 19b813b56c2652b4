import { describe, expect, it } from 'vitest';
import { strikeFacts } from '../../src/facts/strike-facts.ts';
import { speechOf } from '../../src/study/speech-of.ts';
import { strikeOfFacts } from '../../src/study/strike-study.ts';
import { exampleFiles, readExample } from './study-of-example.ts';

/** Differences of the default strike of an example, and how many of them bear the mark of too long a way. */
function marksOf(file: string): { readonly all: number; readonly marked: number } {
  const { site } = readExample(file);
  const ask = { at: null, wave: null, currentA: null, between: [], named: [], mostWires: null, detail: false };
  const { differences } = strikeOfFacts(strikeFacts(site!, null, ask), site!, false, speechOf(site!));
  return { all: differences.length, marked: differences.filter((d) => d.isBeyond).length };
}

describe('the mark of too long a way', () => {
  const marks = exampleFiles().map(marksOf);
  const sum = (of: (one: (typeof marks)[number]) => number) => marks.reduce((total, one) => total + of(one), 0);

  it('stands at fewer than half of the figures of the examples', () => {
    expect(sum(({ all }) => all)).toBeGreaterThan(100);
    expect(sum(({ marked }) => marked)).toBeGreaterThan(0);
    expect(sum(({ marked }) => marked)).toBeLessThan(sum(({ all }) => all) / 2);
  });
});
