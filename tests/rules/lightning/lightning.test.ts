import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const head = (header: string) => `site: {name: Protected, units: m, service: unknown, ${header}}\n`;
const claimed = (region: string, lightningClass = 'III') =>
  head(`region: ${region}, claims: lightning protection class ${lightningClass}`);
const outcomeOf = (rule: string, text: string) => findingsOf(rule, text).outcome;
const unclaimed = head('region: us');

const downs = (count: number) =>
  `electrodes: {R1: {kind: rod}}\nsupports: {rod: {kind: air terminal}}\nconductors:\n${Array.from({ length: count }, (_, i) => `  d${i + 1}: {from: rod, to: R1, role: down conductor}\n`).join('')}`;
const house = (east: number, north: number, unit = '') =>
  `buildings: {house: {corners: [[0${unit}, 0${unit}], [${east}${unit}, 0${unit}], [${east}${unit}, ${north}${unit}], [0${unit}, ${north}${unit}]]}}\n`;

/** MIL-HDBK-419A vol. II (read): two at least; NFPA 780 (from memory): one more for each 100 ft beyond 250 ft of perimeter. */
describe('down-conductor-count', () => {
  const rule = 'down-conductor-count';

  it('cannot tell in the United States how many are asked without the way round the building', () => {
    expect(verdictsOf(rule, claimed('us') + downs(2))).toEqual(['cannot tell d1 d2: how far round']);
    expect(verdictsOf(rule, claimed('us') + downs(1))).toEqual(['not met d1: few']);
  });

  it('asks nothing of a mast by itself: one way down is enough for a slender one', () => {
    expect(outcomeOf(rule, `${claimed('us')}${downs(1)}buildings: none\n`)).toBe('not applicable');
    expect(outcomeOf('down-conductor-spacing-iec', `${claimed('iec')}${downs(1)}buildings: none\n`)).toBe(
      'not applicable',
    );
  });

  it('asks two', () => {
    expect(verdictsOf(rule, claimed('iec') + downs(2))).toEqual(['met d1 d2: enough']);
    expect(verdictsOf(rule, claimed('iec') + downs(1))).toEqual(['not met d1: few']);
  });

  it('asks a third of 252 ft and not of 248 ft in the United States, in feet and in metres', () => {
    expect(verdictsOf(rule, claimed('us') + house(62, 62, ' ft') + downs(2))).toEqual(['met d1 d2: enough']);
    expect(verdictsOf(rule, claimed('us') + house(63, 63, ' ft') + downs(2))).toEqual(['not met d1 d2: few']);
    expect(verdictsOf(rule, claimed('us') + house(19, 19) + downs(2))).toEqual(['met d1 d2: enough']);
    expect(verdictsOf(rule, claimed('us') + house(19.2, 19.2) + downs(2))).toEqual(['not met d1 d2: few']);
    expect(verdictsOf(rule, claimed('iec') + house(19.2, 19.2) + downs(2))).toEqual(['met d1 d2: enough']);
  });

  it('cannot tell what nobody typed, and asks nothing where nothing is claimed', () => {
    expect(verdictsOf(rule, claimed('us'))).toEqual(['cannot tell : not typed']);
    expect(outcomeOf(rule, unclaimed)).toBe('not applicable');
  });
});

