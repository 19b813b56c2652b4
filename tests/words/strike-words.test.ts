import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { strikeWords } from '../../src/words/strike-words.ts';

const speaker = readFileSync('src/study/strike-assumptions.ts', 'utf8');

it.each([...Object.keys(strikeWords.assumed), ...Object.keys(strikeWords.refused)])('%s is said', (key) => {
  expect(speaker).toMatch(new RegExp(`\\.${key}\\b`));
});
