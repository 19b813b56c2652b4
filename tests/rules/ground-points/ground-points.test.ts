import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const site = (conductors: string, bars = '', header = '', region = 'us') => `
site: {name: Points, region: ${region}, units: ft, service: panel${header}}
electrodes: {R1: {kind: rod}, R2: {kind: rod}}
supports: {mast: {kind: mast}}
bars: {entry: {kind: entry panel, where: outside}${bars}}
equipment: {panel: {kind: service panel}, barn: {kind: sub-panel}, radio: {kind: transceiver}}
metalwork: {water: {kind: water pipe}, radiator: {kind: radiator}, frame: {kind: steel frame}}
conductors: {c1: {from: panel, to: R1}${conductors}}
`;
const ibt = ', ibt: {kind: intersystem bonding termination}';
const outcomeOf = (rule: string, text: string) => findingsOf(rule, text).outcome;

/** NFPA 70 810.21(F)(1), since 2008, second-hand; 810.21(J) knows an electrode of the antenna's own. No threshold. */
describe('ground-to-intersystem-bar-first', () => {
  const rule = 'ground-to-intersystem-bar-first';

  it('asks a conductor from the antenna’s side to the bar', () => {
    expect(verdictsOf(rule, site(', c2: {from: entry, to: ibt}, c3: {from: ibt, to: panel}', ibt))).toEqual([
      'met ibt: there',
    ]);
    expect(verdictsOf(rule, site(', c2: {from: entry, to: panel}', ibt))).toEqual(['not met ibt: elsewhere']);
    // over the bar of the station
    const desk = `${ibt}, desk: {kind: station ground bar}`;
    expect(
      verdictsOf(
        rule,
        site(', c2: {from: mast, to: desk}, c3: {from: desk, to: ibt}, c4: {from: ibt, to: panel}', desk),
      ),
    ).toEqual(['met ibt: there']);
    const own = findingsOf(rule, site(', c2: {from: mast, to: R2}, c3: {from: R1, to: R2}', ibt)).findings[0]!;
    expect([own.outcome, own.because.key, own.severity]).toEqual(['not met', 'own electrode', 'advice']);
  });

  it('cannot tell with conductors left out, and is not asked without a bar, a ground or that edition', () => {
    const landed = ', c2: {from: entry, to: panel}';
    expect(verdictsOf(rule, site(landed, ibt, ', incomplete: [conductors]'))).toEqual(['cannot tell ibt: perhaps']);
    expect(outcomeOf(rule, site(landed))).toBe('not applicable');
    expect(outcomeOf(rule, site('', ibt))).toBe('not applicable');
    expect(outcomeOf(rule, site(landed, ibt, ', code: {document: NFPA 70, edition: 2005}'))).toBe('not applicable');
  });
});

/** NFPA 70 810.21(F)(2), second-hand; a list, no threshold. */
describe('ground-point-allowed', () => {
  const rule = 'ground-point-allowed';

  it.each([
    ['panel', 'met mast: listed'],
    ['R1', 'met mast: listed'],
    ['frame', 'met mast: listed'],
    ['radiator', 'not met mast: not listed'],
    ['barn', 'cannot tell mast: sub-panel'],
  ])('a mast to %s: %s', (to, expected) =>
    expect(verdictsOf(rule, site(`, c2: {from: mast, to: ${to}}`))).toEqual([expected]),
  );

  it('counts of conduits only the raceway of the service', () => {
    const to = (kind: string) => site(', c2: {from: mast, to: water}').replace('kind: water pipe', `kind: ${kind}`);
    expect(verdictsOf(rule, to('conduit'))).toEqual(['cannot tell mast: raceway']);
    expect(verdictsOf(rule, to('service raceway'))).toEqual(['met mast: listed']);
  });

  it('is content with one point of the list, and leaves pipes, radios and the bar to others', () => {
    expect(verdictsOf(rule, site(', c2: {from: mast, to: radiator}, c3: {from: mast, to: R1}'))).toEqual([
      'met mast: listed',
    ]);
    expect(outcomeOf(rule, site(', c2: {from: mast, to: water}'))).toBe('not applicable');
    const pool = site(', c2: {from: mast, to: pool}').replace('water: {', 'pool: {kind: pool}, water: {');
    expect(outcomeOf(rule, pool)).toBe('not applicable');
    expect(outcomeOf(rule, site(', c2: {from: entry, to: radio}'))).toBe('not applicable');
    expect(outcomeOf(rule, site(', c2: {from: mast, to: radiator}', ibt))).toBe('not applicable');
  });
});