/** IEC 62305-3:2010 Table 4, from memory: 10, 10, 15, 20 m; a fifth more is accepted. */
describe('down-conductor-spacing-iec', () => {
  const rule = 'down-conductor-spacing-iec';
  const of = (lightningClass: string, round: number) =>
    verdictsOf(rule, claimed('iec', lightningClass) + house(round / 4, round / 4) + downs(2));

  it.each([
    ['I', 23.6, 'met'],
    ['I', 24.4, 'not met'],
    ['II', 24.4, 'not met'],
    ['III', 35.6, 'met'],
    ['III', 36.4, 'not met'],
    ['IV', 47.6, 'met'],
    ['IV', 48.4, 'not met'],
  ])('class %s, %d m round two of them: %s', (lightningClass, round, outcome) => {
    const key = outcome === 'met' ? 'met d1 d2: close enough' : 'not met d1 d2: wide';
    expect(of(lightningClass, round)).toEqual([key]);
  });

  it('cannot tell where more may lead down than was typed', () => {
    const partly = head('region: iec, claims: lightning protection class I, incomplete: [conductors]');
    expect(verdictsOf(rule, partly + house(8, 8) + downs(2))).toEqual(['cannot tell d1 d2: not typed']);
    expect(verdictsOf(rule, partly + house(5, 5) + downs(2))).toEqual(['met d1 d2: close enough']);
  });

  it('reads corners in feet', () => {
    const feet = (side: number) => verdictsOf(rule, claimed('iec', 'I') + house(side, side, ' ft') + downs(2));
    expect(feet(19.6)[0]).toMatch(/^met/);
    expect(feet(19.8)[0]).toMatch(/^not met/);
  });

  it('cannot tell without the class or the corners', () => {
    expect(verdictsOf(rule, head('region: iec, claims: lightning protection') + house(5, 5) + downs(2))).toEqual([
      'cannot tell d1 d2: class unknown',
    ]);
    expect(verdictsOf(rule, claimed('iec') + downs(2))).toEqual(['cannot tell d1 d2: not typed']);
    expect(outcomeOf(rule, head('region: iec'))).toBe('not applicable');
  });
});

/** NFPA 780 (2023) 1.5.3, second-hand; no threshold. Left out is none, `unknown` is nobody knows. */
it('claimed-standard-named asks a certificate of who claims protection', () => {
  const rule = 'claimed-standard-named';
  expect(verdictsOf(rule, claimed('us'))).toEqual(['not met : not named']);
  const typed = (certificate: string) =>
    findingsOf(rule, claimed('us').replace('claims:', `certificate: ${certificate}, claims:`)).findings[0]!;
  const said = (certificate: string) => `${typed(certificate).outcome}: ${typed(certificate).because.key}`;
  expect(verdictsOf(rule, claimed('us').replace('claims:', 'certificate: sheet 4, claims:'))).toEqual(['met : named']);
  expect(verdictsOf(rule, claimed('us').replace('claims:', 'certificate: unknown, claims:'))).toEqual([
    'cannot tell : nobody knows',
  ]);
  expect(said('{is: unknown}')).toBe('cannot tell: nobody knows');
  expect(typed('unknown').tool).toBe('papers');
  expect(['none', 'no'].map(said)).toEqual(['not met: not named', 'not met: not named']);
  expect(outcomeOf(rule, unclaimed)).toBe('not applicable');
  expect(outcomeOf(rule, head('region: us, claims: no lightning protection'))).toBe('not applicable');
  expect(outcomeOf(rule, head('region: us, claims: without any lightning protection'))).toBe('not applicable');
});

