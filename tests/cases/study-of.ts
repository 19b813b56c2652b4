import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readSite } from '../../src/site/read-site.ts';
import { runStudy } from '../../src/study/run-study.ts';
import type { Study } from '../../src/study/study.ts';

const here = dirname(fileURLToPath(import.meta.url));
const done = new Map<string, Study>();

/** The study of a layout's file in a state; each worked out once. */
export function studyOf(file: string, state: string | null): Study {
  const key = JSON.stringify([file, state]);
  const before = done.get(key);
  if (before !== undefined) return before;
  const { site, problems } = readSite(readFileSync(join(here, file), 'utf8'), file);
  if (site === null) throw new Error(`${file} cannot be read: ${JSON.stringify(problems, null, 1)}`);
  const { study, faults } = runStudy(site, { state, version: 'test', checksum: '', date: null });
  if (faults.length > 0) throw faults[0]!.error;
  done.set(key, study);
  return study;
}
