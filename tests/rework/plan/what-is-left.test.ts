import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import { costOf } from '../../../src/rework/cost/cost-of.ts';
import { effectOf } from '../../../src/rework/plan/effect-of.ts';
import { planWorks } from '../../../src/rework/plan/plan-works.ts';
import type { WorksPlan } from '../../../src/rework/work.ts';
import type { StudyFinding } from '../../../src/study/study.ts';
import { studyOfText, toEnd, tryOn } from './tried-site.ts';

function planOf(text: string, hours: number | null = null): WorksPlan {
  const before = studyOfText(text);
  const limits = { budget: null, hours };
  return toEnd(planWorks({ before, text, candidatesOf, costOf, tryChanges: tryOn, limits }));
}

const ids = (findings: readonly StudyFinding[]) => findings.map((f) => f.id);

describe('what is left of a finding', () => {
  const finding = (at: string, outcome: StudyFinding['outcome'] = 'not met'): StudyFinding =>
    ({
      id: `reach:${at}`,
      rule: 'reach',
      codeSet: 'any',
      severity: 'hazard',
      outcome,
      at: at.split('+'),
      under: null,
      agreed: null,
    }) as unknown as StudyFinding;
  const effect = (before: readonly StudyFinding[], after: readonly StudyFinding[]) => {
    const { cleared, unsettled } = effectOf({ findings: before, earthOhm: null }, { findings: after, earthOhm: null });
    return { cleared: ids(cleared), unsettled: ids(unsettled) };
  };
  const [tower, shed] = [finding('fence+tower'), finding('fence+shed')];

  it('is not what stood at one of its places all along', () => {
    expect(effect([tower, shed], [shed])).toEqual({ cleared: ['reach:fence+tower'], unsettled: [] });
    const doubt = finding('fence+shed', 'cannot tell');
    expect(effect([tower, doubt], [doubt])).toEqual({ cleared: ['reach:fence+tower'], unsettled: [] });
    expect(effect([tower, shed], [doubt])).toEqual({ cleared: ['reach:fence+tower'], unsettled: ['reach:fence+shed'] });
  });

  it('is the same at fewer or more places, and a doubt that is new there', () => {
    expect(effect([finding('a+b')], [finding('a')])).toEqual({ cleared: [], unsettled: [] });
    expect(effect([finding('a')], [finding('a+b')])).toEqual({ cleared: [], unsettled: [] });
    expect(effect([tower], [finding('fence+tower', 'cannot tell')]).unsettled).toEqual(['reach:fence+tower']);
    expect(effect([tower], [finding('fence', 'cannot tell')]).unsettled).toEqual(['reach:fence+tower']);
    // what was met says nothing of what is left
    expect(effect([tower, finding('fence', 'met')], [finding('fence', 'cannot tell')]).cleared).toEqual([]);
  });
});

describe('a fence in reach of a tower and of a shed', () => {
  const yard = `site: {name: Yard, region: us, units: ft, service: panel, supply: us-grounded, without: [telephone, cable tv, network]}
electrodes:
  rod: {kind: rod, at: [0, 0], length: 8 ft, diameter: 5/8 in, metal: copper-clad steel, resistance: 20 ohm}
supports:
  tower: {kind: lattice tower, at: [10, 0], height: 40 ft, legs: 3, metal: galvanised steel, sections: bolted, within_reach: [fence]}
equipment:
  panel: {kind: service panel, at: [1, 2], where: inside, neutral_bonded: yes}
  shed: {kind: shelter, at: [30, 5], where: outside, owner: neighbour, within_reach: [fence]}
lines: none
metalwork:
  fence: {kind: fence, at: [22, 0], metal: galvanised steel, bonded: no, continuous: yes}
conductors:
  gec: {from: panel, to: rod, wire: 6 AWG copper, length: 4 ft, joints: [bolted lug, acorn clamp]}
  leg: {from: tower@base, to: rod, wire: 2 AWG tinned copper, length: 11 ft, joints: [bolted lug, exothermic weld]}
`;
  const ofTower = 'shelters-within-reach-bonded:fence+tower';

  it('has the one hazard taken away by the tie to the tower, whatever is between it and the shed', () => {
    const [first] = planOf(yard, 6).steps;
    expect(first!.work.id).toBe('tie-metalwork:fence');
    expect(ids(first!.inTurn.cleared)).toContain(ofTower);
    expect(first!.inTurn.after.hazards).toBe(first!.inTurn.before.hazards - 1);
  });

  it('keeps the hazard where the hours are too few, and is told that this is why', () => {
    const plan = planOf(yard, 3);
    expect(ids(plan.after.findings.filter((f) => f.outcome === 'not met'))).toContain(ofTower);
    expect(plan.leftOut.find((l) => l.work.id === 'tie-metalwork:fence')!.why).toBe('over effort');
  });

  it('with hours enough needs no tie to the shed beside that of the shed to the panel', () => {
    const plan = planOf(yard);
    expect(plan.leftOut.find((l) => l.work.id === 'tie-metalwork:fence+shed')!.why).toBe('not needed');
    expect(plan.after.findings.filter((f) => f.outcome === 'not met' && f.severity === 'hazard')).toEqual([]);
  });
});

describe('a tie between two things', () => {
  it('is no step where the ties that it needs do all of it', () => {
    const plan =
      planOf(`site: {name: Field, region: us, units: m, service: none, temporary: yes, storm_plan: yes, without: [telephone, cable tv, network]}
electrodes:
  mast-rod: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
supports:
  mast: {kind: mast, height: 12, metal: galvanised steel, sections: one piece, within_reach: [van]}
equipment:
  gen: {kind: generator, where: outside, neutral_bonded: no, bonded: no, near: [{part: van, distance: 1.5 m}]}
  van: {kind: vehicle, where: outside, bonded: unknown, near: [{part: tent-box, distance: 1}]}
  tent-box: {kind: sub-panel, where: outside, neutral_bonded: no}
lines:
  cord: {kind: mains, path: [gen, tent-box], length: 25, protective_conductor: yes}
conductors:
  m: {from: mast@base, to: mast-rod, wire: 6 AWG copper, length: 1, joints: [bolted lug, exothermic weld]}
`);
    const steps = plan.steps.map((s) => s.work.id);
    expect(steps).toContain('tie-metalwork:tent-box');
    expect(steps).not.toContain('tie-metalwork:tent-box+van');
    const idle = plan.steps.filter((s) => s.inTurn.cleared.length + s.inTurn.unsettled.length === 0);
    expect(idle.map((s) => s.work.id)).toEqual([]);
  });
});
