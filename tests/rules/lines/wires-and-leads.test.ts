import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const outcomeOf = (rule: string, text: string) => findingsOf(rule, text).outcome;
const head = (region: string) => `site: {name: Leads, region: ${region}, units: ft, service: unknown}\n`;

/** IEC 60364-5-53:534, from memory: 0.5 m for both sides together. */
describe('surge-device-lead', () => {
  const rule = 'surge-device-lead';
  const of = (leads: string, region = 'iec', kind = 'mains protector') =>
    `${head(region)}arresters: {spd: {kind: ${kind}${leads}}}\n`;

  it('adds both sides, in metres and in feet', () => {
    expect(verdictsOf(rule, of(', lead: 0.3 m, line_lead: 0.2 m'))).toEqual(['met spd: short']);
    expect(verdictsOf(rule, of(', lead: 0.3 m, line_lead: 0.21 m'))).toEqual(['not met spd: long']);
    expect(verdictsOf(rule, of(', lead: 1 ft, line_lead: 7.5 in'))).toEqual(['met spd: short']);
    expect(verdictsOf(rule, of(', lead: 1 ft, line_lead: 8 in'))).toEqual(['not met spd: long']);
  });

  it('finds one side too long by itself, and cannot tell where one is short', () => {
    expect(verdictsOf(rule, of(', lead: 0.6 m'))).toEqual(['not met spd: long']);
    expect(verdictsOf(rule, of(', lead: 0.1 m'))).toEqual(['cannot tell spd: unknown']);
    expect(outcomeOf(rule, of('', 'us'))).toBe('not applicable');
    expect(outcomeOf(rule, of('', 'iec', 'gas tube'))).toBe('not applicable');
  });
});

/** NFPA 70 Table 810.52, from memory: 14 AWG to 150 ft; beyond, 10 AWG copper, 12 AWG copper-clad steel. */
describe('transmit-wire-size', () => {
  const rule = 'transmit-wire-size';
  const of = (antenna: string, box = 'transceiver') =>
    `${head('us')}antennas: {wire: {kind: half-wave dipole${antenna}}}\nequipment: {box: {kind: ${box}}}\n`;

  it.each([
    ['150 ft of 14 AWG copper', ', length: 150 ft, wire: 14 AWG copper', 'met wire: thick'],
    ['16 AWG', ', length: 60 ft, wire: 16 AWG copper', 'not met wire: thin'],
    ['2.08 mm²', ', length: 45 m, wire: 2.08 mm2 copper', 'met wire: thick'],
    ['2 mm²', ', length: 45 m, wire: 2 mm2 copper', 'not met wire: thin'],
    ['151 ft of 10 AWG', ', length: 151 ft, wire: 10 AWG copper', 'met wire: thick'],
    ['151 ft of 12 AWG', ', length: 151 ft, wire: 12 AWG copper', 'not met wire: thin'],
    ['151 ft of 12 AWG clad', ', length: 151 ft, wire: 12 AWG copper-clad steel', 'met wire: thick'],
    ['151 ft of 14 AWG clad', ', length: 151 ft, wire: 14 AWG copper-clad steel', 'not met wire: thin'],
    ['46 m of 3.3 mm²', ', length: 46 m, wire: 3.31 mm2 copper', 'not met wire: thin'],
    ['a span nobody knows', ', wire: 14 AWG copper', 'cannot tell wire: unknown'],
  ])('%s', (_says, antenna, expected) => expect(verdictsOf(rule, of(antenna))).toEqual([expected]));

  it('asks nothing of receivers, of beams, or where nobody typed a wire', () => {
    expect(outcomeOf(rule, of(', wire: 18 AWG copper', 'receiver'))).toBe('not applicable');
    const house = of(', wire: 18 AWG copper', 'receiver').replace('box: {', 'panel: {kind: service panel}, box: {');
    expect(outcomeOf(rule, house)).toBe('not applicable');
    expect(outcomeOf(rule, of('').replace('half-wave dipole', 'yagi'))).toBe('not applicable');
    expect(outcomeOf(rule, of(''))).toBe('not looked at');
  });
});

