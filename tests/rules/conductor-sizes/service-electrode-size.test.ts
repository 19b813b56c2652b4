import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

/** A service panel and one wire to what is named; `service` is the size of the service conductors, where it is known. */
const site = (electrodes: string, to: string, wire: string, service = '', region = 'us') =>
  `site: {name: Service, region: ${region}, units: ft, service: panel}
electrodes: ${electrodes}
equipment: {panel: {kind: service panel${service === '' ? '' : `, service_wire: ${service}`}}}
conductors: {gec: {from: panel, ${to}, wire: ${wire}}}
`;

/** NFPA 70 250.66(A): a wire to rods alone need not exceed 6 AWG copper or 4 AWG aluminium (second-hand). */
describe('rod-only-conductor-size', () => {
  const rule = 'rod-only-conductor-size';
  const rod = (wire: string, service = '') => verdictsOf(rule, site('{R: {kind: rod}}', 'to: R', wire, service));

  it('6 AWG copper is enough for any service, in both ways of writing it', () => {
    expect(rod('6 AWG copper')).toEqual(['met gec: enough']);
    expect(rod('13.3 mm2 copper')).toEqual(['met gec: enough']);
    expect(rod('13.2 mm2 copper', '4/0 AWG copper')).toEqual(['not met gec: small']);
  });

  it('asks 4 AWG of aluminium', () => {
    expect(rod('4 AWG aluminum')).toEqual(['met gec: enough']);
    expect(rod('6 AWG aluminum', '4/0 AWG copper')).toEqual(['not met gec: small']);
  });

  it('less is enough where the table asks less: 8 AWG for a service of at most 2 AWG copper (table 250.66, from memory)', () => {
    expect(rod('8 AWG copper', '2 AWG copper')).toEqual(['met gec: enough']);
    expect(rod('8 AWG copper', '1/0 AWG aluminum')).toEqual(['met gec: enough']);
    expect(rod('8 AWG copper', '1 AWG copper')).toEqual(['not met gec: small']);
  });

  it('cannot tell of 8 AWG where nobody said how thick the service is; 10 AWG is too thin for any', () => {
    expect(rod('8 AWG copper')).toEqual(['cannot tell gec: service unknown']);
    expect(rod('10 AWG copper')).toEqual(['not met gec: small']);
    expect(rod('unknown')).toEqual(['cannot tell gec: size unknown']);
    // from 20 mm² (8 AWG is asked) to 40 mm² (6 AWG)
    expect(rod('8 AWG copper', '20 to 40 mm2 copper')).toEqual(['cannot tell gec: service unknown']);
    expect(rod('10 AWG copper', '20 to 40 mm2 copper')).toEqual(['not met gec: small']);
  });

  it('a wire that goes on to a ring is not judged by its rod', () => {
    const both = site(
      '{R: {kind: rod}, ring: {kind: buried wire, closed: yes, wire: 2 AWG copper}}',
      'passes: [R], to: ring',
      '6 AWG copper',
      '4/0 AWG copper',
    );
    expect(verdictsOf(rule, both)).toEqual([]);
    expect(verdictsOf('ring-conductor-size', both)).toEqual(['not met gec: small']);
  });

  it('is not asked elsewhere, nor without such a wire', () => {
    expect(findingsOf(rule, site('{R: {kind: rod}}', 'to: R', '8 AWG copper', '', 'iec')).outcome).toBe(
      'not applicable',
    );
    expect(findingsOf(rule, site('{F: {kind: concrete-encased}}', 'to: F', '6 AWG copper')).outcome).toBe(
      'not applicable',
    );
    expect(findingsOf(rule, 'site: {name: Bare, region: us, service: unknown}\n').outcome).toBe('not looked at');
  });
});

/** NFPA 70 250.66(B): 4 AWG copper (second-hand). */
it('concrete-only-conductor-size: 4 AWG copper for any service, less by the table', () => {
  const rule = 'concrete-only-conductor-size';
  const footing = (wire: string, service = '') =>
    verdictsOf(rule, site('{F: {kind: concrete-encased}}', 'to: F', wire, service));
  expect(footing('4 AWG copper')).toEqual(['met gec: enough']);
  expect(footing('21.2 mm2 copper')).toEqual(['met gec: enough']);
  expect(footing('21.1 mm2 copper', '4/0 AWG copper')).toEqual(['not met gec: small']);
  expect(footing('6 AWG copper')).toEqual(['cannot tell gec: service unknown']);
  expect(footing('6 AWG copper', '1/0 AWG copper')).toEqual(['met gec: enough']);
  expect(footing('4 AWG aluminum')).toEqual(['cannot tell gec: metal not listed']);
});

