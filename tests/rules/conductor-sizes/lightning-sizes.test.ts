import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

/** A rod on the roof, a wire down to its electrode, a tie to another electrode, and what more is typed. */
const site = (
  region: string,
  header: string,
  wire: string,
  more = '',
) => `site: {name: Roof, region: ${region}, units: m, service: unknown${header}}
electrodes: {L: {kind: rod}, R: {kind: rod}}
supports: {terminal: {kind: air terminal}}
conductors:
  down: {from: terminal, to: L, role: down conductor, wire: ${wire}}
  ${more}
`;
const house = (height: string) => `\nbuildings: {house: {height: ${height}}}`;
const terminal = (height: string, wire: string) =>
  `${site('us', '', wire).replace('kind: air terminal', `kind: air terminal, height: ${height}`)}${house(height)}`;
const nobody = (region: string) => `site: {name: Mast, region: ${region}, service: unknown}
electrodes: {R: {kind: rod}}
supports: {mast: {kind: mast}}
bars: {main: {kind: main earthing bar}}
conductors: {c: {from: mast, to: R, wire: 10 AWG copper}, d: {from: main, to: R, wire: 10 AWG copper}}
`;

describe('no size of a lightning protection system is asked where nobody speaks of one', () => {
  it.each([
    ['us', 'down-conductor-size-us'],
    ['us', 'common-bond-main-size'],
    ['us', 'bonding-conductor-size-us'],
    ['iec', 'down-conductor-size-iec'],
    ['iec', 'bar-to-bar-bond-iec'],
    ['iec', 'body-to-bar-bond-iec'],
    ['iec', 'bar-section-iec'],
    ['au', 'au-down-conductor'],
  ])('%s: %s', (region, rule) => {
    expect(findingsOf(rule, nobody(region)).outcome).toBe('not applicable');
  });
});

/** NFPA 780 (from memory): class I 29 mm² (57,400 cmil) and 50 mm² to 75 ft; class II 58 mm² and 97 mm² above. */
describe('down-conductor-size-us', () => {
  const rule = 'down-conductor-size-us';

  it('asks 29 mm² copper up to 75 ft', () => {
    expect(verdictsOf(rule, terminal('75 ft', '29 mm2 copper'))).toEqual(['met down: enough']);
    expect(verdictsOf(rule, terminal('22.8 m', '28.8 mm2 copper'))).toEqual(['not met down: small']);
    // printed as 23 m beside 75 ft
    expect(verdictsOf(rule, terminal('23 m', '29 mm2 copper'))).toEqual(['met down: enough']);
    expect(verdictsOf(rule, terminal('23.2 m', '29 mm2 copper'))).toEqual(['not met down: small']);
    expect(verdictsOf(rule, terminal('70 ft', '57.4 kcmil copper'))).toEqual(['met down: enough']);
    expect(verdictsOf(rule, terminal('70 ft', '4 AWG copper'))).toEqual(['not met down: small']);
    expect(verdictsOf(rule, terminal('70 ft', '49 mm2 aluminium'))).toEqual(['not met down: small']);
    expect(verdictsOf(rule, terminal('70 ft', '50 mm2 aluminium'))).toEqual(['met down: enough']);
  });

  it('asks 58 mm² above, and the height only where it matters', () => {
    expect(verdictsOf(rule, terminal('76 ft', '57 mm2 copper'))).toEqual(['not met down: small']);
    expect(verdictsOf(rule, terminal('76 ft', '58 mm2 copper'))).toEqual(['met down: enough']);
    expect(verdictsOf(rule, site('us', '', '58 mm2 copper'))).toEqual(['met down: enough']);
    expect(verdictsOf(rule, site('us', '', '28 mm2 copper'))).toEqual(['not met down: small']);
    expect(verdictsOf(rule, site('us', '', '30 mm2 copper'))).toEqual(['cannot tell down: height unknown']);
    expect(verdictsOf(rule, site('us', '', 'unknown'))).toEqual(['cannot tell down: size unknown']);
  });
});