/** NFPA 70 810.18(B), 810.70, second-hand: 2 in for receivers, 4 in for senders. */
describe('indoor-lead-in-separation', () => {
  const rule = 'indoor-lead-in-separation';
  const of = (spacing: string, box = 'transceiver', more = '') => `${head('us')}antennas: {a: {kind: vertical}}
equipment: {box: {kind: ${box}, where: inside}, panel: {kind: service panel}}
lines: {feed: {kind: coax, path: [a, box], along: {part: power, spacing: ${spacing}}${more}}, power: {kind: mains, path: [panel, box]}}
`;

  it('asks 4 in of a sender and 2 in of a receiver', () => {
    expect(verdictsOf(rule, of('4 in'))).toEqual(['met feed power: clear']);
    expect(verdictsOf(rule, of('3.9 in'))).toEqual(['not met feed power: near']);
    expect(verdictsOf(rule, of('100 mm'))).toEqual(['met feed power: clear']);
    expect(verdictsOf(rule, of('99 mm'))).toEqual(['not met feed power: near']);
    expect(verdictsOf(rule, of('2 in', 'receiver'))).toEqual(['met feed power: clear']);
    expect(verdictsOf(rule, of('49 mm', 'receiver'))).toEqual(['not met feed power: near']);
  });

  it('is released by a raceway, and cannot tell without a distance', () => {
    expect(verdictsOf(rule, of('1 in', 'transceiver', ', enclosure: conduit'))).toEqual(['met feed power: enclosed']);
    // a pipe that is said not to be there is none
    expect(verdictsOf(rule, of('1 in', 'transceiver', ', enclosure: none'))).toEqual(['not met feed power: near']);
    expect(verdictsOf(rule, of('unknown'))).toEqual(['cannot tell feed power: unknown']);
  });

  it('is asked where somebody says that they run together', () => {
    expect(outcomeOf(rule, of('1 in').replace(', along: {part: power, spacing: 1 in}', ''))).toBe('not applicable');
  });
});

describe('each figure on both sides', () => {
  const spd = (units: string) => (lead: string) =>
    `site: {name: Leads, region: iec, units: ${units}, service: unknown}\narresters: {spd: {kind: mains protector, lead: ${lead}, line_lead: 1 mm}}\n`;
  eitherSide('surge-device-lead', spd('m'), [['0.499 m', '0.51 m']]);
  eitherSide('surge-device-lead', spd('ft'), [['1.63 ft', '1.66 ft']]);
  const wire = (length: string) => (figure: string) =>
    `${head('us')}antennas: {wire: {kind: half-wave dipole, length: ${length}, wire: ${figure}}}\nequipment: {box: {kind: transceiver}}\n`;
  eitherSide('transmit-wire-size', wire('100 ft'), [
    ['14 AWG copper', '15 AWG copper'],
    ['2.08 mm2 copper', '2.05 mm2 copper'],
  ]);
  eitherSide('transmit-wire-size', wire('200 ft'), [
    ['10 AWG copper', '11 AWG copper'],
    ['5.26 mm2 copper', '5.2 mm2 copper'],
    ['12 AWG copper-clad steel', '13 AWG copper-clad steel'],
    ['3.31 mm2 copper-clad steel', '3.25 mm2 copper-clad steel'],
  ]);
  const beside = (box: string) => (spacing: string) =>
    `${head('us')}antennas: {a: {kind: vertical}}
equipment: {box: {kind: ${box}, where: inside}, panel: {kind: service panel}}
lines: {feed: {kind: coax, path: [a, box], along: {part: power, spacing: ${spacing}}}, power: {kind: mains, path: [panel, box]}}
`;
  eitherSide('indoor-lead-in-separation', beside('receiver'), [
    ['2 in', '1.9 in'],
    ['50 mm', '49 mm'],
  ]);
  eitherSide('indoor-lead-in-separation', beside('transceiver'), [
    ['4 in', '3.9 in'],
    ['100 mm', '99 mm'],
  ]);
});

everyOutcome('surge-device-lead');
everyOutcome('transmit-wire-size');
everyOutcome('indoor-lead-in-separation');
