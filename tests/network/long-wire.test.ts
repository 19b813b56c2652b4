import { describe, expect, it } from 'vitest';
import type { Body } from '../../src/electrodes/body.ts';
import { solveBodies } from '../../src/electrodes/solve-bodies.ts';
import { dcBetween } from '../../src/network/dc-between.ts';
import { lineLengthM, linePieces, pieceCount } from '../../src/network/line-pieces.ts';
import { pointOfText } from '../../src/site/point-text.ts';
import { soilImages } from '../../src/soil/layer-images.ts';
import { layeredSoil } from '../../src/soil/layered-soil.ts';
import { earthIn } from './earth-in.ts';
import { gauss, joinedOhm, run } from './joined-ohm.ts';

/** 13.3 mm2, 4.115 mm thick: 6 AWG solid (ASTM B258). */
const wireRadiusM = 0.0041154 / 2;
const copperOhmM = 1.7241e-8;
const areaM2 = Math.PI * wireRadiusM ** 2;

/** A wire of 100 m, 0.5 m deep, in 100 ohm m, and a bar at one of its places. */
function longWire(wire: string, barEastM: number | null, more = '') {
  const at = barEastM === null ? '' : `, at: [${barEastM}, 1]`;
  return earthIn(`
site: {name: Long wire, region: iec, units: m, service: bar}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  wire: {kind: buried wire, route: [[0, 0], [100, 0]], depth: 0.5 m, wire: ${wire}}
bars: {bar: {kind: station ground bar${at}}}
conductors:
  lead: {from: bar, to: wire, resistance: 0 ohm, joints: none, buried: no}
${more}
`);
}

/** So many equal stretches of the same wire by hand. */
function stretches(count: number, lengthM = 100): readonly Body[] {
  return Array.from({ length: count }, (_, k) => ({
    runs: [run([(k * lengthM) / count, 0, 0.5], [((k + 1) * lengthM) / count, 0, 0.5], wireRadiusM)],
  }));
}

const soilRowsOf = new Map<number, readonly (readonly number[])[]>();

/** What the stretches feel of each other through the soil, row by row. */
function soilRows(count: number): readonly (readonly number[])[] {
  const before = soilRowsOf.get(count);
  if (before !== undefined) return before;
  const solved = solveBodies(stretches(count), soilImages(layeredSoil([100])));
  if (!solved.ok) throw new Error(solved.reason);
  const rows = Array.from({ length: count }, (_, i) => [...solved.resistanceOhm.slice(i * count, (i + 1) * count)]);
  soilRowsOf.set(count, rows);
  return rows;
}

/**
 * The ladder: stretches that feel each other through the soil, metal between their middles, 1 A put in at a distance from the
 * start. Unknowns are the current that leaves each stretch (its potential is V = R I) and the potential of the feeding point;
 * one equation says for each node that what comes in goes out. Nothing of the code under test but the soil.
 */
function ladderOhm(count: number, ohmPerM: number, feedM: number): number {
  const rows = soilRows(count);
  const nodes = Array.from({ length: count }, (_, node) => ({ m: ((node + 0.5) * 100) / count, node }));
  const places = [...nodes, { m: feedM, node: count }].sort((a, b) => a.m - b.m);
  const matrix = Array.from({ length: count + 1 }, (_, i) => new Array<number>(count + 1).fill(0).fill(1, i, i + 1));
  matrix[count]![count] = 0;
  const potentialRow = (node: number, k: number): number =>
    node === count ? Number(k === count) : (rows[node]![k] ?? 0);
  for (const [i, b] of places.slice(1).entries()) {
    const a = places[i]!;
    const siemens = 1 / (ohmPerM * Math.max(1e-6, b.m - a.m));
    for (let k = 0; k <= count; k++) {
      const over = siemens * (potentialRow(a.node, k) - potentialRow(b.node, k));
      matrix[a.node]![k]! += over;
      matrix[b.node]![k]! -= over;
    }
  }
  const fed = Array.from({ length: count + 1 }, (_, i) => (i === count ? 1 : 0));
  return gauss(matrix, fed)[count]!;
}

const isNear = (ohm: number | null, expected: number, share: number): void => {
  expect(ohm! / expected).toBeGreaterThan(1 - share);
  expect(ohm! / expected).toBeLessThan(1 + share);
};

