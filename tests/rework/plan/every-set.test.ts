import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import { costOf } from '../../../src/rework/cost/cost-of.ts';
import { everySet } from '../../../src/rework/plan/every-set.ts';
import { outlookOf } from '../../../src/rework/plan/outlook.ts';
import { choosingOf, roundOf, tryAlone } from '../../../src/rework/plan/plan-round.ts';
import { stepByStep } from '../../../src/rework/plan/step-by-step.ts';
import type { Work } from '../../../src/rework/work.ts';
import type { Study } from '../../../src/study/study.ts';
import { studyOfText, toEnd, tryOn } from './tried-site.ts';

/** Layouts with two to eight works to choose from. */
const files = [
  'case-01',
  'case-05',
  'case-07',
  'case-17',
  'case-20',
  'case-26',
  'case-49',
  'case-50',
  'case-64',
  'case-70',
];
const folder = join(import.meta.dirname, '..', '..', 'cases');

/** Metres of conductor, three for a rod, one for a joint, ten for a length that nobody knows: as the order states it. */
function costIn(work: Work, study: Study): number {
  const { conductorM, rods, joints } = costOf(work, study);
  const length = Number.isFinite(conductorM.high) ? (conductorM.low + conductorM.high) / 2 : conductorM.low + 10;
  return length + 3 * rods + joints;
}

const wrong = (study: Study) =>
  study.findings.filter((f) => f.outcome === 'not met' && f.agreed === null && f.severity !== 'advice');

/** Whether something is wrong at a place where that rule found nothing as bad before. */
function bringsNew(before: Study, after: Study): boolean {
  const badness = (severity: string) => (severity === 'hazard' ? 2 : 1);
  return wrong(after).some((f) =>
    [...f.at, ...(f.at.length === 0 ? [''] : [])].some(
      (place) =>
        !wrong(before).some(
          (old) =>
            old.rule === f.rule &&
            badness(old.severity) >= badness(f.severity) &&
            (old.id === f.id || old.at.includes(place)),
        ),
    ),
  );
}

interface Best {
  readonly hazards: number;
  readonly defects: number;
  readonly cost: number;
}

/** All sets of works, each worked out; nothing of the program's own search is used. */
function bruteForce(text: string, before: Study, works: readonly Work[]): Best {
  let best: Best | null = null;
  for (let bits = 0; bits < 2 ** works.length; bits++) {
    const set = works.filter((_, i) => ((bits >> i) & 1) === 1);
    if (!set.every((w) => w.needs.every((id) => set.some((other) => other.id === id)))) continue;
    // what is needed stands before what needs it
    const ordered = [...set].sort((a, b) => depthOf(a, works) - depthOf(b, works) || (a.id < b.id ? -1 : 1));
    const changes = [...new Map(ordered.flatMap((w) => w.changes).map((c) => [JSON.stringify(c), c])).values()];
    const abouts = changes.map((c) => JSON.stringify([c.section, c.id, c.is === 'set' ? c.field : null]));
    if (new Set(abouts).size < abouts.length) continue;
    const tried = tryOn(text, changes);
    if ('problem' in tried || bringsNew(before, tried.study)) continue;
    const { hazards, defects } = tried.study.verdict;
    const cost = set.reduce((sum, w) => sum + costIn(w, before), 0);
    const isBetter =
      best === null ||
      hazards < best.hazards ||
      (hazards === best.hazards && (defects < best.defects || (defects === best.defects && cost < best.cost - 1e-9)));
    if (isBetter) best = { hazards, defects, cost };
  }
  return best!;
}

function depthOf(work: Work, works: readonly Work[]): number {
  return Math.max(0, ...work.needs.map((id) => 1 + depthOf(works.find((w) => w.id === id)!, works)));
}

describe('the cheapest set that leaves no hazard and no defect, or the fewest', () => {
  it.each(files)('%s: costs what the cheapest of all sets costs, each worked out', (file) => {
    const text = readFileSync(join(folder, `${file}.site.yaml`), 'utf8');
    const before = studyOfText(text);
    const works = candidatesOf(before).slice(0, 8);
    const known = works.filter((w) => w.needs.every((id) => works.some((other) => other.id === id)));
    const expected = bruteForce(text, before, known);
    for (const search of [everySet, stepByStep]) {
      const round = roundOf({ text, outlook: outlookOf(before) }, known, {
        costOf: (work) => costOf(work, before),
        tryChanges: tryOn,
        limits: { budget: null, hours: null },
      });
      toEnd(tryAlone(round));
      const set = toEnd(search(choosingOf(round)));
      const { hazards, defects } = round.trials.workedOut(set).effect?.after ?? before.verdict;
      const cost = set.reduce((sum, i) => sum + costIn(round.trials.pool.works[i]!, before), 0);
      expect({ hazards, defects }).toEqual({ hazards: expected.hazards, defects: expected.defects });
      if (search === everySet) expect(cost).toBeCloseTo(expected.cost, 6);
      // step by step is for more works than these; it stays within a twentieth here too
      else expect(cost).toBeLessThanOrEqual(1.05 * expected.cost + 1e-6);
    }
  });
});
