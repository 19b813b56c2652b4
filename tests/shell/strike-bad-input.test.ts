import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { StudyStrike } from '../../src/study/study-strike.ts';
import { type BuiltCommand, buildCommand } from './built-command.ts';

let evenground: BuiltCommand;
let folder: string;

beforeAll(() => {
  evenground = buildCommand();
  folder = mkdtempSync(join(tmpdir(), 'evenground-strike-'));
}, 60_000);
afterAll(() => {
  evenground.remove();
  rmSync(folder, { recursive: true, force: true });
});

const site = (wires: string) => `site: {name: Bad input, region: iec, units: m, service: none}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  R1: {kind: rod, at: [0, 0], length: 2 m, diameter: 16 mm}
  R2: {kind: rod, at: [10, 0], length: 2 m, diameter: 16 mm}
antennas:
  A: {kind: free, at: [0, 0, 5]}
equipment:
  x: {kind: computer, at: [3, 0]}
  y: {kind: computer, at: [4, 0]}
conductors:
  down: {from: A, to: R1, wire: round 8 mm copper}
  c1: {from: R1, to: R2, wire: 16 mm2 copper, buried: no, route: [[0, 0], [10, 0]]}
${wires}`;

function strike(wires: string, ...args: readonly string[]) {
  const file = join(folder, 'bad.site.yaml');
  writeFileSync(file, site(wires));
  return evenground.run('strike', file, ...args);
}

/** JSON writes a number that is none as null: all that has to be one. */
function figuresOf({ stroke, peakV, conductors, electrodes, solve }: StudyStrike): readonly unknown[] {
  const { source: _source, name: _name, wave: _wave, ...shape } = stroke!;
  const { steps, errorShare, energyShare, longestWayM, mostWayM } = solve!;
  const amps = conductors.flatMap(({ peakA, atS, shareOfPeak, actionA2s }) => [peakA, atS, shareOfPeak, actionA2s]);
  const soil = electrodes.flatMap(({ peakA, shareOfPeak }) => [peakA, shareOfPeak]);
  return [
    Object.values(shape),
    Object.values(peakV),
    amps,
    soil,
    steps,
    errorShare,
    energyShare,
    longestWayM,
    mostWayM,
  ].flat();
}
const areNumbers = (figures: readonly unknown[]) => {
  expect(figures.length).toBeGreaterThan(15);
  expect(figures.filter((figure) => typeof figure !== 'number')).toEqual([]);
};

describe('strikes that nobody can work out', () => {
  it.each([
    ['a part that is not there', '', ['--at', 'tower@top'], 'has this name'],
    ['no current', '', ['--current', '0 A'], 'has to be more than zero'],
    ['a current of 1e9 A', '', ['--current', '1e9 A'], 'Peaks are taken from 100 A to 1000 kA'],
    ['a current of 1e9', '', ['--current', '1e9'], 'has no unit'],
    ['a wire of no inductance', '  c2: {from: R1, to: R2, inductance: 0 uH}\n', [], 'has to be more than zero'],
    ['a wire of less than none', '  c2: {from: R1, to: R2, inductance: -1 uH}\n', [], '`-1 uH` cannot be right'],
    ['an island', '  c2: {from: x, to: y, length: 1 m}\n', ['--at', 'x'], 'has no way to the soil by metal'],
  ])('%s: exit 2, no figure, a sentence', (_, wires, args, says) => {
    const { code, out, err } = strike(wires, ...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(says);
    expect(err).not.toMatch(/NaN|undefined|Infinity|RangeError/);
  });
});

describe('strikes that are worked out all the same', () => {
  it('past an island: it is named, and has no figure', () => {
    const island = '  c2: {from: x, to: y, length: 1 m}\n';
    const { code, out } = strike(island, '--between', 'x,R1');
    expect(code).toBe(0);
    expect(out.replaceAll(/\s+/g, ' ')).toContain(
      'Hangs on nothing that reaches the soil by metal, so no figure names it: x, y.',
    );
    expect(out).toContain('Of x to R1 nothing can be said here');
    const { strike: said } = JSON.parse(strike(island, '--between', 'x,R1', '--json').out);
    expect(said.differences).toEqual([]);
    expect(Object.keys(said.peakV).sort()).toEqual(['A', 'R1', 'R2']);
    areNumbers(figuresOf(said));
  });

  it('two bare wires on one line: asked about, taken side by side, no figure that is none', () => {
    const twice = '  c2: {from: R1, to: R2, wire: 16 mm2 copper, buried: no, route: [[0, 0], [10, 0]]}\n';
    const { code, out, err } = strike(twice);
    expect(code).toBe(0);
    expect((out + err).replaceAll(/\s+/g, ' ')).toMatch(
      /`c1` lies on the same line|taken two cable diameters apart: c2/,
    );
    const { strike: said } = JSON.parse(strike(twice, '--json').out);
    const amps = ['c1', 'c2'].map((id) => said.conductors.find((c: { id: string }) => c.id === id).peakA);
    expect(amps[0] / amps[1]).toBeCloseTo(1, 2);
    areNumbers(figuresOf(said));
    const file = join(folder, 'bad.site.yaml');
    expect(evenground.run('check', file).out.replaceAll(/\s+/g, ' ')).toContain('`c1` lies on the same line');
  });
});
