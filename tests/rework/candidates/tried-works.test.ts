import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import { unanswered } from '../../../src/rework/candidates/unanswered.ts';
import { effectOf, harmOf, noLongerFound } from '../../../src/rework/plan/effect-of.ts';
import { outlookOf } from '../../../src/rework/plan/outlook.ts';
import { changesOf } from '../../../src/rework/plan/sets-of-works.ts';
import type { Work } from '../../../src/rework/work.ts';
import { newTries, type Tries } from '../../../src/study/try-change.ts';
import { sayWork } from '../../../src/words/say-work.ts';
import { falling, harmful, withoutWork } from './exceptions.ts';
import { filesAtHand, type SiteAtHand, siteAtHand } from './sites-at-hand.ts';

/** A work after all that it needs. */
function withNeeds(works: readonly Work[], work: Work): readonly Work[] {
  const first = work.needs.flatMap((id) => withNeeds(works, works.find((w) => w.id === id)!));
  return [...new Set([...first, work])];
}

/** What a work brings, and what it was proposed for and leaves. */
function tryOut({ text, study }: SiteAtHand, tries: Tries, works: readonly Work[], work: Work) {
  const tried = tries(text, changesOf(withNeeds(works, work)));
  if ('problem' in tried) return { written: false, brought: [], left: [] };
  const effect = effectOf(outlookOf(study), outlookOf(tried.run.study));
  // what nobody can tell afterwards is for somebody to look at, not for another work
  const found = new Set(noLongerFound(effect).map((f) => f.id));
  return {
    written: tried.run.faults.length === 0,
    brought: harmOf(effect).map((f) => f.id),
    left: work.answers.filter((id) => !found.has(id)),
  };
}

const nameOf = (file: string) => file.split('/').at(-1)!.replace('.site.yaml', '');
const argued = (list: Readonly<Record<string, unknown>>, file: string) =>
  Object.keys(list)
    .filter((key) => key.startsWith(`${nameOf(file)} `))
    .map((key) => key.slice(nameOf(file).length + 1))
    .sort();

describe.each(filesAtHand())('works for %s', (file) => {
  const site = siteAtHand(file);
  const works = candidatesOf(site.study);

  it('can be written, clear what they are for, and bring no hazard and no defect', () => {
    const tries = newTries(file, site.options);
    const reckoned = works.filter((w) => w.unreckoned === undefined);
    const tried = reckoned.map((work) => ({ id: work.id, ...tryOut(site, tries, works, work) }));
    expect(tried.filter((t) => !t.written).map((t) => t.id)).toEqual([]);
    expect(tried.filter((t) => t.brought.length > 0).map((t) => t.id)).toEqual(argued(harmful, file));
    expect(tried.filter((t) => t.left.length > 0).map((t) => t.id)).toEqual(argued(falling, file));
  });

  it('are there for every hazard and defect, but for those that are argued', () => {
    const open = unanswered(site.study, works).filter((f) => f.severity !== 'advice' && f.under === null);
    expect(open.map((f) => f.id).sort()).toEqual(argued(withoutWork, file));
  });

  it('have an id each, in order, with all that they need, the same for the same site', () => {
    const ids = works.map((w) => w.id);
    expect(ids).toEqual([...new Set(ids)].sort((a, b) => (a < b ? -1 : 1)));
    expect(works.flatMap((w) => w.needs).filter((id) => !ids.includes(id))).toEqual([]);
    expect(JSON.stringify(candidatesOf(siteAtHand(file).study))).toBe(JSON.stringify(works));
  });

  it('say what to do in both regions, with no place left open', () => {
    const speeches = [
      { terms: 'us', unitsFirst: 'us' },
      { terms: 'iec', unitsFirst: 'si' },
    ] as const;
    for (const work of works)
      for (const speech of speeches) {
        const { title, why, steps } = sayWork(work.values, speech);
        expect(`${title} ${why} ${steps.join(' ')}`).not.toMatch(/[[\]{}]|undefined|null|unknown\b(?! until)(?!\.)/);
      }
  });
});

it('has few exceptions', () => {
  expect(Object.keys(harmful).length).toBeLessThanOrEqual(3);
  expect(Object.keys(falling).length).toBeLessThanOrEqual(12);
});
