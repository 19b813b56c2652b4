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

test('a fence is asked about, the live wire of an electric fence is not', () => {
  expect(verdictsOf(rule, site('kind: fence'))).toEqual(['cannot tell m: nobody said']);
  expect(findingsOf(rule, site('kind: electric fence')).outcome).toBe('not applicable');
});

everyOutcome(rule);