/** NFPA 780 and IEC 62305-3, from memory: copper of 29 mm² (57,400 cmil) and of 50 mm². */
describe('roof-mast-bonded-to-lightning-system', () => {
  const rule = 'roof-mast-bonded-to-lightning-system';
  const site = (region: string, mast: string, wire: string | null) => `${claimed(region)}
electrodes: {R1: {kind: rod}}
supports: {rod: {kind: air terminal, height: 8 m}, mast: {kind: roof mast${mast}}}
conductors: {d1: {from: rod, to: R1, role: down conductor}${wire === null ? '' : `, b: {from: mast, to: rod, wire: ${wire}}`}}
`;

  it('asks a bond of main size', () => {
    expect(verdictsOf(rule, site('us', '', '29 mm2 copper'))).toEqual(['met mast: bonded']);
    expect(verdictsOf(rule, site('us', '', '28.8 mm2 copper'))).toEqual(['not met mast: thin']);
    expect(verdictsOf(rule, site('us', '', '2 AWG copper'))).toEqual(['met mast: bonded']);
    expect(verdictsOf(rule, site('us', '', '4 AWG copper'))).toEqual(['not met mast: thin']);
    expect(verdictsOf(rule, site('iec', '', '50 mm2 copper'))).toEqual(['met mast: bonded']);
    expect(verdictsOf(rule, site('iec', '', '49 mm2 copper'))).toEqual(['not met mast: thin']);
    expect(findingsOf(rule, site('iec', '', '35 mm2 copper')).findings[0]!.severity).toBe('defect');
  });

  it('asks more of aluminium, and what metal it is', () => {
    // NFPA 780: 98,600 cmil (50 mm²) of aluminium up to 75 ft, 115,000 cmil of copper above; both from memory
    const low = (wire: string, height = '8 m') =>
      verdictsOf(rule, site('us', '', wire).replace('height: 8 m', `height: ${height}`));
    expect(low('35 mm2 aluminium')).toEqual(['not met mast: thin']);
    expect(low('50 mm2 aluminium')).toEqual(['met mast: bonded']);
    expect(low('2 AWG')).toEqual(['cannot tell mast: size unknown']);
    expect(low('29 mm2 copper', '30 m')).toEqual(['not met mast: thin']);
    expect(low('29 mm2 copper', 'unknown')).toEqual(['cannot tell mast: height unknown']);
    expect(low('58 mm2 copper', '30 m')).toEqual(['met mast: bonded']);
    expect(verdictsOf(rule, site('iec', '', 'strap 20 mm x 3 mm aluminium'))).toEqual(['not met mast: thin']);
  });

  it('is a hazard beside the lightning protection without a bond, 6 ft or 1.8 m', () => {
    const near = (distance: string) => `, near: [{part: d1, distance: ${distance}}]`;
    expect(verdictsOf(rule, site('us', near('5.8 ft'), null))).toEqual(['not met mast: apart']);
    expect(verdictsOf(rule, site('us', near('1.81 m'), null))).toEqual(['cannot tell mast: not bonded']);
    expect(findingsOf(rule, site('us', near('3 ft'), null)).findings[0]!.severity).toBe('hazard');
  });

  // The distance of the United States is no figure of IEC 62305-3: there a mast under the terminals that keeps the separation
  // distance is left untied, since a tie would lead part of the strike into the building.
  describe('by IEC, under the terminals', () => {
    // class III, two down conductors, 9 m each: s at most 0.04 / 0.5 x 0.66 x 9 = 0.475 m from one of them, and, down the
    // terminal of 13 m and one of them, 0.04 / 0.5 x 0.66 x 22 = 1.162 m from the terminal
    const roof = (mast: string, more = '', header = claimed('iec')) => `${header}
electrodes: {R1: {kind: rod}}
supports: {rod: {kind: air terminal, height: 13 m, at: [10, 7]}, mast: {kind: roof mast, metal: steel, ${mast}}}
antennas: {whip: {kind: vertical, on: mast@top}}
bars: {main: {kind: main earthing bar}}
conductors:
  d1: {from: rod, to: R1, role: down conductor, length: 9 m}
  d2: {from: rod, to: R1, role: down conductor, length: 9 m}
  earth: {from: main, to: R1, wire: 16 mm2 copper}
${more}`;
    const beside = (m: string, rest = '') =>
      `height: 11 m, at: [11.2, 7]${rest}, near: [{part: d1, distance: ${m}}, {part: d2, distance: ${m}}]`;
    const of = (text: string) => verdictsOf(rule, text);

    it('is met apart, tied to nothing or to the main bar by a bond', () => {
      expect(of(roof(beside('0.48 m', ', bonded: no')))).toEqual(['met mast: stands apart']);
      expect(of(roof(beside('0.48 m'), '  b: {from: mast@base, to: main, wire: 4 mm2 copper}\n'))).toEqual([
        'met mast: stands apart',
      ]);
    });

    it('cannot tell while a distance, a height or the class is not known; proposes no tie', () => {
      const texts = [
        roof(beside('0.47 m', ', bonded: no')),
        roof('height: 11 m, at: [11.2, 7], bonded: no'),
        roof(beside('0.48 m', ', bonded: no').replace('height: 11 m', 'height: unknown')),
        roof(beside('0.48 m', ', bonded: no').replace('[11.2, 7]', '[11.1, 7]')),
        roof('height: 11 m, at: [11.2, 7]', '  b: {from: mast@base, to: main, wire: 4 mm2 copper}\n'),
      ];
      for (const text of texts) {
        expect(of(text)).toEqual(['cannot tell mast: may stand apart']);
        expect(findingsOf(rule, text).findings[0]!.change ?? []).toEqual([]);
      }
    });

    it('is a hazard nearer than that at its height, and where the mast stands out of the zone with no bond', () => {
      // at least 0.04 x 0.66 x 8 = 0.211 m at 8 m
      const at8 = beside('0.2 m', ', bonded: no').replace('[11.2, 7]', '[11.2, 7, 8]');
      expect(of(roof(at8))).toEqual(['not met mast: too near']);
      expect(of(roof(at8.replaceAll('0.2 m', '0.22 m')))).toEqual(['cannot tell mast: may stand apart']);
      const high = beside('3 m', ', bonded: no').replace('11 m', '13 m');
      expect(of(roof(high))).toEqual(['not met mast: outside zone']);
      expect(findingsOf(rule, roof(high)).findings[0]!.severity).toBe('hazard');
    });

    it('asks main size of what is joined to a terminal', () => {
      const tied = roof(beside('0.48 m'), '  b: {from: mast, to: rod, wire: 16 mm2 copper}\n');
      expect(of(tied)).toEqual(['not met mast: thin']);
    });

    it('demands neither earth nor 16 mm² of it as of an antenna that is struck', () => {
      const bare = roof('height: 11 m, at: [11.2, 7], bonded: no');
      expect(verdictsOf('iec-mast-earthed', bare)).toContain('cannot tell mast: under terminals');
      const lead = roof('height: 11 m, at: [11.2, 7]', '  b: {from: mast@base, to: main, wire: 4 mm2 copper}\n');
      expect(verdictsOf('antenna-earthing-size-iec', lead)).toEqual(['cannot tell b: under terminals']);
      // out of the zone, or of a class that nobody said, they are asked as ever
      const out = (text: string) => text.replace('height: 11 m', 'height: 13 m');
      expect(verdictsOf('iec-mast-earthed', out(bare))).toContain('not met mast: no way');
      expect(verdictsOf('antenna-earthing-size-iec', out(lead))).toEqual(['not met b: small']);
      const unnamed = roof('height: 11 m, at: [11.2, 7], bonded: no', '', head('region: iec'));
      expect(verdictsOf('iec-mast-earthed', unnamed)).toContain('not met mast: no way');
    });
  });

  it('cannot tell what nobody typed, and is not asked where nothing is claimed', () => {
    expect(verdictsOf(rule, site('us', '', null))).toEqual(['cannot tell mast: not bonded']);
    expect(verdictsOf(rule, site('us', '', 'unknown'))).toEqual(['cannot tell mast: size unknown']);
    expect(verdictsOf(rule, `${claimed('us')}supports: {mast: {kind: roof mast}}\n`)).toEqual([
      'cannot tell mast: system not typed',
    ]);
    expect(outcomeOf(rule, `${unclaimed}supports: {mast: {kind: roof mast}}\n`)).toBe('not applicable');
  });
});

