import type { AskedTrouble } from '../bonding/asked-nodes.ts';
import { type FailTrouble, failingNames } from '../bonding/without.ts';
import type { PointRef, Site } from '../site/site.ts';
import { speechOf } from '../study/speech-of.ts';
import { nearName } from '../units/near-name.ts';
import { say } from '../words/say.ts';
import { failTroubleWords, pointTroubleWords } from '../words/way-words.ts';
import { exitCode, Stop } from './exit-code.ts';
import { plain } from './terminal.ts';

/** The end of a command that was asked about a point which the site has not; with the name that was meant, where one is near. */
export function pointTrouble(
  site: Site,
  file: string,
  trouble: AskedTrouble | 'unreadable',
  point: PointRef | string,
  names: readonly string[] = [],
): Stop {
  const speech = speechOf(site);
  const text = typeof point === 'string' ? point : point.text;
  const part = typeof point === 'string' ? null : point.part;
  const support = site.supports.find(({ id }) => id === part);
  const values = { point: text, file, part, heightM: support?.heightM ?? null };
  const said = say(pointTroubleWords[trouble], values, speech);
  if (trouble !== 'no such') return new Stop(exitCode.input, plain(said));
  const near = nearOf(text, part ?? text, names);
  const more = near === null ? pointTroubleWords.names : say(pointTroubleWords.near, { near }, speech);
  return new Stop(exitCode.input, plain(`${said} ${more}`));
}

/** The same for something that was said to fail. */
export function failTrouble(site: Site, file: string, state: string | null, trouble: FailTrouble, part: string): Stop {
  const speech = speechOf(site);
  const said = say(failTroubleWords[trouble], { part, file }, speech);
  if (trouble !== 'no such') return new Stop(exitCode.input, plain(said));
  const near = nearName(part, failingNames(site, state));
  const more = near === null ? pointTroubleWords.names : say(pointTroubleWords.near, { near }, speech);
  return new Stop(exitCode.input, plain(`${said} ${more}`));
}

/** The whole name, or the part's name with what was typed behind it. */
function nearOf(text: string, part: string, names: readonly string[]): string | null {
  const near = names.includes(part) ? null : nearName(part, names);
  return nearName(text, names) ?? (near === null ? null : near + text.slice(part.length));
}
