import { describe, expect, it } from 'vitest';
import { runStudy } from '../../src/study/run-study.ts';
import { earthIn } from './earth-in.ts';
import { bodies, joinedOhm, run } from './joined-ohm.ts';

const head = `
site: {name: Perhaps, region: iec, units: m, service: R1}
soil: {layers: [{resistivity: 100 ohm m}]}
`;
const rod = (e: number): string => `at: [${e}, 0], length: 2.4 m, diameter: 16 mm`;
const rodOhm = joinedOhm(bodies([run([0, 0, 0], [0, 0, 2.4], 0.008)]), [100]);

function limitsOf(text: string): readonly string[] {
  const { site } = earthIn(text);
  const { study } = runStudy(site, { state: null, version: '0', checksum: '', date: null });
  return study.earth.solve!.limits;
}

function isNear(ohm: number | null, expected: number, share = 0.005): void {
  expect(ohm! / expected).toBeGreaterThan(1 - share);
  expect(ohm! / expected).toBeLessThan(1 + share);
}

/** Side by side: no two bodies in soil have less together than as resistors that do not feel each other. */
const parallel = (...ohm: readonly number[]): number => 1 / ohm.reduce((sum, r) => sum + 1 / r, 0);

describe('a bare wire without a place', () => {
  const text = `${head}
electrodes:
  R1: {kind: rod, ${rod(0)}}
  R2: {kind: rod, length: 2.4 m, diameter: 16 mm, at: unknown}
conductors:
  tie: {from: R1, to: R2, wire: round 8 mm bare copper, length: 12 m, joints: none, buried: 0.5 m}
`;
  // F11 of the reference: mean potential of a straight wire of even leakage, closed form; 0.7 % above the true one.
  const f = (x: number, l = 12): number => (2 / l) * (Math.asinh(l / x) - Math.hypot(1, x / l) + x / l);
  const wireOhm = (100 / (4 * Math.PI)) * (f(0.004) + f(1));

  it('is in for the low figure alone', () => {
    const { resistanceOhm } = earthIn(text).dc.earth;
    isNear(resistanceOhm!.low, parallel(rodOhm, rodOhm, wireOhm), 0.01);
    isNear(resistanceOhm!.value, rodOhm / 2);
    isNear(resistanceOhm!.high, rodOhm);
  });

  it('is named among the limits', () => {
    expect(limitsOf(text).join('\n')).toContain('tie is bare and in the soil without a known place');
  });
});

describe('a tower on its footing, with guys', () => {
  const text = (guys: string): string => `${head}
electrodes:
  R1: {kind: rod, ${rod(0)}}
supports:
  mast: {kind: lattice tower, at: [1, 0], height: 20 m, metal: galvanised steel, sections: bolted${guys}}
conductors:
  lead: {from: mast@base, to: R1, resistance: 0 ohm, joints: none, buried: no}
`;
  // Hemispheres of 1 m and of 0.4 m radius, F0: rho / (2 pi r).
  const footingOhm = 100 / (2 * Math.PI);
  const anchorOhm = 100 / (2 * Math.PI * 0.4);

  it('has the footing for the low figure alone', () => {
    const { resistanceOhm, perhaps } = earthIn(text('')).dc.earth;
    isNear(resistanceOhm!.low, parallel(rodOhm, footingOhm));
    isNear(resistanceOhm!.value, rodOhm);
    isNear(resistanceOhm!.high, rodOhm);
    expect(perhaps).toEqual(['mast']);
  });

  it('has the anchors of guys too, but of those with insulators', () => {
    const guys = ', guys: {g1: {anchor: [10, 0], metal: galvanised steel}, g2: {anchor: [-10, 0], insulators: yes}}';
    const { resistanceOhm, perhaps } = earthIn(text(guys)).dc.earth;
    isNear(resistanceOhm!.low, parallel(rodOhm, footingOhm, anchorOhm));
    isNear(resistanceOhm!.value, rodOhm);
    isNear(resistanceOhm!.high, rodOhm);
    expect(perhaps).toEqual(['g1', 'mast']);
    const limits = limitsOf(text(guys)).join('\n');
    const size = 'for the lowest figure each is taken for a half sphere of metal';
    expect(limits).toContain(
      `mast may carry current into the soil too, by a footing that nobody typed: ${size} 1 m (3.28 ft) in radius`,
    );
    expect(limits).toContain(
      `g1 may carry current into the soil too, by an anchor that nobody typed: ${size} 0.4 m (1.31 ft) in radius`,
    );
  });
});

describe('a rod of which nobody knows whether it is tied', () => {
  const text = `${head}
electrodes:
  R1: {kind: rod, ${rod(0)}}
  R2: {kind: rod, ${rod(4)}}
conductors:
  tie: {from: R1, to: R2, resistance: 0 ohm, joints: none, buried: no, present: unknown}
`;

  it('is in for the low figure alone', () => {
    const { resistanceOhm } = earthIn(text).dc.earth;
    const both = bodies([run([0, 0, 0], [0, 0, 2.4], 0.008), run([4, 0, 0], [4, 0, 2.4], 0.008)]);
    isNear(resistanceOhm!.low, joinedOhm(both, [100]));
    isNear(resistanceOhm!.value, rodOhm);
    isNear(resistanceOhm!.high, rodOhm);
  });

  it('is named among the limits', () => {
    expect(limitsOf(text).join('\n')).toContain('Nobody knows whether R2 is tied to the rest');
  });
});

describe('a rod that may not be there', () => {
  const text = (present: string): string => `${head}
electrodes:
  R1: {kind: rod, ${rod(0)}}
  R2: {kind: rod, ${rod(0.2)}, present: ${present}}
conductors:
  tie: {from: R1, to: R2, resistance: 0 ohm, joints: none, buried: no}
`;

  it('is no metal in the soil for the likely and the high figure', () => {
    const { resistanceOhm } = earthIn(text('unknown')).dc.earth;
    isNear(resistanceOhm!.value, rodOhm);
    expect(resistanceOhm!.high).toBeCloseTo(earthIn(text('no')).dc.earth.resistanceOhm!.high, 6);
    expect(resistanceOhm!.low).toBeCloseTo(earthIn(text('yes')).dc.earth.resistanceOhm!.low, 6);
  });
});
