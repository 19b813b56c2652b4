import { describe, expect, it } from 'vitest';
import type { Run } from '../../src/electrodes/body.ts';
import { solveBodies } from '../../src/electrodes/solve-bodies.ts';
import { transferredShares } from '../../src/network/transferred-shares.ts';
import { soilImages } from '../../src/soil/layer-images.ts';
import { layeredSoil } from '../../src/soil/layered-soil.ts';
import { earthIn } from './earth-in.ts';
import { run as line } from './joined-ohm.ts';

/** A square ring of 3 m, 0.6 m deep, wire 8 mm thick, a rod of 2.44 m by 16 mm at each corner, tops at 0.6 m. */
function ringWithRods(layers: string, more: { readonly rod?: string; readonly tie?: string } = {}) {
  const corners = [
    [-1.5, -1.5],
    [1.5, -1.5],
    [1.5, 1.5],
    [-1.5, 1.5],
  ] as const;
  const rods = corners.map(
    ([e, n], i) => `  R${i + 1}: {kind: rod, at: [${e}, ${n}], top: 0.6 m, length: 2.44 m, diameter: 16 mm}`,
  );
  const ties = corners.map(
    (_, i) => `  t${i + 1}: {from: ring, to: R${i + 1}, resistance: 0 ohm, joints: none, buried: no}`,
  );
  return earthIn(`
site: {name: Ring with rods, region: iec, units: m, service: ring}
soil: {layers: [${layers}]}
electrodes:
  ring: {kind: buried wire, route: [${corners.map((c) => `[${c.join(', ')}]`).join(', ')}], closed: yes, depth: 0.6 m, wire: round 8 mm copper}
${rods.join('\n')}
${more.rod ?? ''}
conductors:
${ties.join('\n')}
${more.tie ?? ''}
`);
}

/** Boundary elements worked out apart, 8 segments per side and rod, the finer of two cuts (0.1 % below the coarser), ohm. */
const reference = [
  ['{resistivity: 100 ohm m}', 9.6247],
  ['{resistivity: 300 ohm m, thickness: 2 m}, {resistivity: 100 ohm m}', 15.0258],
  ['{resistivity: 100 ohm m, thickness: 2 m}, {resistivity: 1000 ohm m}', 24.2012],
  ['{resistivity: 1000 ohm m, thickness: 0.8 m}, {resistivity: 100 ohm m}', 13.0092],
] as const;

describe('a ring with a rod at each corner', () => {
  it.each(reference)('in %s has %f ohm', (layers, ohm) => {
    const earth = ringWithRods(layers).dc.earth;
    expect(earth.resistanceOhm!.value! / ohm).toBeGreaterThan(0.995);
    expect(earth.resistanceOhm!.value! / ohm).toBeLessThan(1.005);
    expect(earth.couplingLeftOut).toEqual([]);
  });
});

describe('a rod that nothing ties to the ring', () => {
  /** Mutual resistance, and both joined; parallel resistors would give 7.464 to 7.469. 100 ohm m, the same source. */
  const apart = [
    [5, 2.9523, 8.4215],
    [10, 1.5604, 7.9929],
    [20, 0.7918, 7.7396],
    [50, 0.3181, 7.5786],
  ] as const;
  const rod = (m: number): string => `  far: {kind: rod, at: [${m}, 0], length: 3 m, diameter: 16 mm}`;

  it.each(apart)('%f m away takes on %f ohm for each ampere of the ring', (m, mutualOhm) => {
    const { run, ground, dc } = ringWithRods('{resistivity: 100 ohm m}', { rod: rod(m) });
    const shares = transferredShares(run.bonding.groups, ground);
    const onto = shares.find((s) => s.electrode === 'far')!;
    const ringOhm = dc.earth.resistanceOhm!.value!;
    expect((onto.share.value! * ringOhm) / mutualOhm).toBeGreaterThan(0.995);
    expect((onto.share.value! * ringOhm) / mutualOhm).toBeLessThan(1.005);
    expect(onto.share.low).toBeLessThanOrEqual(onto.share.value!);
    expect(onto.share.high).toBeGreaterThanOrEqual(onto.share.value!);
    // Each piece of the ring's metal alone takes on about as much: the nearer ones more, the others less.
    const farOhm = dc.earth.groups.find((g) => g.id === 'far')!.resistanceOhm!.value!;
    const back = shares.filter((s) => s.group === 'far').map((s) => s.share.value! * farOhm);
    expect(back).toHaveLength(5);
    expect(Math.max(...back)).toBeGreaterThan(mutualOhm);
    expect(Math.min(...back)).toBeLessThan(mutualOhm);
  });

  it.each(apart)('%f m away, with %f ohm between them: tied at last they have %f', (m, _mutualOhm, joinedOhm) => {
    const tie = '  at-last: {from: ring, to: far, resistance: 0 ohm, joints: none, buried: no}';
    const { dc } = ringWithRods('{resistivity: 100 ohm m}', { rod: rod(m), tie });
    expect(dc.earth.resistanceOhm!.value! / joinedOhm).toBeGreaterThan(0.995);
    expect(dc.earth.resistanceOhm!.value! / joinedOhm).toBeLessThan(1.005);
  });
});

describe('what takes on a potential', () => {
  const text = (far: string, tie: string): string => `
site: {name: Transferred, region: iec, units: m, service: R1}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  R1: {kind: rod, at: [0, 0], length: 3 m, diameter: 16 mm}
  R2: {kind: rod, at: [12, 0], length: 3 m, diameter: 16 mm}
  far: {${far}}
conductors:
  tie: {from: R1, to: R2, wire: ${tie}, joints: none, buried: 0.6 m}
`;
  const onto = (far: string, tie: string): number => {
    const { run, ground } = earthIn(text(far, tie));
    return transferredShares(run.bonding.groups, ground).find((s) => s.electrode === 'far')!.share.value!;
  };

  /** By hand: all bodies written out, the lifted ones and those of the far one joined, V = R I. */
  function byHand(lifted: readonly Run[], far: readonly Run[]): number {
    const solved = solveBodies([{ runs: lifted }, { runs: far }], soilImages(layeredSoil([100])));
    if (!solved.ok) throw new Error(solved.reason);
    return solved.resistanceOhm[1]! / solved.resistanceOhm[0]!;
  }
  const rods = [line([0, 0, 0], [0, 0, 3], 0.008), line([12, 0, 0], [12, 0, 3], 0.008)];

  it('has it from the buried wire of the group as well', () => {
    const near = 'kind: rod, at: [6, 2], length: 3 m, diameter: 16 mm';
    const rod = [line([6, 2, 0], [6, 2, 3], 0.008)];
    const wire = line([0, 0, 0.6], [12, 0, 0.6], 0.004);
    expect(onto(near, 'round 8 mm bare copper') / byHand([...rods, wire], rod)).toBeCloseTo(1, 2);
    expect(onto(near, 'round 8 mm insulated copper') / byHand(rods, rod)).toBeCloseTo(1, 2);
  });

  it('is one potential along its own length, though it is cut', () => {
    const long = 'kind: buried wire, route: [[20, 0], [60, 0]], depth: 0.6 m, wire: round 8 mm copper';
    const wire = [line([20, 0, 0.6], [60, 0, 0.6], 0.004)];
    expect(onto(long, 'round 8 mm insulated copper') / byHand(rods, wire)).toBeCloseTo(1, 2);
  });
});
