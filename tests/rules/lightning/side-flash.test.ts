import { describe, expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const site = (region: string, rail: string, downs = 1, length = '12 m', lightningClass = 'I') => `
site: {name: Beside, region: ${region}, units: m, service: unknown, claims: lightning protection class ${lightningClass}}
electrodes: {R1: {kind: rod}}
supports: {rod: {kind: air terminal}}
metalwork: {rail: {kind: railing, bonded: no, ${rail}}}
conductors:
${Array.from({ length: downs }, (_, i) => `  d${i + 1}: {from: rod, to: R1, role: down conductor, length: ${length}}\n`).join('')}`;
const near = (distance: string, height = '9 m', others = '') =>
  `at: [0, 0, ${height}], near: [{part: d1, distance: ${distance}}${others}]`;
const outcomeOf = (rule: string, text: string) => findingsOf(rule, text).outcome;

/**
 * By hand, h / (6 n) Km (NFPA 780, from memory): at 9 m of a conductor of 12 m, one down: surely near below 9 / 6 x 0.5 =
 * 0.75 m, surely far from 12 / 6 = 2 m on. Two down: n = 1.5: 0.5 m and 1.333 m. Three: n = 2.25: 0.333 m and 0.889 m.
 */
describe('side-flash-distance-us', () => {
  const rule = 'side-flash-distance-us';
  const first = (text: string) => verdictsOf(rule, text).find((v) => /d1/.test(v));

  it.each([
    [1, '0.74 m', 'not met'],
    [1, '0.76 m', 'cannot tell'],
    [1, '1.99 m', 'cannot tell'],
    [1, '2.01 m', 'met'],
    [1, '2.4 ft', 'not met'],
    [1, '6.6 ft', 'met'],
    [2, '0.49 m', 'not met'],
    [2, '1.34 m', 'met'],
    [3, '0.33 m', 'not met'],
    [3, '0.89 m', 'met'],
  ])('%d down, %s: %s', (downs, distance, outcome) => {
    const reasons = {
      met: 'met rail d1: far',
      'not met': 'not met rail d1: near',
      'cannot tell': 'cannot tell d1 rail: height unknown',
    };
    // the others within 100 ft, where the clause counts them
    const others = [2, 3]
      .slice(0, downs - 1)
      .map((i) => `, {part: d${i}, distance: 29 m}`)
      .join('');
    expect(first(site('us', near(distance, '9 m', others), downs))).toBe(reasons[outcome as keyof typeof reasons]);
  });

  it('cannot be told of metal of whose bond nobody spoke, where it is near', () => {
    const of = (bonded: string, distance: string, tie = '') =>
      verdictsOf(rule, `${site('us', near(distance)).replace('bonded: no, ', bonded)}${tie}`).find((v) => /d1/.test(v));
    const open = 'cannot tell d1 rail: bond unknown';
    for (const bonded of ['', 'bonded: unknown, ']) expect(of(bonded, '0.74 m')).toBe(open);
    expect(of('', '0.76 m')).toBe('cannot tell d1 rail: height unknown');
    expect(of('bonded: no, ', '0.74 m')).toBe('not met rail d1: near');
    // a wire is typed, and it leads elsewhere
    expect(of('', '0.74 m', '  w: {from: rail, to: pole}\nbars: {pole: {kind: other}}\n')).toBe(
      'not met rail d1: near',
    );
  });

  // NFPA 780: conductors within 100 ft share; farther ones, and those of unknown place, do not make the distance smaller
  it('counts the conductors within 100 ft alone', () => {
    const two = (other: string, distance: string) => first(site('us', near(distance, '9 m', other), 2));
    const at = (figure: string) => `, {part: d2, distance: ${figure}}`;
    expect(two(at('30.4 m'), '1.34 m')).toBe('met rail d1: far');
    expect(two(at('99 ft'), '1.34 m')).toBe('met rail d1: far');
    expect(two(at('30.6 m'), '1.34 m')).toBe('cannot tell d1 rail: height unknown');
    expect(two(at('101 ft'), '1.34 m')).toBe('cannot tell d1 rail: height unknown');
    expect(two('', '1.34 m')).toBe('cannot tell d1 rail: height unknown');
    expect(two('', '2.01 m')).toBe('met rail d1: far');
    expect(two(at('31 m'), '0.74 m')).toBe('not met rail d1: near');
    expect(two('', '0.74 m')).toBe('cannot tell d1 rail: height unknown');
  });

  it('cannot tell where conductors were left out: more may share, or join', () => {
    const partly = site('us', near('0.3 m')).replace('unknown, claims', 'unknown, incomplete: [conductors], claims');
    expect(first(partly.replace('bonded: no, ', ''))).toBe('cannot tell d1 rail: bond unknown');
    // even among three and more: 9 / 6 / 2.25 x 0.5 = 0.333 m
    expect(first(partly)).toBe('not met rail d1: near');
    expect(first(partly.replace('0.3 m', '0.34 m'))).toBe('cannot tell d1 rail: height unknown');
  });

  it('a bond at the foot alone does not reach up to the place where they are near', () => {
    const foot = (distance: string) =>
      first(`${site('us', near(distance))}  b: {from: rail, to: R1}\n`.replace('bonded: no, ', ''));
    expect(foot('0.74 m')).toBe('cannot tell d1 rail: bonded lower');
    expect(foot('0.76 m')).toBe('met rail d1: bonded');
    const ground = `${site('us', near('0.2 m', '0 m'))}  b: {from: rail, to: R1}\n`.replace('bonded: no, ', '');
    expect(first(ground)).toBe('met rail d1: bonded');
  });

  it('takes a bond, and weighs more than the missing bond, so that it stands by itself', () => {
    const tied = `${site('us', near('0.2 m'))}  b: {from: rail, to: rod}\n`;
    expect(verdictsOf(rule, tied.replace('bonded: no, ', ''))).toEqual(['met rail d1: bonded']);
    const [found] = findingsOf(rule, site('us', near('0.2 m'))).findings;
    expect([found!.severity, found!.under]).toEqual(['hazard', null]);
  });

  it('cannot tell at a height that nobody typed, and is asked where a distance to lightning protection is typed', () => {
    expect(first(site('us', 'near: [{part: d1, distance: 0.2 m}]'))).toBe('cannot tell d1 rail: height unknown');
    expect(outcomeOf(rule, site('us', 'metal: steel'))).toBe('not applicable');
    const unclaimed = site('us', near('0.2 m'))
      .replace(/, claims: [^}]*/, '')
      .replace(/, role: down conductor/g, '');
    expect(outcomeOf(rule, unclaimed.replace('kind: air terminal', 'kind: mast'))).toBe('not applicable');
  });
});

