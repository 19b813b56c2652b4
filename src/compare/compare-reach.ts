import type { Study } from '../study/study.ts';
import { bothSides } from './both-sides.ts';
import type { ReachRow, ReachWay } from './comparison.ts';
import type { Names } from './matching/names.ts';
import { pairRows } from './pair-rows.ts';
import { standingOf } from './standing.ts';

/** What still reaches each box, side by side; by box as after calls it. */
export function compareReach(before: Study, after: Study, names: Names): readonly ReachRow[] {
  const rows = pairRows(
    before.reach,
    after.reach,
    (r) => names.toAfter(r.part),
    (r) => r.part,
  );
  return rows.map((row) => {
    const part = bothSides(row, (r) => r.part);
    const by = { before: row.before?.by ?? [], after: row.after?.by ?? [] };
    const ways = pairRows(by.before, by.after, (w) => keyOf(asAfter(w, names)), keyOf);
    const gone = ways.flatMap((w) => (w.after === null ? [w.before!] : []));
    const come = ways.flatMap((w) => (w.before === null ? [w.after!] : []));
    return { part, standing: standingOf(part, gone.length + come.length === 0), by, gone, new: come };
  });
}

const keyOf = ({ line, from }: ReachWay) => JSON.stringify([line, from]);
const asAfter = ({ line, from }: ReachWay, { toAfter }: Names): ReachWay => ({
  line: toAfter(line),
  from: toAfter(from),
});
