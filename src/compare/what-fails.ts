import type { Study, StudyFinding } from '../study/study.ts';

/** What a study after a failure finds that the one before did not. */
export interface WhatFails {
  readonly notMet: readonly StudyFinding[];
  readonly cannotTell: readonly StudyFinding[];
  readonly lines: readonly LineLoss[];
}

/** What one conductor of a line loses. */
export interface LineLoss {
  readonly line: string;
  readonly which: string;
  readonly bondedAt: readonly string[];
  readonly protectedBy: readonly string[];
  readonly drainedBy: readonly string[];
  /** Wires without a protector before and after; null: cannot tell. */
  readonly unprotected: { readonly before: number | null; readonly after: number | null };
}

/** Findings and losses of lines that stand after and did not before; what is only about the failed parts themselves is left out. */
export function whatFails(before: Study, after: Study, failed: readonly string[]): WhatFails {
  const worse = after.findings.filter((f) => !isOnly(f.at, failed) && !stoodBefore(f, before));
  return {
    notMet: worse.filter((f) => f.outcome === 'not met'),
    cannotTell: worse.filter((f) => f.outcome === 'cannot tell'),
    lines: lineLosses(before, after),
  };
}

const isOnly = (at: readonly string[], failed: readonly string[]) =>
  at.length > 0 && at.every((id) => failed.includes(id));

/** Whether the same condition had the same outcome at each of these places: places may only be gathered in another way. */
function stoodBefore(f: StudyFinding, before: Study): boolean {
  const same = before.findings.filter((b) => b.rule === f.rule && b.outcome === f.outcome);
  return same.length > 0 && f.at.every((id) => same.some((b) => b.at.includes(id)));
}

function lineLosses(before: Study, after: Study): readonly LineLoss[] {
  const then = new Map(after.lines.map((line) => [line.id, line]));
  return before.lines.flatMap(({ id, conductors }) =>
    conductors.flatMap((c) => {
      const left = then.get(id)?.conductors.find(({ which }) => which === c.which);
      if (left === undefined) return [];
      const loss: LineLoss = {
        line: id,
        which: c.which,
        bondedAt: c.bondedAt.filter((at) => !left.bondedAt.includes(at)),
        protectedBy: c.protectedBy.filter((at) => !left.protectedBy.includes(at)),
        drainedBy: c.drainedBy.filter((at) => !left.drainedBy.includes(at)),
        unprotected: { before: c.unprotected, after: left.unprotected },
      };
      return isLoss(loss) ? [loss] : [];
    }),
  );
}

function isLoss({ bondedAt, protectedBy, drainedBy, unprotected: { before, after } }: LineLoss): boolean {
  return bondedAt.length + protectedBy.length + drainedBy.length > 0 || before !== after;
}