/** NFPA 70 250.68(C)(1), 810.21(F)(2), second-hand: 5 ft, printed beside 1.52 m. */
describe('water-pipe-5-ft', () => {
  const rule = 'water-pipe-5-ft';
  const clamp = (distance: string, conductor = 'from: mast, to: water') =>
    site(`, c2: {${conductor}}`).replace('kind: water pipe', `kind: water pipe, clamp_from_entry: ${distance}`);

  it('asks 5 ft, in feet and in metres', () => {
    expect(verdictsOf(rule, clamp('5 ft'))).toEqual(['met water: near']);
    expect(verdictsOf(rule, clamp('5.1 ft'))).toEqual(['not met water: far']);
    expect(verdictsOf(rule, clamp('1.52 m'))).toEqual(['met water: near']);
    expect(verdictsOf(rule, clamp('1.55 m'))).toEqual(['not met water: far']);
    expect(verdictsOf(rule, clamp('6 ft', 'from: R2, to: water'))).toEqual(['not met water: far']);
  });

  it('cannot tell without it, and lets a bond from the panel be', () => {
    expect(verdictsOf(rule, clamp('unknown'))).toEqual(['cannot tell water: unknown']);
    expect(outcomeOf(rule, clamp('9 ft', 'from: panel, to: water'))).toBe('not applicable');
    expect(outcomeOf(rule, clamp('9 ft', 'from: R1, to: water'))).toBe('not applicable');
  });
});

/** BS 7671 544.1.2, from memory: 0.6 m. */
describe('uk-service-pipe-bond', () => {
  const rule = 'uk-service-pipe-bond';
  const clamp = (distance: string, bond = ', c2: {from: panel, to: water}') =>
    site(bond, '', '', 'uk').replace('kind: water pipe', `kind: water pipe, clamp_from_entry: ${distance}`);

  it('asks 0.6 m, in metres and in feet', () => {
    expect(verdictsOf(rule, clamp('0.6 m'))).toEqual(['met water: near']);
    expect(verdictsOf(rule, clamp('0.61 m'))).toEqual(['not met water: far']);
    expect(verdictsOf(rule, clamp('1.9 ft'))).toEqual(['met water: near']);
    expect(verdictsOf(rule, clamp('2 ft'))).toEqual(['not met water: far']);
  });

  it('cannot tell without it, and leaves an unbonded pipe to another rule', () => {
    expect(verdictsOf(rule, clamp('unknown'))).toEqual(['cannot tell water: unknown']);
    expect(outcomeOf(rule, clamp('2 m', ''))).toBe('not applicable');
    expect(outcomeOf(rule, clamp('2 m').replace('region: uk', 'region: iec'))).toBe('not applicable');
  });
});

/** NFPA 70 810.21(F)(3), from memory; a list, no threshold. */
describe('ground-point-no-service', () => {
  const rule = 'ground-point-no-service';
  const hut = (electrode: string, service = 'none') => `
site: {name: Hut, region: us, units: ft, service: ${service}}
electrodes: {E1: {${electrode}}}
supports: {mast: {kind: mast}}
conductors: {c1: {from: mast, to: E1}}
`;

  it.each([
    ['kind: rod', 'met E1: listed'],
    ['kind: buried wire, closed: yes', 'met E1: listed'],
    ['kind: buried wire, closed: no', 'not met E1: not listed'],
    ['kind: strap on rock', 'not met E1: not listed'],
    ['kind: unknown', 'cannot tell E1: kind unknown'],
  ])('%s: %s', (electrode, expected) => expect(verdictsOf(rule, hut(electrode))).toEqual([expected]));

  it('is asked where there is no service', () => {
    expect(outcomeOf(rule, hut('kind: strap on rock', 'unknown'))).toBe('not applicable');
  });
});

/** NFPA 70 800.100(B), 810.21(F), 250.94, second-hand; no threshold. */
it('not-on-cover-or-door asks bars at the service and on boxes', () => {
  const of = (bar: string) => verdictsOf('not-on-cover-or-door', site('', `, b: {${bar}}`));
  expect(of('kind: intersystem bonding termination, on_cover: no')).toEqual(['met b: fixed part']);
  expect(of('kind: station ground bar, on_cover: yes')).toEqual(['not met b: on cover']);
  expect(of('kind: intersystem bonding termination')).toEqual(['cannot tell b: nobody said']);
  expect(of('kind: station ground bar, on: panel')).toEqual(['cannot tell b: nobody said']);
  expect(of('kind: station ground bar')).toEqual([]);
});

