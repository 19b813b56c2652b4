import { describe, expect, it } from 'vitest';
import { ampereOf, peakBetween, peakOfPart, strikeIn } from './strike-in.ts';

/** A pole with a wire down to R1 and a wire of 12 m from R1 to R2, over the ground; `tie` ends the record of that wire. */
const twoRods = (tie: string, more = '') => `
site: {name: Split, region: iec, units: m, service: none}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  R1: {kind: rod, at: [0, 0], length: 2 m, diameter: 16 mm}
  R2: {kind: rod, at: [12, 0], length: 2 m, diameter: 16 mm}
antennas:
  A: {kind: free, at: [0, 0, 8]}
bars:
  halfway: {kind: station ground bar, at: [6, 0]}
  third: {kind: station ground bar, at: [4, 0]}
conductors:
  down: {from: A, to: R1, wire: round 8 mm copper, joints: none}
  tie: {from: R1, to: R2, wire: 16 mm2 copper, resistance: 10 mohm, buried: no, ${tie}}
${more}`;
const asked = { at: 'A', between: [['R1', 'R2']] as const };
const none = '{kind: none, resistance: 0 ohm}';
const joints = (splices: number) => `joints: [${[none, ...Array(splices).fill(none), none].join(', ')}]`;

function sameStrike(a: string, b: string): void {
  const [one, other] = [strikeIn(a, asked), strikeIn(b, asked)];
  const figures = (s: typeof one) => [
    peakOfPart(s, 'A'),
    peakOfPart(s, 'R1'),
    peakOfPart(s, 'R2'),
    ampereOf(s, 'tie'),
    peakBetween(s, 'R1', 'R2').volt,
  ];
  const theirs = figures(other);
  for (const [i, figure] of figures(one).entries()) expect(Math.abs(figure / theirs[i]! - 1)).toBeLessThan(1e-6);
}

describe('a wire that is parted changes nothing', () => {
  it.each([1, 2, 5])('by %i splices, straight', (splices) => {
    sameStrike(twoRods(joints(0)), twoRods(joints(splices)));
  });

  it('by splices, longer than its straight way', () => {
    sameStrike(twoRods(`length: 14 m, ${joints(0)}`), twoRods(`length: 14 m, ${joints(3)}`));
  });

  it('by splices, along a route with a corner', () => {
    const route = 'route: [[0, 0], [6, 5], [12, 0]]';
    sameStrike(twoRods(`${route}, ${joints(0)}`), twoRods(`${route}, ${joints(2)}`));
    // the detour counts: 15.6 m in place of 12
    const [straight, bent] = [joints(0), `${route}, ${joints(0)}`].map((t) =>
      ampereOf(strikeIn(twoRods(t), asked), 'tie'),
    );
    expect(bent!).toBeLessThan(straight!);
  });

  it('by splices, where nobody knows the places', () => {
    const unplaced = (text: string) =>
      text
        .replaceAll(/at: \[[^\]]*\]/g, 'note: somewhere')
        .replaceAll('length: 2 m', 'length: 2 m, resistance: 40 ohm');
    const [whole, parted] = [joints(0), joints(2)].map((j) => unplaced(twoRods(`length: 12 m, ${j}`)));
    sameStrike(whole!, parted!);
  });

  it('by clamps that it passes without being cut', () => {
    sameStrike(twoRods(joints(0)), twoRods(`passes: [halfway], ${joints(0)}`));
    sameStrike(twoRods(joints(0)), twoRods(`passes: [third, halfway], ${joints(0)}`));
  });

  it('by clamps, along a route with a corner', () => {
    // the clamps lie beside the corners of the route, 6 m and 8 m on
    const route = 'route: [[0, 0], [4, 0], [6, 2], [8, 0], [12, 0]]';
    sameStrike(twoRods(`${route}, ${joints(0)}`), twoRods(`${route}, passes: [third], ${joints(0)}`));
    sameStrike(twoRods(`${route}, ${joints(0)}`), twoRods(`${route}, passes: [third, halfway], ${joints(0)}`));
  });

  it('by clamps, longer than its straight way, or of a stated inductance', () => {
    for (const typed of ['length: 14 m', 'inductance: 12 uH'])
      sameStrike(twoRods(`${typed}, ${joints(0)}`), twoRods(`${typed}, passes: [third, halfway], ${joints(0)}`));
  });
});

