import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { reportModel } from '../../src/report/report-model.ts';
import { findBrowser } from '../../src/shell/find-browser.ts';
import { printPdf } from '../../src/shell/print-pdf.ts';
import { studyOfExample } from '../examples/study-of-example.ts';
import { pageOf } from './page-of.ts';
import { houseStudy } from './samples.ts';

const browserPath = await findBrowser(null);
const tools = ['pdfinfo', 'pdftotext', 'pdffonts'];
const missing = tools.filter((tool) => spawnSync(tool, ['-v']).error !== undefined);
const canLook = browserPath !== null && missing.length === 0;
if (browserPath === null) process.stderr.write('SKIPPED: no browser, so the printed report was not looked at\n');
if (missing.length > 0)
  process.stderr.write(`SKIPPED: no ${missing.join(', ')}, so the printed report was not looked at\n`);

const folder = mkdtempSync(join(tmpdir(), 'evenground-pdf-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function run(tool: string, ...args: readonly string[]): string {
  const { status, stdout, stderr } = spawnSync(tool, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`${tool} ${args.join(' ')}: ${stderr}`);
  return stdout;
}

async function printTo(name: string, study: Parameters<typeof pageOf>[0]): Promise<string> {
  const { footer, pageNumber } = reportModel(study);
  const path = join(folder, name);
  writeFileSync(path, await printPdf(pageOf(study), { browserPath: browserPath!, footer, pageNumber }));
  return path;
}

/** What `pdfinfo` says, by label. */
function infoOf(path: string): ReadonlyMap<string, string> {
  const lines = run('pdfinfo', path)
    .split('\n')
    .filter((l) => l.includes(':'));
  return new Map(lines.map((l) => [l.slice(0, l.indexOf(':')), l.slice(l.indexOf(':') + 1).trim()]));
}

/** Headings of the tags with their texts, in order; the page's own sections are of the second level. */
function headingsOf(path: string): readonly string[] {
  const tree = run('pdfinfo', '-struct-text', path).split('\n');
  return tree.flatMap((line, i) => (/^ *H2 \(block\)/.test(line) ? [textAfter(tree, i)] : []));
}

/** Words of a page and where they stand on the paper, read by pdftotext. */
function wordsOf(path: string, page: number) {
  const mm = 25.4 / 72;
  const found = run('pdftotext', '-bbox', '-f', String(page), '-l', String(page), path, '-').matchAll(
    /<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="[\d.]+">([^<]*)</g,
  );
  return [...found].map(([, from, top, to, text]) => ({
    fromMm: Number(from) * mm,
    toMm: Number(to) * mm,
    yMm: Number(top) * mm,
    text,
  }));
}

function textAfter(tree: readonly string[], at: number): string {
  const indent = tree[at]!.search(/\S/);
  const end = tree.findIndex((l, i) => i > at && l.trim() !== '' && l.search(/\S/) <= indent);
  const texts = tree.slice(at + 1, end === -1 ? undefined : end).flatMap((l) => /^ *"(.*)"$/.exec(l)?.[1] ?? []);
  return texts.join('').replace(/\s+/g, ' ').trim();
}

describe.skipIf(!canLook)('the printed report of Marl Hill', () => {
  const study = studyOfExample('marl-hill/marl-hill.site.yaml');
  let path: string;
  let pages: readonly string[];
  let headings: readonly string[];
  beforeAll(async () => {
    path = await printTo('marl-hill.pdf', study);
    pages = run('pdftotext', '-layout', path, '-').split('\f').slice(0, -1);
    headings = headingsOf(path);
  }, 120_000);

  it('is tagged, on letter paper, without script, with a title', () => {
    const info = infoOf(path);
    expect(info.get('Tagged')).toBe('yes');
    expect(info.get('JavaScript')).toBe('no');
    expect(info.get('Page size')).toContain('letter');
    expect(info.get('Title')).toContain('Marl Hill club station');
  });

  it('has every section as a heading, in reading order', () => {
    const sections = ['Verdict and first actions', 'Contents', 'Site plan', 'Bonding diagram', 'Findings'];
    const more = ['Cannot tell: what to go and look at', 'Every condition looked at', 'Schedules', 'Ways to ground'];
    const closing = ['Method and sources', 'Cautions and limits', 'Words used', 'Signatures'];
    const names = headings.map((h) => h.replace(/^\d+ ?/, ''));
    expect(names.slice(0, 9)).toEqual([...sections, ...more]);
    expect(names.slice(-4)).toEqual(closing);
  });

  it('has an outline that leads to every section', () => {
    const raw = readFileSync(path, 'latin1');
    expect(raw).toMatch(/\/Outlines \d+ 0 R/);
    const entries = [...raw.matchAll(/\/Title \((\d+ [^()]*)\)/g)].map((m) => m[1]);
    expect(headings.length).toBeGreaterThan(15);
    expect(entries.sort()).toEqual(headings.filter((h) => h !== 'Contents').sort());
  });

  it('says the verdict and what to do first on its first sheet', () => {
    const first = pages[0]!.replace(/\s+/g, ' ');
    const inOrder = ['Marl Hill club station', ...study.verdict.text.map(firstWords), 'Do these first'];
    const places = inOrder.map((t) => first.indexOf(t));
    expect(
      places.every((p) => p >= 0),
      `${inOrder} in ${first}`,
    ).toBe(true);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
    for (const action of study.verdict.actions) expect(first).toContain(firstWords(action.text));
  });

  it('has the number of the page and of all pages at the foot of each', () => {
    expect(pages.length).toBe(Number(infoOf(path).get('Pages')));
    for (const [i, page] of pages.entries()) {
      const foot = page.trimEnd().split('\n').at(-1)!;
      expect(foot).toMatch(
        new RegExp(`^ *Marl Hill club station, as typed in the file.* page ${i + 1} of ${pages.length}$`),
      );
    }
  });

  it('shows the plan at the scale that it states: 5 m and 20 ft on paper', () => {
    expect(pages[1]).toContain('(1:300)');
    const words = wordsOf(path, 2);
    const end = (figure: string) => words.find((w) => w.text === figure && w.yMm > 100)!;
    for (const [figure, lengthM] of [
      ['5', 5],
      ['20', 20 * 0.3048],
    ] as const) {
      const half = end(figure);
      const start = words.find((w) => w.text === '0' && Math.abs(w.yMm - half.yMm) < 0.5)!;
      // The nought begins where the bar begins; the figure stands with its middle under its mark.
      expect((half.fromMm + half.toMm) / 2 - start.fromMm).toBeCloseTo((lengthM * 1000) / 300, 0);
    }
  });

  it('has all its fonts inside', () => {
    const fonts = run('pdffonts', path)
      .split('\n')
      .slice(2)
      .filter((l) => l !== '');
    expect(fonts.length).toBeGreaterThan(0);
    for (const font of fonts) expect(font).toMatch(/ yes (?:yes|no ) (?:yes|no ) +\d+ +\d+$/);
  });

  it('leaves no page nearly empty but the last', () => {
    for (const page of pages.slice(0, -1))
      expect(page.split('\n').filter((l) => l.trim() !== '').length).toBeGreaterThan(12);
  });
});

describe.skipIf(!canLook)('the printed report of a house under other rules', () => {
  it('is on A4 and says that its schematic is no plan', async () => {
    const path = await printTo('house.pdf', houseStudy);
    expect(infoOf(path).get('Page size')).toContain('A4');
    expect(infoOf(path).get('Tagged')).toBe('yes');
    expect(run('pdftotext', path, '-')).toContain('Schematic, not to scale');
  });
});

/** Enough of a sentence to find it where lines are broken in another column's way. */
function firstWords(text: string): string {
  return text.split(' ').slice(0, 4).join(' ');
}
