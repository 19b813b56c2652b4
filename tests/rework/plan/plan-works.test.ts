import { describe, expect, it } from 'vitest';
import { planWorks } from '../../../src/rework/plan/plan-works.ts';
import { remainingOf } from '../../../src/rework/plan/remaining-of.ts';
import type { LeftOut, WorksPlan } from '../../../src/rework/work.ts';
import { askByHand, planByHand, studyOfText, toEnd, workOf } from './tried-site.ts';

/** An invented house: mast and shack on rods of their own that nothing ties to the service. */
const house = `# typed on the roof
site: {name: Two Rods, region: us, units: ft, service: main-panel, supply: us-grounded}
electrodes:
  house-rod: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}  # behind the bins
  mast-rod: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
  shack-rod: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
supports:
  mast: {kind: mast, height: 30 ft, metal: galvanised steel}
equipment:
  main-panel: {kind: service panel, where: inside, neutral_bonded: yes, rating: 100 A}
conductors:
  house-lead: {from: main-panel, to: house-rod, wire: 6 AWG copper, length: 5 ft, joints: [bolted lug, exothermic weld]}
  mast-lead: {from: mast@base, to: mast-rod, wire: 6 AWG copper, length: 4 ft, joints: [bolted lug, hose clamp]}
`;

const welds = ['exothermic weld', 'exothermic weld'];
const wire = (id: string, from: string, to: string) =>
  ({
    is: 'add',
    section: 'conductors',
    id,
    fields: { from, to, wire: '6 AWG copper', length: '20 ft', joints: welds, known: 'planned' },
  }) as const;

const mastBond = workOf({ id: 'bond:mast-rod', price: 40, changes: [wire('bond-mast', 'mast-rod', 'house-rod')] });
const dearMastBond = workOf({
  id: 'bond:mast-rod-dear',
  price: 90,
  changes: [wire('dear-mast', 'mast-rod', 'house-rod')],
});
const shackBond = workOf({ id: 'bond:shack-rod', price: 30, changes: [wire('bond-shack', 'shack-rod', 'house-rod')] });
const clamp = workOf({
  id: 'joint:mast-clamp',
  price: 5,
  changes: [
    { is: 'set', section: 'conductors', id: 'mast-lead', field: 'joints', value: ['bolted lug', 'exothermic weld'] },
  ],
});
const loneRod = workOf({
  id: 'rod:lone',
  price: 1,
  changes: [
    {
      is: 'add',
      section: 'electrodes',
      id: 'lone-rod',
      fields: { kind: 'rod', length: '8 ft', diameter: '5/8 in', metal: 'copper-clad steel' },
    },
  ],
});
const rename = workOf({
  id: 'rename',
  price: 1,
  changes: [{ is: 'set', section: 'site', id: null, field: 'name', value: 'Another name' }],
});
const wrongId = workOf({
  id: 'wrong',
  price: 1,
  changes: [{ is: 'set', section: 'conductors', id: 'nowhere', field: 'length', value: '3 ft' }],
});

const ids = (plan: WorksPlan) => plan.steps.map((s) => s.work.id);
const why = (plan: WorksPlan) => Object.fromEntries(plan.leftOut.map((l: LeftOut) => [l.work.id, l.why]));
const hazardsAndDefects = (plan: WorksPlan) => {
  const { hazards, defects } = remainingOf(plan.after.findings);
  return hazards + defects;
};

