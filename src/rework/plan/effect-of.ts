import type { StudyFinding } from '../../study/study.ts';
import { onceFor } from '../../units/once-for.ts';
import type { WorkEffect } from '../work.ts';
import { wrongOf } from '../wrong-of.ts';
import type { Outlook } from './outlook.ts';
import { rankOf, remainingOf } from './remaining-of.ts';

/**
 * What changes leave behind. A finding that stands at fewer places than before, or at some of them, is the same finding and
 * not a new one; one that became worse is new. `appeared` holds what was not wrong before, advice too.
 */
export function effectOf(before: Outlook, after: Outlook): WorkEffect {
  const [{ all: had, wrong: were }, { all: has, wrong: are }] = [seen(before.findings), seen(after.findings)];
  return {
    before: seen(before.findings).remaining,
    after: seen(after.findings).remaining,
    cleared: were.filter((f) => !has.has(f) && !are.some((other) => isLeftOf(other, f))),
    appeared: are.filter((f) => !had.has(f) && isNew(f, were)),
    earthOhm: {
      get before() {
        return before.earthOhm;
      },
      get after() {
        return after.earthOhm;
      },
    },
  };
}

/** What is asked of one list of findings again and again: most works are tried on the same site. */
const seen = onceFor((findings: Outlook['findings']) => ({
  all: new Set(findings),
  wrong: wrongOf(findings),
  remaining: remainingOf(findings),
}));

/** What would make a work not worth proposing: a hazard or a defect that was not there. */
export function harmOf({ appeared }: WorkEffect): readonly StudyFinding[] {
  return appeared.filter((f) => f.severity !== 'advice');
}

/** Whether a finding is still there, perhaps at fewer of its places or at more. */
function isLeftOf(after: StudyFinding, before: StudyFinding): boolean {
  if (!isSameCondition(after, before)) return false;
  return after.id === before.id || after.at.some((place) => before.at.includes(place));
}

/** Whether it stands at a place where its rule found nothing wrong before, or nothing as bad. */
function isNew(f: StudyFinding, were: readonly StudyFinding[]): boolean {
  const same = were.filter((other) => isSameCondition(other, f) && rankOf(other) <= rankOf(f));
  if (same.some((other) => other.id === f.id)) return false;
  return f.at.length === 0 || !f.at.every((place) => same.some((other) => other.at.includes(place)));
}

function isSameCondition(a: StudyFinding, b: StudyFinding): boolean {
  return a.rule === b.rule && a.codeSet === b.codeSet;
}
