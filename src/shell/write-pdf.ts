import type { ReportModel } from '../report/report-model.ts';
import { exitCode, Stop } from './exit-code.ts';
import { writeWhole } from './files.ts';
import { findBrowser } from './find-browser.ts';

/**
 * Prints a page whose HTML is written already; `named` is a browser that somebody asked for, `pages` as many as it should fit
 * on. No browser, no PDF: that is said.
 */
export async function writePdf(
  html: string,
  { footer, pageNumber }: Pick<ReportModel, 'footer' | 'pageNumber'>,
  path: string,
  named: string | null,
  pages: number | null = null,
): Promise<void> {
  const browserPath = await findBrowser(named);
  if (browserPath === null) throw new Stop(exitCode.output, noBrowser(named));
  const { printPdf } = await import('./print-pdf.ts');
  const bytes = await printPdf(html, { browserPath, footer, pageNumber, pages }).catch((error: Error) => {
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
