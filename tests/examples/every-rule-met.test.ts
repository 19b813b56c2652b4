import { expect, it } from 'vitest';
import { ruleIds } from '../../src/rules/rule-ids.ts';
import { exampleFiles, studyOfExample } from './study-of-example.ts';

/** A rule that nobody can meet, or that always says "cannot tell", is worth nothing. */
const careful = exampleFiles().filter((file) => /^(?:good-|small\/)/.test(file));

it('looks at a careful site of each region and at small ones', () => {
  expect(careful.length).toBeGreaterThanOrEqual(6);
});

it('every rule is met on a careful site', () => {
  const studies = careful.map((file) => studyOfExample(file));
  const met = new Set(studies.flatMap((s) => s.conditions.filter((c) => c.outcome === 'met').map((c) => c.rule)));
  expect(ruleIds.filter((id) => !met.has(id))).toEqual([]);
});