/** NFPA 70 250.66(C): no thicker than the ring (from memory). */
it('ring-conductor-size: as thick as the ring, less by the table', () => {
  const rule = 'ring-conductor-size';
  const ring = (wire: string, ringWire: string, service = '') =>
    verdictsOf(rule, site(`{ring: {kind: buried wire, closed: yes, wire: ${ringWire}}}`, 'to: ring', wire, service));
  expect(ring('2 AWG copper', '2 AWG copper')).toEqual(['met gec: enough']);
  expect(ring('33.4 mm2 copper', '33.6 mm2 copper', '500 mm2 copper')).toEqual(['not met gec: small']);
  expect(ring('4 AWG copper', '2 AWG copper')).toEqual(['cannot tell gec: service unknown']);
  expect(ring('2 AWG copper', 'unknown')).toEqual(['cannot tell gec: service unknown']);
  expect(ring('3/0 AWG copper', 'unknown')).toEqual(['met gec: enough']);
  // 500 kcmil asks 1/0 AWG by the table; a ring of 2 AWG asks no more than itself
  expect(ring('2 AWG copper', 'unknown', '500 kcmil copper')).toEqual(['cannot tell gec: ring unknown']);
  expect(ring('2 AWG copper', '2 AWG copper', '500 kcmil copper')).toEqual(['met gec: enough']);
  expect(ring('10 AWG copper', 'unknown', '500 kcmil copper')).toEqual(['not met gec: small']);
  expect(ring('1/0 AWG copper', 'unknown', '500 kcmil copper')).toEqual(['met gec: enough']);
});

/** NFPA 70 table 250.66 (from memory): 8 AWG to 3/0 copper by the service. */
it('service-conductor-size: a pipe or a frame by the table', () => {
  const rule = 'service-conductor-size';
  const pipe = (wire: string, service = '') =>
    verdictsOf(rule, site('{W: {kind: water pipe}}', 'to: W', wire, service));
  expect(pipe('4 AWG copper', '2/0 AWG copper')).toEqual(['met gec: enough']);
  expect(pipe('4 AWG copper', '4/0 AWG copper')).toEqual(['not met gec: small']);
  expect(pipe('2 AWG copper', '4/0 AWG copper')).toEqual(['met gec: enough']);
  expect(pipe('33.6 mm2 copper', '107 mm2 copper')).toEqual(['met gec: enough']);
  expect(pipe('4 AWG copper')).toEqual(['cannot tell gec: service unknown']);
  // a wire in a trench that nobody said closes to a ring; as a ring it asks no more than its own size
  const trench = (closed: string) =>
    verdictsOf(
      rule,
      site(`{W: {kind: buried wire, wire: 2 AWG copper${closed}}}`, 'to: W', '2 AWG copper', '500 kcmil copper'),
    );
  expect(trench('')).toEqual(['cannot tell gec: perhaps a ring']);
  expect(trench(', closed: no')).toEqual(['not met gec: small']);
  expect(trench(', closed: yes')).toEqual([]);
  expect(pipe('3/0 AWG copper')).toEqual(['met gec: enough']);
  expect(pipe('10 AWG copper')).toEqual(['not met gec: small']);
});

describe('sizes on each side, for a service of 4/0 AWG copper', () => {
  const wire = (electrode: string) => (figure: string) =>
    site(`{E: {${electrode}}}`, 'to: E', figure, '4/0 AWG copper');
  eitherSide('rod-only-conductor-size', wire('kind: rod'), [
    ['13.3 mm2 copper', '13.2 mm2 copper'],
    ['6 AWG copper', '26 kcmil copper'],
    ['21.2 mm2 aluminum', '21 mm2 aluminum'],
    ['4 AWG aluminum', '41 kcmil aluminum'],
  ]);
  eitherSide('concrete-only-conductor-size', wire('kind: concrete-encased'), [
    ['21.2 mm2 copper', '21 mm2 copper'],
    ['4 AWG copper', '41 kcmil copper'],
  ]);

  it('none of them is asked of a wire that does not come from the service', () => {
    const tie = site('{R: {kind: rod}, S: {kind: rod}}', 'to: R', '8 AWG copper').replace('from: panel', 'from: S');
    for (const rule of ['concrete-only-conductor-size', 'ring-conductor-size', 'service-conductor-size'])
      expect(findingsOf(rule, tie).outcome).toBe('not applicable');
  });
});

everyOutcome('rod-only-conductor-size');
everyOutcome('concrete-only-conductor-size');
everyOutcome('ring-conductor-size');
everyOutcome('service-conductor-size');
