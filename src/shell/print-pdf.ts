/**
 * The only file that knows puppeteer. It is loaded when a PDF is asked for and not before: everything else works without
 * a browser and without the package.
 */
import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, HTTPRequest, Page } from 'puppeteer';

export interface PdfOptions {
  /** A browser of the Chromium family, as findBrowser gives it. */
  readonly browserPath: string;
  /** Text at the left foot of every page. */
  readonly footer: string;
  /** Words round the page numbers; default `page {page} of {pages}`. */
  readonly pageNumber?: string;
  /** Pages that it should fit on: printed a little smaller where that does it. null: as many as it takes. */
  readonly pages?: number | null;
  /** Longest wait for the browser, in milliseconds; default 60 s. */
  readonly timeoutMs?: number;
}

/**
 * Prints a self-contained HTML page to PDF: tagged, with an outline from its headings, paper size from its own @page
 * rule, page numbers at the foot. Scripts of the page do not run and nothing is fetched from a network. Throws when the
 * browser cannot be started or takes longer than the time allowed; its temporary profile is removed in every case.
 */
export async function printPdf(html: string, options: PdfOptions): Promise<Uint8Array> {
  const profile = await mkdtemp(join(tmpdir(), 'evenground-print-'));
  try {
    const browser = await launch(profile, options);
    try {
      return await printWith(browser, html, options);
    } finally {
      await browser.close();
    }
  } finally {
    await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  }
}

/** Path of the browser that puppeteer keeps for itself, or null when it keeps none or is not installed. */
export async function keptBrowser(): Promise<string | null> {
  try {
    const { default: puppeteer } = await import('puppeteer');
    const path = await puppeteer.executablePath();
    return existsSync(path) ? path : null;
  } catch {
    return null;
  }
}

async function launch(profile: string, options: PdfOptions): Promise<Browser> {
  const { default: puppeteer } = await import('puppeteer');
  return puppeteer.launch({
    executablePath: options.browserPath,
    userDataDir: profile,
    timeout: options.timeoutMs ?? defaultTimeoutMs,
    args: [...quietArguments, ...sandboxArguments()],
  });
}

const defaultTimeoutMs = 60_000;

/** Nothing that the browser does on its own account reaches a network. */
const quietArguments = [
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-default-apps',
  '--disable-domain-reliability',
  '--disable-extensions',
  '--disable-sync',
  '--metrics-recording-only',
  '--no-default-browser-check',
  '--no-first-run',
  '--no-pings',
  '--host-resolver-rules=MAP * ~NOTFOUND',
];

/** The browser refuses to start its sandbox for root on Linux; everybody else keeps it. */
function sandboxArguments(): readonly string[] {
  return process.platform === 'linux' && process.getuid?.() === 0 ? ['--no-sandbox'] : [];
}

async function printWith(browser: Browser, html: string, options: PdfOptions): Promise<Uint8Array> {
  const timeout = options.timeoutMs ?? defaultTimeoutMs;
  const page = await quietPage(browser);
  await page.setContent(html, { waitUntil: 'load', timeout });
  const print = (scale: number) =>
    page.pdf({
      scale,
      preferCSSPageSize: true,
      printBackground: true,
      tagged: true,
      outline: true,
      displayHeaderFooter: true,
      headerTemplate: '<span></span>',
      footerTemplate: footerTemplate(options),
      timeout,
    });
  const full = await print(1);
  const most = options.pages ?? null;
  if (most === null || pagesIn(full) <= most) return full;
  for (const scale of smallerScales) {
    const smaller = await print(scale);
    if (pagesIn(smaller) <= most) return smaller;
  }
  return full;
}

/** Smaller than nine tenths the print is too hard to read: then it takes another page. */
const smallerScales = [0.95, 0.9] as const;

/** Each page of a PDF is an object that says so; the browser packs none of them. */
function pagesIn(pdf: Uint8Array): number {
  return (
    Buffer.from(pdf)
      .toString('latin1')
      .match(/\/Type\s*\/Page\b/g)?.length ?? 0
  );
}

async function quietPage(browser: Browser): Promise<Page> {
  const page = await browser.newPage();
  await page.setJavaScriptEnabled(false);
  await page.setRequestInterception(true);
  page.on('request', refuseNetwork);
  return page;
}

/**
 * A picture inside the page (`data:`) is no request to a network. A refused request counts as given up by the page itself:
 * any other reason would lead the page, or a frame of it, away to a page about the error, at times in the midst of printing.
 */
function refuseNetwork(request: HTTPRequest): void {
  void (request.url().startsWith('data:') ? request.continue() : request.abort('aborted'));
}

function footerTemplate(options: PdfOptions): string {
  const numbers = escapeHtml(options.pageNumber ?? 'page {page} of {pages}')
    .replace('{page}', '<span class="pageNumber"></span>')
    .replace('{pages}', '<span class="totalPages"></span>');
  const style =
    'width:100%;display:flex;justify-content:space-between;margin:0 15mm;font:7.5pt Arial,Helvetica,sans-serif;color:#333';
  return `<div style="${style}"><span>${escapeHtml(options.footer)}</span><span>${numbers}</span></div>`;
}

function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (c) => `&#${c.charCodeAt(0)};`);
}
