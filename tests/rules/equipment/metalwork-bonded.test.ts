import { expect, test } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const rule = 'metalwork-bonded';
const site = (metal: string, conductors = '') => `site: {name: Metal, region: us, units: ft, service: panel}
electrodes: {R: {kind: rod}}
equipment: {panel: {kind: service panel}}
metalwork: {m: {${metal}}}
conductors: {c: {from: panel, to: R}${conductors}}
`;
const finding = (metal: string) => findingsOf(rule, site(metal)).findings[0]!;

/** NFPA 70 250.104; IEC 60364-4-41 411.3.1.2 (second-hand); no threshold. */
test('metal of a building is bonded; of pipes of water and gas it is a hazard where it is not', () => {
  expect(verdictsOf(rule, site('kind: water pipe', ', b: {from: panel, to: m}'))).toEqual(['met m: bonded']);
  expect(verdictsOf(rule, site('kind: gas pipe, bonded: no'))).toEqual(['not met m: gas not bonded']);
  expect(finding('kind: gas pipe, bonded: no').severity).toBe('hazard');
  expect(finding('kind: steel frame, bonded: no').severity).toBe('defect');
});

/** ITU-T K.56 7.3.3 and MIL-HDBK-1012/1: near a tower; within 3 m is ours; advice. */
test('a fence is asked about within 3 m of a tower, as advice', () => {
  const fence = (rest: string, supports = 'supports: {t: {kind: tower}}\n') =>
    findingsOf(rule, site(`kind: fence, bonded: no${rest}`) + supports).findings.map(
      (f) => `${f.outcome} ${f.severity}: ${f.because.key}`,
    );
  const near = (distance: string) => fence(`, near: [{part: t, distance: ${distance}}]`);
  expect(near('2.9 m')).toEqual(['not met advice: practice asks']);
  expect(near('9.8 ft')).toEqual(['not met advice: practice asks']);
  expect(near('3.1 m')).toEqual(['met defect: far fence']);
  expect(near('10 ft')).toEqual(['met defect: far fence']);
  expect(fence('')).toEqual(['cannot tell defect: how near']);
  expect(fence('', 'supports: none\n')).toEqual(['met defect: far fence']);
  expect(fence('', '')).toEqual(['cannot tell defect: how near']);
});

/** NFPA 70 250.104 (second-hand): (A) water piping, (B) other metal piping, (C) exposed structural metal, and nothing else. */
test('metal that no code names is asked by practice, and the finding says so', () => {
  const said = (kind: string) => {
    const { severity, because } = finding(`kind: ${kind}, bonded: no`);
    return `${severity}: ${because.key}`;
  };
  for (const kind of ['gutter', 'siding', 'roof sheet', 'wall foil', 'railing', 'tank', 'vehicle frame'])
    expect(said(kind), kind).toBe('advice: practice asks');
  // other articles, which are not in the pack, ask for these
  expect(said('solar array')).toBe('defect: frames of an array');
  for (const kind of ['oil pipe', 'sewer pipe', 'heating pipes', 'compressed air piping', 'steel frame'])
    expect(said(kind), kind).toBe('defect: not bonded');
  expect(said('water pipe')).toBe('hazard: not bonded');
  expect(finding('kind: gutter, bonded: no').because.text).toMatch(/common practice asks it/);
  // a permit office is not told that a clause is broken which does not name it
  expect(finding('kind: gutter, bonded: no').family).toBe('practice');
  expect(finding('kind: gas pipe, bonded: no').family).toBe('code');
  expect(finding('kind: gutter, bonded: no').because.text).not.toMatch(/250|NFPA|must/);
});

/** Whether the clause names it hangs on what it is. */
test('of metal of an unknown kind it cannot be told', () => {
  expect(verdictsOf(rule, site('kind: unknown, bonded: no'))).toEqual(['cannot tell m: kind unknown']);
  expect(verdictsOf(rule, site('kind: unknown, bonded: yes'))).toEqual(['met m: bonded']);
});

/** IEC 60364-4-41, arm's reach 2.5 m (8.2 ft), as shelters-within-reach-bonded has it; from memory. */
test('what practice asks is a defect where a person touches it and something else at once', () => {
  const severity = (rest: string, more = '') =>
    findingsOf(rule, site(`kind: siding, bonded: no${rest}`) + more).findings[0]!.severity;
  const near = (distance: string) => severity(`, near: [{part: panel, distance: ${distance}}]`);
  expect(severity('')).toBe('advice');
  expect(['2.4 m', '8.2 ft', '2 to 3 m', 'unknown'].map(near)).toEqual(['defect', 'defect', 'defect', 'defect']);
  expect(['2.6 m', '8.3 ft'].map(near)).toEqual(['advice', 'advice']);
  expect(severity(', within_reach: [panel]')).toBe('defect');
  // said at the other part
  expect(severity('', 'supports: {t: {kind: tower, within_reach: [m]}}\n')).toBe('defect');
  expect(severity('', 'supports: {t: {kind: tower, near: [{part: m, distance: 1 m}]}}\n')).toBe('defect');
});

/** What side-flash-distance-us finds there is a hazard under this finding, so it is more than advice. */
test('what lies beside a down conductor on the plan is a defect', () => {
  const beside = (east: string) => {
    const metal = site(
      `kind: gutter, bonded: no, route: [[0, 0], [0, 20]]`,
      `, d: {from: air, to: R, role: down conductor, route: [[${east}, 0], [${east}, 10]]}`,
    );
    return findingsOf(
      rule,
      `${metal.replace('region: us', 'region: us, claims: class II')}supports: {air: {kind: air terminal, height: 20 ft}}\n`,
    ).findings[0]!.severity;
  };
  expect([beside('8'), beside('8.5')]).toEqual(['defect', 'advice']);
});

/** NFPA 70 680.26(B): the bond of a pool need not run to a panel or an electrode. */
test('a pool is not asked to reach the service', () => {
  expect(findingsOf(rule, site('kind: pool, bonded: no')).outcome).toBe('not applicable');
});

test('a fence is asked about, the live wire of an electric fence is not', () => {
  expect(verdictsOf(rule, site('kind: fence'))).toEqual(['cannot tell m: nobody said']);
  expect(findingsOf(rule, site('kind: electric fence')).outcome).toBe('not applicable');
});

everyOutcome(rule);