describe('metal of known place', () => {
  it('feels the wire beside it: two in one trench bring less to the far rod than two apart', () => {
    const second = (route: string) =>
      twoRods(
        joints(0),
        `  second: {from: R1, to: R2, wire: 16 mm2 copper, resistance: 10 mohm, buried: no, joints: none, route: ${route}}\n`,
      );
    const close = strikeIn(second('[[0, 0], [0.1, 0.05], [11.9, 0.05], [12, 0]]'), asked);
    const apart = strikeIn(second('[[0, 0], [0.1, 4], [11.9, 4], [12, 0]]'), asked);
    expect(peakOfPart(close, 'R2')).toBeLessThan(peakOfPart(apart, 'R2'));
  });

  it('is left to its length where a place is missing, and the figure is that of the nodes', () => {
    const strike = strikeIn(
      twoRods(`length: 12 m, ${joints(0)}`).replace(
        'R2: {kind: rod, at: [12, 0], length: 2 m, diameter: 16 mm}',
        'R2: {kind: rod, resistance: 40 ohm}',
      ),
      asked,
    );
    expect(peakBetween(strike, 'R1', 'R2').route).toBeNull();
    expect(strike.taken!.lengthOnly).toContain('tie');
    const known = strikeIn(twoRods(joints(0)), asked);
    expect(peakBetween(known, 'R1', 'R2').route).toBe('straight');
    expect(known.taken!.lengthOnly).toEqual([]);
  });

  it('leaves coupling where its inductance is stated', () => {
    const stated = (metres: number) =>
      twoRods(
        `inductance: 12 uH, ${joints(0)}`,
        `  second: {from: R1, to: R2, wire: 16 mm2 copper, inductance: 12 uH, resistance: 10 mohm, buried: no, joints: none, route: [[0, 0], [6, ${metres}], [12, 0]]}\n`,
      );
    const [close, far] = [0.1, 20].map((m) => ampereOf(strikeIn(stated(m), asked), 'tie'));
    expect(Math.abs(close! / far! - 1)).toBeLessThan(1e-9);
  });
});

describe('a rod that nothing ties', () => {
  /** F6 of Dwight: mutual resistance of two rods, even leakage. H. B. Dwight, Trans. AIEE 55 (1936). */
  function mutualOhm(ohmM: number, lengthM: number, apartM: number): number {
    const q = Math.hypot(apartM, 2 * lengthM);
    return (ohmM / (2 * Math.PI * lengthM)) * (Math.log((2 * lengthM + q) / apartM) + (apartM - q) / (2 * lengthM));
  }
  const site = (apartM: number) => `
site: {name: Felt, region: iec, units: m, service: none}
soil: {layers: [{resistivity: 200 ohm m}]}
electrodes:
  R1: {kind: rod, at: [0, 0], length: 3 m, diameter: 20 mm}
  R2: {kind: rod, at: [${apartM}, 0], length: 3 m, diameter: 20 mm}
antennas:
  A: {kind: free, at: [0, 0, 8]}
conductors:
  down: {from: A, to: R1, wire: round 8 mm copper, joints: none}
`;

  it.each([5, 8, 20])('%i m away rises by the mutual resistance times the stroke', (apartM) => {
    const strike = strikeIn(site(apartM), { at: 'A', currentA: 30e3 });
    const hand = mutualOhm(200, 3, apartM) * 30e3;
    expect(Math.abs(peakOfPart(strike, 'R2') / hand - 1)).toBeLessThan(0.01);
  });
});
