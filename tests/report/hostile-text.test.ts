import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import puppeteer, { type Browser } from 'puppeteer';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bondingDiagram } from '../../src/drawing/bonding-diagram.ts';
import { contourMap } from '../../src/drawing/contour-map.ts';
import { depthChart } from '../../src/drawing/depth-chart.ts';
import { schematic } from '../../src/drawing/schematic.ts';
import { seasonCharts } from '../../src/drawing/season-chart.ts';
import { sitePlan } from '../../src/drawing/site-plan.ts';
import { soundingChart } from '../../src/drawing/sounding-chart.ts';
import { spacingChart } from '../../src/drawing/spacing-chart.ts';
import { strikeChart } from '../../src/drawing/strike-chart.ts';
import { strikePlan } from '../../src/drawing/strike-plan.ts';
import { strikesOf } from '../../src/drawing/strikes-of.ts';
import { reportModel } from '../../src/report/report-model.ts';
import { findBrowser } from '../../src/shell/find-browser.ts';
import { printPdf } from '../../src/shell/print-pdf.ts';
import type { Study } from '../../src/study/study.ts';
import { studyOfExample } from '../examples/study-of-example.ts';
import { hostileSite } from './hostile-site.ts';
import { acting, actingShown, hostile, hostileText, type Json, mapTexts } from './hostile-text.ts';
import { pageOf } from './page-of.ts';
import { clubStrike, houseStrike, refusedStrike, struck } from './sample-strike.ts';
import { clubStudy, houseStudy } from './samples.ts';

const browserPath = await findBrowser(null);
if (browserPath === null) process.stderr.write('SKIPPED: no browser, so no page with hostile text was parsed\n');
const canReadPdf = browserPath !== null && spawnSync('pdftotext', ['-v']).error === undefined;
if (!canReadPdf) process.stderr.write('SKIPPED: no browser or no pdftotext, so no PDF with hostile text was read\n');

/** Fields of a study that hold a word of its own list, never the owner's. */
const words = [
  'outcome',
  'severity',
  'family',
  'provenance',
  'section',
  'region',
  'units',
  'is',
  'which',
  'aim',
  'how',
];
const weakKinds = ['joint', 'conductor', 'part'];

/** A stored study in which every text was tampered with. */
function tampered(study: Study): Study {
  const plain = JSON.parse(JSON.stringify(study)) as Json;
  const made = mapTexts(plain, (text, path) => {
    const key = path.findLast((k) => !/^\d+$/.test(k));
    return words.includes(key ?? '') || weakKinds.includes(text) ? text : text + hostileText;
  });
  return made as unknown as Study;
}

/** The charts and the maps of soil and electrodes. */
function soilDrawings(study: Study): readonly string[] {
  const { soilFit, depthCurves, spacingGains, surfaces } = study.earth;
  return [
    soundingChart(study, soilFit!),
    depthChart(study, depthCurves),
    spacingChart(study, spacingGains),
    ...seasonCharts(study),
    ...surfaces.map((s) => contourMap(study, s)),
  ];
}

/** The chart and the plan of each strike. */
function strikeDrawings(study: Study): readonly string[] {
  return strikesOf(study).flatMap((s) => [strikeChart(study, s) ?? '', strikePlan(study, s)?.svg ?? '']);
}

/** Each kind of element with its attributes, by name: what a page is made of. */
interface Made {
  readonly elements: readonly string[];
  readonly texts: string;
  readonly attributes: string;
  readonly title: string;
}

declare const document: {
  readonly title: string;
  querySelectorAll(query: string): Iterable<{
    readonly tagName: string;
    readonly textContent: string;
    readonly attributes: Iterable<{ readonly name: string; readonly value: string }>;
  }>;
};

