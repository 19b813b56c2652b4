import { describe, expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const site = (line: string, rest = '', region = 'us') => `
site: {name: Lead-ins, region: ${region}, units: ft, service: unknown}
electrodes: {R1: {kind: rod}}
antennas: {dipole: {kind: half-wave dipole, dc_path: no}, beam: {kind: yagi, dc_path: yes}}
bars: {entry: {kind: entry panel, where: outside}}
arresters: {tube: {kind: gas tube, on: entry, covers: all}, block: {kind: gas tube, on: entry, covers: 1}, bleed: {kind: gas tube, on: entry, covers: 1, bleed: yes}}
equipment: {radio: {kind: transceiver, where: inside}, scanner: {kind: receiver, where: inside}}
lines: {feed: {${line}}}
conductors: {c1: {from: entry, to: R1}}
${rest}`;

/** NFPA 70 (2008) 810.57 read, 810.20(A) from memory; no threshold but one unit for each wire. */
describe('discharge-unit-present', () => {
  const rule = 'discharge-unit-present';

  it.each([
    ['a grounded shield releases the line', 'kind: coax, path: [dipole, entry, radio]', 'met feed: shield'],
    ['a unit on both wires', 'kind: open-wire, path: [dipole, tube, radio]', 'met feed: unit'],
    ['one unit for one wire', 'kind: single wire, path: [dipole, bleed, radio]', 'met feed: unit'],
    ['a bleed on the line of a sender', 'kind: open-wire, path: [dipole, bleed, radio]', 'met feed: drained'],
    ['the same bleed, for a receiver', 'kind: open-wire, path: [dipole, bleed, scanner]', 'not met feed: nothing'],
    ['joined wires that nothing leads to the soil', 'kind: open-wire, path: [beam, radio]', 'not met feed: nothing'],
    ['one unit for two wires', 'kind: open-wire, path: [dipole, block, radio]', 'not met feed: nothing'],
    ['nothing', 'kind: open-wire, path: [dipole, radio]', 'not met feed: nothing'],
  ])('%s', (_says, line, expected) => expect(verdictsOf(rule, site(line))).toEqual([expected]));

  it('takes an antenna for a drain where it is itself grounded, and cannot tell where that is not known', () => {
    const lead = (more: string) =>
      site('kind: open-wire, path: [beam, scanner]').replace(
        'conductors: {',
        `conductors: {c2: {from: beam, to: R1${more}}, `,
      );
    expect(verdictsOf(rule, lead(''))).toEqual(['met feed: drained']);
    expect(verdictsOf(rule, lead(', present: unknown'))).toEqual(['cannot tell feed: perhaps grounded']);
    const shield = site('kind: coax, path: [dipole, entry, radio]').replace('to: R1', 'to: R1, present: unknown');
    expect(verdictsOf(rule, shield)).toEqual(['cannot tell feed: perhaps grounded']);
  });

  it('stands above what practice says of an open line, and below the bare shield of a coax line', () => {
    const under = (line: string, of: string) => findingsOf(of, site(line)).findings.map((f) => f.under);
    expect(under('kind: open-wire, path: [dipole, radio]', 'arrester-on-every-feed-line')).toEqual([`${rule}:feed`]);
    expect(under('kind: coax, path: [dipole, radio]', rule)).toEqual(['shield-bonded-at-entry:feed']);
    expect(under('kind: coax, path: [dipole, radio]', 'arrester-on-every-feed-line')).toEqual([null]);
  });

  it('cannot tell where nobody counted the wires, and leaves an unplaced shield to the rule on shields', () => {
    const partly = site('kind: open-wire, path: [dipole, tube, radio]').replace('covers: all', 'covers: unknown');
    expect(verdictsOf(rule, partly)).toEqual(['cannot tell feed: count unknown']);
    const unplaced = site('kind: coax, path: [dipole, radio]').replace(/, where: inside/g, '');
    expect(verdictsOf(rule, unplaced)).toEqual([]);
  });

  it('is not asked of an antenna indoors, nor elsewhere', () => {
    const line = 'kind: open-wire, path: [dipole, radio]';
    const indoors = site(line).replace('dipole, dc_path', 'dipole, where: inside, dc_path');
    expect(findingsOf(rule, indoors).outcome).toBe('not applicable');
    expect(findingsOf(rule, site(line, '', 'iec')).outcome).toBe('not applicable');
  });
});

/** NFPA 70 (2008) 810.54, read: 3 in. */
describe('transmit-lead-in-standoff', () => {
  const rule = 'transmit-lead-in-standoff';
  const open = (more: string, end = 'radio') => site(`kind: open-wire, path: [dipole, tube, ${end}]${more}`);

  it('asks 3 in or 75 mm', () => {
    expect(verdictsOf(rule, open(', standoff: 3 in'))).toEqual(['met feed: held off']);
    expect(verdictsOf(rule, open(', standoff: 2.9 in'))).toEqual(['not met feed: near the wall']);
    expect(verdictsOf(rule, open(', standoff: 75 mm'))).toEqual(['met feed: held off']);
    expect(verdictsOf(rule, open(', standoff: 74 mm'))).toEqual(['not met feed: near the wall']);
  });

  it('cannot tell without it, or with a rough one; coax and a receiver are not asked', () => {
    expect(verdictsOf(rule, open(''))).toEqual(['cannot tell feed: unknown']);
    expect(verdictsOf(rule, open(', standoff: 2 to 4 in'))).toEqual(['cannot tell feed: unknown']);
    expect(findingsOf(rule, site('kind: coax, path: [dipole, tube, radio]')).outcome).toBe('not applicable');
    expect(findingsOf(rule, open('', 'scanner')).outcome).toBe('not applicable');
  });
});

/** NFPA 70 (2008) 810.56, read; no threshold. */
it('transmitter-contact-guard asks whether anybody can touch an open lead-in', () => {
  const of = (more: string) =>
    verdictsOf('transmitter-contact-guard', site(`kind: single wire, path: [dipole, radio]${more}`));
  expect(of(', guarded: yes')).toEqual(['met feed: guarded']);
  expect(of(', guarded: no')).toEqual(['not met feed: open']);
  expect(of('')).toEqual(['cannot tell feed: unknown']);
  expect(findingsOf('transmitter-contact-guard', site('kind: coax, path: [dipole, radio]')).outcome).toBe(
    'not applicable',
  );
});

/** Canadian Electrical Code 54-200, second-hand; sizes were not read, so a way is all that is asked. */
describe('canada-coax-shield-grounded', () => {
  const rule = 'canada-coax-shield-grounded';
  const coax = (path: string, conductor = 'c1: {from: entry, to: R1}') =>
    site(`kind: coax, path: [dipole, ${path}]`, '', 'ca').replace('c1: {from: entry, to: R1}', conductor);

  it('asks a bond at the wall and metal from there to an electrode', () => {
    expect(verdictsOf(rule, coax('entry, radio'))).toEqual(['met feed: grounded']);
    expect(verdictsOf(rule, coax('entry, radio', 'c1: {from: radio, to: R1}'))).toEqual(['not met feed: bare']);
    expect(verdictsOf(rule, coax('radio'))).toEqual(['not met feed: bare']);
    expect(findingsOf(rule, coax('radio')).findings[0]!.under).toBe('shield-bonded-at-entry:feed');
  });

  it('cannot tell where the conductor may not be there, and is asked in Canada alone', () => {
    expect(verdictsOf(rule, coax('entry, radio', 'c1: {from: entry, to: R1, present: unknown}'))).toEqual([
      'cannot tell feed: perhaps',
    ]);
    expect(findingsOf(rule, site('kind: coax, path: [dipole, radio]')).outcome).toBe('not applicable');
    const open = site('kind: open-wire, path: [dipole, tube, radio]', '', 'ca');
    expect(findingsOf(rule, open).outcome).toBe('not applicable');
  });
});

everyOutcome('discharge-unit-present');
everyOutcome('transmit-lead-in-standoff');
everyOutcome('transmitter-contact-guard');
everyOutcome('canada-coax-shield-grounded');
