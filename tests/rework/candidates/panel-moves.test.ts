import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import { unanswered } from '../../../src/rework/candidates/unanswered.ts';
import { costOf } from '../../../src/rework/cost/cost-of.ts';
import { effectOf, harmOf } from '../../../src/rework/plan/effect-of.ts';
import { outlookOf } from '../../../src/rework/plan/outlook.ts';
import { planWorks } from '../../../src/rework/plan/plan-works.ts';
import { poolOf } from '../../../src/rework/plan/sets-of-works.ts';
import type { Work, WorksPlan } from '../../../src/rework/work.ts';
import type { SiteChange } from '../../../src/study/try-change.ts';
import { workTitle } from '../../../src/words/work-title.ts';
import { studyOfText, toEnd, tryOn } from '../plan/tried-site.ts';
import { farPanel, twoPanels } from './panel-sites.ts';

const speech = { terms: 'us', unitsFirst: 'us' } as const;
const moves = (text: string) => candidatesOf(studyOfText(text)).filter((w) => w.kind === 'move-panel');
const move = (text: string, id: string) => moves(text).find((w) => w.id === id)!;

/** What a work sets in a field; undefined: nothing. */
function setBy({ changes }: Work, id: string, field: string) {
  const change = changes.find((c): c is Extract<SiteChange, { is: 'set' }> => {
    return c.is === 'set' && c.id === id && c.field === field;
  });
  return change?.value;
}

function effectOn(text: string, work: Work) {
  const tried = tryOn(text, work.changes);
  if ('problem' in tried) throw new Error(tried.problem);
  return effectOf(outlookOf(studyOfText(text)), tried);
}

function planOf(text: string): WorksPlan {
  const limits = { budget: null, hours: null };
  return toEnd(planWorks({ before: studyOfText(text), text, candidatesOf, costOf, tryChanges: tryOn, limits }));
}

describe('a panel far from what lies in the soil', () => {
  const work = move(farPanel, 'move-panel:entry');

  it('goes to the wall by the electrode beside the service, low', () => {
    // the wall nearest to E1 at (42, 2) is at (40, 2); 0.3 m off it is 40.98 ft, to half a foot (41, 2); 3 ft up becomes 1 ft
    expect(setBy(work, 'entry', 'at')).toEqual([41, 2, 1]);
    expect(work.at).toEqual(['entry', 'E1']);
    expect(workTitle(work, speech)).toBe('Move entry along the wall, beside E1');
  });

  it('has every length that ends on it reckoned anew, and rounded up', () => {
    // 1 ft to E1 and 0.6 m (1.97 ft) for both ends: 2.97 ft
    expect(setBy(work, 'entry-rod', 'length')).toBe('3 ft');
    // radio at (36, 24): before hypot(4, 2) = 4.47 ft, now hypot(5, 22) = 22.56 ft; 7 - 4.47 + 22.56, and 2 ft down: 27.09 ft
    expect(setBy(work, 'radio-bond', 'length')).toBe('28 ft');
    // from the mast at (60, 40): before hypot(20, 14) = 24.41 ft, now hypot(19, 38) = 42.49 ft; 30 - 24.41 + 42.49 + 2 = 50.07 ft;
    // to the radio 6 - 4.47 + 22.56 + 2 = 26.09 ft
    expect(setBy(work, 'feed', 'lengths')).toEqual(['3 ft', '36 ft', '51 ft', '27 ft']);
    // 21 ft more outside and 21 ft more inside, 0.3048 m each
    expect(work.materials.find((m) => m.name === 'RG-213')?.count.high).toBeCloseTo(42 * 0.3048, 9);
    // the lead is cut shorter, the bond of the radio is new
    expect(work.materials.find((m) => m.name === '6 AWG copper')?.count.high).toBeCloseTo(28 * 0.3048, 9);
  });

  it('tells how its lead runs: one leg from the panel to the rod', () => {
    const run = work.runs.find((r) => r.part === 'entry-rod')!;
    // (41, 2) and (42, 2) ft
    const [from, to] = run.routeM;
    expect(from![0]).toBeCloseTo(12.4968, 9);
    expect(to![0]).toBeCloseTo(12.8016, 9);
    expect(run.depthM).toBeNull();
  });

  it('no longer says what nobody has looked at there', () => {
    expect(setBy(work, 'a1', 'near_fuel')).toBe('unknown');
  });

  it('takes away what it is for, and brings no hazard and no defect', () => {
    const effect = effectOn(farPanel, work);
    expect(work.answers).toEqual([
      'bond-between-groups-long:entry-rod',
      'bond-run-short:entry',
      'entry-lead-volts:entry',
    ]);
    expect(effect.cleared.map((f) => f.id)).toEqual(expect.arrayContaining([...work.answers]));
    expect(harmOf(effect)).toEqual([]);
    expect(effect.after.defects).toBe(effect.before.defects - 1);
  });

  it('takes a panel, by the allowance of new ones', () => {
    const { hours } = costOf(work, studyOfText(farPanel));
    // ours: 0.5 h for the visit, 3 h for the panel, 3 joints of 0.1 h, 31 ft (9.4 m) of wire on the wall at 0.05 h: 4.27 h, down
    // to a quarter; the lead and the bond of the radio
    expect(hours.low).toBe(4.25);
  });

  it('is not moved back for the wires to its boxes, which are long then', () => {
    const moved = tryOn(farPanel, work.changes);
    if ('problem' in moved) throw new Error(moved.problem);
    expect(moved.findings.find((f) => f.id === 'bond-between-groups-long:radio-bond')?.outcome).toBe('not met');
    expect(moves(moved.text)).toEqual([]);
  });

  it('comes in the plan, whose text has the new place and keeps the comment', () => {
    const plan = planOf(farPanel);
    expect(plan.steps.map((s) => s.work.id)).toContain('move-panel:entry');
    expect(plan.text).toContain('entry: {kind: entry panel, at: [41, 2, 1], where: outside}  # over the old window');
    expect(plan.after.findings.filter((f) => f.rule === 'bond-run-short' && f.outcome === 'not met')).toEqual([]);
  });
});

