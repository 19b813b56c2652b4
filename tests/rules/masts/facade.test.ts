import { expect, test } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const earthed = 'iec-mast-earthed';
const sized = 'antenna-earthing-size-iec';

/** A metal arm of this kind and its lead. */
const arm = (
  kind: string,
  lead: string,
  more = '',
) => `site: {name: Balcony, region: iec, units: m, service: unknown${more}}
electrodes: {E1: {kind: rod}}
supports: {arm: {kind: ${kind}, height: 6 m, metal: aluminium}}
conductors: ${lead}
`;
const lead = (wire: string) => `{c1: {from: arm, to: E1, wire: ${wire}}}`;

// IEC 60728-11: no earthing conductor at least 2 m below the roof's edge and at most 1.5 m from the wall (second-hand).
test('an arm on the face of a building may be released, a mast is not', () => {
  expect(verdictsOf(earthed, arm('building face', 'none'))).toEqual(['cannot tell arm: on facade']);
  expect(verdictsOf(earthed, arm('mast', 'none'))).toEqual(['not met arm: no way']);
});

test('so may the lead of such an arm', () => {
  const thin = lead('4 mm2 copper');
  expect(verdictsOf(sized, arm('building face', thin))).toEqual(['cannot tell c1: on facade']);
  expect(verdictsOf(earthed, arm('building face', thin))).toEqual(['met arm: earthed']);
  expect(verdictsOf(sized, arm('mast', thin))).toEqual(['not met c1: small']);
  expect(verdictsOf(earthed, arm('mast', thin))).toEqual(['met arm: earthed']);
});

test('no support, none of metal: not asked', () => {
  const wood = arm('mast', 'none').replace('metal: aluminium', 'metal: none');
  expect(findingsOf(earthed, wood).outcome).toBe('not applicable');
  expect(
    findingsOf(sized, arm('mast', '{c1: {from: E1, to: E1}}').replace('E1}}', 'E1}, c2: {from: E1, to: unknown}}'))
      .outcome,
  ).toBe('not applicable');
});

/** IEC 60728-11 (second-hand): aluminium of 25 mm² where it is insulated; the clause has no figure for it bare. */
test('bare aluminium of 25 mm² is not met: the figure is one of insulated aluminium', () => {
  const wire = (text: string, kind = 'mast') => verdictsOf(sized, arm(kind, lead(text)));
  expect(wire('25 mm2 aluminium insulated')).toEqual(['met c1: enough']);
  expect(wire('25 mm2 bare aluminium')).toEqual(['cannot tell c1: bare aluminium']);
  expect(wire('25 mm2 aluminium')).toEqual(['cannot tell c1: cover unknown']);
  expect(wire('24 mm2 aluminium')).toEqual(['not met c1: small']);
  expect(wire('24 mm2 bare aluminium', 'building face')).toEqual(['cannot tell c1: on facade']);
});

/** Trap 1 of the collection of clauses: with an antenna indoors alone, what is asked of outdoor antennas is not asked. */
test('a mast under the roof that carries indoor antennas alone needs no earthing conductor', () => {
  const attic = (wire: string, antenna = 'house') =>
    `${arm('mast', wire).replace('metal: aluminium', 'metal: aluminium, where: house')}buildings: {house: {}}
antennas: {whip: {kind: vertical, on: arm, where: ${antenna}}}
`;
  const thin = lead('4 mm2 copper');
  expect(findingsOf(earthed, attic('none')).outcome).toBe('not applicable');
  expect(findingsOf(sized, attic(thin)).outcome).toBe('not applicable');
  // its screen is bonded all the same: IEC 60728-11, 4 mm² in the open
  expect(verdictsOf('antenna-bonding-size-iec', attic(thin))).toEqual(['met c1: enough']);
  expect(verdictsOf(earthed, attic('none', 'outside'))).toEqual(['not met arm: no way']);
  expect(verdictsOf(sized, attic(thin, 'outside'))).toEqual(['not met c1: small']);
});

/** IEC 60728-11 (second-hand): 16 mm² copper, 25 mm² insulated aluminium, 50 mm² steel. 1 kcmil is 0.5067 mm². */
test.each([
  ['16 mm2 copper', 'met c1: enough'],
  ['15.9 mm2 copper', 'not met c1: small'],
  ['32 kcmil copper', 'met c1: enough'],
  ['31 kcmil copper', 'not met c1: small'],
  ['25 mm2 aluminium insulated', 'met c1: enough'],
  ['24.8 mm2 aluminium insulated', 'not met c1: small'],
  ['50 kcmil aluminium insulated', 'met c1: enough'],
  ['49 kcmil aluminium insulated', 'not met c1: small'],
  ['50 mm2 galvanised steel', 'met c1: enough'],
  ['49.7 mm2 galvanised steel', 'not met c1: small'],
  ['99 kcmil galvanised steel', 'met c1: enough'],
  ['98 kcmil galvanised steel', 'not met c1: small'],
])('%s: %s', (wire, expected) => expect(verdictsOf(sized, arm('mast', lead(wire)))).toEqual([expected]));

everyOutcome(earthed);
everyOutcome(sized);
