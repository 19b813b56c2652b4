// Makes examples/marl-hill/report.png, the picture in the README: the report's title, verdict, first actions and plan.
// Run `npm run build` first, then `node tests/examples/picture.mjs`.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import puppeteer from 'puppeteer';

const site = 'examples/marl-hill/marl-hill.site.yaml';
const picture = 'examples/marl-hill/report.png';
const widthPx = 1200;

const folder = mkdtempSync(join(tmpdir(), 'evenground-picture-'));
const asRoot = process.platform === 'linux' && process.getuid?.() === 0;
const browser = await puppeteer.launch({
  executablePath: process.env.EVENGROUND_BROWSER ?? '/usr/bin/chromium',
  args: asRoot ? ['--no-sandbox'] : [],
});
try {
  const made = spawnSync(process.execPath, ['dist/evenground.js', 'report', site, '-o', folder], { stdio: 'inherit' });
  if (made.status !== 0) throw new Error('the report could not be made');
  const page = await browser.newPage();
  await page.setViewport({ width: widthPx, height: 1000 });
  await page.goto(pathToFileURL(join(folder, 'marl-hill.html')).href);
  // Down to the frame of the plan, which is the first rectangle drawn.
  const end = await page.evaluate(() => document.querySelector('#plan svg rect').getBoundingClientRect().bottom);
  await page.screenshot({ path: picture, clip: { x: 0, y: 0, width: widthPx, height: Math.ceil(end) + 16 } });
} finally {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
}