/**
 * By hand, ki / km kc l (IEC 62305-3:2010 6.3, second-hand): class I, one down, at 9 m of 12 m: surely near below 0.08 x 9 =
 * 0.72 m, surely far from 0.08 / 0.5 x 12 = 1.92 m on. Class III: 0.36 m and 0.96 m. Class II, two down: 0.06 x 0.66 x 9 =
 * 0.356 m. Three down, class I: 0.08 x 0.44 x 9 = 0.317 m.
 */
describe('separation-distance-iec', () => {
  const rule = 'separation-distance-iec';
  const first = (text: string) => verdictsOf(rule, text).find((v) => /d1/.test(v));

  it.each([
    ['I', 1, '0.71 m', 'not met'],
    ['I', 1, '0.73 m', 'cannot tell'],
    ['I', 1, '1.91 m', 'cannot tell'],
    ['I', 1, '1.93 m', 'met'],
    ['I', 1, '2.3 ft', 'not met'],
    ['I', 1, '6.4 ft', 'met'],
    ['III', 1, '0.35 m', 'not met'],
    ['III', 1, '0.97 m', 'met'],
    ['II', 2, '0.35 m', 'not met'],
    ['I', 3, '0.31 m', 'not met'],
    ['I', 3, '0.33 m', 'cannot tell'],
  ])('class %s, %d down, %s: %s', (lightningClass, downs, distance, outcome) => {
    const text = site('iec', near(distance), downs, '12 m', lightningClass);
    const reasons = {
      met: 'met rail d1: far',
      'not met': 'not met rail d1: near',
      'cannot tell': 'cannot tell d1 rail: height unknown',
    };
    expect(first(text)).toBe(reasons[outcome as keyof typeof reasons]);
  });

  it('without a class is sure only where the mildest and the strictest agree', () => {
    const unnamed = (distance: string) => site('iec', near(distance)).replace('class I', 'of the roof');
    expect(first(unnamed('0.35 m'))).toMatch(/^not met/);
    expect(first(unnamed('0.5 m'))).toMatch(/^cannot tell/);
    expect(first(unnamed('1.93 m'))).toMatch(/^met/);
  });
});