describe('works by hand on an invented house', () => {
  const all = [mastBond, dearMastBond, shackBond, clamp, loneRod, rename, wrongId];
  const plan = planByHand(house, all);

  it('takes the cheaper of two bonds, and what takes a hazard away before what takes a defect away', () => {
    expect(ids(plan)).toHaveLength(3);
    expect(new Set(ids(plan).slice(0, 2))).toEqual(new Set(['bond:mast-rod', 'bond:shack-rod']));
    expect(ids(plan)[2]).toBe('joint:mast-clamp');
    expect(plan.searched).toBe('every set');
    expect(plan.weighedBy).toBe('price');
  });

  it('says why each other work is left out', () => {
    expect(why(plan)).toEqual({
      'bond:mast-rod-dear': 'not needed',
      'rod:lone': 'breaks another',
      rename: 'changes nothing',
      wrong: 'cannot be written',
    });
    const broken = plan.leftOut.find((l) => l.work.id === 'rod:lone')!;
    expect(broken.brings.map((f) => f.id)).toContain('all-electrodes-one-system:lone-rod');
  });

  it('counts what remains after each step as a study of that site counts it', () => {
    let text = house;
    for (const step of plan.steps) {
      const before = remainingOf(studyOfText(text).findings);
      expect(step.inTurn.before).toEqual(before);
      text = planByHand(text, [step.work]).text;
      expect(step.inTurn.after).toEqual(remainingOf(studyOfText(text).findings));
    }
  });

  it('gives a text that keeps the comments, and whose study is the one that was promised', () => {
    expect(plan.text).toContain('# typed on the roof');
    expect(plan.text).toContain('# behind the bins');
    expect(JSON.stringify(plan.after)).toBe(JSON.stringify(studyOfText(plan.text)));
    for (const id of ['bond-mast', 'bond-shack']) expect(plan.text).toContain(`  ${id}: {`);
  });

  it('keeps within a budget and within hours, and says which works go over', () => {
    const poor = planByHand(house, [mastBond, shackBond, clamp], { budget: 41 });
    expect(ids(poor)).toEqual(['bond:shack-rod', 'joint:mast-clamp']);
    expect(why(poor)).toEqual({ 'bond:mast-rod': 'over budget' });
    const hurried = planByHand(house, [mastBond, shackBond, clamp], { hours: 4.2 });
    expect(ids(hurried)).toEqual(['bond:shack-rod', 'joint:mast-clamp']);
    expect(why(hurried)).toEqual({ 'bond:mast-rod': 'over effort' });
  });

  it('does nothing where nothing can be done', () => {
    const none = planByHand(house, []);
    expect(none.steps).toEqual([]);
    expect(none.text).toBe(house);
    expect(none.after).toBe(none.before);
  });

  it('returns what it has when it is stopped, at whatever moment', () => {
    for (const after of [0, 1, 2, 5, 9]) {
      const stopped = toEnd(planWorks(askByHand(house, all)), after);
      expect(stopped.stopped).toBe(true);
      expect(JSON.stringify(stopped.after)).toBe(JSON.stringify(studyOfText(stopped.text)));
      expect(hazardsAndDefects(stopped)).toBeGreaterThanOrEqual(hazardsAndDefects(plan));
    }
    const afterTwo = toEnd(planWorks(askByHand(house, all)), 2);
    expect(afterTwo.steps).toHaveLength(1);
  });
});

describe('works that hang together', () => {
  const rod = workOf({ id: 'a-rod', price: 10, changes: loneRod.changes });
  const rodBond = workOf({
    id: 'b-bond',
    price: 5,
    needs: ['a-rod'],
    changes: [wire('bond-lone', 'lone-rod', 'house-rod')],
  });
  const shackByRod = workOf({
    id: 'c-shack',
    price: 5,
    needs: ['b-bond'],
    changes: [wire('bond-shack', 'shack-rod', 'lone-rod')],
  });

  it('stand one right after the other, each after what it needs', () => {
    const plan = planByHand(house, [shackByRod, rodBond, rod, mastBond]);
    const order = ids(plan);
    expect(order).toHaveLength(4);
    const first = order.indexOf('a-rod');
    expect(order.slice(first, first + 3)).toEqual(['a-rod', 'b-bond', 'c-shack']);
  });

  it('are left out together where one of them is not there', () => {
    const plan = planByHand(house, [shackByRod, rodBond]);
    expect(ids(plan)).toEqual([]);
    expect(why(plan)).toEqual({ 'b-bond': 'cannot be written', 'c-shack': 'cannot be written' });
  });

  it('are not done both where they change one field in two ways', () => {
    const other = workOf({
      ...{ id: 'joint:other', price: 2 },
      changes: [
        {
          is: 'set',
          section: 'conductors',
          id: 'mast-lead',
          field: 'joints',
          value: ['exothermic weld', 'exothermic weld'],
        },
      ],
    });
    const plan = planByHand(house, [clamp, other]);
    expect(ids(plan)).toEqual(['joint:other']);
  });
});
