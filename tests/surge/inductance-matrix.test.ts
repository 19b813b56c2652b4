import { describe, expect, it } from 'vitest';
import { cholesky } from '../../src/math/cholesky.ts';
import { gaussLegendre } from '../../src/math/quadrature.ts';
import { aggregateInductance } from '../../src/surge/aggregate-inductance.ts';
import { inductanceMatrix, inductancesWith } from '../../src/surge/inductance-matrix.ts';
import { mutualInductance } from '../../src/surge/mutual-inductance.ts';
import type { Point, StraightPiece } from '../../src/surge/straight-piece.ts';
import { tightestPair } from '../../src/surge/tightest-pair.ts';
import { randomLayout } from './random-layout.ts';

const near = (got: number, expected: number, share: number) => expect(Math.abs(got / expected - 1)).toBeLessThan(share);

/** Pieces from point to point. */
function way(points: readonly Point[], radiusM: number): readonly StraightPiece[] {
  return points.slice(1).map((to, i) => ({ from: points[i]!, to, radiusM }));
}

function total(pieces: readonly StraightPiece[]): number {
  return inductanceMatrix(pieces).reduce((sum, m) => sum + m, 0);
}

describe('loops against their closed forms', () => {
  // Square of side a in round wire, skin effect complete: 0.8 a [ln(a / r) - 0.774] uH. Grover, Inductance Calculations (1946),
  // chapter 8 (from memory).
  it('a square, side over radius 500 and 5000', () => {
    for (const radiusM of [0.004, 0.0004]) {
      const loop = way(
        [
          [0, 0, 0],
          [2, 0, 0],
          [2, 2, 0],
          [0, 2, 0],
          [0, 0, 0],
        ],
        radiusM,
      );
      near(total(loop), 0.8e-6 * 2 * (Math.log(2 / radiusM) - 0.774), 2e-3);
    }
  });

  // Ring of mean radius R in round wire, skin effect complete: 0.4 pi R [ln(8 R / a) - 2] uH. Grover, chapter 16; J. C.
  // Maxwell, Treatise, 704 (from memory). The ends of the chords lie on the ring, which takes 0.08 % off.
  it.each([0.01, 0.001, 0.0001])('a circle of 64 chords, a / R = %d', (share) => {
    const corner = (k: number): Point => {
      const angle = (2 * Math.PI * (k % 64)) / 64;
      return [3 * Math.cos(angle), 3 * Math.sin(angle), 1];
    };
    const loop = way(
      Array.from({ length: 65 }, (_, k) => corner(k)),
      3 * share,
    );
    near(total(loop), 0.4e-6 * Math.PI * 3 * (Math.log(8 / share) - 2), 2e-3);
  });

  // Pair, there and back: 0.4 ln(D / r) uH/m. Grover, chapter 5 (from memory). Long against its width.
  it('a pair 0.1 m apart, 300 m of it', () => {
    const loop = way(
      [
        [0, 0, 0],
        [300, 0, 0],
        [300, 0.1, 0],
        [0, 0.1, 0],
        [0, 0, 0],
      ],
      0.002,
    );
    near(total(loop), 0.4e-6 * 300 * Math.log(50), 2e-3);
  });

  // Wire standing on a conducting plane: 0.2 h [ln(4 h / r) - 1] uH, worked out apart from this program for a wire, a mast
  // and towers, with the plane as a mirror. Less what the long-wire form leaves out at the top: 0.1 uH/m of radius.
  it.each([
    [10, 0.0041, 16.371],
    [10, 0.025, 12.756],
    [20, 0.25, 19.073],
    [30, 0.3, 29.949],
  ])('%d m high, radius %d m, over a plane: %d uH', (heightM, radiusM, expectedUH) => {
    const up: StraightPiece = { from: [0, 0, 0], to: [0, 0, heightM], radiusM };
    const image: StraightPiece = { from: [0, 0, -heightM], to: [0, 0, 0], radiusM };
    const overPlane = mutualInductance(up, up) + mutualInductance(up, image);
    near(overPlane * 1e6 - 0.1 * radiusM, expectedUH, 1e-4);
  });

  // MIL-HDBK-419A vol. I eq. 6-5 (read): loop with sides at r1 and r2 from a long straight conductor, M = 0.2 l ln(r2 / r1).
  it('a loop beside a lightning channel', () => {
    const channel: StraightPiece = { from: [0, 0, 5000], to: [0, 0, -5000], radiusM: 0.01 };
    const loop = way(
      [
        [10, 0, 0],
        [10, 0, -2],
        [15, 0, -2],
        [15, 0, 0],
        [10, 0, 0],
      ],
      0.002,
    );
    const coupled = inductancesWith(channel, loop).reduce((sum, m) => sum + m, 0);
    near(coupled, 0.2e-6 * 2 * Math.log(1.5), 1e-4);
  });
});

