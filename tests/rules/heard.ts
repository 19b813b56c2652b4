import { expect } from 'vitest';
import { rules } from '../../src/rules/index.ts';
import type { Verdict } from '../../src/rules/rule.ts';
import type { RuleId } from '../../src/rules/rule-ids.ts';

/** One answer that a test got from a rule. */
export interface Heard {
  readonly rule: string;
  readonly outcome: Verdict['is'];
  /** As a test types it; null where the rule said it of nothing, or was asked with facts made by hand. */
  readonly line: string | null;
  readonly measured: { readonly value: number | { low: number; high: number }; readonly limit: number } | null;
  /** The site as typed. */
  readonly text: string;
}

const byFile = new Map<string, Heard[]>();

/** Keeps an answer with the test file that asked for it. */
export function hear(answer: Heard): void {
  const file = expect.getState().testPath ?? '';
  byFile.set(file, [...(byFile.get(file) ?? []), answer]);
}

/** What a rule says of facts made by hand, heard as well. */
export function checkOf(id: RuleId, facts: unknown): readonly Verdict[] {
  const verdicts = rules.find((r) => r.id === id)!.check(facts as never);
  for (const v of verdicts) {
    const measured = 'measured' in v ? (v.measured ?? null) : null;
    hear({ rule: id, outcome: v.is, line: null, measured, text: '' });
  }
  return verdicts;
}

export function heardIn(file: string, rule: string): readonly Heard[] {
  return (byFile.get(file) ?? []).filter((h) => h.rule === rule);
}
