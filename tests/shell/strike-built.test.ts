import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { StudyStrike } from '../../src/study/study-strike.ts';
import { type BuiltCommand, buildCommand } from './built-command.ts';

const site = 'examples/marl-hill/marl-hill.site.yaml';
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

function json(...args: readonly string[]): StudyStrike {
  const { code, out, err } = evenground.run('strike', site, ...args, '--json');
  expect([code, err]).toEqual([0, '']);
  return JSON.parse(out).strike;
}

describe('strike, as it is published', () => {
  it('takes the median first negative stroke at the top of the highest support where nothing is asked', () => {
    const { at, stroke } = json();
    expect(at).toBe('tower@top');
    expect(stroke?.wave).toBe('1/200');
    // the standard's rounded constants of its waves miss the nominal peak by up to 0.13 %
    expect(stroke!.peakA / 30e3).toBeCloseTo(1, 2);
  });

  it('prints the figures it used, the differences and the next command, within 100 columns where there is no terminal', () => {
    const { code, out, err } = evenground.run('strike', site);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('First negative stroke, median of all: 30 kA, 1/200 µs');
    for (const heading of ['WORST DIFFERENCES', 'WHERE THE CURRENT GOES', 'ASSUMED, OR LEFT OUT', 'HOW EXACT'])
      expect(out).toContain(`\n${heading}\n`);
    expect(out.trimEnd().split('\n').at(-1)).toMatch(/^Next: evenground /);
    expect(out.split('\n').filter((line) => line.length > 100)).toEqual([]);
    expect(out).not.toMatch(/\bsafe(?:ly|ty)?\b|NaN|Infinity|undefined/i);
    expect(out).not.toContain('\u001b');
  });

  it('goes up and down with the current, all else alike', () => {
    const [one, two] = [json('--current', '10 kA'), json('--current', '20 kA')];
    const peaks = (strike: StudyStrike) => strike.differences.map((d) => d.peakV);
    // protectors are said to fire, but tie nothing: the network stays linear
    peaks(one).forEach((peak, i) => {
      expect(peaks(two)[i]! / 2).toBeCloseTo(peak, Math.max(0, 6 - Math.ceil(Math.log10(peak + 1))));
    });
    expect(two.stroke!.peakA / one.stroke!.peakA).toBeCloseTo(2, 9);
  });

  it('answers for a pair of the owner, either way round', () => {
    const of = (pair: string) => json('--between', pair).differences.find((d) => /E2/.test(d.a + d.b))?.peakV;
    expect(of('E2,camera')).toBeGreaterThan(0);
    expect(of('camera,E2')! / of('E2,camera')!).toBeCloseTo(1, 9);
    const { out } = evenground.run('strike', site, '--between', 'E2,camera');
    expect(out).toMatch(/WHAT WAS ASKED FOR\n.*range, kV.*\n(?:E2 to camera|camera to E2) /);
  });

  it('strikes where it is told, in the state it is told, with the wave it is told', () => {
    expect(json('--at', 'E2', '--wave', '10/350', '--state', 'storm')).toMatchObject({
      at: 'E2',
      stroke: { wave: '10/350' },
    });
  });

  it('writes what is named and nothing else', () => {
    const file = join(folder, 'strike.json');
    expect(evenground.run('strike', site, '--json', '-o', file)).toMatchObject({ code: 0, out: '', err: '' });
    expect(readFileSync(file, 'utf8')).toBe(evenground.run('strike', site, '--json').out);
  });

  it.each([
    [['--at', 'twoer'], 'Did you mean tower?'],
    [['--current', '0'], 'has no unit'],
    [['--current', '1e9 kA'], 'Peaks are taken from'],
    [['--wave', '5/5'], 'Waves: 10/350'],
    [['--between', 'E2'], 'is not a pair'],
    [['--state', 'fog'], 'no state is called "fog"'],
  ])('ends with 2 on %j', (args, says) => {
    const { code, out, err } = evenground.run('strike', site, ...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(says);
  });

  it('says that without soil there are no volts', () => {
    const dry = join(folder, 'dry.site.yaml');
    const rod = 'R1: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}';
    writeFileSync(
      dry,
      `site: {name: Dry, region: us, units: ft}\nelectrodes:\n  ${rod}\nsupports:\n  mast: {kind: mast, height: 20 ft, metal: aluminium}\nconductors:\n  c1: {from: mast@base, to: R1, wire: 6 AWG copper, length: 3 ft}\n`,
    );
    const { code, out, err } = evenground.run('strike', dry);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('A strike at mast@top cannot be worked out: No soil is known');
    const asJson = evenground.run('strike', dry, '--json');
    expect(asJson.code).toBe(2);
    expect(JSON.parse(asJson.out).strike.refused).toContain('No soil is known');
  });
});
