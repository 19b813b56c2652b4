import { describe, expect, it } from 'vitest';
import { underCause } from '../../src/rules/under-cause.ts';
import { studyOfText } from '../examples/study-of-example.ts';

const groups = new Map([
  ['E2', 'E2'],
  ['tower', 'E2'],
  ['bar', 'E2'],
  ['pole', 'pole'],
]);

const finding = (id: string, untied: readonly string[], more: object = {}) => ({
  id,
  untied,
  codeSet: 'any',
  under: null,
  outcome: 'not met',
  agreed: null,
  ...more,
});

function parents(...findings: ReturnType<typeof finding>[]) {
  return underCause(findings, () => groups).map((f) => f.under);
}

describe('findings that one missing bond causes', () => {
  it('stand under the first of them', () => {
    expect(parents(finding('a', ['E2']), finding('b', ['tower']), finding('c', ['bar']))).toEqual([null, 'a', 'a']);
  });

  it('stand alone where they are about another group', () => {
    expect(parents(finding('a', ['E2']), finding('b', ['pole']))).toEqual([null, null]);
  });

  it('stand under one only where each of their groups has one', () => {
    expect(parents(finding('a', ['E2']), finding('b', ['E2', 'pole']), finding('c', ['pole']))).toEqual([
      null,
      null,
      'b',
    ]);
  });

  it.each([
    ['named another cause', { under: 'x' }, 'x'],
    ['is agreed to stand', { agreed: {} }, null],
    ['cannot be told', { outcome: 'cannot tell' }, null],
  ])('leave alone what %s', (_, more, parent) => {
    expect(parents(finding('a', ['E2']), finding('b', ['tower'], more))[1]).toBe(parent);
  });

  it('one that is agreed to stand takes nothing in', () => {
    expect(parents(finding('a', ['E2'], { agreed: {} }), finding('b', ['tower']))).toEqual([null, null]);
  });

  it('of one code set never stand under those of another', () => {
    const us = finding('a', ['E2'], { codeSet: 'us' });
    expect(parents(us, finding('b', ['tower'], { codeSet: 'iec' }), finding('c', ['bar'], { codeSet: 'us' }))).toEqual([
      null,
      null,
      'a',
    ]);
  });
});

/** A tower that nothing ties to its rod's system: masts, panels and electrodes all say so, one of them aloud. */
it('of a site: what one missing wire causes is one hazard', () => {
  const text = `
site: {name: Hill, region: us, units: ft, service: panel, supply: us-grounded}
electrodes:
  E1: {kind: rod, length: 8 ft, diameter: 5/8 in}
  E2: {kind: rod, length: 8 ft, diameter: 5/8 in}
supports:
  tower: {kind: lattice tower, height: 40 ft, metal: galvanised steel, sections: bolted}
antennas:
  beam: {kind: yagi, on: tower@top, dc_path: yes, touches_support: yes}
bars:
  foot: {kind: tower bar, where: outside}
arresters: none
equipment:
  panel: {kind: service panel, neutral_bonded: yes}
lines: none
conductors:
  c1: {from: panel, to: E1, wire: 6 AWG copper, length: 5 ft}
  c2: {from: foot, to: E2, wire: 6 AWG copper, length: 5 ft}
  c3: {from: tower@base, to: foot, wire: 6 AWG copper, length: 5 ft}
`;
  const notMet = studyOfText(text).findings.filter((f) => f.outcome === 'not met' && f.severity === 'hazard');
  const alone = notMet.filter((f) => f.under === null);
  expect(alone.map((f) => f.id)).toEqual(['all-electrodes-one-system:E2']);
  const folded = notMet.filter((f) => f.under === 'all-electrodes-one-system:E2').map((f) => f.rule);
  expect(folded).toEqual(expect.arrayContaining(['antenna-rod-is-not-a-substitute', 'panel-tied-to-service']));
});
