import { partOfPoint } from '../drawing/item-numbers.ts';
import type { Study } from '../study/study.ts';
import { statementWords } from '../words/statement-words.ts';
import { figure, kindName, type PageContext, partName, sayIn } from './page-context.ts';

const words = statementWords.lines;
type Line = Study['lines'][number];

/** A line that comes through a wall, from the street, or from outside into a building. */
export function isFromOutside(study: Study, line: Line): boolean {
  if (line.crossings.length > 0 || line.stops.includes('street')) return true;
  const wheres = line.stops.map((s) => study.parts.find((p) => p.id === s)?.where ?? null);
  return wheres.includes('outside') && wheres.some((w) => w !== null && w !== 'outside');
}

type Arrester = Study['arresters'][number];

/** Protectors on its conductors; of mains also those on the panels that it feeds, or on a bar joined to one of these. */
export function protectorsOf(study: Study, line: Line): readonly Arrester[] {
  const ids = new Set([...line.conductors.flatMap((c) => c.protectedBy), ...line.crossings.map((c) => c.protector)]);
  const places = line.kind === 'mains' ? joinedTo(study, fedBy(study, line)) : new Set<string>();
  const isOnPanel = (a: Arrester) =>
    a.kind === 'mains protector' && a.lines.length === 0 && a.on !== null && places.has(a.on);
  return study.arresters.filter((a) => ids.has(a.id) || a.lines.includes(line.id) || isOnPanel(a));
}

/** Stops behind the first one, and those of the mains lines that begin at them: a path is typed from the source on. */
function fedBy(study: Study, line: Line): ReadonlySet<string> {
  const fed = new Set(line.stops.slice(1));
  // a set grows while it is walked through
  for (const stop of fed) {
    const onwards = study.lines.filter((l) => l.kind === 'mains' && l.stops[0] === stop);
    for (const next of onwards.flatMap((l) => l.stops.slice(1))) fed.add(next);
  }
  return fed;
}

/** These, and what one conductor joins to them. */
function joinedTo(study: Study, ids: ReadonlySet<string>): ReadonlySet<string> {
  const ends = study.conductors.map((c) => [partOfPoint(c.from), partOfPoint(c.to)] as const);
  return new Set([...ids, ...ends.flatMap(([a, b]) => (ids.has(a) ? [b] : ids.has(b) ? [a] : []))]);
}

/** Whether a live conductor of it has nothing, or perhaps nothing; a protector that is bonded to nothing is none. */
export function hasUnprotected(study: Study, line: Line): boolean {
  const live = line.conductors.filter((c) => c.which === 'core');
  if (live.length === 0) return false;
  const devices = protectorsOf(study, line).filter((a) => a.bonded !== 'no');
  if (line.kind === 'mains' || devices.length === 0) return devices.length === 0;
  return live.some((c) => c.unprotected === null || c.unprotected > 0);
}

/** What protects it, in lines: protectors, conductors without one, where its shield is bonded. */
export function protectionLines(page: PageContext, line: Line): readonly string[] {
  if (line.conductors.length === 0) return [words.noMetal];
  const devices = protectorsOf(page.study, line).map((a) => deviceText(page, a));
  const short = line.kind === 'mains' ? [] : line.conductors.flatMap((c) => withoutText(page, c, devices.length > 0));
  return [...(devices.length === 0 ? [words.nothing] : devices), ...short, ...shieldText(page, line)];
}

function deviceText(page: PageContext, a: Arrester): string {
  const values = { kind: kindName(page, a.kind), name: partName(page, a.id) };
  const text =
    a.on === null ? sayIn(page, words.at, values) : sayIn(page, words.on, { ...values, on: partName(page, a.on) });
  const lead = a.leadM === null ? '' : sayIn(page, words.lead, { lead: figure(page, a.leadM, 'length') });
  const bonded = a.bonded === 'no' ? words.unbonded : a.bonded === 'yes' ? '' : words.perhapsBonded;
  return [text, lead, bonded].filter((t) => t !== '').join(', ');
}

function withoutText(page: PageContext, c: Line['conductors'][number], isPartly: boolean): readonly string[] {
  if (c.which !== 'core' || !isPartly || c.unprotected === 0) return [];
  const n = c.unprotected === null ? '?' : String(c.unprotected);
  return [sayIn(page, words.some, { n, count: String(c.count) })];
}

/** Where it comes in; of a line with no wall known, anywhere. */
function shieldText(page: PageContext, line: Line): readonly string[] {
  if (!line.conductors.some((c) => c.which === 'shield')) return [];
  const atWall = line.crossings.filter((c) => c.which === 'shield').map((c) => c.bondedTo);
  const all =
    line.crossings.length > 0 ? atWall : line.conductors.filter((c) => c.which === 'shield').flatMap((c) => c.bondedAt);
  const bonded = [...new Set(all)].filter((b) => b !== null);
  const list = bonded.map((b) => partName(page, b)).join(', ');
  return [bonded.length === 0 ? words.noShield : sayIn(page, words.shield, { list })];
}

/** How far it is from the protectors, or else from where the shield is bonded, to the nearest electrode. */
export function bondLines(page: PageContext, line: Line): readonly string[] {
  if (line.conductors.length === 0) return ['–'];
  const { study } = page;
  const from = protectorsOf(study, line).map((a) => [a.id, a.on]);
  const shields = line.crossings.filter((c) => c.which === 'shield' && c.bondedTo !== null).map((c) => [c.bondedTo]);
  const starts = from.length > 0 ? from : shields;
  const texts = starts.map((ids) => bondText(page, ids));
  return texts.length === 0 ? [words.noBond] : [...new Set(texts)];
}

function bondText(page: PageContext, ids: readonly (string | null)[]): string {
  const path = page.study.paths.find((p) => p.aim === 'electrode' && ids.includes(p.from));
  if (path === undefined) return words.noBond;
  const length = path.lengthM === null ? words.unknownLength : figure(page, path.lengthM, 'length');
  return sayIn(page, words.bondTo, { length, to: partName(page, path.to) });
}
