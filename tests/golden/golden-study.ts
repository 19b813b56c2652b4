import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import { readSite } from '../../src/site/read-site.ts';
import { runStudy } from '../../src/study/run-study.ts';
import type { Study } from '../../src/study/study.ts';

/** The one site, without its first lines. */
export const oneSite = readFileSync(join(import.meta.dirname, 'one-site.site.yaml'), 'utf8');

/** Lines of a table beside this file, cell by cell. The last column says why, where that is not evident. */
export function tableOf(file: string): readonly (readonly string[])[] {
  const text = readFileSync(join(import.meta.dirname, file), 'utf8').trimEnd();
  return text.split('\n').map((line) => line.split('\t'));
}

/** The study of the site with its first lines as given: region and supply. */
export function studyOf(head: string, body = oneSite): Study {
  const text = `site: {name: One site, ${head}, units: m, service: panel, without: [telephone, network, cable tv]}\n${body}`;
  const { site, problems } = readSite(text, 'one.site.yaml');
  expect(problems).toEqual([]);
  const { study, faults } = runStudy(site!, { state: null, version: '0', checksum: '', date: null });
  expect(faults).toEqual([]);
  return study;
}
