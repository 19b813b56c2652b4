import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const head = (more = '', units = 'ft') => `site: {name: Rods, region: us, units: ${units}, service: panel${more}}
equipment: {panel: {kind: service panel}}
`;

/** NFPA 70 250.52(A)(5), 250.53(A)(4) (second-hand): 8 ft in the soil, printed as 2.44 m. */
describe('rod-length-us', () => {
  const rule = 'rod-length-us';
  const rod = (length: string) => `${head()}electrodes: {R: {kind: rod, length: ${length}}}\n`;

  eitherSide(rule, rod, [
    ['8 ft', '7.9 ft'],
    ['2.44 m', '2.4 m'],
  ]);

  it('asks what nobody knows; not of a rod of the supplier', () => {
    expect(verdictsOf(rule, rod('8 ft'))).toEqual(['met R: long enough']);
    expect(verdictsOf(rule, rod('5 ft'))).toEqual(['not met R: short']);
    expect(verdictsOf(rule, rod('unknown'))).toEqual(['cannot tell R: length unknown']);
    expect(verdictsOf(rule, rod('7 to 9 ft'))).toEqual(['cannot tell R: length unknown']);
    expect(findingsOf(rule, rod('5 ft, owner: utility')).outcome).toBe('not applicable');
  });
});

/** 8 ft in contact with soil: of 8 ft that stand 6 in out, 7.5 ft are; 8.5 ft leave 8 ft. */
describe('rod-length-us, of a rod that stands out of the ground', () => {
  const rule = 'rod-length-us';
  const rod = (length: string, top: string) =>
    `${head()}electrodes: {R: {kind: rod, length: ${length}, top: ${top}}}\n`;

  it('counts what is in the soil, and drives down what is long enough', () => {
    expect(verdictsOf(rule, rod('8 ft', '-6 in'))).toEqual(['not met R: stands out']);
    expect(verdictsOf(rule, rod('8.5 ft', '-6 in'))).toEqual(['met R: long enough']);
    expect(verdictsOf(rule, rod('2.44 m', '-150 mm'))).toEqual(['not met R: stands out']);
    expect(verdictsOf(rule, rod('8 ft', '0 in'))).toEqual(['met R: long enough']);
    expect(verdictsOf(rule, rod('8 ft', '6 in'))).toEqual(['met R: long enough']);
    expect(verdictsOf(rule, rod('7 ft', '-6 in'))).toEqual(['not met R: short']);
    const [finding] = findingsOf(rule, rod('8 ft', '-6 in')).findings;
    expect(finding!.change).toEqual([{ is: 'set', section: 'electrodes', id: 'R', field: 'top', value: '0 in' }]);
    expect(finding!.because.text).toContain('6 in');
  });
});

