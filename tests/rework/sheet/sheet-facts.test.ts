import { describe, expect, it } from 'vitest';
import { sheetFacts } from '../../../src/rework/sheet/sheet-facts.ts';
import { clubPlan } from '../../report/sample-works.ts';

const factsOf = (id: string, plan = clubPlan) => sheetFacts(plan.steps.find((s) => s.work.id === id)!, plan);
const landsOf = (id: string, plan = clubPlan) => factsOf(id, plan).lands.map((l) => [l.part.id, l.inService]);

describe('what a contractor has to know', () => {
  it('a bond between two rods: both are there, one is of the service already', () => {
    const facts = factsOf('bond:E2');
    expect(landsOf('bond:E2')).toEqual([
      ['E2', false],
      ['E1', true],
    ]);
    expect(facts.conductors.map((c) => c.id)).toEqual(['w-bond']);
    expect(facts.joints.map((j) => j.kind)).toEqual(['exothermic weld', 'exothermic weld']);
    expect(facts.inSoil).toEqual(['w-bond']);
    expect(facts.panels).toEqual([]);
  });

  it('a new joint is the one that differs, not the other end of its conductor', () => {
    expect(factsOf('replace-joint:c3').joints.map((j) => j.kind)).toEqual(['exothermic weld']);
    expect(factsOf('replace-joint:c3').conductors).toEqual([]);
  });

  it('another conductor has both its joints made anew', () => {
    expect(factsOf('replace-conductor:c5').joints).toHaveLength(2);
  });

  it('what lands on a service panel, or is mounted in it, has it opened', () => {
    expect(factsOf('second-path:entry').panels).toEqual(['main-panel']);
    expect(factsOf('add-protector:service').panels).toEqual(['main-panel']);
    expect(factsOf('move-arrester:a2').panels).toEqual([]);
  });

  it('a new rod lands on nothing itself; its lead lands on what is there', () => {
    expect(landsOf('add-rods:E1')).toEqual([['E1', true]]);
    expect(factsOf('add-rods:E1').inSoil).toEqual(['w-rod-lead', 'w-rod']);
  });

  it('what an earlier work has made is there by then', () => {
    const parts = clubPlan.before.parts.filter((p) => p.id !== 'entry');
    const plan = { ...clubPlan, before: { ...clubPlan.before, parts } };
    expect(landsOf('move-arrester:a2', plan).map(([id]) => id)).toContain('entry');
  });
});
