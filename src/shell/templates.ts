import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type ReportTemplates, templateNames } from '../report/render-html.ts';

/** The page's templates, from the folder that lies beside `dist` (and beside `src`). */
export function readTemplates(): ReportTemplates {
  const folder = join(packageRoot(), 'templates');
  return Object.fromEntries(
    templateNames.map((name) => [name, readFileSync(join(folder, name), 'utf8')]),
  ) as ReportTemplates;
}

function packageRoot(): string {
  const here = dirname(fileURLToPath(import.meta.url));
  return here.endsWith('shell') ? join(here, '..', '..') : join(here, '..');
}