describe('lengths that nobody can take from places', () => {
  const noPlace = farPanel.replace('at: [36, 24, 3], where: house', 'where: house');

  it('go up by the way along the wall, and no farther', () => {
    const work = move(noPlace, 'move-panel:entry');
    // along the wall hypot(1, 24) = 24.02 ft and 2 ft down, on top of 7 ft and of 6 ft
    expect(setBy(work, 'radio-bond', 'length')).toBe('34 ft');
    expect(setBy(work, 'feed', 'lengths')).toEqual(['3 ft', '36 ft', '51 ft', '33 ft']);
  });

  it('do the same where the house stands between', () => {
    // the mast west of the house, in sight of neither place: 30 + 24.02 + 2 ft
    const west = farPanel.replace('mast: {kind: mast, at: [60, 40]', 'mast: {kind: mast, at: [-20, 15]');
    expect(setBy(move(west, 'move-panel:entry'), 'feed', 'lengths')).toEqual(['3 ft', '36 ft', '57 ft', '27 ft']);
  });

  it('stay unknown where they are, and go up as a whole where only the whole is typed', () => {
    const unknown = farPanel.replace('wire: 6 AWG copper, length: 7 ft', 'wire: 6 AWG copper, length: unknown');
    expect(setBy(move(unknown, 'move-panel:entry'), 'radio-bond', 'length')).toBe('unknown');
    const whole = farPanel.replace('lengths: [3 ft, 36 ft, 30 ft, 6 ft]', 'length: 75 ft');
    // two pieces end on the panel: 75 + 2 (24.02 + 2) ft
    expect(setBy(move(whole, 'move-panel:entry'), 'feed', 'length')).toBe('128 ft');
  });
});

