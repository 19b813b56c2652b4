import { describe, expect, it } from 'vitest';
import type { Study } from '../../src/study/study.ts';
import { noSoil } from './no-soil.ts';
import { pageOf, piecesOf, sectionOf } from './page-of.ts';
import { clubStudy, houseStudy } from './samples.ts';

const withSoil = (soil: Partial<Study['earth']>, study = clubStudy): Study => ({
  ...study,
  earth: { ...study.earth, ...noSoil, ...soil },
});
const piecesIn = (study: Study, id = 'soil') => piecesOf(`<body>${sectionOf(pageOf(study), id)}`);
const textIn = (study: Study, id = 'soil') => piecesIn(study, id).join('\n');
const exact = (value: number) => ({ value, low: value, high: value });
const { earth } = clubStudy;

describe('the section on soil', () => {
  it('is not on the page of a study that says nothing of it, nor one that says no more than the resistances do', () => {
    expect(pageOf(withSoil({}))).not.toContain('id="soil"');
    expect(pageOf(withSoil({ conditions: earth.conditions.slice(0, 1) }))).not.toContain('id="soil"');
  });

  const alone: readonly (readonly [string, Partial<Study['earth']>, string])[] = [
    ['a fit', { soilFit: earth.soilFit }, 'Soil that fits the four-pin readings'],
    ['a soil of electrodes', { soilOfElectrodes: earth.soilOfElectrodes }, 'What measured grounding electrodes say'],
    ['a contradiction', { contradictions: earth.contradictions }, 'Readings that contradict each other or the soil'],
    ['conditions', { conditions: earth.conditions }, 'In each condition of the soil'],
    ['transferred shares', { transferred: earth.transferred }, 'What unbonded grounding electrodes take on'],
    ['depth curves', { depthCurves: earth.depthCurves }, 'How deep?'],
    ['spacing gains', { spacingGains: earth.spacingGains }, 'How far apart?'],
    ['rods in line', { rodLines: earth.rodLines }, 'How many?'],
    ['surfaces', { surfaces: earth.surfaces }, 'Voltage on the surface'],
    ['limits', { solve: earth.solve }, 'What was left out, and how much it can matter'],
  ];
  it.each(alone)('with %s alone has that and no other heading', (_, soil, heading) => {
    const headings = [...sectionOf(pageOf(withSoil(soil)), 'soil').matchAll(/<h3>([^<]*)</g)].map((m) => m[1]!);
    expect(headings).toHaveLength(1);
    expect(headings[0]).toContain(heading);
  });

  it('never has a word that promises, nor a figure of more than three digits', () => {
    for (const study of [clubStudy, houseStudy]) {
      const all = pageOf(study).replace(/<(?:style|svg)[^>]*>.*?<\/(?:style|svg)>/gs, '');
      expect(all).not.toMatch(/\bsafe(?:ly|ty)?\b|\billegal/i);
      const figures = textIn(study).match(/\d+(?:\.\d+)?/g) ?? [];
      const digits = (figure: string) => figure.replace('.', '').replace(/^0+|0+$/g, '').length;
      expect(figures.length).toBeGreaterThan(100);
      expect(figures.filter((f) => digits(f) > 3)).toEqual([]);
    }
  });

  it('has a caption of its own for each figure and table, so that a reader can tell them by ear', () => {
    for (const study of [clubStudy, houseStudy]) {
      const html = sectionOf(pageOf(study), 'soil');
      const captions = [...html.matchAll(/<(?:caption|figcaption)[^>]*>([^<]*)</g)].map((m) => m[1]);
      expect(captions.length).toBeGreaterThan(6);
      expect(new Set(captions).size).toBe(captions.length);
    }
  });
});

