import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { verdictsOf } from '../verdicts-of.ts';

/** `outcome place: reason` of a rule on a site that claims a class. */
function ask(rule: string, electrodes: string, claims: string, soil: string, ties = '') {
  return verdictsOf(
    rule,
    `site: {name: Types, region: iec, units: m, service: panel${claims}}
soil: {layers: [{resistivity: ${soil}}]}
electrodes: {${electrodes}}
equipment: {panel: {kind: service panel}}
conductors: {${ties}}
`,
  );
}

// IEC 62305-3:2010 figure 3, from memory: III, IV 5 m; I 0.03 rho - 10 above 500 ohm m; II 0.02 rho - 11 above 800 ohm m
describe('type-a-length: level l1, upright half of it', () => {
  const rods = (length: string, claims = ', claims: class III', soil = '100 ohm m') =>
    ask(
      'type-a-length',
      `A: {kind: rod, length: ${length}}, B: {kind: buried wire, closed: no, length: 50 m}`,
      claims,
      soil,
    );

  it('either side of 2.5 m upright and 5 m level, in both systems', () => {
    expect(rods('2.5 m')).toEqual(['met A: long enough', 'met B: long enough']);
    expect(rods('8.25 ft')).toEqual(['met A: long enough', 'met B: long enough']);
    expect(rods('2.4 m')).toEqual(['not met A: short', 'met B: long enough']);
    expect(
      ask(
        'type-a-length',
        'A: {kind: buried wire, closed: no, length: 4.9 m}, B: {kind: rod, length: 3 m}',
        ', claims: class IV',
        '100 ohm m',
      ),
    ).toEqual(['not met A: short', 'met B: long enough']);
  });

  it('grows with the soil in classes I and II: 20 m at 1000 ohm m, 9 m in class II', () => {
    expect(rods('10 m', ', claims: class I', '1000 ohm m')).toEqual(['met A: long enough', 'met B: long enough']);
    expect(rods('9.9 m', ', claims: class I', '1000 ohm m')).toEqual(['not met A: short', 'met B: long enough']);
    expect(rods('4.5 m', ', claims: class II', '1000 ohm m')).toEqual(['met A: long enough', 'met B: long enough']);
    expect(rods('4.4 m', ', claims: class 2', '1000 ohm m')).toEqual(['not met A: short', 'met B: long enough']);
    expect(rods('5 m', ', claims: class I', '200 to 1000 ohm m')).toEqual([
      'cannot tell A: soil unknown',
      'met B: long enough',
    ]);
    expect(rods('unknown')).toEqual(['cannot tell A: length unknown', 'met B: long enough']);
  });

  it('is waived below 10 ohm alone, needs two, and is not asked of rings or without a class', () => {
    const two = (ohm: string) =>
      ask(
        'type-a-length',
        `A: {kind: rod, length: 1 m, resistance: ${ohm}}, B: {kind: rod, length: 3 m}`,
        ', claims: class III',
        '100 ohm m',
      );
    expect(two('9.9 ohm')).toEqual(['met A: reads low', 'met B: long enough']);
    expect(two('10 ohm')).toEqual(['not met A: short', 'met B: long enough']);
    expect(two('10.1 ohm')).toEqual(['not met A: short', 'met B: long enough']);
    expect(ask('type-a-length', 'A: {kind: rod, length: 9 m}', ', claims: class III', '100 ohm m')).toEqual([
      'not met A: only one',
    ]);
    const lone = (closed: string) =>
      ask('type-a-length', `A: {kind: buried wire, length: 40 m${closed}}`, ', claims: class III', '100 ohm m');
    expect(lone(', closed: no')).toEqual(['not met A: only one']);
    for (const closed of ['', ', closed: unknown']) expect(lone(closed)).toEqual(['cannot tell A: perhaps a ring']);
    expect(lone(', closed: yes')).toEqual([]);
    const partly = ', claims: class III, incomplete: [electrodes]';
    expect(ask('type-a-length', 'A: {kind: rod, length: 9 m}', partly, '100 ohm m')).toEqual([
      'cannot tell A: perhaps only one',
    ]);
    expect(ask('type-a-length', 'A: {kind: rod, length: 1 m}', partly, '100 ohm m')).toEqual(['not met A: short']);
    expect(
      ask(
        'type-a-length',
        'A: {kind: rod, length: 1 m}, R: {kind: buried wire, closed: yes}',
        ', claims: class III',
        '100 ohm m',
      ),
    ).toEqual([]);
    expect(rods('1 m', '')).toEqual([]);
  });
});

