import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Between } from '../../src/bonding/way-between.ts';
import { type BuiltCommand, buildCommand } from './built-command.ts';

/**
 * All figures stated, so that every sum can be done by hand. Metal:
 *
 *     panel ──c1 2 m── R1 (30 ohm)          beam on mast@top, 10 m of mast
 *       │               │                    │
 *     c2 5 m          c4 4 m               mast@base
 *       │               │                    │
 *      bar ─────────────┘                 c5 1 m
 *       ├────────────────────────────────────┘
 *       └──c3 3 m, lug 0.2 milliohm, clamp1 0.5 milliohm── R2 (60 ohm)
 */
const station = `site: {name: Two ways, region: iec, units: m, service: panel}
electrodes:
  R1: {kind: rod, resistance: 30 ohm}
  R2: {kind: rod, resistance: 60 ohm}
supports:
  mast: {kind: mast, height: 10 m, metal: galvanised steel, sections: one piece}
antennas:
  beam: {kind: yagi, on: mast@top, touches_support: yes, dc_path: yes}
bars:
  bar: {kind: entry panel}
arresters:
  a1: {kind: gas tube, on: bar, bonded: unknown}
  a2: {kind: gas tube, on: bar, joint: bolted lug}
equipment:
  panel: {kind: service panel, where: inside}
  radio: {kind: transceiver, where: inside}
lines:
  feed: {kind: coax, path: [beam, a2, radio]}
conductors:
  c1: {from: panel, to: R1, wire: 16 mm2 copper, length: 2 m, resistance: 1 mohm, inductance: 2 uH, joints: none}
  c2: {from: panel, to: bar, wire: 25 mm2 copper, length: 5 m, resistance: 5 mohm, inductance: 5 uH, joints: none}
  c3:
    from: bar
    to: R2
    wire: 16 mm2 copper
    length: 3 m
    resistance: 3 mohm
    inductance: 3 uH
    bends: [{angle: 90 deg}, {angle: 45 deg}]
    joints: [{kind: bolted lug, resistance: 0.2 mohm}, clamp1]
  c4: {from: bar, to: R1, wire: 16 mm2 copper, length: 4 m, resistance: 4 mohm, inductance: 4 uH, joints: none}
  c5: {from: mast@base, to: bar, wire: 10 mm2 copper, length: 1 m, resistance: 1 mohm, inductance: 1 uH, joints: none}
  stray: {from: R2, to: unknown, wire: 16 mm2 copper}
joints:
  clamp1: {kind: rod clamp, on: R2, resistance: 0.5 mohm, accessible: yes}
states:
  cut: {lost: [c2]}
`;

let evenground: BuiltCommand;
let folder: string;
let file: string;

beforeAll(() => {
  evenground = buildCommand();
  folder = mkdtempSync(join(tmpdir(), 'evenground-path-'));
  file = join(folder, 'two-ways.site.yaml');
  writeFileSync(file, station);
}, 60_000);
afterAll(() => {
  evenground.remove();
  rmSync(folder, { recursive: true, force: true });
});

const lines = (text: string) => text.split('\n').map((line) => line.trim());
const between = (...args: readonly string[]) =>
  JSON.parse(evenground.run('path', file, ...args, '--json').out) as Between;

