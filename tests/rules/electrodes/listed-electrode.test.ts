import { describe, expect, it } from 'vitest';
import { verdictsOf } from '../verdicts-of.ts';

/** NFPA 70 250.53(A)(2) and 250.53(D)(2): the second one is of a kind that 250.52(A) lists (from memory). */
const site = (first: string, second: string, more = '') => `site: {name: Second, region: us, units: ft, service: panel}
electrodes: {A: {${first}}, B: {${second}}}
equipment: {panel: {kind: service panel}}
conductors: {gec: {from: panel, to: A, wire: 4 AWG copper}, tie: {from: A, to: B, wire: 6 AWG copper}${more}}
`;
const kinds = [
  ['a rod', 'kind: rod, length: 8 ft', 'met'],
  ['a footing', 'kind: concrete-encased', 'met'],
  ['a plate', 'kind: plate', 'met'],
  ['a closed ring', 'kind: buried wire, closed: yes', 'met'],
  ['an open wire', 'kind: buried wire, closed: no', 'not met'],
  ['radials', 'kind: radial, count: 4', 'not met'],
  ['radials that a maker had listed', 'kind: radial, count: 4, listed: yes', 'met'],
  ['a strap on rock', 'kind: strap on rock', 'not met'],
  ['a wire that may close to a ring', 'kind: buried wire', 'cannot tell'],
  ['another thing', 'kind: other', 'cannot tell'],
  ['nobody knows what', 'kind: unknown', 'cannot tell'],
] as const;

describe('the second electrode', () => {
  it.each(kinds)('of a lone rod: %s', (_, second, outcome) => {
    const [verdict] = verdictsOf('single-rod-25-ohm', site('kind: rod, length: 8 ft', second));
    expect(verdict).toMatch(new RegExp(`^${outcome} A: `));
  });

  it.each(kinds)('of a water pipe: %s', (_, second, outcome) => {
    const [verdict] = verdictsOf('water-pipe-supplemented', site('kind: water pipe', second));
    expect(verdict).toMatch(new RegExp(`^${outcome} A: `));
  });

  it('is the one that counts, where one that does not is bonded too', () => {
    const both = site('kind: water pipe', 'kind: radial', ', s: {from: A, to: C}').replace(
      'B: {',
      'C: {kind: rod}, B: {',
    );
    expect(verdictsOf('water-pipe-supplemented', both)).toEqual(['met A: another']);
  });
});
