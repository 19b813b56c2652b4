import { expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const rule = 'field-storm-rule';
const site = (header: string) => `site: {name: Field, region: us, units: ft, service: none${header}}\n`;

/** Common practice, no source; it has no threshold. */
it.each([
  [', temporary: yes, storm_plan: yes', 'met : plan'],
  [', temporary: yes, storm_plan: no', 'not met : no plan'],
  [', temporary: yes', 'cannot tell : nobody said'],
  [', temporary: unknown, storm_plan: no', 'cannot tell : nobody said'],
])('%s: %s', (header, expected) => expect(verdictsOf(rule, site(header))).toEqual([expected]));

it('is not asked of a station that stays', () => {
  expect(findingsOf(rule, site('')).outcome).toBe('not applicable');
  expect(findingsOf(rule, site(', temporary: no, storm_plan: no')).outcome).toBe('not applicable');
});

everyOutcome('field-storm-rule');
