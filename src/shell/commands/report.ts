import { basename, dirname, join } from 'node:path';
import { renderHtml } from '../../report/render-html.ts';
import { type ReportModel, reportModel } from '../../report/report-model.ts';
import { type ExitCode, exitCode, Stop } from '../exit-code.ts';
import { exitCodeOf, readExitLevel } from '../exit-level.ts';
import { writeWhole } from '../files.ts';
import { findBrowser } from '../find-browser.ts';
import { readPhotos } from '../photos.ts';
import { verdictLine } from '../say-check.ts';
import { type StudyAsk, studyOfFile } from '../study-of-file.ts';
import { readTemplates } from '../templates.ts';

export interface ReportOptions extends StudyAsk {
  readonly output: string;
  readonly pdf?: boolean;
  readonly browser?: string;
  readonly exit1From?: string;
}

/** Writes NAME.html and NAME.study.json (and NAME.pdf) into the folder; NAME is the site file's own. */
export async function report(file: string, options: ReportOptions): Promise<ExitCode> {
  const level = options.exit1From === undefined ? null : readExitLevel(options.exit1From);
  const study = studyOfFile(file, { ...options, detail: true });
  const model = reportModel(study, { photos: readPhotos(study, dirname(file)) });
  const html = renderHtml(model, readTemplates());
  const stem = join(options.output, basename(file).replace(/(\.site)?\.(ya?ml|json)$/, ''));
  writeWhole(`${stem}.html`, html);
  writeWhole(`${stem}.study.json`, `${JSON.stringify(study, null, 2)}\n`);
  if (options.pdf) await writePdf(html, model, `${stem}.pdf`, options.browser ?? null);
  const names = options.pdf ? `${stem}.html, ${stem}.pdf` : `${stem}.html`;
  process.stdout.write(`${study.verdict.text.join(' ')}\n${verdictLine(study)} Open: ${names}\n`);
  return exitCodeOf(study, level);
}

async function writePdf(html: string, model: ReportModel, path: string, named: string | null): Promise<void> {
  const browserPath = await findBrowser(named);
  if (browserPath === null) throw new Stop(exitCode.output, noBrowser(named));
  const { printPdf } = await import('../print-pdf.ts');
  const { footer, pageNumber } = model;
  const bytes = await printPdf(html, { browserPath, footer, pageNumber }).catch((error: Error) => {
    throw new Stop(
      exitCode.output,
      `${browserPath} could not print the page (${error.message.split('\n')[0]}). The HTML is written; name another browser with --browser.`,
    );
  });
  writeWhole(path, bytes);
}

function noBrowser(named: string | null): string {
  if (named !== null) return `${named}: no browser can be started from there. The HTML is written; name another path.`;
  return 'No browser to print the PDF with: install Chromium, Chrome or Edge, or name one with --browser. The HTML is written.';
}
