import { basename, join } from 'node:path';
import { compareStudies } from '../compare/compare-studies.ts';
import { renderHtml } from '../report/render-html.ts';
import { sheetModel } from '../report/sheet-model.ts';
import { worksModel } from '../report/works-model.ts';
import type { WorksPlan } from '../rework/work.ts';
import { writeWhole } from './files.ts';
import { readTemplates } from './templates.ts';
import { writePdf } from './write-pdf.ts';

export interface SheetsAsk {
  /** Folder for the pages. */
  readonly sheet: string;
  readonly pdf?: boolean;
  readonly browser?: string;
}

/**
 * Writes the page of works (NAME.works.html) and the contractor's sheet (NAME.sheet.html), with `pdf` both as PDF too; NAME
 * is the site file's own. Gives the names of what was written.
 */
export async function writeSheets(plan: WorksPlan, file: string, ask: SheetsAsk): Promise<readonly string[]> {
  const comparison = compareStudies(plan.before, plan.after);
  const stem = join(ask.sheet, basename(file).replace(/(\.site)?\.(ya?ml|json)$/, ''));
  const templates = readTemplates();
  const pages = [
    { path: `${stem}.works`, model: worksModel(plan, comparison) },
    { path: `${stem}.sheet`, model: sheetModel(plan, comparison) },
  ].map((p) => ({ ...p, html: renderHtml(p.model, templates) }));
  for (const { path, html } of pages) writeWhole(`${path}.html`, html);
  if (ask.pdf)
    for (const { path, html, model } of pages) await writePdf(html, model, `${path}.pdf`, ask.browser ?? null);
  return pages.flatMap(({ path }) => [`${path}.html`, ...(ask.pdf ? [`${path}.pdf`] : [])]);
}
