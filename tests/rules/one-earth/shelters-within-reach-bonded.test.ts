import { describe, expect, it, test } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const rule = 'shelters-within-reach-bonded';
const typed = (rest: string) => `site: {name: Reach, region: us, units: ft, service: main}\n${rest}`;

/** Of each verdict, with the severity of those that are not met. */
function reach(rest: string, state: string | null = null): readonly string[] {
  const severities = findingsOf(rule, typed(rest), state).findings.map((f) =>
    f.outcome === 'not met' ? `${f.severity} ` : '',
  );
  return verdictsOf(rule, typed(rest), state).map((line, i) => `${severities[i]}${line}`);
}

const site = (cords: string, conductors = '') => `antennas: {wire: {kind: dipole}}
electrodes: {R1: {kind: rod}}
bars: {entry: {kind: entry panel}}
equipment:
  main: {kind: service panel}
  radio: {kind: transceiver, within_reach: [computer]}
  computer: {kind: computer}
lines:
  radio-cord: {kind: mains, path: [main, {plug: p1}, radio], protective_conductor: ${cords}}
  computer-cord: {kind: mains, path: [main, computer], protective_conductor: yes}
conductors:
  gec: {from: main, to: R1}
${conductors}states:
  pulled: {open: [p1]}
`;

test('cords with protective conductors tie what stands within reach for a fault of the mains: advice, no hazard', () => {
  expect(reach(site('yes'))).toEqual(['advice not met computer radio: cords only']);
  expect(reach(site('no'))).toEqual(['hazard not met computer radio: two groups']);
  expect(reach(site('unknown'))).toEqual(['hazard not met computer radio: two groups']);
});

test('with the cord pulled it ties nothing', () => {
  expect(reach(site('yes'), 'pulled')).toEqual(['hazard not met computer radio: two groups']);
});

test('a bond is what is asked', () => {
  const tied = (wire: string) => reach(site('no', `  c1: {from: radio, to: computer, wire: ${wire}}\n`));
  expect(tied('6 AWG copper')).toEqual(['met computer radio: one group']);
  // a way over the panel alone is taken as it is
  const over = '  c1: {from: radio, to: main, wire: 10 AWG copper}\n  c2: {from: computer, to: main}\n';
  expect(reach(site('no', over))).toEqual(['met computer radio: one group']);
});

/** Army preventive maintenance monthly 599 (read): at least 6 AWG, 13.3 mm². Conductors that are thin are advice but in the field. */
describe('the size of a bond straight from one to the other', () => {
  const field = (wire: string, more = '') => `site: {name: Field, region: us, units: ft, service: none}
electrodes: {rod: {kind: rod}}
equipment:
  generator: {kind: generator, within_reach: [van]}
  van: {kind: vehicle frame}
conductors: {c1: {from: generator, to: van, wire: ${wire}}${more}}
`;
  const ofWire = (wire: string, more = '') => verdictsOf(rule, field(wire, more));

  eitherSide(rule, field, [
    ['13.3 mm2 copper', '13.2 mm2 copper'],
    ['6 AWG copper', '26 kcmil copper'],
  ]);

  it('is judged, and cannot be told of a size or metal that nobody knows', () => {
    expect(ofWire('6 AWG copper')).toEqual(['met generator van: one group']);
    expect(ofWire('10 AWG copper')).toEqual(['not met generator van: thin']);
    expect(ofWire('unknown')).toEqual(['cannot tell generator van: size unknown']);
    expect(ofWire('6 AWG')).toEqual(['cannot tell generator van: metal unknown']);
    expect(ofWire('6 AWG aluminum')).toEqual(['cannot tell generator van: metal not listed']);
    const [thin] = findingsOf(rule, field('10 AWG copper')).findings;
    // 10 AWG is 5.26 mm2
    expect(thin!.measured!.text).toMatch(/^10 AWG .*; at least 6 AWG/);
    expect(thin!.because.text).toMatch(/c1/);
    expect(thin!.change).toEqual([
      { is: 'set', section: 'conductors', id: 'c1', field: 'wire', value: '6 AWG copper' },
    ]);
  });

  it('the best of several straight ones counts, or another way that is thick all along', () => {
    expect(ofWire('10 AWG copper', ', c2: {from: van, to: generator, wire: 4 AWG copper}')).toEqual([
      'met generator van: one group',
    ]);
    const round = (wire: string) =>
      ofWire(
        '10 AWG copper',
        `, c2: {from: van, to: rod, wire: 6 AWG copper}, c3: {from: rod, to: generator, wire: ${wire}}`,
      );
    expect(round('6 AWG copper')).toEqual(['met generator van: one group']);
    expect(round('8 AWG copper')).toEqual(['not met generator van: thin']);
    expect(round('unknown')).toEqual(['cannot tell generator van: size unknown']);
  });

  it('is a defect between shelters and in a field station, else advice', () => {
    const severity = (text: string) => findingsOf(rule, text).findings[0]!.severity;
    expect(severity(field('10 AWG copper'))).toBe('defect');
    const desk = typed(site('no', '  c1: {from: radio, to: computer, wire: 10 AWG copper}\n'));
    expect(severity(desk)).toBe('advice');
    expect(severity(desk.replace('service: main', 'service: main, temporary: yes'))).toBe('defect');
  });
});

