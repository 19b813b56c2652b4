import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

/** A tower, a panel, a radio and their wires. */
const site = (
  wires: string,
  { header = '', region = 'us', more = '' } = {},
) => `site: {name: Station, region: ${region}, units: ft, service: unknown${header}}
electrodes: {R: {kind: rod}, S: {kind: rod}}
supports: {tower: {kind: lattice tower}}
bars: {entry: {kind: entry panel}, bar: {kind: station ground bar}}
equipment: {radio: {kind: transceiver}}
conductors: {${wires}}
${more}`;

/** NFPA 70 810.58(B) (from memory): 10 AWG copper, bronze or copper-clad steel, and no thinner than the lead-in. */
describe('transmit-protective-ground-size', () => {
  const rule = 'transmit-protective-ground-size';
  const lead = (wire: string, more = '') => site(`c: {from: tower, to: R, wire: ${wire}}`, { more });

  it('asks 10 AWG, of copper-clad steel too', () => {
    expect(verdictsOf(rule, lead('10 AWG copper'))).toEqual(['met c: enough']);
    expect(verdictsOf(rule, lead('5.2 mm2 copper'))).toEqual(['not met c: small']);
    expect(verdictsOf(rule, lead('12 AWG copper-clad steel'))).toEqual(['not met c: small']);
    expect(verdictsOf('mast-ground-size', lead('12 AWG copper-clad steel'))).toEqual(['met c: enough']);
    expect(verdictsOf(rule, lead('8 AWG aluminum'))).toEqual(['cannot tell c: metal not listed']);
  });

  it('asks as much as an open lead-in; a coaxial one asks the floor', () => {
    const line = (kind: string) => `lines: {feed: {kind: ${kind}, cable: 8 AWG copper, path: [unknown, radio]}}\n`;
    expect(verdictsOf(rule, lead('10 AWG copper', line('single wire')))).toEqual(['not met c: small']);
    expect(verdictsOf(rule, lead('8 AWG copper', line('single wire')))).toEqual(['met c: enough']);
    expect(verdictsOf(rule, lead('10 AWG copper', line('coax')))).toEqual(['met c: enough']);
  });

  it('cannot tell beside an open lead-in that nobody sized; too thin is too thin all the same', () => {
    const line = 'lines: {feed: {kind: open-wire, path: [unknown, radio]}}\n';
    expect(verdictsOf(rule, lead('10 AWG copper', line))).toEqual(['cannot tell c: lead-in unknown']);
    expect(verdictsOf(rule, lead('12 AWG copper', line))).toEqual(['not met c: small']);
  });

  it('leaves to mast-ground-size what that finds or asks', () => {
    expect(findingsOf(rule, lead('12 AWG copper')).findings[0]!.under).toBe('mast-ground-size:c');
    expect(findingsOf(rule, lead('unknown')).outcome).toBe('not looked at');
    expect(findingsOf(rule, lead('12 AWG copper').replace('transceiver', 'receiver')).outcome).toBe('not applicable');
  });
});

/** NFPA 70 810.58(C) (from memory): 14 AWG copper. */
it('transmit-operating-ground-size: 14 AWG from the transmitter', () => {
  const rule = 'transmit-operating-ground-size';
  const lead = (wire: string) => site(`c: {from: radio, to: bar, wire: ${wire}}`);
  expect(verdictsOf(rule, lead('14 AWG copper'))).toEqual(['met c: enough']);
  expect(verdictsOf(rule, lead('2 mm2 copper'))).toEqual(['not met c: small']);
  expect(verdictsOf(rule, lead('14 AWG'))).toEqual(['cannot tell c: metal unknown']);
  expect(findingsOf(rule, lead('unknown')).outcome).toBe('not looked at');
  expect(findingsOf(rule, site('c: {from: tower, to: R, wire: 16 AWG copper}')).outcome).toBe('not applicable');
  // one conductor for both purposes (810.21(I)): the larger size is asked by the rule on the mast's lead
  const both = site('c: {from: radio, to: R, passes: [tower], wire: 14 AWG copper}');
  expect(verdictsOf(rule, both)).toEqual(['met c: enough']);
  expect(verdictsOf('transmit-protective-ground-size', both)).toEqual(['not met c: small']);
});

