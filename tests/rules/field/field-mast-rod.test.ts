import { expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const rule = 'field-mast-rod';
const site = (conductors: string, header = 'temporary: yes') => `
site: {name: Field, region: us, units: ft, service: none, ${header}}
electrodes: {rod: {kind: rod}}
supports: {mast: {kind: mast}}
equipment: {gen: {kind: generator}}
conductors: {${conductors}}
`;
const lead = (wire: string) => `c1: {from: mast@base, to: rod, wire: ${wire}}`;
const tie = ', c2: {from: gen, to: rod, wire: 6 AWG copper}';

/** Army field grounding practice, read: 6 AWG, 13.3 mm². */
it('asks a rod, a wire of 6 AWG and a tie to the generator', () => {
  expect(verdictsOf(rule, site(lead('6 AWG copper') + tie))).toEqual(['met mast: rod']);
  expect(verdictsOf(rule, site(lead('8 AWG copper') + tie))).toEqual(['not met mast: thin']);
  expect(verdictsOf(rule, site(lead('13.3 mm2 copper') + tie))).toEqual(['met mast: rod']);
  expect(verdictsOf(rule, site(lead('13.2 mm2 copper') + tie))).toEqual(['not met mast: thin']);
  expect(verdictsOf(rule, site(lead('24 kcmil copper') + tie))).toEqual(['not met mast: thin']);
  expect(verdictsOf(rule, site(lead('6 AWG copper')))).toEqual(['not met mast: apart']);
  expect(verdictsOf(rule, site('c2: {from: gen, to: rod}'))).toEqual(['not met mast: no rod']);
  expect(findingsOf(rule, site('c2: {from: gen, to: rod}')).findings[0]!.under).toBe('mast-grounded:mast');
});

it('asks copper of that size all the way to the rod', () => {
  expect(
    verdictsOf(
      rule,
      site(`c1: {from: mast@base, to: rod, wire: 14 AWG copper}, c2: {from: gen, to: mast@base, wire: 6 AWG copper}`),
    ),
  ).toEqual(['not met mast: thin']);
  const steel = lead('6 AWG galvanised steel') + tie;
  expect(verdictsOf(rule, site(steel))).toEqual(['cannot tell mast: metal not listed']);
  expect(verdictsOf(rule, site(lead('6 AWG') + tie))).toEqual(['cannot tell mast: metal unknown']);
});

it('cannot tell of a station of which nobody knows whether it stays', () => {
  const thin = lead('8 AWG copper') + tie;
  expect(verdictsOf(rule, site(thin, 'temporary: unknown'))).toEqual(['cannot tell mast: perhaps temporary']);
  expect(verdictsOf(rule, site(lead('6 AWG copper') + tie, 'temporary: unknown'))).toEqual(['met mast: rod']);
});

it('cannot tell what is not in the file, and is asked of temporary stations', () => {
  expect(verdictsOf(rule, site(lead('unknown') + tie))).toEqual(['cannot tell mast: size unknown']);
  const partly = 'temporary: yes, incomplete: [conductors]';
  expect(verdictsOf(rule, site(lead('6 AWG copper'), partly))).toEqual(['cannot tell mast: tie unknown']);
  expect(verdictsOf(rule, site('c2: {from: gen, to: rod}', partly))).toEqual(['cannot tell mast: rod unknown']);
  expect(findingsOf(rule, site(lead('8 AWG copper'), 'temporary: no')).outcome).toBe('not applicable');
});

everyOutcome('field-mast-rod');
