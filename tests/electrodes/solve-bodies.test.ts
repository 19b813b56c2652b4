import { describe, expect, it } from 'vitest';
import type { Body, Run, SoilPoint } from '../../src/electrodes/body.ts';
import { mutualOfRods, slenderRod } from '../../src/electrodes/rod.ts';
import { segmentsOf } from '../../src/electrodes/segments.ts';
import { type SolvedBodies, solveBodies, solveSegments } from '../../src/electrodes/solve-bodies.ts';
import { starRuns } from '../../src/electrodes/star-runs.ts';
import { soilImages } from '../../src/soil/layer-images.ts';
import { layeredSoil } from '../../src/soil/layered-soil.ts';
import { layered, off, ohmOfBody, run, solved, uniform } from './solved.ts';

const rod = (eastM: number, lengthM = 3, radiusM = 0.008, topM = 0): Body => ({
  runs: [run([eastM, 0, topM], [eastM, 0, topM + lengthM], radiusM)],
});
const wire = (from: SoilPoint, to: SoilPoint, radiusM = 0.004): Body => ({ runs: [run(from, to, radiusM)] });
const grid = (lines: number, sideM: number): Body => ({
  runs: Array.from({ length: lines }, (_, i) => (i * sideM) / (lines - 1)).flatMap((at) => [
    run([0, at, 0.6], [sideM, at, 0.6], 0.004),
    run([at, 0, 0.6], [at, sideM, 0.6], 0.004),
  ]),
});

/** One figure to earth with all bodies joined. */
function joined({ resistanceOhm, aloneOhm }: SolvedBodies): number {
  const count = aloneOhm.length;
  if (count !== 2) throw new Error('two bodies');
  const [a, m, , b] = resistanceOhm as unknown as [number, number, number, number];
  return (a * b - m * m) / (a + b - 2 * m);
}

describe('bodies and each other', () => {
  it('one piece for a rod is the closed form of even leakage', () => {
    // exact average, rho / (2 pi L) (ln((2 L + q) / a) + a / (2 L) - q / (2 L)), q = sqrt(a^2 + 4 L^2): 33.4997 ohm
    const one = solveBodies([rod(0)], uniform, { cutting: () => 1, errorShare: 1 });
    expect(one.ok && one.resistanceOhm[0]).toBeCloseTo(33.4997, 3);
    expect(slenderRod({ lengthM: 3, topM: 0 }, 0.016) * 100).toBeCloseTo(33.4927, 3);
  });

  it('two far apart: each as alone, mutual rho / (2 pi D)', () => {
    const { resistanceOhm, aloneOhm } = solved([rod(0), rod(2000)]);
    expect(resistanceOhm[0]! / aloneOhm[0]!).toBeCloseTo(1, 5);
    expect(aloneOhm[0]).toBeCloseTo(ohmOfBody(rod(0)), 10);
    expect(off(resistanceOhm[1]!, 100 / (2 * Math.PI * 2000))).toBeLessThan(1e-4);
  });

  it('mutual of even leakage is the closed form, whatever the lengths', () => {
    const rods = [rod(0, 4, 0.008, 0.5), rod(0.7, 1.5)];
    const both = solveBodies(rods, uniform, { cutting: () => 1, errorShare: 1 });
    const exact = 100 * mutualOfRods({ lengthM: 4, topM: 0.5 }, { lengthM: 1.5, topM: 0 }, 0.7);
    // the width of both wires, 8 mm in 0.7 m, is in one and not in the other
    expect(both.ok && off(both.resistanceOhm[1]!, exact)).toBeLessThan(2e-4);
  });

  it('joined by their matrix is joined in one body', () => {
    const pair = [rod(0), rod(3)];
    const together = ohmOfBody({ runs: pair.flatMap((b) => b.runs) });
    expect(off(joined(solved(pair)), together)).toBeLessThan(0.002);
    const same = { cutting: () => 8, errorShare: 1 };
    const one = solved([{ runs: pair.flatMap((b) => b.runs) }], uniform, same).resistanceOhm[0]!;
    expect(joined(solved(pair, uniform, same)) / one).toBeCloseTo(1, 10);
  });

  it('two rods joined in one sum: total current of both at one volt', () => {
    const answer = solved([rod(0), rod(2, 2), wire([5, 5, 0.5], [9, 5, 0.5])]);
    const count = answer.aloneOhm.length;
    const ampere = [...answer.leakage].reduce((sum, each) => sum + each, 0);
    // 1 / R by the inverse of the matrix: V = 1 everywhere
    const { resistanceOhm: r } = answer;
    const residual = [0, 1, 2].map((row) => {
      const current = [0, 1, 2].map((body) => {
        let own = 0;
        answer.segments.body.forEach((b, i) => {
          if (b === body) for (let c = 0; c < count; c++) own += answer.leakage[i * count + c]!;
        });
        return own;
      });
      return current.reduce((sum, each, column) => sum + r[row * count + column]! * each, 0);
    });
    for (const volt of residual) expect(volt).toBeCloseTo(1, 10);
    expect(ampere).toBeGreaterThan(0);
    expect(answer.residual).toBeLessThan(1e-13);
  });

  it('an unbonded electrode beside others is lower than alone by what they carry off', () => {
    const { resistanceOhm, aloneOhm } = solved([rod(0), rod(1)]);
    expect(resistanceOhm[0]).toBeLessThan(aloneOhm[0]!);
    expect(resistanceOhm[0]).toBeGreaterThan(aloneOhm[0]! * 0.98);
  });

  it('is the same whichever body comes first', () => {
    const bodies = [rod(0), grid(3, 6), wire([-4, -3, 0.2], [-1, 2, 0.9])];
    for (const soil of [uniform, layered([1000, 60, 300], [0.4, 1.7])]) {
      const [one, other] = [solved(bodies, soil), solved([bodies[2]!, bodies[0]!, bodies[1]!], soil)];
      const order = [1, 2, 0];
      for (const [row, to] of order.entries()) {
        expect(other.resistanceOhm[to * 3 + order[row]!]! / one.resistanceOhm[row * 3 + row]!).toBeCloseTo(1, 9);
      }
    }
  });
});

