import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export interface SiteText {
  /** Path from the top of the repository. */
  readonly file: string;
  readonly text: string;
}

/** Every site file that can be read: the examples, the layouts and the format's own two, in the order of their paths. */
export function siteTexts(): readonly SiteText[] {
  const files = [...filesIn('examples', true), ...filesIn('tests/cases', false), ...filesIn('tests/sites', false)];
  return files.sort().map((file) => ({ file, text: readFileSync(file, 'utf8') }));
}

function filesIn(folder: string, recursive: boolean): readonly string[] {
  const names = readdirSync(folder, { recursive, encoding: 'utf8' });
  return names.filter((name) => name.endsWith('.site.yaml')).map((name) => join(folder, name));
}
