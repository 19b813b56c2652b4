import type { Study } from '../../study/study.ts';
import { byCodeUnit } from '../../units/by-code-unit.ts';
import type { Interval } from '../../units/interval.ts';
import type { ComparedMaterial, ComparedParts, Comparison } from '../comparison.ts';
import type { Names } from '../matching/names.ts';
import { isSameRange } from '../same-figure.ts';
import { type Piece, piecesOf } from './pieces-of.ts';

const unknownName = 'unknown';

/**
 * Material that is on the site after and was not before, and the other way round: new pieces, what a changed piece was
 * replaced by, and metres that a wire is longer. A piece is another one where its wire, kind, metal or voltage is typed on
 * both sides and differs; what was only found out adds nothing. A rod driven deeper adds no rod.
 */
export function compareMaterials(
  before: Study,
  after: Study,
  parts: ComparedParts,
  names: Names,
): Comparison['materials'] {
  const wholeOf = new Map(parts.joined.flatMap((j) => j.before.map((id) => [id, j.after] as const)));
  const pieceOf = new Map(parts.splits.flatMap((s) => s.after.map((id) => [id, names.toAfter(s.before)] as const)));
  const was = summed(piecesOf(before), (id) => wholeOf.get(id) ?? names.toAfter(id));
  const is = summed(piecesOf(after), (id) => pieceOf.get(id) ?? id);
  const keys = [...new Set([...was.keys(), ...is.keys()])];
  const changes = keys.map((key) => ({ before: was.get(key) ?? null, after: is.get(key) ?? null }));
  return {
    added: totals(changes.map(({ before: b, after: a }) => more(b, a))),
    removed: totals(changes.map(({ before: b, after: a }) => more(a, b))),
  };
}

/** Pieces by what they belong to; those of a wire that was cut are one. */
function summed(pieces: readonly Piece[], idOf: (id: string) => string): ReadonlyMap<string, Piece> {
  const all = new Map<string, Piece>();
  for (const piece of pieces) {
    const key = `${piece.kind === 'joint' ? 'joint' : 'part'} ${idOf(piece.id)}`;
    const known = all.get(key);
    all.set(key, known === undefined ? piece : { ...known, count: sum(known.count, piece.count) });
  }
  return all;
}

/** What `is` has more than `was`: all of it where it is another piece. */
function more(was: Piece | null, is: Piece | null): Piece | null {
  if (is === null) return null;
  if (was === null || isOther(was, is)) return is;
  if (was.count === null || is.count === null || isSameRange(was.count, is.count)) return null;
  if (middle(is.count) <= middle(was.count)) return null;
  const count = { low: Math.max(0, is.count.low - was.count.high), high: is.count.high - was.count.low };
  return { ...is, count };
}

function isOther(was: Piece, is: Piece): boolean {
  const isNamed = was.name !== unknownName && is.name !== unknownName;
  if (isNamed && was.name !== is.name) return true;
  return was.marks.some((mark, i) => mark !== null && (is.marks[i] ?? null) !== null && mark !== is.marks[i]);
}

/** By kind, then name. */
function totals(pieces: readonly (Piece | null)[]): readonly ComparedMaterial[] {
  const all = new Map<string, ComparedMaterial>();
  for (const piece of pieces) {
    if (piece === null) continue;
    const { kind, name, unit, count } = piece;
    const key = JSON.stringify([kind, name, unit]);
    const known = all.get(key) ?? { kind, name, unit, count: { low: 0, high: 0 }, unknown: 0 };
    const unknown = known.unknown + (count === null ? 1 : 0);
    all.set(key, { ...known, count: sum(known.count, count ?? { low: 0, high: 0 })!, unknown });
  }
  return [...all].sort(([x], [y]) => byCodeUnit(x, y)).map(([, material]) => material);
}

function sum(a: Interval | null, b: Interval | null): Interval | null {
  return a === null || b === null ? null : { low: a.low + b.low, high: a.high + b.high };
}

const middle = ({ low, high }: Interval) => (low + high) / 2;
