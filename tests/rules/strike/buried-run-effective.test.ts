import { describe, expect, it, test } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const rule = 'buried-run-effective';
const site = (electrode: string, { soil = '100 ohm m', conductors = '', units = 'm' } = {}) => `
site: {name: Runs, region: us, units: ${units}, service: unknown}
${soil === '' ? '' : `soil: {layers: [{resistivity: ${soil}}]}`}
electrodes: {R1: {kind: rod, at: [0, 0], length: 8 ft}, far: {kind: rod, at: [60, 0], length: 8 ft}, w: {${electrode}}}
conductors: {${conductors}}
`;

/**
 * J. He and others, IEEE Trans. Power Deliv. 20 (2005), from memory: 6.528 (rho tau)^0.379 / I^0.097, us and kA. By hand at 1 us
 * and 30 kA: 30^0.097 = 1.3908; 100 ohm m: 100^0.379 = 5.7280, 26.89 m (88.2 ft); 10 ohm m: 2.3933, 11.23 m; 1000 ohm m:
 * 13.709, 64.35 m.
 */
describe('the length of an arm against what a strike can use', () => {
  it.each([
    ['radial', '26.8 m', 'met w: short'],
    ['radial', '27.0 m', 'not met w: long'],
    ['radial', '88 ft', 'met w: short'],
    ['radial', '89 ft', 'not met w: long'],
    ['buried wire', '27.0 m', 'not met w: long'],
  ])('%s of %s: %s', (kind, length, expected) => {
    expect(verdictsOf(rule, site(`kind: ${kind}, length: ${length}`))).toEqual([expected]);
  });

  it.each([
    ['10 ohm m', '11.2 m', 'met'],
    ['10 ohm m', '11.3 m', 'not met'],
    ['1000 ohm m', '64.3 m', 'met'],
    ['1000 ohm m', '64.4 m', 'not met'],
  ])('in %s, %s: %s', (soil, length, outcome) => {
    expect(verdictsOf(rule, site(`kind: radial, length: ${length}`, { soil }))[0]).toMatch(new RegExp(`^${outcome} `));
  });
});

describe('where a stroke comes in', () => {
  const route = 'kind: buried wire, route: [[0, 0], [50, 0]]';
  const lead = (at: string) => `c1: {from: R1, to: ${at}, wire: 6 AWG copper}`;

  it('at an end: all of it; in the middle: half of it; at both ends: half of it', () => {
    expect(verdictsOf(rule, site(route, { conductors: lead('w') }))).toEqual(['not met w: long']);
    expect(verdictsOf(rule, site(route, { conductors: lead('w@25 m') }))).toEqual(['met w: short']);
    const both = `${lead('w')}, c2: {from: far, to: w, wire: 6 AWG copper}`;
    expect(verdictsOf(rule, site(route, { conductors: both }))).toEqual(['met w: short']);
  });

  it('26 m from an end is met, 28 m is not', () => {
    expect(verdictsOf(rule, site(route, { conductors: lead('w@26 m') }))).toEqual(['met w: short']);
    expect(verdictsOf(rule, site(route, { conductors: lead('w@28 m') }))).toEqual(['not met w: long']);
  });

  it('nobody knows where: it may be in the middle', () => {
    const bare = (length: string) => `kind: buried wire, length: ${length}`;
    expect(verdictsOf(rule, site(bare('50 m'), { conductors: lead('w') }))).toEqual(['cannot tell w: near']);
    expect(verdictsOf(rule, site(bare('60 m'), { conductors: lead('w') }))).toEqual(['not met w: long']);
  });
});

describe('what is not known', () => {
  it('the soil: a wire that even wet clay can use is met, a longer one waits for it', () => {
    expect(verdictsOf(rule, site('kind: radial, length: 11 m', { soil: '' }))).toEqual(['met w: short']);
    expect(verdictsOf(rule, site('kind: radial, length: 20 m', { soil: '' }))).toEqual(['cannot tell w: no soil']);
  });
  it('the soil well enough, or the length', () => {
    const range = { soil: '50 to 200 ohm m' };
    expect(verdictsOf(rule, site('kind: radial, length: 27 m', range))).toEqual(['cannot tell w: near']);
    expect(verdictsOf(rule, site('kind: radial, length: 20 to 30 m'))).toEqual(['cannot tell w: near']);
    expect(verdictsOf(rule, site('kind: radial'))).toEqual(['cannot tell w: length unknown']);
  });
});

test('the layer that it lies in counts, not what is below', () => {
  const text = site('kind: radial, length: 20 m, depth: 0.5 m').replace(
    'layers: [{resistivity: 100 ohm m}]',
    'layers: [{resistivity: 100 ohm m, thickness: 2 m}, {resistivity: 10 ohm m}]',
  );
  expect(verdictsOf(rule, text)).toEqual(['met w: short']);
  expect(verdictsOf(rule, text.replace('depth: 0.5 m', 'depth: 3 m'))).toEqual(['cannot tell w: near']);
});

test('rings and rods are not asked', () => {
  expect(findingsOf(rule, site('kind: buried wire, length: 90 m, closed: yes')).outcome).toBe('not applicable');
  expect(findingsOf(rule, site('kind: rod, length: 40 m')).outcome).toBe('not applicable');
});

everyOutcome('buried-run-effective');