/** IEC 62305-3:2010 Table 6 (from memory): 50 mm², a round wire of 8 mm; aluminium tape 70 mm². */
describe('down-conductor-size-iec', () => {
  const rule = 'down-conductor-size-iec';
  const wire = (text: string) => verdictsOf(rule, site('iec', '', text));

  it('asks 50 mm² of each metal', () => {
    expect(wire('round 8 mm copper')).toEqual(['met down: enough']);
    expect(wire('49 mm2 copper')).toEqual(['not met down: small']);
    expect(wire('1/0 AWG copper')).toEqual(['met down: enough']);
    expect(wire('1 AWG copper')).toEqual(['not met down: small']);
    expect(wire('round 8 mm aluminium')).toEqual(['met down: enough']);
    expect(wire('round 8 mm stainless steel')).toEqual(['met down: enough']);
    expect(wire('round 7.9 mm galvanised steel')).toEqual(['not met down: small']);
  });

  it('asks 70 mm² of an aluminium tape, not of a copper one', () => {
    expect(wire('strap 20 mm x 3 mm aluminium')).toEqual(['not met down: small']);
    expect(wire('strap 24 mm x 3 mm aluminium')).toEqual(['met down: enough']);
    expect(wire('strap 20 mm x 2.5 mm copper')).toEqual(['met down: enough']);
    expect(wire('braid 25 mm copper')).toEqual(['cannot tell down: size unknown']);
  });

  // IEC 60728-11 is on antennas: what leads down from a terminal is no lead of one
  it('stands alone; only a wire from an antenna’s mast, with no lightning protection, is asked by the antenna’s clause', () => {
    const antenna = 'antenna-earthing-size-iec';
    const thin = (text: string) => findingsOf(rule, text).findings[0]!;
    expect(thin(site('iec', '', '10 mm2 copper')).under).toBeNull();
    expect(findingsOf(antenna, site('iec', '', '10 mm2 copper')).outcome).toBe('not applicable');
    const mast = (header: string) => site('iec', header, '10 mm2 copper').replace('kind: air terminal', 'kind: mast');
    expect(verdictsOf(antenna, mast(''))).toEqual(['not met down: small']);
    expect(thin(mast('')).under).toBe('antenna-earthing-size-iec:down');
    expect(findingsOf(antenna, mast(', claims: class III')).outcome).toBe('not applicable');
    expect(verdictsOf(rule, mast(', claims: class III'))).toEqual(['not met down: small']);
  });
});

/** AS/NZS 1768 as summarised by others (second-hand): 35 mm² copper, 70 mm² aluminium. */
it('au-down-conductor: 35 mm² copper or 70 mm² aluminium', () => {
  const wire = (text: string) => verdictsOf('au-down-conductor', site('au', '', text));
  expect(wire('35 mm2 copper')).toEqual(['met down: enough']);
  expect(wire('2 AWG copper')).toEqual(['not met down: small']);
  expect(wire('70 mm2 aluminium')).toEqual(['met down: enough']);
  expect(wire('69 mm2 aluminium')).toEqual(['not met down: small']);
  expect(wire('unknown')).toEqual(['cannot tell down: size unknown']);
});

