import type { Study, StudyPart } from '../../study/study.ts';
import type { Interval } from '../../units/interval.ts';
import type { ComparedMaterial } from '../comparison.ts';

/** One piece of material of a study. */
export interface Piece {
  /** What it belongs to: tells which piece before is which after. */
  readonly id: string;
  readonly kind: ComparedMaterial['kind'];
  readonly name: string;
  readonly unit: 'each' | 'm';
  /** null: nobody typed the length, or the number. */
  readonly count: Interval | null;
  /** What makes it another piece where both sides say it: a rod of another metal, a tube of another voltage. */
  readonly marks: readonly (string | null)[];
}

const unknownName = 'unknown';
const one: Interval = { low: 1, high: 1 };
/** Laid by the metre. */
const laidWire: readonly string[] = ['buried wire', 'radial', 'strap on rock'];

/** Everything of a site that was bought by the piece or the metre for its grounding; what is not there is left out. */
export function piecesOf(study: Study): readonly Piece[] {
  const there = new Map(study.parts.filter((p) => p.present !== 'no').map((p) => [p.id, p]));
  const each = (p: StudyPart, kind: Piece['kind'], name: string, marks: Piece['marks'] = []): Piece => {
    return { id: p.id, kind, name, unit: 'each', count: times(one, p.count), marks };
  };
  const mounted = [...there.values()].filter((p) => p.section === 'arresters' || p.section === 'bars');
  return [
    ...study.conductors.flatMap((c) => wirePieces(c.id, c.wire, c.lengthM, there)),
    ...(study.electrodes ?? []).flatMap((e) => electrodePieces(e, there)),
    ...study.joints.filter((j) => j.kind !== 'none').map((j) => jointPiece(j.id, j.kind)),
    ...mounted.flatMap((p) => (p.typed.joint === undefined ? [] : [jointPiece(`${p.id}:joint`, p.typed.joint)])),
    ...mounted.map((p) =>
      p.section === 'bars'
        ? each(p, 'bar', p.kind)
        : each(p, 'arrester', p.kind, [p.typed.sparkover ?? null, p.typed.rated_power ?? null]),
    ),
  ];
}

type Parts = ReadonlyMap<string, StudyPart>;

function wirePieces(id: string, wire: string | null, lengthM: Interval | null, there: Parts): readonly Piece[] {
  const part = there.get(id);
  if (part === undefined) return [];
  const isKnown = lengthM !== null && Number.isFinite(lengthM.high ?? Number.NaN);
  const count = isKnown ? times(lengthM, part.count) : null;
  return [{ id, kind: 'conductor', name: wire ?? unknownName, unit: 'm', count, marks: [] }];
}

function electrodePieces(
  { id, kind, members, metal, wire, lengthM }: NonNullable<Study['electrodes']>[number],
  there: Parts,
): readonly Piece[] {
  const part = there.get(id);
  if (part === undefined) return [];
  if (laidWire.includes(kind)) {
    const all = lengthM === null || members === null ? null : times(lengthM, members);
    return wirePieces(id, wire, all, there);
  }
  const count = members === null ? null : times(one, members * part.count);
  return [{ id, kind: 'electrode', name: kind === 'rods' ? 'rod' : kind, unit: 'each', count, marks: [metal] }];
}

function jointPiece(id: string, kind: string | null): Piece {
  return { id, kind: 'joint', name: kind ?? unknownName, unit: 'each', count: one, marks: [] };
}

const times = ({ low, high }: Interval, n: number): Interval => ({ low: low * n, high: high * n });
