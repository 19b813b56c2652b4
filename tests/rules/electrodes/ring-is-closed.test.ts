import { expect, test } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const rule = 'ring-is-closed';
const typed = (rest: string) => `site: {name: Ring, region: us, units: ft, service: unknown}\n${rest}`;

/** `outcome at` of each verdict on rings. */
const rings = (rest: string) => verdictsOf(rule, typed(rest));

const ring = 'electrodes:\n  ring: {kind: buried wire, closed: yes}\n';

test('a ring called closed is one, unless it or the joint that closes it is open', () => {
  expect(rings(ring)).toEqual(['met ring: closed']);
  expect(rings(`${ring}joints:\n  crimp: {kind: irreversible crimp, on: ring, condition: sound}\n`)).toEqual([
    'met ring: closed',
  ]);
  expect(rings(`${ring}joints:\n  crimp: {kind: irreversible crimp, on: ring, condition: open}\n`)).toEqual([
    'not met ring: open',
  ]);
  expect(rings(`${ring}joints:\n  crimp: {kind: irreversible crimp, on: ring, present: unknown}\n`)).toEqual([
    'cannot tell ring: nobody said',
  ]);
});

test('wires round three rods are open where one is missing', () => {
  const rods = 'electrodes:\n  R1: {kind: rod}\n  R2: {kind: rod}\n  R3: {kind: rod}\n';
  const wires = (third: string) =>
    `${rods}conductors:\n  c1: {from: R1, to: R2}\n  c2: {from: R2, to: R3}\n  c3: {from: R3, to: R1${third}}\n`;
  expect(rings(wires(', present: no'))).toEqual(['not met c3: open']);
  expect(rings(wires(', present: unknown'))).toEqual(['cannot tell c3: nobody said']);
  expect(rings(wires(''))).toEqual([]);
});

test('a straight wire is no ring', () => {
  expect(findingsOf(rule, typed('electrodes: {w: {kind: buried wire, closed: no}}\n')).outcome).toBe('not applicable');
});

everyOutcome(rule);
