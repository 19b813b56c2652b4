import { expect, test } from 'vitest';
import { readSite } from '../../../src/site/read-site.ts';
import { runStudy } from '../../../src/study/run-study.ts';

/** `severity reason at` of each verdict that is not met, and `met at`. */
function reach(rest: string, state: string | null = null): readonly string[] {
  const { site, problems } = readSite(`site: {name: Reach, region: us, units: ft, service: main}\n${rest}`, 'reach');
  if (site === null) throw new Error(JSON.stringify(problems));
  const { study } = runStudy(site, { state, version: 'test', checksum: '', date: null });
  return study.findings
    .filter((f) => f.rule === 'shelters-within-reach-bonded')
    .map((f) => `${f.outcome === 'not met' ? `${f.severity} ${f.because.key}` : f.outcome}: ${f.at.join(' ')}`);
}

const site = (cords: string, conductors = '') => `antennas: {wire: {kind: dipole}}
electrodes: {R1: {kind: rod}}
bars: {entry: {kind: entry panel}}
equipment:
  main: {kind: service panel}
  radio: {kind: transceiver, within_reach: [computer]}
  computer: {kind: computer}
lines:
  radio-cord: {kind: mains, path: [main, {plug: p1}, radio], protective_conductor: ${cords}}
  computer-cord: {kind: mains, path: [main, computer], protective_conductor: yes}
conductors:
  gec: {from: main, to: R1}
${conductors}states:
  pulled: {open: [p1]}
`;

test('cords with protective conductors tie what stands within reach for a fault of the mains: advice, no hazard', () => {
  expect(reach(site('yes'))).toEqual(['advice cords only: computer radio']);
  expect(reach(site('no'))).toEqual(['hazard two groups: computer radio']);
  expect(reach(site('unknown'))).toEqual(['hazard two groups: computer radio']);
});

test('with the cord pulled it ties nothing', () => {
  expect(reach(site('yes'), 'pulled')).toEqual(['hazard two groups: computer radio']);
});

test('a bond is what is asked', () => {
  expect(reach(site('no', '  c1: {from: radio, to: computer}\n'))).toEqual(['met: computer radio']);
});

test('who pulls a connector holds the shield of either side', () => {
  const coax = site('no').replace('lines:\n', 'lines:\n  coax: {kind: coax, path: [wire, entry, {plug: p2}, radio]}\n');
  expect(reach(coax)).toContain('hazard two groups at a plug: entry radio');
});
