import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type BuiltCommand, buildCommand } from '../shell/built-command.ts';
import { textOf } from './study-of-text.ts';

const marl = 'examples/marl-hill/marl-hill.site.yaml';
const after = 'examples/marl-hill/marl-hill-after.site.yaml';
/** A small site, where nothing hangs on how large it is. */
const small = 'examples/first-dipole/first-dipole.site.yaml';
let command: BuiltCommand;
let folder: string;
const inFolder = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};

beforeAll(() => {
  command = buildCommand();
  folder = mkdtempSync(join(tmpdir(), 'compare-'));
}, 120_000);
afterAll(() => {
  command.remove();
  rmSync(folder, { recursive: true, force: true });
});

const lastLine = (text: string) => text.trimEnd().split('\n').at(-1)!;

describe('compare on the command line', () => {
  it('says what changed, ends with how many are worse, and exits 1 for them', () => {
    const { code, out, err } = command.run('compare', marl, after);
    expect([code, err]).toEqual([1, '']);
    expect(lastLine(out)).toMatch(/^\d+ cleared or better; worse in \d+ findings\. Next: /);
    const order = ['CLEARED', 'NEW', 'FIGURES SIDE BY SIDE', 'PARTS', 'MATERIAL ADDED', 'MATERIAL TAKEN AWAY'];
    const places = order.map((heading) => out.indexOf(`\n${heading}\n`));
    expect(places.every((place) => place > 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(out).toContain('E2, anchor-rod            none');
  }, 60_000);

  it('exits 1 from the level that was asked for: the rework brings advice, the way back hazards', () => {
    const code = (from: string, to: string, level: string) =>
      command.run('compare', from, to, '--exit-1-from', level).code;
    expect(['hazard', 'defect', 'advice', 'cannot-tell'].map((level) => code(marl, after, level))).toEqual([
      0, 0, 1, 1,
    ]);
    expect(code(after, marl, 'hazard')).toBe(1);
    const { code: refused, err } = command.run('compare', marl, after, '--exit-1-from', 'danger');
    expect([refused, err]).toEqual([
      2,
      '--exit-1-from danger: no such level. From worst: hazard, defect, advice, cannot-tell.\n',
    ]);
  }, 60_000);

  it('of a file with itself exits 0 and finds nothing', () => {
    const { code, out } = command.run('compare', after, after);
    expect(code).toBe(0);
    expect(out).toContain('Nothing differs but names, checksum, revision and date.');
    expect(lastLine(out)).toContain('worse in 0 findings.');
  }, 60_000);

  it('takes a stored study for either, and a site file that is JSON for a site', () => {
    const study = join(folder, 'then.study.json');
    command.run('check', small, '--json', '-o', study);
    const changed = inFolder(
      'changed.site.yaml',
      textOf(small).replace('  region: us', '  revision: later\n  region: us'),
    );
    const told = JSON.parse(command.run('compare', small, changed, '--json').out);
    expect(JSON.parse(command.run('compare', study, changed, '--json').out)).toEqual(told);
    const json = inFolder('a.site.json', '{"site": {"name": "J", "region": "us", "units": "ft", "service": "none"}}');
    expect(command.run('compare', json, json).code).toBe(0);
  }, 180_000);

  it('writes the result whole where it was told to', () => {
    const path = join(folder, 'c.json');
    const { out, code } = command.run('compare', small, small, '--json', '-o', path);
    expect([out, code]).toEqual(['', 0]);
    expect(JSON.parse(readFileSync(path, 'utf8'))).toMatchObject({ format: 1, differs: false });
  }, 60_000);

  it('reads a file from a pipe', () => {
    const { code, out } = command.bash(`$evenground compare <(cat ${after}) ${after}`);
    expect([code, lastLine(out).includes('worse in 0 findings')]).toEqual([0, true]);
  }, 60_000);

  it('compares two states of one file, and tables them all', () => {
    const two = command.run('compare', after, '--states', 'typed,storm');
    expect(two.out).toContain('state storm');
    expect(two.out).toContain('vhf-radio: no longer line3 from jpole');
    const all = command.run('compare', after, '--states', 'all');
    expect(all.code).toBe(0);
    expect(all.out).toContain('It withstands 152 kV');
    expect(all.out).toMatch(/as typed\s+storm\s+winter/);
  }, 60_000);

  it('keeps the words of one region off the page of another, and says that they differ', () => {
    const iec = inFolder(
      'iec.site.yaml',
      textOf(after).replace('region: us', 'region: iec').replace('supply: us-grounded', 'supply: tn-s'),
    );
    const { out } = command.run('compare', marl, iec);
    expect(out).toContain('The two files are of different regions (us and iec)');
    expect(out).not.toMatch(/\bground rod|grounding electrode|equipment grounding|ground ring/i);
    const back = command.run('compare', iec, marl).out;
    expect(back).not.toMatch(/\bearth electrode|earthing conductor|stay wire/i);
  }, 60_000);
});

describe('input that cannot be compared', () => {
  const refused = (...args: readonly string[]) => {
    const { code, out, err } = command.run('compare', ...args);
    expect([code, out]).toEqual([2, '']);
    return err;
  };

  it('is told for both files at once', () => {
    const wrong = inFolder('wrong.site.yaml', 'site: {name: W, region: us}\nelectrodes: {E1: {kind: rodd}}\n');
    const err = refused(wrong, join(folder, 'missing.site.yaml'));
    expect(err).toContain('rodd');
    expect(err).toContain('there is no such file');
  });

  it('is one file, three files, or states that there are not', () => {
    expect(refused(marl)).toContain('--states');
    expect(refused(marl, marl, marl)).toContain('two files');
    const err = refused(marl, after, '--state', 'storm', '--states', 'storm');
    expect(err.trim().split('\n')).toHaveLength(3);
    expect(refused(marl, '--states', 'storm,sunny')).toContain(
      'no state is called sunny. Its states are: storm, winter',
    );
    expect(refused(marl, after, '--state', 'sunny').trim().split('\n')).toHaveLength(2);
    const stateless = inFolder('none.site.yaml', 'site: {name: N, region: us, units: ft, service: none}\n');
    expect(refused(stateless, '--states', 'all')).toContain('has no states');
  });

  it('is a stored study that is damaged, of tomorrow, or of another state', () => {
    const study = join(folder, 'now.study.json');
    command.run('check', small, '--json', '-o', study);
    const { out: text } = command.bash(`cat ${study}`);
    expect(refused(inFolder('cut.json', text.slice(0, text.length / 2)), small)).toContain('cut off or damaged');
    const newer = text.replace('"format": 1', '"format": 99');
    expect(refused(inFolder('newer.json', newer), small)).toContain('newer evenground');
    expect(refused(study, small, '--state', 'storm')).toContain('state "storm" was asked for');
    expect(refused(study, '--states', 'all')).toContain('Name the site file');
    const value = JSON.parse(text);
    for (const [key, with_] of [
      ['parts', [null]],
      ['findings', {}],
      ['earth', null],
      ['bonding', { groups: 1 }],
    ] as const)
      expect(refused(inFolder('hostile.json', JSON.stringify({ ...value, [key]: with_ })), small)).toContain(key);
    const odd = { ...value, parts: [{ id: {}, typed: 7 }], lines: [{ id: 'a' }] };
    expect(refused(inFolder('odd.json', JSON.stringify(odd)), small)).toContain('does not hold what a study holds');
  }, 120_000);
});
