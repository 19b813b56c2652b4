import { expect, it } from 'vitest';
import { ruleIds } from '../../src/rules/rule-ids.ts';
import { exampleFiles, readExample, studyOfExample } from './study-of-example.ts';

/** A rule that nobody can meet, or that always says "cannot tell", is worth nothing. */
const careful = exampleFiles().filter((file) => /^(?:good-|small\/)/.test(file));

it('looks at a careful site of each region and at small ones', () => {
  expect(careful.length).toBeGreaterThanOrEqual(6);
});

const metOn = (file: string, state: string | null) =>
  studyOfExample(file, state)
    .conditions.filter((c) => c.outcome === 'met')
    .map((c) => c.rule);

it('every rule is met on a careful site, as typed or when it is pulled for a storm', () => {
  const states = careful.filter((file) => readExample(file).site!.states.some((s) => s.id === 'storm'));
  const met = new Set([
    ...careful.flatMap((file) => metOn(file, null)),
    ...states.slice(0, 1).flatMap((file) => metOn(file, 'storm')),
  ]);
  expect(ruleIds.filter((id) => !met.has(id))).toEqual([]);
});
