// Makes sure that a browser for printing PDF is there: a named path, an installed one, the one puppeteer keeps, else fetches one.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from './prepare.mjs';

/** Returns the path of a browser, or null when none could be had. */
export async function ensureBrowser() {
  const { findBrowser } = await import(pathToFileURL(join(root, 'dist', 'index.js')).href);
  const found = await findBrowser(null);
  if (found !== null) return found;
  process.stderr.write('No browser for PDF found; fetching one ...\n');
  if (isDebianRoot()) fetchByApt();
  const installed = await findBrowser(null);
  if (installed !== null) return installed;
  fetchByPuppeteer();
  return findBrowser(null);
}

function isDebianRoot() {
  if (process.getuid?.() !== 0 || !existsSync('/etc/os-release')) return false;
  return /^ID(_LIKE)?=.*debian/m.test(readFileSync('/etc/os-release', 'utf8'));
}

function fetchByApt() {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  spawnSync('apt-get', ['update', '-qq'], { env, stdio: 'ignore' });
  spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], { env, stdio: 'ignore' });
}

function fetchByPuppeteer() {
  const cli = join(root, 'node_modules', 'puppeteer', 'lib', 'cjs', 'puppeteer', 'node', 'cli.js');
  spawnSync(process.execPath, [cli, 'browsers', 'install', 'chrome'], { cwd: root, stdio: 'ignore', timeout: 300_000 });
}
