import { describe, expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

/** NFPA 70 250.32 (second-hand): an electrode at the building, and a protective conductor with the feeder; no threshold. */
describe('separate-building-electrode', () => {
  const rule = 'separate-building-electrode';
  const site = (conductors: string, feeder = ', protective_conductor: yes', where = 'hut', header = '') => `
site: {name: Hut, region: us, units: ft, service: main${header}}
buildings: {house: {}, hut: {}}
electrodes: {R1: {kind: rod}, R2: {kind: rod}}
equipment: {main: {kind: service panel, where: house}, sub: {kind: sub-panel, where: ${where}}}
lines: {feeder: {kind: mains, path: [main, sub]${feeder}}}
conductors: {c1: {from: main, to: R1}${conductors}}
`;
  const own = ', c2: {from: sub, to: R2}';

  it('asks an electrode at the building', () => {
    expect(verdictsOf(rule, site(own))).toEqual(['met sub: own electrode']);
    expect(verdictsOf(rule, site(''))).toEqual(['not met sub: no electrode']);
    expect(verdictsOf(rule, site(', c2: {from: sub, to: R2, present: unknown}', ''))).toEqual([
      'cannot tell sub: perhaps',
    ]);
    expect(verdictsOf(rule, site('', '', 'hut', ', incomplete: [conductors]'))).toEqual(['cannot tell sub: perhaps']);
    expect(verdictsOf(rule, site('', '', 'unknown'))).toEqual(['cannot tell sub: place unknown']);
    const asked = (text: string) => findingsOf(rule, text).findings[0]!.remedy;
    expect(asked(site('', '', 'unknown'))).toBe('Type `where:` for sub.');
    const noHome = (where: string) => site('', '', where).replace('where: house', 'where: unknown');
    expect(asked(noHome('hut'))).toBe('Type `where:` for the panel or bar of the service.');
    expect(asked(noHome('unknown'))).toBe('Type `where:` for sub and for the service.');
  });

  it('takes no bond to the other building for an electrode of its own', () => {
    const not = ['not met sub: no electrode'];
    expect(verdictsOf(rule, site(', b: {from: sub, to: main}'))).toEqual(not);
    const bar = (where: string, more: string) =>
      `${site(`, b: {from: sub, to: bar}, ${more}`)}bars: {bar: {kind: entry panel, where: ${where}}}\n`;
    expect(verdictsOf(rule, bar('house', 'c2: {from: bar, to: R2}'))).toEqual(not);
    expect(verdictsOf(rule, bar('hut', 'c2: {from: bar, to: R2}'))).toEqual(['met sub: own electrode']);
    expect(verdictsOf(rule, bar('outside', 'c2: {from: bar, to: R2}'))).toEqual(['met sub: own electrode']);
    expect(verdictsOf(rule, bar('outside', 'c2: {from: bar, to: main}'))).toEqual(not);
    // a radio passes no bond on
    const radio = site(', b: {from: sub, to: radio}, c2: {from: radio, to: R2}').replace(
      'sub: {kind',
      'radio: {kind: transceiver, where: hut}, sub: {kind',
    );
    expect(verdictsOf(rule, radio)).toEqual(not);
  });

  it('cannot tell of an electrode of the service until somebody says at which building it lies', () => {
    const shared = site(', b: {from: sub, to: R1}');
    expect(verdictsOf(rule, shared)).toEqual(['cannot tell sub: shared']);
    const at = (where: string) => shared.replace('R1: {kind: rod', `R1: {kind: rod, where: ${where}`);
    expect(verdictsOf(rule, at('hut'))).toEqual(['met sub: own electrode']);
    expect(verdictsOf(rule, at('house'))).toEqual(['not met sub: no electrode']);
    expect(verdictsOf(rule, site(', b: {from: sub, to: R1}, c2: {from: sub, to: R2}'))).toEqual([
      'met sub: own electrode',
    ]);
    const rail = `${site(', b: {from: sub, to: rail}, c2: {from: rail, to: R2}')}metalwork: {rail: {kind: railing}}\n`;
    expect(verdictsOf(rule, rail)).toEqual(['cannot tell sub: perhaps']);
    expect(verdictsOf(rule, rail.replace('kind: railing', 'kind: railing, continuous: yes'))).toEqual([
      'met sub: own electrode',
    ]);
  });

  it('asks a protective conductor with the feeder', () => {
    expect(verdictsOf(rule, site(own, ', protective_conductor: no'))).toEqual([
      'not met sub: no conductor with the feeder',
    ]);
    expect(verdictsOf(rule, site(own, ''))).toEqual(['cannot tell sub: feeder unknown']);
    expect(verdictsOf(rule, site(own, ', present: no, protective_conductor: no'))).toEqual(['met sub: own electrode']);
  });

  it('names the neutral beside the soil as what may carry a fault back', () => {
    const [found] = findingsOf(rule, site(own, ', protective_conductor: no')).findings;
    expect(found!.because.text).toMatch(/soil alone or, where the neutral \(grounded conductor\) is bonded there/);
  });

  // The Canadian code asks none where the feeder brings a bonding conductor (10-208 in the older numbering, from memory).
  it('is not asked in Canada', () => {
    const canada = site('').replace('region: us', 'region: ca');
    expect(verdictsOf(rule, canada)).toEqual([]);
    expect(verdictsOf('earth-is-not-a-fault-path', canada).join()).not.toMatch(/not met/);
  });

  it('leaves a panel in the same building and a hut on one branch circuit alone', () => {
    expect(findingsOf(rule, site('', '', 'house')).outcome).toBe('not applicable');
    const branch = site('').replace('sub: {kind: sub-panel', 'sub: {kind: transceiver');
    expect(findingsOf(rule, branch).outcome).toBe('not applicable');
  });
});

everyOutcome('separate-building-electrode');
