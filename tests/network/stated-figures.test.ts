import { describe, expect, it } from 'vitest';
import { solveBodies } from '../../src/electrodes/solve-bodies.ts';
import { soilImages } from '../../src/soil/layer-images.ts';
import { layeredSoil } from '../../src/soil/layered-soil.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { earthIn } from './earth-in.ts';
import { bodies, joinedOhm, run } from './joined-ohm.ts';

/** Two rods of 3 m by 16 mm, 4 m apart, tied above the ground. */
function twoRodsSite(first: string, soil = '100 ohm m', places = true) {
  const at = (e: number): string => (places ? `at: [${e}, 0], ` : '');
  return earthIn(`
site: {name: Stated, region: iec, units: m, service: R1}
soil: {layers: [{resistivity: ${soil}}]}
electrodes:
  R1: {kind: rod, ${at(0)}length: 3 m, diameter: 16 mm${first}}
  R2: {kind: rod, ${at(4)}length: 3 m, diameter: 16 mm}
conductors:
  tie: {from: R1, to: R2, resistance: 0 ohm, joints: none, buried: no}
`);
}

const twoRods = (...typed: Parameters<typeof twoRodsSite>) => twoRodsSite(...typed).dc;

const rods = bodies([run([0, 0, 0], [0, 0, 3], 0.008), run([4, 0, 0], [4, 0, 3], 0.008)]);

/** Own figures and what each feels of the other, in uniform soil. */
function pair(ohmM: number) {
  const solved = solveBodies(rods, soilImages(layeredSoil([ohmM])));
  if (!solved.ok) throw new Error(solved.reason);
  return { ownOhm: solved.resistanceOhm[0]!, mutualOhm: solved.resistanceOhm[1]! };
}

/** Two electrodes joined that feel each other: (R1 R2 - Rm^2) / (R1 + R2 - 2 Rm), circuit theory. */
function joined(a: number, b: number, m: number): number {
  return (a * b - m * m) / (a + b - 2 * m);
}

function isNear(ohm: number | null, expected: number, share = 0.005): void {
  expect(ohm! / expected).toBeGreaterThan(1 - share);
  expect(ohm! / expected).toBeLessThan(1 + share);
}

describe('an electrode of a stated resistance', () => {
  const { ownOhm, mutualOhm } = pair(100);

  it('has that, and the soil still joins it to the others', () => {
    const { alone, earth } = twoRods(', resistance: 20 ohm');
    expect(alone.get('R1')).toMatchObject({ how: 'stated', ohm: { low: 20, value: 20, high: 20 } });
    const expected = joined(20, ownOhm, mutualOhm);
    isNear(earth.resistanceOhm!.value, expected);
    isNear(earth.resistanceOhm!.low, expected);
    isNear(earth.resistanceOhm!.high, expected);
    expect(earth.couplingLeftOut).toEqual([]);
    // Parallel resistors would have 12.5: 7 % less.
    expect(earth.resistanceOhm!.value! / ((20 * ownOhm) / (20 + ownOhm))).toBeGreaterThan(1.05);
  });

  it('measured while bonded says nothing of the one alone', () => {
    const { alone, earth } = twoRods(', resistance: 8 ohm, measured: bonded');
    expect(alone.get('R1')!.how).toBe('computed');
    isNear(alone.get('R1')!.ohm!.value, ownOhm);
    isNear(earth.resistanceOhm!.value, joinedOhm(rods, [100]));
  });

  it('keeps its coupling in soil that is known by a range', () => {
    const { earth } = twoRods(', resistance: 24 ohm', '60 to 140 ohm m');
    const [least, most] = [pair(60), pair(140)];
    expect(earth.couplingLeftOut).toEqual([]);
    // The figure in the middle of a range is its geometric mean.
    const likely = pair(Math.sqrt(60 * 140));
    isNear(earth.resistanceOhm!.value, joined(24, likely.ownOhm, likely.mutualOhm));
    isNear(earth.resistanceOhm!.low, joined(24, least.ownOhm, least.mutualOhm));
    isNear(earth.resistanceOhm!.high, joined(24, most.ownOhm, most.mutualOhm));
  });

  it('less than what the soil taken would bring over from its neighbour: no coupling, named', () => {
    const { site, dc } = twoRodsSite(', resistance: 2 ohm');
    const { earth } = dc;
    expect(mutualOhm).toBeGreaterThan(2);
    expect(earth.couplingLeftOut).toEqual([['R1', 'R2']]);
    isNear(earth.resistanceOhm!.low, (2 * ownOhm) / (2 + ownOhm));
    expect(earth.resistanceOhm!.high).toBeCloseTo(2, 9);
    const { limits } = runStudy(site, { state: null, version: '0', checksum: '', date: null }).study.earth.solve!;
    expect(limits.join('\n')).toContain('R1 was read lower than the others would lift it');
  });

  it('over range is that and nothing more', () => {
    const { earth } = twoRods(', resistance: over 2000 ohm');
    expect(earth.resistanceOhm!.value).toBeNull();
    isNear(earth.resistanceOhm!.high, ownOhm);
    expect(earth.resistanceOhm!.low).toBeLessThanOrEqual(earth.resistanceOhm!.high);
  });
});

describe('stated figures without places', () => {
  it('are plain resistors', () => {
    const { earth } = earthIn(`
site: {name: Plain, region: iec, units: m, service: R1}
electrodes:
  R1: {kind: rod, resistance: 30 ohm}
  R2: {kind: rod, resistance: 60 ohm}
conductors:
  tie: {from: R1, to: R2, resistance: 0 ohm, joints: none}
`).dc;
    // 30 and 60 ohm side by side: 20.
    expect(earth.resistanceOhm).toEqual({ low: 20, value: 20, high: 20 });
    expect(earth.couplingLeftOut).toEqual([]);
  });
});

describe('computed figures without places', () => {
  it('are felt by nobody: as resistors for low and likely, the best one alone for high', () => {
    const { ownOhm } = pair(100);
    const { earth } = twoRods('', '100 ohm m', false);
    expect(earth.couplingLeftOut).toEqual([['R1', 'R2']]);
    isNear(earth.resistanceOhm!.low, ownOhm / 2);
    isNear(earth.resistanceOhm!.value, ownOhm / 2);
    isNear(earth.resistanceOhm!.high, ownOhm);
  });
});
