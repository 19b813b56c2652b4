import { ask, below } from '../reading/report.ts';
import type { Conductor, Site } from '../site.ts';
import { type BuriedPiece, buriedPieces } from './buried-pieces.ts';
import type { Checked } from './checked.ts';
import { piecesMeet } from './pieces-meet.ts';

/** A file with more of them is not one of a station; nobody reads on. */
const mostAsked = 50;
/** Pairs beside each other that are looked at; a station has some thousand. */
const mostPairs = 5_000_000;

/** Asks about two bare things in the soil that cross at one depth while nothing that was typed ties them. */
export function askCrossings(checked: Checked): void {
  const { site } = checked;
  const ties = tiesOf(site);
  const asked = new Set<string>();
  for (const [a, b] of crossings(buriedPieces(site))) {
    const [earlier, later] = isBefore(a, b) ? [a, b] : [b, a];
    const key = JSON.stringify([earlier.id, later.id]);
    if (asked.has(key) || ties.tied(a.id, b.id)) continue;
    if (asked.size === mostAsked) return;
    asked.add(key);
    askAbout(checked, later, earlier.id);
  }
}

function isBefore(a: BuriedPiece, b: BuriedPiece): boolean {
  return (a.source.line - b.source.line || a.source.column - b.source.column || (a.id < b.id ? -1 : 1)) < 0;
}

function askAbout({ typed }: Checked, { id, section }: BuriedPiece, other: string): void {
  const part = typed.parts[section].find((p) => p.id === id);
  if (part === undefined) return;
  const { spot, at } = part;
  const fieldAt: ReadonlyMap<string, typeof at> = part.fieldAt;
  const field = fieldAt.has('route') ? 'route' : 'at';
  ask(below(spot, field), fieldAt.get(field) ?? at, 'crossing-untied', { other });
}

/** Pairs of pieces of different parts that meet; from west to east. */
function* crossings(pieces: readonly BuriedPiece[]): Generator<readonly [BuriedPiece, BuriedPiece]> {
  const sorted = [...pieces].sort((a, b) => west(a) - west(b) || (a.id < b.id ? -1 : 1));
  let looked = 0;
  for (const [i, a] of sorted.entries()) {
    const end = Math.max(a.from[0], a.to[0]) + a.radiusM + widestM;
    for (let j = i + 1; j < sorted.length && west(sorted[j]!) <= end; j++) {
      looked += 1;
      if (looked > mostPairs) return;
      const b = sorted[j]!;
      if (a.id !== b.id && !isOnOneLine(a, b) && piecesMeet(a, b)) yield [a, b];
    }
  }
}
/** No radius of a wire or rod is larger, metres. */
const widestM = 0.5;

function west({ from, to }: BuriedPiece): number {
  return Math.min(from[0], to[0]);
}

/** Two conductors side by side are asked about elsewhere. */
function isOnOneLine(a: BuriedPiece, b: BuriedPiece): boolean {
  if (a.section !== 'conductors' || b.section !== 'conductors') return false;
  const [ax, ay, bx, by] = [a.to[0] - a.from[0], a.to[1] - a.from[1], b.to[0] - b.from[0], b.to[1] - b.from[1]];
  return Math.abs(ax * by - ay * bx) <= 1e-6 * Math.hypot(ax, ay) * Math.hypot(bx, by);
}

interface Ties {
  readonly tied: (a: string, b: string) => boolean;
}

/** Two are tied where one lands on the other, both land on one part or clamp, or one conductor lands on both. */
function tiesOf({ conductors }: Site): Ties {
  const landings = new Map(conductors.map((c) => [c.id, landingsOf(c)]));
  const of = (id: string): ReadonlySet<string> => landings.get(id) ?? new Set([id]);
  const joined = new Set<string>();
  const key = (a: string, b: string) => JSON.stringify(a < b ? [a, b] : [b, a]);
  for (const set of landings.values()) for (const a of set) for (const b of set) if (a < b) joined.add(key(a, b));
  const tied = (a: string, b: string) => joined.has(key(a, b)) || [...of(a)].some((id) => of(b).has(id));
  return { tied };
}

function landingsOf({ id, from, to, passes, fromJoint, toJoint, splices }: Conductor): ReadonlySet<string> {
  const points = [from, to, ...passes.map((p) => p.at)].flatMap((p) => p.part ?? []);
  const joints = [fromJoint, toJoint, ...splices, ...passes.map((p) => p.joint)].flatMap((j) => j.named ?? []);
  return new Set([id, ...points, ...joints]);
}
