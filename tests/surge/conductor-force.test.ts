import { describe, expect, it } from 'vitest';
import { gaussLegendre, integrate } from '../../src/math/quadrature.ts';
import { bendForce, parallelForce, parallelImpulse } from '../../src/surge/conductor-force.ts';

const rule = gaussLegendre(40);

describe('parallel conductors', () => {
  // The ampere as it was defined from 1948 to 2019: 2e-7 N on each metre of two long wires 1 m apart.
  it('1 A in each of two long wires 1 m apart: 2e-7 N per metre', () => {
    expect(parallelForce(1, 1, 1e6, 1) / 1e6).toBeCloseTo(2e-7, 12);
  });

  // Hand, annex D's formula: 2e-7 x (100 kA)^2 / 0.5 m = 4000 N per metre, less 0.5 % for the ends of 100 m.
  it('100 kA in both, 0.5 m apart: 4 kN per metre', () => {
    expect(Math.abs(parallelForce(100e3, 100e3, 100, 0.5) / 100 / 4000 - 0.995)).toBeLessThan(1e-4);
  });

  it('is what the field of the one does to the other, summed up', () => {
    const [length, d] = [1.5, 0.2];
    // field of a straight piece at distance d, x along it (Biot and Savart)
    const field = (x: number) => (1e-7 / d) * (x / Math.hypot(x, d) + (length - x) / Math.hypot(length - x, d));
    const halves = integrate(rule, field, 0, length / 2) + integrate(rule, field, length / 2, length);
    expect(parallelForce(1e3, 2e3, length, d)).toBeCloseTo(2e6 * halves, 10);
  });

  it('currents that run against each other part', () => {
    expect(parallelForce(1e3, -1e3, 1, 0.1)).toBe(-parallelForce(1e3, 1e3, 1, 0.1));
  });

  // Hand: 2e-7 x 10e6 / 0.1 = 20 N s per metre.
  it('10 MJ/ohm in each at 0.1 m: 20 N s per metre', () => {
    expect(parallelImpulse(10e6, 0.1)).toBeCloseTo(20, 10);
  });
});

describe('a bend', () => {
  // Hand: 1e-7 x (100 kA)^2 x ln(0.5 / 0.004) = 1000 x 4.8283 N.
  it('a square corner of 8 mm wire, half a metre of it, at 100 kA: 4.83 kN', () => {
    expect(bendForce(100e3, Math.PI / 2, 0.004, 0.5)).toBeCloseTo(4828.3, 1);
  });

  it.each([30, 60, 90, 135, 170])('at %d degrees is what the field of the other arm does, summed up', (degrees) => {
    const angle = (degrees * Math.PI) / 180;
    const other = 1e7;
    // field of a straight piece from the corner to `other` at the point s along this arm
    const field = (s: number) => {
      const [away, along] = [s * Math.sin(angle), s * Math.cos(angle)];
      return (1e-7 / away) * (along / s + (other - along) / Math.hypot(away, other - along));
    };
    const logs = integrate(rule, (u) => field(Math.exp(u)) * Math.exp(u), Math.log(0.004), Math.log(0.5));
    expect(bendForce(1e3, angle, 0.004, 0.5)).toBeCloseTo(1e6 * logs, 8);
  });

  it('is none where the wire runs straight, and grows as it closes', () => {
    expect(bendForce(100e3, Math.PI, 0.004, 0.5)).toBeCloseTo(0, 9);
    expect(bendForce(1e3, 0.5, 0.004, 0.5)).toBeGreaterThan(bendForce(1e3, 1, 0.004, 0.5));
    expect(bendForce(1e3, 1, 0.5, 0.5)).toBe(0);
  });
});

describe('what cannot be', () => {
  it.each([0, -1, Number.NaN, Infinity])('a spacing or length of %d is refused', (figure) => {
    expect(() => parallelForce(1, 1, 1, figure)).toThrow(RangeError);
    expect(() => parallelForce(1, 1, figure, 1)).toThrow(RangeError);
    expect(() => parallelImpulse(1, figure)).toThrow(RangeError);
    expect(() => bendForce(1, 1, figure, 1)).toThrow(RangeError);
  });

  it('currents, angles and arms that cannot be', () => {
    expect(() => parallelForce(Number.NaN, 1, 1, 1)).toThrow(RangeError);
    expect(() => bendForce(Infinity, 1, 1, 2)).toThrow(RangeError);
    for (const angle of [0, -1, 4, Number.NaN]) expect(() => bendForce(1, angle, 1, 2)).toThrow(RangeError);
    for (const to of [0.5, Number.NaN, Infinity]) expect(() => bendForce(1, 1, 1, to)).toThrow(RangeError);
  });
});