/** Common practice: strap of 1 1/2 in (40 mm) or 6 AWG. */
describe('panel-to-rod-conductor', () => {
  const rule = 'panel-to-rod-conductor';
  const lead = (wire: string, region = 'us') => site(`c: {from: entry, to: R, wire: ${wire}}`, { region });

  it('asks a wide strap or a thick wire, everywhere', () => {
    expect(verdictsOf(rule, lead('strap 1.5 in x 0.02 in copper'))).toEqual(['met c: enough']);
    expect(verdictsOf(rule, lead('strap 1.4 in x 0.01 in copper'))).toEqual(['not met c: small']);
    expect(verdictsOf(rule, lead('strap 40 mm x 0.1 mm copper', 'iec'))).toEqual(['met c: enough']);
    expect(verdictsOf(rule, lead('6 AWG copper'))).toEqual(['met c: enough']);
    expect(verdictsOf(rule, lead('13 mm2 copper', 'iec'))).toEqual(['not met c: small']);
    expect(verdictsOf(rule, lead('strap 40 mm copper'))).toEqual(['met c: enough']);
  });

  it('stands under the code’s own size, which asks for unknown ones', () => {
    expect(findingsOf(rule, lead('12 AWG copper')).findings[0]!.under).toBe('mast-ground-size:c');
    // where it is what joins two electrodes
    const tie = lead('8 AWG copper').replace(
      'conductors: {',
      'conductors: {d: {from: entry, to: S, wire: 6 AWG copper}, ',
    );
    expect(findingsOf(rule, tie).findings.find((f) => f.at[0] === 'c')!.under).toBe('antenna-electrode-bond-size:c');
    expect(findingsOf(rule, lead('unknown')).outcome).toBe('not looked at');
    expect(findingsOf(rule, site('c: {from: tower, to: R}')).outcome).toBe('not applicable');
  });
});

/** MIL-HDBK-419A vol. II (read): 2000 cmil for each foot, 3.3 mm² for each metre. */
it('size-by-length: 10 mm² at 3 m, 20,000 cmil at 10 ft, where such a standard is named', () => {
  const rule = 'size-by-length';
  const header = ', claims: MIL-HDBK-419A';
  const bond = (wire: string, length: string) =>
    verdictsOf(rule, site(`c: {from: bar, to: entry, wire: ${wire}, length: ${length}}`, { header }));
  expect(bond('10 mm2 copper', '3 m')).toEqual(['met c: enough']);
  expect(bond('9.8 mm2 copper', '3 m')).toEqual(['not met c: small']);
  expect(bond('20 kcmil copper', '10 ft')).toEqual(['met c: enough']);
  expect(bond('19 kcmil copper', '10 ft')).toEqual(['not met c: small']);
  expect(bond('unknown', '10 ft')).toEqual(['cannot tell c: size unknown']);
  expect(findingsOf(rule, site('c: {from: bar, to: entry, wire: 14 AWG copper, length: 9 ft}')).outcome).toBe(
    'not applicable',
  );
});

/** MIL-HDBK-419A vol. II 1.13, TM 5-811-3 (read): 1/0 AWG; FAA-STD-019 (from memory): 4/0 AWG. */
it('facility-ring-size: 1/0 in defence, 4/0 in aviation', () => {
  const rule = 'facility-ring-size';
  const tie = (wire: string, claims: string) =>
    verdictsOf(rule, site(`c: {from: R, to: S, wire: ${wire}}`, { header: `, claims: ${claims}` }));
  expect(tie('1/0 AWG copper', 'MIL-HDBK-419A')).toEqual(['met c: enough']);
  expect(tie('53 mm2 copper', 'MIL-HDBK-419A')).toEqual(['not met c: small']);
  expect(tie('4/0 AWG copper', 'FAA-STD-019')).toEqual(['met c: enough']);
  expect(tie('3/0 AWG copper', 'FAA-STD-019')).toEqual(['not met c: small']);
  expect(tie('unknown', 'MIL-HDBK-419A')).toEqual(['cannot tell c: size unknown']);
  const ring = site('', { header: ', claims: MIL-HDBK-419A' }).replace(
    'R: {kind: rod}',
    'ring: {kind: buried wire, closed: yes, wire: 2 AWG copper}',
  );
  expect(verdictsOf(rule, ring)).toEqual(['not met ring: small']);
  expect(findingsOf(rule, site('c: {from: R, to: S, wire: 6 AWG copper}')).outcome).toBe('not applicable');
});

