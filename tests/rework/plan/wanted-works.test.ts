import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Step } from '../../../src/rework/work.ts';
import { layouts } from '../../cases/layouts.ts';
import { type PlannedFile, planOfFile } from './plan-of-file.ts';
import { type Wanted, wantedOfA, wantedOfB } from './wanted-works.ts';

const folder = join(import.meta.dirname, '..', '..', 'cases');
const plans = new Map<string, PlannedFile>();

function planned(file: string): PlannedFile {
  const made = plans.get(file) ?? planOfFile(join(folder, `${file}.site.yaml`));
  plans.set(file, made);
  return made;
}

const gradeOf = (file: string) => layouts.find((l) => l.id === file.slice(0, 7))?.grade;

function isNamed({ work }: Step, named: Wanted['named']): boolean {
  return named.some(
    ([kind, at]) => work.kind === kind && (at === '' || work.at.includes(at) || work.id.split(':')[1] === at),
  );
}

describe('what practitioners wanted', () => {
  it('is asked of layouts of their grade, with at most five exceptions, each argued', () => {
    expect(wantedOfA.map((w) => gradeOf(w.file))).toEqual(wantedOfA.map(() => 'A'));
    expect(wantedOfB.map((w) => gradeOf(w.file))).toEqual(wantedOfB.map(() => 'B'));
    expect(wantedOfA.filter((w) => w.exception !== undefined).length).toBeLessThanOrEqual(5);
  });

  it.each(wantedOfA)('$file: every hazard of theirs was there and is gone', ({ file, removed }) => {
    const { plan } = planned(file);
    const hazards = (findings: readonly { outcome: string; severity: string; rule: string; at: readonly string[] }[]) =>
      removed.filter(([rule, at]) =>
        findings.some(
          (f) => f.outcome === 'not met' && f.severity === 'hazard' && f.rule === rule && f.at.includes(at),
        ),
      );
    expect(hazards(plan.before.findings)).toEqual(removed);
    expect(hazards(plan.after.findings)).toEqual([]);
  });

  it.each([...wantedOfA, ...wantedOfB])('$file: the first work is one of theirs', ({ file, named, exception }) => {
    const [first] = planned(file).plan.steps;
    expect(first).toBeDefined();
    // an exception that is none any more has to go
    expect(isNamed(first!, named)).toBe(exception === undefined);
  });

  it.each([...wantedOfA, ...wantedOfB])('$file: no step brings a hazard or a defect', ({ file }) => {
    const { plan } = planned(file);
    const brought = plan.steps.flatMap((s) => s.inTurn.appeared.filter((f) => f.severity !== 'advice'));
    expect(brought.map((f) => f.id)).toEqual([]);
    plan.steps.forEach((step, i) => {
      const before = plan.steps[i - 1]?.inTurn.after;
      if (before !== undefined) expect(step.inTurn.before).toEqual(before);
    });
  });

  it.each([...wantedOfA, ...wantedOfB])(
    '$file: a check of the improved file gives the study that was promised',
    ({ file }) => {
      const { plan, studyOf } = planned(file);
      expect(JSON.stringify(plan.after)).toBe(JSON.stringify(studyOf(plan.text)));
    },
  );
});
