import { constants } from 'node:fs';
import { access, stat } from 'node:fs/promises';
import { delimiter, join } from 'node:path';
import { keptBrowser } from './print-pdf.ts';

/**
 * Path of a browser that can print: the one named (else the one in EVENGROUND_BROWSER), an installed one, the one that
 * puppeteer keeps; null when there is none. A browser that was named and is not there is not replaced by another.
 */
export async function findBrowser(named: string | null): Promise<string | null> {
  const wanted = named ?? process.env.EVENGROUND_BROWSER ?? '';
  if (wanted !== '') return (await canRun(wanted)) ? wanted : null;
  for (const path of installedPaths()) if (await canRun(path)) return path;
  return keptBrowser();
}

async function canRun(path: string): Promise<boolean> {
  try {
    await access(path, constants.X_OK);
    return (await stat(path)).isFile();
  } catch {
    return false;
  }
}

function installedPaths(): readonly string[] {
  if (process.platform === 'darwin') return macPaths();
  return process.platform === 'win32' ? windowsPaths() : linuxPaths();
}

const linuxNames = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'microsoft-edge-stable',
];

function linuxPaths(): readonly string[] {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((f) => f !== '');
  const all = [...new Set([...folders, '/usr/bin', '/usr/local/bin', '/snap/bin'])];
  return linuxNames.flatMap((name) => all.map((folder) => join(folder, name)));
}

const macNames = ['Chromium', 'Google Chrome', 'Microsoft Edge'];

function macPaths(): readonly string[] {
  const roots = ['/Applications', join(process.env.HOME ?? '/', 'Applications')];
  return macNames.flatMap((name) => roots.map((root) => join(root, `${name}.app`, 'Contents', 'MacOS', name)));
}

const windowsNames = [
  ['Chromium', 'Application', 'chrome.exe'],
  ['Google', 'Chrome', 'Application', 'chrome.exe'],
  ['Microsoft', 'Edge', 'Application', 'msedge.exe'],
];

function windowsPaths(): readonly string[] {
  const roots = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA']
    .map((name) => process.env[name])
    .filter((root) => root !== undefined);
  return windowsNames.flatMap((name) => roots.map((root) => join(root, ...name)));
}
