import { expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const rule = 'bond-run-short';

/** The way of a protector in a box, so far from the rod. */
const way = (
  length: string,
  kind = 'gas tube',
  bond = 'c',
) => `site: {name: Ways, region: us, units: ft, service: panel}
electrodes: {R1: {kind: rod}}
equipment: {panel: {kind: service panel}}
arresters: {a1: {kind: ${kind}, on: panel}}
conductors: {${bond}: {from: panel, to: R1, wire: 6 AWG copper, length: ${length}}}
`;

/** Ours: 1 m (3.28 ft) is advice, 20 ft (6.1 m) a defect, by analogy with NFPA 70 800.100(A)(4). */
it.each([
  ['1 m', 'met a1: short', 'advice'],
  ['1.05 m', 'not met a1: long', 'advice'],
  ['3.28 ft', 'met a1: short', 'advice'],
  ['3.4 ft', 'not met a1: long', 'advice'],
  ['20 ft', 'not met a1: long', 'advice'],
  ['20.2 ft', 'not met a1: far', 'defect'],
  ['6.09 m', 'not met a1: long', 'advice'],
  ['6.2 m', 'not met a1: far', 'defect'],
  ['5 to 7 m', 'not met a1: long', 'advice'],
  ['0.5 to 2 m', 'cannot tell a1: length unknown', 'advice'],
  ['unknown', 'cannot tell a1: length unknown', 'advice'],
])('%s: %s, %s', (length, expected, severity) => {
  expect(verdictsOf(rule, way(length))).toEqual([expected]);
  expect(findingsOf(rule, way(length)).findings[0]!.severity).toBe(severity);
});

it('the way of an antenna protector counts, that of a mains protector does not', () => {
  expect(findingsOf(rule, way('10 ft', 'mains protector')).outcome).toBe('not looked at');
  const bars = 'bars: {b: {kind: other}}\n';
  expect(findingsOf(rule, `${way('10 ft', 'mains protector')}${bars}`).outcome).toBe('not applicable');
});

everyOutcome(rule, { limits: 'where advice becomes a defect both sides are not met' });
