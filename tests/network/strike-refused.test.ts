import { describe, expect, it } from 'vitest';
import { ampereOf, peakOfPart, strikeIn } from './strike-in.ts';

const site = (wires: string) => `
site: {name: Refused, region: iec, units: m, service: none}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  R1: {kind: rod, resistance: 20 ohm}
  R2: {kind: rod, resistance: 30 ohm}
antennas:
  A: {kind: free}
conductors:
  down: {from: A, to: R1, wire: round 8 mm copper, length: 3 m}
${wires}`;
const wire = (id: string, across: string, route: string) =>
  `  ${id}: {from: R1, to: R2, wire: ${across}, buried: no, route: ${route}}\n`;

describe('metal that cannot be', () => {
  // three tubes a metre across, one through another within two metres
  const across = 'tube 1000 mm copper';
  const pile = [
    wire('c1', across, '[[0, 1.3], [1.4, 1.8]]'),
    wire('c2', across, '[[1.8, 0.7], [0.4, 0.5]]'),
    wire('c3', across, '[[0.4, 1], [1.2, 1.2]]'),
  ];

  it('is refused by naming the two pieces, of which without one it can', () => {
    const strike = strikeIn(site(pile.join('')), { at: 'A' });
    expect(strike.refused).toMatchObject({ reason: 'impossible inductances', parts: ['c1', 'c3'] });
    expect(strike.peaks).toEqual([]);
    for (const left of [0, 2]) {
      const rest = pile.filter((_, i) => i !== left).join('');
      expect(strikeIn(site(rest), { at: 'A' }).refused).toBeNull();
    }
  });
});

describe('wires on one line', () => {
  it('lie side by side, and a third beside them', () => {
    const route = '[[0, 0], [10, 0]]';
    const two = [wire('c1', 'round 9 mm copper', route), wire('c2', 'round 9 mm copper', route)];
    // four radii aside: where the second is moved to
    const three = [...two, wire('c3', 'round 9 mm copper', '[[0, 0.018], [10, 0.018]]')];
    const amps = [two, three].map((wires) => {
      const strike = strikeIn(site(wires.join('')), { at: 'A' });
      expect(strike.refused).toBeNull();
      expect(strike.taken!.laidApart).toHaveLength(wires.length - 1);
      return wires.map((_, i) => ampereOf(strike, `c${i + 1}`));
    });
    expect(amps[0]![0]! / amps[0]![1]!).toBeCloseTo(1, 2);
    // by hand, long wires 4 r, 4 r and 8 r apart: (L + M2 - 2 M1) of an outer one stands against (L - M1) of the middle one,
    // that is ln 2 against ln 4
    expect(amps[1]![0]! / amps[1]![1]!).toBeCloseTo(Math.log(4) / Math.log(2), 1);
  });

  it('may be one that runs out and back over itself: it has the inductance of a hairpin', () => {
    const there = wire('c1', 'round 9 mm copper', '[[0, 0], [5, 0], [0, 0]]');
    const strike = strikeIn(site(there + wire('c2', 'round 9 mm copper', '[[0, 0], [0, 10]]')), { at: 'A' });
    expect(strike.refused).toBeNull();
    expect(strike.taken!.laidApart).toEqual(['c1']);
    // 0.4 ln(4 r / r) uH/m for 5 m is 2.8 uH, far less than the 13 uH of the straight one
    expect(ampereOf(strike, 'c1')).toBeGreaterThan(2 * ampereOf(strike, 'c2'));
    expect(peakOfPart(strike, 'R2')).toBeGreaterThan(0);
  });
});
