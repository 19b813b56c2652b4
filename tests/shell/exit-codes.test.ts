import { mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type BuiltCommand, buildCommand } from './built-command.ts';

/** No service, nothing outdoors: a site where nothing can be a hazard. */
const nothing = `site: {name: Receiver, region: us, units: ft, service: none, without: [mains, telephone, cable tv, network]}
electrodes: none
supports: none
antennas: none
bars: none
arresters: none
equipment: none
lines: none
conductors: none
metalwork: none
`;
/** Two electrodes that nothing joins: a hazard (all-electrodes-one-system). */
const hazard = `site: {name: Two rods, region: us, units: ft, service: panel}
electrodes:
  E1: {kind: rod, length: 8 ft}
  E2: {kind: rod, length: 8 ft}
equipment:
  panel: {kind: service panel, where: inside}
conductors:
  gec: {from: panel, to: E1, wire: 6 AWG copper, length: 6 ft}
`;

let evenground: BuiltCommand;
let folder: string;
const path = (name: string) => join(folder, name);

beforeAll(() => {
  evenground = buildCommand();
  folder = mkdtempSync(join(tmpdir(), 'evenground-exit-'));
  writeFileSync(path('nothing.site.yaml'), nothing);
  writeFileSync(path('hazard.site.yaml'), hazard);
  writeFileSync(path('wrong.site.yaml'), hazard.replace('to: E1', 'to: E11').replace('8 ft}', '-8 ft}'));
});
afterAll(() => {
  evenground.remove();
  rmSync(folder, { recursive: true, force: true });
});

describe('0: nothing at or above the level that was asked for', () => {
  it('a check with no hazard', () => {
    const { code, err } = evenground.run('check', path('nothing.site.yaml'));
    expect([code, err]).toEqual([0, '']);
  });

  it('a report, whatever it found, when no level was asked for', () => {
    expect(evenground.run('report', path('hazard.site.yaml'), '-o', path('r0')).code).toBe(0);
  });

  it('help and version', () => {
    expect(evenground.run('--help').code).toBe(0);
    expect(evenground.run('check', '--help').code).toBe(0);
    const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
    const said = evenground.run('--version');
    expect([said.code, said.out.trim()]).toEqual([0, version]);
  });
});

describe('1: findings', () => {
  it('a check with a hazard', () => {
    const { code, out, err } = evenground.run('check', path('hazard.site.yaml'));
    expect([code, err]).toEqual([1, '']);
    expect(out).toMatch(/^HAZARD {2}Grounding electrode E2 is not bonded/m);
  });

  it('a report, when a level was asked for', () => {
    const asked = ['report', path('hazard.site.yaml'), '-o', path('r1'), '--exit-1-from', 'hazard'];
    expect(evenground.run(...asked).code).toBe(1);
  });

  it('counts from the level that was named', () => {
    const site = hazard.replace('E2: {kind: rod, length: 8 ft}', 'E2: {kind: rod, length: 6 ft}');
    const tied = `${site}  tie: {from: E1, to: E2, wire: 6 AWG copper, length: 12 ft}\n`;
    writeFileSync(
      path('defect.site.yaml'),
      tied.replace('{kind: rod, length: 8 ft}', '{kind: rod, length: 8 ft, resistance: 20 ohm}'),
    );
    const from = (level: string) => evenground.run('check', path('defect.site.yaml'), '--exit-1-from', level).code;
    expect(['hazard', 'defect', 'advice', 'cannot-tell'].map(from)).toEqual([0, 1, 1, 1]);
  });

  it('counts what cannot be told only when that was asked for', () => {
    const unknown = nothing.replace('service: none', 'service: unknown');
    writeFileSync(path('doubt.site.yaml'), unknown);
    const from = (level: string) => evenground.run('check', path('doubt.site.yaml'), '--exit-1-from', level).code;
    expect([from('advice'), from('cannot-tell')]).toEqual([0, 1]);
  });

  it('leaves out what the owner has agreed to let stand', () => {
    const agreed = 'service: panel, agreed: [{rule: all-electrodes-one-system, at: E2, reason: to be removed}]';
    writeFileSync(path('agreed.site.yaml'), hazard.replace('service: panel', agreed));
    const { code, out } = evenground.run('check', path('agreed.site.yaml'));
    expect(out).toMatch(/\(agreed to stand\)/);
    expect(code).toBe(0);
  });
});

