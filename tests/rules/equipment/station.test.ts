import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const outcomeOf = (rule: string, text: string) => findingsOf(rule, text).outcome;
const site = (box: string, conductors: string, header = '', region = 'us') => `
site: {name: Desk, region: ${region}, units: ft, service: unknown${header}}
electrodes: {R1: {kind: rod}}
bars: {bar: {kind: station ground bar}}
equipment: {box: {${box}}}
conductors: {c1: {from: bar, to: R1}${conductors}}
`;
const onBar = (wire: string) => `, c2: {from: box, to: bar, wire: ${wire}}`;

/** ITU-T K.27 and common practice, from memory; no threshold. */
describe('equipment-on-station-bar', () => {
  const rule = 'equipment-on-station-bar';

  it('asks a bond to a bar, beside whatever the cord ties', () => {
    expect(verdictsOf(rule, site('kind: transceiver', onBar('6 AWG copper')))).toEqual(['met box: on bar']);
    expect(verdictsOf(rule, site('kind: transceiver', ''))).toEqual(['not met box: not on bar']);
    const tied = (lines: string) => findingsOf(rule, site('kind: transceiver', '') + lines).findings[0]!.under;
    expect(tied('lines: {cord: {kind: mains, path: [unknown, box], protective_conductor: no}}\n')).toBe(
      'no-orphan-equipment:box',
    );
    // whether a cord ties it is not known: what cannot be told causes nothing
    expect(tied('')).toBeNull();
  });

  const twoBars = (more = '', other = 'house') => `
site: {name: Desk, region: us, units: ft, service: unknown}
buildings: {house: {}, shop: {}}
electrodes: {R1: {kind: rod}, R2: {kind: rod}}
bars: {desk: {kind: station ground bar}, entry: {kind: entry panel}}
equipment: {a: {kind: transceiver, where: house}, b: {kind: tuner, where: house}, c: {kind: amplifier, where: ${other}}}
conductors: {c1: {from: a, to: desk}, c2: {from: b, to: desk}, c3: {from: c, to: entry}, c4: {from: desk, to: R1}, c5: {from: entry, to: R2}${more}}
`;

  it('asks one bar of all boxes of a room: two bars that nothing joins are not one', () => {
    expect(verdictsOf(rule, twoBars())).toEqual(['not met c: other bar', 'met a: on bar', 'met b: on bar']);
    expect(verdictsOf(rule, twoBars(', c6: {from: desk, to: entry}'))).toEqual([
      'met a: on bar',
      'met b: on bar',
      'met c: on bar',
    ]);
    expect(verdictsOf(rule, twoBars(', c6: {from: desk, to: entry, present: unknown}'))[0]).toBe(
      'cannot tell c: perhaps',
    );
    expect(verdictsOf(rule, twoBars('', 'shop'))).toEqual(['met a: on bar', 'met b: on bar', 'met c: on bar']);
  });

  it('cannot tell with a bar that may not be there', () => {
    const text = site('kind: tuner', onBar('6 AWG copper')).replace('bar}', 'bar, present: unknown}');
    expect(verdictsOf(rule, text)).toEqual(['cannot tell box: perhaps']);
  });

  it('cannot tell with conductors left out, and leaves plastic boxes and sites without a bar', () => {
    expect(verdictsOf(rule, site('kind: tuner', '', ', incomplete: [conductors]'))).toEqual([
      'cannot tell box: perhaps',
    ]);
    expect(outcomeOf(rule, site('kind: computer', ''))).toBe('not applicable');
    expect(
      outcomeOf(
        rule,
        site('kind: tuner', '')
          .replace(/bars: .*/, 'bars: none')
          .replace(/conductors: .*/, ''),
      ),
    ).toBe('not applicable');
  });
});

