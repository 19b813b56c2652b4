import { describe, expect, it } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { dcOf, groundOfRun } from '../../src/network/dc-of.ts';
import { earthConditions } from '../../src/network/earth-conditions.ts';
import { readSite } from '../../src/site/read-site.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { bodies, joinedOhm, run } from './joined-ohm.ts';

/** A rod of 3 m by 16 mm in 100 over 50 ohm m. */
function rodSite(frost: string, states: string): string {
  return `
site: {name: Seasons, region: iec, units: m, service: R1}
soil:
  layers: [{resistivity: 100 ohm m, thickness: 2 m}, {resistivity: 50 ohm m}]
${frost}
electrodes: {R1: {kind: rod, at: [0, 0], length: 3 m, diameter: 16 mm}}
${states}
`;
}

function conditionsOf(text: string, seasons: boolean, state: string | null = null) {
  const { site, problems } = readSite(text, 'test');
  if (site === null) throw new Error(JSON.stringify(problems));
  const asked = bondingOf(site, state);
  const ground = groundOfRun(asked);
  return earthConditions(asked, { ground, dc: dcOf(asked, ground) }, seasons);
}

const states = `states:
  hard-winter: {says: frozen, frozen: yes}
  drought: {says: dry, dry: yes}
  spring: {says: wet, wet: yes}
  pulled: {says: nothing of the ground}`;
const frost = '  frost: 0.6 m';

describe('conditions of the ground', () => {
  it('are the soil as typed, and that of each state which says something of it', () => {
    const all = conditionsOf(rodSite(frost, states), false);
    expect(all.map((c) => [c.id, c.condition?.name ?? null])).toEqual([
      ['as typed', null],
      ['drought', 'dry'],
      ['hard-winter', 'winter'],
      ['spring', 'wet'],
    ]);
  });

  it('are those of the state first, where one is asked for, and no other twice', () => {
    const all = conditionsOf(rodSite(frost, states), false, 'hard-winter');
    expect(all.map((c) => [c.id, c.condition?.name])).toEqual([
      ['hard-winter', 'winter'],
      ['drought', 'dry'],
      ['spring', 'wet'],
    ]);
  });

  it('are the seasons too only where they are asked for; winter only with a frost depth', () => {
    expect(conditionsOf(rodSite(frost, ''), false).map((c) => c.id)).toEqual(['as typed']);
    expect(conditionsOf(rodSite(frost, ''), true).map((c) => c.id)).toEqual([
      'as typed',
      'wet',
      'dry',
      'summer',
      'winter',
    ]);
    expect(conditionsOf(rodSite('', ''), true).map((c) => c.id)).toEqual(['as typed', 'wet', 'dry', 'summer']);
  });

  it('stand in the study, all but the first in the detailed one alone', () => {
    const { site } = readSite(rodSite(frost, states), 'test');
    const of = (detail: boolean) =>
      runStudy(site!, { state: null, version: '0', checksum: '', date: null, detail }).study.earth.conditions;
    expect(of(false).map((c) => c.id)).toEqual(['as typed']);
    expect(of(true).map((c) => c.id)).toEqual(['as typed', 'drought', 'hard-winter', 'spring', 'summer']);
    expect(of(true).find((c) => c.id === 'hard-winter')!.says).toContain('frozen down to 0.6 m');
  });

  it('rise from wet over as typed to dry and frozen', () => {
    const all = conditionsOf(rodSite(frost, states), true);
    const likely = (id: string): number => all.find((c) => c.id === id)!.dc.earth.resistanceOhm!.value!;
    expect(likely('spring')).toBeLessThan(likely('as typed'));
    expect(likely('as typed')).toBeLessThan(likely('summer'));
    expect(likely('summer')).toBeLessThan(likely('drought'));
    expect(likely('as typed')).toBeLessThan(likely('hard-winter'));
  });

  it('enclose their likely figure, each of them', () => {
    for (const { dc } of conditionsOf(rodSite(frost, states), true)) {
      const { low, value, high } = dc.earth.resistanceOhm!;
      expect(low).toBeLessThanOrEqual(value!);
      expect(value).toBeLessThanOrEqual(high);
      const alone = dc.alone.get('R1')!.ohm!;
      expect(alone.low).toBeLessThanOrEqual(alone.value!);
      expect(alone.value).toBeLessThanOrEqual(alone.high);
    }
  });
});