/** NFPA 70 250.53(A)(3), (B) (second-hand): 6 ft, printed as 1.83 m, between rods, pipes and plates of one system. */
describe('rod-spacing-minimum', () => {
  const rule = 'rod-spacing-minimum';
  const group = (spacing: string) =>
    `${head()}electrodes: {G: {kind: rods, count: 2, length: 8 ft, spacing: ${spacing}}}\n`;

  eitherSide(rule, group, [
    ['6 ft', '5.9 ft'],
    ['1.83 m', '1.8 m'],
  ]);

  it('measures between rods and plates with places, once they are one system', () => {
    const pair = (
      kind: string,
      conductors: string,
    ) => `${head()}electrodes: {A: {kind: rod, at: [0, 0]}, B: {kind: ${kind}, at: [4, 0]}}
conductors: {${conductors}}
`;
    expect(verdictsOf(rule, pair('rod', 'c: {from: A, to: B}'))).toEqual(['not met A B: near']);
    expect(verdictsOf(rule, pair('plate', 'c: {from: A, to: B}'))).toEqual(['not met A B: near']);
    const typed = pair('rod', 'c: {from: A, to: B}').replace('at: [0, 0]', 'near: {part: B, distance: 7 ft}');
    expect(verdictsOf(rule, typed)).toEqual(['met A B: far enough']);
    expect(findingsOf(rule, pair('rod', 'c: {from: panel, to: A}')).outcome).toBe('not applicable');
  });

  const wired = (wire: string, rods = 'A: {kind: rod}, B: {kind: rod}') =>
    `${head()}electrodes: {${rods}}\nconductors: {c: {from: A, to: B${wire}}}\n`;

  // of a wire of 3 ft no end is farther than 3 ft from the other; one of 30 ft may run in a coil
  it('takes the wire between two rods for the most that they are apart', () => {
    expect(verdictsOf(rule, wired(', length: 3 ft'))).toEqual(['not met A B: short wire']);
    expect(verdictsOf(rule, wired(', length: 1.8 m'))).toEqual(['not met A B: short wire']);
    for (const wire of ['', ', length: 6 ft', ', length: 30 ft', ', length: 3 to 8 ft'])
      expect(verdictsOf(rule, wired(wire))).toEqual(['cannot tell A B: spacing unknown']);
    const near = 'A: {kind: rod, near: {part: B, distance: 7 ft}}, B: {kind: rod}';
    expect(verdictsOf(rule, wired(', length: 30 ft', near))).toEqual(['met A B: far enough']);
    // by way of the panel nobody knows, nor by a wire that may not be there
    const perhaps = wired(', length: 3 ft, present: unknown}, d: {from: panel, to: A}, e: {from: panel, to: B');
    expect(findingsOf(rule, perhaps).outcome).toBe('not applicable');
  });

  it('of a wire past three rods asks neighbours only, in one line, each by its own piece', () => {
    const rods = 'A: {kind: rod}, M: {kind: rod}, B: {kind: rod}';
    expect(verdictsOf(rule, wired(', passes: [M]', rods))).toEqual(['cannot tell A B M: spacing unknown']);
    expect(verdictsOf(rule, wired(', passes: [M], lengths: [3 ft, 9 ft]', rods))).toEqual([
      // B may stand far enough from both
      'cannot tell A M: perhaps as one',
      'cannot tell B M: spacing unknown',
    ]);
    expect(verdictsOf(rule, wired(', passes: [M], length: 5 ft', rods))).toEqual([
      'not met A M: short wire',
      'not met B M: short wire',
    ]);
  });

  // 250.53(A)(3) speaks of rods that are needed to meet the section (from memory)
  it('counts two close ones as one where another stands far enough from both', () => {
    const three = (c: string, wires = 'c: {from: A, to: B}, d: {from: B, to: C}') =>
      verdictsOf(
        rule,
        `${head()}electrodes: {A: {kind: rod, at: [0, 0]}, B: {kind: rod, at: [4, 0]}, C: {kind: rod, ${c}}}\nconductors: {${wires}}\n`,
      ).filter((v) => v.includes('A B'));
    expect(three('at: [10, 0]')).toEqual(['met A B: count as one']);
    expect(three('at: [9.9, 0]')).toEqual(['not met A B: near']);
    expect(three('at: [-6, 0]')).toEqual(['met A B: count as one']);
    expect(three('length: 8 ft')).toEqual(['cannot tell A B: perhaps as one']);
    // of another system
    expect(three('at: [10, 0]', 'c: {from: A, to: B}')).toEqual(['not met A B: near']);
    const advice = `${head()}electrodes: {A: {kind: rod, length: 8 ft, at: [0, 0]}, B: {kind: rod, length: 8 ft, at: [4, 0]}, C: {kind: rod, length: 8 ft, at: [30, 0]}}\nconductors: {c: {from: A, to: B}, d: {from: B, to: C}}\n`;
    expect(verdictsOf('rod-spacing-effective', advice)).toContain('not met A B: near');
  });

  it('cannot tell without a spacing', () => {
    expect(verdictsOf(rule, group('6 ft'))).toEqual(['met G: far enough']);
    expect(verdictsOf(rule, group('unknown'))).toEqual(['cannot tell G: spacing unknown']);
    expect(verdictsOf(rule, group('5 to 7 ft'))).toEqual(['cannot tell G: spacing unknown']);
  });
});