/** EN 50310, second-hand: 16 mm² (it is between 6 AWG, 13.3 mm², and 4 AWG, 21.2 mm²). */
describe('racks-bonded', () => {
  const rule = 'racks-bonded';
  const rack = (wire: string, region = 'iec') => site('kind: rack', onBar(wire), '', region);

  it('asks 16 mm², typed in square millimetres and by gauge', () => {
    expect(verdictsOf(rule, rack('16 mm2 copper'))).toEqual(['met box: thick']);
    expect(verdictsOf(rule, rack('15.9 mm2 copper'))).toEqual(['not met box: thin']);
    expect(verdictsOf(rule, rack('4 AWG copper'))).toEqual(['met box: thick']);
    expect(verdictsOf(rule, rack('6 AWG copper'))).toEqual(['not met box: thin']);
    expect(verdictsOf(rule, rack('unknown'))).toEqual(['cannot tell box: size unknown']);
  });

  it('asks copper: of another metal the standard has no figure, and what is too thin for copper is too thin', () => {
    expect(verdictsOf(rule, rack('16 mm2 tinned copper'))).toEqual(['met box: thick']);
    expect(verdictsOf(rule, rack('16 mm2 galvanised steel'))).toEqual(['cannot tell box: metal not listed']);
    expect(verdictsOf(rule, rack('4 AWG copper-clad steel'))).toEqual(['cannot tell box: metal not listed']);
    expect(verdictsOf(rule, rack('10 mm2 aluminium'))).toEqual(['not met box: thin']);
    expect(verdictsOf(rule, rack('16 mm2'))).toEqual(['cannot tell box: metal unknown']);
    expect(verdictsOf(rule, rack('16 mm2 copper, present: unknown'))).toEqual(['cannot tell box: size unknown']);
  });

  const ending = (conductors: string, header = '', more = '') =>
    verdictsOf(
      rule,
      `${site('kind: rack', `, ${conductors}`, header, 'iec').replace('R1: {kind: rod}', 'R1: {kind: rod}, R2: {kind: rod}').replace('box: {', 'two: {kind: rack}, radio: {kind: transceiver}, box: {')}${more}`,
    );
  const thick = 'wire: 16 mm2 copper';
  const rail = (continuous: string) => `metalwork: {rail: {kind: railing, continuous: ${continuous}}}\n`;

  it('asks that it leads to a bar, or to a rack from which as much copper goes on', () => {
    expect(ending(`c2: {from: box, to: R2, ${thick}}`)).toEqual(['not met box: not to a bar']);
    expect(ending(`c2: {from: box, to: radio, ${thick}}, c3: {from: radio, to: bar, ${thick}}`)).toEqual([
      'not met box: not to a bar',
    ]);
    expect(ending(`c2: {from: box, to: two, ${thick}}`)).toEqual([
      'not met box: not to a bar',
      'not met two: not to a bar',
    ]);
    expect(ending(`c2: {from: box, to: two, ${thick}}, c3: {from: two, to: bar, ${thick}}`)).toEqual([
      'met box: thick',
      'met two: thick',
    ]);
    expect(ending(`c2: {from: box, to: two, ${thick}}, c3: {from: two, to: bar, wire: 10 mm2 copper}`)).toEqual([
      'not met box: thin further on',
      'not met two: thin further on',
    ]);
    // a thick conductor to nowhere beside a thin one to the bar
    expect(ending(`c2: {from: box, to: R2, ${thick}}, c3: {from: box, to: bar, wire: 6 mm2 copper}`)).toEqual([
      'not met box: thin further on',
    ]);
    const service = `c2: {from: box, to: panel, ${thick}}`;
    expect(
      verdictsOf(
        rule,
        site('kind: rack', `, ${service}`, '', 'iec')
          .replace('service: unknown', 'service: panel')
          .replace('box: {', 'panel: {kind: service panel}, box: {'),
      ),
    ).toEqual(['met box: thick']);
  });

  it('cannot tell where the far end, or what goes on from there, is not known', () => {
    expect(ending(`c2: {from: box, to: unknown, ${thick}}`)).toEqual(['cannot tell box: way unknown']);
    expect(ending(`c2: {from: box, to: R2, ${thick}}`, ', incomplete: [conductors]')).toEqual([
      'cannot tell box: way unknown',
    ]);
    expect(ending(`c2: {from: box, to: two, ${thick}}, c3: {from: two, to: bar}`)).toEqual([
      'cannot tell box two: way unknown',
    ]);
    // a rail in one piece, perhaps
    expect(
      ending(`c2: {from: box, to: rail, ${thick}}, c3: {from: rail, to: bar, ${thick}}`, '', rail('unknown')),
    ).toEqual(['cannot tell box: way unknown']);
    expect(ending(`c2: {from: box, to: rail, ${thick}}, c3: {from: rail, to: bar, ${thick}}`, '', rail('yes'))).toEqual(
      ['met box: thick'],
    );
    expect(ending(`c2: {from: box, to: rail, ${thick}}, c3: {from: rail, to: bar, ${thick}}`, '', rail('no'))).toEqual([
      'not met box: not to a bar',
    ]);
    expect(ending(`c2: {from: box, to: R2, wire: unknown}`)).toEqual(['not met box: not to a bar']);
  });

  it('says the section that it judged by, so that an owner’s own limit can judge it again', () => {
    const { measured } = findingsOf(rule, rack('10 mm2 copper')).findings[0]!;
    expect(measured).toMatchObject({ limit: 16e-6 });
    expect((measured!.value as { low: number }).low * 1e6).toBeCloseTo(10);
    expect(findingsOf(rule, rack('16 mm2 copper')).findings[0]!.measured).toMatchObject({ limit: 16e-6 });
  });

  eitherSide(rule, rack, [
    ['16 mm2 copper', '15.9 mm2 copper'],
    ['32 kcmil copper', '31 kcmil copper'],
  ]);

  it('is asked by IEC sets of racks with a conductor', () => {
    expect(outcomeOf(rule, rack('6 AWG copper', 'us'))).toBe('not applicable');
    expect(outcomeOf(rule, site('kind: rack', '', '', 'iec'))).toBe('not applicable');
    expect(outcomeOf(rule, site('kind: tuner', '', '', 'iec'))).toBe('not applicable');
  });
});

everyOutcome('equipment-on-station-bar');
everyOutcome('racks-bonded');
