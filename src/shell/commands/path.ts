import { type Between, wayBetween } from '../../bonding/way-between.ts';
import { type DcBetween, dcBetween } from '../../network/dc-between.ts';
import { pointOfText } from '../../site/point-text.ts';
import type { PointRef, Site } from '../../site/site.ts';
import { type ExitCode, exitCode } from '../exit-code.ts';
import { loadSite } from '../load-site.ts';
import { pointTrouble } from '../point-trouble.ts';
import { print } from '../print.ts';
import { sayPath } from '../say-path.ts';
import { terminalOf } from '../terminal.ts';

export interface PathOptions {
  readonly state?: string;
  readonly json?: boolean;
}

/** The best way through permanent metal between two points, or that there is none. */
export function path(file: string, from: string, to: string, options: PathOptions): ExitCode {
  const state = options.state ?? null;
  const { site } = loadSite(file, state);
  const [a, b] = [from, to].map((text) => pointIn(site, file, text)) as [PointRef, PointRef];
  const answer = wayBetween(site, state, a, b);
  if (!answer.ok) throw pointTrouble(site, file, answer.trouble, answer.point, answer.names);
  const { between } = answer;
  const dc = dcBetween(site, state, a, b);
  const page = () => sayPath(site, between, dc, file, state, terminalOf(process.stdout, process.env.NO_COLOR));
  print(options.json ? json(between, dc, state) : page(), undefined);
  return exitCode.fine;
}

function pointIn(site: Site, file: string, text: string): PointRef {
  const point = pointOfText(text);
  if (point === null) throw pointTrouble(site, file, 'unreadable', text);
  return point;
}

/** Infinity, where nothing bounds a resistance, is null in JSON. */
function json(between: Between, dc: DcBetween | null, state: string | null): string {
  return `${JSON.stringify({ state: state ?? 'as typed', ...between, dc }, null, 2)}\n`;
}
