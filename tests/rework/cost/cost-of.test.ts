import { describe, expect, it } from 'vitest';
import { addCosts, costOf } from '../../../src/rework/cost/cost-of.ts';
import { addMaterials } from '../../../src/rework/cost/counts-of.ts';
import { materialKind } from '../../../src/rework/cost/material-kind.ts';
import { pricedPart } from '../../../src/rework/cost/priced-part.ts';
import { withSpare } from '../../../src/rework/cost/with-spare.ts';
import type { Material, Work, WorkRun } from '../../../src/rework/work.ts';
import { pricesOf } from '../../../src/study/prices-of.ts';

const each = (name: string, n: number): Material => ({ name, unit: 'each', count: { low: n, high: n } });
const metres = (name: string, low: number, high = low): Material => ({ name, unit: 'm', count: { low, high } });
const run = (lengthM: WorkRun['lengthM'], depthM: number | null): WorkRun => ({
  part: 'new-1',
  routeM: [],
  lengthM,
  depthM,
});
const work = (
  materials: readonly Material[],
  runs: readonly WorkRun[] = [],
  kind: Work['kind'] = 'bond',
): Pick<Work, 'kind' | 'materials' | 'runs'> => ({ kind, materials, runs });
const cost = (w: ReturnType<typeof work>, prices: Record<string, string | number> | null) =>
  costOf(w, { prices: pricesOf(prices) });

const bond = work(
  [metres('6 AWG copper', 10), each('exothermic weld', 1), each('rod clamp', 1)],
  [run({ low: 10, high: 10 }, 0.75)],
);