/** NFPA 70 250.94, since 2008, second-hand: three terminals, 6 AWG (13.3 mm²). */
describe('intersystem-bar-present', () => {
  const rule = 'intersystem-bar-present';
  const bar = (terminals: string, wire: string) =>
    verdictsOf(
      rule,
      site(
        `, c2: {from: panel, to: ibt, wire: ${wire}}`,
        `, ibt: {kind: intersystem bonding termination, terminals: ${terminals}}`,
      ),
    );

  it('asks three terminals and 6 AWG', () => {
    expect(bar('3', '6 AWG copper')).toEqual(['met ibt: enough']);
    expect(bar('2', '6 AWG copper')).toEqual(['not met ibt: few']);
    expect(bar('3', '8 AWG copper')).toEqual(['not met ibt: thin']);
    expect(bar('3', '13.3 mm2 copper')).toEqual(['met ibt: enough']);
    expect(bar('3', '13 mm2 copper')).toEqual(['not met ibt: thin']);
    expect(bar('unknown', '6 AWG copper')).toEqual(['cannot tell ibt: not counted']);
  });

  const tied = (figure: string) =>
    site(
      `, c2: {from: panel, to: ibt, wire: ${figure}}`,
      ', ibt: {kind: intersystem bonding termination, terminals: 3}',
    );
  eitherSide(rule, tied, [
    ['6 AWG copper', '26 kcmil copper'],
    ['13.3 mm2 copper', '13.2 mm2 copper'],
  ]);

  it('asks copper of that size all the way to the service', () => {
    const ibt = ', ibt: {kind: intersystem bonding termination, terminals: 3}';
    const by = (conductors: string, bars = ibt) => verdictsOf(rule, site(conductors, bars));
    expect(by(', c2: {from: R1, to: ibt, wire: 6 AWG copper}, c3: {from: R1, to: panel, wire: 6 AWG copper}')).toEqual([
      'met ibt: enough',
    ]);
    expect(bar('3', '6 AWG galvanised steel')).toEqual(['cannot tell c2: metal not listed']);
    expect(bar('3', '6 AWG')).toEqual(['cannot tell c2: metal unknown']);
    const stray = `${ibt}, stray: {kind: station ground bar}`;
    expect(by(', c2: {from: stray, to: ibt, wire: 6 AWG copper}', stray)).toEqual(['not met ibt: apart']);
    const chain = ', c2: {from: stray, to: ibt, wire: 6 AWG copper}, c3: {from: stray, to: panel, wire: 14 AWG copper}';
    expect(by(chain, stray)).toEqual(['not met ibt: thin']);
    const perhaps = ibt.replace('terminals: 3', 'terminals: 3, present: unknown');
    expect(by(', c2: {from: panel, to: ibt, wire: 6 AWG copper}', perhaps)).toEqual(['cannot tell ibt: tie unknown']);
  });

  it('cannot tell what ties it, unless it is screwed to the panel', () => {
    const alone = (more: string) =>
      verdictsOf(rule, site('', `, ibt: {kind: intersystem bonding termination, terminals: 3${more}}`));
    expect(alone('')).toEqual(['cannot tell ibt: tie unknown']);
    expect(alone(', on: panel')).toEqual(['met ibt: enough']);
    expect(bar('3', 'unknown')).toEqual(['cannot tell c2: size unknown']);
  });

  it('asks for the bar itself only by an edition that the owner names', () => {
    const edition = (year: number) => `, code: {document: NFPA 70, edition: ${year}}`;
    expect(verdictsOf(rule, site('', '', edition(2020)))).toEqual(['not met : none there']);
    expect(outcomeOf(rule, site('', '', edition(2005)))).toBe('not applicable');
    expect(outcomeOf(rule, site(''))).toBe('not applicable');
    expect(outcomeOf(rule, site('', '', edition(2020)).replace('service: panel', 'service: none'))).toBe(
      'not applicable',
    );
  });
});

everyOutcome('ground-point-allowed');
everyOutcome('ground-to-intersystem-bar-first');
everyOutcome('uk-service-pipe-bond');
everyOutcome('ground-point-no-service');
everyOutcome('not-on-cover-or-door');
everyOutcome('water-pipe-5-ft');
everyOutcome('intersystem-bar-present');
