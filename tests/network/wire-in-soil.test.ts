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
const rodOhm = joinedOhm(bodies(rods.slice(0, 1)), [100]);

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

  it('leaks all along where it is spliced, or where another wire lands on it at a known place', () => {
    const bare = 'round 8 mm bare copper';
    const plain = wired(bare).resistanceOhm!.value!;
    const text = (more: string, joints: string): string => `
site: {name: Tapped, region: iec, units: m, service: R1}
soil: {layers: [{resistivity: 100 ohm m}]}
bars: {bar: {kind: station ground bar}}
electrodes:
  R1: {kind: rod, at: [0, 0], length: 2.4 m, diameter: 16 mm}
  R2: {kind: rod, at: [12, 0], length: 2.4 m, diameter: 16 mm}
conductors:
  tie: {from: R1, to: R2, wire: ${bare}, length: 12 m, joints: ${joints}, buried: 0.5 m}
${more}
`;
    const tap = (at: string): string => `  tap: {from: bar, to: "${at}", resistance: 0 ohm, joints: none, buried: no}`;
    const spliced = earthIn(text('', '[exothermic weld, irreversible crimp, irreversible crimp, exothermic weld]'));
    expect(spliced.ground.lines).toHaveLength(3);
    expect(spliced.dc.earth.resistanceOhm!.value! / plain).toBeCloseTo(1, 2);
    const tapped = earthIn(text(tap('tie@3 m'), 'none'));
    expect(tapped.ground.lines.map((line) => line.lengthM)).toEqual([3, 9]);
    expect(tapped.dc.earth.resistanceOhm!.value! / plain).toBeCloseTo(1, 2);
    // At an end it parts nothing; at no known place, nobody knows the spans: in for the low figure alone.
    expect(earthIn(text(tap('tie@0 m'), 'none')).dc.earth.resistanceOhm!.value! / plain).toBeCloseTo(1, 2);
    const unknown = earthIn(text(tap('tie'), 'none')).dc.earth.resistanceOhm!;
    expect(unknown.value).toBeNull();
    isNear(unknown.high, rodOhm);
    expect(unknown.low).toBeLessThan(plain * 1.01);
  });

  it('in a pipe, or perhaps not there, is in for the low figure alone', () => {
    for (const more of ['enclosure: plastic conduit', 'present: unknown']) {
      const { dc } = earthIn(`
site: {name: In a pipe, region: iec, units: m, service: R1}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  R1: {kind: rod, at: [0, 0], length: 2.4 m, diameter: 16 mm}
  R2: {kind: rod, at: [12, 0], length: 2.4 m, diameter: 16 mm}
conductors:
  above: {from: R1, to: R2, resistance: 0 ohm, joints: none, buried: no}
  tie: {from: R1, to: R2, wire: round 8 mm bare copper, length: 12 m, joints: none, buried: 0.5 m, ${more}}
`);
      isNear(dc.earth.resistanceOhm!.low, withWire);
      isNear(dc.earth.resistanceOhm!.value!, withoutWire);
      isNear(dc.earth.resistanceOhm!.high, withoutWire);
      expect(dc.earth.perhaps).toEqual(['tie']);
    }
  });

  it('laid along an electrode is no more metal than that', () => {
    const text = (more: string): string => `
site: {name: Along, region: iec, units: m, service: run}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  run: {kind: buried wire, route: [[0, 0], [12, 0]], depth: 0.5 m, wire: round 8 mm copper}
  R1: {kind: rod, at: [3, 0], length: 2.4 m, diameter: 16 mm}
  R2: {kind: rod, at: [9, 0], length: 2.4 m, diameter: 16 mm}
conductors:
  a: {from: R1, to: run, resistance: 0 ohm, joints: none, buried: no}
  b: {from: R2, to: run, resistance: 0 ohm, joints: none, buried: no}
${more}
`;
    const beside = '  tie: {from: R1, to: R2, wire: round 8 mm bare copper, joints: none, length: 6 m, buried: 0.5 m}';
    const [plain, both] = ['', beside].map((more) => earthIn(text(more)).dc.earth);
    expect(both!.resistanceOhm!.value! / plain!.resistanceOhm!.value!).toBeCloseTo(1, 4);
    expect(both!.currentShare.has('tie')).toBe(false);
  });
});

it('a wire whose ends nobody traced is laid along the way that was drawn, and tied to nothing', () => {
  const { dc, ground } = earthIn(`
site: {name: Drawn, region: iec, units: m, service: R1}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes: {R1: {kind: rod, at: [0, 0], length: 2.4 m, diameter: 16 mm}}
conductors:
  c1: {wire: round 8 mm bare copper, route: [[100, 0], [112, 0]], buried: 0.5 m, joints: none}
`);
  expect(ground.leaking.map((c) => [c.id, c.spans?.[0]?.lengthM])).toEqual([['c1', 12]]);
  // 100 m off it takes nothing from the rod
  isNear(dc.earth.resistanceOhm!.value!, rodOhm);
});
