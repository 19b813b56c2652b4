import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import puppeteer, { type Browser, type Page } from 'puppeteer';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { compareStudies } from '../../src/compare/compare-studies.ts';
import { renderHtml } from '../../src/report/render-html.ts';
import { sheetModel } from '../../src/report/sheet-model.ts';
import { worksModel } from '../../src/report/works-model.ts';
import type { WorksPlan } from '../../src/rework/work.ts';
import { findBrowser } from '../../src/shell/find-browser.ts';
import { templates } from './page-of.ts';
import { clubPlan, iecPlan } from './sample-works.ts';

const browserPath = await findBrowser(null);
if (browserPath === null)
  process.stderr.write('SKIPPED: no browser, so axe-core has not looked at the pages of works\n');

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface AxeResult {
  readonly violations: readonly { readonly id: string; readonly nodes: readonly { readonly html: string }[] }[];
}

declare const window: { readonly axe: { run(options: object): Promise<AxeResult> } };
declare const document: { readonly documentElement: { readonly scrollWidth: number } };

/** A few works are enough: sections of the others are built alike. */
const few = (plan: WorksPlan): WorksPlan => ({ ...plan, steps: plan.steps.filter((_, i) => [0, 1, 8].includes(i)) });
const [club, house] = [few(clubPlan), few(iecPlan)];

const pages = [
  ['the sheet', renderHtml(sheetModel(club, compareStudies(club.before, club.after)), templates)],
  ['the works', renderHtml(worksModel(house, compareStudies(house.before, house.after)), templates)],
] as const;

describe.skipIf(browserPath === null)('pages of works in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    const asRoot = process.platform === 'linux' && process.getuid?.() === 0;
    browser = await puppeteer.launch({ executablePath: browserPath!, args: asRoot ? ['--no-sandbox'] : [] });
  });
  afterAll(() => browser.close());

  describe.each(pages)('%s', (_, html) => {
    let page: Page;
    beforeAll(async () => {
      page = await browser.newPage();
      await page.setBypassCSP(true);
      await page.setContent(html, { waitUntil: 'load' });
      await page.evaluate(axe);
    });
    afterAll(() => page.close());

    it.each([1280, 400])(
      '%d px wide: axe-core finds nothing wrong, and nothing is wider than the screen',
      async (widthPx) => {
        await page.setViewport({ width: widthPx, height: 900 });
        const { violations } = await page.evaluate(() => window.axe.run({ resultTypes: ['violations'] }));
        const scrollWidth = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.html.slice(0, 200)).join(' | ')}`)).toEqual([]);
        expect(scrollWidth).toBeLessThanOrEqual(widthPx);
      },
      60_000,
    );
  });
});
