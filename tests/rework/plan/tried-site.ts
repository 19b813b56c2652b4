import { type Tried, triedOf } from '../../../src/rework/plan/outlook.ts';
import { type PlanAsk, planWorks } from '../../../src/rework/plan/plan-works.ts';
import type { Work, WorkCost, WorksPlan } from '../../../src/rework/work.ts';
import { readSite } from '../../../src/site/read-site.ts';
import { runStudy } from '../../../src/study/run-study.ts';
import type { Study } from '../../../src/study/study.ts';
import { type SiteChange, tryChange } from '../../../src/study/try-change.ts';

const options = { state: null, version: 'test', checksum: '', date: null };

/** The study of a text, all worked out anew. */
export function studyOfText(text: string): Study {
  const { site, problems } = readSite(text, 'test.site.yaml');
  if (site === null) throw new Error(JSON.stringify(problems));
  return runStudy(site, options).study;
}

export function tryOn(text: string, changes: readonly SiteChange[]): Tried {
  const tried = tryChange(text, 'test.site.yaml', changes, options);
  return 'problem' in tried ? { problem: tried.problem.key } : triedOf(tried.text, tried.run.study);
}

/** A work by hand; it costs money and hours in proportion. */
export interface ByHand {
  readonly id: string;
  readonly changes: readonly SiteChange[];
  readonly price: number;
  readonly needs?: readonly string[];
}

export function workOf({ id, changes, price, needs = [] }: ByHand): Work {
  return {
    id,
    kind: 'bond',
    at: [],
    answers: [],
    changes,
    needs,
    materials: [],
    runs: [],
    values: { price },
  };
}

export function costByHand({ values }: Work): WorkCost {
  const price = values.price as number;
  const exact = (value: number) => ({ low: value, high: value });
  return { price: exact(price), unpriced: [], conductorM: exact(price), rods: 0, joints: 0, hours: exact(price / 10) };
}

/** A plan of works by hand, each round with those that are not done yet. */
export function planByHand(text: string, works: readonly Work[], limits: Partial<PlanAsk['limits']> = {}): WorksPlan {
  return toEnd(planWorks(askByHand(text, works, limits)));
}

export function askByHand(text: string, works: readonly Work[], limits: Partial<PlanAsk['limits']> = {}): PlanAsk {
  const before = studyOfText(text);
  return {
    before,
    text,
    candidatesOf: (study) => (study === before ? works : []),
    costOf: costByHand,
    tryChanges: tryOn,
    limits: { budget: null, hours: null, ...limits },
  };
}

export function toEnd<T>(trying: Generator<unknown, T, boolean>, stopAfter = Number.POSITIVE_INFINITY): T {
  let tried = 0;
  for (let next = trying.next(false); ; next = trying.next(++tried >= stopAfter))
    if (next.done === true) return next.value;
}
