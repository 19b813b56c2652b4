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
    'cannot tell lamp: case unknown',
    'met gen: own source',
    'met radio: by its cord',
    'met van: by its cord',
  ]);
  expect(cases('none', field.replace('kind: lamp', 'kind: metal lamp'))).toContain('not met lamp: nothing');
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

/** A station whose panel is on its rod, with these boxes and the line of the supply. */
const fed = (boxes: string, drop = '[street, meter, main]') => `electrodes: {R1: {kind: rod}}
equipment: {main: {kind: service panel}, ${boxes}}
lines: {drop: {kind: mains, path: ${drop}}}
conductors: {c1: {from: main, to: R1}}
`;

test('a meter is the affair of its supplier: left out where it is theirs, else asked of them, never found wanting', () => {
  const meter = (says: string) => fed(`meter: {kind: meter box${says}}`);
  const outcome = (says: string) => findingsOf(rule, typed('main', meter(says))).outcome;
  expect([outcome(', owner: utility'), outcome(', owner: Utility, bonded: no')]).toEqual([
    'not applicable',
    'not applicable',
  ]);
  for (const says of ['', ', bonded: no', ', bonded: unknown', ', owner: landlord'])
    expect(cases('main', meter(says))).toEqual(['cannot tell meter: meter']);
  expect(cases('main', meter(', bonded: yes'))).toEqual(['met meter: bonded']);
  const [asked] = findingsOf(rule, typed('main', meter(''))).findings;
  expect([asked!.tool, asked!.remedy]).toEqual(['electrician', expect.stringContaining('Ask the supplier')]);
  expect(asked!.change).toBeNull();
});

test('other boxes of the supplier are left out, and the station’s are asked as ever', () => {
  expect(cases('main', fed('meter: {kind: meter box, owner: utility}, box: {kind: cabinet, owner: utility}'))).toEqual(
    [],
  );
  expect(cases('main', fed('meter: {kind: meter box, owner: utility}, box: {kind: cabinet}'))).toEqual([
    'not met box: nothing',
  ]);
});

test('a battery has no case to bond; a cabinet round it has one', () => {
  const of = (kind: string, says = '') => cases('main', fed(`box: {kind: ${kind}${says}}`, '[street, main]'));
  for (const kind of ['battery', 'lead batteries', 'Battery bank', 'battery strings', 'accumulator'])
    expect(of(kind, ', bonded: no')).toEqual([]);
  expect(of('cabinet')).toEqual(['not met box: nothing']);
  expect(of('battery charger')).toEqual(['cannot tell box: case unknown']);
  expect(of('metal battery box')).toEqual(['not met box: nothing']);
});

test('of a box whose kind is a free word nobody knows whether its case is of metal', () => {
  const box = (kind: string, says = '') => fed(`box: {kind: ${kind}${says}}`, '[street, main]');
  for (const says of ['', ', bonded: no']) {
    const [asked] = findingsOf(rule, typed('main', box('inverter', says))).findings;
    expect([asked!.outcome, asked!.because.key, asked!.change, asked!.under]).toEqual([
      'cannot tell',
      'case unknown',
      null,
      null,
    ]);
  }
  expect(cases('main', box('unknown'))).toEqual(['cannot tell box: case unknown']);
  expect(cases('main', box('metal inverter'))).toEqual(['not met box: nothing']);
  expect(cases('main', box('plastic inverter'))).toEqual([]);
  // what ties it ties it, whatever it is made of
  const bonded = box('inverter').replace('c1:', 'c2: {from: box, to: main}, c1:');
  expect(cases('main', bonded)).toEqual(['met box: bonded']);
  // kinds that are radios by their name are asked as ever
  for (const kind of ['transmitter', 'repeater', 'transceiver'])
    expect(cases('main', box(kind))).toEqual(['not met box: nothing']);
});

everyOutcome(rule);
