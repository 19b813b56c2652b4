import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { compareStudies } from '../../src/compare/compare-studies.ts';
import { renderHtml } from '../../src/report/render-html.ts';
import { sheetModel } from '../../src/report/sheet-model.ts';
import type { Material, Step } from '../../src/rework/work.ts';
import { findBrowser } from '../../src/shell/find-browser.ts';
import { printPdf } from '../../src/shell/print-pdf.ts';
import { templates } from './page-of.ts';
import { clubPlan } from './sample-works.ts';

const browserPath = await findBrowser(null);
const canLook = browserPath !== null && spawnSync('pdftotext', ['-v']).error === undefined;
if (!canLook) process.stderr.write('SKIPPED: no browser or no pdftotext, so the printed sheet was not looked at\n');

const folder = mkdtempSync(join(tmpdir(), 'evenground-sheet-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A work with so many more lines of material. */
function longer(step: Step, lines: number): Step {
  const more = Array.from({ length: lines }, (_, i): Material => {
    return { name: `piece ${i + 1}`, unit: 'each', count: { low: 1, high: 1 } };
  });
  return { ...step, work: { ...step.work, materials: [...step.work.materials, ...more] } };
}

describe.skipIf(!canLook)('the printed sheet', () => {
  let pages: readonly string[];

  beforeAll(async () => {
    // the same work, longer from one to the next, so that the end of a page falls on each of its pieces
    const rods = clubPlan.steps.find((s) => s.work.kind === 'add-rods')!;
    const steps = Array.from({ length: 20 }, (_, i) => longer(rods, 2 * i));
    const plan = { ...clubPlan, steps };
    const model = sheetModel(plan, compareStudies(plan.before, plan.after));
    const path = join(folder, 'sheet.pdf');
    const { footer, pageNumber } = model;
    writeFileSync(
      path,
      await printPdf(renderHtml(model, templates), { browserPath: browserPath!, footer, pageNumber }),
    );
    pages = spawnSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8' }).stdout.split('\f');
  }, 120_000);

  it('has who signs on the page of the readings, whole', () => {
    const signed = pages.filter((p) => /Took the readings/.test(p));
    expect(signed).toHaveLength(20);
    for (const page of signed) {
      expect(page).toContain('Test after the work');
      expect(page).toContain('Did the work');
    }
  });

  it('needs at most two pages for a work', () => {
    const first = pages.findIndex((p) => /^\s*\d+\s+Work 1:/.test(p));
    const last = pages.findLastIndex((p) => /Took the readings/.test(p));
    expect(last - first + 1).toBeLessThanOrEqual(40);
  });
});
