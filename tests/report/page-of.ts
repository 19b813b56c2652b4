import { readFileSync } from 'node:fs';
import type { Photo } from '../../src/report/photos-section.ts';
import { type ReportTemplates, renderHtml, templateNames } from '../../src/report/render-html.ts';
import { reportModel } from '../../src/report/report-model.ts';
import type { Study } from '../../src/study/study.ts';

const folder = new URL('../../templates/', import.meta.url);

export const templates = Object.fromEntries(
  templateNames.map((name) => [name, readFileSync(new URL(name, folder), 'utf8')]),
) as ReportTemplates;

/** The report's page of a study. */
export function pageOf(study: Study, photos: readonly Photo[] = []): string {
  return renderHtml(reportModel(study, { photos }), templates);
}

/** What a reader sees of a page: the text of its body, one piece for each element. Read apart from the code under test. */
export function piecesOf(html: string): readonly string[] {
  const body = html.slice(html.indexOf('<body>'));
  return body
    .split(/<[^>]*>/)
    .map(readEntities)
    .map((t) => t.trim())
    .filter((t) => t !== '');
}

/** The part of a page between a heading's section and the next. */
export function sectionOf(html: string, id: string): string {
  const start = html.indexOf(`<section id="${id}"`);
  if (start === -1) throw new Error(`no section ${id} on the page`);
  return html.slice(start, html.indexOf('</section>', start));
}

export function readEntities(text: string): string {
  return text
    .replace(/&#x([0-9a-f]+);/gi, (_, code: string) => String.fromCodePoint(Number.parseInt(code, 16)))
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)))
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&');
}