describe('a wire of 100 m', () => {
  const copper = copperOhmM / areaM2;
  const onePotential = joinedOhm(stretches(1), [100]);

  it('of one potential has what the reference has: 2.2015 ohm for 10 mm of thickness', () => {
    const thick = [{ runs: [run([0, 0, 0.5], [100, 0, 0.5], 0.005)] }];
    isNear(joinedOhm(thick, [100]), 2.2015, 0.003);
  });

  it('fed at its end has 2 % more than that of one potential, as the ladder says', () => {
    const ladder = ladderOhm(40, copper, 0);
    // A third of the metal counts: 0.130 / 3 = 0.043 ohm, were the current to leave evenly.
    isNear(ladder - onePotential, (copper * 100) / 3, 0.1);
    const { dc } = longWire('6 AWG solid copper', 0);
    isNear(dc.earth.resistanceOhm!.value, ladder, 0.002);
    isNear(dc.alone.get('wire')!.ohm!.value, onePotential, 0.003);
    expect(dc.earth.resistanceOhm!.value! / dc.alone.get('wire')!.ohm!.value!).toBeGreaterThan(1.015);
  });

  it('fed at its middle has a quarter of that', () => {
    const ladder = ladderOhm(40, copper, 50);
    isNear(ladder - onePotential, (copper * 100) / 12, 0.15);
    isNear(longWire('6 AWG solid copper', 50).dc.earth.resistanceOhm!.value, ladder, 0.002);
  });

  it('of poor metal lets far less of its far end count', () => {
    // Stainless steel of 4.115 mm: about 0.7 microohm m; taken from the file's own metal so that both have the same.
    const ohmPerM = longWire('round 4.1154 mm stainless steel', 0).ground.lines[0]!.ohmPerM!;
    const middle = Math.sqrt(ohmPerM.low * ohmPerM.high);
    expect(middle * 100).toBeGreaterThan(2);
    const ladder = ladderOhm(40, middle, 0);
    expect(ladder / onePotential).toBeGreaterThan(1.3);
    // Six stretches: so coarse a cut costs 0.4 %.
    isNear(longWire('round 4.1154 mm stainless steel', 0).dc.earth.resistanceOhm!.value, ladder, 0.006);
  });

  it('of perfect metal is one potential, however it is cut', () => {
    for (const count of [2, 6, 20]) isNear(ladderOhm(count, 1e-12, 0), onePotential, 0.003);
    for (const count of [6, 20]) isNear(ladderOhm(count, copper, 0), ladderOhm(40, copper, 0), 0.003);
  });

  it('hangs where it was typed to, else nearest to the other end, else at its start', () => {
    const end = longWire('6 AWG solid copper', 0).dc.earth.resistanceOhm!.value!;
    const middle = longWire('6 AWG solid copper', 50).dc.earth.resistanceOhm!.value!;
    expect(middle).toBeLessThan(end * 0.99);
    const typed = (m: number) => {
      const { site } = longWire('6 AWG solid copper', 50);
      expect(site).toBeDefined();
      return earthIn(`
site: {name: Typed, region: iec, units: m, service: bar}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  wire: {kind: buried wire, route: [[0, 0], [100, 0]], depth: 0.5 m, wire: 6 AWG solid copper}
bars: {bar: {kind: station ground bar, at: [50, 1]}}
conductors:
  lead: {from: bar, to: "wire@${m} m", resistance: 0 ohm, joints: none, buried: no}
`).dc.earth.resistanceOhm!.value!;
    };
    expect(typed(0)).toBeCloseTo(end, 9);
    expect(typed(50)).toBeCloseTo(middle, 9);
    expect(longWire('6 AWG solid copper', null).dc.earth.resistanceOhm!.value!).toBeCloseTo(end, 9);
  });

  it('carries a current from one of its landings to another through its own metal', () => {
    const text = (away: string): string => `
site: {name: Two landings, region: iec, units: m, service: a}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  wire: {kind: buried wire, route: [[0, 0], [100, 0]], depth: 0.5 m, wire: 6 AWG solid copper}
bars:
  a: {kind: station ground bar, at: [0, 1]}
  b: {kind: station ground bar, at: [${away}, 1]}
conductors:
  one: {from: a, to: wire, resistance: 0 ohm, joints: none, buried: no}
  two: {from: b, to: wire, resistance: 0 ohm, joints: none, buried: no}
`;
    const between = (away: string) =>
      dcBetween(earthIn(text(away)).site, null, pointOfText('a')!, pointOfText('b')!)!.betweenOhm.value!;
    // The metal alone; the soil beside it takes hardly any of it.
    isNear(between('100'), copper * 100, 0.05);
    isNear(between('30'), copper * 30, 0.05);
    expect(between('100')).toBeLessThan(copper * 100);
  });

  it('shares its current as one electrode', () => {
    const { dc } = longWire('6 AWG solid copper', 0);
    expect([...dc.earth.currentShare.keys()]).toEqual(['wire']);
    expect(dc.earth.currentShare.get('wire')).toBeCloseTo(1, 9);
  });

  it('keeps a stated figure whole', () => {
    const { dc, ground } = longWire('6 AWG solid copper, resistance: 3 ohm', 0);
    expect(ground.lines).toEqual([]);
    expect(dc.earth.resistanceOhm).toEqual({ low: 3, value: 3, high: 3 });
  });

  it('of unknown depth keeps the range of one potential', () => {
    const { dc, ground } = earthIn(`
site: {name: Unknown depth, region: iec, units: m, service: wire}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  wire: {kind: buried wire, route: [[0, 0], [100, 0]], wire: round 20 mm copper}
`);
    expect(ground.lines).toHaveLength(1);
    const alone = dc.alone.get('wire')!.ohm!;
    expect(alone.low).toBeLessThan(alone.high * 0.98);
    const { low, value, high } = dc.earth.resistanceOhm!;
    // 314 mm2 of copper: 5.5 milliohm of metal, 2 milliohm of them count.
    isNear(low, alone.low + 0.002, 0.005);
    isNear(value, alone.value! + 0.002, 0.005);
    isNear(high, alone.high + 0.002, 0.005);
  });
});

