import { describe, expect, it } from 'vitest';
import { answers } from './answer.ts';
import type { Claim, Layout } from './claim.ts';
import { layouts } from './layouts.ts';
import { siteOf, studyOf } from './study-of.ts';

/** Real layouts and what practitioners agreed on; the public address of each stands in its record. */
describe.each(layouts.map((l) => [l.id, l.title, l] as const))('%s %s', (_id, _title, layout) => {
  it('asserts something that must be found and something that must not, and says where it comes from', () => {
    expect(layout.must.length).toBeGreaterThan(0);
    expect(layout.mustNot.length).toBeGreaterThan(0);
    expect(layout.sources.every((s) => /^https?:\/\//.test(s))).toBe(true);
    expect(layout.grade === 'B' ? layout.dissent : 'agreed').toBeTruthy();
    for (const { because } of layout.notYet) expect(because.length).toBeGreaterThan(5);
  });

  it.each(layout.must.map((c) => [c.says, c] as const))('finds: %s', (_says, claim) => {
    expect(ask(claim, layout), JSON.stringify(claim.ask, showPattern)).toBe(true);
  });

  it.each(layout.mustNot.map((c) => [c.says, c] as const))('does not find: %s', (_says, claim) => {
    expect(ask(claim, layout), JSON.stringify(claim.ask, showPattern)).toBe(false);
  });
});

function ask(claim: Claim, layout: Layout): boolean {
  const file = claim.ofFile ?? layout.files[0]!;
  const state = claim.inState ?? null;
  return answers(claim.ask, {
    site: siteOf(file),
    state,
    study: studyOf(file, state),
    inState: (s) => studyOf(file, s),
  });
}

function showPattern(_key: string, value: unknown): unknown {
  return value instanceof RegExp ? String(value) : value;
}

it('holds all 48 layouts', () => {
  expect(layouts.length).toBe(48);
});
