import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type BuiltCommand, buildCommand } from './built-command.ts';

let evenground: BuiltCommand;
let folder: string;

beforeAll(() => {
  evenground = buildCommand();
  folder = mkdtempSync(join(tmpdir(), 'evenground-soil-input-'));
});
afterAll(() => {
  evenground.remove();
  rmSync(folder, { recursive: true, force: true });
});

interface Asked {
  readonly layer?: string;
  readonly soil?: string;
  readonly electrodes?: readonly string[];
  readonly conductors?: readonly string[];
}

/** A house with a rod in two layers, and what is wrong. The added electrode is on line 5. */
function siteOf({
  layer = '{resistivity: 200 ohm m, thickness: 5 ft}',
  soil = '',
  electrodes = [],
  conductors = [],
}: Asked) {
  const lines = (all: readonly string[]) => all.map((line) => `  ${line}\n`).join('');
  return `site: {name: House, region: us, units: ft, service: panel, supply: us-grounded}
soil: {layers: [${layer}, {resistivity: 60 ohm m}]${soil}}
electrodes:
  E1: {kind: rod, at: [0, 0], length: 8 ft, diameter: 5/8 in}
${lines(electrodes)}equipment:
  panel: {kind: service panel, where: inside}
conductors:
  gec: {from: panel, to: E1, wire: 6 AWG copper, length: 6 ft}
${lines(conductors)}`;
}