/** NFPA 70 810.18(A), restated in an ordinance and a training page: 6 ft. */
describe('lead-in-clear-of-lightning-conductor', () => {
  const rule = 'lead-in-clear-of-lightning-conductor';
  const site = (near: string, path = 'whip, unknown') => `${head('region: us')}
electrodes: {R1: {kind: rod}}
supports: {rod: {kind: air terminal}}
antennas: {whip: {kind: vertical}}
lines: {coax: {kind: coax, path: [${path}]${near}}}
conductors: {d1: {from: rod, to: R1, role: down conductor}}
`;
  const near = (distance: string) => `, near: [{part: d1, distance: ${distance}}]`;

  it('asks 6 ft, in feet and in metres, or a bond', () => {
    expect(verdictsOf(rule, site(near('6 ft')))).toEqual(['met coax d1: clear']);
    expect(verdictsOf(rule, site(near('5.8 ft')))).toEqual(['not met coax d1: near']);
    expect(verdictsOf(rule, site(near('1.8 m')))).toEqual(['met coax d1: clear']);
    expect(verdictsOf(rule, site(near('1.79 m')))).toEqual(['not met coax d1: near']);
    expect(verdictsOf(rule, site(near('1 m'), 'whip, {bond: rod}, unknown'))).toEqual(['met coax d1: bonded']);
  });

  it('cannot tell without a distance, and is not asked without a lightning conductor', () => {
    expect(verdictsOf(rule, site(''))).toEqual(['cannot tell coax d1: distance unknown']);
    expect(outcomeOf(rule, site('').replace(', role: down conductor', ''))).toBe('not applicable');
  });
});