describe('laws', () => {
  it('a straight wire in pieces of any length is the same wire to 1e-9', () => {
    const direction: Point = [0.6, -0.48, 0.64];
    const at = (s: number): Point => [12 + s * direction[0], -7 + s * direction[1], s * direction[2]];
    const whole = total(way([at(0), at(23)], 0.0021));
    const cuts = [0, 0.025, 0.3, 1, 1.1, 4, 4.05, 9, 15.5, 15.6, 22.97, 23];
    near(total(way(cuts.map(at), 0.0021)), whole, 1e-9);
    const even = Array.from({ length: 201 }, (_, k) => at((23 * k) / 200));
    near(total(way(even, 0.0021)), whole, 1e-9);
  });

  it('a bent wire in pieces is the same wire to 1e-9 in what another one feels of it', () => {
    const bent = way(
      [
        [0, 0, 0],
        [3, 0, 0],
        [3, 4, 1],
      ],
      0.003,
    );
    const cut = way(
      [
        [0, 0, 0],
        [1, 0, 0],
        [3, 0, 0],
        [3, 1, 0.25],
        [3, 4, 1],
      ],
      0.003,
    );
    const other = way(
      [
        [1, 1, 0],
        [2, 5, 2],
      ],
      0.003,
    )[0]!;
    const felt = (pieces: readonly StraightPiece[]) => inductancesWith(other, pieces).reduce((sum, m) => sum + m, 0);
    near(felt(cut), felt(bent), 1e-9);
  });

  it('a run turned round: its mutual terms change sign, its own does not', () => {
    const pieces = [
      ...way(
        [
          [0, 0, 0],
          [1, 0, 0],
          [1, 1, 0],
        ],
        0.004,
      ),
      ...way(
        [
          [0, 0, 1],
          [2, 0, 1],
        ],
        0.002,
      ),
    ];
    const [together, against] = [1, -1].map((sign) =>
      aggregateInductance(inductanceMatrix(pieces), [
        { pieces: [0, 1], signs: [1, 1] },
        { pieces: [2], signs: [sign] },
      ]),
    );
    expect([...against!]).toEqual([together![0], -together![1]!, -together![2]!, together![3]]);
    expect(together![1]).toBeCloseTo(together![2]!, 18);
  });

  it('a loop in two runs is the loop', () => {
    const loop = way(
      [
        [0, 0, 0],
        [2, 0, 0],
        [2, 1, 0],
        [0, 1, 0],
        [0, 0, 0],
      ],
      0.004,
    );
    const matrix = aggregateInductance(inductanceMatrix(loop), [
      { pieces: [0, 1], signs: [1, 1] },
      { pieces: [3, 2], signs: [-1, -1] },
    ]);
    near(matrix[0]! + matrix[3]! - 2 * matrix[1]!, total(loop), 1e-12);
  });

  it('is the same from either side to 1e-6 before it is made symmetric, far and near', () => {
    const pieces = randomLayout(11, 60);
    for (const a of pieces) {
      const own = mutualInductance(a, a);
      for (const b of pieces) {
        const apart = Math.abs(mutualInductance(a, b) - mutualInductance(b, a));
        expect(apart / Math.sqrt(own * mutualInductance(b, b))).toBeLessThan(1e-9);
      }
    }
  });
});

