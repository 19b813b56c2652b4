import { describe, expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const outcomeOf = (rule: string, text: string) => findingsOf(rule, text).outcome;

/** Common practice; that a conductor of 1 m (3.28 ft) still makes one panel of two is ours. */
describe('single-entry-panel', () => {
  const rule = 'single-entry-panel';
  const site = (second: string, tie = '') => `
site: {name: Two plates, region: us, units: ft, service: unknown}
buildings: {house: {}}
antennas: {a: {kind: vertical}, b: {kind: vertical}}
bars: {east: {kind: entry panel, where: outside}, west: {kind: entry panel, where: outside}}
arresters: {block: {kind: telephone protector, on: west}}
equipment: {radio: {kind: transceiver, where: house}, modem: {kind: modem, where: house}}
lines:
  one: {kind: coax, path: [a, east, radio]}
  two: {kind: coax, path: [b, ${second}radio]}
  phone: {kind: telephone, path: [street, block, modem]}
conductors: ${tie === '' ? 'none' : `{tie: {from: east, to: west${tie}}}`}
`;

  it('finds two panels far from each other, and takes two that are as one', () => {
    expect(verdictsOf(rule, site('east, '))).toEqual(['met east: one']);
    expect(verdictsOf(rule, site('west, '))).toEqual(['not met east west: several']);
    expect(verdictsOf(rule, site('west, ', ', length: 3.2 ft'))).toEqual(['met east west: tied']);
    expect(verdictsOf(rule, site('west, ', ', length: 3.3 ft'))).toEqual(['not met east west: several']);
    expect(verdictsOf(rule, site('west, ', ', length: 1 m'))).toEqual(['met east west: tied']);
    expect(verdictsOf(rule, site('west, ', ', length: 1.01 m'))).toEqual(['not met east west: several']);
  });

  it('asks that all panels hang together: two that are tied do not speak for a third, nor two pairs for each other', () => {
    const several = (ties: string, panels = ['p1', 'p2', 'p3', 'p4']) => `
site: {name: Plates, region: us, units: ft, service: unknown}
buildings: {house: {}}
antennas: {a: {kind: vertical}}
bars: {${panels.map((p) => `${p}: {kind: entry panel, where: outside}`).join(', ')}}
equipment: {radio: {kind: transceiver, where: house}}
lines: {${panels.map((p) => `to-${p}: {kind: coax, path: [a, ${p}, radio]}`).join(', ')}}
conductors: {${ties}}
`;
    const tie = (from: string, to: string, says = 'length: 1 ft') =>
      `${from}${to}: {from: ${from}, to: ${to}, ${says}}`;
    const three = ['p1', 'p2', 'p3'];
    expect(verdictsOf(rule, several(tie('p2', 'p3'), three))).toEqual(['not met p1 p2 p3: several']);
    expect(verdictsOf(rule, several(`${tie('p1', 'p2')}, ${tie('p3', 'p4')}`))).toEqual([
      'not met p1 p2 p3 p4: several',
    ]);
    const chain = `${tie('p1', 'p2')}, ${tie('p2', 'p3')}`;
    expect(verdictsOf(rule, several(`${chain}, ${tie('p3', 'p4')}`))).toEqual(['met p1 p2 p3 p4: tied']);
    expect(verdictsOf(rule, several(`${chain}, ${tie('p3', 'p4', 'length: unknown')}`))).toEqual([
      'cannot tell p1 p2 p3 p4: tie unknown',
    ]);
    expect(verdictsOf(rule, several(`${chain}, ${tie('p3', 'p4', 'length: 1 ft, present: unknown')}`))).toEqual([
      'cannot tell p1 p2 p3 p4: tie unknown',
    ]);
  });

  it('does not say that a line of the mast comes in at the panel where its protector is indoors, or is none', () => {
    const net = (path: string, on = 'desk') =>
      site('east, ')
        .replace('antennas: {', 'antennas: {dish: {kind: dish}, ')
        .replace('bars: {', 'bars: {desk: {kind: station ground bar, where: house}, ')
        .replace('arresters: {', `arresters: {guard: {kind: data protector, on: ${on}}, `)
        .replace('  phone:', `  net: {kind: network, wires: 8, path: ${path}}\n  phone:`);
    expect(verdictsOf(rule, net('[dish, guard, radio]', 'east'))).toEqual(['met east: one']);
    expect(verdictsOf(rule, net('[dish, guard, radio]', 'west'))).toEqual(['not met east west: several']);
    expect(verdictsOf(rule, net('[dish, guard, radio]'))).toEqual(['cannot tell net: no bar', 'met east: one']);
    expect(findingsOf(rule, net('[dish, guard, radio]')).findings[0]!.under).toBeNull();
    // what nothing protects at all is found once, and this under it
    expect(verdictsOf(rule, net('[dish, radio]'))).toEqual(['cannot tell net: no bar', 'met east: one']);
    expect(findingsOf(rule, net('[dish, radio]')).findings[0]!.under).toBe('arrester-on-every-control-line:net');
    // where two panels are found apart that is told and nothing more; the telephone is its supplier's to bring in
    const several = net('[dish, guard, radio]').replace('path: [b, east, ', 'path: [b, west, ');
    expect(verdictsOf(rule, several)).toEqual(['not met east west: several']);
    expect(verdictsOf(rule, net('[street, radio]'))).toEqual(['met east: one']);
    expect(findingsOf(rule, site('east, ')).findings[0]!.because.text).toContain('bonded at the wall');
  });

  it('takes a panel that is bolted to another one for one with it', () => {
    const bolted = site('west, ').replace('west: {kind: entry panel', 'west: {kind: entry panel, on: east');
    expect(verdictsOf(rule, bolted)).toEqual(['met east west: tied']);
  });

  it('cannot tell without the length, nor of a line that nothing bonds at the wall, which another rule finds', () => {
    expect(verdictsOf(rule, site('west, ', ', length: unknown'))).toEqual(['cannot tell east west: tie unknown']);
    expect(verdictsOf(rule, site(''))).toEqual(['cannot tell two: no bar', 'met east: one']);
    expect(findingsOf(rule, site('')).findings[0]!.under).toBe('shield-bonded-at-entry:two');
    expect(outcomeOf(rule, 'site: {region: us, units: ft, service: unknown}\nlines: none\n')).toBe('not applicable');
  });
});

const coming = (line: string, rest = '', header = '', region = 'us') => `
site: {name: Coming in, region: ${region}, units: ft, service: unknown${header}}
antennas: {a: {kind: vertical}}
equipment: {radio: {kind: transceiver, where: inside}}
lines: {one: {kind: coax, path: [a, tube, radio]${line}}, two: {kind: coax, path: [a, radio]}}
arresters: {tube: {kind: gas tube${rest}}}
`;

/** Common practice, no source; no threshold. */
it('drip-loop asks every line once somebody looked at one', () => {
  const rule = 'drip-loop';
  expect(outcomeOf(rule, coming(''))).toBe('not looked at');
  expect(verdictsOf(rule, coming(', drip_loop: yes'))).toEqual(['cannot tell two: nobody said', 'met one: loop']);
  expect(verdictsOf(rule, coming(', drip_loop: no'))).toEqual(['not met one: no loop', 'cannot tell two: nobody said']);
  expect(outcomeOf(rule, coming(', drip_loop: yes').replaceAll('kind: coax', 'kind: coax, buried: yes'))).toBe(
    'not applicable',
  );
});

/** NFPA 70 810.6, 810.7, since 2014, second-hand; no threshold. */
it('arrester-listed asks a mark from the edition of 2014 on', () => {
  const rule = 'arrester-listed';
  expect(verdictsOf(rule, coming('', ', listed: yes'))).toEqual(['met tube: listed']);
  expect(verdictsOf(rule, coming('', ', listed: no'))).toEqual(['not met tube: not listed']);
  expect(verdictsOf(rule, coming(''))).toEqual(['cannot tell tube: nobody said']);
  const edition = (year: number) => `, code: {document: NFPA 70, edition: ${year}}`;
  expect(outcomeOf(rule, coming('', ', listed: no', edition(2011)))).toBe('not applicable');
  expect(verdictsOf(rule, coming('', ', listed: no', edition(2014)))).toEqual(['not met tube: not listed']);
  expect(outcomeOf(rule, coming('', ', listed: no', '', 'iec'))).toBe('not applicable');
  const mains = coming('').replace('kind: gas tube', 'kind: mains protector').replace('a, tube, radio', 'a, radio');
  expect(outcomeOf(rule, mains)).toBe('not applicable');
});

/** NFPA 70 810.20(B), second-hand; no threshold. */
it('discharge-unit-away-from-fuel asks where anything may burn', () => {
  const rule = 'discharge-unit-away-from-fuel';
  expect(verdictsOf(rule, coming('', ', near_fuel: no'))).toEqual(['met tube: nothing near']);
  expect(verdictsOf(rule, coming('', ', near_fuel: yes'))).toEqual(['not met tube: near fuel']);
  expect(verdictsOf(rule, coming('', ', where: inside'))).toEqual(['cannot tell tube: nobody said']);
  expect(outcomeOf(rule, coming('', ', where: outside'))).toBe('not applicable');
  const thatched = `${coming('', ', where: outside')}buildings: {cottage: {roof: thatch}}\n`;
  expect(verdictsOf(rule, thatched)).toEqual(['cannot tell tube: nobody said']);
});

everyOutcome('discharge-unit-away-from-fuel');
everyOutcome('drip-loop');
everyOutcome('arrester-listed');
everyOutcome('single-entry-panel');
