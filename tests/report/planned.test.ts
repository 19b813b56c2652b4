import { describe, expect, it } from 'vitest';
import type { ComparedStrike, DifferenceRow } from '../../src/compare/comparison.ts';
import { plannedParts } from '../../src/compare/planned-parts.ts';
import { sayCompare } from '../../src/shell/say-compare.ts';
import type { Study } from '../../src/study/study.ts';
import { studyOfExample, studyOfText } from '../examples/study-of-example.ts';
import { asFile, type Compared, compared, comparePageOf, marlHill, statementOf } from './compared.ts';
import { pageOf, piecesOf, sectionOf } from './page-of.ts';

const field = (checksum: string, more: string, known = 'seen') =>
  asFile(
    studyOfText(`
site: {name: Field, region: iec, units: m, service: main-bar, supply: tt, prepared: {date: 2026-01-02}}
buildings: {hut: {corners: [[0, 0], [4, 0], [4, 3], [0, 3]]}}
bars:
  main-bar: {kind: main earthing bar, at: [1, 1], where: hut}
electrodes:
  E1: {kind: rod, at: [6, 0], length: ${more === '' ? '1.5 m' : '2.5 m'}}
${more === '' ? '' : `  E2: {kind: rod, at: [9, 0], length: 1.5 m, known: ${known}}`}
equipment:
  board: {kind: service panel, at: [1, 2], where: hut}
lines:
  supply: {kind: mains, path: [street, board]}
conductors:
  w1: {from: E1, to: main-bar, wire: 16 mm2 copper, length: 6 m}
${more}
`),
    checksum,
  );
const wire = (known: string) => `  w2: {from: E2, to: main-bar, wire: 25 mm2 copper, known: ${known}}`;
const was = field('1', '');
const planned = compared(was, field('2', wire('planned'), 'planned'));
const built = compared(was, field('2', wire('seen'), 'seen'));

const said = (html: string) => piecesOf(html).join('\n');
const notBuilt = /2 parts of the second file are planned, not built: \d+ E2, \d+ w2\. Nobody says that they stand\./;

describe('a statement on a second file with planned parts', () => {
  const html = statementOf(planned);
  const text = said(html);

  it('says planned where it would say done', () => {
    for (const words of [
      'Statement on earthing and equipotential bonding: as found, and as planned',
      'As planned',
      'As planned: protector, where',
      'What is planned',
      'To be added: 1 earth electrode (E2); 1 conductor (w2).',
      'To be changed: 1 earth electrode (E1).',
    ])
      expect(piecesOf(html)).toContain(words);
    expect(text).toMatch(/Material needed, as counted from the file: /);
    expect(text).toMatch(/Once built as planned, \d+ findings? (?:is|are) cleared/);
    expect(text).toMatch(/told, to be changed|seen, to be changed/);
    expect(text).toContain('planned, not built, new');
  });

  it('nowhere says that it was done', () => {
    expect(html).toContain('<title>As found and as planned: Field');
    // the drawing tells what differs between the two files
    const prose = said(html.replace(/<svg.*?<\/svg>/gs, ''));
    expect(prose).not.toMatch(/as left|what was done|put in|found and done|(?<!to be )(?:added|taken out|changed): /i);
  });

  it('names the planned parts in the box of cautions', () => {
    expect(/<p class="caution">([^<]*)</.exec(html)![1]).toMatch(notBuilt);
  });

  it('says one part, and how many more where there are many', () => {
    const one = compared(was, field('2', wire('planned'), 'seen'));
    expect(said(statementOf(one))).toMatch(
      /1 part of the second file is planned, not built: \d+ w2\. Nobody says that it stands\./,
    );
    const rods = Array.from(
      { length: 9 },
      (_, i) => `  x${i}: {from: E1, to: E2, wire: 16 mm2 copper, known: planned}`,
    );
    const many = compared(was, field('2', rods.join('\n'), 'planned'));
    expect(said(statementOf(many))).toMatch(
      /10 parts of the second file are planned, not built: (?:[^,]+, ){7}[^,]+ and 2 more\./,
    );
  });
});

describe('a statement on a second file without planned parts', () => {
  it.each([
    ['a field', built],
    ['Marl Hill', marlHill],
  ])('says done: %s', (_, all) => {
    const text = said(statementOf(all));
    for (const words of ['and as left', 'As left', 'What was done', 'Material put in', 'what was found and done'])
      expect(text).toContain(words);
    expect(text).not.toMatch(/as planned|not built/i);
  });

  it('and so it does where a planned part was there before and nothing of it changed, or was built since', () => {
    const [before, after] = [field('1', wire('planned'), 'planned'), field('2', wire('seen'), 'seen')];
    expect(plannedParts(compared(before, asFile(before, '3')).comparison)).toEqual([]);
    expect(plannedParts(compared(before, after).comparison)).toEqual([]);
    expect(plannedParts(planned.comparison)).toEqual(['E2', 'w2']);
  });
});

