import type { Study } from '../study/study.ts';
import { byCodeUnit } from '../units/by-code-unit.ts';
import type { Interval } from '../units/interval.ts';
import { idsIn } from './matching/named-things.ts';
import type { Names } from './matching/names.ts';

export type Conductor = Study['conductors'][number];

export interface CutConductor {
  readonly whole: string;
  /** In order from the end that is `from` of the whole. */
  readonly pieces: readonly string[];
  /** Joints at the ends of the whole, and what they are called on the pieces. */
  readonly joints: readonly (readonly [whole: string, piece: string])[];
}

/** More pieces than anybody cuts one wire into. */
const mostPieces = 6;
/** Lengths are measured anew when a wire is cut: a tenth either way. */
const lengthShare = 0.1;

/** What a conductor may have become: the one that is matched with it, and those that are matched with none. */
export interface Pieces {
  readonly own: Conductor | null;
  readonly free: readonly Conductor[];
}

/**
 * Conductors of one side that stand as several in a row on the other: same wire, same ends, and as long together. The one
 * that kept the name has to be among them. `names` reads the side of `wholes`.
 */
export function cutConductors(
  wholes: readonly Conductor[],
  piecesOf: (whole: Conductor) => Pieces,
  names: Pick<Names, 'toAfter'>,
): readonly CutConductor[] {
  const used = new Set<string>();
  return [...wholes]
    .sort((x, y) => byCodeUnit(x.id, y.id))
    .flatMap((whole) => {
      const { own, free } = piecesOf(whole);
      const asked = [...(own === null ? [] : [own]), ...free].filter((p) => !used.has(p.id) && isSameWire(whole, p));
      const row = rowBetween(names.toAfter(whole.from), names.toAfter(whole.to), asked, own);
      if (row === null || !isAsLong(whole, row)) return [];
      for (const p of row) used.add(p.id);
      return [{ whole: whole.id, pieces: row.map((p) => p.id), joints: endJoints(whole, row, names) }];
    });
}

const isSameWire = (a: Conductor, b: Conductor) => a.wire === b.wire;

interface Row {
  readonly at: string;
  readonly last: Conductor | null;
  readonly row: readonly Conductor[];
}

/** The shortest row of two or more conductors from one point to the other. */
function rowBetween(
  from: string,
  to: string,
  free: readonly Conductor[],
  own: Conductor | null,
): readonly Conductor[] | null {
  let rows: readonly Row[] = [{ at: from, last: null, row: [] }];
  for (let count = 0; count < mostPieces && rows.length > 0; count += 1) {
    rows = rows.flatMap((r) => goOn(r, free));
    const done = rows.find(({ at, row }) => at === to && row.length > 1 && (own === null || row.includes(own)));
    if (done !== undefined) return done.row;
  }
  return null;
}

function goOn({ at, last, row }: Row, free: readonly Conductor[]): readonly Row[] {
  return free.flatMap((next) => {
    if (row.includes(next)) return [];
    const [a, b] = [next.from, next.to];
    const lands = (end: string) => end === at || idsIn(end)[0] === last?.id || idsIn(at)[0] === next.id;
    const ends = [...(lands(a) ? [b] : []), ...(lands(b) ? [a] : [])];
    return ends.map((end) => ({ at: end, last: next, row: [...row, next] }));
  });
}

function isAsLong(whole: Conductor, row: readonly Conductor[]): boolean {
  const lengths = row.map((c) => c.lengthM);
  if (whole.lengthM === null || lengths.some((l) => l === null)) return true;
  const sum = (lengths as readonly Interval[]).reduce((s, l) => s + (l.low + l.high) / 2, 0);
  const was = (whole.lengthM.low + whole.lengthM.high) / 2;
  return !Number.isFinite(was) || Math.abs(sum - was) <= lengthShare * Math.max(sum, was);
}

/** `c1:E1` is `c1b:E1` now; ends that meet one thing are called by their side. */
function endJoints(whole: Conductor, row: readonly Conductor[], names: Pick<Names, 'toAfter'>) {
  const [first, last] = [row[0]!, row.at(-1)!];
  const at = (end: string) => idsIn(end)[0] ?? end;
  const sideOf = (c: Conductor, end: string) => (c.from === end ? 'from' : 'to');
  return [
    { end: whole.from, side: 'from', piece: first },
    { end: whole.to, side: 'to', piece: last },
  ].flatMap(({ end, side, piece }): readonly (readonly [string, string])[] => {
    const there = names.toAfter(end);
    return [
      [`${whole.id}:${side}`, `${piece.id}:${sideOf(piece, there)}`],
      [`${whole.id}:${at(end)}`, `${piece.id}:${at(there)}`],
    ];
  });
}
