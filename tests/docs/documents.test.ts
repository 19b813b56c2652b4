import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exitCode } from '../../src/shell/exit-code.ts';
import { rooms } from '../checks/rooms.ts';
import { type BuiltCommand, buildCommand } from '../shell/built-command.ts';
import { developers, fenced, prose, quoted, readme, table } from './readme.ts';

describe.each([
  ['README.md', readme],
  ['DEVELOPERS.md', developers],
])('%s', (_name, text) => {
  it('links to nothing that is not there', () => {
    const links = [...prose(text).matchAll(/\]\(([^)\s]+)\)/g)]
      .map((m) => m[1]!)
      .filter((l) => !/^(https?:|#)/.test(l));
    expect(links.length).toBeGreaterThan(_name === 'README.md' ? 1 : -1);
    expect(links.filter((l) => !existsSync(l))).toEqual([]);
  });

  it('names no file or folder that is not there', () => {
    const paths = quoted(text).filter((q) => /^(src|tests|examples|templates|dist)\//.test(q) && !/[<*]/.test(q));
    expect(paths.filter((p) => !existsSync(p))).toEqual([]);
  });

  it('names no script that package.json lacks', () => {
    const { scripts } = JSON.parse(readFileSync('package.json', 'utf8'));
    const named = [...text.matchAll(/\bnpm (?:run )?(start|test|[a-z]+)\b/g)].map((m) => m[1]!);
    expect(named.filter((n) => !Object.hasOwn(scripts, n))).toEqual([]);
  });
});

describe('the table of commands', () => {
  let evenground: BuiltCommand;
  beforeAll(() => {
    evenground = buildCommand();
  });
  afterAll(() => evenground.remove());

  const rows = table(readme, 'command');
  const named = rows.flatMap(([cell]) => [...cell!.matchAll(/`(\w+)/g)].map((m) => m[1]!));

  it('holds every command of the program and no other', () => {
    const help = evenground.run('--help').out;
    const offered = [...help.slice(help.indexOf('Commands:')).matchAll(/^ {2}(\w+)/gm)].map((m) => m[1]!);
    expect([...named].sort()).toEqual(offered.filter((c) => c !== 'help').sort());
  });

  it('names only options and arguments that the command has', () => {
    for (const [command, does] of rows) {
      const [first] = /\w+/.exec(command!)!;
      const help = evenground.run(first, '--help').out;
      const options = [...`${command} ${does}`.matchAll(/(?<![\w-])--?[a-z][\w-]*/g)].map((m) => m[0]);
      expect(
        options.filter((o) => !new RegExp(`(^|[\\s,])${o}\\b`, 'm').test(help)),
        `${first}\n${help}`,
      ).toEqual([]);
    }
  });

  it('says the exit codes as they are, and the levels are those that the command knows', () => {
    const said = prose(readme).replace(/\s+/g, ' ');
    const { fine, findings, input, fault, output } = exitCode;
    expect(said).toContain(`${fine} nothing at or above`);
    expect(said).toContain(
      `${findings} findings, ${input} the input cannot be used, ${fault} a fault of evenground, ${output} an output`,
    );
  });
});

describe('examples', () => {
  it('each have a site file and a README that tells their story', () => {
    const folders = readdirSync('examples').filter((name) => statSync(`examples/${name}`).isDirectory());
    expect(folders.length).toBeGreaterThan(2);
    for (const folder of folders) {
      const names = readdirSync(`examples/${folder}`, { recursive: true, encoding: 'utf8' });
      expect(names, folder).toContain('README.md');
      expect(
        names.some((n) => n.endsWith('.site.yaml')),
        folder,
      ).toBe(true);
    }
  });
});

describe('the contributor’s map', () => {
  const inTable = table(developers, 'room in `src/`').flatMap(([cell]) =>
    [...cell!.matchAll(/`(\w+)`/g)].map((m) => m[1]!),
  );
  const folders = readdirSync('src').filter((name) => statSync(`src/${name}`).isDirectory());

  it('has a row for each room that there is, and none twice', () => {
    expect([...inTable].sort()).toEqual([...folders].sort());
  });

  it('knows the rooms that the import table knows; only rooms kept for later have no folder', () => {
    const later = Object.keys(rooms).filter((r) => !folders.includes(r));
    expect(later.filter((r) => !['surge', 'compare', 'rework'].includes(r))).toEqual([]);
    expect(inTable.filter((r) => r !== 'shell' && !Object.hasOwn(rooms, r))).toEqual([]);
  });

  it('shows every room in the picture of the flow', () => {
    const picture = fenced(developers, '').join('\n');
    for (const room of ['units', 'words', 'math', 'materials']) expect(picture).toContain(room);
    expect(inTable.filter((r) => !new RegExp(`\\b${r}\\b`).test(picture))).toEqual([]);
  });
});