describe('2: the input cannot be used', () => {
  it('says every problem of a file at once, each with its place, and no result', () => {
    const { code, out, err } = evenground.run('check', path('wrong.site.yaml'));
    expect([code, out]).toEqual([2, '']);
    const placed = err.split('\n').filter((line) => line.startsWith(`${path('wrong.site.yaml')}:`));
    expect(placed.filter((line) => /:\d+:\d+: /.test(line)).length).toBe(2);
    expect(err).toContain('E11');
    expect(err).toMatch(/2 problems; nothing was worked out/);
  });

  it('a file that is not there, and a folder in place of a file', () => {
    const missing = evenground.run('check', path('missing.site.yaml'));
    expect([missing.code, missing.out]).toEqual([2, '']);
    expect(missing.err).toBe(`${path('missing.site.yaml')}: there is no such file. Check the name and the folder.\n`);
    const directory = evenground.run('check', folder);
    expect([directory.code, directory.out]).toEqual([2, '']);
    expect(directory.err).toMatch(/this is a directory/);
    expect(evenground.run('check', join(path('hazard.site.yaml'), 'in.site.yaml')).code).toBe(2);
  });

  it('a state, a level, an option, a command and a rule that there are not', () => {
    const file = path('hazard.site.yaml');
    expect(evenground.run('check', file, '--state', 'storm')).toMatchObject({ code: 2, out: '' });
    expect(evenground.run('check', file, '--exit-1-from', 'worst')).toMatchObject({ code: 2, out: '' });
    expect(evenground.run('check', file, '--colour')).toMatchObject({ code: 2, out: '' });
    expect(evenground.run('chek', file)).toMatchObject({ code: 2, out: '' });
    expect(evenground.run('check')).toMatchObject({ code: 2, out: '' });
    expect(evenground.run('explain', 'no-such-rule-at-all')).toMatchObject({ code: 2, out: '' });
  });

  it('writes nothing of a report on a file that cannot be used', () => {
    expect(evenground.run('report', path('wrong.site.yaml'), '-o', path('never')).code).toBe(2);
    expect(evenground.bash(`test -e ${path('never')}`).code).toBe(1);
  });
});

describe('3: a fault of evenground', () => {
  it('says so, and does not blame the file, when a part of the program is missing', () => {
    const templates = join(evenground.folder, 'templates');
    renameSync(templates, `${templates}-away`);
    try {
      const { code, out, err } = evenground.run('report', path('hazard.site.yaml'), '-o', path('r3'));
      expect([code, out]).toEqual([3, '']);
      expect(err).toMatch(/^This is a fault of evenground, not of your file\./);
    } finally {
      renameSync(`${templates}-away`, templates);
    }
  });
});

describe('4: an output that was asked for could not be made', () => {
  it('outranks findings, and the HTML is written though there is no browser', () => {
    const asked = ['report', path('hazard.site.yaml'), '-o', path('r4'), '--pdf', '--browser', path('no-browser')];
    const { code, out, err } = evenground.run(...asked, '--exit-1-from', 'hazard');
    expect([code, out]).toEqual([4, '']);
    expect(err).toBe(
      `${path('no-browser')}: no browser can be started from there. The HTML is written; name another path.\n`,
    );
    expect(readFileSync(path('r4/hazard.html'), 'utf8')).toMatch(/<\/html>\s*$/);
  });

  it('a program that is no browser', () => {
    const { code, err } = evenground.run(
      'report',
      path('hazard.site.yaml'),
      '-o',
      path('r5'),
      '--pdf',
      '--browser',
      '/bin/true',
    );
    expect(code).toBe(4);
    expect(err).toMatch(/^\/bin\/true could not print the page \(.*\)\. The HTML is written; name another browser/);
    expect(err.trim().split('\n').length).toBe(1);
  });
});
