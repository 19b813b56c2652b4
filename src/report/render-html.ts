import Handlebars from 'handlebars';
import { plainText } from '../words/plain-text.ts';
import type { ReportModel } from './report-model.ts';
import type { StatementModel } from './statement-model.ts';

/** Files of the templates folder that a page is made of. */
export const templateNames = [
  'report.hbs',
  'cover.hbs',
  'section.hbs',
  'paragraph.hbs',
  'subheading.hbs',
  'minor.hbs',
  'list.hbs',
  'checklist.hbs',
  'table.hbs',
  'matrix.hbs',
  'figure.hbs',
  'figures.hbs',
  'findings.hbs',
  'definitions.hbs',
  'photo.hbs',
  'statement.hbs',
  'screen.css',
  'print.css',
  'statement.css',
] as const;

/** Text of each template by file name. */
export type ReportTemplates = Readonly<Record<(typeof templateNames)[number], string>>;

/**
 * The page as one self-contained HTML text: no script, nothing fetched. A field that a template misspells is an error,
 * not an empty place. Every text is escaped, and characters that act (direction, line ends) are made harmless; only the
 * drawings, which are escaped where they are made, and our own style sheets go in as they are.
 */
export function renderHtml(model: ReportModel, templates: ReportTemplates): string {
  return renderPage(model, templates, 'report.hbs', ['screen.css', 'print.css']);
}

/** The two-page statement, under the same rules. */
export function renderStatement(model: StatementModel, templates: ReportTemplates): string {
  return renderPage(model, templates, 'statement.hbs', ['screen.css', 'print.css', 'statement.css']);
}

type TemplateName = keyof ReportTemplates;

function renderPage(model: object, templates: ReportTemplates, page: TemplateName, styles: readonly TemplateName[]) {
  const known = compiled.get(templates) ?? new Map<TemplateName, Handlebars.TemplateDelegate>();
  compiled.set(templates, known);
  const render = known.get(page) ?? compilePage(templates, page);
  known.set(page, render);
  return render({ ...harmless(model), css: styles.map((name) => templates[name]).join('\n') });
}

/** Pages compiled before, so that several reports of one run share the work. */
const compiled = new WeakMap<ReportTemplates, Map<TemplateName, Handlebars.TemplateDelegate>>();
const pages: readonly TemplateName[] = ['report.hbs', 'statement.hbs'];

/** Partials are handed over compiled: as text they would be compiled again wherever they are used. */
function compilePage(templates: ReportTemplates, page: TemplateName): Handlebars.TemplateDelegate {
  const engine = Handlebars.create();
  for (const name of templateNames) {
    if (!name.endsWith('.hbs') || pages.includes(name)) continue;
    engine.registerPartial(name.slice(0, -'.hbs'.length), engine.compile(templates[name], { strict: true }));
  }
  return engine.compile(templates[page], { strict: true });
}

/** The same model with every text in it made harmless. */
function harmless<T>(value: T): T {
  if (typeof value === 'string') return plainText(value) as T;
  if (Array.isArray(value)) return value.map(harmless) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, harmless(inner)])) as T;
}