describe('what a work costs', () => {
  it('by the foot, by hand: 10 m are 32.808 ft at 1.10, a weld at 18 and a clamp at 4.50', () => {
    // 10 / 0.3048 = 32.8084 ft; 32.8084 x 1.1 = 36.0892; + 18 + 4.5 = 58.5892
    const { price, unpriced } = cost(bond, {
      currency: 'USD',
      '6 AWG copper per ft': 1.1,
      'exothermic weld': 18,
      'rod clamp': 4.5,
    });
    expect(unpriced).toEqual([]);
    expect(price!.low).toBeCloseTo(58.5892, 3);
    expect(price!.high).toBeCloseTo(58.5892, 3);
  });

  it('by the metre, by 100 ft, and with the unit beside the figure', () => {
    const wire = work([metres('6 AWG copper', 10)]);
    expect(cost(wire, { '6 AWG copper per m': 4 }).price).toEqual({ low: 40, high: 40 });
    // 100 ft = 30.48 m for 95: 10 m are 31.168
    expect(cost(wire, { '6 AWG copper per 100 ft': 95 }).price!.low).toBeCloseTo(31.168, 3);
    expect(cost(wire, { '6 AWG copper': '4 per m' }).price).toEqual({ low: 40, high: 40 });
  });

  it('a range of metres and a range of prices give a range', () => {
    const { price, conductorM } = cost(work([metres('16 mm2 copper', 8, 12)]), { '16 mm2 copper per m': '2 to 3' });
    expect(price).toEqual({ low: 16, high: 36 });
    expect(conductorM).toEqual({ low: 8, high: 12 });
  });

  it('names each material without a price, and then has no price', () => {
    const found = cost(bond, { '6 AWG copper per ft': 1.1 });
    expect(found.price).toBeNull();
    expect(found.unpriced).toEqual(['exothermic weld', 'rod clamp']);
  });

  it('takes no other size, metal or unit for the one that is needed', () => {
    for (const line of ['4 AWG copper per ft', '6 AWG aluminium per ft', '6 AWG tinned copper per ft', '6 AWG copper'])
      expect(cost(work([metres('6 AWG copper', 3)]), { [line]: 2 }).unpriced, line).toEqual(['6 AWG copper']);
    expect(cost(work([each('rod', 2)]), { 'rod clamp': 4.5 }).unpriced).toEqual(['rod']);
    expect(cost(work([each('rod clamp', 2)]), { rod: 28 }).unpriced).toEqual(['rod clamp']);
  });

  it('knows other words for the same thing', () => {
    const pairs = [
      ['rod', 'ground rod'],
      ['rod', 'earth rods'],
      ['gas tube', 'gas tube arrester'],
      ['exothermic weld', 'exothermic welds'],
      ['exothermic weld', 'exotermic weld'],
      ['rod', '8 ft rod'],
      ['8 ft rod', 'rod'],
    ] as const;
    for (const [name, line] of pairs)
      expect(cost(work([each(name, 2)]), { [line]: 10 }).price, line).toEqual({ low: 20, high: 20 });
    for (const line of ['#6 copper per m', '6 AWG bare copper wire per m', '13.3 mm2 copper per m'])
      expect(cost(work([metres('6 AWG copper', 2)]), { [line]: 5 }).unpriced, line).toEqual(
        line.startsWith('13.3') ? ['6 AWG copper'] : [],
      );
  });

  it('knows what a page of either region calls it', () => {
    // names as they stand on a page: common practice, no source
    const each2 = (name: string) => work([each(name, 2)]);
    for (const [name, typed] of [
      ['mains protector', 'SPD of the mains'],
      ['mains protector', 'surge protective device of the mains'],
      ['grounded receptacle', 'earthed receptacle'],
      ['entry panel', 'entry bonding bar'],
      ['shield grounding kit', 'shield earthing kit'],
    ] as const)
      expect(cost(each2(name), { [typed]: 7 }).price, typed).toEqual({ low: 14, high: 14 });
    expect(cost(each2('mains protector'), { 'SPD of the roof': 7 }).price).toBeNull();
  });

  it('takes nothing whose words only look alike', () => {
    for (const [name, line] of [
      ['data protector', 'mains protector'],
      ['rod', 'pod'],
      ['bolted lug', 'bolted bug'],
      ['control protector', 'mains protector'],
      ['rod coupler', 'rod'],
    ] as const)
      expect(cost(work([each(name, 1)]), { [line]: 10 }).unpriced, `${name} by ${line}`).toEqual([name]);
  });

  it('rods of several lengths at different prices give the range of them, one of the right length its own', () => {
    const prices = { 'rod 8 ft': 28, 'rod 10 ft': 35 };
    expect(cost(work([each('rod', 2)]), prices).price).toEqual({ low: 56, high: 70 });
    expect(cost(work([each('10 ft rod', 2)]), prices).unpriced).toEqual(['10 ft rod']);
    expect(cost(work([each('rod 10 ft', 2)]), prices).price).toEqual({ low: 70, high: 70 });
  });

  it('a price that is no figure, or is negative, is no price', () => {
    for (const value of ['ask', 'unknown', '-3', '2,5'])
      expect(cost(work([each('rod', 1)]), { rod: value }).unpriced, value).toEqual(['rod']);
  });

  it('without prices there is no price, and everything is named', () => {
    expect(cost(bond, null)).toMatchObject({
      price: null,
      unpriced: ['6 AWG copper', 'exothermic weld', 'rod clamp'],
      conductorM: { low: 10, high: 10 },
      rods: 0,
      joints: 2,
    });
  });
});

describe('hours', () => {
  it('by our own allowances, rounded outwards to a quarter', () => {
    // work 0.5..1.5, two joints 0.2..1, 10 m of trench 2..7: 2.7..9.5
    expect(cost(bond, null).hours).toEqual({ low: 2.5, high: 9.5 });
  });

  it('by the hours that the owner reckons with', () => {
    const own = { 'hours per work': 1, 'hours per joint': 0.5, 'hours per ft of trench': 0.1 };
    // 1 + 2 x 0.5 + 32.808 x 0.1 = 5.281
    expect(cost(bond, own).hours).toEqual({ low: 5.25, high: 5.5 });
  });

  it('cost money where the file has a rate: by the hour, or by the day of eight hours', () => {
    const own = { 'hours per work': 2, 'hours per rod': 1, rod: 28 };
    const rods = work([each('rod', 2)], [], 'add-rods');
    // 2 x 28 + 4 h x 60
    expect(cost(rods, { ...own, hour: 60 }).price).toEqual({ low: 296, high: 296 });
    // 56 + 4/8 x 400
    expect(cost(rods, { ...own, "day's work": 400 }).price).toEqual({ low: 256, high: 256 });
    expect(cost(rods, { ...own, 'electrician per hour': 90, 'helper per hour': 30 }).price).toEqual({
      low: 176,
      high: 416,
    });
  });

  it('a run in the air is no trench, and a length that nobody knows is at most the conductor that there is', () => {
    const air = work([metres('6 AWG copper', 10)], [run({ low: 10, high: 10 }, null)]);
    // 0.5 + 10 x 0.05 .. 1.5 + 10 x 0.2
    expect(cost(air, null).hours).toEqual({ low: 1, high: 3.5 });
    const unknown = work([metres('6 AWG copper', 10)], [run(null, 0.75)]);
    // 0.5 .. 1.5 + 10 x 0.7
    expect(cost(unknown, null).hours).toEqual({ low: 0.5, high: 8.5 });
  });
});

