import { expect, test } from 'vitest';
import { readSite } from '../../../src/site/read-site.ts';
import { runStudy } from '../../../src/study/run-study.ts';

/** `outcome at` of each verdict on rings. */
function rings(rest: string, state: string | null = null): readonly string[] {
  const { site, problems } = readSite(`site: {name: Ring, region: us, units: ft, service: unknown}\n${rest}`, 'ring');
  if (site === null) throw new Error(JSON.stringify(problems));
  const { study } = runStudy(site, { state, version: 'test', checksum: '', date: null });
  return study.findings.filter((f) => f.rule === 'ring-is-closed').map((f) => `${f.outcome} ${f.at.join(' ')}`);
}

const ring = 'electrodes:\n  ring: {kind: buried wire, closed: yes}\n';

test('a ring called closed is one, unless it or the joint that closes it is open', () => {
  expect(rings(ring)).toEqual(['met ring']);
  expect(rings(`${ring}joints:\n  crimp: {kind: irreversible crimp, on: ring, condition: sound}\n`)).toEqual([
    'met ring',
  ]);
  expect(rings(`${ring}joints:\n  crimp: {kind: irreversible crimp, on: ring, condition: open}\n`)).toEqual([
    'not met ring',
  ]);
  expect(rings(`${ring}joints:\n  crimp: {kind: irreversible crimp, on: ring, present: unknown}\n`)).toEqual([
    'cannot tell ring',
  ]);
});

test('wires round three rods are open where one is missing', () => {
  const rods = 'electrodes:\n  R1: {kind: rod}\n  R2: {kind: rod}\n  R3: {kind: rod}\n';
  const wires = (third: string) =>
    `${rods}conductors:\n  c1: {from: R1, to: R2}\n  c2: {from: R2, to: R3}\n  c3: {from: R3, to: R1${third}}\n`;
  expect(rings(wires(', present: no'))).toEqual(['not met c3']);
  expect(rings(wires(', present: unknown'))).toEqual(['cannot tell c3']);
  expect(rings(wires(''))).toEqual([]);
});
