import { expect, test } from 'vitest';
import { readSite } from '../../../src/site/read-site.ts';
import { runStudy } from '../../../src/study/run-study.ts';

/** `outcome at` of each verdict on cases. */
function cases(service: string, rest: string): readonly string[] {
  const { site, problems } = readSite(`site: {name: Boxes, region: us, units: ft, service: ${service}}\n${rest}`, 'x');
  if (site === null) throw new Error(JSON.stringify(problems));
  const { study } = runStudy(site, { state: null, version: 'test', checksum: '', date: null });
  return study.findings
    .filter((f) => f.rule === 'no-orphan-equipment')
    .map((f) => `${f.outcome} ${f.at.join(' ')}`)
    .sort();
}

const barn = `electrodes: {R1: {kind: rod}, R2: {kind: rod}}
equipment: {main: {kind: service panel}, barn: {kind: sub-panel}, radio: {kind: transceiver}}
conductors: {c1: {from: main, to: R1}, c2: {from: barn, to: R2}}
`;
const radioCord = (protective: string) => `  cord: {kind: mains, path: [barn, radio]${protective}}\n`;

test('a cord ties a radio to a panel that the feeder does not tie to the service', () => {
  const lines = 'lines:\n  feeder: {kind: mains, path: [main, barn], protective_conductor: no}\n';
  const radio = (protective: string) =>
    cases('main', barn + lines + radioCord(protective)).find((v) => /radio/.test(v));
  expect(radio(', protective_conductor: yes')).toBe('met radio');
  expect(radio(', protective_conductor: no')).toBe('not met radio');
});

test('a cord of which nobody said whether it has a protective conductor leaves it open', () => {
  expect(cases('main', `${barn}lines:\n${radioCord('')}`)).toContain('cannot tell radio');
});

const field = `equipment: {gen: {kind: generator}, van: {kind: van}, radio: {kind: transceiver}, lamp: {kind: lamp}}
lines:
  long: {kind: mains, path: [gen, van], protective_conductor: yes}
  short: {kind: mains, path: [van, radio], protective_conductor: yes}
conductors: none
`;

test('cords of a field station go on from box to box, and begin at its generator', () => {
  expect(cases('none', field)).toEqual(['met gen', 'met radio', 'met van', 'not met lamp']);
});

test('beside a service a generator is tied like any other case', () => {
  const site = field.replace('equipment: {', 'equipment: {main: {kind: service panel}, ');
  expect(cases('main', `electrodes: {R1: {kind: rod}}\n${site}`)).toContain('not met gen');
});

test('a sub-panel is not tied by the cords that it feeds', () => {
  const lost = barn.replace(', c2: {from: barn, to: R2}', '');
  const lines = `lines:\n${radioCord(', protective_conductor: yes')}`;
  expect(cases('main', lost + lines)).toEqual(['met main', 'met radio', 'not met barn']);
});