describe('where the rod stands farther off the wall', () => {
  const off = farPanel
    .replace('E1: {kind: rod, at: [42, 2]', 'E1: {kind: rod, at: [45, 2]')
    .replace('[54, 2]', '[62, 2]');

  it('is moved as well: what was a defect is advice then', () => {
    const work = move(off, 'move-panel:entry');
    // 4 ft to E1 and 1.97 ft for both ends
    expect(setBy(work, 'entry-rod', 'length')).toBe('6 ft');
    expect(work.answers).toEqual(['bond-between-groups-long:entry-rod', 'bond-run-short:entry']);
    const effect = effectOn(off, work);
    expect(harmOf(effect)).toEqual([]);
    expect([effect.before.defects, effect.after.defects]).toEqual([1, 0]);
    expect(effect.cleared.map((f) => f.id)).not.toContain('bond-run-short:entry');
  });
});

describe('a panel by a rod of its own, far from the service', () => {
  const own = farPanel
    .replace(
      '  E2:',
      '  E3: {kind: rod, at: [41, 26], length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}\n  E2:',
    )
    .replace(
      'conductors:\n',
      'conductors:\n  own: {from: entry, to: E3, wire: 6 AWG copper, length: 3 ft, where: outside}\n',
    );

  it('is moved for the long wire to the service, and for nothing that a shorter lead does', () => {
    const work = move(own, 'move-panel:entry');
    expect(work.answers).toEqual(['bond-between-groups-long:entry-rod']);
    expect(setBy(work, 'entry-rod', 'length')).toBe('3 ft');
    // the wire to its own rod at (41, 26): 3 ft, 23 ft more than 1 ft apart, 2 ft down
    expect(setBy(work, 'own', 'length')).toBe('28 ft');
    expect(harmOf(effectOn(own, work))).toEqual([]);
  });

  it('is offered no move where the wire is no longer than asked', () => {
    expect(moves(own.replace('length: 30 ft, where: outside', 'length: 20 ft, where: outside'))).toEqual([]);
  });
});

describe('where no move is offered', () => {
  it('is a panel that hangs by its electrode already, however long its wire', () => {
    const near = farPanel.replace('at: [40, 26, 3]', 'at: [40, 3, 3]');
    expect(studyOfText(near).findings.find((f) => f.id === 'bond-run-short:entry')?.outcome).toBe('not met');
    expect(moves(near)).toEqual([]);
  });

  it('is one whose lead would be as long at any wall', () => {
    // both rods of the service 20 ft off the wall
    const far = farPanel
      .replace('E1: {kind: rod, at: [42, 2]', 'E1: {kind: rod, at: [60, 2]')
      .replace('[54, 2]', '[72, 2]');
    expect(moves(far).filter((w) => w.answers.includes('bond-run-short:entry'))).toEqual([]);
  });

  it('is one that nothing ties yet: it is tied first', () => {
    const loose = farPanel.replace(/ {2}entry-rod: .*\n/, '');
    expect(moves(loose)).toEqual([]);
  });
});

describe('a move that nobody can reckon', () => {
  const held = [
    [
      'what is typed to be near it',
      'gutter',
      farPanel.replace(
        'continuous: yes, bonded: yes}',
        'continuous: yes, bonded: yes, near: [{part: entry, distance: 2 ft}]}',
      ),
    ],
    ['what is within reach of it', 'radio', farPanel.replace('swr: 1.5}', 'swr: 1.5, within_reach: [entry]}')],
    ['fuel beside its arrester', 'a1', farPanel.replace('near_fuel: no', 'near_fuel: yes')],
    [
      'a wire of it in a pipe',
      'radio-bond',
      farPanel.replace('length: 7 ft', 'length: 7 ft, enclosure: steel conduit'),
    ],
  ] as const;

  it.each(held)('because of %s is told with what stands in the way, and answers nothing', (_, by, text) => {
    const study = studyOfText(text);
    const works = candidatesOf(study);
    const work = works.find((w) => w.id === 'move-panel:entry')!;
    expect(work.unreckoned).toEqual([by]);
    expect(work.changes).toEqual([]);
    expect(unanswered(study, works).map((f) => f.id)).toContain('bond-run-short:entry');
  });

  it('is left out of the plan with its reason, and never tried', () => {
    const plan = planOf(held[0][2]);
    const left = plan.leftOut.find((l) => l.work.id === 'move-panel:entry')!;
    expect(left).toMatchObject({ why: 'cannot be reckoned', because: ['gutter'], brings: [] });
    expect(plan.steps.map((s) => s.work.id)).not.toContain('move-panel:entry');
  });

  it('because its place is unknown is told where a defect asks for it', () => {
    const work = move(farPanel.replace('at: [40, 26, 3], ', ''), 'move-panel:entry');
    expect(work.unreckoned).toEqual(['entry']);
    expect(work.answers).toEqual(['bond-run-short:entry']);
  });
});

