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
  expect(verdictsOf(rule, site('kind: gas pipe, bonded: no'))).toEqual(['not met m: not bonded']);
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
  expect(near('2.9 m')).toEqual(['not met advice: not bonded']);
  expect(near('9.8 ft')).toEqual(['not met advice: not bonded']);
  expect(near('3.1 m')).toEqual(['met defect: far fence']);
  expect(near('10 ft')).toEqual(['met defect: far fence']);
  expect(fence('')).toEqual(['cannot tell defect: how near']);
  expect(fence('', 'supports: none\n')).toEqual(['met defect: far fence']);
  expect(fence('', '')).toEqual(['cannot tell defect: how near']);
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