it('counts what drives, joins and protects, and not what belongs to it', () => {
  const kinds = ['8 ft rod', 'galvanised rod', 'rod coupler', 'rod clamp', 'shield grounding kit', 'gas tube'].map(
    (name) => materialKind({ name, unit: 'each' }),
  );
  expect(kinds).toEqual(['rod', 'rod', 'other', 'joint', 'other', 'protector']);
});

it('spare is a tenth of the conductor and a joint in ten, at least one; a rod is a rod', () => {
  expect(withSpare(metres('6 AWG copper', 20, 30))).toEqual({ low: 22, high: 33 });
  expect(withSpare(each('exothermic weld', 1))).toEqual({ low: 2, high: 2 });
  expect(withSpare(each('bolted lug', 27))).toEqual({ low: 30, high: 30 });
  expect(withSpare(each('rod', 2))).toEqual({ low: 2, high: 2 });
});

it('the same material of several works is one line', () => {
  const list = addMaterials([
    work([each('rod', 1), metres('6 AWG copper', 3)]),
    work([metres('6 AWG copper', 4, 5), each('brazed', 2)]),
  ]);
  expect(list).toEqual([metres('6 AWG copper', 7, 8), each('brazed', 2), each('rod', 1)]);
});

it('what has a price is told where something else has none', () => {
  const prices = pricesOf({ rod: 10, hour: 50 })!;
  // two rods at 10, three hours at 50
  expect(pricedPart([each('rod', 2), each('brazed', 1)], { low: 3, high: 3 }, prices)).toEqual({ low: 170, high: 170 });
});

it('several works add up, and one without a price takes the price of all', () => {
  const a = cost(work([each('rod', 2)]), { rod: 10 });
  const b = cost(work([each('rod', 1), each('brazed', 1)]), { rod: 10, brazed: 7 });
  expect(addCosts([a, b])).toMatchObject({ price: { low: 37, high: 37 }, rods: 3, joints: 1 });
  const c = cost(work([each('gas tube', 1)]), { rod: 10 });
  expect(addCosts([a, c])).toMatchObject({ price: null, unpriced: ['gas tube'] });
});

it('the lines of a file as the study keeps them', () => {
  expect(
    pricesOf({
      currency: 'EUR',
      rod: 28,
      '6 AWG copper per ft': '1.1 to 1.3',
      hour: 60,
      'hours per rod': 1,
      tape: 'ask',
    }),
  ).toEqual({
    currency: 'EUR',
    lines: [
      { name: 'rod', price: { low: 28, high: 28 }, per: 'each', perCount: 1, typed: 'rod: 28' },
      {
        name: '6 AWG copper',
        price: { low: 1.1, high: 1.3 },
        per: 'ft',
        perCount: 1,
        typed: '6 AWG copper per ft: 1.1 to 1.3',
      },
      { name: 'hour', price: { low: 60, high: 60 }, per: 'hour', perCount: 1, typed: 'hour: 60' },
      { name: 'tape', price: null, per: 'each', perCount: 1, typed: 'tape: ask' },
    ],
    hours: [{ name: 'rod', hours: { low: 1, high: 1 }, per: 'each', perCount: 1, typed: 'hours per rod: 1' }],
  });
  expect(pricesOf(null)).toBeNull();
});