describe.skipIf(browserPath === null)('a page with hostile text', () => {
  let browser: Browser;
  const ran: string[] = [];
  beforeAll(async () => {
    const asRoot = process.platform === 'linux' && process.getuid?.() === 0;
    browser = await puppeteer.launch({ executablePath: browserPath!, args: asRoot ? ['--no-sandbox'] : [] });
  });
  afterAll(() => browser.close());

  async function parse(html: string): Promise<Made> {
    const page = await browser.newPage();
    await page.setBypassCSP(true);
    page.on('dialog', (dialog) => {
      ran.push(dialog.message());
      void dialog.dismiss();
    });
    await page.setContent(html, { waitUntil: 'load' });
    const made = await page.evaluate(() => {
      const all = [...document.querySelectorAll('*')];
      const named = all.map((e) => `${e.tagName} ${[...e.attributes].map((a) => a.name).join(' ')}`);
      const attributes = all.flatMap((e) => [...e.attributes].map((a) => a.value)).join('\n');
      const texts = [...document.querySelectorAll('body')][0]!.textContent;
      return { elements: [...new Set(named)].sort(), texts, attributes, title: document.title };
    });
    await page.close();
    return made;
  }

  it('would be caught if it did act', async () => {
    const made = await parse(`<!doctype html><title>t</title><p>${hostile}`);
    expect(made.elements).toEqual(expect.arrayContaining(['SCRIPT ', 'IMG src onerror']));
    expect(ran.splice(0)).toContain('1');
  });

  const struckClub = struck(clubStudy, clubStrike);
  const marlHill = studyOfExample('marl-hill/marl-hill.site.yaml');
  /** What pages are made of whose text is harmless. */
  const usual = new Set<string>();
  beforeAll(async () => {
    for (const study of [struckClub, houseStudy, marlHill]) {
      for (const e of (await parse(pageOf(study))).elements) usual.add(e);
    }
  }, 60_000);
  it.each([
    ['the club, tampered with', tampered(clubStudy), 100],
    ['the house, tampered with', tampered(houseStudy), 50],
    ['the club, struck and tampered with', tampered(struckClub), 200],
    ['a site file', hostileSite().study, 100],
  ])('keeps all of it as text: %s', async (_, study, least) => {
    const made = await parse(pageOf(study));
    expect(ran).toEqual([]);
    expect(made.elements.filter((e) => !usual.has(e))).toEqual([]);
    expect(made.elements.some((e) => e.startsWith('SCRIPT') || e.includes(' on'))).toBe(false);
    expect(made.texts.split(hostile + actingShown).length).toBeGreaterThan(least);
    for (const c of acting) expect(`${made.texts}${made.attributes}${made.title}`).not.toContain(c);
    expect(made.title).toContain(hostile + actingShown);
  });

  it('and its drawings are sound XML by themselves', async () => {
    const page = await browser.newPage();
    const drawings = [tampered(clubStudy), hostileSite().study].flatMap((s) => [sitePlan(s), bondingDiagram(s)]);
    const others = [...soilDrawings(tampered(clubStudy)), ...strikeDrawings(tampered(struckClub))];
    for (const svg of [...drawings, schematic(tampered(houseStudy)), ...others]) {
      const names = await page.evaluate(
        `[...new DOMParser().parseFromString(${JSON.stringify(svg)}, 'image/svg+xml').querySelectorAll('*')].map((e) => e.localName)`,
      );
      expect(new Set(names as string[])).not.toContain('parsererror');
      expect(new Set(names as string[])).not.toContain('script');
      for (const c of acting) expect(svg).not.toContain(c);
    }
    await page.close();
  });
});

it('a site file takes text in every kind of field that holds the owner’s own words', () => {
  const { took } = hostileSite();
  const fields = new Set(
    took.map((path) =>
      path
        .split('.')
        .filter((k) => !/^\d+$/.test(k))
        .at(-1),
    ),
  );
  const expected = ['name', 'by', 'for', 'owner', 'permit', 'revision', 'address', 'claims', 'amendments', 'document'];
  const more = ['edition', 'reason', 'note', 'photo', 'kind', 'cable', 'base', 'walls', 'roof', 'says'];
  expect([...fields]).toEqual(expect.arrayContaining([...expected, ...more]));
});

describe.skipIf(!canReadPdf)('a PDF with hostile text', () => {
  const folder = mkdtempSync(join(tmpdir(), 'evenground-hostile-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('shows it as text, at its foot too', async () => {
    const study = tampered(struck(houseStudy, houseStrike, refusedStrike));
    const { footer, pageNumber } = reportModel(study);
    const path = join(folder, 'hostile.pdf');
    writeFileSync(path, await printPdf(pageOf(study), { browserPath: browserPath!, footer, pageNumber }));
    const text = spawnSync('pdftotext', ['-raw', path, '-'], { encoding: 'utf8' }).stdout.replace(/\s+/g, '');
    expect(text.split('<script>alert(1)</script>').length).toBeGreaterThan(50);
    expect(text).toContain('[U+202E]');
    // Line and page ends are pdftotext's own.
    for (const c of acting.replace(/[\u2028\u2029]/g, '')) expect(text).not.toContain(c);
    expect(spawnSync('pdfinfo', [path], { encoding: 'utf8' }).stdout).toMatch(/JavaScript: +no/);
  });
});