/** NFPA 70 250.53(A)(3), note; Army preventive maintenance monthly 599 (read): twice the length. */
describe('rod-spacing-effective', () => {
  const rule = 'rod-spacing-effective';
  const group = (spacing: string, length = '8 ft') =>
    `${head()}electrodes: {G: {kind: rods, count: 2, length: ${length}, spacing: ${spacing}}}\n`;

  eitherSide(rule, group, [
    ['16 ft', '15.9 ft'],
    ['4.88 m', '4.8 m'],
  ]);

  // two rods 1.9 m apart: met by the code, not by the advice; both are said
  it('says both of rods that stand between 6 ft and twice their length', () => {
    expect(verdictsOf('rod-spacing-minimum', group('1.9 m'))).toEqual(['met G: far enough']);
    expect(verdictsOf(rule, group('1.9 m'))).toEqual(['not met G: near']);
    expect(findingsOf(rule, group('1.9 m')).findings[0]!.under).toBeNull();
    expect(findingsOf(rule, group('5 ft')).findings[0]!.under).toBe('rod-spacing-minimum:G');
  });

  it('cannot tell without spacing or length; a lone rod is not asked', () => {
    expect(verdictsOf(rule, group('16 ft'))).toEqual(['met G: far enough']);
    expect(verdictsOf(rule, group('unknown'))).toEqual(['cannot tell G: spacing unknown']);
    expect(verdictsOf(rule, group('16 ft', 'unknown'))).toEqual(['cannot tell G: spacing unknown']);
    expect(findingsOf(rule, `${head()}electrodes: {R: {kind: rod, length: 8 ft}}\n`).outcome).toBe('not applicable');
  });

  it('goes by the wire between two rods as the code does, and folds beneath it', () => {
    const wired = (length: string) =>
      `${head()}electrodes: {A: {kind: rod, length: 8 ft}, B: {kind: rod, length: 8 ft}}\nconductors: {c: {from: A, to: B${length}}}\n`;
    expect(verdictsOf(rule, wired(', length: 12 ft'))).toEqual(['not met A B: short wire']);
    expect(findingsOf(rule, wired(', length: 12 ft')).findings[0]!.under).toBeNull();
    expect(findingsOf(rule, wired(', length: 3 ft')).findings[0]!.under).toBe('rod-spacing-minimum:A+B');
    for (const length of ['', ', length: 16 ft', ', length: 40 ft']) {
      expect(verdictsOf(rule, wired(length))).toEqual(['cannot tell A B: spacing unknown']);
      expect(findingsOf(rule, wired(length)).findings[0]!.under).toBe('rod-spacing-minimum:A+B');
    }
  });

  it('stands alone where no code asks for 6 ft', () => {
    const iec = group('5 ft').replace('region: us', 'region: iec');
    expect(findingsOf(rule, iec).findings.map((f) => f.under)).toEqual([null]);
  });
});