describe('a ring and a star', () => {
  const site = (electrode: string): string => `
site: {name: Round, region: iec, units: m, service: E}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  E: {${electrode}}
`;

  it('are cut, and of good metal have what they have as one', () => {
    // Ring of 20 m across, 0.5 m, 10 mm: 3.5622 ohm; star of four arms of 10 m: 5.4140. Boundary elements worked out apart.
    const ring = earthIn(
      site(
        `kind: buried wire, closed: yes, at: [0, 0], length: ${20 * Math.PI} m, depth: 0.5 m, wire: round 10 mm copper`,
      ),
    );
    expect(ring.ground.lines[0]!.pieces).toHaveLength(6);
    expect(ring.ground.lines[0]!.isClosed).toBe(true);
    isNear(ring.dc.alone.get('E')!.ohm!.value, 3.5622, 0.003);
    isNear(ring.dc.earth.resistanceOhm!.value, 3.5622, 0.005);
    const star = earthIn(
      site('kind: radial, at: [0, 0], count: 4, length: 12 m, depth: 0.5 m, wire: round 10 mm copper'),
    );
    expect(star.ground.lines[0]!.pieces).toHaveLength(2);
    isNear(star.dc.earth.resistanceOhm!.value, star.dc.alone.get('E')!.ohm!.value!, 0.003);
  });

  it('a closed route goes both ways round', () => {
    const square = '[[0, 0], [20, 0], [20, 20], [0, 20]]';
    const text = (closed: string): string => `
site: {name: Square, region: iec, units: m, service: a}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  E: {kind: buried wire, route: ${square}, closed: ${closed}, depth: 0.5 m, wire: round 8 mm copper}
bars: {a: {kind: station ground bar, at: [0, -1]}, b: {kind: station ground bar, at: [-1, 20]}}
conductors:
  one: {from: a, to: E, resistance: 0 ohm, joints: none, buried: no}
  two: {from: b, to: E, resistance: 0 ohm, joints: none, buried: no}
`;
    const between = (closed: string): number =>
      dcBetween(earthIn(text(closed)).site, null, pointOfText('a')!, pointOfText('b')!)!.betweenOhm.value!;
    const perM = copperOhmM / (Math.PI * 0.004 ** 2);
    isNear(between('no'), perM * 60, 0.02);
    // 20 m one way beside 60 m the other: 15.
    isNear(between('yes'), perM * 15, 0.02);
  });
});

describe('pieces of a line', () => {
  const bent = [run([0, 0, 0.5], [12, 0, 0.5], 0.004), run([12, 0, 0.5], [12, 9, 0.5], 0.004)];

  it('are of equal length, whole and in order, round corners too', () => {
    expect(lineLengthM(bent)).toBe(21);
    expect(pieceCount(21)).toBe(3);
    const pieces = linePieces([bent], 3);
    expect(pieces.map((p) => p.middleM)).toEqual([3.5, 10.5, 17.5]);
    expect(pieces.map((p) => lineLengthM(p.body.runs))).toEqual([7, 7, 7]);
    expect(pieces.map((p) => p.body.runs.length)).toEqual([1, 2, 1]);
    expect(pieces[1]!.body.runs[1]!.to).toEqual([12, 2, 0.5]);
  });

  it('are few: one up to 10 m, six from 60 m on', () => {
    expect([3, 10, 10.1, 20, 45, 60, 1000].map(pieceCount)).toEqual([1, 1, 2, 2, 5, 6, 6]);
  });

  it('leave no stub at a corner that is too short to be a run', () => {
    const runs = [run([0, 0, 0.5], [10.01, 0, 0.5], 0.004), run([10.01, 0, 0.5], [20, 0, 0.5], 0.004)];
    for (const { body } of linePieces([runs], 2))
      for (const r of body.runs) expect(lineLengthM([r])).toBeGreaterThan(0.016);
  });
});
