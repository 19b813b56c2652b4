import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { besideSite } from '../../src/shell/beside-site.ts';
import { readSite } from '../../src/site/read-site.ts';
import type { Site } from '../../src/site/site.ts';
import { runStudy } from '../../src/study/run-study.ts';
import type { Study } from '../../src/study/study.ts';

const here = dirname(fileURLToPath(import.meta.url));
const sites = new Map<string, Site>();
const studies = new Map<string, Study>();

/** The site of a layout's file; each read once. */
export function siteOf(file: string): Site {
  const before = sites.get(file);
  if (before !== undefined) return before;
  const { site, problems } = readSite(readFileSync(join(here, file), 'utf8'), file);
  if (site === null) throw new Error(`${file} cannot be read: ${JSON.stringify(problems, null, 1)}`);
  sites.set(file, site);
  return site;
}

/** The study of a layout's file in a state; each worked out once. */
export function studyOf(file: string, state: string | null): Study {
  const key = JSON.stringify([file, state]);
  const before = studies.get(key);
  if (before !== undefined) return before;
  const site = siteOf(file);
  const beside = besideSite(site, join(here, file));
  const { study, faults } = runStudy(site, { state, version: 'test', checksum: '', date: null, beside });
  if (faults.length > 0) throw faults[0]!.error;
  studies.set(key, study);
  return study;
}
