import { describe, expect, it } from 'vitest';
import { adoptedEdition, adoptedYear } from '../../src/rules/code-sets/adopted-edition.ts';
import { bindsIn } from '../../src/rules/code-sets/binds-where.ts';
import { inEdition, movedThresholds } from '../../src/rules/code-sets/moved-thresholds.ts';
import { setAsks, siteSets } from '../../src/rules/code-sets/site-sets.ts';
import type { CodeSet } from '../../src/rules/rule.ts';
import type { CodeRef, Region } from '../../src/site/site.ts';

const header = (document: string, edition: string | null = null) => ({
  codes: [{ document, edition, amendments: null }] as readonly CodeRef[],
});

describe('whose conditions are asked', () => {
  it.each([
    ['us', 'us', true],
    ['us', 'iec', false],
    ['uk', 'iec', true],
    ['iec', 'uk', false],
    ['au', 'any', true],
    ['unknown', 'us', true],
    ['ca', 'us', false],
  ] as const)('%s is asked a rule of %s: %s', (region, set, asked) => {
    expect(setAsks({ codeSets: [set as CodeSet] }, region as Region)).toBe(asked);
  });

  it('is the region alone where nothing else is typed', () => {
    expect(siteSets({ region: 'uk' })).toEqual(['uk']);
    expect(siteSets({ region: 'us', codeSets: ['us', 'iec'] })).toEqual(['us', 'iec']);
  });

  it.each([
    ['NFPA 70', 'us', true],
    ['NFPA 70', 'ca', false],
    ['NFPA 70; IEC 60364-5-54', 'uk', true],
    ['BS 7671', 'iec', false],
    ['ITU-T K.27', 'au', true],
    ['MIL-HDBK-419A; NFPA 780', 'iec', false],
  ] as const)('%s binds in %s: %s', (document, region, binds) => {
    expect(bindsIn(document, region)).toBe(binds);
  });
});

describe('the adopted edition', () => {
  it.each([
    ['national electrical code', '2017', 'NFPA 70', 2017],
    ['NFPA 70', '2020 with state amendments', 'NFPA 70', 2020],
    ['NEC 2014', null, 'NFPA 70', 2014],
    ['IEC 62305-3:2006', null, 'IEC 62305-3', 2006],
    ['a city ordinance', '1999', 'NFPA 70', null],
  ] as const)('typed as %j, %j is, of %s, %s', (document, edition, of, year) => {
    expect(adoptedYear(header(document, edition), of)).toBe(year);
  });

  it('may be a letter', () => {
    expect(adoptedEdition(header('TIA-222', 'F'), 'TIA-222')).toBe('F');
    expect(adoptedYear(header('TIA-222', 'F'), 'TIA-222')).toBeNull();
  });
});

/** Section 3 of the collection of clauses has twenty; the figures are those of its rows. */
describe('thresholds that moved between editions', () => {
  it('are twenty, each with its steps in order and a subject', () => {
    const all = Object.values(movedThresholds);
    expect(all.length).toBe(20);
    for (const { steps, subject } of all) {
      expect(subject.length).toBeGreaterThan(5);
      const from = steps.map((s) => s.from ?? '');
      expect(from).toEqual([...from].sort());
      expect(new Set(from).size).toBe(from.length);
    }
  });

  it.each([
    ['2008', '250.56'],
    ['2011', '250.53(A)(2)'],
    ['2023', '250.53(A)(2)'],
  ])('a lone rod: edition %s has it in %s', (edition, clause) => {
    expect(inEdition(movedThresholds.singleRod, header('NFPA 70', edition))).toMatchObject({ clause, isAdopted: true });
  });

  it.each([
    ['2013', 'not asked'],
    ['2014', 'asked'],
  ])('listed arresters: edition %s: %s', (edition, value) => {
    expect(inEdition(movedThresholds.arrestersListed, header('NFPA 70', edition)).value).toBe(value);
  });

  it.each([
    ['F', 3, 2, null],
    ['G', 6, 3, 3.048],
    ['H', 6, 3, 3.048],
  ])('rods at a tower: edition %s', (edition, free, guyed, lengthM) => {
    expect(inEdition(movedThresholds.towerRods, header('TIA-222', edition)).value).toEqual({ free, guyed, lengthM });
  });

  it.each([
    ['2006', 14e-6, 5e-6],
    ['2010', 16e-6, 6e-6],
  ])('bonding sizes: edition %s', (edition, barCopperM2, bodyCopperM2) => {
    const { value } = inEdition(movedThresholds.bondingSizesIec, header('IEC 62305-3', edition));
    expect(value).toMatchObject({ barCopperM2, bodyCopperM2 });
  });

  it('give the newest, and say that it was taken, where no edition was typed', () => {
    const none = inEdition(movedThresholds.serviceProtector, { codes: [] });
    expect(none).toMatchObject({ from: '2023', value: 'dwellings and more', isAdopted: false });
  });
});
