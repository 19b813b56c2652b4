import { expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import { costOf } from '../../../src/rework/cost/cost-of.ts';
import { leastForBatches } from '../../../src/rework/plan/in-batches.ts';
import { triedOf } from '../../../src/rework/plan/outlook.ts';
import { planWorks } from '../../../src/rework/plan/plan-works.ts';
import { changesOf } from '../../../src/rework/plan/sets-of-works.ts';
import { newEarthLook, newTries, type SiteChange, strikeRules } from '../../../src/study/try-change.ts';
// @ts-expect-error a script without types
import { largeSite } from '../../bench/large-site.mjs';
import { studyOfText, toEnd } from './tried-site.ts';

it('works of a large site, tried several at a time, leave the hazards and defects that full recomputation finds', () => {
  const text: string = largeSite(1, 200);
  const before = studyOfText(text);
  expect(before.parts.length).toBeGreaterThanOrEqual(leastForBatches);
  const tries = newTries('test.site.yaml', { state: null, version: 'test', checksum: '', date: null });
  let tried = 0;
  const looking = (withoutStrike: boolean) => (from: string, changes: readonly SiteChange[]) => {
    tried++;
    const found = tries(from, changes, { withoutStrike });
    return 'problem' in found ? { problem: found.problem.key } : triedOf(found.text, found.run.study);
  };
  const plan = toEnd(
    planWorks({
      before,
      text,
      candidatesOf,
      costOf,
      tryChanges: looking(false),
      quick: {
        tryChanges: looking(true),
        leavesOut: strikeRules,
        earthOhm: newEarthLook('test.site.yaml', null),
      },
      limits: { budget: null, hours: null },
    }),
  );
  expect(plan.inBatches).toBe(true);
  expect(plan.steps.length).toBeGreaterThan(25);
  // several at a time: far fewer studies than works
  expect(tried).toBeLessThan(plan.steps.length / 2);
  for (const count of [1, 9, 18, 22, 24, plan.steps.length]) {
    const steps = plan.steps.slice(0, count);
    const whole = tries(text, changesOf(steps.map((s) => s.work)));
    if ('problem' in whole) throw new Error(whole.problem.key);
    const { hazards, defects } = whole.run.study.verdict;
    const { after } = steps.at(-1)!.inTurn;
    expect([count, after.hazards, after.defects]).toEqual([count, hazards, defects]);
    // what cannot be told is not taken away
    const doubts = whole.run.study.findings.filter((f) => f.outcome === 'cannot tell');
    const isDoubtful = (rule: string, at: readonly string[]) =>
      doubts.some((d) => d.rule === rule && d.at.some((place) => at.includes(place)));
    expect(
      steps
        .at(-1)!
        .inTurn.cleared.filter((f) => isDoubtful(f.rule, f.at))
        .map((f) => f.id),
    ).toEqual([]);
  }
  // resistance to earth of a work alone: by an update, and by the study of the site with it
  const bonds = plan.steps.filter((s) => s.alone.earthOhm.after !== null);
  expect(bonds.length).toBeGreaterThan(0);
  for (const { work, alone } of bonds.slice(0, 3)) {
    const whole = tries(text, changesOf([work]));
    if ('problem' in whole) throw new Error(whole.problem.key);
    const value = whole.run.study.earth.resistanceOhm!.value!;
    expect(Math.abs(alone.earthOhm.after! - value) / value).toBeLessThan(1e-6);
  }
  expect(JSON.stringify(plan.after)).toBe(JSON.stringify(studyOfText(plan.text)));
}, 120_000);
