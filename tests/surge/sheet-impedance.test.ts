import { describe, expect, it } from 'vitest';
import { internalImpedance } from '../../src/surge/internal-impedance.ts';
import { strapImpedance, tubeImpedance } from '../../src/surge/sheet-impedance.ts';
import { skinDepth } from '../../src/surge/skin-depth.ts';

const copper = { resistivityOhmM: 1.7241e-8, relativePermeability: 1 };
const steel = { resistivityOhmM: 1.2e-7, relativePermeability: 200 };
const near = (got: number, expected: number, share: number) => expect(Math.abs(got / expected - 1)).toBeLessThan(share);

describe('a tube', () => {
  // Hand: rho / (2 pi 24.5 mm x 1 mm) = 0.1120 milliohm/m; mu0 t / (3 x 2 pi r) = 2.721 nH/m.
  it('slowly: its section, and a third of its wall', () => {
    const z = tubeImpedance(copper, 0.025, 0.001, 0);
    expect(z.resistanceOhmPerM * 1e3).toBeCloseTo(0.112, 4);
    expect(z.inductanceHPerM * 1e9).toBeCloseTo(2.721, 3);
    near(tubeImpedance(copper, 0.025, 0.001, 0.1).inductanceHPerM, z.inductanceHPerM, 1e-6);
    near(tubeImpedance(copper, 0.025, 0.001, 50).inductanceHPerM, z.inductanceHPerM, 1e-4);
  });

  it('many depths thick: the skin of a round wire of its radius', () => {
    for (const metal of [copper, steel]) {
      const [tube, wire] = [tubeImpedance(metal, 0.05, 0.003, 1e7), internalImpedance(metal, 0.0485, 1e7)];
      near(tube.resistanceOhmPerM, wire.resistanceOhmPerM, 1e-3);
      near(tube.inductanceHPerM, wire.inductanceHPerM, 1e-3);
    }
  });

  it('is all skin beyond twenty depths, with no jump', () => {
    const wallM = 20 * skinDepth(copper.resistivityOhmM, 1e6);
    const [under, over] = [0.99999, 1.00001].map((k) => tubeImpedance(copper, 0.1, wallM, 1e6 * k));
    near(over!.resistanceOhmPerM, under!.resistanceOhmPerM, 2e-5);
  });

  it('refuses a wall thicker than its radius', () => {
    expect(() => tubeImpedance(copper, 0.001, 0.002, 1e3)).toThrow(RangeError);
  });
});

describe('a strap', () => {
  // Hand: rho / (w t) = 1.7241e-8 / (0.15 x 0.5e-3) = 0.22988 milliohm/m.
  it('slowly: its section', () => {
    expect(strapImpedance(copper, 0.15, 0.5e-3, 0).resistanceOhmPerM * 1e3).toBeCloseTo(0.22988, 5);
  });

  // Hand: rho / (2 w depth), depth 0.0661 mm at 1 MHz: 0.870 milliohm/m; its reactance is the same.
  it('at 1 MHz: a skin on both faces', () => {
    const z = strapImpedance(copper, 0.15, 0.5e-3, 1e6);
    expect(z.resistanceOhmPerM * 1e3).toBeCloseTo(0.87, 2);
    near(2e6 * Math.PI * z.inductanceHPerM, z.resistanceOhmPerM, 0.01);
  });
});
