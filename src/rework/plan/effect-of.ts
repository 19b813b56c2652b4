import type { StudyFinding } from '../../study/study.ts';
import { onceFor } from '../../units/once-for.ts';
import type { WorkEffect } from '../work.ts';
import { wrongOf } from '../wrong-of.ts';
import type { Outlook } from './outlook.ts';
import { rankOf, remainingOf } from './remaining-of.ts';

/**
 * What changes leave behind. A finding that stands at fewer places than before, or at some of them, is the same finding and
 * not a new one; one that became worse is new. `appeared` holds what was not wrong before, advice too. What is not found any
 * more only because nobody can tell any more is not cleared: knowing less repairs nothing.
 */
export function effectOf(before: Outlook, after: Outlook): WorkEffect {
  const [{ all: had, wrong: were, ids }, { all: has, wrong: are, doubts }] = [
    seen(before.findings),
    seen(after.findings),
  ];
  const gone = were.filter((f) => !has.has(f) && !are.some((other) => isLeftOf(other, f, ids)));
  const isUnsettled = (f: StudyFinding) => doubts.some((doubt) => isLeftOf(doubt, f, ids));
  return {
    before: seen(before.findings).remaining,
    after: seen(after.findings).remaining,
    cleared: gone.filter((f) => !isUnsettled(f)),
    unsettled: gone.filter(isUnsettled),
    appeared: are.filter((f) => !had.has(f) && isNew(f, were) && !hasGrown(f, before, are)),
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
  doubts: findings.filter((f) => f.outcome === 'cannot tell'),
  ids: openIds(findings),
  remaining: remainingOf(findings),
}));

/** What is not found any more, whether it is cleared or has to be looked at now: what a work is chosen and ordered by. */
export function noLongerFound({ cleared, unsettled }: WorkEffect): readonly StudyFinding[] {
  return [...cleared, ...unsettled];
}

/** What would make a work not worth proposing: a hazard or a defect that was not there. */
export function harmOf({ appeared }: WorkEffect): readonly StudyFinding[] {
  return appeared.filter((f) => f.severity !== 'advice');
}

/** Ids of what is not met or cannot be told: what is met says nothing of what is left. */
export function openIds(findings: readonly StudyFinding[]): ReadonlySet<string> {
  return new Set(findings.flatMap((f) => (f.outcome === 'met' ? [] : [f.id])));
}

/**
 * Whether a finding is still there, perhaps at fewer of its places or at more, or as what cannot be told there. What stood
 * beside it all along is not what is left of it: a fence may be in reach of a tower and of a shed. `open`: ids of before.
 */
export function isLeftOf(after: StudyFinding, before: StudyFinding, open: ReadonlySet<string>): boolean {
  if (!isSameCondition(after, before)) return false;
  if (after.id === before.id) return true;
  return !open.has(after.id) && after.at.some((place) => before.at.includes(place));
}

/** Whether it stands at a place where its rule found nothing wrong before, or nothing as bad. */
function isNew(f: StudyFinding, were: readonly StudyFinding[]): boolean {
  const same = were.filter((other) => isSameCondition(other, f) && rankOf(other) <= rankOf(f));
  if (same.some((other) => other.id === f.id)) return false;
  return f.at.length === 0 || !f.at.every((place) => same.some((other) => other.at.includes(place)));
}

/**
 * Whether it is a finding of before that has more places now. Places that are each judged by themselves have a finding each;
 * a finding of several is about them as a whole, such as electrodes that are joined: where it takes in the places of one that
 * is gone, it is that one, unless it drags in a place where the condition was met.
 */
function hasGrown(f: StudyFinding, before: Outlook, are: readonly StudyFinding[]): boolean {
  const { wrong } = seen(before.findings);
  const from = wrong.filter((old) => isSameCondition(old, f) && rankOf(old) <= rankOf(f));
  return from.some((old) => {
    if (old.at.length === 0 || !old.at.every((place) => f.at.includes(place))) return false;
    if (are.some((other) => other.id === old.id)) return false;
    const joined = f.at.filter((place) => !old.at.includes(place));
    const met = before.findings.filter((m) => m.outcome === 'met' && isSameCondition(m, f));
    return !met.some((m) => m.at.some((place) => joined.includes(place)));
  });
}

function isSameCondition(a: StudyFinding, b: StudyFinding): boolean {
  return a.rule === b.rule && a.codeSet === b.codeSet;
}