describe('two panels that nothing short joins', () => {
  const work = move(twoPanels, 'move-panel:entry-to-old-plate');

  it('stand side by side, the one by the service kept where it is', () => {
    // old-plate at (34, -0.5) is nearer to the service at (40, 2): 0.5 m to its east is 35.64 ft, to half a foot (35.5, -0.5)
    expect(setBy(work, 'entry', 'at')).toEqual([35.5, -0.5, 1]);
    const strap = work.changes.find((c) => c.is === 'add');
    // 1.5 ft and 0.2 m (0.66 ft): 2.16 ft
    expect(strap).toMatchObject({ fields: { from: 'entry', to: 'old-plate', length: '3 ft' } });
    // its lead to E3 (41, 26): 3 ft, along 26 ft of the east wall and 4.5 ft of the south wall, 2 ft down: 35.5 ft
    expect(setBy(work, 'entry-rod', 'length')).toBe('36 ft');
    expect(workTitle(work, speech)).toBe('Move entry beside old-plate and join the two');
  });

  it('put right what they are for, and bring no hazard and no defect', () => {
    const effect = effectOn(twoPanels, work);
    expect(work.answers).toEqual(['single-entry-panel:entry+old-plate']);
    expect(effect.cleared.map((f) => f.id)).toContain('single-entry-panel:entry+old-plate');
    expect(harmOf(effect)).toEqual([]);
  });

  it('are not both moved at once: one was measured to the place of the other', () => {
    const other = move(twoPanels, 'move-panel:old-plate');
    const { works, clashes } = poolOf([work, other]);
    expect(clashes[works.indexOf(work)]!.has(works.indexOf(other))).toBe(true);
  });
});

it('a conductor laid to a panel clashes with its move', () => {
  const work = move(farPanel, 'move-panel:entry');
  const fields = { from: 'gutter', to: 'entry', wire: '6 AWG copper', length: '4 ft' };
  const laid: Work = {
    ...work,
    id: 'bond:x',
    changes: [{ is: 'add', section: 'conductors', id: 'x', fields }],
  };
  const elsewhere: Work = {
    ...laid,
    id: 'bond:y',
    changes: [{ is: 'add', section: 'conductors', id: 'y', fields: { ...fields, to: 'E2' } }],
  };
  const { works, clashes } = poolOf([work, laid, elsewhere]);
  const at = (id: string) => works.findIndex((w) => w.id === id);
  expect(clashes[at(work.id)]!.has(at('bond:x'))).toBe(true);
  expect(clashes[at(work.id)]!.has(at('bond:y'))).toBe(false);
});

it('a new panel is called one, and says what it is bonded to', () => {
  const bare = farPanel
    .replace(/ {2}entry: .*\n/, '  station-bar: {kind: station ground bar, where: house}\n')
    .replace(/ {2}a1: .*\n/, '')
    .replace('arresters:\n', '')
    .replace(
      '{bond: mast@2 ft}, a1, radio], lengths: [3 ft, 36 ft, 30 ft, 6 ft]',
      '{bond: mast@2 ft}, radio], length: 75 ft',
    )
    .replace('from: entry, to: E1', 'from: station-bar, to: E1')
    .replace('to: entry', 'to: station-bar');
  const [work] = moves(bare);
  // it hangs at (40.98, 2) ft: nearer to the service panel at (40, 2) than to E1 at (42, 2)
  expect(workTitle(work!, speech)).toBe('A new entry panel, entry-panel, bonded to main-panel');
});
