import { basename } from 'node:path';
import { readSiteBytes, siteFileLimit } from '../site/read-site-bytes.ts';
import type { Site } from '../site/site.ts';
import { sayProblem } from '../words/say-problem.ts';
import { exitCode, Stop } from './exit-code.ts';
import { checksumOf, readBytes } from './files.ts';

export interface LoadedSite {
  readonly site: Site;
  readonly checksum: string;
}

/** Reads a site file; every problem at once when it cannot be used. */
export function loadSite(path: string, state: string | null): LoadedSite {
  return siteOfBytes(readBytes(path, siteFileLimit), path, state);
}

/** The same of bytes that were read already: a pipe can be read only once. */
export function siteOfBytes(bytes: Uint8Array, path: string, state: string | null): LoadedSite {
  const { site, problems } = readSiteBytes(bytes, basename(path));
  if (site === null) {
    const said = problems.map((p) => sayProblem(p, path)).join('\n');
    const count = problems.length === 1 ? '1 problem' : `${problems.length} problems`;
    throw new Stop(exitCode.input, `${said}\n${path}: ${count}; nothing was worked out.`);
  }
  checkState(site, state, path);
  return { site, checksum: checksumOf(bytes) };
}

function checkState(site: Site, state: string | null, path: string): void {
  if (state === null || site.states.some((s) => s.id === state)) return;
  const known = site.states.map((s) => s.id);
  const list = known.length === 0 ? 'The file has no states.' : `Its states are: ${known.join(', ')}.`;
  throw new Stop(exitCode.input, `${path}: no state is called "${state}". ${list}`);
}
