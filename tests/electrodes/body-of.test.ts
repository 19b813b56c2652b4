import { describe, expect, it } from 'vitest';
import type { Run, SoilPoint } from '../../src/electrodes/body.ts';
import { bodyOf } from '../../src/electrodes/body-of.ts';
import { bodyTroubles } from '../../src/electrodes/body-troubles.ts';
import { closedFormOf } from '../../src/electrodes/closed-form-of.ts';
import type { EncasedShape, RodsShape } from '../../src/electrodes/electrode.ts';
import { exact } from '../../src/units/interval.ts';
import { drilled, rod, rods } from './shapes.ts';
import { bodyFrom, figuresOf, off, ohmOfBody, ohmOfShape, plate, ring, run, star, wire } from './solved.ts';

const encased = (lengthM: number, widthM: number, heightM: number, coreM: number): EncasedShape => ({
  kind: 'encased',
  lengthM: exact(lengthM),
  widthM: exact(widthM),
  heightM: exact(heightM),
  topM: exact(0.5),
  concreteOhmM: exact(50),
  coreDiameterM: exact(coreM),
});

const lengthOf = ({ from, to }: Run): number => Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
const total = (runs: readonly Run[]): number => runs.reduce((sum, r) => sum + lengthOf(r), 0);
function expectPoint(point: SoilPoint, expected: SoilPoint): void {
  for (const axis of [0, 1, 2] as const) expect(point[axis]).toBeCloseTo(expected[axis], 9);
}

describe('rods', () => {
  it('stand upright below their place, as thick as they are', () => {
    const { runs } = bodyFrom({ ...rod(2.4, 0.016), topM: exact(0.3) }, { at: [5, -2] });
    expect(runs.length).toBe(1);
    expectPoint(runs[0]!.from, [5, -2, 0.3]);
    expectPoint(runs[0]!.to, [5, -2, 2.7]);
    expect([runs[0]!.radiusM, runs[0]!.sheath]).toEqual([0.008, null]);
  });

  it('at an angle lean the way they are laid, their top at their place', () => {
    const { runs } = bodyFrom({ ...rod(2, 0.016), angleDeg: exact(30) }, { at: [5, -2], directionDeg: 90 });
    expectPoint(runs[0]!.from, [5, -2, 0]);
    expectPoint(runs[0]!.to, [5, -1, Math.sqrt(3)]);
  });

  it('laid flat are a wire', () => {
    const flat = bodyFrom({ ...rod(10, 0.01), topM: exact(0.5), angleDeg: exact(90) });
    expect(off(ohmOfBody(flat), ohmOfShape(wire(10, 0.5, 0.005)))).toBeLessThan(1e-9);
  });

  it('driven aslant reach less deep and are a little worse', () => {
    const upright = ohmOfShape(rod(2.4, 0.016));
    const leaning = ohmOfShape({ ...rod(2.4, 0.016), angleDeg: exact(45) });
    expect(leaning).toBeGreaterThan(upright);
    expect(leaning).toBeLessThan(1.1 * upright);
  });

  it('in a filled hole are as thick as the hole, with the rod in the middle', () => {
    const [only] = bodyFrom(drilled(3, 0.016, 0.2, 5)).runs;
    expect(only!.radiusM).toBe(0.1);
    expect(only!.sheath).toEqual({ resistivityOhmM: 5, coreRadiusM: 0.008 });
    expect(bodyFrom(drilled(3, 0.016, 0.016, 5)).runs[0]!.sheath).toBeNull();
  });

  it('a casing is a thick rod', () => {
    const casing = { ...rod(60, 0.15), kind: 'well casing' } as const;
    expect(bodyFrom(casing).runs).toEqual([run([0, 0, 0], [0, 0, 60], 0.075)]);
  });
});

