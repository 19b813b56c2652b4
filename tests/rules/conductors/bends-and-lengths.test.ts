import { describe, expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

/** A tower on a rod, with one lead. */
const lead = (says: string, { wire = '35 mm2 copper', kind = 'lattice tower', more = '' } = {}) => `
site: {name: Lead, region: us, units: ft, service: unknown}
electrodes: {R: {kind: rod}}
supports: {t: {kind: ${kind}}}
conductors: {c: {from: t@base, to: R, wire: ${wire}${says}}${more}}
`;
const apart = lead('').replace('from: t@base', 'from: R').replace('to: R', 'to: unknown');

/** MIL-HDBK-419A vol. II (read): 0.20 m, 8 in. */
describe('bend-radius', () => {
  const rule = 'bend-radius';
  const bend = (radius: string, wire?: string) =>
    lead(`, bends: [{angle: 90 deg, radius: ${radius}}]`, { ...(wire && { wire }) });

  it.each([
    ['0.20 m', 'met c: wide'],
    ['0.19 m', 'not met c: tight'],
    ['8 in', 'met c: wide'],
    ['7.5 in', 'not met c: tight'],
    ['7.75 in', 'not met c: tight'],
    ['0.1 to 0.3 m', 'cannot tell c: radius unknown'],
    ['unknown', 'cannot tell c: radius unknown'],
  ])('%s: %s', (radius, expected) => expect(verdictsOf(rule, bend(radius))).toEqual([expected]));

  it('is advice on the thin wires of code grounds, for which NFPA 70 gives no radius', () => {
    const severity = (wire: string) => findingsOf(rule, bend('1 in', wire)).findings[0]!.severity;
    expect(severity('10 AWG copper')).toBe('advice');
    expect(severity('8 AWG copper')).toBe('advice');
    expect(severity('6 AWG copper')).toBe('defect');
    expect(severity('unknown')).toBe('defect');
  });

  it('is asked of bends; that nobody typed any does not make a path straight', () => {
    expect(findingsOf(rule, lead('')).outcome).toBe('not looked at');
    expect(findingsOf(rule, lead(', bends: unknown')).outcome).toBe('not looked at');
    expect(findingsOf(rule, lead(', bends: none')).outcome).toBe('not applicable');
    expect(findingsOf(rule, lead(', bends: []')).outcome).toBe('not applicable');
  });
});

/** MIL-HDBK-419A vol. II (read): included angle at least 90 degrees; an angle has one unit. */
describe('bend-angle', () => {
  const rule = 'bend-angle';
  const bend = (angle: string) => verdictsOf(rule, lead(`, bends: [{angle: ${angle}, radius: 1 ft}]`));

  it('asks how far it turns', () => {
    expect(bend('90 deg')).toEqual(['met c: gentle']);
    expect(bend('91 deg')).toEqual(['not met c: sharp']);
    expect(bend('80 to 100 deg')).toEqual(['cannot tell c: angle unknown']);
    expect(bend('unknown')).toEqual(['cannot tell c: angle unknown']);
    expect(findingsOf(rule, lead('')).outcome).toBe('not looked at');
    expect(findingsOf(rule, lead(', bends: none')).outcome).toBe('not applicable');
  });
});

/** MIL-HDBK-419A vol. II, NFPA 780 4.9 (read): 16 ft, printed as 4.9 m. */
describe('dead-end-length', () => {
  const rule = 'dead-end-length';

  it.each([
    ['16 ft', 'met c: short'],
    ['4.9 m', 'met c: short'],
    ['16.2 ft', 'not met c: long'],
    ['4.87 m', 'met c: short'],
    ['4.95 m', 'not met c: long'],
    ['4 to 6 m', 'cannot tell c: length unknown'],
    ['unknown', 'cannot tell c: length unknown'],
  ])('%s: %s', (length, expected) => expect(verdictsOf(rule, lead(`, length: ${length}`))).toEqual([expected]));

  it('cannot tell where a second way may be there that nobody typed', () => {
    const some = lead(', length: 30 ft').replace('service: unknown', 'service: unknown, incomplete: [conductors]');
    expect(verdictsOf(rule, some)).toEqual(['cannot tell c: perhaps second']);
    const perhaps = lead(', length: 30 ft', { more: ', d: {from: t@base, to: R, present: unknown, length: 30 ft}' });
    expect(verdictsOf(rule, perhaps)).toContain('cannot tell c: perhaps second');
    expect(
      verdictsOf(
        rule,
        lead(', length: 15 ft').replace('service: unknown', 'service: unknown, incomplete: [conductors]'),
      ),
    ).toEqual(['met c: short']);
  });

  it('lets a second way stand, and slender masts alone', () => {
    const two = lead(', length: 30 ft', { more: ', d: {from: t@base, to: R, wire: 6 AWG copper, length: 30 ft}' });
    expect(verdictsOf(rule, two)).toContain('met c: second way');
    expect(findingsOf(rule, lead(', length: 30 ft', { kind: 'mast' })).outcome).toBe('not applicable');
  });
});

/** Ours, by analogy with NFPA 70 800.100(A)(4): 20 ft. */
describe('bond-between-groups-long', () => {
  const rule = 'bond-between-groups-long';
  const tie = (length: string) => `
site: {name: Tie, region: us, units: ft, service: unknown}
electrodes: {R: {kind: rod}, S: {kind: rod}}
conductors: {c: {from: R, to: S, wire: 6 AWG copper, length: ${length}}}
`;

  it.each([
    ['20 ft', 'met c: short'],
    ['20.2 ft', 'not met c: long'],
    ['6.09 m', 'met c: short'],
    ['6.2 m', 'not met c: long'],
    ['5 to 7 m', 'cannot tell c: length unknown'],
    ['unknown', 'cannot tell c: length unknown'],
  ])('%s: %s', (length, expected) => expect(verdictsOf(rule, tie(length))).toEqual([expected]));

  it('asks nothing of a mast’s lead', () => {
    expect(findingsOf(rule, lead(', length: 90 ft')).outcome).toBe('not applicable');
  });
});

/** IEC 62305-3 5.3 (from memory): no length indoors. A length of none has no unit. */
describe('no-lightning-path-through-building', () => {
  const rule = 'no-lightning-path-through-building';
  const runs = (where: string) => lead(`, where: ${where}`).replace('supports:', 'buildings: {house: {}}\nsupports:');

  it('asks where a lightning path runs', () => {
    expect(verdictsOf(rule, runs('outside'))).toEqual(['met c: outside']);
    expect(verdictsOf(rule, runs('house'))).toEqual(['not met c: runs indoors']);
    // an entry panel may hang on either side of the wall
    const unplaced = lead('')
      .replace('from: t@base', 'from: entry')
      .replace('supports:', 'bars: {entry: {kind: entry panel}}\nsupports:');
    expect(verdictsOf(rule, unplaced)).toEqual(['cannot tell c: nobody said']);
  });

  it('takes a water pipe or footing in the house for no rod that was driven there', () => {
    const indoors = (kind: string) => runs('outside').replace('R: {kind: rod}', `R: {kind: ${kind}, where: house}`);
    expect(verdictsOf(rule, indoors('water pipe'))).toEqual(['met c: outside']);
    expect(verdictsOf(rule, indoors('concrete-encased'))).toEqual(['met c: outside']);
    expect(verdictsOf(rule, indoors('pipe'))).toContain('not met R: rod indoors');
  });

  it('finds a rod that was driven indoors; is not asked without a path', () => {
    const indoors = runs('outside').replace('R: {kind: rod}', 'R: {kind: rod, where: house}');
    expect(verdictsOf(rule, indoors)).toContain('not met R: rod indoors');
    expect(findingsOf(rule, apart).outcome).toBe('not applicable');
  });

  it('takes the building of a rod, typed where another rule asks for it, for where the rod goes into the soil', () => {
    const two = (where: string) => `
site: {name: Shop, region: us, units: m, service: panel}
buildings: {house: {}, shop: {}}
electrodes: {r: {kind: rod${where}}}
equipment: {panel: {kind: service panel, where: house}, sub: {kind: sub-panel, where: shop}}
lines: {feeder: {kind: mains, path: [panel, sub], protective_conductor: yes}}
conductors: {g: {from: panel, to: r}, s: {from: sub, to: r}}
`;
    const [asked] = findingsOf('separate-building-electrode', two('')).findings;
    expect(asked!.remedy).toBe(
      'Look at which building r goes into the soil and type `where:` with that building for it.',
    );
    expect(verdictsOf('separate-building-electrode', two(', where: shop'))).toEqual(['met sub: own electrode']);
    expect(verdictsOf(rule, two(', where: shop')).join()).not.toMatch(/rod indoors/);
    // inside is one building where there is one, and none where nobody typed any
    const one = runs('outside').replace('R: {kind: rod}', 'R: {kind: rod, where: inside}');
    expect(verdictsOf(rule, one)).toContain('not met R: rod indoors');
    expect(verdictsOf(rule, one.replace('buildings: {house: {}}\n', ''))).toContain('not met R: rod indoors');
  });
});

everyOutcome('bend-radius');
everyOutcome('bend-angle');
everyOutcome('dead-end-length');
everyOutcome('bond-between-groups-long');
everyOutcome('no-lightning-path-through-building');
