import { describe, expect, it } from 'vitest';
import { compareStudies } from '../../src/compare/compare-studies.ts';
import type { FindingChange } from '../../src/compare/comparison.ts';
import { faults, openQuestions } from '../examples/marl-hill-faults.ts';
import { studyOfText, textOf } from './study-of-text.ts';

// Everything expected here was read from the two files and their story by hand.
const before = studyOfText(textOf('examples/marl-hill/marl-hill.site.yaml'));
const after = studyOfText(textOf('examples/marl-hill/marl-hill-after.site.yaml'));
const c = compareStudies(before, after);
const isAbout = (list: readonly FindingChange[], rule: string, at: string) =>
  list.some((f) => (f.before ?? f.after)!.rule === rule && (at === '' || f.at.includes(at)));

const ftM = 0.3048;

describe('Marl Hill after its rework', () => {
  it('has every fault of its story cleared but the long wire, which stayed', () => {
    const stayed = faults.filter((f) => !isAbout(c.findings.cleared, f.rule, f.at));
    expect(stayed.map((f) => f.rule)).toEqual(['bond-between-groups-long']);
    expect(isAbout(c.findings.unchanged, 'bond-between-groups-long', 'c4')).toBe(true);
    expect(openQuestions.filter((f) => !isAbout(c.findings.cleared, f.rule, f.at))).toEqual([]);
  });

  it('has as new what the new metal brings with it', () => {
    // rods one foot from the walls at y = 0, x = 48 and the shed's at (10, -40); E4 and anchor-rod-3 are 8.94 ft apart
    for (const at of ['E1', 'E3', 'E4', 'shed-rod'])
      expect(isAbout(c.findings.new, 'electrode-from-foundation-us', at)).toBe(true);
    expect(isAbout(c.findings.new, 'rod-spacing-effective', 'anchor-rod-3')).toBe(true);
    // its clamp at E1 lies in the soil now; the others went the way they were
    expect(isAbout(c.findings.new, 'concealed-joint-welded', 'c4:E1')).toBe(true);
    expect(isAbout(c.findings.unchanged, 'concealed-joint-welded', 'c4:tower-rods')).toBe(true);
    const notMet = c.findings.new.filter((f) => f.after!.outcome === 'not met');
    expect(notMet.every((f) => f.after!.severity === 'advice')).toBe(true);
  });

  it('does not count what was agreed to stand, and calls nothing worse', () => {
    const agreed = c.findings.new.filter((f) => f.after!.agreed !== null).map((f) => f.at.join());
    expect(agreed).toEqual(['c5b:roof-mast', 'gas-bond:gas']);
    expect(c.findings.new.filter((f) => agreed.includes(f.at.join())).some((f) => f.counts)).toBe(false);
    expect([c.findings.worse, c.findings.unsettled]).toEqual([[], []]);
    expect(c.worseIn).toBe(c.findings.new.filter((f) => f.counts).length);
  });

  it('counts nothing that another finding of its list causes', () => {
    // the plate is not tied to the service because its rod is not
    const plate = c.findings.cleared.find((f) => f.before!.rule === 'panel-tied-to-service')!;
    expect(plate.before!.under).toBe('all-electrodes-one-system:E2');
    expect(plate.counts).toBe(false);
  });

  it('tells the parts that stayed, came and went', () => {
    expect(c.parts.removed.map((p) => p.id)).toEqual(['clamp1']);
    expect(c.parts.renamed).toEqual([]);
    for (const id of ['E3', 'E4', 'shed-rod', 'house-run', 'tower-ring', 'station-bar', 'ibt', 'spd', 'gas-bond'])
      expect(c.parts.added.map((p) => p.id)).toContain(id);
    const changed = new Map(c.parts.changed.map((p) => [p.before.id, p]));
    expect(changed.get('thick-one')!.presence).toBe('went');
    expect(changed.get('a1')!.fields).toEqual([
      { field: 'rated_power', before: '200 W', after: '1 kW' },
      { field: 'sparkover', before: '230 V', after: '1 kV' },
    ]);
    expect(changed.get('tower')!.fields.find((f) => f.field === 'guys.guy-1.bypass')).toEqual({
      field: 'guys.guy-1.bypass',
      before: 'no',
      after: 'yes',
    });
    expect(changed.get('E1')!.movedM).toBeCloseTo(1 * ftM, 6);
    expect(changed.has('hf-radio')).toBe(false);
  });

  it('counts the material', () => {
    const of = (list: typeof c.materials.added) => new Map(list.map((m) => [m.name, m.count.low]));
    const [added, removed] = [of(c.materials.added), of(c.materials.removed)];
    // ibt-E1 2, bar-2 8, the bonds to the bar 3 + 3 + 5 + 5 + 5 + 3, gas 8, foil 2, shed 14
    expect(added.get('6 AWG copper')).toBeCloseTo(58 * ftM, 6);
    // c1b 4, ibt-run 4, the anchors 3 x 6, the roof mast 34 + 44
    expect(added.get('6 AWG tinned copper')).toBeCloseTo(104 * ftM, 6);
    // house-run 75, ring 80, radial-1 30, and by Pythagoras 29.155 + 25.632 + 24.698; conductors 71
    expect(added.get('2 AWG tinned copper')! / ftM).toBeCloseTo(335.485, 2);
    expect(added.get('strap 3 in x 0.022 in copper')).toBeCloseTo(9 * ftM, 6);
    // E3, E4, shed-rod, anchor-rod-2, anchor-rod-3, and anchor-rod of another metal
    expect(added.get('rod')).toBe(6);
    expect(removed.get('rod')).toBe(1);
    // a3, a4, and a1 with another voltage; a2 was only moved
    expect(added.get('gas tube')).toBe(3);
    expect(removed.get('gas tube')).toBe(1);
    expect(added.get('exothermic weld')).toBe(42);
    expect(removed.get('12 AWG copper')).toBeCloseTo(38 * ftM, 6);
    // two feet of c1; c2 and c6 are of other wire
    expect(removed.get('6 AWG copper')).toBeCloseTo(12 * ftM, 6);
    expect(removed.get('twist')).toBe(1);
  });

  it('sees the shack rod and the rod at the anchor come into the group of the service', () => {
    expect(c.unbonded.map((row) => [row.id.before, row.is])).toEqual([
      ['E2', { before: 'unbonded', after: null }],
      ['anchor-rod', { before: 'unbonded', after: null }],
    ]);
    const home = c.groups.find((g) => g.hasService.after === true)!;
    expect(home.hasService.before).toBe(true);
    for (const id of ['E2', 'anchor-rod', 'entry', 'E3']) expect(home.won).toContain(id);
    expect(c.earth.resistanceOhm.after!.high!).toBeLessThan(c.earth.resistanceOhm.before!.high!);
  });
});
