import type { Study, StudyFinding } from '../study/study.ts';
import { byCodeUnit } from '../units/by-code-unit.ts';
import type { ComparedFindings, FindingChange } from './comparison.ts';
import { changeOf, type FindingList, type WhatBecame } from './findings/change-of.ts';
import { type FindingUnit, openFindings, unitsOf } from './findings/finding-units.ts';
import { pairUnits, type UnitPair } from './findings/pair-units.ts';
import type { Names } from './matching/names.ts';

interface Change extends WhatBecame {
  readonly before: StudyFinding | null;
  readonly after: StudyFinding | null;
  readonly at: readonly string[];
}

/** What became of each condition that is not met or cannot be told on either side, by the pairing of the parts. */
export function compareFindings(before: Study, after: Study, names: Names): ComparedFindings {
  const rule = rulesOf(before, after);
  const changes = [...rule.values()].flatMap(({ before: b, after: a }) =>
    gathered(pairUnits(unitsOf(b, 'before', names), unitsOf(a, 'after', names)).map(changeOfPair)),
  );
  const order = orderOf(before, after);
  const sorted = changes.sort((x, y) => order(x) - order(y) || byCodeUnit(x.at.join('+'), y.at.join('+')));
  const list = (name: FindingList) => counted(sorted.filter((c) => c.list === name));
  const unchanged = list('unchanged');
  return {
    cleared: list('cleared'),
    new: list('new'),
    better: list('better'),
    worse: list('worse'),
    unsettled: list('unsettled'),
    unchanged,
    agreedOtherwise: unchanged.filter((c) => (c.before?.agreed == null) !== (c.after?.agreed == null)),
  };
}

/** Open findings of each rule in each set of conditions; a set that one side does not ask stands with the rule alone. */
function rulesOf(before: Study, after: Study) {
  const rules = new Map<string, { before: StudyFinding[]; after: StudyFinding[] }>();
  const asked = [new Set(setsOf(before)), new Set(setsOf(after))];
  const isShared = (set: string) => set === 'any' || asked.every((sets) => sets.has(set));
  for (const side of ['before', 'after'] as const) {
    for (const f of openFindings(side === 'before' ? before.findings : after.findings)) {
      const key = JSON.stringify([f.rule, isShared(f.codeSet) ? f.codeSet : '']);
      const held = rules.get(key) ?? { before: [], after: [] };
      rules.set(key, held);
      held[side].push(f);
    }
  }
  return rules;
}

export const setsOf = ({ codeSets, site }: Study): readonly string[] => codeSets ?? [site.region];

function changeOfPair({ before, after }: UnitPair): Change {
  const at = (after ?? before)!.at;
  if (before === null || after === null) {
    const list = before === null ? 'new' : 'cleared';
    return { before: before?.finding ?? null, after: after?.finding ?? null, at, list, how: null };
  }
  const places = at.length >= before.at.length ? at : placesOf(before, after);
  return { before: before.finding, after: after.finding, at: places, ...changeOf(before.finding, after.finding) };
}

/** Of a finding that is about several places on one side and one of them on the other: all of them, as after calls them. */
const placesOf = (before: FindingUnit, after: FindingUnit) => [...new Set([...before.key, ...after.key])].sort();

/** Places of one pair of findings that went the same way stand as one change. */
function gathered(changes: readonly Change[]): readonly Change[] {
  const all = new Map<string, Change>();
  for (const c of changes) {
    const key = JSON.stringify([c.before?.id ?? null, c.after?.id ?? null, c.list]);
    const known = all.get(key);
    all.set(key, known === undefined ? c : { ...known, at: [...new Set([...known.at, ...c.at])].sort() });
  }
  return [...all.values()];
}

/** As the study orders its findings: that of after, else that of before. */
function orderOf(before: Study, after: Study): (change: Change) => number {
  const placeIn = (study: Study) => new Map(study.findings.map((f, i) => [f.id, i]));
  const [was, is] = [placeIn(before), placeIn(after)];
  return ({ before: b, after: a }) => (a === null ? was.get(b!.id)! : is.get(a.id)!);
}

/** Not agreed to stand, and not folded under another change of the same list. */
function counted(changes: readonly Change[]): readonly FindingChange[] {
  const told = (c: Change) => (c.after ?? c.before)!;
  const ids = new Set(changes.map((c) => told(c).id));
  return changes.map((c) => {
    const { before, after, at, how } = c;
    const { agreed, under } = told(c);
    return { before, after, at, how, counts: agreed === null && !(under !== null && ids.has(under)) };
  });
}