/** No figure that is none, and no value that nobody filled in, in anything that is printed. */
const odd = /\bNaN\b|Infinity|undefined|\[object|-0(?![\d.])|minus infinity/;

/** Runs the whole command on a file: the page of the soil, and the report with the study beside it; a large one as JSON alone. */
function everythingOf(name: string, asked: Asked, isLarge = false) {
  const file = join(folder, `${name}.site.yaml`);
  writeFileSync(file, siteOf(asked));
  const page = evenground.run('soil', file);
  const other = isLarge
    ? evenground.run('soil', file, '--json')
    : evenground.run('report', file, '-o', join(folder, name));
  expect(other.code).toBe(page.code);
  const written = (end: string) => readFileSync(join(folder, name, `${name}.${end}`), 'utf8');
  const isWritten = !isLarge && other.code === 0;
  const json = isWritten ? written('study.json') : isLarge ? other.out : '';
  const html = isWritten ? written('html').replace(/<(style|script)[\s\S]*?<\/\1>/g, '') : '';
  // the folder has a random name
  for (const text of [page.out, json, html]) expect(odd.exec(text.replaceAll(folder, ''))?.[0] ?? null).toBeNull();
  const earth = json === '' ? null : JSON.parse(json).earth;
  return { code: page.code, said: page.out.replace(/\s+/g, ' '), err: page.err, earth };
}

const alone = (earth: { electrodes: { id: string; aloneOhm: unknown }[] }, id: string) =>
  earth.electrodes.find((e) => e.id === id)!.aloneOhm;
const nothing = { value: null, low: 0, high: null };

describe('an electrode above the ground', () => {
  it('as a whole is asked about and has no figure', () => {
    const electrodes = ['E2: {kind: rod, at: [20, 0], length: 8 ft, top: -9 ft}'];
    const { code, said, earth } = everythingOf('above', { electrodes });
    expect(code).toBe(0);
    expect(said).toMatch(/above\.site\.yaml:5:\d+: With its top at -9 ft and a length of 8 ft all of it stands above/);
    expect(alone(earth, 'E2')).toBeNull();
  });

  it('in part counts only with what is in the soil', () => {
    const electrodes = [
      'E2: {kind: rod, at: [200, 0], length: 8 ft, diameter: 5/8 in, top: -3 ft}',
      'E3: {kind: rod, at: [400, 0], length: 5 ft, diameter: 5/8 in}',
    ];
    const { earth } = everythingOf('half-above', { electrodes });
    expect(alone(earth, 'E2')).toEqual(alone(earth, 'E3'));
  });

  it.each(['buried wire', 'radial', 'plate', 'concrete-encased'])('a depth below zero of a %s is refused', (kind) => {
    const { code, err } = everythingOf('minus-depth', { electrodes: [`E2: {kind: ${kind}, depth: -1 ft}`] });
    expect(code).toBe(2);
    expect(err).toMatch(/:5:\d+: electrodes\.E2\.depth: `-1 ft` cannot be right: it is below zero/);
  });
});

describe('electrodes that cross without a joint', () => {
  const wires = [
    'W1: {kind: buried wire, route: [[5, 5], [45, 5]], depth: 18 in, wire: 4 AWG copper}',
    'W2: {kind: buried wire, route: [[20, -10], [20, 30]], depth: 18 in, wire: 4 AWG copper}',
  ];

  it('are asked about, and worked out as if they did not touch', () => {
    const { code, said, earth } = everythingOf('crossing', { electrodes: wires });
    expect(code).toBe(0);
    expect(said).toMatch(/:6:\d+: `W1` lies bare in the soil and meets this at the same depth, and nothing ties/);
    expect(earth.groups.map((g: { id: string }) => g.id)).toEqual(['E1', 'W1', 'W2']);
    for (const { resistanceOhm } of earth.groups) expect(resistanceOhm.value).toBeGreaterThan(0);
  });

  it('two in one place are refused as one solve, and each still has its own figure', () => {
    const { code, said, earth } = everythingOf('one-place', {
      electrodes: ['E2: {kind: rod, at: [0, 0], length: 8 ft, diameter: 5/8 in}'],
    });
    expect(code).toBe(0);
    expect(said).toContain('could not be solved together (at E2 two lie in one place');
    expect(alone(earth, 'E2')).toEqual(alone(earth, 'E1'));
  });
});

describe('a piece shorter than it is thick', () => {
  it('a whole rod is asked about and has no figure', () => {
    const electrodes = ['E2: {kind: rod, at: [20, 0], length: 0.2 in, diameter: 5/8 in}'];
    const { code, said, earth } = everythingOf('stub', { electrodes });
    expect(code).toBe(0);
    expect(said).toContain('A length of 0.2 in is less than its own thickness of 5/8 in');
    expect(alone(earth, 'E2')).toBeNull();
  });

  it('one stretch of a route leaves the wire without a figure, with the reason', () => {
    const electrodes = [
      'W1: {kind: buried wire, route: [[5, 5], [5.001, 5], [40, 5]], depth: 18 in, wire: 4/0 AWG copper}',
    ];
    const { code, said, earth } = everythingOf('short-stretch', { electrodes });
    expect(code).toBe(0);
    expect(said).toContain('No figure for W1: a stretch of it is shorter than its metal is thick.');
    expect(alone(earth, 'W1')).toEqual(nothing);
  });
});

describe('soil that cannot be', () => {
  it.each([
    ['a layer of no thickness', '{resistivity: 200 ohm m, thickness: 0 ft}', 'soil.layers.1.thickness: `0 ft`'],
    [
      'a layer that may be of none',
      '{resistivity: 200 ohm m, thickness: 0 to 5 ft}',
      'soil.layers.1.thickness: `0 to 5 ft`',
    ],
    ['a resistivity of 0', '{resistivity: 0 ohm m, thickness: 5 ft}', 'soil.layers.1.resistivity: `0 ohm m`'],
    ['one below 0', '{resistivity: -5 ohm m, thickness: 5 ft}', 'soil.layers.1.resistivity: `-5 ohm m`'],
  ])('%s is refused with its place', (_, layer, said) => {
    const { code, err } = everythingOf('refused', { layer });
    expect(code).toBe(2);
    expect(err).toContain(`${said} cannot be right: it has to be more than zero.`);
    expect(err).toMatch(/refused\.site\.yaml:2:\d+: /);
  });

  it('a frost depth of 0 is refused', () => {
    expect(everythingOf('no-frost', { soil: ', frost: 0 ft' })).toMatchObject({ code: 2 });
  });

  it.each(['1e9 ohm m', '1e300 ohm m', '0.0001 ohm m'])(
    'a resistivity of %s is asked about, and nothing is worked out in it',
    (ohmM) => {
      const { code, said, earth } = everythingOf('odd-soil', { layer: `{resistivity: ${ohmM}, thickness: 5 ft}` });
      expect(code).toBe(0);
      expect(said).toContain('Nothing underfoot has such a resistivity');
      expect(said).toContain(
        'No figure for E1: in soil of less than 0.001 or more than 100000000 ohm m nothing is worked out.',
      );
      expect(alone(earth, 'E1')).toEqual(nothing);
    },
  );

  it('layers a million times apart have bounds that hold, and no likely figure, with the reason', () => {
    const { said, earth } = everythingOf('contrast', { layer: '{resistivity: 9e7 ohm m, thickness: 5 ft}' });
    expect(said).toContain('No likely figures, only ranges: the layers are more than a million times apart');
    expect(said).toContain('were brought nearer, outwards');
    expect(said).not.toMatch(/how thick|more layers than/);
    const { value, low, high } = alone(earth, 'E1') as { value: number | null; low: number; high: number };
    expect(value).toBeNull();
    // By hand: what lies above carries nothing, so that 3 ft of the rod stand flush in 60 ohm m: rho / (2 pi L) (ln(4 L / a) - 1)
    // with L = 0.9144 m and a = 7.94 mm is 53.6 ohm, 1 % high.
    expect(low).toBeLessThan(53.6);
    expect(high).toBeGreaterThan(53);
  });

  it('a layer of unknown thickness has no likely figure either, for that reason and no other', () => {
    const { said } = everythingOf('no-thickness', { layer: '{resistivity: 200 ohm m}' });
    expect(said).toContain('No likely figures, only ranges: how thick layer 1 of the soil is, is not known.');
    expect(said).not.toContain('a million times');
  });

  it('a resistivity that is open to one side says that', () => {
    const { said } = everythingOf('open', { layer: '{resistivity: over 100 ohm m, thickness: 5 ft}' });
    expect(said).toContain('No likely figures, only ranges: a figure of the soil is open to one side.');
  });
});

describe('more metal than is solved', () => {
  const tooMany = 'The metal in the soil comes to more pieces than are solved together (3000, and fewer where';
  const wire = (i: number) =>
    `W${i}: {kind: buried wire, route: [[${20 * i}, 5], [${20 * i}, 2005]], depth: 18 in, wire: 4 AWG copper}`;
  const many = (count: number, of: (i: number) => string) => Array.from({ length: count }, (_, i) => of(i + 1));
  const corners = Array.from({ length: 5000 }, (_, i) => `[${5 + 2 * i}, ${10 + (i % 2)}]`).join(', ');

  it.each([
    ['two hundred wires of 2000 ft, ten thousand pieces', many(200, wire), null],
    [
      'a wire of 5000 stretches',
      [`W: {kind: buried wire, route: [${corners}], depth: 18 in, wire: 4 AWG copper}`],
      'W',
    ],
    [
      '5000 radials',
      ['R: {kind: radial, at: [50, 50], count: 5000, length: 100 ft, depth: 6 in, wire: 12 AWG copper}'],
      'R',
    ],
    [
      '5000 rods in a line',
      ['G: {kind: rods, count: 5000, layout: line, spacing: 16 ft, at: [50, 50], length: 8 ft, diameter: 5/8 in}'],
      'G',
    ],
    [
      '1200 rods',
      many(1200, (i) => `R${i}: {kind: rod, at: [${10 * (i % 40)}, ${10 * Math.ceil(i / 40)}], length: 8 ft}`),
      null,
    ],
  ] as const)('%s: the limit is said, and what can be known of the rest stays', (_, electrodes, without) => {
    const { code, said, earth } = everythingOf('many', { electrodes }, true);
    expect(code).toBe(0);
    expect(said).toContain(tooMany);
    // 8 ft in 200 over 60 ohm m: between what either has alone (0.39519 ohm per ohm m, reference solution)
    const { low, high } = alone(earth, 'E1') as { low: number; high: number };
    expect(low).toBeGreaterThan(60 * 0.39);
    expect(high).toBeLessThan(200 * 0.4);
    if (without === null) return;
    expect(said).toContain(`No figure for ${without}: it comes to more than 3000 pieces of metal`);
    expect(alone(earth, without)).toEqual(nothing);
  });

  it('a hundred thousand and more are refused by the file', () => {
    const { code, err } = everythingOf('count', { electrodes: ['R: {kind: radial, count: 1000000, length: 100 ft}'] });
    expect(code).toBe(2);
    expect(err).toContain('`1000000` is no whole number from 1 to 100000');
  });
});

describe('metal of no station', () => {
  const far = 'it is more than 100 km long, or lies more than 20 000 km from where places are counted from';

  it.each([
    ['a rod of 1e9 ft', 'X: {kind: rod, at: [50, 0], length: 1e9 ft, diameter: 5/8 in}', far],
    [
      'a wire of 1e30 ft',
      'X: {kind: buried wire, at: [50, 0], length: 1e30 ft, depth: 18 in, wire: 4 AWG copper}',
      far,
    ],
    [
      'a route of a million feet',
      'X: {kind: buried wire, route: [[5, 5], [1000000, 5]], depth: 18 in, wire: 4 AWG copper}',
      far,
    ],
  ])('%s has no figure, with the reason', (_, electrode, why) => {
    const { code, said, earth } = everythingOf('far', { electrodes: [electrode] });
    expect(code).toBe(0);
    expect(said).toContain(`No figure for X: ${why}.`);
    expect(alone(earth, 'X')).toEqual(nothing);
    expect(said).toMatch(/E1 about 38/);
  });

  it('a rod at the end of the world is solved alone and felt by nobody', () => {
    const { earth } = everythingOf('away', {
      electrodes: ['X: {kind: rod, at: [1e30, 0], length: 8 ft, diameter: 5/8 in}'],
    });
    expect(alone(earth, 'X')).toEqual(alone(earth, 'E1'));
    expect(earth.transferred).toEqual([]);
  });

  it('a bare conductor of a billion feet stops nothing', () => {
    const { code, earth } = everythingOf('endless', {
      electrodes: ['X: {kind: rod, at: [1e9, 0], length: 8 ft, diameter: 5/8 in}'],
      conductors: ['c9: {from: E1, to: X, wire: 4 AWG copper, buried: 18 in, length: 1e9 ft}'],
    });
    expect(code).toBe(0);
    expect(earth.resistanceOhm.high).toBeGreaterThan(earth.resistanceOhm.low);
  });
});
