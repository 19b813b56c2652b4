import type { Study, StudyPath } from '../study/study.ts';
import { bothSides } from './both-sides.ts';
import type { PathRow, Sides, Standing } from './comparison.ts';
import type { Names } from './matching/names.ts';
import { pairRows } from './pair-rows.ts';
import { isSameNumber, isSameRange } from './same-figure.ts';
import { standingOf } from './standing.ts';

/** Ways from each part to its nearest electrode and to the service, side by side; by where they start as after calls it. */
export function comparePaths(before: Study, after: Study, names: Names): readonly PathRow[] {
  const keyBefore = (p: StudyPath) => JSON.stringify([names.toAfter(p.from), p.aim]);
  const keyAfter = (p: StudyPath) => JSON.stringify([p.from, p.aim]);
  return pairRows(before.paths, after.paths, keyBefore, keyAfter).map((sides) => row(sides, names));
}

function row(sides: Sides<StudyPath | null>, names: Names): PathRow {
  const of = <T>(read: (p: StudyPath) => T) => bothSides(sides, read);
  return {
    from: of((p) => p.from),
    aim: (sides.after ?? sides.before)!.aim,
    standing: standing(sides, names),
    to: of((p) => p.to),
    lengthM: of((p) => p.lengthM),
    resistanceOhm: of((p) => p.resistanceOhm),
    inductanceH: of((p) => p.inductanceH),
    separatePaths: of((p) => p.separatePaths),
  };
}

function standing(sides: Sides<StudyPath | null>, names: Names): Standing {
  const { before: b, after: a } = sides;
  return standingOf(sides, b !== null && a !== null && isSamePath(b, a, names));
}

/** Of several electrodes equally near any may be named: only where the figures differ does it matter which. */
function isSamePath(b: StudyPath, a: StudyPath, names: Names): boolean {
  const isFigures =
    isSameRange(b.lengthM, a.lengthM) &&
    isSameNumber(b.lengthAtLeastM, a.lengthAtLeastM) &&
    isSameRange(b.resistanceOhm, a.resistanceOhm) &&
    isSameRange(b.inductanceH, a.inductanceH) &&
    b.separatePaths === a.separatePaths &&
    b.separatePathsStrict === a.separatePathsStrict;
  const then = names.toAfter(b.to);
  return isFigures && (then === a.to || (names.isAfter(then) && names.isKept(a.to)));
}