/** NFPA 70 250.53(A)(2), exception; 250.56 to 2008 (second-hand): 25 ohm. */
describe('single-rod-25-ohm', () => {
  const rule = 'single-rod-25-ohm';
  const rod = (more: string, kind = 'rod', code = '') => `${head(code)}electrodes: {E: {kind: ${kind}}}
conductors: {c: {from: panel, to: E}}
${more}`;
  const read = (ohm: string) => `readings: {r: {kind: fall of potential, electrode: E, resistance: ${ohm}}}\n`;

  it('asks a reading of 25 ohm at most of a lone rod, pipe or plate', () => {
    expect(verdictsOf(rule, rod(read('25 ohm')))).toEqual(['met E: low']);
    expect(verdictsOf(rule, rod(read('25.1 ohm')))).toEqual(['not met E: high']);
    expect(verdictsOf(rule, rod(read('20 to 30 ohm')))).toEqual(['cannot tell E: wide']);
    for (const kind of ['rod', 'pipe', 'plate'])
      expect(verdictsOf(rule, rod('', kind))).toEqual(['not met E: not measured']);
    expect(findingsOf(rule, rod('', 'concrete-encased')).outcome).toBe('not applicable');
  });

  // the exception needs a value: one rod, not measured, does not meet it; two rods of 80 ohm do
  it('asks no resistance of two', () => {
    const two = rod(read('80 ohm'))
      .replace('E: {kind: rod}', 'E: {kind: rod}, F: {kind: rod}')
      .replace('conductors: {', 'conductors: {t: {from: E, to: F}, ');
    expect(verdictsOf(rule, two)).toEqual(['met E: not alone', 'met F: not alone']);
  });

  it('does not count the supplier’s electrode, nor rods that nothing joins', () => {
    const beside = (more: string) =>
      rod('')
        .replace('E: {kind: rod}', `E: {kind: rod}, F: {kind: rod${more}}`)
        .replace('conductors: {', 'conductors: {t: {from: panel, to: F}, ');
    expect(verdictsOf(rule, beside(', owner: utility'))).toEqual(['not met E: not measured']);
    expect(verdictsOf(rule, rod('').replace('kind: rod', 'kind: rods, count: 2, joined: no'))).toEqual([
      'cannot tell E: perhaps not alone',
    ]);
    // 250.53(A)(2) wants a second one of (A)(2) to (8), and a water pipe is (A)(1): from memory
    const pipe = beside('').replace('F: {kind: rod}', 'F: {kind: water pipe}');
    expect(verdictsOf(rule, pipe)).toEqual(['not met E: not measured']);
    // one that may be there is neither a second one nor itself found alone
    expect(verdictsOf(rule, beside(', present: unknown'))).toEqual(['cannot tell E F: perhaps not alone']);
  });

  it('asks for a test first where an edition to 2008 is adopted', () => {
    expect(verdictsOf(rule, rod('', 'rod', ', code: {document: NFPA 70, edition: 2008}'))).toEqual([
      'cannot tell E: not tested',
    ]);
  });
});