describe('cutting', () => {
  it('a run typed as two, end to end, is the same to less than the estimate', () => {
    for (const soil of [uniform, layered([2000, 100], [0.3]), layered([100, 2000], [1.1])]) {
      const whole = solved([wire([0, 0, 0.5], [12, 0, 0.5])], soil);
      const split = solved(
        [{ runs: [run([0, 0, 0.5], [5, 0, 0.5], 0.004), run([5, 0, 0.5], [12, 0, 0.5], 0.004)] }],
        soil,
      );
      expect(off(split.resistanceOhm[0]!, whole.resistanceOhm[0]!)).toBeLessThan(
        Math.max(whole.errorShare[0]!, split.errorShare[0]!),
      );
    }
  });

  it('finer cutting of the same pieces never raises a figure', () => {
    let before = Number.POSITIVE_INFINITY;
    for (const pieces of [1, 2, 4, 8, 16, 32]) {
      const runs = Array.from({ length: pieces }, (_, k) =>
        run([0, 0, (3 * k) / pieces], [0, 0, (3 * (k + 1)) / pieces], 0.008),
      );
      const answer = solveBodies([{ runs }], uniform, { cutting: () => 1, errorShare: 10 });
      const ohm = answer.ok ? answer.resistanceOhm[0]! : Number.NaN;
      expect(ohm).toBeLessThan(before);
      before = ohm;
    }
  });

  it('cuts at the boundaries of layers, whichever way a run leads', () => {
    const soil = layeredSoil([100, 200, 300], [1, 1.5]);
    for (const [from, to] of [
      [0, 4],
      [4, 0],
    ] as const) {
      const segments = segmentsOf([{ runs: [run([0, 0, from], [2, 0, to], 0.008)] }], soil, () => 3);
      for (let i = 0; i < segments.count; i++) {
        const half = (Math.abs(segments.along[3 * i + 2]!) * segments.lengthM[i]!) / 2;
        const [top, foot] = [segments.middleM[3 * i + 2]! - half, segments.middleM[3 * i + 2]! + half];
        for (const boundary of [1, 2.5]) expect(top < boundary - 1e-9 && foot > boundary + 1e-9).toBe(false);
      }
      expect([...segments.lengthM].reduce((sum, each) => sum + each, 0)).toBeCloseTo(Math.hypot(2, 4), 12);
    }
  });

  it('a rod as long as a layer is thick, to a rounding, ends in it', () => {
    for (const past of [-1e-9, -2e-14, 0, 2e-14, 1e-9]) {
      for (const ohmM of [
        [4000, 10],
        [10, 4000],
      ]) {
        const answer = solved([rod(0, 3 + past, 0.02)], layered(ohmM, [3]));
        expect(Math.min(...answer.segments.lengthM)).toBeGreaterThan(0.03);
        expect(off(answer.resistanceOhm[0]!, ohmOfBody(rod(0, 3, 0.02), layered(ohmM, [3])))).toBeLessThan(1e-6);
      }
    }
  });

  it('stays within the number of segments allowed, or says how many there would be', () => {
    const many = grid(40, 39);
    expect(solveBodies([many], uniform, { mostSegments: 79 })).toEqual({
      ok: false,
      reason: 'too many segments',
      body: 0,
      segments: 80,
    });
    const kept = solved([many], uniform, { mostSegments: 100 });
    expect(kept.segments.count).toBe(80);
    // even leakage along each: the estimate says that it is coarse
    expect(kept.errorShare[0]).toBeGreaterThan(0.1);
  });

  it('10 000 runs are refused with their number', () => {
    const runs: Run[] = Array.from({ length: 10_000 }, (_, k) => run([k, 0, 0.5], [k + 0.9, 0, 0.5], 0.004));
    expect(solveBodies([{ runs }], uniform)).toMatchObject({
      ok: false,
      reason: 'too many segments',
      segments: 10_000,
    });
  });

  it('no body is said', () => {
    expect(solveBodies([], uniform)).toEqual({ ok: false, reason: 'no body', body: 0, segments: 0 });
  });
});

