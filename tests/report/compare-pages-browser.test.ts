import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import puppeteer, { type Browser, type Page } from 'puppeteer';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { comparePlan } from '../../src/drawing/compare-plan.ts';
import { compareSchematic } from '../../src/drawing/compare-schematic.ts';
import { findBrowser } from '../../src/shell/find-browser.ts';
import { studyOfExample } from '../examples/study-of-example.ts';
import { asFile, compared, comparePageOf, marlHill, statementOf } from './compared.ts';
import { hostileSite } from './hostile-site.ts';
import { acting, actingShown, hostile } from './hostile-text.ts';

const browserPath = await findBrowser(null);
if (browserPath === null) process.stderr.write('SKIPPED: no browser, so no page of a comparison was opened\n');

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
interface AxeResult {
  readonly violations: readonly { readonly id: string; readonly nodes: readonly { readonly html: string }[] }[];
}
declare const window: { readonly axe: { run(options: object): Promise<AxeResult> } };
declare const document: {
  readonly title: string;
  querySelectorAll(query: string): Iterable<{
    readonly tagName: string;
    readonly textContent: string;
    readonly attributes: Iterable<{ readonly name: string; readonly value: string }>;
  }>;
};

const flat = (state: string | null) => asFile(studyOfExample('town-flat/town-flat.site.yaml', state), 'e');
const pages: readonly (readonly [string, string])[] = [
  ['the report of Marl Hill', comparePageOf(marlHill)],
  ['the statement of Marl Hill', statementOf(marlHill)],
  ['the report of a flat in two states', comparePageOf(compared(flat(null), flat('storm')))],
];
const evil = compared(marlHill.before, asFile(JSON.parse(JSON.stringify(hostileSite().study)), 'b'));

describe.skipIf(browserPath === null)('pages of a comparison in a browser', () => {
  let browser: Browser;
  const ran: string[] = [];
  beforeAll(async () => {
    const asRoot = process.platform === 'linux' && process.getuid?.() === 0;
    browser = await puppeteer.launch({ executablePath: browserPath!, args: asRoot ? ['--no-sandbox'] : [] });
  });
  afterAll(() => browser.close());

  async function open(html: string, widthPx: number): Promise<Page> {
    const page = await browser.newPage();
    await page.setBypassCSP(true);
    page.on('dialog', (dialog) => {
      ran.push(dialog.message());
      void dialog.dismiss();
    });
    await page.setViewport({ width: widthPx, height: 900 });
    await page.setContent(html, { waitUntil: 'load' });
    return page;
  }

  describe.each(pages)('%s', (_, html) => {
    let page: Page;
    beforeAll(async () => {
      page = await open(html, 1280);
      await page.evaluate(axe);
    });
    afterAll(() => page.close());

    it.each([1280, 400])('axe-core finds nothing wrong with it, %d px wide, and it is no wider', async (widthPx) => {
      await page.setViewport({ width: widthPx, height: 900 });
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(widthPx);
      const { violations } = await page.evaluate(() => window.axe.run({ resultTypes: ['violations'] }));
      expect(violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.html.slice(0, 200)).join(' | ')}`)).toEqual([]);
    });
  });

  it.each([
    ['the report', comparePageOf(evil), 60],
    ['the statement', statementOf(evil), 8],
    ['the statement without what can be left out', statementOf(evil, ['address', 'names', 'photos']), 4],
  ])('hostile text stays text: %s', async (_, html, least) => {
    const page = await open(html, 1280);
    const made = await page.evaluate(() => {
      const all = [...document.querySelectorAll('*')];
      return {
        bad: all.filter(
          (e) =>
            e.tagName === 'SCRIPT' || e.tagName === 'IMG' || [...e.attributes].some((a) => a.name.startsWith('on')),
        ).length,
        texts: [...document.querySelectorAll('body')][0]!.textContent,
        attributes: all.flatMap((e) => [...e.attributes].map((a) => a.value)).join('\n'),
        title: document.title,
      };
    });
    await page.close();
    expect(ran).toEqual([]);
    expect(made.bad).toBe(0);
    expect(made.texts.split(hostile + actingShown).length).toBeGreaterThan(least);
    for (const c of acting) expect(`${made.texts}${made.attributes}${made.title}`).not.toContain(c);
  });

  it('and the drawings are sound XML by themselves', async () => {
    const page = await open('<!doctype html><title>t</title>', 400);
    const { before, after, comparison } = evil;
    for (const svg of [comparePlan(before, after, comparison), compareSchematic(before, after, comparison)]) {
      const names = await page.evaluate(
        `[...new DOMParser().parseFromString(${JSON.stringify(svg)}, 'image/svg+xml').querySelectorAll('*')].map((e) => e.localName)`,
      );
      expect(new Set(names as string[])).not.toContain('parsererror');
      expect(new Set(names as string[])).not.toContain('script');
    }
    await page.close();
  });
});
