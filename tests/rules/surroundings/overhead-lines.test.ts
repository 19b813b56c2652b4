import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const head = (region: string, units: string) =>
  `site: {name: Overhead, region: ${region}, units: ${units}, service: unknown}\n`;

/** The margin of 10 ft is that of examination question T0B06 (second-hand); 10 ft is printed beside 3 m. */
describe('antenna-clear-of-overhead-line', () => {
  const rule = 'antenna-clear-of-overhead-line';
  const site = (units: string, mast: string, line: string) =>
    `${head('us', units)}supports: {mast: {kind: mast, ${mast}}}\nmetalwork: {power: {kind: overhead power line${line}}}\n`;

  it('asks the height of the mast and 10 ft more', () => {
    expect(verdictsOf(rule, site('ft', 'height: 40 ft, near: [{part: power, distance: 51 ft}]', ''))).toEqual([
      'met mast power: clear',
    ]);
    expect(verdictsOf(rule, site('ft', 'height: 40 ft, near: [{part: power, distance: 49 ft}]', ''))).toEqual([
      'not met mast power: near',
    ]);
  });

  it('asks it in metres, by places on the plan as well as by a typed distance', () => {
    const route = (east: number) => `, route: [[${east}, -20], [${east}, 20]]`;
    expect(verdictsOf(rule, site('m', 'height: 10 m, at: [0, 0]', route(13.1)))).toEqual(['met mast power: clear']);
    expect(verdictsOf(rule, site('m', 'height: 10 m, at: [0, 0]', route(12.9)))).toEqual(['not met mast power: near']);
  });

  it('counts what stands upright on the mast, where it was typed', () => {
    const near = 'height: 10 ft, near: [{part: power, distance: 25 ft}]';
    const on = (antenna: string) => `${site('ft', near, '')}antennas: {whip: {${antenna}}}\n`;
    expect(verdictsOf(rule, on('kind: vertical, on: mast@top'))).toEqual(['met mast power: clear']);
    expect(verdictsOf(rule, on('kind: vertical, on: mast@top, length: 20 ft'))).toEqual([
      'not met mast power: in reach',
    ]);
    expect(verdictsOf(rule, on('kind: yagi, on: mast@top, length: 20 ft'))).toEqual(['met mast power: clear']);
    expect(verdictsOf(rule, on('kind: yagi, on: mast@top, height: 16 ft'))).toEqual(['not met mast power: near']);
  });

  it('cannot tell without a distance, without a height, or with a rough distance', () => {
    expect(verdictsOf(rule, site('ft', 'height: 40 ft', ''))).toEqual(['cannot tell mast power: distance unknown']);
    // never a tape beside a power line
    expect(findingsOf(rule, site('ft', 'height: 40 ft', '')).findings[0]!.tool).toBe('eyes');
    expect(verdictsOf(rule, site('ft', 'near: [{part: power, distance: 60 ft}]', ''))).toEqual([
      'cannot tell mast power: height unknown',
    ]);
    expect(verdictsOf(rule, site('ft', 'height: 40 ft, near: [{part: power, distance: 45 to 60 ft}]', ''))).toEqual([
      'cannot tell mast power: not exact',
    ]);
  });

  it('needs no height where the line is nearer than the margin', () => {
    expect(verdictsOf(rule, site('ft', 'near: [{part: power, distance: 9 ft}]', ''))).toEqual([
      'not met mast power: near',
    ]);
  });

  it('counts a service drop that hangs free, and asks where somebody does not know', () => {
    const drop = (overhead: string) =>
      `${head('us', 'ft')}supports: {mast: {kind: mast, height: 30 ft, near: [{part: drop, distance: 20 ft}]}}\nlines: {drop: {kind: mains, path: [street, unknown], overhead: ${overhead}}}\n`;
    expect(verdictsOf(rule, drop('yes'))).toEqual(['not met mast drop: in reach']);
    expect(verdictsOf(rule, drop('unknown'))).toEqual(['cannot tell drop mast: not exact']);
    expect(findingsOf(rule, drop('no')).outcome).toBe('not looked at');
  });

  it('is not asked of trees and walls, nor where no line hangs overhead', () => {
    const tree = site('ft', 'height: 40 ft', '').replace('kind: mast', 'kind: tree');
    expect(findingsOf(rule, tree).outcome).toBe('not applicable');
    expect(findingsOf(rule, `${head('us', 'ft')}supports: {mast: {kind: mast}}\nmetalwork: none\n`).outcome).toBe(
      'not applicable',
    );
  });

  it('is practice outside the United States, a hazard everywhere', () => {
    const iec = site('m', 'height: 10 m, near: [{part: power, distance: 5 m}]', '').replace(
      'region: us',
      'region: iec',
    );
    const [finding] = findingsOf(rule, iec).findings;
    expect([finding!.family, finding!.severity, finding!.outcome]).toEqual(['practice', 'hazard', 'not met']);
  });
});

