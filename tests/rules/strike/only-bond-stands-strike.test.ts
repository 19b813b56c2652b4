import { expect, it, test } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const rule = 'only-bond-stands-strike';
const site = (conductors: string) => `
site: {name: Mast, region: us, units: m, service: unknown}
electrodes: {R1: {kind: rod, length: 8 ft}, R2: {kind: rod, length: 8 ft}}
supports: {mast: {kind: mast, height: 9 m, metal: galvanised steel, sections: one piece}}
conductors: {${conductors}}
`;
const lead = (wire: string) => site(`c1: {from: mast@base, to: R1, wire: ${wire}, length: 2 m}`);

/**
 * The usual table of temperature rise (IEC 62305-1 annex D, from memory; 2.5 MJ/ohm): copper 4 mm² melts, 10 mm² rises by
 * 169 K; aluminium 10 mm² by 564 K; steel 10 mm² melts, 16 mm² by 1120 K; stainless 16 mm² melts, 50 mm² by 190 K.
 */
it.each([
  ['4 mm2 copper', 'not met c1: melts'],
  ['10 mm2 copper', 'met c1: stands'],
  ['10 mm2 aluminium', 'met c1: stands'],
  ['10 mm2 galvanised steel', 'not met c1: melts'],
  ['16 mm2 galvanised steel', 'met c1: stands'],
  ['16 mm2 stainless steel', 'not met c1: melts'],
  ['50 mm2 stainless steel', 'met c1: stands'],
])('%s as the only bond: %s', (wire, expected) => expect(verdictsOf(rule, lead(wire))).toEqual([expected]));

/**
 * Boundary by hand, copper: rise = (exp(alpha W rho / (gamma C q²)) - 1) / alpha with alpha 3.92e-3, rho 17.8e-9, gamma 8920,
 * C 385; to 1060 K: ln(1 + 3.92e-3 x 1060) = 1.6402, q² = 3.92e-3 x 2.5e6 x 17.8e-9 / (8920 x 385 x 1.6402) = 3.0969e-11,
 * q = 5.565 mm².
 */
test('copper melts below 5.565 mm² and not above: 10 AWG, the least of the code, does', () => {
  expect(verdictsOf(rule, lead('5.55 mm2 copper'))).toEqual(['not met c1: melts']);
  expect(verdictsOf(rule, lead('5.58 mm2 copper'))).toEqual(['met c1: stands']);
  expect(verdictsOf(rule, lead('10 AWG copper'))).toEqual(['not met c1: melts']);
  expect(verdictsOf(rule, lead('8 AWG copper'))).toEqual(['met c1: stands']);
});

test('stands beneath the clause that asks a section which stands a stroke, and beside one whose section melts', () => {
  const under = (region: string, wire: string) =>
    findingsOf(rule, lead(wire).replace('region: us', `region: ${region}`)).findings[0]!.under;
  expect(under('iec', '4 mm2 copper')).toBe('antenna-earthing-size-iec:c1');
  expect(under('uk', '10 mm2 galvanised steel')).toBe('antenna-earthing-size-iec:c1');
  // 12 AWG is less than the clause asks, 10 AWG is what it asks: both melt
  expect(under('us', '12 AWG copper')).toBeNull();
  expect(under('us', '10 AWG copper')).toBeNull();
  const beyond = lead('16 mm2 copper')
    .replace('region: us', 'region: iec')
    .replace('to: R1,', 'to: bar,')
    .replace(
      'conductors: {',
      'bars: {bar: {kind: other}}\nconductors: {c2: {from: bar, to: R1, wire: 4 mm2 copper, role: bond}, ',
    );
  const found = findingsOf(rule, beyond).findings.find((f) => f.at[0] === 'c2')!;
  expect([found.outcome, found.under]).toEqual(['not met', 'path-minimum-area:c2']);
});

test('a second bond takes its part', () => {
  const second = 'c2: {from: mast@base, to: R2, wire: 10 AWG copper, length: 2 m}';
  expect(verdictsOf(rule, site(`c1: {from: mast@base, to: R1, wire: 10 AWG copper, length: 2 m}, ${second}`))).toEqual([
    'met c1: shares',
    'met c2: shares',
  ]);
});

test('what is not known', () => {
  expect(verdictsOf(rule, lead('unknown'))).toEqual(['cannot tell c1: size unknown']);
  expect(verdictsOf(rule, lead('4 to 10 mm2 copper'))).toEqual(['cannot tell c1: size unknown']);
  expect(verdictsOf(rule, lead('10 AWG'))).toEqual(['cannot tell c1: metal unknown']);
  expect(verdictsOf(rule, lead('10 AWG copper-clad steel'))).toEqual(['cannot tell c1: metal not listed']);
  const perhaps = 'c2: {from: mast@base, to: R2, wire: 6 AWG copper, length: 2 m, present: unknown}';
  const both = site(`c1: {from: mast@base, to: R1, wire: 10 AWG copper, length: 2 m}, ${perhaps}`);
  expect(verdictsOf(rule, both)).toContain('cannot tell c1: perhaps not alone');
});

test('a lead that reaches no soil shares with no other bond', () => {
  const floating = (to: string, more = '') =>
    `${site(`c1: {from: mast@base, to: ${to}, wire: 10 AWG copper, length: 2 m, role: mast lead}`)}bars: {b: {kind: other}}\n${more}`;
  expect(findingsOf(rule, floating('b')).outcome).toBe('not applicable');
  expect(verdictsOf(rule, floating('unknown'))).toEqual(['cannot tell c1: perhaps not alone']);
});

test('not asked where nothing leads from a support to the soil', () => {
  const apart = site('c1: {from: R1, to: R2, wire: 10 AWG copper, length: 2 m}');
  expect(findingsOf(rule, apart).outcome).toBe('not applicable');
});

everyOutcome('only-bond-stands-strike');
