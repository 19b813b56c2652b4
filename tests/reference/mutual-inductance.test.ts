import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mutualInductance } from '../../src/surge/mutual-inductance.ts';
import type { Point } from '../../src/surge/straight-piece.ts';
import { findPython } from './python.ts';

const python = findPython(['numpy', 'scipy'], 'mutual inductances against a numerical Neumann integral');

type Case = readonly [Point, Point, Point, Point, number];

const radiusM = 0.002;
const unit = fc
  .tuple(...[0, 1, 2].map(() => fc.double({ min: -1, max: 1, noNaN: true })))
  .map(([x, y, z]) => [x!, y!, z!])
  .filter((v) => Math.hypot(...v) > 0.1)
  .map((v) => v.map((x) => x / Math.hypot(...v)));
const power = (least: number, most: number) =>
  fc.double({ min: least, max: most, noNaN: true }).map((exponent) => 10 ** exponent);

/** Pieces of 0.1 to 10 m at any angle down to 1e-4, joined or 10 mm to 30 m apart. */
const cases = fc
  .tuple(unit, unit, unit, power(-1, 1), power(-1, 1), power(-4, 0), power(-2, 1.5), fc.boolean())
  .map(([ua, turn, off, lengthAM, lengthBM, angle, apartM, joined]): Case => {
    const lean = ua.map((x, k) => x + angle * turn[k]!);
    const ub = lean.map((x) => x / Math.hypot(...lean));
    const from = off.map((x) => (joined ? 0 : apartM * x));
    const to = from.map((x, k) => x + lengthBM * ub[k]!);
    return [[0, 0, 0], point(ua.map((x) => lengthAM * x)), point(from), point(to), joined ? radiusM : 0];
  })
  .filter(([, a, from, to]) => Math.abs(cosineOf(a, along(from, to))) > 1e-6)
  .filter(([, a, from, to, thickness]) => thickness > 0 || staysClear(a, from, to));

function point(v: readonly number[]): Point {
  return [v[0]!, v[1]!, v[2]!];
}

function along(from: Point, to: Point): readonly number[] {
  return to.map((x, k) => x - from[k]!);
}

/** Whether the second keeps more than two radii away from the first, seen at many places of both. */
function staysClear(a: Point, from: Point, to: Point): boolean {
  const places = Array.from({ length: 200 }, (_, k) => k / 199);
  return places.every((s) => {
    const p = a.map((x) => s * x);
    const step = along(from, to);
    const square = step.reduce((sum, x) => sum + x * x, 0);
    const t = step.reduce((sum, x, k) => sum + x * (p[k]! - from[k]!), 0) / square;
    const foot = Math.min(1, Math.max(0, t));
    return Math.hypot(...p.map((x, k) => x - from[k]! - foot * step[k]!)) > 0.01;
  });
}

describe.skipIf(python === null)('mutual inductance against a numerical Neumann integral, by another hand', () => {
  it('100 pairs in any position agree to 1e-8, near ones to 1e-9', () => {
    const all = fc.sample(cases, { seed: 41, numRuns: 100 });
    const theirs = python!.run('mutual-inductance.py', all) as readonly number[];
    let close = 0;
    all.forEach(([a0, a1, b0, b1, thickness], i) => {
      const ours = mutualInductance({ from: a0, to: a1, radiusM }, { from: b0, to: b1, radiusM });
      const cosine = cosineOf(a1, along(b0, b1));
      const share = Math.abs((ours - theirs[i]!) / (theirs[i]! / cosine));
      if (thickness > 0) close++;
      expect(share, JSON.stringify(all[i])).toBeLessThan(thickness > 0 ? 1e-9 : 1e-8);
    });
    expect(close).toBeGreaterThan(30);
  });
});

function cosineOf(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, x, k) => sum + x * b[k]!, 0) / Math.hypot(...a) / Math.hypot(...b);
}