/** TIA-222-F and G; field reports (second-hand); no threshold. */
describe('galvanised-and-copper-in-soil', () => {
  const rule = 'galvanised-and-copper-in-soil';
  const site = (
    rod: string,
    { guy = 'galvanised steel', base = '', to = 'g1' } = {},
  ) => `${head()}electrodes: {A: {kind: rod${rod}}}
supports: {t: {kind: lattice tower, metal: galvanised steel${base}, guys: {g1: {anchor: [30, 0]${guy === '' ? '' : `, metal: ${guy}`}}}}}
conductors: {c: {from: ${to}, to: A, wire: 6 AWG tinned copper}}
`;
  const copper = ', metal: copper-clad steel';

  it('finds copper that is tied to a galvanised anchor', () => {
    expect(verdictsOf(rule, site(copper))).toEqual(['not met g1: eaten']);
    expect(verdictsOf(rule, site(', metal: galvanised steel'))).toEqual(['met g1: alike']);
    expect(verdictsOf(rule, site(', metal: tinned copper'))).toEqual(['met g1: alike']);
    expect(verdictsOf(rule, site(copper, { guy: 'stainless steel' }))).toEqual(['met g1: alike']);
    expect(verdictsOf(rule, site(copper, { to: 'panel' }))).toEqual(['met g1: no electrode']);
    expect(verdictsOf(rule, site(copper, { guy: '' }))).toEqual(['cannot tell g1: metal unknown']);
    expect(verdictsOf(rule, site(''))).toEqual(['cannot tell g1: metal unknown']);
    expect(findingsOf(rule, site(copper, { guy: 'none' })).outcome).toBe('not applicable');
  });

  it('reads the metal of a buried wire, and looks through a bar', () => {
    const guys = (
      conductors: string,
      wire = '2 AWG copper',
    ) => `${head()}electrodes: {w: {kind: buried wire, wire: ${wire}}, A: {kind: rod}}
supports: {t: {kind: lattice tower, guys: {g1: {metal: galvanised steel}}}}
bars: {b: {kind: other}}
conductors: {${conductors}}
`;
    expect(verdictsOf(rule, guys('c: {from: g1, to: w}'))).toEqual(['not met g1: eaten']);
    expect(verdictsOf(rule, guys('c: {from: g1, to: w, buried: no}', '2 AWG tinned copper'))).toEqual([
      'met g1: alike',
    ]);
    expect(verdictsOf(rule, guys('c: {from: g1, to: b}, d: {from: b, to: w}'))).toEqual(['not met g1: eaten']);
    // copper is known, the other metal is not: it is eaten whatever that is
    expect(verdictsOf(rule, guys('c: {from: g1, to: w}, d: {from: g1, to: A}'))).toEqual(['not met g1: eaten']);
    expect(verdictsOf(rule, guys('c: {from: g1, to: unknown}'))).toEqual(['cannot tell g1: end unknown']);
  });

  /** A guy on a rod of `rod`, by a lead that `lead` says, and what more is typed. */
  const anchored = (rod: string, lead: string, conductors = '', electrodes = '') => `${head()}electrodes:
  A: {kind: rod, metal: ${rod}}
  ring: {kind: buried wire, wire: 2 AWG copper}
  tin: {kind: buried wire, wire: 2 AWG tinned copper}
${electrodes}supports: {t: {kind: lattice tower, guys: {g1: {metal: galvanised steel}}}}
conductors: {lead: {from: g1, to: A, ${lead}}${conductors}}
`;
  const steel = 'wire: round 8 mm galvanised steel';

  it('goes on over a galvanised rod at the anchor, which is eaten with it, and ends at tinned wire', () => {
    const by = (conductors: string, rod = 'galvanised steel') => verdictsOf(rule, anchored(rod, steel, conductors));
    expect(by('')).toEqual(['met g1: alike']);
    expect(by(', b: {from: A, to: ring, wire: 6 AWG copper}')).toEqual(['not met g1: eaten']);
    expect(by(', b: {from: A, to: ring, wire: 6 AWG insulated copper}')).toEqual(['not met g1: eaten']);
    expect(by(', b: {from: A, to: ring, wire: round 8 mm galvanised steel}')).toEqual(['not met g1: eaten']);
    expect(by(', b: {from: A, to: ring, wire: 6 AWG tinned copper}')).toEqual(['met g1: alike']);
    expect(by(', b: {from: A, to: ring}')).toEqual(['cannot tell g1: perhaps']);
    expect(by(', b: {from: A, to: ring, present: unknown, wire: 6 AWG copper}')).toEqual(['cannot tell g1: perhaps']);
    expect(by(', b: {from: A, to: ring, present: no, wire: 6 AWG copper}')).toEqual(['met g1: alike']);
    const tin = 'b: {from: A, to: tin, wire: round 8 mm galvanised steel}';
    expect(by(`, ${tin}`)).toEqual(['met g1: alike']);
    expect(by(`, ${tin}, d: {from: tin, to: ring, wire: 2 AWG copper}`)).toEqual(['met g1: alike']);
    expect(by(', b: {from: A, to: panel, buried: no, wire: 6 AWG copper}, d: {from: panel, to: ring}')).toEqual([
      'met g1: alike',
    ]);
    // at the anchor itself copper is found by whatever it is tied
    expect(verdictsOf(rule, anchored('copper', 'wire: 6 AWG tinned copper'))).toEqual(['not met g1: eaten']);
    expect(by(', b: {from: A, to: ring}', 'stainless steel')).toEqual(['met g1: alike']);
  });

  it('counts bare copper wire in the soil, and asks whether it is bare and lies there', () => {
    const by = (lead: string) => verdictsOf(rule, anchored('galvanised steel', lead));
    expect(by('buried: 18 in, wire: 6 AWG bare copper')).toEqual(['not met g1: eaten by wire']);
    expect(by('buried: yes, wire: 6 AWG bare copper, present: unknown')).toEqual(['cannot tell g1: wire unknown']);
    expect(by('buried: 18 in, wire: 6 AWG copper')).toEqual(['cannot tell g1: wire unknown']);
    expect(by('wire: 6 AWG bare copper')).toEqual(['cannot tell g1: wire unknown']);
    expect(by('buried: 18 in')).toEqual(['cannot tell g1: wire unknown']);
    expect(by('buried: 18 in, wire: 6 AWG bare tinned copper')).toEqual(['met g1: alike']);
    expect(by('buried: 18 in, wire: 6 AWG insulated copper')).toEqual(['met g1: alike']);
    expect(by('buried: no, wire: 6 AWG bare copper')).toEqual(['met g1: alike']);
  });

  it('finds copper at a galvanised foot in the soil, not at one in concrete', () => {
    const foot = (base: string) =>
      verdictsOf(rule, site(copper, { guy: 'none', base: `, base: ${base}`, to: 't@base' }));
    expect(foot('set in the soil')).toEqual(['not met t: eaten']);
    expect(foot('direct burial')).toEqual(['not met t: eaten']);
    expect(foot('concrete block in the soil')).toEqual([]);
    // of a foot only what lands on it, or on a bar there, is looked at
    const over = anchored('galvanised steel', steel, ', b: {from: A, to: ring, wire: 6 AWG copper}')
      .replace('guys: {g1: {metal: galvanised steel}}', 'metal: galvanised steel, base: set in the soil')
      .replace('from: g1', 'from: t@base');
    expect(verdictsOf(rule, over)).toEqual(['met t: alike']);
  });
});