// IEC 62305-3:2010 5.4.2.1, from memory: an electrode at each down conductor, two at least
describe('type-a-length: an electrode at each down conductor', () => {
  const down = (downs: string, electrodes = 'A: {kind: rod, length: 3 m}, B: {kind: rod, length: 3 m}', more = '') =>
    verdictsOf(
      'type-a-length',
      `site: {name: Types, region: iec, units: m, service: none, claims: class III}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes: {${electrodes}}
supports: {t1: {kind: air terminal}, t2: {kind: air terminal}}
bars: {test: {kind: other}, high: {kind: other}}
metalwork: {gutter: {kind: gutter}}
conductors: {roof: {from: t1, to: t2}, ${downs}}
${more}`,
    ).filter((v) => !/long enough|only/.test(v));
  const d = (n: number, to: string, from = `t${n}`) => `d${n}: {from: ${from}, to: ${to}, role: down conductor}`;

  it('takes one for each, landed on or over a bar for the test', () => {
    expect(down(`${d(1, 'A')}, ${d(2, 'B')}`)).toEqual([]);
    expect(down(`${d(1, 'test')}, c: {from: test, to: A}, ${d(2, 'B')}`)).toEqual([]);
    expect(down(`${d(1, 'test')}, c: {from: test, to: A, role: down conductor}, ${d(2, 'B')}`)).toEqual([]);
    expect(down(`d1: {from: t1, to: high, passes: [A], role: down conductor}, ${d(2, 'B')}`)).toEqual([]);
  });

  it('finds one that leads to none: the roof and another down conductor are no way', () => {
    expect(down(`${d(1, 'A')}, ${d(2, 'test')}, c: {from: A, to: B}`)).toEqual(['not met d2: none at foot']);
    expect(down(`${d(1, 'A')}, ${d(2, 'gutter')}`)).toEqual(['not met d2: none at foot']);
    expect(down(`${d(1, 'A')}, ${d(2, 'B')}, ${d(3, 'gutter', 'high')}, e: {from: high, to: t1}`)).toEqual([
      'not met d3: none at foot',
    ]);
  });

  it('finds several on one rod', () => {
    expect(down(`${d(1, 'A')}, ${d(2, 'A')}`)).toEqual(['not met d1 d2: shared']);
    expect(down(`${d(1, 'test')}, ${d(2, 'test')}, c: {from: test, to: A}`)).toEqual(['not met d1 d2: shared']);
    expect(down(`${d(1, 'test')}, ${d(2, 'test')}, c: {from: test, to: A}, e: {from: test, to: B}`)).toEqual([]);
    const pair = (count: string) => `A: {kind: rods, ${count}length: 3 m}`;
    expect(down(`${d(1, 'A')}, ${d(2, 'A')}`, pair('count: 2, '))).toEqual([]);
    expect(down(`${d(1, 'A')}, ${d(2, 'A')}`, pair(''))).toEqual(['cannot tell d1 d2: perhaps shared']);
    const run = 'A: {kind: buried wire, closed: no, length: 30 m}';
    expect(down(`${d(1, 'A')}, ${d(2, 'A')}`, run)).toEqual(['cannot tell d1 d2: perhaps shared']);
  });

  it('cannot tell of one whose foot nobody saw', () => {
    expect(down(`${d(1, 'A')}, ${d(2, 'unknown')}`)).toEqual(['cannot tell d2: foot unknown']);
    expect(down(`${d(1, 'A')}, ${d(2, 'test')}, c: {from: test, to: B, present: unknown}`)).toEqual([
      'cannot tell d2: foot unknown',
    ]);
    expect(down(`${d(1, 'A')}, ${d(2, 'gutter')}, c: {from: gutter, to: B}`)).toEqual(['cannot tell d2: foot unknown']);
    const none = verdictsOf(
      'type-a-length',
      `site: {name: Types, region: iec, service: none, claims: class III, incomplete: [conductors]}
electrodes: {A: {kind: rod, length: 3 m}, B: {kind: rod, length: 3 m}}
supports: {t1: {kind: air terminal}}
bars: {test: {kind: other}}
conductors: {${d(1, 'test')}}
`,
    );
    expect(none).toContain('cannot tell d1: foot unknown');
  });
});

