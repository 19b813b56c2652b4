import type { Problem } from '../problem.ts';
import type { PointRef, Question, SourcePlace } from '../site.ts';
import type { SourceText } from './source-text.ts';
import type { Span } from './tree.ts';

export type Values = Readonly<Record<string, string | number>>;

/** Something of the file that has an id: what may be named elsewhere. */
export type IdSection =
  | 'electrodes'
  | 'supports'
  | 'antennas'
  | 'bars'
  | 'arresters'
  | 'equipment'
  | 'lines'
  | 'conductors'
  | 'joints'
  | 'metalwork'
  | 'buildings'
  | 'places'
  | 'guys'
  | 'plugs'
  | 'states'
  | 'readings';

/** A name typed somewhere, to be looked up once every id is known. */
export interface Mention {
  readonly spot: Spot;
  readonly at: Span;
  readonly ref: PointRef;
  /** Sections that it may name. */
  readonly to: readonly IdSection[];
  /** Whether a member, a height or a mark may follow the id. */
  readonly form: 'point' | 'id' | 'corner' | 'joint';
  /** Free names that may stand here too, such as the kinds of joints; for near names only. */
  readonly alsoNear: readonly string[];
}

/** All that reading finds, gathered while the tree is walked. */
export interface Report {
  readonly source: SourceText;
  /** Unit of bare lengths and coordinates; null: the file does not say. */
  bareUnit: 'ft' | 'm' | null;
  readonly problems: Problem[];
  readonly questions: Question[];
  readonly mentions: Mention[];
  readonly plugs: { readonly id: string; readonly spot: Spot; readonly at: Span }[];
  readonly defaults: { readonly path: string; readonly taken: string; readonly key: string }[];
}

/** Where in the file a reader stands. */
export interface Spot {
  readonly path: string;
  readonly report: Report;
}

export function newReport(source: SourceText): Report {
  return { source, bareUnit: null, problems: [], questions: [], mentions: [], plugs: [], defaults: [] };
}

export function below(spot: Spot, name: string | number): Spot {
  return { path: spot.path === '' ? String(name) : `${spot.path}.${name}`, report: spot.report };
}

export function placeOf(spot: Spot, at: Span): SourcePlace {
  return spot.report.source.placeOf(at.start);
}

/** Nobody reads on after so many problems. */
const problemLimit = 1000;

/** Whether so much is wrong already that nothing more is noted. */
export function isFull({ report }: Spot): boolean {
  return report.problems.length >= problemLimit;
}

/** Notes a problem; returns null, so that a reader can end with it. */
export function refuse(spot: Spot, at: Span, key: string, values: Values = {}, near: string | null = null): null {
  if (isFull(spot)) return null;
  spot.report.problems.push({ source: placeOf(spot, at), path: spot.path, key, values, near });
  return null;
}

/** Notes something accepted that wants confirming. */
export function ask(spot: Spot, at: Span, key: string, values: Values = {}): void {
  spot.report.questions.push({ path: spot.path, source: placeOf(spot, at), key, values });
}

/** Notes a default that had to be taken because the file does not say. */
export function assume(report: Report, path: string, key: string, taken: string): void {
  report.defaults.push({ path, taken, key });
}