describe('the estimate of the error is not below the error', () => {
  const bodies: readonly (readonly [string, Body])[] = [
    ['wire', wire([0, 0, 0.5], [10, 0, 0.5])],
    ['long wire', wire([0, 0, 0.5], [100, 0, 0.5])],
    ['three arms', { runs: starRuns(3, 10, { depthM: 0.5, radiusM: 0.005, sheath: null }) }],
    ['eight arms', { runs: starRuns(8, 10, { depthM: 0.5, radiusM: 0.005, sheath: null }) }],
    [
      'tee with a rod',
      {
        runs: [
          run([0, 0, 0.5], [10, 0, 0.5], 0.005),
          run([4, 0, 0.5], [4, 3, 0.5], 0.004),
          run([4, 0, 0.5], [4, 0, 3], 0.008),
        ],
      },
    ],
    ['grid of 10 m', grid(3, 10)],
    ['grid of 20 m', grid(5, 20)],
    ['rod', rod(0)],
  ];
  const soils = [
    uniform,
    layered([300, 100], [1.5]),
    layered([100, 1000], [0.55]),
    layered([5000, 100, 1000], [0.3, 2]),
  ];

  it.each(bodies)('%s, against the same cut far finer, coarse and usual, in four soils', (_, body) => {
    for (const soil of soils) {
      const pieces = Math.min(64, Math.max(8, Math.round(300 / body.runs.length)));
      const fine = solved([body], soil, { cutting: () => pieces, errorShare: 10 }).resistanceOhm[0]!;
      for (const options of [
        { cutting: () => 1, errorShare: 10 },
        { cutting: () => 2, errorShare: 10 },
        { cutting: () => 3, errorShare: 10 },
        { cutting: () => 4, errorShare: 10 },
        {},
      ]) {
        const { resistanceOhm, errorShare, togetherErrorShare } = solved([body], soil, options);
        expect(resistanceOhm[0]! / fine - 1).toBeLessThanOrEqual(errorShare[0]!);
        expect(resistanceOhm[0]! / fine - 1).toBeLessThanOrEqual(togetherErrorShare);
      }
      // and by default it is worth having
      expect(solved([body], soil).errorShare[0]).toBeLessThan(0.01);
    }
  });

  it('a ring of even chords is exact as it is cut, and known to be', () => {
    const chords = Array.from({ length: 24 }, (_, k) => {
      const at = (n: number): SoilPoint => [5 * Math.cos((n * Math.PI) / 12), 5 * Math.sin((n * Math.PI) / 12), 0.6];
      return run(at(k), at(k + 1), 0.004);
    });
    const { resistanceOhm, errorShare } = solved([{ runs: chords }], uniform, { cutting: () => 1, errorShare: 1 });
    const fine = solved([{ runs: chords }], uniform, { cutting: () => 8, errorShare: 1 }).resistanceOhm[0]!;
    expect(off(resistanceOhm[0]!, fine)).toBeLessThan(errorShare[0]!);
    expect(errorShare[0]).toBeLessThan(0.005);
  });

  it('of one body is not that of another', () => {
    const { errorShare } = solved([rod(0), grid(3, 6)], uniform, {
      cutting: (_, runs) => (runs === 1 ? 20 : 1),
      errorShare: 1,
    });
    expect(errorShare[0]).toBeLessThan(0.005);
    expect(errorShare[1]).toBeGreaterThan(0.1);
  });
});

