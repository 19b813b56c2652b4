import { describe, expect, it } from 'vitest';
import { inductanceMatrix } from '../../src/surge/inductance-matrix.ts';
import { mutualInductance } from '../../src/surge/mutual-inductance.ts';
import { strapRadius } from '../../src/surge/piece-radius.ts';
import type { Point, StraightPiece } from '../../src/surge/straight-piece.ts';

const thin = 1e-7;
/** Radius of an American gauge by its area in mm2, as lightning tables print it. */
const gauge = (areaMm2: number) => Math.sqrt(areaMm2 / Math.PI) * 1e-3;
const along = (lengthM: number, radiusM: number, at: Point = [0, 0, 0]): StraightPiece => ({
  from: at,
  to: [at[0] + lengthM, at[1], at[2]],
  radiusM,
});
const ownUH = (piece: StraightPiece) => mutualInductance(piece, piece) * 1e6;
const near = (got: number, expected: number, share: number) => expect(Math.abs(got / expected - 1)).toBeLessThan(share);

describe('parallel pieces', () => {
  // Parallel filaments, closed form equal to a numerical Neumann integral to 1e-6, worked out apart from this program.
  it.each([
    [1, 0.05, 0.54765],
    [1, 0.2, 0.29853],
    [3, 0.1, 1.87644],
    [10, 0.3, 6.45896],
    [10, 1, 4.18647],
    [15, 0.3, 10.8752],
    [20, 1, 10.953],
    [20, 5, 5.25574],
  ])('%d m, %d m apart: %d uH', (lengthM, apartM, expectedUH) => {
    near(mutualInductance(along(lengthM, thin), along(lengthM, thin, [0, apartM, 0])) * 1e6, expectedUH, 2e-5);
    // metal that does not touch is as good as a filament along its axis (Maxwell: circles outside one another)
    near(mutualInductance(along(lengthM, 0.02), along(lengthM, 0.004, [0, 0, apartM])) * 1e6, expectedUH, 2e-5);
  });

  // Grover: 0.1 [(l + m) ln(l + m) - l ln l - m ln m] for filaments end to end; hand: l = m = 1 m gives 0.2 ln 2.
  it('end to end as Grover has it', () => {
    near(mutualInductance(along(1, thin), along(1, thin, [1, 0, 0])) * 1e6, 0.2 * Math.LN2, 1e-6);
    const byHand = 0.1 * (5 * Math.log(5) - 2 * Math.log(2) - 3 * Math.log(3));
    near(mutualInductance(along(2, thin), along(3, thin, [2, 0, 0])) * 1e6, byHand, 1e-6);
  });

  // A current in a shield makes no field inside it: the core sees the whole of what the shield makes outside.
  it('a core in its shield, or anywhere inside a tube, is coupled as the tube is with itself', () => {
    const shield = along(8, 0.005);
    expect(mutualInductance(along(8, 0.001), shield)).toBe(mutualInductance(shield, shield));
    expect(mutualInductance(along(8, 0.001, [0, 0.003, 0]), shield)).toBe(mutualInductance(shield, shield));
  });
});

