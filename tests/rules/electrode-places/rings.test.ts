import { describe, expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

/** `outcome place: reason` of a rule on these electrodes round a building of 10 by 10 in the unit of the file. */
function ask(rule: string, electrodes: string, { region = 'us', units = 'm', more = '' } = {}): readonly string[] {
  return verdictsOf(
    rule,
    `site: {name: Rings, region: ${region}, units: ${units}, service: panel${more}}
buildings: {house: {corners: [[0, 0], [10, 0], [10, 10], [0, 10]]}}
electrodes: {${electrodes}}
equipment: {panel: {kind: service panel}}
`,
  );
}

/** A ring so far outside the walls. */
const ring = (out: number, rest = '', id = 'ring') => {
  const [a, b] = [-out, 10 + out];
  return `${id}: {kind: buried wire, closed: yes, route: [[${a}, ${a}], [${b}, ${a}], [${b}, ${b}], [${a}, ${b}]]${rest}}`;
};

describe('electrode-from-foundation-us: 2 ft (0.6096 m), the least of TM 5-811-3 and UFGS 13100N', () => {
  const rule = 'electrode-from-foundation-us';

  it('either side, in both systems', () => {
    expect(ask(rule, 'R: {kind: rod, at: [10.6, 5]}')).toEqual(['met R: clear']);
    expect(ask(rule, 'R: {kind: rod, at: [10.59, 5]}')).toEqual(['not met R: at the wall']);
    expect(ask(rule, 'R: {kind: rod, at: [12, 5]}', { units: 'ft' })).toEqual(['met R: clear']);
    expect(ask(rule, 'R: {kind: rod, at: [11.9, 5]}', { units: 'ft' })).toEqual(['not met R: at the wall']);
    expect(ask(rule, ring(0.61))).toEqual(['met ring: clear']);
    expect(ask(rule, ring(0.5))).toEqual(['not met ring: at the wall']);
  });

  it('asks nothing where no place is known: there is no doubt that a look would settle', () => {
    expect(ask(rule, 'R: {kind: rod}')).toEqual([]);
    expect(ask(rule, 'W: {kind: buried wire, route: [[10, 5], [30, 5]]}')).toEqual([]);
  });
});

describe('electrode-from-foundation-iec: IEC 62305-3:2010 5.4.3, about 1 m (0.6 to 3 m) and 0.5 m deep', () => {
  const iec = (text: string, units = 'm') => ask('electrode-from-foundation-iec', text, { region: 'iec', units });

  it('either side, in both systems', () => {
    expect(iec(ring(1, ', depth: 0.5 m'))).toEqual(['met ring: as advised']);
    expect(iec(ring(1, ', depth: 0.49 m'))).toEqual(['not met ring: shallow']);
    expect(iec(ring(3, ', depth: 20 in'), 'ft')).toEqual(['met ring: as advised']);
    expect(iec(ring(0.5, ', depth: 0.5 m'))).toEqual(['not met ring: at the wall']);
    expect(iec(ring(3.1, ', depth: 0.5 m'))).toEqual(['not met ring: far']);
    expect(iec(ring(1))).toEqual(['cannot tell ring: depth unknown']);
  });

  it('the distance from the wall, either side of 0.6 m (2 ft) and of 3 m (10 ft)', () => {
    const out = (distance: number, units = 'm') => iec(ring(distance, ', depth: 0.5 m'), units);
    expect(out(0.6)).toEqual(['met ring: as advised']);
    expect(out(0.58)).toEqual(['not met ring: at the wall']);
    expect(out(2, 'ft')).toEqual(['met ring: as advised']);
    expect(out(1.9, 'ft')).toEqual(['not met ring: at the wall']);
    expect(out(3)).toEqual(['met ring: as advised']);
    expect(out(3.05)).toEqual(['not met ring: far']);
    expect(out(9.8, 'ft')).toEqual(['met ring: as advised']);
    expect(out(10, 'ft')).toEqual(['not met ring: far']);
    expect(iec(ring(3, ', depth: 19 in'), 'ft')).toEqual(['not met ring: shallow']);
  });

  it('speaks of rings round a building alone', () => {
    expect(
      iec('ring: {kind: buried wire, closed: yes, route: [[20, 0], [24, 0], [24, 4], [20, 4]], depth: 0.1 m}'),
    ).toEqual([]);
  });
});

describe('ring-depth-us: NFPA 70 250.53(F), 30 in (762 mm); 18 in (457.2 mm) where it serves a tower or lightning alone', () => {
  const depth = (text: string) => ask('ring-depth-us', ring(1, text));

  it('either side, in both systems', () => {
    expect(depth(', depth: 30 in')).toEqual(['met ring: deep']);
    expect(depth(', depth: 0.77 m')).toEqual(['met ring: deep']);
    expect(depth(', depth: 0.75 m')).toEqual(['met ring: deep']);
    expect(depth(', depth: 0.74 m')).toEqual(['not met ring: shallow']);
    expect(depth(', depth: 29 in')).toEqual(['not met ring: shallow']);
    expect(depth(', depth: 18 in')).toEqual(['not met ring: shallow']);
    expect(depth(', depth: 18 in, serves: tower')).toEqual(['met ring: deep']);
    expect(depth(', depth: 0.45 m, serves: tower')).toEqual(['met ring: deep']);
    expect(depth(', depth: 0.46 m, serves: tower')).toEqual(['met ring: deep']);
    expect(depth(', depth: 0.44 m, serves: tower')).toEqual(['not met ring: shallow']);
    expect(depth(', depth: 17 in, serves: tower')).toEqual(['not met ring: shallow']);
    expect(depth('')).toEqual(['cannot tell ring: depth unknown']);
    expect(ask('ring-depth-us', 'W: {kind: buried wire, closed: no, depth: 1 in}')).toEqual([]);
  });
});

describe('radial-length: TM 5-811-3, 12 ft (3.6576 m)', () => {
  const radial = (length: string) => ask('radial-length', `star: {kind: radial, count: 4${length}}`);

  it('either side, in both systems', () => {
    expect(radial(', length: 12 ft')).toEqual(['met star: long enough']);
    expect(radial(', length: 3.66 m')).toEqual(['met star: long enough']);
    expect(radial(', length: 3.6 m')).toEqual(['met star: long enough']);
    expect(radial(', length: 3.55 m')).toEqual(['not met star: short']);
    expect(radial(', length: 11.7 ft')).toEqual(['not met star: short']);
    expect(radial('')).toEqual(['cannot tell star: length unknown']);
    expect(ask('radial-length', 'R: {kind: rod}')).toEqual([]);
  });
});

describe('second-ring-distance: TM 5-811-3, 10 ft (3.048 m); without places nothing is asked', () => {
  const rule = 'second-ring-distance';

  it('either side, in both systems', () => {
    expect(ask(rule, `${ring(1)}, ${ring(4.05, '', 'outer')}`)).toEqual(['met outer ring: far enough']);
    expect(ask(rule, `${ring(1)}, ${ring(4, '', 'outer')}`)).toEqual(['met outer ring: far enough']);
    expect(ask(rule, `${ring(1)}, ${ring(3.95, '', 'outer')}`)).toEqual(['not met outer ring: near']);
    expect(ask(rule, `${ring(2)}, ${ring(12, '', 'outer')}`, { units: 'ft' })).toEqual(['met outer ring: far enough']);
    expect(ask(rule, `${ring(2)}, ${ring(11.7, '', 'outer')}`, { units: 'ft' })).toEqual(['not met outer ring: near']);
    expect(ask(rule, ring(1))).toEqual([]);
  });
});

describe('ring-not-under-roof-or-paving: UFGS 13100N; no threshold', () => {
  const above = (text: string) => ask('ring-not-under-roof-or-paving', ring(1, text));

  it('by what somebody saw above it', () => {
    expect(above(', surface: open ground')).toEqual(['met ring: open']);
    expect(above(', surface: eaves')).toEqual(['not met ring: under eaves']);
    expect(above(', surface: paving')).toEqual(['not met ring: under paving']);
    expect(above(', surface: unknown')).toEqual(['cannot tell ring: nobody saw']);
    expect(above('')).toEqual([]);
  });
});

describe('ring-soil-contact: IEC 62305-3:2010 5.4.2.2, 80 % of its length in soil', () => {
  const contact = (text: string, more = ', claims: class III') =>
    ask('ring-soil-contact', `ring: {kind: buried wire, closed: yes, length: 50 m${text}}`, { region: 'iec', more });

  it('either side, in both systems', () => {
    expect(contact(', in_soil: 40 m')).toEqual(['met ring: in soil']);
    expect(contact(', in_soil: 39 m')).toEqual(['not met ring: not in soil']);
    expect(contact(', in_soil: 132 ft')).toEqual(['met ring: in soil']);
    expect(contact(', depth: 0.8 m')).toEqual(['met ring: in soil']);
    expect(contact('')).toEqual(['cannot tell ring: contact unknown']);
  });

  it('is asked where lightning protection is claimed', () => {
    expect(contact(', in_soil: 10 m', '')).toEqual([]);
    expect(contact(', in_soil: 10 m, serves: lightning', '')).toEqual(['not met ring: not in soil']);
  });
});

it('none of them is asked of a rod alone', () => {
  const text = (region: string) =>
    `site: {name: Rod, region: ${region}, service: none, claims: class III}\nelectrodes: {R: {kind: rod}}\n`;
  for (const rule of ['electrode-from-foundation-us', 'ring-depth-us', 'radial-length', 'second-ring-distance'])
    expect(findingsOf(rule, text('us')).outcome).toBe('not applicable');
  for (const rule of ['electrode-from-foundation-iec', 'ring-soil-contact'])
    expect(findingsOf(rule, text('iec')).outcome).toBe('not applicable');
});

everyOutcome('ring-not-under-roof-or-paving');
everyOutcome('electrode-from-foundation-us', {
  'cannot tell': 'without places nothing is asked, and a place on the plan is a figure',
});
everyOutcome('electrode-from-foundation-iec', { limits: 'a distance and a depth that both hold say the depth alone' });
everyOutcome('ring-depth-us');
everyOutcome('radial-length');
everyOutcome('second-ring-distance', {
  'cannot tell': 'only on the plan can be told that one ring goes round another, and a place there is a figure',
});
everyOutcome('ring-soil-contact');