describe('far pieces', () => {
  /** Neumann's integral by a fine grid of Gauss points: a kernel without peaks, pieces far apart. */
  function byGrid(a: StraightPiece, b: StraightPiece): number {
    const rule = gaussLegendre(24);
    const step = (p: StraightPiece) => p.to.map((x, k) => x - p.from[k]!);
    const at = (p: StraightPiece, s: number) => p.from.map((x, k) => x + ((1 + s) / 2) * step(p)[k]!);
    let sum = 0;
    rule.points.forEach((s, i) => {
      rule.points.forEach((t, j) => {
        const [p, q] = [at(a, s), at(b, t)];
        sum += (rule.weights[i]! * rule.weights[j]!) / Math.hypot(p[0]! - q[0]!, p[1]! - q[1]!, p[2]! - q[2]!);
      });
    });
    const dot = step(a).reduce((d, x, k) => d + x * step(b)[k]!, 0);
    return (1e-7 * dot * sum) / 4;
  }

  it.each([3, 5, 7, 9, 12, 16, 24, 60, 70, 200, 2000])('%d m off, in line with one of them: within 1e-8', (apartM) => {
    const a: StraightPiece = { from: [0, 0, 0], to: [2, 0, 0], radiusM: 0.001 };
    for (const to of [
      [1.5, 0.6, 0],
      [1.5, 0.3, -0.9],
      [0.4, 0, 1.8],
    ]) {
      const b: StraightPiece = {
        from: [apartM, 0.3, 0.1],
        to: to.map((x, k) => x + [apartM, 0.3, 0.1][k]!) as unknown as Point,
        radiusM: 0.001,
      };
      near(mutualInductance(a, b), byGrid(a, b), 1e-8);
    }
    const parallel: StraightPiece = { from: [apartM, 0.01, 0], to: [apartM + 1.3, 0.01, 0], radiusM: 0.001 };
    near(mutualInductance(a, parallel), byGrid(a, parallel), 1e-9);
  });
});

describe('positive definite', () => {
  it('for 1 000 random layouts of joined and loose pieces of at least ten radii that touch at joints alone', () => {
    let pieces = 0;
    for (let seed = 1; seed <= 1000; seed++) {
      const layout = randomLayout(seed, 4 + (seed % 40));
      pieces += layout.length;
      expect(tightestPair(inductanceMatrix(layout), layout.length), `layout ${seed}`).toBeNull();
    }
    expect(pieces).toBeGreaterThan(15_000);
  });

  it('for a bundle of wires that all but touch', () => {
    const wires = Array.from({ length: 49 }, (_, k): StraightPiece => {
      const [x, y] = [0.0041 * (k % 7), 0.0041 * Math.floor(k / 7)];
      return { from: [x, y, 0], to: [x, y, 0.02 + 0.01 * k], radiusM: 0.002 };
    });
    expect(cholesky(inductanceMatrix(wires), 49).smallestPivot).toBeGreaterThan(0.1);
  });

  it('names the piece that is typed twice', () => {
    const pieces = [...randomLayout(5, 12)];
    pieces.push({ ...pieces[7]! });
    const pair = tightestPair(inductanceMatrix(pieces), pieces.length)!;
    expect([pair.first, pair.second]).toEqual([7, pieces.length - 1]);
    expect(pair.coupling).toBeCloseTo(1, 12);
  });

  // 1, 1, 1 with 0.9 and -0.9: each pair can be, the three together cannot; by hand det = 1 - 3 x 0.81 - 2 x 0.729 < 0.
  it('names the two that matter where each pair by itself can be', () => {
    const at = (i: number, j: number) => (i === j ? 1 : i + j === 3 ? -0.9 : i < 3 && j < 3 ? 0.9 : 0.1);
    const matrix = Float64Array.from({ length: 16 }, (_, k) => at(Math.floor(k / 4), k % 4));
    const pair = tightestPair(matrix, 4)!;
    expect([pair.first, pair.second].every((piece) => piece < 3)).toBe(true);
    expect(pair.second).toBe(2);
    expect(pair.coupling).toBeCloseTo(0.9, 12);
  });

  it('is nothing against a matrix that can be, of one piece or of none', () => {
    expect(tightestPair(Float64Array.of(1e-6), 1)).toBeNull();
    expect(tightestPair(inductanceMatrix([]), 0)).toBeNull();
  });
});