describe('metal that tries the method', () => {
  const finite = (answer: ReturnType<typeof solveBodies>): boolean =>
    !answer.ok ||
    ([...answer.resistanceOhm, ...answer.aloneOhm, ...answer.leakage].every(Number.isFinite) &&
      [...answer.errorShare].every((share) => share >= 0));

  it.each([
    ['two coinciding runs in one body', [{ runs: [rod(0).runs[0]!, rod(0).runs[0]!] }]],
    ['two coinciding bodies', [rod(0), rod(0)]],
  ] as const)('%s are refused', (_, bodies) => {
    expect(solveBodies(bodies, uniform, { cutting: () => 4 })).toMatchObject({
      ok: false,
      reason: 'not positive definite',
    });
  });

  it.each([
    ['crossing runs', [{ runs: [run([-3, 0, 0.5], [3, 0, 0.5], 0.004), run([0, -3, 0.5], [0, 3, 0.5], 0.004)] }]],
    ['crossing bodies', [wire([-3, 0, 0.5], [3, 0, 0.5]), wire([0, -3, 0.5], [0, 3, 0.5])]],
    ['a fork of 2 degrees', [wire([0, 0, 0.5], [5, 0, 0.5]), wire([0, 0, 0.5], [5, 0.17, 0.5])]],
    ['wire at the surface', [wire([0, 0, 0], [5, 0, 0])]],
    ['wire nearer to the surface than thick', [wire([0, 0, 0.01], [5, 0, 0.01], 0.05)]],
    ['a casing as short as thick', [rod(0, 0.2, 0.2)]],
    ['a run hardly longer than its radius', [wire([0, 0, 0.5], [0.011, 0, 0.5], 0.01)]],
    ['a wire of a kilometre', [wire([0, 0, 0.5], [1000, 0, 0.5])]],
    ['a hair', [wire([0, 0, 0.5], [5, 0, 0.5], 1e-6)]],
    ['a hair beside a casing', [wire([0, 0, 0.5], [5, 0, 0.5], 1e-5), rod(5.5, 30, 0.2)]],
  ] as const)('%s: a finite figure above 0', (_, bodies) => {
    for (const soil of [uniform, layered([5000, 100, 1000], [0.3, 3]), layered([10, 1e4], [0.01])]) {
      const answer = solveBodies(bodies, soil);
      expect(answer.ok).toBe(true);
      expect(finite(answer)).toBe(true);
      if (answer.ok) expect(Math.min(...answer.resistanceOhm)).toBeGreaterThan(0);
    }
  });

  it('a run inside another is refused or a finite figure, never something else', () => {
    for (const soil of [uniform, layered([5000, 100, 1000], [0.3, 3])]) {
      for (const short of [1, 2.9]) expect(finite(solveBodies([rod(0), rod(0, short)], soil))).toBe(true);
    }
  });

  it('one-piece runs give what even leakage gives, and not less than the truth', () => {
    const coarse = solved([grid(3, 6)], uniform, { cutting: () => 1, errorShare: 10 });
    expect(coarse.segments.count).toBe(6);
    expect(coarse.resistanceOhm[0]).toBeGreaterThan(ohmOfBody(grid(3, 6)));
  });

  it('wire on a boundary of layers is the same from above as from below', () => {
    for (const contrast of [10, 100, 1e4]) {
      for (const ohmM of [
        [contrast, 1],
        [1, contrast],
      ]) {
        const soil = layered(ohmM, [0.5]);
        const above = ohmOfBody(wire([0, 0, 0.5], [10, 0, 0.5]), soil);
        const below = ohmOfBody(wire([0, 0, 0.5 + 1e-12], [10, 0, 0.5 + 1e-12]), soil);
        expect(off(above, below)).toBeLessThan(1e-4);
      }
    }
  });

  it('a wire at the surface feels itself twice: half as well earthed as deep down', () => {
    const deep = ohmOfBody(wire([0, 0, 1000], [5, 0, 1000]));
    expect(ohmOfBody(wire([0, 0, 0], [5, 0, 0])) / deep).toBeCloseTo(2, 3);
  });

  it('concrete adds its own resistance: rho_c ln(D / d) / (2 pi l) for a rod with even leakage', () => {
    // 30 ohm m, 16 mm in 300 mm, 3 m by hand: 30 / (6 pi) ln 18.75 = 1.59155 x 2.93119 = 4.6652 ohm
    const bare = rod(0, 3, 0.15).runs[0]!;
    const encased = { ...bare, sheath: { resistivityOhmM: 30, coreRadiusM: 0.008 } };
    const one = { cutting: () => 1, errorShare: 10 };
    const more =
      solved([{ runs: [encased] }], uniform, one).resistanceOhm[0]! -
      solved([{ runs: [bare] }], uniform, one).resistanceOhm[0]!;
    expect(more).toBeCloseTo(4.6652, 3);
    expect(ohmOfBody({ runs: [encased] }) - ohmOfBody({ runs: [bare] })).toBeGreaterThan(4.5);
  });

  it('given segments are solved as they are', () => {
    const segments = segmentsOf([rod(0), rod(3)], uniform.soil, () => 5);
    const answer = solveSegments(segments, 2, uniform);
    expect(answer.ok && answer.segments).toBe(segments);
    expect(soilImages(layeredSoil([100])).between(0, 0).count).toBe(2);
  });
});