/** UL 96A 9.4.1 (sizes from memory): main conductor size, stricter than the 6 AWG of the electrical code. */
describe('common-bond-main-size', () => {
  const rule = 'common-bond-main-size';
  const tie = (wire: string, height = '8 m') =>
    `${site('us', '', 'round 10 mm copper', `tie: {from: L, to: R, wire: ${wire}}`).replace('kind: air terminal', `kind: air terminal, height: ${height}`)}${house(height)}`;

  it('asks 29 mm² copper of the tie to the lightning electrode', () => {
    expect(verdictsOf(rule, tie('29 mm2 copper'))).toEqual(['met tie: enough']);
    expect(verdictsOf(rule, tie('6 AWG copper'))).toEqual(['not met tie: small']);
    expect(findingsOf(rule, tie('6 AWG copper')).findings[0]!.under).toBeNull();
    expect(verdictsOf(rule, tie('29 mm2 copper', '24 m'))).toEqual(['not met tie: small']);
  });

  // what leads from the service to a lightning electrode is the tie to the grounds of power
  const service = (ends: string, wire: string) =>
    `${tie(wire).replace('from: L, to: R', ends).replace('service: unknown', 'service: panel')}
equipment: {panel: {kind: service panel}}
`;
  it('asks it of the service’s wire that lands on a lightning electrode or passes one', () => {
    expect(verdictsOf(rule, service('from: panel, to: L', '29 mm2 copper'))).toEqual(['met tie: enough']);
    expect(verdictsOf(rule, service('from: panel, to: L', '4 AWG copper'))).toEqual(['not met tie: small']);
    expect(verdictsOf(rule, service('from: panel, to: L', '57.4 kcmil copper'))).toEqual(['met tie: enough']);
    expect(verdictsOf(rule, service('from: panel, to: R, passes: [L]', '4 AWG copper'))).toEqual([
      'not met tie: small',
    ]);
    expect(findingsOf(rule, service('from: panel, to: R', '4 AWG copper')).outcome).toBe('not applicable');
  });

  it('leaves the doubt about a size of that wire to the condition of the service, and what fails it too stands under it', () => {
    expect(findingsOf(rule, service('from: panel, to: L', 'unknown')).outcome).toBe('not looked at');
    // a rod alone asks 6 AWG at most (NFPA 70 250.66(A))
    const thin = findingsOf(rule, service('from: panel, to: L', '10 AWG copper')).findings;
    expect(thin.map((f) => [f.outcome, f.under])).toEqual([['not met', 'rod-only-conductor-size:tie']]);
    const footing = service('from: panel, to: L', '10 AWG copper').replace(
      'L: {kind: rod}',
      'L: {kind: concrete-encased}',
    );
    expect(findingsOf(rule, footing).findings[0]!.under).toBe('concrete-only-conductor-size:tie');
  });

  it('stands under the electrical code’s 6 AWG where that is not met either', () => {
    expect(findingsOf(rule, tie('8 AWG copper')).findings[0]!.under).toBe('antenna-electrode-bond-size:tie');
    expect(findingsOf(rule, tie('unknown')).outcome).toBe('not looked at');
  });
});

/** UL 96A 9.4.2 (read): 6 AWG copper, 41,100 cmil (20.8 mm²) aluminium. */
it('bonding-conductor-size-us: a bond from the lightning electrode to metal', () => {
  const bond = (wire: string) =>
    `${site('us', '', 'round 10 mm copper', `bond: {from: frame, to: L, wire: ${wire}}`)}metalwork: {frame: {kind: steel frame}}\n`;
  const rule = 'bonding-conductor-size-us';
  expect(verdictsOf(rule, bond('6 AWG copper'))).toEqual(['met bond: enough']);
  expect(verdictsOf(rule, bond('13.2 mm2 copper'))).toEqual(['not met bond: small']);
  expect(verdictsOf(rule, bond('41.1 kcmil aluminum'))).toEqual(['met bond: enough']);
  expect(verdictsOf(rule, bond('20.6 mm2 aluminum'))).toEqual(['not met bond: small']);
  expect(verdictsOf(rule, bond('unknown'))).toEqual(['cannot tell bond: size unknown']);
});