describe('a frozen top over two layers', () => {
  const winter = conditionsOf(rodSite(frost, states), false).find((c) => c.id === 'hard-winter')!;

  it('is a soil of more layers, none of them a multiplier', () => {
    const { low, likely, high } = winter.ground.soil!.profile;
    for (const soil of [low!, likely!, high!]) expect(soil.resistivityOhmM.length).toBeGreaterThanOrEqual(3);
    // Wet below the frost, as typed below the reach of the seasons.
    expect(likely!.thicknessM[0]).toBeCloseTo(0.6, 12);
    expect(likely!.resistivityOhmM.at(-1)).toBe(50);
    expect(likely!.resistivityOhmM[0]).toBeGreaterThan(200);
  });

  it('has what the same rod has in that soil, typed as plain layers', () => {
    const rod = bodies([run([0, 0, 0], [0, 0, 3], 0.008)]);
    const { low, likely, high } = winter.ground.soil!.profile;
    const by = (soil: NonNullable<typeof low>): number => joinedOhm(rod, soil.resistivityOhmM, soil.thicknessM);
    const { resistanceOhm } = winter.dc.earth;
    expect(resistanceOhm!.low / by(low!)).toBeCloseTo(1, 2);
    expect(resistanceOhm!.value! / by(likely!)).toBeCloseTo(1, 2);
    expect(resistanceOhm!.high / by(high!)).toBeCloseTo(1, 2);
  });
});

describe('a rod that was measured', () => {
  const stated = rodSite(frost, states).replace('diameter: 16 mm', 'diameter: 16 mm, resistance: 40 ohm');

  it('keeps its figure as it is, and changes with the ground as the same rod would by the solve', () => {
    const rod = bodies([run([0, 0, 0], [0, 0, 3], 0.008)]);
    const all = conditionsOf(stated, false);
    expect(all[0]!.dc.earth.resistanceOhm).toEqual({ low: 40, value: 40, high: 40 });
    const winter = all.find((c) => c.id === 'hard-winter')!;
    const frozen = winter.ground.soil!.profile.likely!;
    const times = joinedOhm(rod, frozen.resistivityOhmM, frozen.thicknessM) / joinedOhm(rod, [100, 50], [2]);
    expect(times).toBeGreaterThan(1);
    const { low, value, high } = winter.dc.earth.resistanceOhm!;
    expect(value! / (40 * times)).toBeCloseTo(1, 2);
    expect(low).toBeLessThanOrEqual(value!);
    expect(high).toBeGreaterThanOrEqual(value!);
    expect(winter.dc.alone.get('R1')!.how).toBe('stated');
  });
});

describe('frost over a rod', () => {
  // Frozen top of 10 times 100 ohm m over 100, ratio to unfrozen, 10 ft by 5/8 in; boundary elements worked out apart.
  it.each([
    [0.3, 1.081],
    [0.6, 1.178],
    [0.9, 1.295],
    [1.2, 1.441],
    [1.5, 1.629],
  ])('down to %f m raises it %f times', (depthM, times) => {
    const site = (top: string): string => `
site: {name: Frost, region: iec, units: m, service: R1}
soil: {layers: [${top}{resistivity: 100 ohm m}]}
electrodes: {R1: {kind: rod, at: [0, 0], length: 10 ft, diameter: 5/8 in}}
`;
    const ohm = (top: string): number => conditionsOf(site(top), false)[0]!.dc.earth.resistanceOhm!.value!;
    const ratio = ohm(`{resistivity: 1000 ohm m, thickness: ${depthM} m}, `) / ohm('');
    expect(ratio / times).toBeGreaterThan(0.98);
    expect(ratio / times).toBeLessThan(1.02);
  });
});
