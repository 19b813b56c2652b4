import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findBrowser } from '../../src/shell/find-browser.ts';
import { printPdf } from '../../src/shell/print-pdf.ts';

const browser = await findBrowser(null);
/** A folder of our own for temporary files, so that nobody else's are counted. */
const temporary = mkdtempSync(join(tmpdir(), 'evenground-printing-'));
const before = process.env.TMPDIR;
beforeAll(() => {
  process.env.TMPDIR = temporary;
});
afterAll(() => {
  if (before === undefined) delete process.env.TMPDIR;
  else process.env.TMPDIR = before;
  rmSync(temporary, { recursive: true, force: true });
});
if (browser === null) process.stderr.write('SKIPPED: no browser, so printing to PDF was not looked at\n');

describe.skipIf(browser === null)('a page that is printed', () => {
  let server: Server;
  const asked: string[] = [];
  let at: string;

  beforeAll(async () => {
    server = createServer((request, response) => {
      asked.push(request.url ?? '');
      response.end('body { color: red }');
    });
    await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
    at = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  });
  afterAll(() => {
    server.close();
  });

  const print = (html: string) => printPdf(html, { browserPath: browser!, footer: 'foot', timeoutMs: 40_000 });

  it('reaches no network, whatever it asks for', async () => {
    await fetch(`${at}/control`);
    expect(asked.splice(0)).toEqual(['/control']);
    const pdf = await print(`<!doctype html><html lang="en"><head><title>t</title>
      <link rel="stylesheet" href="${at}/style.css"><link rel="icon" href="${at}/icon">
      <link rel="preconnect" href="${at}"><link rel="prefetch" href="${at}/next">
      <meta http-equiv="refresh" content="0;url=${at}/away">
      <style>@import url("${at}/import.css"); @font-face { font-family: f; src: url("${at}/font.woff2") }
      body { font-family: f; background: url("${at}/background.png") }</style></head>
      <body><img src="${at}/image.png"><iframe src="${at}/frame"></iframe><object data="${at}/object"></object>
      <video src="${at}/video"></video><script src="${at}/script.js"></script>
      <script>fetch("${at}/fetch"); new WebSocket("ws://127.0.0.1:${at.split(':')[2]}/socket")</script>
      <svg><image href="${at}/svg.png" width="1" height="1"/><use href="${at}/use.svg#a"/></svg>still here</body></html>`);
    expect(asked).toEqual([]);
    expect(Buffer.from(pdf.subarray(0, 5)).toString('latin1')).toBe('%PDF-');
  });

  it('reads no file of the machine', async () => {
    const letters = String.fromCodePoint(...Array.from({ length: 400 }, (_, i) => 0x100 + i));
    const file = join(temporary, 'page.html');
    writeFileSync(file, `<meta charset="utf-8">${letters}`);
    const page = (body: string) => print(`<!doctype html><meta charset="utf-8"><title>t</title><p>text ${body}`);
    const [bare, shown] = [(await page('')).length, (await page(letters)).length];
    const asking = await page(`<iframe src="${pathToFileURL(file)}" width="900" height="900"></iframe>`);
    expect(shown - bare, 'letters that are shown make the file grow').toBeGreaterThan(8000);
    expect(asking.length - bare).toBeLessThan(4000);
  });

  it('is tagged and has an outline', async () => {
    const pdf = Buffer.from(await print('<!doctype html><html lang="en"><title>t</title><h1>One</h1><h2>Two</h2>'));
    expect(pdf.toString('latin1')).toMatch(/\/MarkInfo\s*<<\s*\/Type\s*\/MarkInfo\s*\/Marked true|\/Marked true/);
    expect(pdf.toString('latin1')).toContain('/Outlines');
  });

  it.each([
    ['a little more than it should take is printed smaller', 2, 1, 1],
    ['much more takes as many pages as it needs', 3, 1, 3],
    ['what nobody limits stands as it is', 2, null, 2],
  ])('%s', async (_, blocks, pages, expected) => {
    // 279.4 mm less twice 10 is 259.4 mm to a page, and 273 at 0.95
    const html = `<!doctype html><title>t</title><style>@page { size: Letter; margin: 10mm } body { margin: 0 }
      div { height: 135mm; break-inside: avoid }</style>${'<div>block</div>'.repeat(blocks)}`;
    const pdf = await printPdf(html, { browserPath: browser!, footer: 'foot', pages, timeoutMs: 40_000 });
    const counts = [
      ...Buffer.from(pdf)
        .toString('latin1')
        .matchAll(/\/Count (\d+)/g),
    ].map((m) => Number(m[1]));
    expect(Math.max(...counts)).toBe(expected);
  });

  it('leaves no temporary profile', async () => {
    await print('<!doctype html><title>t</title><p>text');
    expect(readdirSync(temporary).filter((name) => name.startsWith('evenground-print-'))).toEqual([]);
  });
});

describe('a browser', () => {
  it('that was named and is not there is not replaced by another', async () => {
    expect(await findBrowser('/no/such/browser')).toBe(null);
  });

  it('that cannot be started is an error, and leaves no temporary profile', async () => {
    await expect(printPdf('<p>', { browserPath: '/bin/true', footer: '', timeoutMs: 5_000 })).rejects.toThrow();
    expect(readdirSync(temporary).filter((name) => name.startsWith('evenground-print-'))).toEqual([]);
  });
});