/** IEC 62305-3:2010 6.3 (second-hand) speaks of wiring as of metal; class I, one down, 9 m of 12 m: 0.72 m and 1.92 m as above. */
describe('separation-distance-iec: wiring', () => {
  const rule = 'separation-distance-iec';
  const wired = (lines: string, more = '') => `
site: {name: Beside, region: iec, units: m, service: unknown, claims: lightning protection class I}
electrodes: {R1: {kind: rod}}
supports: {rod: {kind: air terminal}}
bars: {main: {kind: main earthing bar}}
buildings: {house: {}}
arresters: {p: {kind: mains protector, on: main, covers: all}}
equipment: {intake: {kind: meter box, where: house}, lamp: {kind: other, where: house}}
lines: {${lines}}
conductors: {d1: {from: rod, to: R1, role: down conductor, length: 12 m}${more}}
`;
  const lamp = (says: string, path = '[intake, lamp]') => `l1: {kind: mains, path: ${path}, ${says}}`;
  const near = (distance: string) => `at: [0, 0, 9 m], near: [{part: d1, distance: ${distance}}]`;

  it.each([
    ['0.71 m', 'not met l1 d1: near'],
    ['2.3 ft', 'not met l1 d1: near'],
    ['0.73 m', 'cannot tell d1 l1: height unknown'],
    ['1.91 m', 'cannot tell d1 l1: height unknown'],
    ['1.93 m', 'met l1 d1: far'],
    ['6.4 ft', 'met l1 d1: far'],
  ])('at %s: %s', (distance, verdict) => {
    expect(verdictsOf(rule, wired(lamp(near(distance))))).toEqual([verdict]);
  });

  it('cannot tell at a height that nobody typed, nor of a line whose path is not known', () => {
    expect(verdictsOf(rule, wired(lamp('near: [{part: d1, distance: 0.1 m}]')))).toEqual([
      'cannot tell d1 l1: height unknown',
    ]);
    expect(verdictsOf(rule, wired(lamp(near('0.1 m'), '[intake, unknown]')))).toEqual([
      'cannot tell d1 l1: wiring perhaps bonded',
    ]);
    const partly = wired(lamp(near('0.1 m'))).replace('claims', 'incomplete: [arresters], claims');
    expect(verdictsOf(rule, partly)).toEqual(['cannot tell d1 l1: wiring perhaps bonded']);
    expect(verdictsOf(rule, partly.replace('0.1 m', '0.73 m'))).toEqual(['cannot tell d1 l1: height unknown']);
  });

  it('asks for the sections that nobody typed, where only a bond could clear what is too near', () => {
    const unseen = wired(lamp(near('0.1 m'))).replace(/arresters: .*\n/, '');
    const [found] = findingsOf(rule, unseen).findings;
    expect([found!.because.key, found!.remedy]).toEqual([
      'wiring perhaps bonded',
      expect.stringContaining('`arresters:`'),
    ]);
    expect(verdictsOf(rule, `${unseen}arresters: none\n`)).toEqual(['not met l1 d1: near']);
  });

  it('hangs on the length down to the bond where a protector or a shield is bonded', () => {
    const bar = ', b: {from: main, to: R1}';
    expect(verdictsOf(rule, wired(lamp(near('0.1 m'), '[p, intake, lamp]'), bar))).toEqual([
      'cannot tell d1 l1: wiring bonded',
    ]);
    // the bar of the protector is bonded to nothing else
    expect(verdictsOf(rule, wired(lamp(near('0.1 m'), '[p, intake, lamp]')))).toEqual(['not met l1 d1: near']);
    const coax = `l1: {kind: coax, path: [main, lamp], ${near('0.1 m')}}`;
    expect(verdictsOf(rule, wired(coax, bar))).toEqual(['cannot tell d1 l1: wiring bonded']);
    expect(verdictsOf(rule, wired(coax.replace('0.1 m', '2 m'), bar))).toEqual(['met l1 d1: far']);
  });

  it('takes the spacing of a line that runs along the conductor', () => {
    expect(verdictsOf(rule, wired(lamp('at: [0, 0, 9 m], along: {part: d1, spacing: 5 cm}')))).toEqual([
      'not met l1 d1: near',
    ]);
  });

  it('asks once about all lines of which no distance is typed', () => {
    const three = `${lamp('known: seen')}, l2: {kind: network, path: [lamp, unknown]}, l3: {kind: coax, path: [lamp, lamp]}`;
    expect(verdictsOf(rule, wired(three))).toEqual(['cannot tell l1 l2 l3: wiring not placed']);
    expect(verdictsOf(rule, wired(three.replace('known: seen', near('2 m'))))).toEqual([
      'cannot tell l2 l3: wiring not placed',
      'met l1 d1: far',
    ]);
  });

  it('leaves out glass, what is not there, what lies in the soil outdoors, and wiring in the United States', () => {
    const out = [
      'f: {kind: fibre, path: [intake, lamp], metal_inside: no}',
      'n: {kind: network, path: [intake, lamp], present: no}',
      'b: {kind: mains, path: [street, main], buried: yes}',
    ].join(', ');
    const outside = (lines: string) => wired(lines).replace('main: {kind', 'main: {where: outside, kind');
    expect(findingsOf(rule, outside(out)).outcome).toBe('not looked at');
    expect(verdictsOf(rule, outside(out.replace('metal_inside: no', 'metal_inside: yes')))).toEqual([
      'cannot tell f: wiring not placed',
    ]);
    expect(verdictsOf(rule, outside('b: {kind: mains, path: [street, intake], buried: yes}'))).toEqual([
      'cannot tell b: wiring not placed',
    ]);
    const us = wired(lamp(near('0.1 m'))).replace('region: iec', 'region: us');
    expect(verdictsOf('side-flash-distance-us', us)).toEqual([]);
  });
});

it('separation-distance-iec is not asked where no distance is typed', () => {
  expect(outcomeOf('separation-distance-iec', site('iec', 'metal: steel'))).toBe('not applicable');
});

everyOutcome('side-flash-distance-us');
everyOutcome('separation-distance-iec');