describe('the before-and-after report', () => {
  it('says planned in its heads, sentences and caution', () => {
    const html = comparePageOf(planned);
    const pieces = piecesOf(html);
    for (const words of [
      'Earthing and equipotential bonding: as found, and as planned',
      'What would change',
      'Material needed',
    ])
      expect(pieces).toContain(words);
    expect(pieces.filter((t) => t === 'As planned').length).toBeGreaterThan(3);
    expect(pieces).not.toContain('After');
    expect(said(html)).toMatch(notBuilt);
    expect(said(html)).toContain('Left once built as planned: ');
  });

  it('says before and after of what was built', () => {
    const html = comparePageOf(built);
    expect(piecesOf(html)).toContain('Before and after: earthing and equipotential bonding');
    expect(piecesOf(html)).toContain('What changed');
    expect(said(html)).not.toMatch(/as planned|not built/i);
  });
});

describe('the terminal', () => {
  const sayOf = ({ comparison }: Compared) =>
    sayCompare(comparison, { terms: 'iec', unitsFirst: 'si' }, { width: 200, paint: (text) => text }, '');

  it('says of how many parts nobody says that they stand, but not of two states of one file', () => {
    const says = '2 parts of the second file are planned, not built: E2, w2.';
    expect(sayOf(planned)).toContain(says);
    expect(sayOf(built)).not.toContain('not built');
    const { before, after } = planned.comparison;
    const states = { ...planned.comparison, before: { ...before, checksum: after.checksum } };
    expect(sayOf({ ...planned, comparison: states })).not.toContain('not built');
  });

  it('has material in the words of the region', () => {
    const bar = { kind: 'bar', name: 'entry panel', unit: 'each', count: { low: 1, high: 1 }, unknown: 0 } as const;
    const comparison = { ...built.comparison, materials: { added: [bar], removed: [] } };
    expect(sayOf({ ...built, comparison })).toContain('1 × entry bonding bar');
  });
});

describe('material', () => {
  it('of which no length is known has no length of 0', () => {
    // w2 has no length typed, and no stops that give one
    const loose = compared(was, field('2', '  w2: {from: E2, to: main-bar, wire: 25 mm2 copper}'));
    const own = loose.comparison.materials.added.find((m) => m.name === '25 mm2 copper')!;
    const unknown = { ...own, count: { low: 0, high: 0 }, unknown: 5 };
    const added = [...loose.comparison.materials.added.filter((m) => m !== own), unknown];
    const all = { ...loose, comparison: { ...loose.comparison, materials: { added, removed: [] } } };
    expect(said(statementOf(all))).toContain('25 mm2 copper: 5 of unknown length');
    expect(said(comparePageOf(all))).toContain('5 of unknown length');
    for (const page of [statementOf(all), comparePageOf(all)]) expect(said(page)).not.toMatch(/(?<!\d)0 m \(0 ft\)/);
    const some = { ...unknown, count: { low: 3, high: 3 } };
    const partly = { ...all, comparison: { ...all.comparison, materials: { added: [some], removed: [] } } };
    expect(said(statementOf(partly))).toContain('25 mm2 copper: 3 m (9.84 ft) (5 of unknown length)');
  });

  it('has the words of the region', () => {
    const bar = { kind: 'bar', name: 'entry panel', unit: 'each', count: { low: 1, high: 1 }, unknown: 0 } as const;
    const all = { ...built, comparison: { ...built.comparison, materials: { added: [bar], removed: [] } } };
    expect(said(statementOf(all))).toContain('entry bonding bar: 1.');
    expect(piecesOf(comparePageOf(all))).toContain('entry bonding bar');
    expect(said(comparePageOf(all))).not.toContain('entry panel');
  });
});

it('one finding is one finding', () => {
  const verdict = { ...was.verdict, hazards: 1, defects: 1 };
  const [counts, { comparison }] = [{ ...built.comparison.before.counts, hazards: 1, defects: 1 }, built];
  const before = { ...comparison.before, counts };
  const html = statementOf({ before: { ...was, verdict }, after: built.after, comparison: { ...comparison, before } });
  expect(said(html)).toContain(
    '1 finding that can hurt people or start a fire, 1 that breaks a condition or is likely to',
  );
});

describe('a resistance of which only the metal is known', () => {
  const flat = studyOfExample('town-flat/town-flat.site.yaml');
  const withOhm = (resistanceOhm: Study['earth']['resistanceOhm']): Study => ({
    ...flat,
    earth: { ...flat.earth, resistanceOhm },
  });
  const resistances = (study: Study) => said(`<body>${sectionOf(pageOf(study), 'resistances')}`);

  it('is not known in the report either', () => {
    expect(flat.earth.resistanceOhm!.low).toBeLessThan(1e-3);
    expect(resistances(flat)).toContain('Earth resistance of the whole: not known.');
    expect(resistances(flat)).not.toMatch(/microohm|milliohm/);
  });

  it('is up to its upper bound where it has one, and else as it was', () => {
    expect(resistances(withOhm({ value: null, low: 0.0024, high: 411 }))).toContain(
      'of the whole: up to 411 ohm; how low it is, is not known.',
    );
    expect(resistances(withOhm({ value: null, low: 24, high: 95 }))).toContain('of the whole: 24 to 95 ohm.');
    expect(resistances(withOhm(null))).toContain('of the whole: could not be worked out.');
  });
});

