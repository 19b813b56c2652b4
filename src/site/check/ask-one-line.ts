import { ask, below } from '../reading/report.ts';
import type { TypedPart } from '../reading/typed-site.ts';
import type { Conductor, Position } from '../site.ts';
import type { Checked } from './checked.ts';

/** One straight piece of a route, as the part of its line between two marks. */
interface Piece {
  readonly index: number;
  readonly fromM: number;
  readonly toM: number;
}

/** Pieces that share less than this only meet. */
const overlapM = 0.01;

/** Asks about two wires whose routes lie on one line, neither of them insulated and nothing typed of how far they are apart. */
export function askOneLine({ typed, site }: Checked): void {
  const lines = new Map<string, Piece[]>();
  site.conductors.forEach((conductor, index) => {
    if (conductor.wire?.insulated === 'yes' || conductor.along !== null) return;
    for (const [key, piece] of piecesOf(conductor, index)) lines.set(key, [...(lines.get(key) ?? []), piece]);
  });
  const asked = new Set<string>();
  for (const pieces of lines.values()) {
    for (const [a, b] of overlapping(pieces)) {
      const key = `${a} ${b}`;
      if (asked.has(key)) continue;
      asked.add(key);
      askAbout(typed.parts.conductors[b]!, site.conductors[a]!.id);
    }
  }
}

function askAbout({ spot, fieldAt, at }: TypedPart<'conductors'>, other: string): void {
  ask(below(spot, 'route'), fieldAt.get('route') ?? at, 'two-bare-on-one-line', { other });
}

function piecesOf({ route }: Conductor, index: number): readonly (readonly [string, Piece])[] {
  const points = route ?? [];
  return points.slice(1).flatMap(({ position: to }, i) => {
    const from = points[i]!.position;
    return from === null || to === null ? [] : pieceOf(from, to, index);
  });
}

/**
 * The line through two points, as a text that is the same for every pair of points on it: its direction, and the point of
 * it that is nearest to the origin, both rounded to a millimetre or a thousandth.
 */
function pieceOf(from: Position, to: Position, index: number): readonly (readonly [string, Piece])[] {
  const step = minus(to, from);
  const length = Math.hypot(...step);
  if (length < overlapM) return [];
  const first = step.find((s) => Math.abs(s) > length * 1e-6) ?? 1;
  const direction = times(step, Math.sign(first) / length);
  const along = [dot(from, direction), dot(to, direction)];
  const foot = minus(from, times(direction, along[0]!));
  const key = [...direction, ...foot].map(rounded).join(' ');
  return [[key, { index, fromM: Math.min(...along), toM: Math.max(...along) }]];
}

/** Shifted a little, so that figures in whole or half units never lie where rounding turns over. */
function rounded(figure: number): number {
  return Math.round(figure * 1000 + 0.1234);
}

/** Pairs of conductors, the earlier one first, of which two pieces of one line overlap. */
function overlapping(pieces: readonly Piece[]): readonly (readonly [number, number])[] {
  const sorted = [...pieces].sort((a, b) => a.fromM - b.fromM || a.index - b.index);
  const pairs: [number, number][] = [];
  let last = sorted[0];
  for (const piece of sorted.slice(1)) {
    const isOther = last !== undefined && last.index !== piece.index;
    if (isOther && Math.min(last!.toM, piece.toM) - piece.fromM > overlapM) {
      pairs.push([Math.min(last!.index, piece.index), Math.max(last!.index, piece.index)]);
    }
    if (last === undefined || piece.toM > last.toM) last = piece;
  }
  return pairs;
}

function minus(a: Position, b: Position): Position {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function times(a: Position, k: number): Position {
  return [a[0] * k, a[1] * k, a[2] * k];
}

function dot(a: Position, b: Position): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
