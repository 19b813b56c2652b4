import { describe, expect, it } from 'vitest';
import type { Body } from '../../src/electrodes/body.ts';
import type { SolvedBodies } from '../../src/electrodes/solve-bodies.ts';
import { isSameSurface, metalBelow } from '../../src/electrodes/surface-alike.ts';
import { gridFrame, surfaceGrid } from '../../src/electrodes/surface-grid.ts';
import { run, solved } from './solved.ts';

const rod = (eastM: number, lengthM = 3): Body => ({ runs: [run([eastM, 0, 0], [eastM, 0, lengthM], 0.008)] });

/** Whether the surface round body b is that of body a, each lifted alone to one volt, the others at nothing. */
function isAlike(answer: SolvedBodies, a: number, b: number): { readonly metal: boolean; readonly surface: boolean } {
  const at = (body: number) => Float64Array.from({ length: answer.aloneOhm.length }, (_, i) => (i === body ? 1 : 0));
  const [frameA, frameB] = [a, b].map((body) => gridFrame(answer.segments, [body])) as [Frame, Frame];
  const grid = surfaceGrid(answer, at(a), frameA);
  return {
    metal: metalBelow(answer.segments, frameA, [a]) === metalBelow(answer.segments, frameB, [b]),
    surface: isSameSurface(answer, at(b), frameB, grid),
  };
}
type Frame = ReturnType<typeof gridFrame>;

describe('surfaces alike', () => {
  it('two of a size, each far from all: one is the other in its own place, point by point', () => {
    const answer = solved([rod(0), rod(400)]);
    expect(isAlike(answer, 0, 1)).toEqual({ metal: true, surface: true });
    const [first, second] = [0, 1].map((body) =>
      surfaceGrid(answer, body === 0 ? [1, 0] : [0, 1], gridFrame(answer.segments, [body])),
    );
    first!.share.forEach((share, k) => {
      expect(second!.share[k]!).toBeCloseTo(share, 3);
    });
  });

  it('one of another length is not', () => {
    expect(isAlike(solved([rod(0), rod(400, 2.9)]), 0, 1).metal).toBe(false);
  });

  it('one with other metal within its grid is not', () => {
    expect(isAlike(solved([rod(0), rod(400), rod(404)]), 0, 1).metal).toBe(false);
  });

  it('one with much metal just outside its grid is not', () => {
    const wire: Body = { runs: [run([406, -30, 0.5], [406, 30, 0.5], 0.004)] };
    expect(isAlike(solved([rod(0), rod(400), wire]), 0, 1)).toEqual({ metal: true, surface: false });
  });
});
