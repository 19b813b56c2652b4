import { describe, expect, it } from 'vitest';
import { worksChart } from '../../src/drawing/works-chart.ts';
import type { Remaining, Step, Work, WorksPlan } from '../../src/rework/work.ts';
import { studyOfExample } from '../examples/study-of-example.ts';

const before = studyOfExample('first-dipole/first-dipole.site.yaml');

const remaining = (hazards: number, defects: number, advices: number): Remaining => ({
  hazards,
  defects,
  advices,
  cannotTell: 0,
});
const work: Work = {
  id: 'bond:x',
  kind: 'bond',
  at: ['rod'],
  answers: [],
  changes: [],
  needs: [],
  materials: [],
  runs: [],
  values: {},
};

interface Typed {
  readonly price: number | null;
  readonly metres?: number;
  readonly rods?: number;
  readonly joints?: number;
  readonly after: Remaining;
}

/** A plan of which only what the chart reads is filled in. */
function planOf(start: Remaining, steps: readonly Typed[], name = 'Larch Rise'): WorksPlan {
  let last = start;
  const list = steps.map(({ price, metres = 0, rods = 0, joints = 0, after }): Step => {
    const effect = {
      before: last,
      after,
      cleared: [],
      unsettled: [],
      appeared: [],
      earthOhm: { before: null, after: null },
    };
    last = after;
    const exact = (n: number) => ({ low: n, high: n });
    const cost = {
      price: price === null ? null : exact(price),
      unpriced: [],
      conductorM: exact(metres),
      rods,
      joints,
      hours: exact(1),
    };
    return { work, cost, alone: effect, inTurn: effect };
  });
  const named = {
    ...before,
    site: { ...before.site, name },
    prices: { currency: 'USD', lines: [], hours: [] },
  };
  return {
    format: 1,
    before: named,
    after: before,
    text: '',
    steps: list,
    leftOut: [],
    searched: 'every set',
    weighedBy: steps.every((s) => s.price !== null) ? 'price' : 'material',
    limits: { budget: null, hours: null },
    stopped: false,
  };
}

const priced = planOf(remaining(3, 4, 2), [
  { price: 100, after: remaining(1, 4, 3) },
  { price: 300, after: remaining(0, 2, 3) },
]);

/** Corner points of each stair, in the order hazards, defects, advice. */
function stairs(svg: string): readonly (readonly (readonly number[])[])[] {
  return [...svg.matchAll(/<polyline points="([^"]+)"/g)].map(([, points]) =>
    points!.split(' ').map((p) => p.split(',').map(Number)),
  );
}

const descriptionOf = (svg: string) => /<desc>(.*?)<\/desc>/.exec(svg)![1]!.replaceAll('&#61;', '=');

describe('chart of what remains', () => {
  it('goes level for what a work costs, and then down', () => {
    const [hazards, defects] = stairs(worksChart(priced));
    // before, over to 100, down, over to 400, down
    expect(hazards).toHaveLength(5);
    const xs = hazards!.map(([x]) => x!);
    expect(xs[1]).toBe(xs[2]);
    expect((xs[3]! - xs[0]!) / (xs[1]! - xs[0]!)).toBeCloseTo(4, 1);
    // 3 hazards, then 1, then 0: heights in the ratio of the figures
    const ys = hazards!.map(([, y]) => y!);
    expect(ys[0]).toBe(ys[1]);
    expect((ys[4]! - ys[0]!) / (ys[2]! - ys[0]!)).toBeCloseTo(3 / 2, 1);
    // four defects stay four through the first work
    expect(defects![1]![1]).toBe(defects![2]![1]);
  });

  it('says all of it in words too, with the money as it was typed', () => {
    const says = descriptionOf(worksChart(priced));
    expect(says).toContain('Before: 3 hazards, 4 defects, 2 pieces of advice');
    expect(says).toContain('after work 1, at USD 100: 1, 4, 3');
    expect(says).toContain('after work 2, at USD 400: 0, 2, 3');
    expect(worksChart(priced)).toContain('Spent so far, USD');
  });

  it('goes by material where a price is missing: metres, a rod as three, a joint as one', () => {
    const plan = planOf(remaining(1, 1, 0), [
      { price: null, metres: 6, rods: 1, joints: 2, after: remaining(0, 1, 0) },
      { price: 50, metres: 0, rods: 0, joints: 1, after: remaining(0, 0, 0) },
    ]);
    const svg = worksChart(plan);
    // 6 + 3 + 2 = 11 m = 36.1 ft, then one more: 12 m = 39.4 ft
    expect(descriptionOf(svg)).toContain('after work 1, at 36 ft');
    expect(descriptionOf(svg)).toContain('after work 2, at 39 ft');
    expect(svg).not.toContain('USD');
  });

  it('can be read without colour: each stair has a dash of its own and a name at its end', () => {
    const svg = worksChart(priced);
    const dashes = [...svg.matchAll(/<polyline [^>]*>/g)].map(([p]) => /stroke-dasharray="([^"]*)"/.exec(p)?.[1] ?? '');
    expect(new Set(dashes).size).toBe(3);
    for (const name of ['hazards', 'defects', 'advice']) expect(svg).toContain(`>${name}</text>`);
  });

  it('numbers the works, and leaves out a number that would lie on another', () => {
    const close = planOf(
      remaining(9, 0, 0),
      Array.from({ length: 9 }, (_, i) => ({ price: i === 0 ? 1000 : 1, after: remaining(8 - i, 0, 0) })),
    );
    const numbers = [...worksChart(close).matchAll(/font-weight="bold"[^>]*>(\d+)<\/text>/g)].map(([, n]) => Number(n));
    expect(numbers[0]).toBe(1);
    expect(numbers.length).toBeLessThan(9);
  });

  it('of no work at all is a chart of how it stands', () => {
    expect(stairs(worksChart(planOf(remaining(0, 0, 0), [])))).toHaveLength(3);
  });

  it('escapes what the owner typed, and is the same each time', () => {
    const svg = worksChart(planOf(remaining(1, 0, 0), [{ price: 1, after: remaining(0, 0, 0) }], '<script>alert(1)'));
    expect(svg).not.toContain('<script');
    expect(svg).toContain('&#60;script');
    expect(worksChart(priced)).toBe(worksChart(priced));
  });
});
