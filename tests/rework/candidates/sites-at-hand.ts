import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { besideSite } from '../../../src/shell/beside-site.ts';
import { readSite } from '../../../src/site/read-site.ts';
import { runStudy, type StudyOptions } from '../../../src/study/run-study.ts';
import type { Study } from '../../../src/study/study.ts';

const root = join(import.meta.dirname, '..', '..', '..');

/** A site file with its study as typed. */
export interface SiteAtHand {
  /** Path from the root of the project. */
  readonly file: string;
  readonly text: string;
  readonly study: Study;
  readonly options: StudyOptions;
}

/** Every example, and every layout as it was found: what was typed of it after the work is left out. */
export function filesAtHand(): readonly string[] {
  const examples = sitesUnder(join(root, 'examples'));
  const layouts = sitesUnder(join(root, 'tests', 'cases')).filter((f) => /case-\d+\.site\.yaml$/.test(f));
  return [...examples, ...layouts].map((f) => relative(root, f)).sort();
}

function sitesUnder(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((f) => f.endsWith('.site.yaml'))
    .map((f) => join(folder, f));
}

export function siteAtHand(file: string): SiteAtHand {
  const path = join(root, file);
  const text = readFileSync(path, 'utf8');
  const { site, problems } = readSite(text, file);
  if (site === null) throw new Error(`${file} cannot be read: ${JSON.stringify(problems)}`);
  const options = { state: null, version: 'test', checksum: '', date: null, beside: besideSite(site, path) };
  const { study, faults } = runStudy(site, options);
  if (faults.length > 0) throw faults[0]!.error;
  return { file, text, study, options };
}
