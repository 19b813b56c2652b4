import { describe, expect, it } from 'vitest';
import type { ConductanceGraph } from '../../src/math/conductance-graph.ts';
import { eliminate } from '../../src/math/eliminate.ts';
import { inverseDiagonal } from '../../src/math/inverse-diagonal.ts';
import { solveElimination } from '../../src/math/solve-elimination.ts';

const exactly = (high: number) => ({ high, low: 0 });

function graph(toGround: readonly number[], edges: readonly (readonly [number, number, number])[]): ConductanceGraph {
  return {
    nodeCount: toGround.length,
    toGround: toGround.map(exactly),
    edges: edges.map(([a, b, siemens]) => ({ a, b, conductance: exactly(siemens) })),
  };
}

function taken(of: ConductanceGraph) {
  const result = eliminate(of);
  if (!result.ok) throw new Error(`node ${result.failingNode}`);
  return result.elimination;
}

describe('taking nodes out of a graph of conductances', () => {
  // Star of three arms of 1, 2 and 4 S whose ends leak 1, 1 and 1 S. By hand, from the middle: 1/2 + 2/3 + 4/5 S.
  const star = graph(
    [0, 1, 1, 1],
    [
      [0, 1, 1],
      [0, 2, 2],
      [0, 3, 4],
    ],
  );

  it('gives the potential at the middle of a star', () => {
    const high = Float64Array.of(1, 0, 0, 0);
    const solved = solveElimination(taken(star), { high, low: new Float64Array(4) });
    const middle = 1 / (1 / 2 + 2 / 3 + 4 / 5);
    const known = [middle, middle / 2, (middle * 2) / 3, (middle * 4) / 5];
    for (const [node, volt] of known.entries()) expect(solved.high[node]).toBeCloseTo(volt, 15);
  });

  it('gives the resistance of every node to ground at once', () => {
    const { high } = inverseDiagonal(taken(star));
    // from the end of the first arm: 1 S to ground beside 1 S in series with 2/3 + 4/5 S
    const rest = 2 / 3 + 4 / 5;
    expect(high[1]).toBeCloseTo(1 / (1 + rest / (1 + rest)), 15);
    expect(high[0]).toBeCloseTo(1 / (1 / 2 + rest), 15);
  });

  it('leaves the fewest new edges on a ring: as many as the ring has and one less each time', () => {
    const ring = graph(
      [1, 0, 0, 0, 0, 0],
      [0, 1, 2, 3, 4, 5].map((a) => [a, (a + 1) % 6, 1]),
    );
    expect(taken(ring).neighbour.length).toBe(9);
  });

  it('holds the root of a piece without ground at 0, and marks the piece', () => {
    const pieces = taken(graph([0, 0, 5], [[0, 1, 2]]));
    expect(Array.from(pieces.floats)).toEqual([1, 1, 0]);
    expect(pieces.rootOf[0]).toBe(pieces.rootOf[1]);
    const high = Float64Array.of(1, -1, 1);
    const solved = solveElimination(pieces, { high, low: new Float64Array(3) });
    expect(solved.high[0]! - solved.high[1]!).toBe(0.5);
    expect(solved.high[2]).toBe(0.2);
  });

  it('takes negative conductances as long as the whole is positive definite', () => {
    // matrix [[3, 1], [1, 2]]: off-diagonal +1 is an edge of -1 S; inverse diagonal 2/5, 3/5
    const { high } = inverseDiagonal(taken(graph([4, 3], [[0, 1, -1]])));
    expect(high[0]).toBeCloseTo(0.4, 15);
    expect(high[1]).toBeCloseTo(0.6, 15);
    expect(eliminate(graph([2, 2], [[0, 1, -3]]))).toMatchObject({ ok: false });
  });
});