/**
 * Rolling sphere by hand: R = 46 m, terminal H = 10 m: sqrt(10 x 82) = 28.636 m; antenna h = 5 m: sqrt(5 x 87) = 20.857 m;
 * so 7.779 m. Class I, R = 20 m: sqrt(10 x 30) - sqrt(5 x 35) = 17.321 - 13.229 = 4.092 m. Radii from memory.
 */
describe('antenna-in-protected-zone', () => {
  const rule = 'antenna-in-protected-zone';
  const site = (header: string, east: string, height = '5 m') => `${header}
supports: {rod: {kind: air terminal, at: [0, 0], height: 10 m}}
antennas: {whip: {kind: vertical, at: [${east}, 0], height: ${height}}}
`;

  it('draws the line where the sphere does', () => {
    expect(verdictsOf(rule, site(claimed('us'), '7.7'))).toEqual(['met whip: under']);
    expect(verdictsOf(rule, site(claimed('us'), '7.9'))).toEqual(['not met whip: outside']);
    expect(verdictsOf(rule, site(claimed('us'), '25.4 ft', '16.4 ft'))).toEqual(['met whip: under']);
    expect(verdictsOf(rule, site(claimed('iec', 'I'), '4.0'))).toEqual(['met whip: under']);
    expect(verdictsOf(rule, site(claimed('iec', 'I'), '4.2'))).toEqual(['not met whip: outside']);
    expect(verdictsOf(rule, site(claimed('us'), '0', '9.7 m'))).toEqual(['met whip: under']);
    expect(verdictsOf(rule, site(claimed('us'), '0', '9.8 m'))).toEqual(['not met whip: outside']);
  });

  it('cannot tell where several terminals, or a terminal and a roof, may hold the sphere up together', () => {
    const beside = (second: string) =>
      site(claimed('us'), '8').replace(
        'height: 10 m}',
        `height: 10 m}, second: {kind: air terminal, at: [16, 0], height: ${second}}`,
      );
    expect(verdictsOf(rule, beside('10 m'))).toEqual(['cannot tell whip: several']);
    expect(verdictsOf(rule, beside('5.2 m'))).toEqual(['not met whip: outside']);
    const house = 'buildings: {house: {height: 4 m}}\n';
    expect(verdictsOf(rule, `${site(claimed('us'), '8')}${house}`)).toEqual(['cannot tell whip: several']);
    expect(verdictsOf(rule, `${site(claimed('us'), '8', '9.8 m')}${house}`)).toEqual(['not met whip: outside']);
  });

  it('cannot tell without the class, the terminal or a height', () => {
    expect(verdictsOf(rule, site(head('region: iec, claims: lightning protection'), '1'))).toEqual([
      'cannot tell whip: not typed',
    ]);
    expect(verdictsOf(rule, site(claimed('us'), '1', 'unknown'))).toEqual(['cannot tell whip: not typed']);
    expect(verdictsOf(rule, `${claimed('us')}antennas: {whip: {kind: vertical}}\n`)).toEqual([
      'cannot tell whip: not typed',
    ]);
  });

  it('is not asked where no lightning protection is claimed', () => {
    expect(outcomeOf(rule, site(unclaimed, '20'))).toBe('not applicable');
  });
});