describe('groups of rods', () => {
  const joined = (
    count: number,
    layout: RodsShape['layout'],
    topM: number,
    depthM: number | null = null,
  ): RodsShape => ({
    ...rods(count, layout, 4, 2.4, 0.016),
    topM: exact(topM),
    joiningWire: { radiusM: exact(0.004), depthM: depthM === null ? null : exact(depthM) },
  });

  it('of one rod, without a layout, is that rod', () => {
    expect(bodyFrom({ ...rods(1, null, 4, 2.4, 0.016), spacingM: null })).toEqual(bodyFrom(rod(2.4, 0.016)));
  });

  it('all lean the same way', () => {
    const { runs } = bodyFrom({ ...rods(3, 'ring', 4, 2.4, 0.016), angleDeg: exact(20) });
    const lean = runs.map(({ from, to }) => to[0] - from[0]);
    for (const eastM of lean) expect(eastM).toBeCloseTo(2.4 * Math.sin(Math.PI / 9), 9);
  });

  // wires: one fewer than rods in a line, as many round a closed layout, one to each from the middle of a star
  it.each([
    ['line', 4, 3, 12],
    ['line', 2, 1, 4],
    ['ring', 2, 1, 4],
    ['triangle', 3, 3, 12],
    ['square', 8, 8, 32],
    ['ring', 6, 6, 24],
    ['star', 5, 4, 16],
  ] as const)('%s of %d has %d wires between them, %d m in all', (layout, count, wires, lengthM) => {
    const { runs } = bodyFrom(joined(count, layout, 0.5));
    const between = runs.slice(count);
    expect(between.length).toBe(wires);
    expect(total(between)).toBeCloseTo(lengthM, 9);
    for (const { from, to, radiusM } of between) expect([from[2], to[2], radiusM]).toEqual([0.5, 0.5, 0.004]);
  });

  it('the wire at grade is no metal in the soil; at a depth of its own it is', () => {
    expect(bodyFrom(joined(3, 'ring', 0)).runs.length).toBe(3);
    expect(bodyFrom(joined(3, 'ring', 0, 0.4)).runs.length).toBe(6);
  });

  it('the wire makes the group better', () => {
    const bare = ohmOfShape({ ...joined(4, 'line', 0.5), joiningWire: null });
    expect(ohmOfShape(joined(4, 'line', 0.5))).toBeLessThan(0.95 * bare);
  });
});

describe('what lies level', () => {
  it('a wire lies from west to east round its place, or as it is turned', () => {
    const [only] = bodyFrom(wire(10, 0.6, 0.004), { at: [3, 4], directionDeg: 90 }).runs;
    expectPoint(only!.from, [3, -1, 0.6]);
    expectPoint(only!.to, [3, 9, 0.6]);
  });

  it('a route is followed; each point may have its own depth; a point typed twice is one', () => {
    const { runs } = bodyFrom(wire(10, 0.6, 0.004), {
      at: [99, 99],
      route: [
        [0, 0],
        [4, 0, 0.8],
        [4, 0, 0.8],
        [4, 3],
      ],
    });
    expect(runs).toEqual([run([0, 0, 0.6], [4, 0, 0.8], 0.004), run([4, 0, 0.8], [4, 3, 0.6], 0.004)]);
  });

  it('a ring is as long as it is typed, its corners nearly on the circle', () => {
    const { runs } = bodyFrom(ring(10, 0.6, 0.004), { at: [2, 1] });
    expect(runs.length).toBeGreaterThanOrEqual(48);
    expect(total(runs)).toBeCloseTo(10 * Math.PI, 9);
    for (const { from } of runs) expect(off(Math.hypot(from[0] - 2, from[1] - 1), 5)).toBeLessThan(0.001);
    expect(runs.at(-1)!.to).toEqual(runs[0]!.from);
  });

  it('a star has its arms from one point', () => {
    const { runs } = bodyFrom(star(4, 6, 0.3, 0.002), { at: [1, 1], directionDeg: 45 });
    expect(runs.every(({ from }) => from[0] === 1 && from[1] === 1)).toBe(true);
    expectPoint(runs[0]!.to, [1 + 6 * Math.SQRT1_2, 1 + 6 * Math.SQRT1_2, 0.3]);
    expectPoint(runs[1]!.to, [1 - 6 * Math.SQRT1_2, 1 + 6 * Math.SQRT1_2, 0.3]);
  });

  it('a plate covers its area; on edge it stands from half its height above its depth to half below', () => {
    const flat = bodyFrom(plate(0.9, 0.6, 1.5)).runs;
    expect(flat.every(({ from, to }) => from[2] === 1.5 && to[2] === 1.5)).toBe(true);
    expect(flat.every((r) => off(lengthOf(r), 0.9) < 1e-9)).toBe(true);
    const depths = bodyFrom(plate(0.9, 0.6, 1.5, 'on edge')).runs.map(({ from }) => from[2]);
    expect(Math.min(...depths)).toBeGreaterThan(1.2);
    expect(Math.min(...depths)).toBeLessThan(1.3);
    expect(Math.max(...depths)).toBeLessThan(1.8);
    expect(depths.reduce((sum, d) => sum + d, 0) / depths.length).toBeCloseTo(1.5, 9);
  });

  it('concrete is as thick as its section, with bar or cage inside, and follows the trench', () => {
    const route = [
      [0, 0],
      [4, 0],
      [4, 2],
    ] as const;
    const { runs } = bodyFrom(encased(6, 0.5, 0.3, 0.02), { at: [0, 0], route });
    expect(runs.length).toBe(2);
    for (const { from, radiusM, sheath } of runs) {
      expect([from[2], radiusM]).toEqual([0.65, 0.2]);
      expect(sheath).toEqual({ resistivityOhmM: 50, coreRadiusM: 0.01 });
    }
  });

  it('a strap on rock lies at depth 0: twice what the same strap has with soil all round', () => {
    const strap = { kind: 'surface strap', lengthM: exact(10), widthM: exact(0.1) } as const;
    const buried = bodyFrom(wire(10, 1e6, 0.025));
    expect(off(ohmOfShape(strap), 2 * ohmOfBody(buried))).toBeLessThan(1e-5);
  });
});

