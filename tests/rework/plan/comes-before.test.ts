import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import { costOf } from '../../../src/rework/cost/cost-of.ts';
import { firstsOf, withFirsts } from '../../../src/rework/plan/comes-before.ts';
import { endsIn, landsOn, renewedBy } from '../../../src/rework/plan/landed-on.ts';
import { planWorks } from '../../../src/rework/plan/plan-works.ts';
import { remainingOf } from '../../../src/rework/plan/remaining-of.ts';
import { changesOf, poolOf } from '../../../src/rework/plan/sets-of-works.ts';
import type { Work, WorkKind, WorksPlan } from '../../../src/rework/work.ts';
import type { SiteChange } from '../../../src/study/try-change.ts';
import { studyOfText, toEnd, tryOn, workOf } from './tried-site.ts';

/** An invented house: two short loose rods with soldered wires, and an entry panel that one of them serves. */
const house = `site: {name: Two Short Rods, region: us, units: ft, service: panel, supply: us-grounded}
buildings: {house: {corners: [[0, 0], [40, 0], [40, 28], [0, 28]]}}
electrodes:
  srod: {kind: rod, at: [-3, 2], length: 8 ft, diameter: 5/8 in, metal: copper-clad steel, listed: yes}
  srod2: {kind: rod, at: [-3, 18], length: 4 ft, diameter: 5/8 in, metal: copper-clad steel, listed: yes, condition: loose}
  erod: {kind: rod, at: [-3, 36], length: 4 ft, diameter: 5/8 in, metal: copper-clad steel, listed: yes, condition: loose}
equipment:
  panel: {kind: service panel, at: [1, 2], where: house, neutral_bonded: yes}
bars:
  entry: {kind: entry panel, at: [-1, 28], where: outside}
conductors:
  c1: {from: panel, to: srod, wire: 6 AWG copper, length: 5 ft, joints: [bolted lug, acorn clamp]}
  c1b: {from: srod, to: srod2, wire: 6 AWG copper, length: 16 ft, joints: [acorn clamp, solder]}
  c3: {from: entry, to: erod, wire: 6 AWG copper, length: 10 ft, joints: [bolted lug, solder]}
`;

function planOf(text: string): WorksPlan {
  const before = studyOfText(text);
  const limits = { budget: null, hours: null };
  return toEnd(planWorks({ before, text, candidatesOf, costOf, tryChanges: tryOn, limits }));
}

/** Steps that join something to a part that a later step renews. */
function wasted({ steps, after }: WorksPlan): readonly string[] {
  return steps.flatMap(({ work }, i) => {
    const lands = landsOn(work, endsIn(after));
    const later = steps.slice(i + 1).filter((s) => [...renewedBy(s.work)].some((part) => lands.has(part)));
    return later.map((s) => `${work.id} before ${s.work.id}`);
  });
}

describe('what renews a part', () => {
  const plan = planOf(house);
  const ids = plan.steps.map((s) => s.work.id);

  it('comes before what is welded, bonded or jointed to that part', () => {
    for (const id of ['deepen-rod:srod2', 'deepen-rod:erod', 'replace-joint:c1b', 'replace-joint:c3'])
      expect(ids).toContain(id);
    expect(wasted(plan)).toEqual([]);
    expect(ids.indexOf('deepen-rod:srod2')).toBeLessThan(ids.indexOf('replace-joint:c1b'));
    expect(ids.indexOf('deepen-rod:erod')).toBeLessThan(ids.indexOf('replace-joint:c3'));
  });

  it('has its effect, and those after it have theirs, as they are in that order', () => {
    plan.steps.forEach(({ inTurn }, i) => {
      const after = tryOn(house, changesOf(plan.steps.slice(0, i + 1).map((s) => s.work)));
      if ('problem' in after) throw new Error(after.problem);
      expect(inTurn.after).toEqual(remainingOf(after.findings));
    });
  });

  it('is not done for that alone, and is not thought of where nothing renews', () => {
    // both rods sound and long enough: nothing is left that comes first, and the solder is still what goes first
    const sound = house.replaceAll('length: 4 ft', 'length: 8 ft').replaceAll(', condition: loose', '');
    const plain = planOf(sound).steps.map((s) => s.work);
    expect(plain.some((w) => renewedBy(w).size > 0)).toBe(false);
    expect(plain[0]!.kind).toBe('replace-joint');
  });

  it('is a bar that is moved too, even where that only shows once others are done', () => {
    const file = join(import.meta.dirname, '../../../examples/small/protected-house/protected-house.site.yaml');
    const moved = planOf(readFileSync(file, 'utf8'));
    expect(moved.steps.map((s) => s.work.kind)).toContain('move-panel');
    expect(wasted(moved)).toEqual([]);
    // danger stays first
    expect(moved.steps[0]!.work.id).toBe('replace-conductor:gutter-bond');
  });
});

