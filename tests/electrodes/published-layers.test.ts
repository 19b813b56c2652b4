import { describe, expect, it } from 'vitest';
import type { Body } from '../../src/electrodes/body.ts';
import { footM, inchM, rod } from './shapes.ts';
import { bodyFrom, layered, off, ohmOfBody, run, solved, uniform, wire } from './solved.ts';

/** All figures of this file: boundary elements worked out apart from this program, the finer of two cuttings. */
const tenFeet = bodyFrom(rod(10 * footM, 0.625 * inchM));

describe('a rod of 10 ft x 5/8 in in two layers, to 0.5 %', () => {
  it.each([
    [100, 300, 6, 34.773],
    [300, 100, 6, 95.1551],
    [300, 100, 1.5, 45.8527],
    [100, 300, 1.5, 54.8373],
    [1000, 100, 1, 44.0316],
    [100, 1000, 1.5, 75.8568],
  ])('%d over %d ohm metre, boundary at %d m: %d ohm', (upper, lower, boundaryM, ohm) => {
    expect(off(ohmOfBody(tenFeet, layered([upper, lower], [boundaryM])), ohm)).toBeLessThan(0.005);
  });
});

/** A square of 3 m of wire (radius 4 mm) at 0.6 m, with a rod of 2.44 m (radius 8 mm) at each corner. */
function station(): Body {
  const corners = [
    [-1.5, -1.5],
    [1.5, -1.5],
    [1.5, 1.5],
    [-1.5, 1.5],
  ] as const;
  const sides = corners.map(([x, y], c) => {
    const [toX, toY] = corners[(c + 1) % 4]!;
    return run([x, y, 0.6], [toX, toY, 0.6], 0.004);
  });
  const rods = corners.map(([x, y]) => run([x, y, 0.6], [x, y, 3.04], 0.008));
  return { runs: [...sides, ...rods] };
}

describe('a ring with four rods, to 0.5 %', () => {
  it.each([
    [[100], [], 9.6247],
    [[300, 100], [2], 15.0258],
    [[100, 1000], [2], 24.2012],
    [[1000, 100], [0.8], 13.0092],
  ])('in %j ohm metre, boundary at %j m: %d ohm', (ohmM, thicknessM, ohm) => {
    expect(off(ohmOfBody(station(), layered(ohmM, thicknessM)), ohm)).toBeLessThan(0.005);
  });

  it.each([
    [5, 2.9523, 8.4215],
    [10, 1.5604, 7.9929],
    [20, 0.7918, 7.7396],
    [50, 0.3181, 7.5786],
  ])('lifts a rod of 3 m x 16 mm at %d m by %d ohm; joined %d ohm', (apartM, liftedOhm, joinedOhm) => {
    const other = bodyFrom(rod(3, 0.016), { at: [apartM, 0] });
    const [own, mutual, , others] = solved([station(), other]).resistanceOhm as unknown as [number, number, 0, number];
    expect(off(mutual, liftedOhm)).toBeLessThan(0.005);
    expect(off((own * others - mutual ** 2) / (own + others - 2 * mutual), joinedOhm)).toBeLessThan(0.005);
    // as one body of both: the same metal, joined
    const joined = ohmOfBody({ runs: [...station().runs, ...other.runs] });
    expect(off(joined, joinedOhm)).toBeLessThan(0.005);
  });
});

describe('frost: a frozen top over 100 ohm metre, against the same soil unfrozen, to 2 %', () => {
  const buried = bodyFrom(wire(20, 0.5, 0.005));

  it.each([
    [0.3, [1.071, 1.081, 1.089], [1.061, 1.072, 1.08]],
    [0.6, [1.155, 1.178, 1.197], [2.529, 4.293, 18.22]],
    [0.9, [1.253, 1.295, 1.331], [3.055, 5.52, 25.13]],
    [1.2, [1.372, 1.441, 1.502], [3.305, 6.094, 28.3]],
    [1.5, [1.519, 1.629, 1.729], [3.477, 6.487, 30.47]],
  ])('frozen down to %d m: rod and wire at 0.5 m, 5, 10 and 50 times the resistivity', (frostM, ofRod, ofWire) => {
    for (const [at, times] of [5, 10, 50].entries()) {
      const frozen = layered([100 * times, 100], [frostM]);
      expect(off(ohmOfBody(tenFeet, frozen) / ohmOfBody(tenFeet, uniform), ofRod[at]!)).toBeLessThan(0.02);
      expect(off(ohmOfBody(buried, frozen) / ohmOfBody(buried, uniform), ofWire[at]!)).toBeLessThan(0.02);
    }
  });
});