/** The row: within 2.5 m (8.2 ft), of a caravan and a generator on a field site. */
describe('shelters, vehicles and generators that `near` puts beside each other', () => {
  const near = (distance: string, { kind = 'caravan', tie = '', header = '', at = 'generator' } = {}) => {
    const says = (id: string, other: string) => (at === id ? `, near: [{part: ${other}, distance: ${distance}}]` : '');
    return `site: {name: Field, region: us, units: ft, service: none${header}}
electrodes: {rod: {kind: rod}}
equipment:
  generator: {kind: generator${says('generator', 'van')}}
  van: {kind: ${kind}${says('van', 'generator')}}
conductors: {g: {from: generator, to: rod, wire: 6 AWG copper}${tie}}
`;
  };

  eitherSide(rule, near, [
    ['2.55 m', '2.5 m'],
    ['2.52 m', '2.48 m'],
    ['8.3 ft', '8.1 ft'],
  ]);

  it('are asked for a bond within arm’s reach, whichever of the two says it', () => {
    expect(verdictsOf(rule, near('5 ft'))).toEqual(['not met generator van: two groups']);
    expect(verdictsOf(rule, near('5 ft', { at: 'van' }))).toEqual(['not met generator van: two groups']);
    expect(findingsOf(rule, near('5 ft')).findings[0]!.severity).toBe('hazard');
    expect(verdictsOf(rule, near('20 ft'))).toEqual(['met generator van: far']);
    expect(verdictsOf(rule, near('7 to 9 ft'))).toEqual(['cannot tell generator van: how near']);
    const tied = (wire: string) => ({ tie: `, t: {from: generator, to: van, wire: ${wire}}` });
    expect(verdictsOf(rule, near('5 ft', tied('6 AWG copper')))).toEqual(['met generator van: one group']);
    expect(verdictsOf(rule, near('5 ft', tied('10 AWG copper')))).toEqual(['not met generator van: thin']);
    expect(verdictsOf(rule, near('7 to 9 ft', tied('10 AWG copper')))).toEqual(['cannot tell generator van: how near']);
  });

  it('are not asked where no distance is typed, or of other things outside a field station', () => {
    expect(verdictsOf(rule, near('unknown'))).toEqual(['cannot tell generator van: how near']);
    expect(findingsOf(rule, near('5 ft', { at: 'none' })).outcome).toBe('not applicable');
    expect(findingsOf(rule, near('5 ft', { kind: 'computer' })).outcome).toBe('not applicable');
    const inField = near('5 ft', { kind: 'computer', header: ', temporary: yes' });
    expect(verdictsOf(rule, inField)).toEqual(['not met generator van: two groups']);
  });
});

test('who pulls a connector holds the shield of either side', () => {
  const coax = site('no').replace('lines:\n', 'lines:\n  coax: {kind: coax, path: [wire, entry, {plug: p2}, radio]}\n');
  expect(reach(coax)).toContain('hazard not met entry radio: two groups at a plug');
});

test('cannot tell while the wires were not all looked at; not asked where nothing is in reach', () => {
  const notAll = typed(site('no')).replace('service: main', 'service: main, incomplete: [conductors]');
  expect(verdictsOf(rule, notAll)).toEqual(['cannot tell computer radio: perhaps']);
  expect(findingsOf(rule, typed('equipment: {main: {kind: service panel}}\n')).outcome).toBe('not applicable');
});

everyOutcome(rule);

describe('metal of which not all is known', () => {
  const heater = (bonded: string, radio = '') => `electrodes: {R1: {kind: rod}}
equipment: {main: {kind: service panel}, radio: {kind: transceiver, within_reach: [heater]}}
lines: {cord: {kind: mains, path: [main, radio], protective_conductor: yes}}
metalwork: {heater: {kind: radiator${bonded}}}
conductors: {gec: {from: main, to: R1, wire: 4 AWG copper}${radio}}
`;
  const tie = ', b: {from: radio, to: main, wire: 4 AWG copper}';

  it('may hang on the service, as what is touched with it does: nobody can tell', () => {
    for (const unknown of ['', ', bonded: unknown'])
      expect(reach(heater(unknown))).toEqual(['cannot tell heater radio: perhaps']);
    expect(reach(heater('', tie))).toEqual(['cannot tell heater radio: perhaps']);
    expect(reach(heater(', bonded: no', tie))).toEqual(['hazard not met heater radio: two groups']);
    expect(reach(heater(', bonded: yes'))).toEqual(['advice not met heater radio: cords only']);
  });

  // site-file.md: metalwork passes a bond on only with `continuous: yes`
  it('that is not one piece is held where the bond lands, and a gate may hang free', () => {
    const fence = (says: string) => `electrodes: {R1: {kind: rod}}
equipment: {main: {kind: service panel}}
supports: {mast: {kind: mast, metal: steel, within_reach: [fence]}}
metalwork: {fence: {${says}}}
conductors: {a: {from: fence, to: R1, wire: 4 AWG copper}, b: {from: mast@base, to: R1, wire: 4 AWG copper}, gec: {from: main, to: R1, wire: 4 AWG copper}}
`;
    expect(reach(fence('kind: fence, continuous: no'))).toEqual(['cannot tell fence mast: in pieces']);
    expect(reach(fence('kind: fence, continuous: yes'))).toEqual(['met fence mast: one group']);
    expect(reach(fence('kind: fence'))).toEqual(['met fence mast: one group']);
    expect(reach(fence('kind: water pipe, continuous: no'))).toEqual(['met fence mast: one group']);
    const bonded = (says: string) => verdictsOf('metalwork-bonded', typed(fence(says)));
    expect(bonded('kind: fence, continuous: no')).toEqual(['cannot tell fence: in pieces']);
    expect(bonded('kind: fence')).toEqual(['met fence: bonded']);
    expect(bonded('kind: gas pipe, continuous: no')).toEqual(['met fence: bonded']);
  });
});