describe('the order that this asks for', () => {
  const work = (id: string, kind: WorkKind, changes: readonly SiteChange[], more: Partial<Work> = {}): Work => ({
    ...workOf({ id, price: 1, changes }),
    kind,
    ...more,
  });
  const wire = (id: string, from: string, to: string) =>
    ({ is: 'add', section: 'conductors', id, fields: { from, to } }) as const;
  const set = (section: string, id: string, field: string): SiteChange =>
    ({ is: 'set', section, id, field, value: 'x' }) as SiteChange;
  const deepen = (rod: string, more: Partial<Work> = {}) =>
    work(`deepen-rod:${rod}`, 'deepen-rod', [set('electrodes', rod, 'length')], more);
  const bond = (id: string, from: string, to: string) => work(id, 'bond', [wire(id, from, to)]);
  const orderOf = (works: readonly Work[], order: readonly string[]) => {
    const pool = poolOf(works);
    const numbers = order.map((id) => pool.works.findIndex((w) => w.id === id));
    return withFirsts(numbers, pool).map((i) => pool.works[i]!.id);
  };

  it('pulls what renews a part to right before what lands on it, and leaves all else', () => {
    const all = [bond('a', 'p', 'q'), bond('b', 'rod@top', 'r'), bond('c', 's', 't'), deepen('rod')];
    expect(orderOf(all, ['a', 'b', 'c', 'deepen-rod:rod'])).toEqual(['a', 'deepen-rod:rod', 'b', 'c']);
    expect(orderOf(all, ['c', 'a', 'b'])).toEqual(['c', 'a', 'b']);
  });

  it('does not pull what needs the other first, nor two that land on each other', () => {
    const needing = [bond('b', 'rod', 'r'), deepen('rod', { needs: ['b'] })];
    expect(orderOf(needing, ['b', 'deepen-rod:rod'])).toEqual(['b', 'deepen-rod:rod']);
    const [set1, set2] = [set('electrodes', 'one', 'length'), set('electrodes', 'two', 'length')];
    const crossed = [
      work('x', 'deepen-rod', [set1, wire('wx', 'two', 'p')]),
      work('y', 'deepen-rod', [set2, wire('wy', 'one', 'p')]),
    ];
    expect(new Set(orderOf(crossed, ['x', 'y']))).toEqual(new Set(['x', 'y']));
    const firsts = firstsOf(crossed, [[0], [1]], () => []);
    expect(firsts.flat()).toHaveLength(1);
  });

  it('counts a protector on a moved bar, a joint made anew and a conductor laid anew, but no ring that is closed', () => {
    const ends = (id: string) => (id === 'lead' ? ['p', 'rod'] : []);
    const protector: SiteChange = {
      is: 'add',
      section: 'arresters',
      id: 'a',
      fields: { kind: 'gas tube', on: 'entry' },
    };
    expect([...landsOn(work('p', 'add-protector', [protector]), ends)]).toEqual(['entry']);
    expect([...renewedBy(work('m', 'move-panel', [set('bars', 'entry', 'at')]))]).toEqual(['entry']);
    const joint = work('j', 'replace-joint', [set('conductors', 'lead', 'joints')], { at: ['lead', 'lead:rod'] });
    expect([...landsOn(joint, ends)]).toEqual(['rod']);
    const anew = work('r', 'replace-conductor', [set('conductors', 'lead', 'wire')], { at: ['lead'] });
    expect([...landsOn(anew, ends)]).toEqual(['p', 'rod']);
    expect([...renewedBy(work('c', 'close-ring', [set('electrodes', 'ring', 'closed')]))]).toEqual([]);
  });
});