/** The closed forms spread the leakage evenly: never below the solution, above it the more the thicker the metal is. */
describe('every kind against its closed form, 100 ohm metre', () => {
  it.each([
    ['drilled rod', drilled(3, 0.016, 0.2, 5), 0.02],
    ['drilled rod, backfill as the soil', drilled(3, 0.016, 0.2, 100), 0.02],
    ['well casing', { ...rod(60, 0.15), kind: 'well casing' as const }, 0.01],
    ['concrete', encased(6.1, 0.5, 0.3, 0.02), 0.02],
    ['pipe', { kind: 'pipe' as const, lengthM: exact(12), diameterM: exact(0.05), depthM: exact(1) }, 0.015],
    ['strap on rock', { kind: 'surface strap' as const, lengthM: exact(10), widthM: exact(0.1) }, 0.012],
  ] as const)('%s', (_, shape, share) => {
    const solved = ohmOfShape(shape);
    const figures = figuresOf(shape);
    const form = closedFormOf(shape);
    const closed = 100 * form.perOhmM(figures)! + form.insideOhm(figures);
    expect(solved).toBeLessThan(closed * 1.0005);
    expect(solved).toBeGreaterThan(closed * (1 - share));
  });

  it('backfill as resistive as the soil is soil', () => {
    expect(off(ohmOfShape(drilled(3, 0.016, 0.1, 100)), ohmOfShape(rod(3, 0.016)))).toBeLessThan(0.006);
  });
});

describe('refused, with the figures that say why', () => {
  const figures = (shape: Parameters<typeof figuresOf>[0]) => figuresOf(shape);

  it.each([
    [
      'a rod whose top is above the ground',
      { ...rod(2.4, 0.016), topM: exact(-0.1) },
      'above-ground',
      { depthM: -0.1 },
    ],
    ['a plate on edge that looks out', plate(0.9, 0.9, 0.2, 'on edge'), 'above-ground', null],
    ['a rod that leads upwards', { ...rod(2, 0.016), topM: exact(0.1), angleDeg: exact(120) }, 'above-ground', null],
    ['a wire of no length', wire(0, 0.5, 0.004), 'no-length', { lengthM: 0 }],
    ['a wire without thickness', wire(5, 0.5, 0), 'no-radius', { radiusM: 0 }],
    ['a wire shorter than its radius', wire(0.01, 0.5, 0.02), 'shorter-than-radius', { lengthM: 0.01, radiusM: 0.02 }],
    [
      'a rod wider than its hole',
      drilled(3, 0.1, 0.05, 5),
      'core-outside-sheath',
      { coreRadiusM: 0.05, radiusM: 0.025 },
    ],
    ['a rod without thickness in a hole', drilled(3, 0, 0.05, 5), 'no-radius', { radiusM: 0 }],
    [
      'a filling of negative resistivity',
      drilled(3, 0.016, 0.05, -5),
      'no-sheath-resistivity',
      { resistivityOhmM: -5 },
    ],
  ] as const)('%s', (_, shape, key, known) => {
    const made = bodyOf(shape, figures(shape));
    expect(made).toMatchObject({ ok: false, key });
    if (!made.ok && known !== null) expect(made.figures).toEqual(known);
  });

  it('a figure, a count or a way to stand that is missing', () => {
    const missing = { ok: false, key: 'figure-missing', figures: {} };
    expect(bodyOf(rod(2, 0.016), { lengthM: 2, topM: 0 })).toEqual(missing);
    expect(bodyOf({ ...rods(3, 'line', 4, 2, 0.016), count: null }, {})).toEqual(missing);
    expect(bodyOf({ ...plate(1, 1, 1), stands: null }, { widthM: 1, heightM: 1, depthM: 1 })).toEqual(missing);
    expect(bodyOf(wire(5, 0.5, 0.004), { lengthM: Number.POSITIVE_INFINITY, radiusM: 1, depthM: 1 })).toEqual(missing);
  });

  it('a route of one point twice has no metal', () => {
    const made = bodyOf(wire(5, 0.5, 0.004), figuresOf(wire(5, 0.5, 0.004)), {
      at: [0, 0],
      route: [
        [1, 1],
        [1, 1],
      ],
    });
    expect(made).toEqual({ ok: false, key: 'no-metal', figures: {} });
  });

  it('every run that cannot be solved for is told', () => {
    const good = run([0, 0, 0], [0, 0, 2], 0.01);
    const troubles = bodyTroubles({ runs: [good, run([0, 0, -1], [0, 0, 2], 0.01), run([1, 1, 1], [1, 1, 1], 0.01)] });
    expect(troubles.map(({ key }) => key)).toEqual(['above-ground', 'no-length']);
    expect(bodyTroubles({ runs: [good] })).toEqual([]);
  });
});
