import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { besideSite } from '../../src/shell/beside-site.ts';
import { readSite } from '../../src/site/read-site.ts';
import { runStudy } from '../../src/study/run-study.ts';
import type { Study } from '../../src/study/study.ts';

export const root = join(dirname(fileURLToPath(import.meta.url)), '../..');

export interface Asked {
  readonly state?: string;
  readonly detail?: boolean;
  /** Path of the file whose neighbours the text may name. */
  readonly beside?: string;
}

const studies = new Map<string, Study>();

/** The study of the text of a site file; each worked out once. */
export function studyOfText(text: string, asked: Asked = {}): Study {
  const key = JSON.stringify([text, asked]);
  const known = studies.get(key) ?? fresh(text, asked);
  studies.set(key, known);
  return known;
}

function fresh(text: string, { state, detail = false, beside }: Asked): Study {
  const { site, problems } = readSite(text, 'test.site.yaml');
  if (site === null) throw new Error(JSON.stringify(problems.slice(0, 3), null, 1));
  const files = beside === undefined ? {} : besideSite(site, beside);
  const asked = { state: state ?? null, version: 'test', checksum: '', date: null, detail, beside: files };
  const { study, faults } = runStudy(site, asked);
  if (faults.length > 0) throw faults[0]!.error;
  return study;
}

export const textOf = (path: string): string => readFileSync(join(root, path), 'utf8');

/** As it would be read from a file beside a report. */
export const stored = (study: Study): Study => JSON.parse(JSON.stringify(study)) as Study;
