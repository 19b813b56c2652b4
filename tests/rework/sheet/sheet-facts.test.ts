import { describe, expect, it } from 'vitest';
import { fittingFor } from '../../../src/rework/candidates/usual-joint.ts';
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

  it('a joint that is made anew lands on what it is on', () => {
    expect(landsOf('replace-joint:c3').map(([id]) => id)).toContain('tower-rods');
    // a new conductor lands where it ends, once
    expect(landsOf('bond:E2').map(([id]) => id)).toEqual(['E2', 'E1']);
  });

  it('a fitting has the name that it is bought under', () => {
    const bought = (kind: string, on: string, names: readonly string[]) => fittingFor(kind, on, names);
    const rebar = 'clamp for reinforcing steel';
    expect(bought('U-bolt', 'concrete-encased', [rebar])).toBe(rebar);
    expect(bought('U-bolt', 'pipe', [rebar, 'U-bolt'])).toBe(null);
    expect(bought('bolted lug', 'service panel', ['bolted lug for aluminium and copper'])).toBe(
      'bolted lug for aluminium and copper',
    );
    // where both are bought nobody can tell which is for which
    expect(bought('bolted lug', 'rod', ['bolted lug', 'bolted lug for aluminium and copper'])).toBe(null);
    expect(bought('bolted lug', 'rod', ['bolted lug'])).toBe(null);
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
