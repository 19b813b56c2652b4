import { expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const rule = 'mains-protector-at-panel';
const site = (path: string, unit = 'desk', more = '', service = 'panel') => `
site: {name: Mains, region: us, units: ft, service: ${service}}
antennas: {a: {kind: vertical}}
bars: {entry: {kind: entry panel, where: outside}, desk: {kind: station ground bar, where: inside}, ibt: {kind: intersystem bonding termination}}
arresters: {spd: {kind: mains protector, on: ${unit}}}
equipment: {panel: {kind: service panel}, radio: {kind: transceiver, where: inside}, lamp: {kind: lamp, where: inside}}
lines: {feed: {kind: coax, path: [a, entry, radio]}, outlet: {kind: mains, path: [${path}]}${more}}
`;
const outcomeOf = (text: string) => findingsOf(rule, text).outcome;

/** Common practice and IEC 62305-4, from memory; no threshold. */
it('asks a protector on the way of the mains, on the bar of the feed lines', () => {
  expect(verdictsOf(rule, site('panel, spd, radio'))).toEqual(['met outlet: same bar']);
  expect(verdictsOf(rule, site('panel, spd, radio', 'entry'))).toEqual(['met outlet: same bar']);
  expect(verdictsOf(rule, site('panel, spd, radio', 'ibt'))).toEqual(['not met outlet: none there']);
  expect(verdictsOf(rule, site('panel, radio'))).toEqual(['met outlet: same bar']);
  expect(verdictsOf(rule, site('panel, radio', 'ibt'))).toEqual(['not met outlet: none there']);
});

it('cannot tell what a circuit passes that nobody followed', () => {
  expect(verdictsOf(rule, site('panel, unknown, radio', 'ibt'))).toEqual(['cannot tell outlet: path unknown']);
});

it('cannot tell where nobody looked for protectors, or one may not be there', () => {
  const unlooked = site('panel, radio').replace(/arresters: .*/, '');
  expect(verdictsOf(rule, unlooked)).toEqual(['cannot tell outlet: not looked']);
  expect(verdictsOf(rule, site('panel, radio').replace(/arresters: .*/, 'arresters: none'))).toEqual([
    'not met outlet: none there',
  ]);
  expect(
    verdictsOf(rule, site('panel, radio', 'ibt').replace('service: panel', 'service: panel, incomplete: [arresters]')),
  ).toEqual(['cannot tell outlet: not looked']);
  expect(verdictsOf(rule, site('panel, radio').replace('on: desk', 'on: desk, present: unknown'))).toEqual([
    'cannot tell outlet: not looked',
  ]);
});

it('asks nothing of a lamp, of a field station, or where no feed line has a bar', () => {
  expect(outcomeOf(site('panel, lamp', 'ibt'))).toBe('not applicable');
  expect(outcomeOf(site('panel, radio', 'ibt', '', 'none'))).toBe('not applicable');
  const bare = site('panel, radio', 'ibt')
    .replace(/entry: [^}]*}, desk: [^}]*}, /, '')
    .replace('a, entry, radio', 'a, radio');
  expect(outcomeOf(bare)).toBe('not applicable');
});

everyOutcome('mains-protector-at-panel');
