import { failingId, withLost, without as withoutParts } from '../../bonding/without.ts';
import { whatFails } from '../../compare/what-fails.ts';
import type { Site } from '../../site/site.ts';
import { speechOf } from '../../study/speech-of.ts';
import { type ExitCode, exitCode } from '../exit-code.ts';
import { loadSite } from '../load-site.ts';
import { failTrouble } from '../point-trouble.ts';
import { print } from '../print.ts';
import { type Failure, sayWithout } from '../say-without.ts';
import { studyOfSite } from '../study-of-file.ts';
import { terminalOf } from '../terminal.ts';

export interface WithoutOptions {
  readonly state?: string;
  readonly json?: boolean;
}

/** What is lost and what changes when these parts, joints or conductors fail at once. */
export function without(file: string, parts: readonly string[], options: WithoutOptions): ExitCode {
  const state = options.state ?? null;
  const { site, checksum } = loadSite(file, state);
  const lost = [...new Set(parts.map((text) => failing(site, file, state, text)))];
  const failed = withLost(site, state, lost);
  const before = studyOfSite(site, checksum, state === null ? {} : { state });
  const after = studyOfSite(failed.site, checksum, { state: failed.state });
  const failure: Failure = {
    lost,
    bonding: withoutParts(site, state, lost),
    fails: whatFails(before, after, lost),
    before,
    after,
  };
  const page = () => sayWithout(failure, file, speechOf(site), terminalOf(process.stdout, process.env.NO_COLOR));
  print(options.json ? json(failure) : page(), undefined);
  return exitCode.fine;
}

function failing(site: Site, file: string, state: string | null, text: string): string {
  const found = failingId(site, state, text);
  if (typeof found === 'string') throw failTrouble(site, file, state, found, text);
  return found.id;
}

function json({ lost, bonding, fails, before, after }: Failure): string {
  const resistanceOhm = { before: before.earth.resistanceOhm, after: after.earth.resistanceOhm };
  return `${JSON.stringify({ state: before.state.id, lost, ...bonding, resistanceOhm, ...fails }, null, 2)}\n`;
}
