import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type BuiltCommand, buildCommand } from './built-command.ts';

const site = 'examples/marl-hill/marl-hill.site.yaml';
let evenground: BuiltCommand;
let folder: string;
const path = (name: string) => join(folder, name);

beforeAll(() => {
  evenground = buildCommand();
  folder = mkdtempSync(join(tmpdir(), 'evenground-streams-'));
});
afterAll(() => {
  evenground.remove();
  rmSync(folder, { recursive: true, force: true });
});

describe('the study as JSON', () => {
  it('gives the same bytes when it is read and written again, and on every run', () => {
    const { out, err } = evenground.run('check', site, '--json');
    expect(err).toBe('');
    expect(`${JSON.stringify(JSON.parse(out), null, 2)}\n`).toBe(out);
    expect(evenground.run('check', site, '--json').out).toBe(out);
  });

  it('holds the checksum of the file, no clock, and no figure that JSON cannot hold', () => {
    const study = JSON.parse(evenground.run('check', site, '--json').out);
    expect(study.site.checksum).toBe(createHash('sha256').update(readFileSync(site)).digest('hex'));
    expect(JSON.stringify(study)).not.toMatch(new RegExp(`${new Date().getFullYear()}-\\d\\d-\\d\\dT\\d\\d:`));
  });

  it('goes whole into the file that is named, and is what the report keeps', () => {
    const { out } = evenground.run('check', site, '--json');
    expect(evenground.run('check', site, '--json', '-o', path('study.json'))).toMatchObject({ out: '', err: '' });
    expect(readFileSync(path('study.json'), 'utf8')).toBe(out);
    evenground.run('report', site, '-o', path('report'));
    expect(readFileSync(path('report/marl-hill.study.json'), 'utf8')).toBe(out);
    expect(evenground.run('check', site, '--json', '-o', '-').out).toBe(out);
  });
});

describe('a report', () => {
  it('is the same to the byte on two runs, and writes only what it names', () => {
    const first = evenground.run('report', site, '-o', path('one'));
    evenground.run('report', site, '-o', path('two'));
    expect(readFileSync(path('one/marl-hill.html'))).toEqual(readFileSync(path('two/marl-hill.html')));
    expect(readdirSync(path('one')).sort()).toEqual(['marl-hill.html', 'marl-hill.study.json']);
    expect(first.out).toContain(`Open: ${path('one/marl-hill.html')}`);
    expect(first.err).toBe('');
  });

  it('is the same to the byte whatever the place, language and clock of the machine', () => {
    evenground.bash(
      `TZ=Asia/Tokyo LC_ALL=tr_TR.UTF-8 LANG=tr_TR.UTF-8 COLUMNS=40 $evenground report ${site} -o ${path('far')}`,
    );
    expect(readFileSync(path('far/marl-hill.html'))).toEqual(readFileSync(path('one/marl-hill.html')));
  });

  it('names nothing of the machine that it was made on', () => {
    const html = readFileSync(path('one/marl-hill.html'), 'utf8');
    expect(html).not.toContain(folder);
    expect(html).not.toContain(process.cwd());
  });
});

describe('results and talk', () => {
  it('results on stdout, talk on stderr', () => {
    const made = evenground.run('new', path('my.site.yaml'));
    expect(made).toMatchObject({ code: 0, out: '' });
    expect(made.err).toBe(`${path('my.site.yaml')} written. Next: evenground check ${path('my.site.yaml')}\n`);
    expect(evenground.run('new', '-')).toMatchObject({
      code: 0,
      err: '',
      out: readFileSync(path('my.site.yaml'), 'utf8'),
    });
    expect(evenground.run('rules')).toMatchObject({ code: 0, err: '' });
    expect(evenground.run('schema')).toMatchObject({ code: 0, err: '' });
    for (const file of ['site', 'standard', 'agreed'])
      expect(evenground.run('schema', file), file).toMatchObject({ code: 0, err: '' });
    expect(evenground.run('schema', 'site').out).toBe(evenground.run('schema').out);
    const titles = ['site', 'standard', 'agreed'].map(
      (file) => (JSON.parse(evenground.run('schema', file).out) as { title: string }).title,
    );
    expect(new Set(titles).size).toBe(3);
    expect(evenground.run('schema', 'standrad')).toMatchObject({
      code: 2,
      out: '',
      err: 'standrad: no schema has this name. Did you mean standard? All of them: site, standard, agreed\n',
    });
  });

  it('the starter file can be read as it is', () => {
    const { code, err } = evenground.run('check', path('my.site.yaml'));
    expect([0, 1]).toContain(code);
    expect(err).toBe('');
  });

  it('the last line of a check is the verdict with its counts, and the next command', () => {
    const lines = evenground.run('check', site).out.trimEnd().split('\n');
    expect(lines.at(-1)).toMatch(
      /^\d+ hazard, \d+ defect, \d+ advice, \d+ cannot tell(, \d+ agreed to stand)?\. Next: evenground report /,
    );
  });
});

describe('colour', () => {
  const colour = '\u001b[';

  it('is left out where the output is no terminal', () => {
    expect(evenground.run('check', site).out).not.toContain('\u001b');
    expect(evenground.bash(`FORCE_COLOR=1 $evenground check ${site}`).out).not.toContain('\u001b');
  });

  const terminal = hasScript() ? it : it.skip;
  terminal('is there on a terminal and not with NO_COLOR', () => {
    expect(evenground.bash(onTerminal(`$evenground check ${site}`)).out).toContain(colour);
    expect(evenground.bash(onTerminal(`NO_COLOR=1 $evenground check ${site}`)).out).not.toContain(colour);
    expect(evenground.bash(onTerminal(`NO_COLOR= $evenground check ${site}`)).out).toContain(colour);
  });

  function onTerminal(command: string): string {
    return `script -qec "${command}" /dev/null`;
  }
});

function hasScript(): boolean {
  const found = /util-linux/.test(buildFree('script --version'));
  if (!found) process.stderr.write('SKIPPED: no script(1) of util-linux, so colour on a terminal was not looked at\n');
  return found;
}

function buildFree(line: string): string {
  return spawnSync('bash', ['-c', line], { encoding: 'utf8' }).stdout;
}

describe('a reader that closes early', () => {
  it('is no error', () => {
    const { out, err } = evenground.bash(`$evenground check ${site} --json | head -1; echo "\${PIPESTATUS[0]}"`);
    expect(out).toBe('{\n0\n');
    expect(err).toBe('');
  });
});

describe('output that cannot be written', () => {
  const device = process.platform === 'linux' ? it : it.skip;
  device('to stdout ends with 4', () => {
    expect(evenground.bash(`$evenground check ${site} > /dev/full`)).toMatchObject({ code: 4 });
    expect(evenground.bash(`$evenground check ${site} --json > /dev/full`)).toMatchObject({ code: 4 });
    expect(evenground.bash('$evenground rules > /dev/full')).toMatchObject({ code: 4 });
  });
});
