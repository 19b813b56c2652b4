import { expect, test } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const rule = 'shelters-within-reach-bonded';
const typed = (rest: string) => `site: {name: Reach, region: us, units: ft, service: main}\n${rest}`;

/** Of each verdict, with the severity of those that are not met. */
function reach(rest: string, state: string | null = null): readonly string[] {
  const severities = findingsOf(rule, typed(rest), state).findings.map((f) =>
    f.outcome === 'not met' ? `${f.severity} ` : '',
  );
  return verdictsOf(rule, typed(rest), state).map((line, i) => `${severities[i]}${line}`);
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
  expect(reach(site('yes'))).toEqual(['advice not met computer radio: cords only']);
  expect(reach(site('no'))).toEqual(['hazard not met computer radio: two groups']);
  expect(reach(site('unknown'))).toEqual(['hazard not met computer radio: two groups']);
});

test('with the cord pulled it ties nothing', () => {
  expect(reach(site('yes'), 'pulled')).toEqual(['hazard not met computer radio: two groups']);
});

test('a bond is what is asked', () => {
  expect(reach(site('no', '  c1: {from: radio, to: computer}\n'))).toEqual(['met computer radio: one group']);
});

test('who pulls a connector holds the shield of either side', () => {
  const coax = site('no').replace('lines:\n', 'lines:\n  coax: {kind: coax, path: [wire, entry, {plug: p2}, radio]}\n');
  expect(reach(coax)).toContain('hazard not met entry radio: two groups at a plug');
});

test('cannot tell while the wires were not all looked at; not asked where nothing is in reach', () => {
  const notAll = typed(site('no')).replace('service: main', 'service: main, incomplete: [conductors]');
  expect(verdictsOf(rule, notAll)).toEqual(['cannot tell computer radio: perhaps']);
  expect(findingsOf(rule, typed('equipment: {main: {kind: service panel}}\n')).outcome).toBe('not applicable');
});

everyOutcome(rule);