/** TIA-222: G 2/0 AWG, F 6 AWG, as users read them (second-hand). */
it('tower-lead-size: by the edition that is named', () => {
  const rule = 'tower-lead-size';
  const lead = (wire: string, edition: string) =>
    findingsOf(
      rule,
      site(`c: {from: tower, to: R, wire: ${wire}}`, { header: `, code: {document: TIA-222${edition}}` }),
    );
  const said = (wire: string, edition: string) =>
    lead(wire, edition).findings.map((f) => `${f.outcome} ${f.at.join(' ')}: ${f.because.key}`);
  expect(said('2/0 AWG tinned copper', '-G')).toEqual(['met c: enough']);
  expect(said('66 mm2 copper', '-G')).toEqual(['not met c: small']);
  // plain copper beside zinc is not what the standard has
  expect(said('2/0 AWG copper', '-G')).toEqual(['not met c: not tinned']);
  expect(said('6 AWG copper', '-F')).toEqual(['not met c: not tinned']);
  expect(said('2/0 AWG', '-G')).toEqual(['cannot tell c: metal unknown']);
  expect(said('6 AWG tinned copper', '-F')).toEqual(['met c: enough']);
  expect(said('8 AWG tinned copper', '-F')).toEqual(['not met c: small']);
  expect(said('6 AWG tinned copper', '')).toEqual(['cannot tell c: edition unknown']);
  expect(said('8 AWG copper', '')).toEqual(['not met c: small']);
  expect(lead('8 AWG copper', '-H').outcome).toBe('not applicable');
  expect(findingsOf(rule, site('c: {from: tower, to: R, wire: 10 AWG copper}')).outcome).toBe('not applicable');
});

/** Army preventive maintenance monthly 599 (read): 6 AWG. */
it('tactical-conductor-size: 6 AWG at a temporary station', () => {
  const rule = 'tactical-conductor-size';
  const header = ', temporary: yes';
  const lead = (wire: string) => site(`c: {from: tower, to: R, wire: ${wire}}`, { header });
  expect(verdictsOf(rule, lead('6 AWG copper'))).toEqual(['met c: enough']);
  expect(verdictsOf(rule, lead('13.2 mm2 copper'))).toEqual(['not met c: small']);
  expect(findingsOf(rule, lead('12 AWG copper')).findings[0]!.under).toBe('mast-ground-size:c');
  expect(findingsOf(rule, lead('unknown')).outcome).toBe('not looked at');
  expect(findingsOf(rule, site('c: {from: tower, to: R, wire: 8 AWG copper}')).outcome).toBe('not applicable');
});

