import { describe, expect, it } from 'vitest';
import { fusingMetals, steadyFusing } from '../../src/materials/fusing.ts';
import { gasTubes, sparkOverPoints } from '../../src/materials/gas-tubes.ts';

describe('metals against fusing, IEEE Std 80 Table 1 (from memory)', () => {
  // Two columns of one thing: 1 / alpha at 20 C = K0 + 20.
  it.each(fusingMetals.map((m) => [m.name, m] as const))('%s: coefficient and K0 agree to 1 %%', (_, metal) => {
    expect(Math.abs(metal.temperatureCoefficientPerK * (metal.zeroBelowK + 20) - 1)).toBeLessThan(0.01);
  });

  // Conductivity against copper as the standard names it (from memory): 100, 97, 40, 30, 20, 61, 10.8, 8.6, 2.4 %,
  // two figures each.
  it('resistivities follow from the conductivities that the rows are named by', () => {
    const percent = [100, 97, 40, 30, 20, 61, 10.8, 8.6, 2.4];
    for (const [at, { name, resistivityOhmM }] of fusingMetals.entries()) {
      expect(Math.abs(1.7241e-8 / resistivityOhmM / (percent[at]! / 100) - 1), name).toBeLessThan(0.025);
    }
  });

  it('copper fuses at more than any other of the same wire', () => {
    const [copper, ...others] = steadyFusing;
    for (const other of others) expect(other.factorAPerM1p5).toBeLessThan(copper!.factorAPerM1p5);
    expect(copper!.source.provenance).toBe('second-hand');
  });
});

describe('gas tubes', () => {
  it('stand from the lowest voltage up, arc below glow, holdover below spark-over', () => {
    for (const [at, tube] of gasTubes.entries()) {
      if (at > 0) expect(tube.nominalV).toBeGreaterThan(gasTubes[at - 1]!.nominalV);
      expect(tube.arcV.high).toBeLessThan(tube.glowV.low);
      expect(tube.holdoverV).toBeLessThan(tube.dcSparkOverV.low);
    }
  });

  it('points rise in steepness and in what they need', () => {
    for (const tube of gasTubes) {
      const points = sparkOverPoints(tube);
      for (const [at, point] of points.entries()) {
        if (at === 0) continue;
        expect(point.slopeVPerS).toBeGreaterThan(points[at - 1]!.slopeVPerS);
        expect(point.sparkOverV.high).toBeGreaterThan(points[at - 1]!.sparkOverV.high);
      }
    }
  });
});
