import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { comparePages } from '../../src/shell/commands/compare-pages.ts';

const folder = mkdtempSync(join(tmpdir(), 'evenground-compare-pages-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const site = (rods: string) => `
site: {name: Field, region: iec, units: m, service: none, owner: Ada Example, prepared: {date: 2026-01-02}}
buildings: {hut: {corners: [[0, 0], [4, 0], [4, 3], [0, 3]]}}
electrodes:
  E1: {kind: rod, at: [6, 0], length: 1.5 m}
${rods}
states: {storm: {says: all pulled}}
`;
const before = join(folder, 'field.site.yaml');
const after = join(folder, 'field-after.site.yaml');
writeFileSync(before, site(''));
writeFileSync(after, site('  E2: {kind: rod, at: [9, 0], length: 1.5 m}'));

describe('compare with pages', () => {
  it('writes what was asked for and says where; the last line is the verdict', async () => {
    const [out, said] = [join(folder, 'out'), join(folder, 'said.txt')];
    const code = await comparePages([before, after], { report: out, statement: out, leaveOut: 'names', output: said });
    expect(readdirSync(out).sort()).toEqual(['field-after.compare.html', 'field-after.statement.html']);
    const text = readFileSync(said, 'utf8');
    expect(text).toMatch(
      /worse in \d+ findings?\. Open: .*field-after\.compare\.html, .*field-after\.statement\.html\n$/,
    );
    expect(code).toBe(/worse in 0 /.test(text) ? 0 : 1);
    expect(readFileSync(join(out, 'field-after.statement.html'), 'utf8')).not.toContain('Ada Example');
    expect(readFileSync(join(out, 'field-after.compare.html'), 'utf8')).toContain('Ada Example');
  });

  it('gives the same bytes each time', async () => {
    const pages = ['once', 'twice'].map((name) => join(folder, name));
    for (const page of pages)
      await comparePages([before, after], { report: page, statement: page, output: join(folder, 'x') });
    for (const name of readdirSync(pages[0]!))
      expect(readFileSync(join(pages[1]!, name), 'utf8')).toBe(readFileSync(join(pages[0]!, name), 'utf8'));
  });

  it('writes a report of two states, and refuses a statement of them and pages of three', async () => {
    const out = join(folder, 'states');
    await expect(comparePages([after], { states: 'typed,storm', statement: out })).rejects.toThrow('no work done');
    await expect(comparePages([after], { states: 'all', report: out })).rejects.toThrow('--states A,B');
    expect(existsSync(out)).toBe(false);
    expect(await comparePages([after], { states: 'typed,storm', report: out, output: join(folder, 'x') })).toBe(0);
    expect(readdirSync(out)).toEqual(['field-after.compare.html']);
  });
});