/** NFPA 70 810.18(A), restated in a city ordinance: 2 ft up to 250 V, 10 ft above. */
describe('lead-in-clear-of-power', () => {
  const rule = 'lead-in-clear-of-power';
  const site = (near: string, power = '', region = 'us') => `${head(region, 'ft')}
antennas: {dipole: {kind: half-wave dipole}}
lines: {coax: {kind: coax, path: [dipole, unknown], near: [{part: power${near}}]}}
metalwork: {power: {kind: overhead power line${power}}}
`;

  it('asks 2 ft of 240 V and 10 ft of 7.2 kV, typed in feet and in metres', () => {
    const low = ', voltage: 240 V';
    const high = ', voltage: 7.2 kV';
    expect(verdictsOf(rule, site(', distance: 2.1 ft', low))).toEqual(['met coax power: clear']);
    expect(verdictsOf(rule, site(', distance: 0.59 m', low))).toEqual(['not met coax power: near']);
    expect(verdictsOf(rule, site(', distance: 10 ft', high))).toEqual(['met coax power: clear']);
    expect(verdictsOf(rule, site(', distance: 2.9 m', high))).toEqual(['not met coax power: near']);
  });

  it('needs the voltage only between the two', () => {
    expect(verdictsOf(rule, site(', distance: 11 ft'))).toEqual(['met coax power: clear']);
    expect(verdictsOf(rule, site(', distance: 1 ft'))).toEqual(['not met coax power: near']);
    expect(verdictsOf(rule, site(', distance: 5 ft'))).toEqual(['cannot tell coax power: voltage unknown']);
  });

  it('cannot tell without a distance, unless the line is too short to get there', () => {
    expect(verdictsOf(rule, site(''))).toEqual(['cannot tell coax power: distance unknown']);
    expect(findingsOf(rule, site('')).findings[0]!.tool).toBe('eyes');
    const placed = (length: number) => `${head('us', 'm')}antennas: {dipole: {kind: half-wave dipole, at: [0, 0]}}
lines: {coax: {kind: coax, path: [dipole, unknown], length: ${length} m}}
metalwork: {power: {kind: overhead power line, route: [[30, -9], [30, 9]]}}
`;
    expect(verdictsOf(rule, placed(26))).toEqual(['met coax power: clear']);
    expect(verdictsOf(rule, placed(28))).toEqual(['cannot tell coax power: voltage unknown']);
    expect(verdictsOf(rule, placed(31))).toEqual(['cannot tell coax power: distance unknown']);
  });

  it('is asked in the United States, of lead-ins from outdoors, beside a line overhead', () => {
    expect(findingsOf(rule, site(', distance: 1 ft', '', 'iec')).outcome).toBe('not applicable');
    const indoors = site('').replace('half-wave dipole', 'half-wave dipole, where: inside');
    expect(findingsOf(rule, indoors).outcome).toBe('not applicable');
    expect(findingsOf(rule, `${head('us', 'ft')}metalwork: none\n`).outcome).toBe('not looked at');
  });
});

/** NFPA 70 (2008) 810.12. */
describe('not-on-service-mast', () => {
  const rule = 'not-on-service-mast';
  const site = (antenna: string, line = 'path: [whip, unknown]', region = 'us') => `${head(region, 'ft')}
supports: {own: {kind: mast}, pole: {kind: wood pole, owner: utility}}
antennas: {whip: {kind: vertical${antenna}}}
lines: {coax: {kind: coax, ${line}}}
metalwork: {riser: {kind: service mast}}
`;

  it('finds an antenna and a lead-in on what belongs to the power service', () => {
    expect(verdictsOf(rule, site(', on: pole@20 ft'))).toEqual(['not met whip: attached']);
    expect(verdictsOf(rule, site(', on: own@20 ft', 'path: [whip, {bond: pole@10 ft}, unknown]'))).toEqual([
      'not met coax: attached',
      'met whip: elsewhere',
    ]);
    expect(verdictsOf(rule, site(', on: riser', 'path: [whip, unknown]'))).toEqual(['not met whip: attached']);
    // a mast of its own that is clamped to it
    const clamped = site(', on: own@top').replace('own: {kind: mast}', 'own: {kind: mast, on: riser}');
    expect(verdictsOf(rule, clamped)).toEqual(['not met whip: attached']);
  });

  it('cannot tell what nobody said, and lets an antenna indoors be', () => {
    expect(verdictsOf(rule, site(''))).toEqual(['cannot tell whip: nobody said']);
    expect(verdictsOf(rule, site(', where: inside'))).toEqual([]);
  });

  it('is not asked where nothing of the power service is in the file', () => {
    const bare = (metalwork: string) => `${head('us', 'ft')}antennas: {whip: {kind: vertical}}\n${metalwork}`;
    expect(findingsOf(rule, bare('')).outcome).toBe('not looked at');
    expect(findingsOf(rule, bare('metalwork: none\n')).outcome).toBe('not applicable');
  });
});

everyOutcome('not-on-service-mast');

describe('each figure on both sides', () => {
  // a mast of 10 m (40 ft): 13 m and 50 ft are 3 m and 10 ft beyond it
  const fall = (height: string, units: string) => (distance: string) =>
    `${head('us', units)}supports: {mast: {kind: mast, height: ${height}, near: [{part: power, distance: ${distance}}]}}
metalwork: {power: {kind: overhead power line}}
`;
  eitherSide('antenna-clear-of-overhead-line', fall('10 m', 'm'), [['13 m', '12.95 m']]);
  eitherSide('antenna-clear-of-overhead-line', fall('40 ft', 'ft'), [['50 ft', '49.7 ft']]);
  const lead = (voltage: string) => (distance: string) =>
    `${head('us', 'ft')}
antennas: {dipole: {kind: half-wave dipole}}
lines: {coax: {kind: coax, path: [dipole, unknown], near: [{part: power, distance: ${distance}}]}}
metalwork: {power: {kind: overhead power line, voltage: ${voltage}}}
`;
  eitherSide('lead-in-clear-of-power', lead('240 V'), [
    ['2 ft', '1.95 ft'],
    ['0.6 m', '0.59 m'],
  ]);
  eitherSide('lead-in-clear-of-power', lead('7.2 kV'), [
    ['10 ft', '9.8 ft'],
    ['3 m', '2.95 m'],
  ]);
});

everyOutcome('antenna-clear-of-overhead-line');
everyOutcome('lead-in-clear-of-power');