describe('the fit', () => {
  it('says how many layers, how far off, and what else was tried', () => {
    const text = textIn(withSoil({ soilFit: { ...earth.soilFit!, text: [] } }));
    expect(text).toContain(
      '2 layers fit the readings four-pin-1, four-pin-2: what they give lies 2.8 % off the readings',
    );
    expect(text).toContain('Tried: 1 layer, 41 % off; 2 layers, 2.8 % off; 3 layers, 2.7 % off.');
    // Where the study has sentences of its own, those say it.
    expect(textIn(clubStudy)).toContain('A thicker top layer of lower resistivity fits nearly as well');
    expect(textIn(clubStudy)).not.toContain('Tried:');
  });

  it('gives each layer with its range', () => {
    const pieces = piecesIn(clubStudy);
    for (const said of ['168 ohm m', '95 % range: 149 to 191 ohm m', '5.31 ft (1.62 m)', 'without end'])
      expect(pieces).toContain(said);
  });

  it('does not give a figure that is not resolved', () => {
    const layers = [
      {
        resistivityOhmM: { value: 333, low: 20, high: 4000, resolved: false },
        thicknessM: { value: 7.77, low: 1, high: null, resolved: false },
      },
      earth.soilFit!.layers[1]!,
    ];
    const range = { value: 555, low: 500, high: 611, resolved: true };
    const tradeOffs = [{ layer: 0, of: 'thickness times resistivity', range }] as const;
    const pieces = piecesIn(withSoil({ soilFit: { ...earth.soilFit!, layers, tradeOffs } }));
    const text = pieces.join('\n');
    expect(pieces.filter((said) => said === 'not resolved')).toHaveLength(2);
    expect(pieces).toContain('resolved: thickness times resistivity, 555 (500 to 611) ohm square metre');
    expect(pieces).toContain('a resistivity that is not resolved');
    expect(text).toContain('95 % range: 20 to 4000 ohm m');
    expect(text).toContain('95 % range: over 3.28 ft (1 m)');
    expect(text).not.toMatch(/333|7\.77/);
  });

  it('puts each reading beside what the layers give', () => {
    const points = [{ reading: 'r', spacingM: 3.048, measuredOhmM: 100, fittedOhmM: 97 }];
    const pieces = piecesIn(withSoil({ soilFit: { ...earth.soilFit!, points } }));
    const at = pieces.indexOf('10 ft (3.05 m)');
    expect(pieces.slice(at, at + 4)).toEqual(['10 ft (3.05 m)', '100 ohm m', '97 ohm m', '−3 %']);
  });

  it('leaves a reading of 0 ohm to the table, where no logarithm is taken of it', () => {
    const points = [0, 120].map((measuredOhmM) => ({ reading: 'r', spacingM: 3.048, measuredOhmM, fittedOhmM: null }));
    expect(piecesIn(withSoil({ soilFit: { ...earth.soilFit!, points } }))).toContain('0 ohm m');
    const none = { ...earth.soilFit!, points: points.slice(0, 1) };
    expect(sectionOf(pageOf(withSoil({ soilFit: none })), 'soil')).not.toContain('<svg');
  });

  it('says that nothing fits, and why', () => {
    const text = textIn(houseStudy);
    expect(text).toContain('read again at that spacing');
    const silent = { ...houseStudy.earth.soilFit!, text: [] };
    expect(textIn(withSoil({ soilFit: silent }, houseStudy))).toContain('No layers fit the reading meadow.');
  });
});

describe('conditions', () => {
  it('have a row each with the whole and the groups', () => {
    const pieces = piecesIn(clubStudy);
    const at = pieces.indexOf('Resistance to remote ground in each condition');
    expect(pieces.slice(at + 1, at + 9)).toEqual([
      'Condition',
      'The whole, at the service',
      'Group of 2 E-shack',
      'Group of 3 ring',
      'as typed',
      'over 14 ohm',
      '24 to 95 ohm',
      '5 to 22 ohm',
    ]);
    expect(textIn(clubStudy)).toContain('frozen down to 3 ft (0.91 m), wet below it');
  });

  it('give what an electrode has among the others: the bar’s voltage over its own current', () => {
    // 19 ohm for the whole and 36 % of its current: 19 / 0.36 = 52.8.
    const pieces = piecesIn(clubStudy);
    const at = pieces.indexOf('24 to 95 (36 %)');
    expect(pieces[at - 1]).toBe('53');
    expect(pieces).toContain('Each grounding electrode: ohm alone, and in brackets its share of the current');
  });

  it('of one group stand in one table with the soil', () => {
    const conditions = earth.conditions.map((c) => ({ ...c, groups: [] }));
    const pieces = piecesIn(withSoil({ conditions }));
    const at = pieces.indexOf('The soil in each condition, and the resistance to remote ground');
    expect(pieces.slice(at + 1, at + 5)).toEqual([
      'Condition',
      'What it means',
      'Layers, from the surface down',
      'The whole, at the service',
    ]);
    expect(pieces).not.toContain('Resistance to remote ground in each condition');
  });

  it('of many groups go on in a second table', () => {
    const groups = Array.from({ length: 6 }, (_, i) => ({ id: `g${i}`, resistanceOhm: exact(10 + i) }));
    const conditions = earth.conditions.map((c) => ({ ...c, groups }));
    const text = textIn(withSoil({ conditions }));
    expect(text).toContain('Resistance to remote ground in each condition, part 2');
    for (const g of groups) expect(text).toContain(`Group of ${g.id}`);
  });
});

