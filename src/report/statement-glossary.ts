import { houseMeanings } from '../words/glossary-words.ts';
import { type Speech, say } from '../words/say.ts';
import { statementMeanings, statementWords } from '../words/statement-words.ts';
import { allTerms, term } from '../words/terms.ts';
import type { Section } from './block.ts';

interface Word {
  readonly word: string;
  readonly meaning: string;
  readonly pattern: RegExp;
}

/**
 * Meanings of the words of the tables that stand in these texts, and of those that stand in the meanings themselves: the
 * region's terms and the words of the house, by word.
 */
export function statementGlossary(texts: readonly string[], speech: Speech): Section {
  const known = tableWords(speech);
  const used = new Set<Word>();
  let unread = texts;
  while (unread.length > 0) {
    const found = known.filter((w) => !used.has(w) && unread.some((t) => w.pattern.test(t)));
    for (const w of found) used.add(w);
    unread = found.map((w) => w.meaning);
  }
  const items = [...used]
    .map(({ word, meaning }) => ({ word, meaning }))
    .sort((a, b) => (a.word < b.word ? -1 : a.word > b.word ? 1 : 0));
  return { id: 'words', heading: statementWords.words.heading, blocks: [{ is: 'definitions', items }] };
}

/** A word that two ideas share has the meaning of the first. */
function tableWords(speech: Speech): readonly Word[] {
  const terms = allTerms().map(({ idea }) => ({
    word: term(idea, speech.terms),
    meaning: say(statementMeanings[idea], {}, speech),
  }));
  const house = houseMeanings.map(([word, meaning]) => ({ word, meaning: say(meaning, {}, speech) }));
  const first = new Map([...terms, ...house].toReversed().map((w) => [w.word, w]));
  return [...first.values()].map((w) => ({ ...w, pattern: patternOf(w.word) }));
}

/** The word as a whole or in its plural; an abbreviation only as it is written. */
function patternOf(word: string): RegExp {
  const escaped = word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  const flags = word === word.toUpperCase() ? 'u' : 'iu';
  return new RegExp(`(?<![\\p{L}])${escaped}(?:s|es)?(?![\\p{L}])`, flags);
}

/** Every text of a model, drawings included: what stands between their tags. */
export function textsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return value.startsWith('<svg') ? value.split(/<[^>]*>/) : [value];
  if (Array.isArray(value)) return value.flatMap(textsIn);
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(textsIn);
}