describe('path', () => {
  it('goes piece by piece, with sums done by hand', () => {
    const { code, out, err } = evenground.run('path', file, 'mast@4 m', 'R2');
    expect([code, err]).toEqual([0, '']);
    // 4 m = 13.12 ft, 1 m = 3.281 ft, 3 m = 9.843 ft; 10 mm2 = 19.7 kcmil (1 kcmil = 0.50671 mm2).
    expect(lines(out).slice(0, 14)).toEqual([
      'Two ways: from mast@4 m to R2 through permanent metal',
      '',
      '1. mast: mast@4 m to mast@base; 4 m (13.1 ft), resistance unknown, inductance unknown',
      '2. c5, 10 mm2 copper: mast@base to bar; 1 m (3.28 ft), 1 milliohm, 1 µH',
      '3. c3:bar, bolted lug, on bar; 200 microohm',
      '4. c3, 16 mm2 copper: c3:bar to clamp1; 3 m (9.84 ft), 3 milliohm, 3 µH, bends 135° in all',
      '5. clamp1, rod clamp, on R2; 500 microohm',
      '',
      // 4 + 1 + 3 m; 8 m = 26.25 ft. 1 + 0.2 + 3 + 0.5 milliohm. 1 + 3 microhenry.
      'Length                    8 m (26.2 ft)',
      'Bends                     135°',
      'DC resistance             at least 4.7 milliohm; unknown: mast',
      'Inductance, run straight  at least 4 µH; unknown: mast',
      'Least section             c5, 10 mm2 copper, 10 mm² (19.7 kcmil)',
      'Separate ways             one: somewhere on it there is no second way round',
    ]);
  });

  it('counts separate ways', () => {
    const { code, out } = evenground.run('path', file, 'panel', 'bar');
    expect(code).toBe(0);
    // The direct wire of 5 m; the other way, 2 + 4 m, goes round by R1.
    expect(lines(out)).toContain('1. c2, 25 mm2 copper: panel to bar; 5 m (16.4 ft), 5 milliohm, 5 µH');
    expect(out.replace(/\s+/g, ' ')).toContain(
      'Separate ways 2 that share no conductor and no joint; 2 that share no part but the ends',
    );
  });

  it('takes the way that is left in a state', () => {
    const { way } = between('panel', 'bar', '--state', 'cut');
    expect(way?.through).toEqual(['c1', 'R1', 'c4']);
    expect(way?.lengthM).toEqual({ low: 6, high: 6 });
    expect(way?.resistanceOhm?.high).toBeCloseTo(0.005, 12);
    expect(way?.separatePaths).toBe(1);
  });

  it('goes back as it goes there', () => {
    const [there, back] = [between('beam', 'R1').way!, between('R1', 'beam').way!];
    expect(back.pieces.map((p) => p.part)).toEqual(there.pieces.map((p) => p.part).reverse());
    // 10 m of mast, 1 m of c5, 4 m of c4: shorter than 5 + 2 m by the panel.
    expect([there.lengthM, back.lengthM]).toEqual([exactly(15), exactly(15)]);
  });

  it('says what decides where nobody knows, and who hangs together with each end', () => {
    const { code, out, err } = evenground.run('path', file, 'a1', 'panel');
    expect([code, err]).toEqual([0, '']);
    const text = out.replace(/\s+/g, ' ');
    expect(text).toContain('No permanent metal is known to join a1 and panel.');
    expect(text).toContain('- Look what a1 is bonded to, if anything, and type it at `arresters.a1.bonded`');
    // The wire from R2 to nobody knows where may lead to a1.
    expect(text).toContain('- stray goes on to where nobody has looked');
    expect(text).toContain('Nothing else is joined with a1.');
    expect(text).toContain('Joined with panel: R1, R2, a2, bar, beam, mast.');
    const { way, decidedBy } = between('a1', 'panel');
    expect([way, decidedBy]).toEqual([null, ['arresters.a1.bonded']]);
  });

  it('says that a cable is no bond', () => {
    const { code, out } = evenground.run('path', file, 'radio', 'beam');
    expect(code).toBe(0);
    expect(out.replace(/\s+/g, ' ')).toContain('Cable shields, cords,');
    expect(between('radio', 'beam').way).toBeNull();
  });

  it('knows one piece of metal when it sees it', () => {
    expect(evenground.run('path', file, 'mast', 'mast@4 m').out).toContain('are one piece of metal');
    expect(between('mast@top', 'mast@4 m').way?.lengthM).toEqual(exactly(6));
  });

  it.each([
    ['pannel', 'Did you mean panel?'],
    ['maast@4 m', 'Did you mean mast@4 m?'],
    ['c3:bra', 'Did you mean c3:bar?'],
    ['mast@4', 'with its unit'],
    ['mast@12 m', 'above the top of mast, which is 10 m (32.8 ft) high'],
    ['feed', 'nothing of it is permanent metal'],
    ['nobody-knows', 'has this name'],
  ])('refuses %s', (point, says) => {
    const { code, out, err } = evenground.run('path', file, point, 'R1');
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(says);
  });

  it('refuses what is lost in the state', () => {
    const { code, err } = evenground.run('path', file, 'c2', 'R1', '--state', 'cut');
    expect(code).toBe(2);
    expect(err).toContain('it is not there');
  });
});

