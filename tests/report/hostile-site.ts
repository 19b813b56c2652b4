import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { readSiteBytes } from '../../src/site/read-site-bytes.ts';
import type { Site } from '../../src/site/site.ts';
import { runStudy } from '../../src/study/run-study.ts';
import type { Study } from '../../src/study/study.ts';
import { hostileText, type Json, mapTexts } from './hostile-text.ts';

const file = new URL('../../examples/marl-hill/marl-hill.site.yaml', import.meta.url);

/** Marl Hill with the texts that it leaves out, so that every field that takes text has one. */
function fullSite(): Json {
  const site = parse(readFileSync(file, 'utf8')) as Record<string, Record<string, Record<string, Json>>>;
  const head = { address: 'a', permit: 'p', claims: 'c', code: [{ document: 'd', edition: 'e', amendments: 'm' }] };
  const agreed = [{ rule: 'core-static-drain', at: 'line2', reason: 'r', by: 'b', date: '2026-05-02' }];
  Object.assign(site.site!, head, { agreed });
  for (const section of [
    'electrodes',
    'supports',
    'antennas',
    'bars',
    'arresters',
    'equipment',
    'lines',
    'conductors',
  ]) {
    for (const part of Object.values(site[section]!)) Object.assign(part, { note: 'n', photo: ['p.jpg'], owner: 'o' });
  }
  return site as unknown as Json;
}

/** JSON is YAML; characters that act are written as escapes, since a file may hold them so. */
function bytesOf(site: Json): Uint8Array {
  const text = JSON.stringify(site, null, 1).replace(
    /[^\n -~]/g,
    (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  return new TextEncoder().encode(text);
}

export interface HostileSite {
  readonly study: Study;
  /** Fields that took the text, as the file spells them. */
  readonly took: readonly string[];
}

/** The study of a site with hostile text at the end of every text that may be anything: the reader refuses the others. */
export function hostileSite(): HostileSite {
  const refused = new Set<string>();
  const isRefused = (path: string) => [...refused].some((r) => path === r || path.startsWith(`${r}.`));
  for (let attempt = 0; attempt < 10; attempt++) {
    const took: string[] = [];
    const tried = mapTexts(fullSite(), (text, keys) => {
      const path = pathOf(keys);
      if (isRefused(path)) return text;
      took.push(path);
      return text + hostileText;
    });
    const { site, problems } = readSiteBytes(bytesOf(tried), `hostile${hostileText}.site.yaml`);
    if (site !== null) return { study: studyOf(site), took };
    for (const { path } of problems) refused.add(path);
  }
  throw new Error('the reader still refuses something that it has not named');
}

/** As the reader names fields: places in a list count from 1. */
function pathOf(keys: readonly string[]): string {
  return keys.map((k) => (/^\d+$/.test(k) ? String(Number(k) + 1) : k)).join('.');
}

function studyOf(site: Site): Study {
  const { study, faults } = runStudy(site, { state: null, version: '0', checksum: '0', date: null });
  if (faults.length > 0) throw faults[0]!.error;
  return study;
}
