import { describe, expect, it } from 'vitest';
import { aggregateInductance } from '../../src/surge/aggregate-inductance.ts';
import { inductanceMatrix } from '../../src/surge/inductance-matrix.ts';
import { mutualInductance } from '../../src/surge/mutual-inductance.ts';
import { bundleRadius, strapRadius } from '../../src/surge/piece-radius.ts';
import type { StraightPiece } from '../../src/surge/straight-piece.ts';
import { towerSurgeImpedance } from '../../src/surge/tower-surge-impedance.ts';
import { mutualOverPlane, wireOverPlane } from '../../src/surge/wire-over-plane.ts';

const lightMPerS = 299792458;
const upright = (x: number, y: number, heightM: number, radiusM: number): StraightPiece => ({
  from: [x, y, 0],
  to: [x, y, heightM],
  radiusM,
});

describe('surge impedance of towers', () => {
  // Cylinder, cone and waist, worked out apart from this program from the published forms (from memory); ohm, two decimals.
  it.each([
    [20, 0.25, 265.3, 283.72, 304.51],
    [30, 0.3, 278.69, 297.11, 317.9],
    [40, 2, 182.13, 200.61, 221.37],
  ])('%d m high, radius %d m: %d, %d and %d ohm', (heightM, radiusM, cylinder, cone, waist) => {
    const z = towerSurgeImpedance(heightM, radiusM);
    expect(z.cylinderOhm).toBeCloseTo(cylinder, 2);
    expect(z.coneOhm).toBeCloseTo(cone, 2);
    expect(z.waistOhm).toBeCloseTo(waist, 2);
    expect(z.bandOhm).toEqual({ low: z.cylinderOhm, high: z.waistOhm });
  });

  // The same list: 0.885 uH/m for the first by the cylinder, the three up to 22 % apart.
  it('20 m and 0.25 m: 0.885 uH/m at least; the band of the thick tower is 22 % wide', () => {
    expect(towerSurgeImpedance(20, 0.25).inductanceHPerM.low * 1e6).toBeCloseTo(0.885, 3);
    const { bandOhm } = towerSurgeImpedance(40, 2);
    expect(bandOhm.high / bandOhm.low - 1).toBeCloseTo(0.22, 2);
  });

  // Slim towers: cot(arctan(r / h) / 2) comes to 2 h / r, hand.
  it('of slim ones: cone 60 ln(sqrt2 h / r), waist 60 ln(2 h / r)', () => {
    expect(towerSurgeImpedance(1e6, 1).coneOhm).toBeCloseTo(60 * Math.log(1e6 * Math.SQRT2), 6);
    expect(towerSurgeImpedance(1e6, 1).waistOhm).toBeCloseTo(60 * Math.log(2e6), 6);
  });

  it('refuses a tower wider than it is high', () => {
    expect(() => towerSurgeImpedance(1, 2)).toThrow(RangeError);
    expect(() => towerSurgeImpedance(0, 2)).toThrow(RangeError);
  });
});

describe('one tube in place of several conductors', () => {
  it.each([
    [3, 0.5, 0.025],
    [4, 0.6, 0.02],
    [6, 0.3, 0.01],
  ])('%d legs %d m apart carry their shares as the tube does', (count, sideM, ownM) => {
    const ring = sideM / (2 * Math.sin(Math.PI / count));
    const legs = Array.from({ length: count }, (_, k) => {
      const angle = (2 * Math.PI * k) / count;
      return upright(ring * Math.cos(angle), ring * Math.sin(angle), 60, ownM);
    });
    const shares = { pieces: legs.map((_, k) => k), signs: legs.map(() => 1 / count) };
    const together = aggregateInductance(inductanceMatrix(legs), [shares])[0]!;
    const tube = upright(0, 0, 60, bundleRadius(count, sideM, ownM));
    expect(Math.abs(together / mutualInductance(tube, tube) - 1)).toBeLessThan(2e-3);
  });

  // Hand: (0.025 x 0.5^2)^(1/3) = 0.18420 m.
  it('three legs: (r s^2)^(1/3)', () => {
    expect(bundleRadius(3, 0.5, 0.025)).toBeCloseTo(0.1842, 4);
    expect(bundleRadius(1, 0, 0.025)).toBe(0.025);
    expect(() => bundleRadius(0, 1, 1)).toThrow(RangeError);
  });

  it('a strap is its many narrow wires with the current spread evenly', () => {
    const [widthM, count] = [0.1, 80];
    const wires = Array.from({ length: count }, (_, k) =>
      upright((widthM * (k + 0.5)) / count, 0, 20, strapRadius(widthM / count, 0)),
    );
    const shares = { pieces: wires.map((_, k) => k), signs: wires.map(() => 1 / count) };
    const together = aggregateInductance(inductanceMatrix(wires), [shares])[0]!;
    const strap = upright(0, 0, 20, strapRadius(widthM, 0));
    expect(Math.abs(together / mutualInductance(strap, strap) - 1)).toBeLessThan(1e-3);
  });
});

describe('a level wire over a plane', () => {
  // An antenna handbook's formulas and figures (read): two 12 AWG wires 6 in apart, 72 in high, 599.3 ohm between them, 340.3 ohm
  // of both against ground. They round the constants to 276 and 69, 0.05 % low.
  it('two 12 AWG wires: 599.3 and 340.3 ohm', () => {
    const inch = 0.0254;
    const own = wireOverPlane(72 * inch, (0.0808 / 2) * inch);
    const mutual = mutualOverPlane(72 * inch, 72 * inch, 6 * inch);
    expect(Math.abs((2 * (own - mutual) * lightMPerS) / 599.3 - 1)).toBeLessThan(6e-4);
    expect(Math.abs(((own + mutual) * lightMPerS) / 2 / 340.3 - 1)).toBeLessThan(6e-4);
  });

  it('is what a long wire has with its image', () => {
    const wire = (z: number): StraightPiece => ({ from: [0, 0, z], to: [20_000, 0, z], radiusM: 0.004 });
    const perMetre = (mutualInductance(wire(5), wire(5)) - mutualInductance(wire(5), wire(-5))) / 20_000;
    expect(Math.abs(perMetre / wireOverPlane(5, 0.004) - 1)).toBeLessThan(1e-4);
    const beside: StraightPiece = { from: [0, 3, 7], to: [20_000, 3, 7], radiusM: 0.004 };
    const felt = (mutualInductance(beside, wire(5)) - mutualInductance(beside, wire(-5))) / 20_000;
    expect(Math.abs(felt / mutualOverPlane(5, 7, 3) - 1)).toBeLessThan(1e-3);
  });
});