describe('without', () => {
  const text = (...args: readonly string[]) => {
    const { code, out, err } = evenground.run('without', file, ...args);
    expect([code, err]).toEqual([0, '']);
    return out.replace(/\s+/g, ' ');
  };
  const json = (...args: readonly string[]) => JSON.parse(evenground.run('without', file, ...args, '--json').out);

  it('a clamp: the rod behind it is off the system, and 30 ohm is left of 30 and 60 in parallel', () => {
    const said = text('clamp1');
    expect(said).toContain('Cut off from the supply intake: R2.');
    expect(said).toContain('Earth electrodes lost to the supply intake: R2.');
    expect(said).not.toContain('Cut off from every');
    expect(said).toContain('20 ohm before, 30 ohm after');
    expect(said).toContain('Would anybody notice that clamp1 is gone: it can be seen.');
    expect(said).toContain('The group of R1 falls into 2: - R1, a2, bar, beam, mast, panel - R2');
    expect(said).toContain('perhaps still holds: R2.');
    // The wire from R2 to nobody knows where may lead back to the system.
    expect(said).toContain('Whether R2 is bonded depends on what is not known: where the other end of stray goes.');
  });

  it('a bound that is only that of the metal is no resistance to ground', () => {
    const { out } = evenground.run('without', 'examples/repeater-hut/repeater-hut.site.yaml', 'service-1');
    expect(out).toMatch(/Resistance to ground at the service: up to \d+ ohm before, \d+ to \d+ ohm after/);
    expect(out).not.toMatch(/(?:milli|micro)ohm/);
  });

  it('and a condition fails where nothing can lead back', () => {
    const traced = join(folder, 'traced.site.yaml');
    writeFileSync(traced, station.replace(/^ {2}stray:.*\n/m, ''));
    const { out } = evenground.run('without', traced, 'clamp1');
    expect(out.replace(/\s+/g, ' ')).toMatch(/NOT MET THEN HAZARD .*R2 .*not bonded .*No permanent metal joins R2/);
  });

  it('either of two ways: nothing is cut off; both: all behind them', () => {
    expect(text('c2')).toContain('No other part loses the supply intake or its last earth electrode.');
    expect(json('c2').splits).toEqual([]);
    const both = json('c2', 'c4');
    expect(both.losesService).toEqual(['R2', 'a2', 'bar', 'beam', 'mast']);
    expect(both.losesEarth).toEqual([]);
    expect(both.splits).toEqual([
      {
        group: 'R1',
        into: [
          ['R1', 'panel'],
          ['R2', 'a2', 'bar', 'beam', 'mast'],
        ],
      },
    ]);
  });

  it('counts on from what a state has lost', () => {
    const { state, losesService } = json('c4', '--state', 'cut');
    expect([state, losesService]).toEqual(['cut', ['R2', 'a2', 'bar', 'beam', 'mast']]);
  });

  it('a joint of a mount, and a joint by the end that it is on', () => {
    expect(json('a2:bar').losesService).toEqual(['a2']);
    expect(json('c3:from').losesService).toEqual(['R2']);
    expect(json('c3:bar').lost).toEqual(['c3:bar']);
  });

  it('a part: what hung on it, the part itself not counted', () => {
    const { losesService, losesEarth } = json('bar');
    expect(losesService).toEqual(['R2', 'a2', 'beam', 'mast']);
    expect(losesEarth).toEqual(['a2', 'beam', 'mast']);
  });

  it('every electrode: nothing is left', () => {
    const said = text('R1', 'R2');
    expect(said).toContain('Cut off from every earth electrode: a2, bar, beam, mast, panel.');
    expect(said).toContain('20 ohm before; after it no earth electrode is left');
  });

  it('a protector: its line is bare', () => {
    const { lines: lost } = json('a2');
    const core = lost.find(({ which }: { which: string }) => which === 'core');
    expect(core).toMatchObject({ line: 'feed', protectedBy: ['a2'], unprotected: { before: 0, after: 1 } });
  });

  it('the service itself', () => {
    const said = text('panel');
    expect(said).toContain('The supply intake itself is among what is lost');
    expect(said).toContain('Cut off from the supply intake: R1, R2, a2, bar, beam, mast.');
  });

  it.each([
    ['clamp11', 'Did you mean clamp1?'],
    ['mast@4 m', 'Name the whole part'],
    ['nobody-knows', 'has this name'],
  ])('refuses %s', (part, says) => {
    const { code, out, err } = evenground.run('without', file, 'c2', part);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(says);
  });

  it('refuses what is not there already', () => {
    const { code, err } = evenground.run('without', file, 'c2', '--state', 'cut');
    expect(code).toBe(2);
    expect(err).toContain('it is not there already');
  });
});

function exactly(value: number) {
  return { low: value, high: value };
}