describe('answers', () => {
  it('say how deep in a sentence: as it is, at twice that, at the deepest', () => {
    const points = [4, 8, 12, 16, 30].map((ft) => ({
      lengthM: ft * 0.3048,
      ohm: { value: 480 / ft, low: 400 / ft, high: 800 / ft },
    }));
    const curve = { electrode: 'E-service', condition: 'as typed', lengthM: 8 * 0.3048, points };
    // 400/8 to 800/8 and so on.
    expect(textIn(withSoil({ depthCurves: [curve] }))).toContain(
      '1 E-service alone, as typed: 50 to 100 ohm at 8 ft (2.44 m), as it is; 25 to 50 ohm at 16 ft (4.88 m); 13.3 to 26.7 ohm at 30 ft (9.14 m).',
    );
  });

  it('say how far apart in a sentence', () => {
    const points = [8, 16, 40].map((ft) => ({ spacingM: ft * 0.3048, ohm: 20, gainShare: 0.5 - 0.96 / ft }));
    const gains = [{ electrode: 'E-service', points }];
    // 0.5 - 0.96/8 = 38 %, 0.5 - 0.96/16 = 44 %, 0.5 - 0.96/40 = 47.6 %.
    expect(textIn(withSoil({ spacingGains: gains, depthCurves: earth.depthCurves }))).toContain(
      'A second one like 1 E-service, joined to it, lowers its resistance by 38 % at 8 ft (2.44 m), by 44 % at 16 ft (4.88 m), by 48 % at 40 ft (12.2 m); 50 % would be without mutual influence.',
    );
  });

  it('say how many in a row', () => {
    const rodLines = [{ electrode: 'E-service', spacingM: 16 * 0.3048, ohm: [48.2, 25.6, null] }];
    const pieces = piecesIn(withSoil({ rodLines }));
    const at = pieces.indexOf('1 E-service');
    expect(pieces.slice(at + 1, at + 5)).toEqual(['16 ft (4.88 m)', 'about 48 ohm', 'about 26 ohm', '–']);
  });

  it('tell electrodes with the same figures together', () => {
    const [curve] = earth.depthCurves;
    const twins = ['E-service', 'E-shack'].map((electrode) => ({ ...curve!, electrode }));
    const html = sectionOf(pageOf(withSoil({ depthCurves: twins })), 'soil');
    expect(html.match(/<svg /g)).toHaveLength(1);
    expect(html).toContain('1 E-service, 2 E-shack alone, as typed');
  });

  it('give transferred shares as ranges, never above the whole', () => {
    expect(piecesIn(clubStudy)).toEqual(expect.arrayContaining(['9 % to 19 %', '4 % to 9 %']));
    expect(piecesIn(houseStudy)).toContain('2 % to 100 %');
  });

  it('give the greatest of many shares, and say what the others do not pass', () => {
    const transferred = Array.from({ length: 50 }, (_, i) => ({
      electrode: `e${i}`,
      group: 'g',
      share: exact((i + 1) / 100),
    }));
    const pieces = piecesIn(withSoil({ transferred }));
    // 50 % down to 11 % are forty
    expect(pieces).toEqual(expect.arrayContaining(['50 %', '11 %']));
    expect(pieces).not.toContain('10 %');
    expect(pieces.join(' ')).toContain('10 more pairs are not listed here: none takes on more than 10 %.');
  });

  it('draw surfaces that differ by their place alone once, and name the others', () => {
    const [surface] = earth.surfaces;
    const moved = { ...surface!, group: 'E-shack', grid: { ...surface!.grid, westM: 900 }, touch: null };
    const html = sectionOf(pageOf(withSoil({ surfaces: [surface!, moved] })), 'soil');
    expect(html.match(/<svg /g)).toHaveLength(1);
    expect(html).toContain('The same holds for the group of 2 E-shack, each at its own place.');
    const other = { ...moved, step: { ...moved.step, share: moved.step.share / 2 } };
    expect(sectionOf(pageOf(withSoil({ surfaces: [surface!, other] })), 'soil').match(/<svg /g)).toHaveLength(2);
  });

  it('say how far apart the points of a map are', () => {
    const [surface] = earth.surfaces;
    const grid = { ...surface!.grid, stepM: 0.6096 };
    expect(textIn(withSoil({ surfaces: [{ ...surface!, grid }] }))).toContain(
      'between points 2 ft (0.61 m) apart; nearer to the metal than that the surface rises towards 100 %',
    );
  });

  it('give step and touch in per cent of the rise, with the caution', () => {
    const [surface] = earth.surfaces;
    const made = { ...surface!, step: { share: 0.1842, atM: 0.3048 }, touch: { share: 0.31, part: 'tower' } };
    const text = textIn(withSoil({ surfaces: [made] }));
    expect(text).toContain('the worst step of 3.28 ft (1 m) takes 18 % of the rise; it begins 1 ft (0.305 m) from A.');
    expect(text).toContain('From 9 tower to the surface 3.28 ft (1 m) away there stands up to 31 % of the rise.');
    expect(text).toContain('in per cent of the rise');
    expect(text).toContain('Keep people and animals away');
    expect(text).not.toMatch(/\d V\b|\bkV\b|\bkA\b/);
  });

  it('name what was left out and what leaks beside the electrodes', () => {
    const text = textIn(clubStudy);
    expect(text).toContain('thick-one is bare and in the soil without a known place');
    const rows = piecesIn(clubStudy, 'schedules');
    const numberOf = (id: string) => rows[rows.indexOf(id) - 1];
    expect(text).toContain(`worked out with the grounding electrodes: ${numberOf('c3')} c3, ${numberOf('c8')} c8.`);
  });
});

it('the method says into how many pieces the metal was cut and how far off that leaves a figure', () => {
  const text = textIn(clubStudy, 'method');
  expect(text).toContain('cut into 148 straight pieces');
  expect(text).toContain('would fall by about 0.31 %, most at 5 tower-rods.');
  expect(textIn(withSoil({}), 'method')).not.toContain('straight pieces');
});
