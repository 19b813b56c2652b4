import { weights } from '../rework/plan/burden-of.ts';
import { remainingOf } from '../rework/plan/remaining-of.ts';
import type { WorkEffect, WorksPlan } from '../rework/work.ts';
import type { Study, StudyFinding } from '../study/study.ts';

/** The plan as JSON: works, costs and effects in full, findings by id, the study before and after by what remains. */
export function worksJson(plan: WorksPlan): string {
  const { format, before, after, steps, leftOut, searched, inBatches = false, weighedBy, limits, stopped, text } = plan;
  const value = {
    format,
    site: { name: before.site.name, file: before.site.file, checksum: before.site.checksum },
    state: before.state.id,
    currency: before.prices?.currency ?? null,
    before: remainingOf(before.findings),
    after: remainingOf(after.findings),
    steps: steps.map((s) => ({ ...s, alone: effectJson(s.alone), inTurn: effectJson(s.inTurn) })),
    leftOut: leftOut.map((l) => ({ ...l, brings: l.brings.map(brief) })),
    noWork: noWorkFor(after).map((f) => f.id),
    searched,
    inBatches,
    weighedBy,
    weights,
    limits,
    stopped,
    text,
  };
  return `${JSON.stringify(value, null, 2)}\n`;
}

/** Findings that still stand when all works are done, in their order. */
export function noWorkFor(after: Study): readonly StudyFinding[] {
  return after.findings.filter((f) => f.outcome === 'not met' && f.under === null && f.agreed === null);
}

function effectJson({ before, after, cleared, unsettled, appeared, earthOhm }: WorkEffect) {
  return {
    before,
    after,
    cleared: cleared.map(brief),
    unsettled: unsettled.map(brief),
    appeared: appeared.map(brief),
    earthOhm: { before: earthOhm.before, after: earthOhm.after },
  };
}

function brief({ id, rule, severity, at, title }: StudyFinding) {
  return { id, rule, severity, at, title };
}
