import { applyState } from '../bonding/apply-state.ts';
import { type Asked, askedNodes, namesIn } from '../bonding/asked-nodes.ts';
import { buildGraph } from '../bonding/build-graph.ts';
import { siteIndex } from '../bonding/site-index.ts';
import { pointOfText } from '../site/point-text.ts';
import type { Site } from '../site/site.ts';
import { speechOf } from '../study/speech-of.ts';
import type { StrikeStudyAsk } from '../study/strike-study.ts';
import { strokePeakLimitsA } from '../surge/stroke.ts';
import { nearName } from '../units/near-name.ts';
import { readQuantity } from '../units/quantity.ts';
import { say, type Values } from '../words/say.ts';
import { strikeOptionWords as words } from '../words/strike-command-words.ts';
import { exitCode, Stop } from './exit-code.ts';
import { pointTrouble } from './point-trouble.ts';
import { readField, readNearby } from './read-nearby.ts';
import { remoteEarth } from './say-strike-differences.ts';
import { plain } from './terminal.ts';

/** What was typed behind the command. */
export interface StrikeTyped {
  readonly at?: string;
  readonly current?: string;
  readonly wave?: string;
  readonly nearby?: string;
  readonly ionisation?: string;
  readonly between?: readonly string[];
}

/** What the study of a strike is asked; null: what is usual. */
export interface StrikeAsk {
  readonly at: string | null;
  readonly currentA: number | null;
  readonly wave: string | null;
  readonly nearby: NonNullable<StrikeStudyAsk['nearby']> | null;
  readonly ionisationVPerM: number | null;
  readonly between: readonly (readonly [string, string])[];
}

type Read<T> = { readonly is: T } | { readonly problems: readonly string[] };

/** Reads what was typed behind the command. All that is wrong with it is said at once (Stop, the input cannot be used). */
export function readStrikeAsked(site: Site, file: string, state: string | null, typed: StrikeTyped): StrikeAsk {
  const point = pointReader(site, file, state);
  const at = ifTyped(typed.at, (text) => readStruck(site, text, (name) => point(name, struck)));
  const currentA = ifTyped(typed.current, (text) => readPeak(site, text));
  const wave = ifTyped(typed.wave, (text) => readWave(site, text));
  const nearby = ifTyped(typed.nearby, (text) => readNearby(site, text));
  const field = ifTyped(typed.ionisation, (text) => readField(site, text));
  const both = typed.at !== undefined && typed.nearby !== undefined ? [{ problems: [words.nearby.both] }] : [];
  const pairs = (typed.between ?? []).map((text) => readPair(site, text, (name) => point(name, inPair)));
  const problems = [...both, at, currentA, wave, nearby, field, ...pairs].flatMap((read) =>
    'problems' in read ? read.problems : [],
  );
  if (problems.length > 0) throw new Stop(exitCode.input, plain([...new Set(problems)].join('\n')));
  const between = pairs.flatMap((read) => ('is' in read ? [read.is] : []));
  const beside = { nearby: got(nearby), ionisationVPerM: got(field) };
  return { at: got(at), currentA: got(currentA), wave: got(wave), ...beside, between };
}

/** A line by its name alone, or as `street phone`: a surge comes in along it. */
function readStruck(site: Site, text: string, point: (text: string) => Read<string>): Read<string> {
  const named = text.trim().replace(/^street[\s:]+/i, '');
  return site.lines.some((l) => l.id === named && l.present !== 'no') ? { is: named } : point(text);
}

function ifTyped<T>(text: string | undefined, read: (text: string) => Read<T>): Read<T | null> {
  return text === undefined ? { is: null } : read(text);
}

function got<T>(read: Read<T>): T {
  if ('is' in read) return read.is;
  throw new RangeError('a problem was not said');
}

/** Lightning strikes what is of metal; a cable by itself has none that counts as such. Of a pair the study says what it can. */
const struck: readonly Asked['is'][] = ['found'];
const inPair: readonly Asked['is'][] = ['found', 'no metal'];

type PointReader = (text: string, taken: readonly Asked['is'][]) => Read<string>;

/** Whether a point is there can be told from the file; whether a strike can be worked out is for the study to say. */
function pointReader(site: Site, file: string, stateId: string | null): PointReader {
  const state = applyState(site, stateId);
  const index = siteIndex(state.site);
  return (text, taken) => {
    const point = pointOfText(text);
    if (point === null) return { problems: [pointTrouble(site, file, 'unreadable', text).message] };
    const metal = buildGraph(index, state.openings, [point]);
    const { is } = askedNodes(metal, point);
    if (is === 'found' || taken.includes(is)) return { is: point.text };
    return { problems: [pointTrouble(site, file, is, point, is === 'no such' ? namesIn(metal) : []).message] };
  };
}

function readPeak(site: Site, text: string): Read<number> {
  const problem = (template: string, values: Values) => ({ problems: [say(template, values, speechOf(site))] });
  const read = readQuantity(text, 'current', { positive: true });
  if (!read.ok) return problem(words.current[read.code], read.values);
  const { low, high } = read.interval;
  if (low !== high) return problem(words.current.range, { text });
  const { low: leastA, high: mostA } = strokePeakLimitsA;
  if (low < leastA || low > mostA) return problem(words.current.size, { text, leastA, mostA });
  return { is: low };
}

const waves: Readonly<Record<string, string>> = words.wave.each;

function readWave(site: Site, text: string): Read<string> {
  const typed = text.replace(/\s|µs|us/g, '').replace(/[x×]/, '/');
  if (Object.hasOwn(waves, typed)) return { is: typed };
  const near = nearName(typed, Object.keys(waves));
  const meant = near === null ? '.' : say(words.wave.near, { near }, speechOf(site));
  const values = { text, near: meant, list: Object.values(waves) };
  return { problems: [say(words.wave.unknown, values, speechOf(site))] };
}

function readPair(site: Site, text: string, point: (text: string) => Read<string>): Read<readonly [string, string]> {
  const problem = (template: string) => ({ problems: [say(template, { text }, speechOf(site))] });
  const [a, b, more] = text.split(',').map((name) => name.trim());
  if (!a || !b || more !== undefined) return problem(words.between.shape);
  if (a === b) return problem(words.between.same);
  const named = (name: string) => (/^remote (?:earth|ground)$/i.test(name) ? { is: remoteEarth } : point(name));
  const [one, other] = [named(a), named(b)];
  if ('is' in one && 'is' in other) return { is: [one.is, other.is] };
  return { problems: [one, other].flatMap((read) => ('problems' in read ? read.problems : [])) };
}
