import { describe, expect, it } from 'vitest';
import { ownStudy } from '../rules/own/own-study.ts';

const rods = (head: string, length = '8 ft') => `site: {name: Said, region: us, units: ft, service: panel${head}}
electrodes:
  r: {kind: rod, length: ${length}, diameter: 5/8 in, metal: copper-clad steel, listed: yes}
  r2: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel, listed: yes}
equipment: {panel: {kind: service panel, where: outside, neutral_bonded: yes}}
conductors:
  g: {from: panel, to: r, wire: 4 AWG copper, length: 5 ft, joints: [bolted lug, exothermic weld]}
  g2: {from: r, to: r2, wire: 4 AWG bare copper, length: 20 ft, buried: 1 ft, joints: [exothermic weld, exothermic weld]}
`;
const tenFeet = (severity: string) =>
  `name: club rules\nlimits: {rods: {of: rods, length: at least 10 ft, severity: ${severity}}}`;
const without =
  ', supply: us-grounded, without: [telephone, cable tv, network, mains], code: {document: NEC, edition: 2005}';

describe('the verdict of one set', () => {
  it('says that nothing failed where nothing did', () => {
    const { verdict } = ownStudy(rods(without), null);
    expect([verdict.hazards, verdict.defects, verdict.advices, verdict.bySet]).toEqual([0, 0, 0, undefined]);
    expect(verdict.text[0]).toBe('No listed condition failed; that is not a promise that damage cannot happen.');
    expect(verdict.text[2]).toMatch(/^\d+ conditions? could not be told from what the file says; the list of/);
  });

  it('says what failed, without the name of a set', () => {
    const { verdict } = ownStudy(rods(without, '4 ft'), null);
    expect(verdict.text[0]).toBe(
      '0 findings that can hurt people or start a fire, 1 that break a clause or are likely to cost equipment, 0 of advice.',
    );
  });

  it('never says that nothing failed of what was agreed to stand', () => {
    const agreed = ', agreed: [{rule: rod-length-us, reason: rock, by: owner, date: 2026-05-01}]';
    const { verdict } = ownStudy(rods(`${without}${agreed}`, '4 ft'), null);
    expect([verdict.defects, verdict.agreed]).toEqual([0, 1]);
    expect(verdict.text[0]).toMatch(/^No listed condition failed beyond the 1 agreed to stand; /);
  });
});

describe('the verdict of several sets', () => {
  it('says whose each count is, and never that nothing failed while the owner has a hazard', () => {
    const { verdict } = ownStudy(rods(without), tenFeet('hazard'));
    expect(verdict.hazards).toBe(0);
    expect(verdict.text[0]).toBe(
      'United States: no listed condition failed; by the owner’s standard: 2 findings that can hurt people or start a fire, ' +
        '0 that break a clause or are likely to cost equipment, 0 of advice.',
    );
    expect(verdict.text[2]).toMatch(
      /^United States: \d+ conditions? could not be told from what the file says; the list/,
    );
    expect(verdict.actions.slice(0, 2).map((a) => a.finding)).toEqual(['own/own-rods:r', 'own/own-rods:r2']);
  });

  it('does first what is a hazard in any set, then what the first set found, each once', () => {
    const { verdict } = ownStudy(rods(without, '4 ft'), tenFeet('defect'));
    expect(verdict.actions[0]!.finding).toBe('rod-length-us:r');
    expect(verdict.actions[1]!.text).toMatch(/^Find out: /);
    const hazards = ownStudy(rods(without, '4 ft'), tenFeet('hazard')).verdict.actions.map((a) => a.finding);
    expect(hazards).toEqual(['own/own-rods:r', 'own/own-rods:r2', 'rod-length-us:r']);
  });

  it('counts the second code under its name, in few words', () => {
    const mast = `${rods(`${without}, codes: [us, iec]`).replace('conductors:\n', 'conductors:\n  m: {from: mast@base, to: r, wire: 6 AWG copper, length: 2 ft}\n')}supports: {mast: {kind: mast, height: 30 ft, metal: copper, sections: one piece}}
antennas: {v: {kind: vertical, on: mast@top, dc_path: yes, touches_support: yes}}
`;
    const { verdict } = ownStudy(mast, null);
    const [us, iec] = verdict.bySet!;
    // IEC 60728-11 asks 16 mm2 of the lead of 6 AWG (13.3 mm2), NFPA 70 810.21(H) 10 AWG
    expect(iec!.hazards).toBeGreaterThan(us!.hazards);
    expect(verdict.text[0]).toMatch(
      /^United States: .*; IEC and EN: \d findings? that can hurt people, \d that break a clause,/,
    );
    expect(verdict.actions[0]!.finding).toMatch(/^iec\//);
  });

  it('says that nothing failed where it is so of all of them', () => {
    const { verdict } = ownStudy(rods(without), 'limits: {rods: {of: rods, length: at least 8 ft}}');
    expect(verdict.text[0]).toBe('No listed condition failed; that is not a promise that damage cannot happen.');
  });

  it('names what one of them agreed to', () => {
    const agreed = ', agreed: [{rule: own-rods, reason: rock, by: owner, date: 2026-05-01}]';
    const all = ownStudy(rods(`${without}${agreed}`), tenFeet('hazard')).verdict.text[0];
    expect(all).toMatch(/^No listed condition failed beyond the 2 agreed to stand; /);
    const some = ownStudy(rods(`${without}${agreed}`, '4 ft'), tenFeet('hazard')).verdict.text[0];
    expect(some).toMatch(
      /^United States: 0 findings .*; by the owner’s standard: nothing beyond the 2 agreed to stand\.$/,
    );
  });
});
