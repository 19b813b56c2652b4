import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export interface SiteText {
  /** Path from the top of the repository. */
  readonly file: string;
  readonly text: string;
}

/** Every site file of the examples, the layouts and the format's own two, in the order of their paths. */
export function siteTexts(
  folders: readonly string[] = ['examples', 'tests/cases', 'tests/sites'],
): readonly SiteText[] {
  const files = folders.flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.site.yaml'))
      .map((name) => join(folder, name)),
  );
  return files.sort().map((file) => ({ file, text: readFileSync(file, 'utf8') }));
}