/** IEC 62305-3 Tables 8 and 9 (from memory): 16, 25, 50 and 6, 10, 16 mm²; in 2006 14, 22 and 5, 8. */
describe('bonds to a bar', () => {
  const bars = (bond: string, body: string, code = '') =>
    `${site('iec', `, claims: class II${code}`, 'round 8 mm copper', `bond: {from: main, to: second, wire: ${bond}}\n  body: {from: pipe, to: main, wire: ${body}}`)}bars: {main: {kind: main earthing bar}, second: {kind: station ground bar}}
metalwork: {pipe: {kind: water pipe}}
`;
  const old = ', code: {document: IEC 62305-3, edition: 2006}';

  it('bar-to-bar-bond-iec', () => {
    const rule = 'bar-to-bar-bond-iec';
    const bond = (wire: string, code = '') => verdictsOf(rule, bars(wire, '6 mm2 copper', code));
    expect(bond('16 mm2 copper')).toEqual(['met bond: enough']);
    expect(bond('6 AWG copper')).toEqual(['not met bond: small']);
    expect(bond('14 mm2 copper', old)).toEqual(['met bond: enough']);
    expect(bond('13 mm2 copper', old)).toEqual(['not met bond: small']);
    expect(bond('25 mm2 aluminium')).toEqual(['met bond: enough']);
    expect(bond('24 mm2 aluminium')).toEqual(['not met bond: small']);
    expect(bond('50 mm2 galvanised steel')).toEqual(['met bond: enough']);
    expect(bond('unknown')).toEqual(['cannot tell bond: size unknown']);
    const source = (code: string) => findingsOf(rule, bars('4 mm2 copper', '6 mm2 copper', code)).findings[0]!.source;
    expect(source(old)).toMatchObject({ edition: '2006', clause: 'Table 8' });
    expect(source('')).toMatchObject({ edition: '2010', clause: 'Table 8' });
    const thin = findingsOf(rule, bars('4 mm2 copper', '6 mm2 copper')).findings[0]!;
    expect(thin.under).toBe('main-bonding-size-iec:bond');
  });

  it('body-to-bar-bond-iec', () => {
    const body = (wire: string, code = '') => verdictsOf('body-to-bar-bond-iec', bars('16 mm2 copper', wire, code));
    expect(body('6 mm2 copper')).toEqual(['met body: enough']);
    expect(body('10 AWG copper')).toEqual(['not met body: small']);
    expect(body('5 mm2 copper', old)).toEqual(['met body: enough']);
    expect(body('10 mm2 aluminium')).toEqual(['met body: enough']);
    expect(body('9 mm2 aluminium')).toEqual(['not met body: small']);
    expect(body('15 mm2 steel')).toEqual(['not met body: small']);
    expect(body('unknown')).toEqual(['cannot tell body: size unknown']);
  });
});

/** IEC 62305-4:2010 Table 1 (from memory): 50 mm². */
it('bar-section-iec: 50 mm² of copper or steel', () => {
  const bar = (says: string) =>
    verdictsOf(
      'bar-section-iec',
      `site: {name: Bar, region: iec, service: unknown, claims: class III}\nbars: {main: {kind: main earthing bar${says}}}\n`,
    );
  expect(bar(', section: 50 mm2, metal: copper')).toEqual(['met main: enough']);
  expect(bar(', section: 0.08 sq in, metal: copper')).toEqual(['met main: enough']);
  expect(bar(', section: 49 mm2')).toEqual(['not met main: small']);
  expect(bar(', section: 60 mm2')).toEqual(['cannot tell main: not known']);
  expect(bar('')).toEqual(['cannot tell main: not known']);
  expect(bar(', section: 60 mm2, metal: aluminium')).toEqual(['cannot tell main: metal not listed']);
  // the clause names copper and zinc-coated steel alone
  for (const metal of ['stainless steel', 'steel', 'copper-clad aluminium'])
    expect(bar(`, section: 60 mm2, metal: ${metal}`)).toEqual(['cannot tell main: metal not listed']);
  expect(bar(', section: 60 mm2, metal: galvanised steel')).toEqual(['met main: enough']);
  expect(bar(', section: 60 mm2, metal: tinned copper')).toEqual(['met main: enough']);
});

