import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { reportModel } from '../../src/report/report-model.ts';
import { findBrowser } from '../../src/shell/find-browser.ts';
import { printPdf } from '../../src/shell/print-pdf.ts';
import { pageOf } from './page-of.ts';
import { clubStrike, struck } from './sample-strike.ts';
import { clubStudy } from './samples.ts';

const browserPath = await findBrowser(null);
const canLook = browserPath !== null && spawnSync('pdftotext', ['-v']).error === undefined;
if (!canLook) process.stderr.write('SKIPPED: no browser or no pdftotext, so the printed strike was not looked at\n');

const folder = mkdtempSync(join(tmpdir(), 'evenground-strike-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function run(tool: string, ...args: readonly string[]): string {
  const { status, stdout, stderr } = spawnSync(tool, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`${tool} ${args.join(' ')}: ${stderr}`);
  return stdout;
}

describe.skipIf(!canLook)('a strike in print', () => {
  const path = join(folder, 'struck.pdf');
  let pages: readonly string[];
  let first: number;
  let last: number;
  beforeAll(async () => {
    const study = struck(clubStudy, clubStrike);
    const { footer, pageNumber } = reportModel(study);
    writeFileSync(path, await printPdf(pageOf(study), { browserPath: browserPath!, footer, pageNumber }));
    pages = run('pdftotext', '-layout', path, '-').split('\f').slice(0, -1);
    // The table of contents names both as well.
    first = pages.findIndex((p, i) => i > 0 && p.includes('A strike, worked out'));
    last = pages.findIndex((p, i) => i > first && p.includes('Quasi-static: no wave'));
  }, 120_000);

  /** How far down the paper a page is filled, its foot left out, as a share of its height. */
  function filled(page: number): number {
    const boxes = run('pdftotext', '-bbox', '-f', String(page + 1), '-l', String(page + 1), path, '-');
    const height = Number(/height="([\d.]+)"/.exec(boxes)![1]);
    const ends = [...boxes.matchAll(/yMax="([\d.]+)"/g)].map((m) => Number(m[1]) / height);
    return Math.max(...ends.filter((share) => share < 0.94));
  }

  it('leaves no sheet half empty', () => {
    expect(first).toBeGreaterThan(0);
    expect(last).toBeGreaterThan(first);
    for (let page = first; page < last; page++) expect(filled(page), `page ${page + 1}`).toBeGreaterThan(0.55);
  });

  it('keeps each table’s caption with its first rows', () => {
    for (const caption of [
      'Worst differences',
      'How much warmer wires, supports and shields become',
      'What one failure changes',
    ]) {
      const page = pages.find((p, i) => i > 0 && p.includes(caption))!;
      const lines = page.split('\n').filter((l) => l.trim() !== '');
      const at = lines.findIndex((l) => l.includes(caption));
      expect(lines.length - at, caption).toBeGreaterThan(3);
    }
  });

  it('tags the matrix as a table with names down and across', () => {
    const tree = run('pdfinfo', '-struct-text', path);
    const from = tree.indexOf('"Peak difference between two parts, kV; marks as above"');
    expect(from).toBeGreaterThan(0);
    const matrix = tree.slice(from, tree.indexOf('Lines from outside', from));
    expect(matrix.match(/\/Scope \/Column/g)).toHaveLength(11);
    expect(matrix.match(/\/Scope \/Row/g)).toHaveLength(11);
    expect(matrix).toMatch(/"96\.4"/);
  });
});