/** NFPA 70 250.52(B)(1); IEC 60364-5-54 542.2 (from memory); no threshold. */
describe('gas-pipe-never-electrode', () => {
  const rule = 'gas-pipe-never-electrode';
  const site = (conductors: string) => `${head()}electrodes: {R: {kind: rod}}
supports: {mast: {kind: mast}}
metalwork: {gas: {kind: gas pipe}}
conductors: {c: {from: panel, to: R}${conductors}}
`;

  it('lets a bond of the pipe stand, and no lead of a mast', () => {
    expect(verdictsOf(rule, site(', b: {from: panel, to: gas}'))).toEqual(['met gas: not used']);
    expect(verdictsOf(rule, site(', m: {from: mast@base, to: gas}'))).toEqual(['not met gas: used']);
    expect(findingsOf(rule, site(', m: {from: mast@base, to: gas}')).findings[0]!.severity).toBe('hazard');
    expect(verdictsOf(rule, site('').replace('service: panel', 'service: panel, incomplete: [conductors]'))).toEqual([
      'cannot tell gas: perhaps',
    ]);
    expect(findingsOf(rule, site('').replace(/metalwork: .*\n/, 'metalwork: none\n')).outcome).toBe('not applicable');
  });

  it('finds a tuner or an entry panel that has no other way to the soil', () => {
    const of = (conductors: string) =>
      site(conductors)
        .replace('metalwork:', 'bars: {entry: {kind: entry panel}}\nmetalwork:')
        .replace('panel: {kind: service panel}', 'panel: {kind: service panel}, tuner: {kind: tuner}');
    expect(verdictsOf(rule, of(', t: {from: tuner, to: gas}'))).toEqual(['not met gas: used']);
    expect(verdictsOf(rule, of(', t: {from: entry, to: gas}'))).toEqual(['not met gas: used']);
    expect(verdictsOf(rule, of(', t: {from: entry, to: gas}, e: {from: entry, to: R}'))).toEqual(['met gas: not used']);
    expect(verdictsOf(rule, of(', t: {from: entry, to: gas}, e: {from: entry, to: R, present: unknown}'))).toEqual([
      'cannot tell gas: other way',
    ]);
  });
});

everyOutcome('rod-length-us');
everyOutcome('rod-spacing-minimum');
everyOutcome('rod-spacing-effective');
everyOutcome('single-rod-25-ohm');
everyOutcome('galvanised-and-copper-in-soil');
everyOutcome('gas-pipe-never-electrode');
