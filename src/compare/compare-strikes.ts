import type { Study } from '../study/study.ts';
import type { StudyStrike } from '../study/study-strike.ts';
import { bothSides } from './both-sides.ts';
import type { ComparedStrike, CurrentRow, DifferenceRow, Sides } from './comparison.ts';
import type { Names } from './matching/names.ts';
import { pairRows } from './pair-rows.ts';
import { isSameBounded, isSameNumber } from './same-figure.ts';
import { standingOf } from './standing.ts';

/** Time stepping and modes in another order differ by less than this share. */
const strikeShare = 1e-4;

type Difference = StudyStrike['differences'][number];

/** The default strike of both sides; null where neither study holds one. */
export function compareStrikes(before: Study, after: Study, names: Names): ComparedStrike | null {
  const strikes = { before: before.strikes[0] ?? null, after: after.strikes[0] ?? null };
  if (strikes.before === null && strikes.after === null) return null;
  const of = <T>(read: (s: StudyStrike) => T) => bothSides(strikes, read);
  const at = of((s) => s.at);
  const [peakA, wave] = [of((s) => s.stroke?.peakA ?? null), of((s) => s.stroke?.wave ?? null)];
  const isSamePoint = at.before !== null && at.after !== null && names.toAfter(at.before) === at.after;
  return {
    at,
    peakA,
    wave,
    refused: of((s) => s.refused),
    sameStroke: isSamePoint && peakA.before === peakA.after && wave.before === wave.after,
    differences: differences(
      of((s) => s.differences),
      names,
    ),
    conductors: currents(
      of((s) => s.conductors),
      names,
    ),
    electrodes: currents(
      of((s) => s.electrodes),
      names,
    ),
  };
}

function differences({ before, after }: Sides<readonly Difference[] | null>, names: Names): readonly DifferenceRow[] {
  const key = (a: string, b: string, d: Difference, by: string | null) => JSON.stringify([[a, b].sort(), d.why, by]);
  const rows = pairRows(
    before ?? [],
    after ?? [],
    (d) => key(names.toAfter(d.a), names.toAfter(d.b), d, d.by === null ? null : names.toAfter(d.by)),
    (d) => key(d.a, d.b, d, d.by),
  );
  return rows.map(({ before: b, after: a }): DifferenceRow => {
    const of = <T>(read: (d: Difference) => T) => bothSides({ before: b, after: a }, read);
    const [peakV, rangeV] = [of((d) => d.peakV), of((d) => d.rangeV)];
    const isSame =
      isSameNumber(peakV.before, peakV.after, strikeShare) && isSameBounded(rangeV.before, rangeV.after, strikeShare);
    const standing = standingOf(
      of((d) => d.a),
      isSame,
    );
    return { a: of((d) => d.a), b: of((d) => d.b), why: (a ?? b)!.why, standing, peakV, rangeV };
  });
}

interface Current {
  readonly id: string;
  readonly peakA: number;
  readonly shareOfPeak: number;
  readonly melts?: boolean | null;
}

function currents({ before, after }: Sides<readonly Current[] | null>, names: Names): readonly CurrentRow[] {
  const rows = pairRows(
    before ?? [],
    after ?? [],
    (c) => names.toAfter(c.id),
    (c) => c.id,
  );
  return rows.map(({ before: b, after: a }): CurrentRow => {
    const of = <T>(read: (c: Current) => T) => bothSides({ before: b, after: a }, read);
    const [id, peakA, melts] = [of((c) => c.id), of((c) => c.peakA), of((c) => c.melts ?? null)];
    const isSame = isSameNumber(peakA.before, peakA.after, strikeShare) && melts.before === melts.after;
    return { id, standing: standingOf(id, isSame), peakA, shareOfPeak: of((c) => c.shareOfPeak), melts };
  });
}
