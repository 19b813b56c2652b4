import { basename, dirname, join } from 'node:path';
import { renderHtml } from '../../report/render-html.ts';
import { reportModel } from '../../report/report-model.ts';
import type { ExitCode } from '../exit-code.ts';
import { exitCodeOf, readExitLevel } from '../exit-level.ts';
import { writeWhole } from '../files.ts';
import { readPhotos } from '../photos.ts';
import { verdictLine } from '../say-check.ts';
import { type StudyAsk, studyOfFile } from '../study-of-file.ts';
import { readTemplates } from '../templates.ts';
import { writePdf } from '../write-pdf.ts';

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
