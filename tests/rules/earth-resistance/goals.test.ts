import { describe, expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { verdictsOf } from '../verdicts-of.ts';

/** `outcome place: reason` of a rule on these electrodes, tied to the panel of the service. */
function ask(
  rule: string,
  electrodes: string,
  rest = '',
  { region = 'us', more = '', ties = 'c: {from: panel, to: E}' } = {},
) {
  const header = `site: {name: Goals, region: ${region}, units: m, service: panel${more}}\n`;
  return verdictsOf(
    rule,
    `${header}electrodes: {${electrodes}}\nequipment: {panel: {kind: service panel}}\nconductors: {${ties}}\n${rest}`,
  );
}

const read = (ohm: string, at = 'panel') =>
  `readings: {r: {kind: fall of potential, electrode: ${at}, resistance: ${ohm}}}\n`;

describe('site-10-ohm: IEC 62305-3:2010 5.4.1 and others, a goal of 10 ohm for the whole system', () => {
  const two = 'E: {kind: rod, length: 2.4 m}, F: {kind: rod, length: 2.4 m}';
  const ties = { ties: 'c: {from: panel, to: E}, d: {from: E, to: F}' };

  it('by a reading of the system, either side of it', () => {
    expect(ask('site-10-ohm', two, read('10 ohm'), ties)).toEqual(['met E F: reads low']);
    expect(ask('site-10-ohm', two, read('10.1 ohm'), ties)).toEqual(['not met E F: reads high']);
    expect(ask('site-10-ohm', two, read('9 to 12 ohm'), ties)).toEqual(['cannot tell E F: wide']);
    expect(ask('site-10-ohm', two, read('over range'), ties)).toEqual(['not met E F: over range']);
  });

  it('two rods of 80 ohm meet the electrical code of the United States and not the goal: both are said', () => {
    expect(ask('site-10-ohm', two, read('80 ohm'), ties)).toEqual(['not met E F: reads high']);
    expect(ask('single-rod-25-ohm', two, read('80 ohm'), ties)).toEqual(['met E: not alone', 'met F: not alone']);
  });

  it('a lone electrode by its own reading; a measured figure goes before the soil', () => {
    expect(ask('site-10-ohm', 'E: {kind: rod, length: 2.4 m, resistance: 8 ohm}')).toEqual(['met E: reads low']);
    expect(
      ask(
        'site-10-ohm',
        'E: {kind: rod, length: 2.4 m, resistance: 8 ohm}',
        'soil: {layers: [{resistivity: 1000 ohm m}]}\n',
      ),
    ).toEqual(['met E: reads low']);
  });

  // rho / (2 pi L) (ln(8 L / d) - 1), L 2.4 m, d 16 mm: 0.405 m^-1, so 4.05 ohm at 10 ohm m and 40.5 ohm at 100 ohm m (H. B. Dwight, 1936)
  it('works it out where soil was typed, and says nothing where neither is known', () => {
    const rod = 'E: {kind: rod, length: 2.4 m, diameter: 16 mm}';
    expect(ask('site-10-ohm', rod, 'soil: {layers: [{resistivity: 10 ohm m}]}\n')).toEqual(['met E: works out low']);
    expect(ask('site-10-ohm', rod, 'soil: {layers: [{resistivity: 100 ohm m}]}\n')).toEqual([
      'not met E: works out high',
    ]);
    expect(ask('site-10-ohm', rod, 'soil: {layers: [{resistivity: 10 to 100 ohm m}]}\n')).toEqual([
      'cannot tell E: wide',
    ]);
    expect(ask('site-10-ohm', rod)).toEqual([]);
  });

  it('where one of several is low enough alone, the others only lower that', () => {
    const two = 'E: {kind: rod, length: 2.4 m, diameter: 16 mm}, F: {kind: rod, length: 2.4 m, diameter: 16 mm}';
    const of = (soil: string) => ask('site-10-ohm', two, `soil: {layers: [{resistivity: ${soil}}]}\n`, ties);
    expect(of('10 to 24 ohm m')).toEqual(['met E F: one is low']);
    expect(of('100 ohm m')).toEqual(['not met E F: works out high']);
  });
});

describe('site-3-ohm-wet: MO-322, 3 ohm, of an ordnance site in wet ground', () => {
  const wet = (ohm: string, more = ', claims: MO-322', soil = 'marsh') =>
    ask('site-3-ohm-wet', 'E: {kind: rod, length: 2.4 m}', `${read(ohm)}soil: {type: ${soil}}\n`, { more });

  it('either side', () => {
    expect(wet('3 ohm')).toEqual(['met E: reads low']);
    expect(wet('3.1 ohm')).toEqual(['not met E: reads high']);
    expect(wet('2 to 4 ohm')).toEqual(['cannot tell E: wide']);
    expect(wet('8 ohm', '')).toEqual([]);
    expect(wet('8 ohm', ', claims: MO-322', 'dry sand')).toEqual([]);
  });
});

describe('electrode-10n-ohm: BS 6651, each of N electrodes at most 10 N ohm', () => {
  const two = (a: string, b: string) =>
    ask('electrode-10n-ohm', `E: {kind: rod, resistance: ${a}}, F: {kind: rod, resistance: ${b}}`, '', {
      region: 'uk',
      ties: 'd: {from: E, to: F}',
    });

  it('either side of 10 ohm for one', () => {
    const one = (ohm: string) => ask('electrode-10n-ohm', `E: {kind: rod, resistance: ${ohm}}`, '', { region: 'uk' });
    expect(one('10 ohm')).toEqual(['met E: low']);
    expect(one('10.1 ohm')).toEqual(['not met E: high']);
  });

  it('either side of 20 ohm for two', () => {
    expect(two('20 ohm', '20.1 ohm')).toEqual(['not met F: high', 'met E: low']);
    expect(two('19 to 21 ohm', 'over range')).toEqual(['not met F: over range', 'cannot tell E: wide']);
    expect(ask('electrode-10n-ohm', 'E: {kind: rod}', '', { region: 'uk' })).toEqual([]);
  });
});

describe('loop-50-ohm-trigger: UFGS 13100N, two of any three rods together over 50 ohm want a ring', () => {
  const three = (ohm: string, more = '') =>
    ask(
      'loop-50-ohm-trigger',
      `A: {kind: rod, resistance: 20 ohm}, B: {kind: rod, resistance: ${ohm}}, C: {kind: rod, resistance: ${ohm}}${more}`,
      '',
      {
        ties: `a: {from: A, to: B}, b: {from: B, to: C}${more === '' ? '' : ', c: {from: C, to: ring}'}`,
      },
    );

  it('either side: two of 100 ohm in parallel are 50', () => {
    expect(three('100 ohm')).toEqual(['met B C: low']);
    expect(three('101 ohm')).toEqual(['not met B C: high']);
    expect(three('90 to 110 ohm')).toEqual(['cannot tell B C: wide']);
    expect(three('300 ohm', ', ring: {kind: buried wire, closed: yes}')).toEqual(['met B C: has a ring']);
    // a ring that one of the two alone is bonded to
    const elsewhere =
      'A: {kind: rod, resistance: 20 ohm}, B: {kind: rod, resistance: 301 ohm}, C: {kind: rod, resistance: 300 ohm}, ring: {kind: buried wire, closed: yes}';
    expect(ask('loop-50-ohm-trigger', elsewhere, '', { ties: 'b: {from: B, to: ring}' })).toEqual([
      'not met B C: high',
    ]);
    expect(ask('loop-50-ohm-trigger', 'E: {kind: rod, resistance: 300 ohm}')).toEqual([]);
  });
});

describe('unit-sanity: ours, one rod alone reads 1 ohm or more', () => {
  const rod = (ohm: string) => ask('unit-sanity', `E: {kind: rod, resistance: ${ohm}}`);

  it('either side', () => {
    expect(rod('1 ohm')).toEqual(['met E: can be']);
    expect(rod('0.95 ohm')).toEqual(['not met E: too low to be']);
    expect(rod('0.5 to 2 ohm')).toEqual(['cannot tell E: wide']);
    expect(rod('over range')).toEqual([]);
    expect(ask('unit-sanity', 'E: {kind: rod, resistance: 0.1 ohm, measured: bonded}')).toEqual([]);
  });
});

describe('lightning-rods-not-service-electrode: NFPA 70 250.60, one electrode that is not for strokes', () => {
  const rule = 'lightning-rods-not-service-electrode';
  const ties = { ties: 'c: {from: panel, to: E}, d: {from: E, to: F}' };

  it('counts what is left without those of the lightning protection', () => {
    expect(ask(rule, 'E: {kind: rod}, F: {kind: rod, serves: lightning}', '', ties)).toEqual(['met E F: has its own']);
    expect(ask(rule, 'E: {kind: rod, serves: lightning}, F: {kind: rod, serves: lightning}', '', ties)).toEqual([
      'not met E F: no other',
    ]);
    // the supplier's own is no electrode of the service of the building
    expect(ask(rule, 'E: {kind: rod, serves: lightning}, F: {kind: rod, owner: utility}', '', ties)).toEqual([
      'not met E: no other',
    ]);
    expect(ask(rule, 'E: {kind: rod, serves: lightning}, F: {kind: rod, present: unknown}', '', ties)).toEqual([
      'cannot tell E: perhaps',
    ]);
    expect(ask(rule, 'E: {kind: rod}')).toEqual([]);
  });
});

everyOutcome('lightning-rods-not-service-electrode');
everyOutcome('electrode-10n-ohm');
everyOutcome('unit-sanity');
everyOutcome('site-10-ohm');
everyOutcome('site-3-ohm-wet');
everyOutcome('loop-50-ohm-trigger');
