import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { jsonSchema } from '../../src/site/json-schema.ts';
import { readSite } from '../../src/site/read-site.ts';
import { starter } from '../../src/site/starter.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { type BuiltCommand, buildCommand } from '../shell/built-command.ts';
import { validator } from './schema-validator.ts';

const options = { state: null, version: '0', checksum: '', date: null };

describe('the starter file', () => {
  it('is read without a problem or a question, and fits the schema', () => {
    const { site, problems } = readSite(starter, 'mine.site.yaml');
    expect(problems).toEqual([]);
    expect(site?.questions).toEqual([]);
    expect(validator(jsonSchema())(parse(starter))).toBeNull();
  });

  it('stays so when what its comments offer is typed', () => {
    const more = starter
      .replace('  # prepared: {', '  prepared: {')
      .replace('# soil: {type: clay}', 'soil: {type: clay}')
      .replace('house: {}                 # with a plan: {', 'house: {');
    expect(more.split('\n').filter((line, i) => line !== starter.split('\n')[i])).toHaveLength(3);
    const { site, problems } = readSite(more, 'mine.site.yaml');
    expect(problems).toEqual([]);
    expect(site?.questions).toEqual([]);
    const measured = more.replace('{type: clay}        # or measured: ', '');
    expect(measured).not.toBe(more);
    expect(readSite(measured, 'mine.site.yaml').problems).toEqual([]);
  });

  it('has something to find, something to look at and something in order', () => {
    const { site } = readSite(starter, 'mine.site.yaml');
    for (const state of [null, 'storm']) {
      const { study, faults } = runStudy(site!, { ...options, state });
      expect(faults).toEqual([]);
      const outcomes = new Set(study.findings.map((f) => f.outcome));
      expect([...outcomes].sort()).toEqual(['cannot tell', 'met', 'not met']);
      expect(study.unknowns.length).toBeGreaterThan(3);
    }
  });

  it('explains: a third of its lines or more hold a comment, and none is too wide for a terminal', () => {
    const lines = starter.split('\n').filter((line) => line.trim() !== '');
    expect(lines.filter((line) => /(^|\s)#/.test(line)).length).toBeGreaterThan(lines.length / 3);
    for (const line of lines.filter((l) => l.startsWith('#'))) expect(line.length, line).toBeLessThanOrEqual(120);
    expect(starter).not.toContain('\t');
  });
});

describe('new', () => {
  let evenground: BuiltCommand;
  let folder: string;
  beforeAll(() => {
    evenground = buildCommand();
    folder = mkdtempSync(join(tmpdir(), 'evenground-new-'));
  });
  afterAll(() => {
    evenground.remove();
    rmSync(folder, { recursive: true, force: true });
  });

  it('writes it to a file that check then reads', () => {
    const file = join(folder, 'mine.site.yaml');
    const made = evenground.run('new', file);
    expect([made.code, made.out]).toEqual([0, '']);
    expect(readFileSync(file, 'utf8')).toBe(starter);
    const checked = evenground.run('check', file);
    expect(checked.code).toBe(1);
    expect(checked.out).toContain('mast-rod');
    expect(checked.out).toContain('My station');
  });

  it('prints it with -', () => {
    const { code, out } = evenground.run('new', '-');
    expect([code, out]).toEqual([0, starter]);
  });
});