/** NFPA 780 4.6, from memory: 3/16 in. */
it('mast-as-strike-termination asks a wall of 3/16 in where the mast is the terminal', () => {
  const rule = 'mast-as-strike-termination';
  const of = (wall: string, header = claimed('us')) =>
    verdictsOf(rule, `${header}supports: {mast: {kind: mast, wall: ${wall}}}\n`);
  expect(of('3/16 in')).toEqual(['met mast: thick']);
  expect(of('4.8 mm')).toEqual(['met mast: thick']);
  expect(of('4.7 mm')).toEqual(['not met mast: thin']);
  expect(of('0.18 in')).toEqual(['not met mast: thin']);
  expect(of('unknown')).toEqual(['cannot tell mast: unknown']);
  expect(of('3 mm', unclaimed)).toEqual([]);
});

everyOutcome('lead-in-clear-of-lightning-conductor');
everyOutcome('down-conductor-count');

describe('each figure on both sides', () => {
  const roof = (region: string) => (wire: string) =>
    `${claimed(region)}
electrodes: {R1: {kind: rod}}
supports: {rod: {kind: air terminal, height: 8 m}, mast: {kind: roof mast}}
conductors: {d1: {from: rod, to: R1, role: down conductor}, b: {from: mast, to: rod, wire: ${wire}}}
`;
  eitherSide('roof-mast-bonded-to-lightning-system', roof('us'), [
    ['29 mm2 copper', '28.8 mm2 copper'],
    ['57.4 kcmil copper', '56 kcmil copper'],
  ]);
  eitherSide('roof-mast-bonded-to-lightning-system', roof('iec'), [
    ['50 mm2 copper', '49 mm2 copper'],
    ['99 kcmil copper', '97 kcmil copper'],
  ]);
  const wall = (figure: string) => `${claimed('us')}supports: {mast: {kind: mast, wall: ${figure}}}\n`;
  eitherSide('mast-as-strike-termination', wall, [
    ['3/16 in', '0.18 in'],
    ['0.19 in', '0.185 in'],
    ['4.8 mm', '4.7 mm'],
  ]);
  // H 10 m, h 5 m: sqrt(H(2R - H)) - sqrt(h(2R - h)), R 30, 45 and 60 m: 5.778, 7.682 and 9.184 m
  const zone = (lightningClass: string) => (east: string) =>
    `${claimed('iec', lightningClass)}
supports: {rod: {kind: air terminal, at: [0, 0], height: 10 m}}
antennas: {whip: {kind: vertical, at: [${east}, 0], height: 5 m}}
`;
  eitherSide('antenna-in-protected-zone', zone('II'), [['5.7', '5.9']]);
  eitherSide('antenna-in-protected-zone', zone('III'), [
    ['7.6', '7.8'],
    ['24.9 ft', '25.5 ft'],
  ]);
  eitherSide('antenna-in-protected-zone', zone('IV'), [['9.1', '9.3']]);
});

it('none of them is asked without lightning protection, a mast, an antenna', () => {
  const bare = `${unclaimed}supports: {mast: {kind: mast}}\n`;
  expect(outcomeOf('mast-as-strike-termination', bare)).toBe('not applicable');
  expect(outcomeOf('roof-mast-bonded-to-lightning-system', bare)).toBe('not applicable');
});

everyOutcome('roof-mast-bonded-to-lightning-system');
everyOutcome('mast-as-strike-termination');
everyOutcome('down-conductor-spacing-iec', {
  limits: 'a usual distance: a fifth more is accepted, and both sides of that stand above',
});
everyOutcome('claimed-standard-named');
everyOutcome('antenna-in-protected-zone', {
  limits: 'the radius of a sphere is no figure of the site: where it reaches is worked out by hand above',
});
