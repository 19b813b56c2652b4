import { basename, join } from 'node:path';
import type { Comparison } from '../compare/comparison.ts';
import { compareReportModel } from '../report/compare-report-model.ts';
import { renderHtml, renderStatement } from '../report/render-html.ts';
import { statementModel } from '../report/statement-model.ts';
import type { Study } from '../study/study.ts';
import { comparePagesWords as words } from '../words/compare-pages-words.ts';
import { say } from '../words/say.ts';
import { type LeaveOut, leaveOutKinds } from '../words/statement-words.ts';
import { termsOf } from '../words/terms.ts';
import { exitCode, Stop } from './exit-code.ts';
import { writeWhole } from './files.ts';
import { readTemplates } from './templates.ts';
import { writePdf } from './write-pdf.ts';

export interface ComparePagesAsk {
  /** Folder for the before-and-after report. */
  readonly report?: string;
  /** Folder for the two-page statement. */
  readonly statement?: string;
  /** What the owner keeps off the statement, with commas between. */
  readonly leaveOut?: string;
  readonly pdf?: boolean;
  readonly browser?: string;
}

/** What is asked of pages that cannot be had whatever the files say: to be called before anything is worked out. */
export function checkComparePages(ask: ComparePagesAsk): ReadonlySet<LeaveOut> {
  if (ask.leaveOut !== undefined && ask.statement === undefined) throw new Stop(exitCode.input, words.leaveOutAlone);
  if (ask.pdf && ask.report === undefined && ask.statement === undefined)
    throw new Stop(exitCode.input, words.pdfAlone);
  return leaveOutOf(ask.leaveOut ?? '');
}

function leaveOutOf(text: string): ReadonlySet<LeaveOut> {
  const asked = text
    .split(',')
    .map((t) => t.trim())
    .filter((t) => t !== '');
  const wrong = asked.find((t) => !leaveOutKinds.some((k) => k === t));
  if (wrong !== undefined)
    throw new Stop(exitCode.input, say(words.leaveOut, { kind: wrong, list: [...leaveOutKinds] }, plain));
  return new Set(asked as LeaveOut[]);
}

const plain = { terms: 'us', unitsFirst: 'si' } as const;

export interface ToCompare {
  readonly before: Study;
  readonly after: Study;
  readonly comparison: Comparison;
  /** The file after, which gives the pages their names. */
  readonly file: string;
}

/**
 * Writes NAME.compare.html, NAME.statement.html and with `pdf` both as PDF; NAME is that of the file after, and left out
 * where the name of the site is. All HTML goes out before the first PDF is tried. Gives the names of what was written.
 */
export async function writeComparePages(all: ToCompare, ask: ComparePagesAsk): Promise<readonly string[]> {
  const leaveOut = checkComparePages(ask);
  refuse(all, ask);
  const pages = pagesOf(all, ask, leaveOut);
  for (const { path, html } of pages) writeWhole(`${path}.html`, html);
  if (ask.pdf)
    for (const { path, html, foot, most } of pages)
      await writePdf(html, foot, `${path}.pdf`, ask.browser ?? null, most);
  return pages.flatMap(({ path }) => [`${path}.html`, ...(ask.pdf ? [`${path}.pdf`] : [])]);
}

/** Pages that would mix the words of two regions, or call a state of one file work done. */
function refuse({ before, after }: ToCompare, ask: ComparePagesAsk): void {
  if (ask.report === undefined && ask.statement === undefined) return;
  const regions = { before: before.site.region, after: after.site.region };
  if (termsOf(regions.before) !== termsOf(regions.after))
    throw new Stop(exitCode.input, say(words.terms, regions, plain));
  const isOneFile = before.site.checksum === after.site.checksum && before.state.id !== after.state.id;
  if (ask.statement !== undefined && isOneFile) throw new Stop(exitCode.input, words.states);
}

/** What goes into a permit file or to an insurer is one sheet, printed on both sides. */
const statementPages = 2;

function pagesOf(all: ToCompare, ask: ComparePagesAsk, leaveOut: ReadonlySet<LeaveOut>) {
  const templates = readTemplates();
  const name = basename(all.file).replace(/(\.site|\.study)?\.(ya?ml|json)$/, '');
  const pages = [];
  if (ask.report !== undefined) {
    const foot = compareReportModel(all.before, all.after, all.comparison);
    pages.push({ path: join(ask.report, `${name}.compare`), html: renderHtml(foot, templates), foot, most: null });
  }
  if (ask.statement !== undefined) {
    const foot = statementModel(all, leaveOut);
    const stem = leaveOut.has('site') ? 'statement' : `${name}.statement`;
    pages.push({ path: join(ask.statement, stem), html: renderStatement(foot, templates), foot, most: statementPages });
  }
  return pages;
}