describe('type-b-radius: the circle of the area that the ring encloses, r = sqrt(A / pi), at least l1', () => {
  const ring = (side: number, rest = '', ties = '', claims = ', claims: class III', soil = '100 ohm m') =>
    ask(
      'type-b-radius',
      `R: {kind: buried wire, closed: yes, route: [[0, 0], [${side}, 0], [${side}, ${side}], [0, ${side}]]}${rest}`,
      claims,
      soil,
      ties,
    );

  // a square of 8.86 m has 78.5 m2, the circle of 5 m radius 78.54 m2
  it('either side of 5 m', () => {
    expect(ring(8.87)).toEqual(['met R: wide enough']);
    expect(ring(8.8)).toEqual(['not met R: small']);
    expect(
      ask('type-b-radius', 'R: {kind: buried wire, closed: yes, area: 846 sq ft}', ', claims: class III', '100 ohm m'),
    ).toEqual(['met R: wide enough']);
    expect(ask('type-b-radius', 'R: {kind: buried wire, closed: yes}', ', claims: class III', '100 ohm m')).toEqual([
      'cannot tell R: area unknown',
    ]);
    expect(ring(20, '', '', ', claims: class I', '100 to 2000 ohm m')).toEqual(['cannot tell R: soil unknown']);
    expect(ring(1, '', '', '')).toEqual([]);
  });

  // side 4 m: r = 2.257 m, missing 2.743 m, so rods of 1.37 m, two at least
  it('rods of half of what is missing make up for it', () => {
    const rods = (length: string) => `, A: {kind: rod, length: ${length}}, B: {kind: rod, length: ${length}}`;
    const ties = 'a: {from: R, to: A}, b: {from: R, to: B}';
    expect(ring(4, rods('1.4 m'), ties)).toEqual(['met R: has more']);
    expect(ring(4, rods('1.3 m'), ties)).toEqual(['not met R: small']);
    expect(ring(4, rods('1.4 m'), 'a: {from: R, to: A}')).toEqual(['not met R: small']);
    expect(ring(4, rods('unknown'), ties)).toEqual(['cannot tell R: perhaps more']);
  });

  it('level runs of all that is missing do too', () => {
    const run = (length: string) => `{kind: buried wire, closed: no, length: ${length}}`;
    const ties = 'a: {from: R, to: A}, b: {from: R, to: B}';
    expect(ring(4, `, A: ${run('2.75 m')}, B: ${run('2.75 m')}`, ties)).toEqual(['met R: has more']);
    expect(ring(4, `, A: ${run('2.7 m')}, B: ${run('2.75 m')}`, ties)).toEqual(['not met R: small']);
  });
});

describe('each figure on both sides', () => {
  const typed = (electrodes: string) => `site: {name: Types, region: iec, service: none, claims: class III}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes: {${electrodes}}
`;
  eitherSide('type-a-length', (figure) => typed(`A: {kind: rods, count: 2, length: ${figure}}`), [
    ['2.5 m', '2.48 m'],
    ['8.21 ft', '8.1 ft'],
  ]);
  eitherSide('type-a-length', (figure) => typed(`A: {kind: radial, count: 2, length: ${figure}}`), [
    ['5 m', '4.95 m'],
    ['16.5 ft', '16.2 ft'],
  ]);
  // the circle of 5 m radius has 78.54 m2, 845.4 sq ft
  eitherSide('type-b-radius', (figure) => typed(`R: {kind: buried wire, closed: yes, area: ${figure}}`), [
    ['78.6 m2', '77 m2'],
    ['846 sq ft', '830 sq ft'],
  ]);
  const inFeet = (side: string) =>
    `site: {name: Types, region: iec, units: ft, service: none, claims: class III}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes: {R: {kind: buried wire, closed: yes, route: [[0, 0], [${side}, 0], [${side}, ${side}], [0, ${side}]]}}
`;
  // a square of 29.08 ft has that area
  eitherSide('type-b-radius', inFeet, [['29.1', '28.8']]);
});

everyOutcome('type-a-length', { limits: 'one that reads above 10 ohm says its length, which then decides' });
everyOutcome('type-b-radius');