describe('a piece on its own', () => {
  // Reference self-inductances, skin effect complete, worked out apart from this program by Rosa's form for long wires, which
  // leaves out what their two ends add: 0.2 uH/m times the radius. With it taken off ours is the same.
  it.each([
    [5.261, [0.30835, 1.2686, 4.465, 17.291, 58.466]],
    [13.3, [0.28052, 1.1759, 4.1868, 16.364, 55.683]],
    [33.63, [0.25269, 1.0831, 3.9085, 15.436, 52.9]],
    [67.43, [0.23182, 1.0135, 3.6998, 14.741, 50.813]],
  ])('round copper of %d mm2, 0.3 to 30 m', (areaMm2, expectedUH) => {
    const radiusM = gauge(areaMm2);
    [0.3, 1, 3, 10, 30].forEach((lengthM, i) => {
      near(ownUH(along(lengthM, radiusM)) - 0.2 * radiusM, expectedUH[i]!, 1e-4);
    });
  });

  // The same table; Terman's strap form stands on lengths of several widths: below ten the two part by up to 2e-3.
  it.each([
    [0.038, 0.0005, [0.1965, 0.89177, 3.331, 13.507, 47.11]],
    [0.076, 0.0008, [0.15678, 0.75537, 2.9184, 12.128, 42.969]],
    [0.15, 0.0005, [0.11971, 0.62412, 2.5181, 10.786, 38.936]],
  ])('strap %d x %d m, 0.3 to 30 m', (widthM, thicknessM, expectedUH) => {
    [0.3, 1, 3, 10, 30].forEach((lengthM, i) => {
      const share = lengthM < 10 * widthM ? 2e-3 : 1e-4;
      near(ownUH(along(lengthM, strapRadius(widthM, thicknessM))), expectedUH[i]!, share);
    });
  });

  // Exact filament form (Rosa 1908), by hand: l 1 m, r 0.1 m: ln(10 + sqrt 101) - sqrt 1.01 + 0.1 = 2.093236 (x 0.2 uH).
  it('a thick one, by the exact filament form', () => {
    near(ownUH(along(1, 0.1)), 0.2 * (Math.log(10 + Math.sqrt(101)) - Math.sqrt(1.01) + 0.1), 1e-12);
    near(ownUH(along(1, 0.1)), 0.2 * 2.093236, 1e-6);
  });

  // Handbook figures, the internal 0.05 uH/m of uniform current on top: 25 m of 6 AWG; 12 in of 1/4 in wire and 4 in strap.
  it('figures of handbooks', () => {
    expect(ownUH(along(25, gauge(13.3)))).toBeCloseTo(45.5, 1);
    expect(ownUH(along(25, gauge(13.3))) + 0.05 * 25).toBeCloseTo(46.7, 1);
    expect(Math.round(1e3 * (ownUH(along(0.3048, 0.003175)) + 0.05 * 0.3048))).toBe(275);
    expect(Math.round(1e3 * ownUH(along(0.3048, strapRadius(0.1016, 0))))).toBe(144);
  });
});

describe('bends', () => {
  const radiusM = gauge(13.3);
  const sum = (pieces: readonly StraightPiece[]) => inductanceMatrix(pieces).reduce((total, m) => total + m, 0) * 1e6;
  // 2 m of 6 AWG, worked out apart from this program by the long-wire form, less the ends as above.
  it('2 m of 6 AWG straight, at a right angle and as a hairpin', () => {
    const leg = along(1, radiusM);
    near(sum([along(2, radiusM)]) - 0.2 * radiusM, 2.629, 1e-4);
    near(sum([leg, along(1, radiusM, [1, 0, 0])]) - 0.2 * radiusM, 2.629, 1e-4);
    near(sum([leg, { from: [1, 0, 0], to: [1, 1, 0], radiusM }]) - 0.4 * radiusM, 2.3517, 1e-4);
    near(sum([leg, { from: [1, 0.2, 0], to: [0, 0.2, 0], radiusM }]) - 0.4 * radiusM, 1.7547, 1e-4);
  });
});

describe('laws', () => {
  const a: StraightPiece = { from: [0, 0, 0], to: [2, 1, 0.5], radiusM: 0.003 };
  const b: StraightPiece = { from: [0.3, 1, 0.2], to: [-1, 3, 1], radiusM: 0.01 };

  it('turning one round turns the sign, turning both changes nothing', () => {
    const back = { ...a, from: a.to, to: a.from };
    expect(mutualInductance(back, b)).toBeCloseTo(-mutualInductance(a, b), 18);
    expect(mutualInductance(back, { ...b, from: b.to, to: b.from })).toBeCloseTo(mutualInductance(a, b), 18);
  });

  it('is the same from either side', () => {
    expect(mutualInductance(a, b)).toBeCloseTo(mutualInductance(b, a), 18);
  });

  it('grows with the scale of things, and does not care where they are', () => {
    const by = (k: number, [x, y, z]: Point): Point => [k * x + 5, k * y - 3, k * z + 1];
    const grown = ({ from, to, radiusM }: StraightPiece) => ({
      from: by(3, from),
      to: by(3, to),
      radiusM: 3 * radiusM,
    });
    near(mutualInductance(grown(a), grown(b)), 3 * mutualInductance(a, b), 1e-12);
  });

  it('pieces at a right angle have none', () => {
    expect(mutualInductance(along(1, 0.01), { from: [0, 0, 0], to: [0, 1, 0], radiusM: 0.01 })).toBe(0);
  });

  it('refuses a piece without length or radius', () => {
    expect(() => mutualInductance(a, along(0, 0.01))).toThrow(/length of piece 1/);
    expect(() => mutualInductance(along(1, 0), a)).toThrow(/radius of piece 0/);
    expect(() => mutualInductance(along(Number.NaN, 0.1), a)).toThrow(RangeError);
  });
});
