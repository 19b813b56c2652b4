import { expect, test } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const rule = 'no-orphan-equipment';
const typed = (service: string, rest: string) =>
  `site: {name: Boxes, region: us, units: ft, service: ${service}}\n${rest}`;

/** Verdicts on cases, in order. */
const cases = (service: string, rest: string) => [...verdictsOf(rule, typed(service, rest))].sort();

const barn = `electrodes: {R1: {kind: rod}, R2: {kind: rod}}
equipment: {main: {kind: service panel}, barn: {kind: sub-panel}, radio: {kind: transceiver}}
conductors: {c1: {from: main, to: R1}, c2: {from: barn, to: R2}}
`;
const radioCord = (protective: string) => `  cord: {kind: mains, path: [barn, radio]${protective}}\n`;

test('a cord ties a radio to a panel that the feeder does not tie to the service', () => {
  const lines = 'lines:\n  feeder: {kind: mains, path: [main, barn], protective_conductor: no}\n';
  const radio = (protective: string) =>
    cases('main', barn + lines + radioCord(protective)).find((v) => /radio/.test(v));
  expect(radio(', protective_conductor: yes')).toBe('met radio: by its cord');
  expect(radio(', protective_conductor: no')).toBe('not met radio: nothing');
});

test('a cord of which nobody said whether it has a protective conductor leaves it open', () => {
  expect(cases('main', `${barn}lines:\n${radioCord('')}`)).toContain('cannot tell radio: perhaps');
});

const field = `equipment: {gen: {kind: generator}, van: {kind: van}, radio: {kind: transceiver}, lamp: {kind: lamp}}
lines:
  long: {kind: mains, path: [gen, van], protective_conductor: yes}
  short: {kind: mains, path: [van, radio], protective_conductor: yes}
conductors: none
`;

test('cords of a field station go on from box to box, and begin at its generator', () => {
  expect(cases('none', field)).toEqual([
    'met gen: own source',
    'met radio: by its cord',
    'met van: by its cord',
    'not met lamp: nothing',
  ]);
});

test('beside a service a generator is tied like any other case', () => {
  const site = field.replace('equipment: {', 'equipment: {main: {kind: service panel}, ');
  expect(cases('main', `electrodes: {R1: {kind: rod}}\n${site}`)).toContain('not met gen: nothing');
});

test('of a sub-panel the feeder is asked about, of a radio its plug', () => {
  const open = `${barn.replace(', c2: {from: barn, to: R2}', '')}lines:\n  feeder: {kind: mains, path: [main, barn]}\n${radioCord('')}`;
  const asked = (id: string) => findingsOf(rule, typed('main', open)).findings.find((f) => f.at.includes(id))!;
  expect([asked('barn').tool, asked('barn').remedy]).toEqual([
    'electrician',
    expect.stringContaining('feeder of barn'),
  ]);
  expect(asked('radio').remedy).toContain('two or three pins');
});

test('a sub-panel is not tied by the cords that it feeds', () => {
  const lost = barn.replace(', c2: {from: barn, to: R2}', '');
  const lines = `lines:\n${radioCord(', protective_conductor: yes')}`;
  expect(cases('main', lost + lines)).toEqual(['met radio: by its cord', 'not met barn: nothing']);
});

test('where nobody spoke of the mains a cord may tie a box; one to where no panel was typed ties it as it says', () => {
  const alone = (lines: string, header = '') =>
    verdictsOf(
      rule,
      `site: {name: Desk, region: us, service: unknown${header}}\nequipment: {radio: {kind: transceiver}}\nconductors: none\nlines: ${lines}\n`,
    );
  expect(alone('{usb: {kind: usb, path: [radio, unknown]}}')).toEqual(['cannot tell radio: perhaps']);
  expect(alone('none', ', without: [mains]')).toEqual(['not met radio: nothing']);
  for (const end of ['street', 'unknown']) {
    const cord = (says: string) => alone(`{cord: {kind: mains, path: [${end}, radio]${says}}}`);
    expect(cord(', protective_conductor: yes')).toEqual(['met radio: by its cord']);
    expect(cord(', protective_conductor: no')).toEqual(['not met radio: nothing']);
    expect(cord('')).toEqual(['cannot tell radio: perhaps']);
  }
});

test('of the service itself another rule asks', () => {
  expect(verdictsOf(rule, typed('main', 'equipment: {main: {kind: service panel}}\nconductors: none\n'))).toEqual([]);
});

test('computers, modems and routers are too small to be asked', () => {
  const desk = 'equipment: {pc: {kind: computer}, box: {kind: router}}\n';
  expect(findingsOf(rule, typed('none', desk)).outcome).toBe('not applicable');
});

everyOutcome(rule);
