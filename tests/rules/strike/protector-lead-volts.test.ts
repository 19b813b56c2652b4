import { expect, it, test } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const rule = 'protector-lead-volts';
const site = (spd: string, conductors = '') => `
site: {name: Leads, region: us, units: m, service: main}
electrodes: {R1: {kind: rod, length: 8 ft}}
bars: {bar: {kind: other}}
arresters: {spd: {kind: mains protector${spd}}}
equipment: {main: {kind: service panel}}
conductors: {c0: {from: main, to: R1, wire: 4 AWG copper, length: 1 m}, c1: {from: main, to: bar, wire: 4 AWG copper, length: 1 m}${conductors}}
`;

// half a metre, 1 µH/m, 1 kA/µs: 500 V
it.each([
  [', on: bar', 'met spd: bolted'],
  [', on: bar, lead: unknown', 'cannot tell spd: lead unknown'],
  [', on: bar, lead: 0.50 m', 'met spd: short'],
  [', on: bar, lead: 0.51 m', 'not met spd: long'],
  [', on: bar, lead: 0.4 to 0.6 m', 'cannot tell spd: lead unknown'],
])('%s: %s', (spd, expected) => expect(verdictsOf(rule, site(spd))).toEqual([expected]));

test('a typed lead that is too long stands beneath the finding of practice', () => {
  const { findings } = findingsOf(rule, site(', on: bar, lead: 2 m'));
  expect(findings.map((f) => [f.outcome, f.severity, f.under, f.measured?.value])).toEqual([
    ['not met', 'advice', 'arrester-lead-short:spd', { low: 2000, high: 2000 }],
  ]);
});

/** By hand, 2 mm across: 2e-7 l (ln(2 l / 1 mm) - 1): 0.41 m 0.468 µH, 0.46 m 0.536 µH. */
test('of a wire from a protector that stands alone, by its own inductance; the shortest counts', () => {
  const wire = (name: string, length: string) =>
    `, ${name}: {from: spd, to: bar, wire: round 2 mm copper, length: ${length}}`;
  expect(verdictsOf(rule, site('', wire('c2', '0.41 m')))).toEqual(['met spd: short']);
  expect(verdictsOf(rule, site('', wire('c2', '0.46 m')))).toEqual(['not met spd: long']);
  expect(verdictsOf(rule, site('', wire('c2', '3 m') + wire('c3', '0.2 m')))).toEqual(['met spd: short']);
  expect(verdictsOf(rule, site('', wire('c2', 'unknown')))).toEqual(['cannot tell spd: lead unknown']);
  expect(verdictsOf(rule, site('', wire('c2', '3 m') + wire('c3', 'unknown')))).toEqual([
    'cannot tell spd: lead unknown',
  ]);
});

test('not asked of a protector that nothing bonds: that is another finding', () => {
  expect(findingsOf(rule, site('')).outcome).toBe('not applicable');
});

everyOutcome('protector-lead-volts');
