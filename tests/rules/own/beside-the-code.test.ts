import { describe, expect, it } from 'vitest';
import { ownFindings, ownStudy } from './own-study.ts';

/** A rod of 4 ft, which NFPA 70 250.53(A)(4) does not take, and one of 8 ft, which it does. */
const rods = (agreed: string) => `site: {name: Own, region: us, units: ft, service: panel${agreed}}
electrodes:
  r: {kind: rod, length: 4 ft, diameter: 5/8 in, metal: copper-clad steel}
  r2: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
equipment: {panel: {kind: service panel}}
conductors:
  g: {from: panel, to: r, wire: 4 AWG copper, length: 5 ft}
  g2: {from: r, to: r2, wire: 4 AWG copper, length: 20 ft}
`;
const agreedTo = (...rules: readonly string[]) =>
  rods(`, agreed: [${rules.map((r) => `{rule: ${r}, reason: rock, by: owner, date: 2026-05-01}`).join(', ')}]`);
const tenFeet = 'name: club rules\nrules: {rod-length-us: {limit: at least 10 ft}}\n';

describe('an agreement beside a standard of the owner', () => {
  const standing = (text: string, standard: string | null = tenFeet) =>
    ownStudy(text, standard)
      .findings.filter((f) => f.rule === 'rod-length-us' && f.outcome === 'not met' && f.agreed === null)
      .map((f) => f.id)
      .sort();

  it('names what the code asks by the rule, and what the owner asks by own- before it', () => {
    const own = ['own/rod-length-us:r', 'own/rod-length-us:r2'];
    expect(standing(rods(''))).toEqual([...own, 'rod-length-us:r']);
    expect(standing(agreedTo('rod-length-us'))).toEqual(own);
    expect(standing(agreedTo('own-rod-length-us'))).toEqual(['rod-length-us:r']);
    expect(standing(agreedTo('own-rod-length-us', 'rod-length-us'))).toEqual([]);
  });

  it('is not stale under either name', () => {
    const { agreements } = ownStudy(agreedTo('own-rod-length-us', 'rod-length-us'), tenFeet);
    expect(agreements!.map((a) => [a.stale, a.text])).toEqual([
      [false, ''],
      [false, ''],
    ]);
  });

  it('of one name is said to be stale with the other that stands there', () => {
    const texts = (rule: string, standard: string | null) =>
      ownStudy(agreedTo(rule), standard).agreements!.map((a) => a.text);
    const lax = 'name: club rules\nrules: {rod-length-us: {limit: at least 3 ft}}\n';
    expect(texts('own-rod-length-us', lax)[0]).toMatch(/nothing answers to it.* Did you mean rod-length-us\?$/);
    expect(texts('rod-lenght-us', lax)[0]).toMatch(/ Did you mean rod-length-us\?$/);
    const atR2 = agreedTo('rod-length-us').replace('rod-length-us', 'rod-length-us, at: r2');
    expect(ownStudy(atR2, tenFeet).agreements![0]!.text).toMatch(/is agreed to as own-rod-length-us\.$/);
    expect(texts('mast-grounded', null)[0]).toMatch(/take it out of the file\.$/);
  });

  it('without a standard reads as ever', () => {
    expect(standing(agreedTo('rod-length-us'), null)).toEqual([]);
  });
});

describe('the severity of what an owner asks', () => {
  const gas = `site: {name: Own, region: us, units: ft, service: panel}
electrodes: {r: {kind: rod}}
equipment: {panel: {kind: service panel}}
conductors: {g: {from: panel, to: r}}
metalwork: {gas: {kind: gas pipe, bonded: no}}
`;
  const severities = (standard: string) =>
    ownStudy(gas, standard)
      .findings.filter((f) => f.rule === 'metalwork-bonded')
      .map((f) => [f.codeSet, f.severity]);

  it('is that of the place where the owner names none: a gas pipe is worse than other metal', () => {
    expect(severities('rules: {metalwork-bonded: {because: all of it}}')).toContainEqual(['own', 'hazard']);
  });

  it('is the owner’s where one is named', () => {
    expect(severities('rules: {metalwork-bonded: {severity: advice}}')).toContainEqual(['own', 'advice']);
  });
});

describe('titles at the owner’s figure', () => {
  it('carry it where it is met, and in the list of conditions', () => {
    const study = ownStudy(rods(''), 'name: club rules\nrules: {rod-length-us: {limit: at least 3 ft}}\n');
    const title = 'rod-length-us: at least 3 ft (0.914 m), as club rules asks';
    expect(ownFindings(study).map((f) => [f.outcome, f.title])).toEqual([
      ['met', title],
      ['met', title],
    ]);
    const rows = study.conditions.filter((c) => c.rule === 'rod-length-us');
    expect(rows.find((c) => c.codeSet === 'own')!.title).toBe(title);
    expect(rows.find((c) => c.codeSet === 'us')!.title).not.toBe(title);
  });

  it('are those of the rule where the owner gives no figure', () => {
    const study = ownStudy(rods(''), 'rules: {rod-length-us: {severity: advice}}');
    const titles = study.conditions.filter((c) => c.rule === 'rod-length-us').map((c) => c.title);
    expect(new Set(titles).size).toBe(1);
  });
});