describe('sizes of lightning protection on each side', () => {
  eitherSide('down-conductor-size-us', (figure) => terminal('70 ft', figure), [
    ['29 mm2 copper', '28.8 mm2 copper'],
    ['57.4 kcmil copper', '56 kcmil copper'],
    ['50 mm2 aluminium', '49 mm2 aluminium'],
    ['98.7 kcmil aluminium', '97 kcmil aluminium'],
  ]);
  eitherSide('down-conductor-size-us', (figure) => terminal('80 ft', figure), [
    ['58 mm2 copper', '57 mm2 copper'],
    ['115 kcmil copper', '113 kcmil copper'],
    ['97 mm2 aluminium', '96 mm2 aluminium'],
    ['192 kcmil aluminium', '189 kcmil aluminium'],
  ]);
  const down = (region: string) => (figure: string) => site(region, '', figure);
  eitherSide('down-conductor-size-iec', down('iec'), [
    ['50 mm2 copper', '49 mm2 copper'],
    ['99 kcmil copper', '97 kcmil copper'],
    ['50 mm2 aluminium', '49 mm2 aluminium'],
    ['50 mm2 stainless steel', '49 mm2 stainless steel'],
    ['strap 28 mm x 2.5 mm aluminium', 'strap 27 mm x 2.5 mm aluminium'],
    ['strap 1.1 in x 0.1 in aluminium', 'strap 1 in x 0.1 in aluminium'],
  ]);
  eitherSide('au-down-conductor', down('au'), [
    ['35 mm2 copper', '34.7 mm2 copper'],
    ['70 kcmil copper', '68 kcmil copper'],
    ['70 mm2 aluminium', '69 mm2 aluminium'],
    ['139 kcmil aluminium', '137 kcmil aluminium'],
  ]);
  const more = (typed: string) => (figure: string) =>
    `${site('us', '', 'round 10 mm copper', typed.replace('?', figure))}${house('8 m')}`.replace(
      'kind: air terminal',
      'kind: air terminal, height: 8 m',
    );
  eitherSide('common-bond-main-size', more('tie: {from: L, to: R, wire: ?}'), [
    ['29 mm2 copper', '28.8 mm2 copper'],
    ['57.4 kcmil copper', '56 kcmil copper'],
    ['50 mm2 aluminium', '49 mm2 aluminium'],
    ['98.7 kcmil aluminium', '97 kcmil aluminium'],
  ]);
  const body = (figure: string) =>
    `${site('us', '', 'round 10 mm copper', `bond: {from: frame, to: L, wire: ${figure}}`)}metalwork: {frame: {kind: steel frame}}\n`;
  eitherSide('bonding-conductor-size-us', body, [
    ['13.3 mm2 copper', '13.2 mm2 copper'],
    ['6 AWG copper', '26 kcmil copper'],
    ['20.8 mm2 aluminum', '20.6 mm2 aluminum'],
    ['41.1 kcmil aluminum', '40 kcmil aluminum'],
  ]);
  const bonds = (typed: string) => (figure: string) =>
    `${site('iec', ', claims: class II', 'round 8 mm copper', typed.replace('?', figure))}bars: {main: {kind: main earthing bar}, second: {kind: station ground bar}}
metalwork: {pipe: {kind: water pipe}}
`;
  eitherSide('bar-to-bar-bond-iec', bonds('bond: {from: main, to: second, wire: ?}'), [
    ['16 mm2 copper', '15.8 mm2 copper'],
    ['32 kcmil copper', '31 kcmil copper'],
    ['25 mm2 aluminium', '24.7 mm2 aluminium'],
    ['50 kcmil aluminium', '49 kcmil aluminium'],
    ['50 mm2 galvanised steel', '49 mm2 galvanised steel'],
    ['99 kcmil galvanised steel', '97 kcmil galvanised steel'],
  ]);
  eitherSide('body-to-bar-bond-iec', bonds('body: {from: pipe, to: main, wire: ?}'), [
    ['6 mm2 copper', '5.9 mm2 copper'],
    ['12 kcmil copper', '11.7 kcmil copper'],
    ['10 mm2 aluminium', '9.9 mm2 aluminium'],
    ['20 kcmil aluminium', '19.5 kcmil aluminium'],
    ['16 mm2 galvanised steel', '15.8 mm2 galvanised steel'],
    ['32 kcmil galvanised steel', '31 kcmil galvanised steel'],
  ]);
  const bar = (figure: string) =>
    `site: {name: Bar, region: iec, service: unknown, claims: class III}\nbars: {main: {kind: main earthing bar, metal: copper, section: ${figure}}}\n`;
  eitherSide('bar-section-iec', bar, [
    ['50 mm2', '49 mm2'],
    ['0.078 sq in', '0.076 sq in'],
  ]);
});

it('common-bond-main-size: a height that nobody knows leaves a tie between the two sizes open', () => {
  const tie = site('us', '', 'round 10 mm copper', 'tie: {from: L, to: R, wire: 30 mm2 copper}');
  expect(verdictsOf('common-bond-main-size', tie)).toEqual(['cannot tell tie: height unknown']);
});

everyOutcome('down-conductor-size-us');
everyOutcome('down-conductor-size-iec');
everyOutcome('au-down-conductor');
everyOutcome('common-bond-main-size');
everyOutcome('bonding-conductor-size-us');
everyOutcome('bar-to-bar-bond-iec');
everyOutcome('body-to-bar-bond-iec');
everyOutcome('bar-section-iec');
