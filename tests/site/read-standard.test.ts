import { describe, expect, it } from 'vitest';
import { readAgreed } from '../../src/site/standard/read-agreed.ts';
import { readStandard } from '../../src/site/standard/read-standard.ts';
import { sayProblem } from '../../src/words/say-problem.ts';

const known = [
  { id: 'rod-length-us', key: 'rodLengthM', senses: ['least'] },
  { id: 'mast-grounded', key: null },
] as const;

const read = (text: string) => readStandard(text, 'landlord.yaml', known);
const said = (text: string) => read(text).problems.map((p) => sayProblem(p, 'landlord.yaml'));

describe('a standard of the owner', () => {
  it('is read with its figures in SI, typed in either system', () => {
    const { standard, problems } = read(`
name: site standard of the landlord
edition: 3
limits:
  big-tie: {of: conductors between bars, wire: at least 2 AWG, severity: hazard, because: the contract says so}
  metric-tie: {of: mast leads, wire: at least 35 mm2, length: at most 6 in, metal: [copper, tinned copper]}
  lugs: {of: joints on bars, kind: bolted lug, bolts: at least 2}
rules:
  rod-length-us: {limit: at least 10 ft, severity: advice}
  mast-grounded: {severity: defect}
`);
    expect(problems).toEqual([]);
    expect(standard).toMatchObject({ file: 'landlord.yaml', name: 'site standard of the landlord', edition: '3' });
    const [big, metric, lugs] = standard!.limits;
    expect(big).toMatchObject({ id: 'big-tie', of: 'conductors between bars', severity: 'hazard' });
    // 2 AWG is 33.63 mm2 (ASTM B258: 0.005 in x 92^((36 - n)/39) in diameter)
    expect((big!.conditions[0] as { value: number }).value * 1e6).toBeCloseTo(33.63, 2);
    expect(metric!.severity).toBe('defect');
    expect(metric!.conditions).toMatchObject([
      { is: 'figure', field: 'wire', key: 'areaM2', sense: 'least', value: 35e-6 },
      { is: 'figure', field: 'length', key: 'lengthM', sense: 'most', value: expect.closeTo(0.1524, 9) as number },
      { is: 'word', field: 'metal', words: ['copper', 'tinned copper'] },
    ]);
    expect(lugs!.conditions[1]).toMatchObject({ field: 'bolts', sense: 'least', value: 2 });
    expect(standard!.rules).toEqual([
      {
        rule: 'rod-length-us',
        severity: 'advice',
        because: null,
        limit: { key: 'rodLengthM', sense: 'least', value: 3.048 },
      },
      { rule: 'mast-grounded', severity: 'defect', because: null, limit: null },
    ]);
  });

  it.each([
    ['a field that is none', 'nmae: x', /landlord.yaml:1:1: nmae: .*did you mean `name`/],
    [
      'a subject that is none',
      'limits:\n  a: {of: conductor between bars, wire: at least 2 AWG}',
      /:2:11: limits\.a\.of: .*did you mean `conductors between bars`/,
    ],
    ['no subject', 'limits:\n  a: {wire: at least 2 AWG}', /:2:6: limits\.a: .*`of:`/],
    ['nothing asked', 'limits:\n  a: {of: joints}', /:2:6: limits\.a: nothing is asked/],
    [
      'the other side than the rule asks',
      'rules:\n  rod-length-us: {limit: at most 10 ft}',
      /:2:26: rules\.rod-length-us\.limit: .*`at least`.* Begin with `at least`; .*under `limits:`/,
    ],
    [
      'a kind of joint that is none',
      'limits:\n  a: {of: joints on electrodes, kind: [bolted lug, exothermic wled]}',
      /:2:52: limits\.a\.kind\.2: .*did you mean `exothermic weld`/,
    ],
    [
      'a kind of electrode that is none',
      'limits:\n  a: {of: rods, kind: rodd}',
      /:2:23: limits\.a\.kind: .*did you mean `rods?`/,
    ],
    [
      'a kind of arrester that is none',
      'limits:\n  a: {of: arresters, kind: [gas tub]}',
      /:2:29: limits\.a\.kind\.1: .*did you mean `gas tube`/,
    ],
    ['no side', 'limits:\n  a: {of: joints, bolts: 2}', /:2:26: limits\.a\.bolts: .*`at least` or `at most`/],
    ['a range', 'limits:\n  a: {of: mast leads, length: at most 1 to 2 m}', /:2:31: limits\.a\.length: .*range/],
    ['a length for a section', 'limits:\n  a: {of: mast leads, wire: at least 2 ft}', /:2:29: limits\.a\.wire: /],
    [
      'a severity that is none',
      'limits:\n  a: {of: joints, bolts: at least 2, severity: hazzard}',
      /did you mean `hazard`/,
    ],
    [
      'a rule that is none',
      'rules:\n  rod-lenght-us: {severity: advice}',
      /:2:3: rules\.rod-lenght-us: .*did you mean `rod-length-us`/,
    ],
    [
      'a limit of a yes or no',
      'rules:\n  mast-grounded: {limit: at least 2 m}',
      /:2:26: rules\.mast-grounded\.limit: .*no figure/,
    ],
    ['a text alone', 'just text', /:1:1: this file does not begin with a field/],
    ['nothing', '', /:1:1: nothing stands in this file/],
  ])('refuses %s, with its place', (_, text, pattern) => {
    expect(read(text).standard).toBeNull();
    expect(said(text)[0]).toMatch(pattern);
  });

  it('takes the kinds that a site file takes, in any spelling that it takes', () => {
    const { standard, problems } = read(`
limits:
  welds: {of: joints, kind: [exothermic, Bolted Lug, other]}
  rods: {of: electrodes, kind: [Rod, buried wire, other]}
  tubes: {of: arresters, kind: [gas-tube, mov]}
`);
    expect(problems).toEqual([]);
    expect(standard!.limits.map((l) => l.conditions)).toEqual([
      [{ is: 'word', field: 'kind', words: ['exothermic weld', 'bolted lug', 'other'] }],
      [{ is: 'word', field: 'kind', words: ['rod', 'buried wire', 'other'] }],
      [{ is: 'word', field: 'kind', words: ['gas tube', 'mov'] }],
    ]);
  });

  it('names every problem at once', () => {
    expect(said('limits:\n  a: {of: joints, bolts: 2}\n  b: {of: jonts}\nrules: {x: {}}')).toHaveLength(3);
  });
});

describe('a file of findings agreed to stand', () => {
  it('is read', () => {
    const { agreements } = readAgreed(
      'agreed:\n  - {rule: rod-length-us, at: E1, reason: rock, by: owner, date: 2026-01-02}',
      'a.yaml',
    );
    expect(agreements!.agreed).toEqual([
      { rule: 'rod-length-us', at: 'E1', reason: 'rock', by: 'owner', date: '2026-01-02' },
    ]);
  });

  it.each([
    ['agreed:\n  - {reason: rock}', /which rule/],
    ['agreed:\n  - {rule: rod-length-us, reasn: rock}', /did you mean `reason`/],
    ['agreed:\n  - {rule: rod-length-us, date: 2026-13-02}', /:2:33: agreed\.1\.date/],
  ])('refuses %j', (text, pattern) => {
    const { agreements, problems } = readAgreed(text, 'a.yaml');
    expect(agreements).toBeNull();
    expect(sayProblem(problems[0]!, 'a.yaml')).toMatch(pattern);
  });
});
