import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import { costOf } from '../../../src/rework/cost/cost-of.ts';
import { effectOf, harmOf } from '../../../src/rework/plan/effect-of.ts';
import { planWorks } from '../../../src/rework/plan/plan-works.ts';
import { changesOf } from '../../../src/rework/plan/sets-of-works.ts';
import type { WorksPlan } from '../../../src/rework/work.ts';
import type { StudyFinding } from '../../../src/study/study.ts';
import { studyOfText, toEnd, tryOn } from './tried-site.ts';

const root = join(import.meta.dirname, '..', '..', '..');

function planOf(file: string): { readonly text: string; readonly plan: WorksPlan } {
  const text = readFileSync(join(root, file), 'utf8');
  const before = studyOfText(text);
  const limits = { budget: null, hours: null };
  return { text, plan: toEnd(planWorks({ before, text, candidatesOf, costOf, tryChanges: tryOn, limits })) };
}

/** Sites of which something that is not met cannot be told any more after a work, and one of which nothing is so. */
const files = [
  'tests/cases/case-03.site.yaml',
  'tests/cases/case-05.site.yaml',
  'tests/cases/case-20.site.yaml',
  'tests/cases/case-64.site.yaml',
  'tests/cases/case-65.site.yaml',
  'examples/first-dipole/first-dipole.site.yaml',
  'examples/town-flat/town-flat.site.yaml',
];

describe('what a work takes away', () => {
  it.each(files)('%s: is nothing that cannot be told there afterwards', (file) => {
    const { text, plan } = planOf(file);
    plan.steps.forEach(({ inTurn }, i) => {
      const after = tryOn(text, changesOf(plan.steps.slice(0, i + 1).map((s) => s.work)));
      if ('problem' in after) throw new Error(after.problem);
      const isDoubtfulNow = (f: StudyFinding) =>
        after.findings.some(
          (now) =>
            now.outcome === 'cannot tell' &&
            [now.rule, now.codeSet].join() === [f.rule, f.codeSet].join() &&
            now.at.some((place) => f.at.includes(place)),
        );
      expect(inTurn.cleared.filter(isDoubtfulNow).map((f) => f.id)).toEqual([]);
      expect(inTurn.unsettled.filter((f) => !isDoubtfulNow(f)).map((f) => f.id)).toEqual([]);
    });
  });

  it('does not hold a bond to a supply that nobody has found; what is met afterwards is still taken away', () => {
    const { plan } = planOf('tests/cases/case-64.site.yaml');
    const step = (id: string) => plan.steps.find((s) => s.work.id === id)!.inTurn;
    const rules = (of: readonly StudyFinding[]) => of.map((f) => f.rule);
    expect(rules(step('bond:tower-earth').cleared)).not.toContain('all-electrodes-one-system');
    expect(rules(step('bond:tower-earth').unsettled)).toContain('all-electrodes-one-system');
    expect(rules(step('put-right:pulled-lines').cleared)).toContain('spare-and-disconnected-lines');
    expect(step('put-right:pulled-lines').unsettled).toEqual([]);
  });

  it('does not hold a mast and a wire together that nobody traced', () => {
    const { plan } = planOf('examples/town-flat/town-flat.site.yaml');
    const { cleared, unsettled } = plan.steps.find((s) => s.work.at.includes('lift-mast'))!.inTurn;
    expect(cleared.map((f) => f.id)).toContain('iec-mast-earthed:lift-mast');
    expect(unsettled.map((f) => f.id)).toContain('shelters-within-reach-bonded:lift-mast+roof-wire');
  });
});

describe('what a work brings', () => {
  const finding = (at: string, outcome: StudyFinding['outcome'] = 'not met', rule = 'size'): StudyFinding =>
    ({
      id: `${rule}:${at}`,
      rule,
      codeSet: 'any',
      severity: 'defect',
      outcome,
      at: at.split('+'),
      under: null,
      agreed: null,
    }) as unknown as StudyFinding;
  const brought = (before: readonly StudyFinding[], after: readonly StudyFinding[]) =>
    harmOf(effectOf({ findings: before, earthOhm: null }, { findings: after, earthOhm: null })).map((f) => f.id);

  it('is not a finding of before that is about more places as a whole', () => {
    expect(brought([finding('a')], [finding('a+b')])).toEqual([]);
    expect(brought([finding('a'), finding('b', 'cannot tell')], [finding('a+b')])).toEqual([]);
  });

  it('is a new place that is judged by itself, and a pair with another partner', () => {
    expect(brought([finding('a')], [finding('a'), finding('b')])).toEqual(['size:b']);
    expect(brought([finding('a')], [finding('a'), finding('a+b')])).toEqual(['size:a+b']);
    expect(brought([finding('a+b')], [finding('a+c')])).toEqual(['size:a+c']);
  });

  it('is a place that met the condition before, and what is worse or of another rule', () => {
    expect(brought([finding('a'), finding('b', 'met')], [finding('a+b')])).toEqual(['size:a+b']);
    expect(brought([{ ...finding('a'), severity: 'advice' }], [finding('a+b')])).toEqual(['size:a+b']);
    expect(brought([finding('a', 'not met', 'other')], [finding('a+b')])).toEqual(['size:a+b']);
  });

  it('does not keep an electrode of an antenna from its bond because it is too small with the others too', () => {
    const house = `site: {name: Bungalow, region: uk, units: m, service: cu, supply: tt}
electrodes:
  ttrod: {kind: rod, at: [-1, 6], length: 1.2 m, diameter: 16 mm, metal: copper-clad steel}
  strod: {kind: rod, at: [22, 2], length: 1.2 m, diameter: 16 mm, metal: copper-clad steel}
equipment:
  cu: {kind: service panel, at: [0, 6], where: inside}
supports:
  tilt: {kind: mast, at: [20, 2], height: 8 m, metal: galvanised steel}
conductors:
  earth: {from: cu, to: ttrod, wire: 16 mm2 copper, length: 2 m}
  s: {from: tilt@base, to: strod, wire: 16 mm2 copper, length: 2 m}
`;
    const before = studyOfText(house);
    const tooSmall = (of: readonly StudyFinding[]) =>
      of.filter((f) => f.rule === 'iec-antenna-electrode-minimum' && f.outcome === 'not met').map((f) => f.at);
    expect(tooSmall(before.findings)).toEqual([['strod']]);
    const fields = { from: 'strod', to: 'ttrod', wire: '16 mm2 copper', length: '25 m' };
    const after = tryOn(house, [{ is: 'add', section: 'conductors', id: 'bond', fields }]);
    if ('problem' in after) throw new Error(after.problem);
    expect(tooSmall(after.findings)).toEqual([['strod', 'ttrod']]);
    const rules = harmOf(effectOf({ findings: before.findings, earthOhm: null }, after)).map((f) => f.rule);
    expect(rules).not.toContain('iec-antenna-electrode-minimum');
  });
});
