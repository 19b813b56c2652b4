import type { Site } from '../../site/site.ts';
import { speechOf } from '../../study/speech-of.ts';
import type { StudyStrike } from '../../study/study-strike.ts';
import { say } from '../../words/say.ts';
import { strikeCommandWords as words } from '../../words/strike-command-words.ts';
import { type ExitCode, exitCode, Stop } from '../exit-code.ts';
import { loadSite } from '../load-site.ts';
import { print } from '../print.ts';
import { readStrikeAsked, type StrikeAsk, type StrikeTyped } from '../read-strike-asked.ts';
import { sayStrike } from '../say-strike.ts';
import { plain, terminalOf } from '../terminal.ts';
import { version } from '../version.ts';

export interface StrikeOptions extends StrikeTyped {
  readonly state?: string;
  readonly json?: boolean;
  readonly output?: string;
}

/** Works a strike out. */
export type StrikeStudy = (
  site: Site,
  ask: StrikeAsk & { readonly state: string | null; readonly version: string },
) => StudyStrike;

/** One strike: volts between things, the way of the current, what it does to joints and wires, what one failure changes. */
export function strike(file: string, options: StrikeOptions, strikeStudy: StrikeStudy): ExitCode {
  const state = options.state ?? null;
  const { site } = loadSite(file, state);
  const asked = readStrikeAsked(site, file, state, options);
  const worked = strikeStudy(site, { ...asked, state, version });
  if (options.json) {
    print(json(site, state, worked), options.output);
    return worked.refused === null ? exitCode.fine : exitCode.input;
  }
  if (worked.refused !== null) throw refusal(site, worked, worked.refused);
  const terminal = terminalOf(process.stdout, process.env.NO_COLOR);
  print(sayStrike(worked, site, { file, state, between: asked.between }, terminal), options.output);
  return exitCode.fine;
}

function json(site: Site, state: string | null, worked: StudyStrike): string {
  return `${JSON.stringify({ site: site.header.name, state: state ?? 'as typed', strike: worked }, null, 2)}\n`;
}

function refusal(site: Site, { at }: StudyStrike, why: string): Stop {
  const template = at === '' ? words.refusedAnywhere : words.refused;
  return new Stop(exitCode.input, plain(say(template, { at, why }, speechOf(site))));
}