describe('most volts of a statement', () => {
  const withFence = (tie: string, checksum: string) =>
    asFile(
      studyOfText(`
site: {name: Hill, region: us, units: ft, service: main-panel, supply: us-grounded}
buildings: {hut: {corners: [[0, 0], [10, 0], [10, 10], [0, 10]]}}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  E1: {kind: rod, at: [-2, 5], length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
  T1: {kind: rod, at: [32, 5], length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
supports:
  tower: {kind: lattice tower, at: [30, 5], height: 40 ft, legs: 3, face: 12 in, metal: galvanised steel, within_reach: [fence]}
equipment:
  main-panel: {kind: service panel, at: [1, 5], where: hut}
metalwork:
  fence: {kind: fence, route: [[33, 0], [33, 20]], metal: galvanised steel, bonded: ${tie === '' ? 'no' : 'yes'}, continuous: yes}
conductors:
  g1: {from: main-panel, to: E1, wire: 4 AWG copper, length: 6 ft, joints: [bolted lug, exothermic weld]}
  t1: {from: tower@base, to: T1, wire: 2 AWG copper, length: 4 ft, joints: [exothermic weld, exothermic weld]}
  j1: {from: T1, to: E1, wire: 2 AWG copper, length: 36 ft, joints: [exothermic weld, exothermic weld]}
${tie}
`),
      checksum,
    );
  const tied =
    '  f1: {from: fence, to: T1, wire: 2 AWG copper, length: 4 ft, joints: [exothermic weld, exothermic weld]}';
  /** 86 kV from tower to fence where the fence has a figure, and less from the panel to a rod. */
  const struck = (all: Compared, fence: { before: number | null; after: number | null }): Compared => {
    const sides = <T>(one: T) => ({ before: one, after: one });
    const row = (a: string, b: string, peakV: { before: number | null; after: number | null }): DifferenceRow => {
      const named = (id: string) => ({
        before: peakV.before === null ? null : id,
        after: peakV.after === null ? null : id,
      });
      return { a: named(a), b: named(b), why: 'reach', standing: 'changed', peakV, rangeV: sides(null) };
    };
    const strike: ComparedStrike = {
      at: sides('tower@top'),
      peakA: sides(30e3),
      wave: sides('1/200'),
      refused: sides(null),
      sameStroke: true,
      differences: [row('main-panel', 'E1', { before: 4280, after: 9540 }), row('tower', 'fence', fence)],
      conductors: [],
      electrodes: [],
    };
    return { ...all, comparison: { ...all.comparison, strike } };
  };
  const rowsOf = (all: Compared) =>
    sectionOf(statementOf(all), 'figures')
      .split('<tr>')
      .map((r) => piecesOf(`<body>${r}`))
      .filter((r) => r[0]!.startsWith('Most volts'));
  const was = withFence('', '1');
  const is = withFence(tied, '2');

  it('do not set a pair that had no figure beside another one', () => {
    const all = struck(compared(was, is), { before: null, after: 86_900 });
    const [both, alone] = rowsOf(all);
    expect(both!.slice(1, 3)).toEqual([
      expect.stringMatching(/^4\.28 kV, \d+ main-panel and \d+ E1$/),
      expect.stringMatching(/^9\.54 kV, \d+ main-panel and \d+ E1$/),
    ]);
    expect(alone![0]).toMatch(/^Most volts between two such things of which only one side has a figure$/);
    expect(alone![1]).toMatch(/^not worked out: \d+ fence tied to no grounding electrode$/);
    expect(alone![2]).toMatch(/^86\.9 kV, \d+ tower and \d+ fence$/);
    expect(piecesOf(comparePageOf(all))).toContain('not worked out');
  });

  it('say so of what was not there, and the other way round', () => {
    const without = asFile({ ...was, parts: was.parts.filter((p) => p.id !== 'fence') }, '3');
    expect(rowsOf(struck(compared(without, is), { before: null, after: 86_900 }))[1]![1]).toBe('not there');
    expect(rowsOf(struck(compared(is, was), { before: 86_900, after: null }))[1]!.slice(1, 3)).toEqual([
      expect.stringMatching(/^86\.9 kV/),
      expect.stringMatching(/^not worked out: \d+ fence tied to/),
    ]);
  });

  it('stand in one line where both sides have the worst pair, or the new one is not the worst', () => {
    const both = rowsOf(struck(compared(is, asFile(is, '3')), { before: 5e4, after: 86_900 }));
    expect(both.length).toBe(1);
    expect(both[0]![2]).toMatch(/^86\.9 kV, \d+ tower and \d+ fence$/);
    expect(rowsOf(struck(compared(was, is), { before: null, after: 100 })).length).toBe(1);
  });
});
