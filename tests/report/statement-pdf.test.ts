import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { findBrowser } from '../../src/shell/find-browser.ts';
import { checkComparePages, writeComparePages } from '../../src/shell/write-compare-pages.ts';
import { studyOfExample } from '../examples/study-of-example.ts';
import { asFile, compared, marlHill } from './compared.ts';

const browserPath = await findBrowser(null);
const canLook = browserPath !== null && ['pdfinfo', 'pdftotext'].every((t) => spawnSync(t, ['-v']).error === undefined);
if (!canLook) process.stderr.write('SKIPPED: no browser or no pdftotext, so the printed statement was not looked at\n');

const folder = mkdtempSync(join(tmpdir(), 'evenground-statement-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const run = (tool: string, ...args: readonly string[]) => spawnSync(tool, args, { encoding: 'utf8' }).stdout;
const files = { ...marlHill, file: 'examples/marl-hill/marl-hill-after.site.yaml' };

describe.skipIf(!canLook)('the printed statement of Marl Hill', () => {
  it('is two pages of Letter paper, and the report is beside it', async () => {
    const names = await writeComparePages(files, { statement: folder, pdf: true });
    const pdf = join(folder, 'marl-hill-after.statement.pdf');
    expect(names).toEqual([join(folder, 'marl-hill-after.statement.html'), pdf]);
    const info = run('pdfinfo', pdf);
    expect(info).toMatch(/^Pages: +2$/m);
    expect(info).toMatch(/^Page size: +612 x 792 pts \(letter\)$/m);
    expect(info).toMatch(/^Tagged: +yes$/m);
    const text = run('pdftotext', '-layout', pdf, '-').replace(/\s+/g, ' ');
    for (const heading of [
      'What was there, as found',
      'What was done',
      'What is left out of this statement',
      'Signatures',
    ])
      expect(text).toContain(heading);
    expect(text).toContain('page 2 of 2');
  }, 120_000);
});

describe('pages of a comparison as files', () => {
  it('are named after the file after; the statement not, where the name of the site is kept back', async () => {
    const own = join(folder, 'own');
    await writeComparePages(files, { report: own, statement: own, leaveOut: 'site, names' });
    expect(readdirSync(own).sort()).toEqual(['marl-hill-after.compare.html', 'statement.html']);
    expect(readFileSync(join(own, 'statement.html'), 'utf8')).not.toMatch(/marl.?hill/i);
  });

  it('refuse to leave out what there is not, and say what there is', () => {
    expect(() => checkComparePages({ statement: 'x', leaveOut: 'adress' })).toThrow(
      '--leave-out adress: no such thing. It takes, with commas between: address, names, site, permit, plan, photos, prices.',
    );
    expect(() => checkComparePages({ report: 'x', leaveOut: 'address' })).toThrow('give --statement DIR');
    expect(() => checkComparePages({ pdf: true })).toThrow('--report DIR or --statement DIR');
  });

  it('refuse two regions with different words, and a statement on two states; nothing is written then', async () => {
    const never = join(folder, 'never');
    const other = { ...marlHill.before, site: { ...marlHill.before.site, region: 'iec' } };
    await expect(writeComparePages({ ...files, before: other }, { report: never })).rejects.toThrow('(iec and us)');
    const storm = asFile(studyOfExample('marl-hill/marl-hill.site.yaml', 'storm'), 'a');
    const states = { ...compared(marlHill.before, storm), file: 'marl-hill.site.yaml' };
    await expect(writeComparePages(states, { statement: never })).rejects.toThrow('two states of one file');
    expect(existsSync(never)).toBe(false);
  });
});
