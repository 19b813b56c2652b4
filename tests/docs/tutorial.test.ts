import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { isMap, isScalar, parseDocument, visit } from 'yaml';
import { exitCode } from '../../src/shell/exit-code.ts';
import { findBrowser } from '../../src/shell/find-browser.ts';
import { readSite } from '../../src/site/read-site.ts';
import { runStudy } from '../../src/study/run-study.ts';
import type { Study } from '../../src/study/study.ts';
import { buildCommand } from '../shell/built-command.ts';
import { fenced, placeLines, prose, quoted, readme, tutorialBlocks } from './readme.ts';

/** The file as it stands after each step: the first four are whole pieces, the others lines under a section. */
const blocks = tutorialBlocks(readme);
const steps = stepsOf(blocks);

function stepsOf(pieces: ReadonlyMap<number, string>): readonly string[] {
  const files: string[] = [];
  for (const [step, piece] of [...pieces].sort(([a], [b]) => a - b)) {
    const before = files.at(-1) ?? '';
    files.push(step < 5 ? before + piece : placeLines(changed(before), piece));
  }
  return files;
}

/** What the text before step 5 asks to be changed in the first line. */
function changed(site: string): string {
  return site.replace('service: unknown', 'service: panel');
}

function study(text: string): Study {
  const { site, problems } = readSite(text, 'my.site.yaml');
  if (site === null) throw new Error(JSON.stringify(problems, null, 1));
  const { study: result, faults } = runStudy(site, { state: null, version: 'test', checksum: '', date: null });
  expect(faults).toEqual([]);
  return result;
}

describe('the tutorial', () => {
  it('has its six steps, and asks for the change of the first line that step 5 rests on', () => {
    expect([...blocks.keys()]).toEqual([1, 2, 3, 4, 5, 6]);
    expect(prose(readme)).toMatch(/Change\s+the first line to `service: panel`/);
  });

  it.each(steps.map((text, i) => [i + 1, text] as const))(
    'reads without a problem or a question at step %i',
    (_step, text) => {
      const { site, problems } = readSite(text, 'my.site.yaml');
      expect(problems).toEqual([]);
      expect(site?.questions).toEqual([]);
      study(text);
    },
  );

  it('has at most 25 lines', () => {
    const lines = steps
      .at(-1)!
      .split('\n')
      .filter((l) => l.trim() !== '');
    expect(lines.length).toBeLessThanOrEqual(25);
  });

  it('types no key that the text does not name', () => {
    const named = quoted(readme).join(' ');
    const keys = new Set(steps.flatMap(keysOf));
    expect([...keys].filter((key) => !new RegExp(`(^|[^\\w-])${key}([^\\w-]|$)`).test(named))).toEqual([]);
  });
});

/** Keys of the format: those of the file, of a section's members, and of what stands inside; not the owner's names. */
function keysOf(text: string): readonly string[] {
  const keys: string[] = [];
  visit(parseDocument(text), {
    Pair(_, pair, path) {
      const depth = path.filter(isMap).length;
      const isName = depth === 2 && !keys.slice(-1).includes('site') && !insideSite(path);
      if (!isName && isScalar(pair.key)) keys.push(String(pair.key.value));
    },
  });
  return keys;
}

function insideSite(path: readonly unknown[]): boolean {
  return path.some((node) => (node as { key?: { value?: unknown } }).key?.value === 'site');
}

describe('what the tutorial says that is found', () => {
  const found = (text: string, rule: string, at: string) =>
    study(text).findings.find((f) => f.rule === rule && f.at.includes(at));

  it('three things to do after step 4, findings in order of danger, and how to find out the rest', () => {
    const { verdict, findings } = study(steps[3]!);
    expect(verdict.actions.length).toBe(3);
    const order = ['hazard', 'defect', 'advice'];
    const severities = findings.filter((f) => f.outcome === 'not met').map((f) => order.indexOf(f.severity));
    expect(severities).toEqual([...severities].sort());
    const open = findings.filter((f) => f.outcome === 'cannot tell');
    expect(open.length).toBeGreaterThan(0);
    expect(open.every((f) => f.remedy.length > 10)).toBe(true);
  });

  it('a hazard at the mast’s rod after step 5', () => {
    expect(found(steps[4]!, 'all-electrodes-one-system', 'rod')).toMatchObject({
      outcome: 'not met',
      severity: 'hazard',
    });
  });

  it('no such finding after step 6', () => {
    expect(found(steps[5]!, 'all-electrodes-one-system', 'rod')?.outcome).toBe('met');
  });
});

describe('the commands of the tutorial', () => {
  const evenground = buildCommand();
  const folder = mkdtempSync(join(tmpdir(), 'evenground-tutorial-'));
  cpSync('examples', join(folder, 'examples'), { recursive: true });
  afterAll(() => {
    evenground.remove();
    rmSync(folder, { recursive: true, force: true });
  });
  const lines = fenced(readme, 'sh')
    .flatMap((block) => block.split('\n'))
    .filter((line) => line.startsWith('npx evenground '));
  const browser = findBrowser(null);

  it('are there', () => expect(lines.length).toBeGreaterThanOrEqual(3));

  it.each([...new Set(lines)])('%s', async (line) => {
    writeFileSync(join(folder, 'my.site.yaml'), steps.at(-1)!);
    if (line.includes('--pdf') && (await browser) === null) {
      process.stderr.write('SKIPPED: no browser, so the command that prints a PDF was not run\n');
      return;
    }
    const { code, out, err } = evenground.bash(`cd ${folder}; ${line.replace('npx evenground', '$evenground')}`);
    // progress of what takes its time is talk
    expect(err.replace(/^.*\(Ctrl-C stops and prints what was found so far\)\n/gm, '')).toBe('');
    expect([exitCode.fine, exitCode.findings]).toContain(code);
    expect(out.length).toBeGreaterThan(100);
    if (line.includes('report'))
      expect(readFileSync(join(folder, 'my-report/my.html'), 'utf8')).toMatch(/<\/html>\s*$/);
    if (line.includes('--pdf'))
      expect(readFileSync(join(folder, 'my-report/my.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
  });
});
