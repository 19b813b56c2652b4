import { expect } from 'vitest';
import { readSite } from '../../src/site/read-site.ts';
import type { Site } from '../../src/site/site.ts';

/** The site of a text that has to be good. */
export function siteOf(text: string): Site {
  const { site, problems } = readSite(text, 'text.site.yaml');
  expect(problems).toEqual([]);
  return site!;
}

/** Keys of the questions that a good text raises, each with its path. */
export function questionsOf(text: string): readonly (readonly [key: string, path: string])[] {
  return siteOf(text).questions.map((q) => [q.key, q.path]);
}
