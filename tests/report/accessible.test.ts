import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import puppeteer, { type Browser, type Page } from 'puppeteer';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findBrowser } from '../../src/shell/find-browser.ts';
import type { Study } from '../../src/study/study.ts';
import { detailedStudyOfExample } from '../examples/study-of-example.ts';
import { pageOf } from './page-of.ts';
import { clubStrike, houseStrike, refusedStrike, struck } from './sample-strike.ts';
import { clubStudy, houseStudy } from './samples.ts';

const browserPath = await findBrowser(null);
if (browserPath === null) process.stderr.write('SKIPPED: no browser, so axe-core has not looked at the report\n');

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface AxeResult {
  readonly violations: readonly { readonly id: string; readonly nodes: readonly { readonly html: string }[] }[];
  readonly passes: readonly { readonly id: string }[];
}

declare const window: { readonly axe: { run(options: object): Promise<AxeResult> } };

const studies: readonly (readonly [string, Study])[] = [
  ['the club', clubStudy],
  ['the house', houseStudy],
  ['the club, struck', struck(clubStudy, clubStrike)],
  ['the house, struck', struck(houseStudy, houseStrike, refusedStrike)],
  ['Marl Hill', detailedStudyOfExample('marl-hill/marl-hill.site.yaml')],
];
const widthsPx = [1280, 400];

describe.skipIf(browserPath === null)('axe-core finds nothing wrong', () => {
  let browser: Browser;
  beforeAll(async () => {
    const asRoot = process.platform === 'linux' && process.getuid?.() === 0;
    browser = await puppeteer.launch({ executablePath: browserPath!, args: asRoot ? ['--no-sandbox'] : [] });
  });
  afterAll(() => browser.close());

  async function open(html: string): Promise<Page> {
    const page = await browser.newPage();
    await page.setBypassCSP(true);
    await page.setContent(html, { waitUntil: 'load' });
    await page.evaluate(axe);
    return page;
  }

  /**
   * Every rule that axe-core has, its best practices included, contrast too. All is looked at; only what is wrong is told place by
   * place, of the rest a place for each rule.
   */
  function look(page: Page): Promise<AxeResult> {
    return page.evaluate(async () => {
      const { violations, passes } = await window.axe.run({ resultTypes: ['violations'] });
      return { violations, passes: passes.map(({ id }) => ({ id })) };
    });
  }

  describe.each(studies)('with the page of %s', (_, study) => {
    let page: Page;
    beforeAll(async () => {
      page = await open(pageOf(study));
    });
    afterAll(() => page.close());

    it.each(widthsPx)('%d px wide, where nothing but tables and drawings is wider', async (widthPx) => {
      await page.setViewport({ width: widthPx, height: 900 });
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(widthPx);
      const { violations, passes } = await look(page);
      expect(violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.html.slice(0, 200)).join(' | ')}`)).toEqual([]);
      const passed = passes.map((p) => p.id);
      expect(passed).toEqual(expect.arrayContaining(['color-contrast', 'heading-order', 'svg-img-alt', 'list']));
    });
  });

  it('with all that a page can show of the soil among what was looked at', () => {
    const shown = pageOf(studies.at(-1)![1]);
    const ids = ['fit-figure', 'fit-layers', 'fit-points', 'conditions', 'ohm-1', 'season-1', 'electrodes-1'];
    const more = ['transferred', 'depth-1', 'depth-figure', 'spacing-figure', 'lines', 'map-1', 'map-2'];
    for (const id of [...ids, ...more]) expect(shown).toContain(`id="soil-${id}"`);
  });

  it('and would have, had a page been worse', async () => {
    const worse = pageOf(clubStudy)
      .replace('color: var(--ink);', 'color: #ccc;')
      .replace(/<html lang="[^"]*">/, '<html>');
    const page = await open(worse);
    await page.setViewport({ width: 1280, height: 900 });
    const found = (await look(page)).violations.map((v) => v.id);
    await page.close();
    expect(found).toEqual(expect.arrayContaining(['color-contrast', 'html-has-lang']));
  });
});