describe('sizes of the station on each side', () => {
  const lead = (figure: string) => site(`c: {from: tower, to: R, wire: ${figure}}`);
  eitherSide('mast-ground-size', lead, [
    ['5.26 mm2 copper', '5.2 mm2 copper'],
    ['10 AWG copper', '11 AWG copper'],
    ['8.37 mm2 aluminum', '8.3 mm2 aluminum'],
    ['8 AWG aluminum', '9 AWG aluminum'],
    ['1.04 mm2 copper-clad steel', '1.03 mm2 copper-clad steel'],
    ['17 AWG copper-clad steel', '18 AWG copper-clad steel'],
  ]);
  eitherSide('transmit-protective-ground-size', lead, [
    ['5.26 mm2 copper', '5.2 mm2 copper'],
    ['10 AWG copper', '11 AWG copper'],
    ['5.26 mm2 copper-clad steel', '5.2 mm2 copper-clad steel'],
    ['10 AWG copper-clad steel', '11 AWG copper-clad steel'],
  ]);
  eitherSide('transmit-operating-ground-size', (figure) => site(`c: {from: radio, to: bar, wire: ${figure}}`), [
    ['2.08 mm2 copper', '2.05 mm2 copper'],
    ['14 AWG copper', '15 AWG copper'],
  ]);
  const down = (figure: string) => site(`c: {from: entry, to: R, wire: ${figure}}`);
  eitherSide('panel-to-rod-conductor', down, [
    ['strap 40 mm x 0.1 mm copper', 'strap 37 mm x 0.1 mm copper'],
    ['strap 1.5 in x 0.004 in copper', 'strap 1.4 in x 0.004 in copper'],
    ['13.3 mm2 copper', '13.2 mm2 copper'],
    ['6 AWG copper', '26 kcmil copper'],
  ]);
  const tie = (claims: string) => (figure: string) =>
    site(`c: {from: R, to: S, wire: ${figure}}`, { header: `, claims: ${claims}` });
  eitherSide('facility-ring-size', tie('MIL-HDBK-419A'), [
    ['53.5 mm2 copper', '53 mm2 copper'],
    ['1/0 AWG copper', '1 AWG copper'],
  ]);
  eitherSide('facility-ring-size', tie('FAA-STD-019'), [
    ['107 mm2 copper', '106 mm2 copper'],
    ['4/0 AWG copper', '3/0 AWG copper'],
  ]);
  const ofTower = (figure: string) =>
    site(`c: {from: tower, to: R, wire: ${figure}}`, { header: ', code: {document: TIA-222-G}' });
  eitherSide('tower-lead-size', ofTower, [
    ['67 mm2 tinned copper', '66 mm2 tinned copper'],
    ['2/0 AWG tinned copper', '1/0 AWG tinned copper'],
  ]);
  const inField = (figure: string) => site(`c: {from: tower, to: R, wire: ${figure}}`, { header: ', temporary: yes' });
  eitherSide('tactical-conductor-size', inField, [
    ['13.3 mm2 copper', '13.2 mm2 copper'],
    ['6 AWG copper', '26 kcmil copper'],
  ]);
});

it('mast-ground-size: cannot tell without a size, or of steel, for which NFPA 70 810.21(H) has no figure', () => {
  const lead = (wire: string) => site(`c: {from: tower, to: R, wire: ${wire}}`);
  expect(verdictsOf('mast-ground-size', lead('10 AWG copper'))).toEqual(['met c: enough']);
  expect(verdictsOf('mast-ground-size', lead('12 AWG copper'))).toEqual(['not met c: small']);
  expect(verdictsOf('mast-ground-size', lead('unknown'))).toEqual(['cannot tell c: size unknown']);
  expect(verdictsOf('mast-ground-size', lead('50 mm2 galvanised steel'))).toEqual(['cannot tell c: metal not listed']);
  expect(findingsOf('mast-ground-size', site('c: {from: R, to: S, wire: 14 AWG copper}')).outcome).toBe(
    'not applicable',
  );
});

it('of metals without a figure the larger sizes cannot be told', () => {
  const steel = '50 mm2 galvanised steel';
  expect(verdictsOf('transmit-operating-ground-size', site(`c: {from: radio, to: bar, wire: ${steel}}`))).toEqual([
    'cannot tell c: metal not listed',
  ]);
  const field = site(`c: {from: tower, to: R, wire: ${steel}}`, { header: ', temporary: yes' });
  expect(verdictsOf('tactical-conductor-size', field)).toEqual(['cannot tell c: metal not listed']);
});

everyOutcome('size-by-length');
everyOutcome('mast-ground-size');
everyOutcome('transmit-protective-ground-size');
everyOutcome('transmit-operating-ground-size');
everyOutcome('panel-to-rod-conductor', {
  'cannot tell': 'a size that nobody knows is asked about by antenna-electrode-bond-size, once',
});
everyOutcome('facility-ring-size');
everyOutcome('tower-lead-size');
everyOutcome('tactical-conductor-size');
