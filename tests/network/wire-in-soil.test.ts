import { describe, expect, it } from 'vitest';
import { earthIn } from './earth-in.ts';
import { bodies, joinedOhm, run } from './joined-ohm.ts';

/** Two rods of 2.4 m by 16 mm, 12 m apart, joined by a wire of 8 mm, 0.5 m deep, in 100 ohm m. */
function wired(wire: string, places = true) {
  const at = (e: number): string => (places ? `at: [${e}, 0], ` : '');
  return earthIn(`
site: {name: Wire in the soil, region: iec, units: m, service: R1}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  R1: {kind: rod, ${at(0)}length: 2.4 m, diameter: 16 mm}
  R2: {kind: rod, ${at(12)}length: 2.4 m, diameter: 16 mm}
conductors:
  tie: {from: R1, to: R2, wire: ${wire}, length: 12 m, joints: none, buried: 0.5 m}
`).dc.earth;
}

const rods = [run([0, 0, 0], [0, 0, 2.4], 0.008), run([12, 0, 0], [12, 0, 2.4], 0.008)];
const wire = run([0, 0, 0.5], [12, 0, 0.5], 0.004);
/** 50 mm2 of copper: 12 m have 4 milliohm, nothing beside some ten ohm. */
const withWire = joinedOhm(bodies([...rods, wire]), [100]);
const withoutWire = joinedOhm(bodies(rods), [100]);

function isNear(ohm: number, expected: number, share = 0.005): void {
  expect(ohm / expected).toBeGreaterThan(1 - share);
  expect(ohm / expected).toBeLessThan(1 + share);
}

describe('a wire in the soil between two rods', () => {
  it('matters: the wire by hand halves the two rods, nearly', () => {
    // By the closed forms: rods 40.6 ohm each, 1.3 ohm between them; the wire, F11 of the reference, 12.8 ohm.
    expect(withoutWire).toBeGreaterThan(20.5);
    expect(withoutWire).toBeLessThan(21.1);
    expect(withWire / withoutWire).toBeLessThan(0.6);
  });

  it('leaks where it is bare', () => {
    const earth = wired('round 8 mm bare copper');
    isNear(earth.resistanceOhm!.value!, withWire);
    isNear(earth.resistanceOhm!.low, withWire);
    isNear(earth.resistanceOhm!.high, withWire);
    const shares = ['R1', 'R2', 'tie'].map((id) => earth.currentShare.get(id)!);
    expect(shares[0]! + shares[1]! + shares[2]!).toBeCloseTo(1, 9);
    expect(shares[2]).toBeGreaterThan(0.4);
    expect(shares[0]).toBeCloseTo(shares[1]!, 2);
  });

  it('does not where it is insulated', () => {
    const earth = wired('round 8 mm insulated copper');
    isNear(earth.resistanceOhm!.value!, withoutWire);
    isNear(earth.resistanceOhm!.high, withoutWire);
    isNear(earth.resistanceOhm!.low, withoutWire);
    expect(earth.currentShare.has('tie')).toBe(false);
  });

  it('that nobody calls bare is in for low and likely, out for high', () => {
    const earth = wired('round 8 mm copper');
    isNear(earth.resistanceOhm!.low, withWire);
    isNear(earth.resistanceOhm!.value!, withWire);
    isNear(earth.resistanceOhm!.high, withoutWire);
    // Insulated, it would not even carry potential along through the soil.
    expect(earth.resistanceOhm!.high).toBeGreaterThan(
      wired('round 8 mm insulated copper').resistanceOhm!.high * (1 - 1e-9),
    );
  });
});
