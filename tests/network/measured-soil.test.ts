import { describe, expect, it } from 'vitest';
import { solveBodies } from '../../src/electrodes/solve-bodies.ts';
import { measuredSoil } from '../../src/network/measured-soil.ts';
import { soilImages } from '../../src/soil/layer-images.ts';
import { layeredSoil } from '../../src/soil/layered-soil.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { earthIn } from './earth-in.ts';
import { run } from './joined-ohm.ts';

const head = 'site: {name: Sand, region: us, units: ft, service: unknown}\n';
const feetM = 0.3048;

function earthOf(text: string) {
  const { site } = earthIn(head + text);
  return runStudy(site, { state: null, version: '0', checksum: '', date: null }).study.earth;
}

function measured(text: string) {
  const { site, ground } = earthIn(head + text);
  return measuredSoil(site, ground);
}

/** A 5/8 in rod of so many feet, alone, by elements written out by hand. */
function rodOhm(feet: number, resistivityOhmM: readonly number[], thicknessM: readonly number[] = []): number {
  const rod = { runs: [run([0, 0, 0], [0, 0, feet * feetM], (0.625 * 0.0254) / 2)] };
  const solved = solveBodies([rod], soilImages(layeredSoil(resistivityOhmM, thicknessM)));
  if (!solved.ok) throw new Error(solved.reason);
  return solved.aloneOhm[0]!;
}

/** As told by practitioners: 750 ohm at 10 ft, 5 ohm at 55 ft, the drop at 45 ft (public list, 1997; see tests/cases, 37). */
const deep = `
electrodes:
  rod: {kind: rod, length: 55 ft, diameter: 5/8 in}
readings:
  first: {kind: fall of potential, electrode: rod, driven: 10 ft, resistance: [750 ohm]}
  last: {kind: fall of potential, electrode: rod, drops_at: 45 ft, resistance: [5 ohm]}
`;

describe('one rod read at 10 and at 55 ft', () => {
  const [text] = earthOf(deep).contradictions.map((c) => c.text);

  it('says in words that no uniform soil fits, what does, and what the drop settles', () => {
    expect(text).toMatch(/^No uniform soil fits both 750 ohm at 10 ft \(3\.05 m\) and 5 ohm at 55 ft \(16\.8 m\);/);
    expect(text).toMatch(
      /a boundary anywhere from 15 to 50 ft \(4\.6 to 15\.2 m\) \(lower layer 50 ohm m to [89](\.\d)? ohm m\)/,
    );
    expect(text).toMatch(/with the drop seen at 45 ft \(13\.7 m\) it is about 1[56] ohm m\.$/);
  });

  it('means soils that do have both readings', () => {
    const [found] = measured(deep).contradictions;
    if (found?.is !== 'no uniform soil') throw new Error('not found');
    expect(found.boundaryM!.low / feetM).toBeCloseTo(15, 0);
    expect(found.boundaryM!.high / feetM).toBeCloseTo(50, 0);
    // By hand: dry sand is what the short rod alone says, rho = 750 / (0.3309 ohm per ohm m of F1), and a little more.
    const sandOhmM = 750 / rodOhm(10, [1]);
    expect(sandOhmM / (750 / 0.330891)).toBeCloseTo(1, 1);
    const [shallow, deepest] = found.lowerOhmM!;
    for (const [boundaryM, lowerOhmM] of [
      [found.boundaryM!.low, shallow],
      [found.boundaryM!.high, deepest],
      [found.drop!.depthM, found.drop!.lowerOhmM],
    ] as const) {
      expect(rodOhm(55, [sandOhmM, lowerOhmM], [boundaryM]) / 5).toBeGreaterThan(0.95);
      expect(rodOhm(55, [sandOhmM, lowerOhmM], [boundaryM]) / 5).toBeLessThan(1.05);
    }
  });

  it('without a drop leaves the boundary open', () => {
    const undropped = earthOf(deep.replace('drops_at: 45 ft, ', '')).contradictions.map((c) => c.text);
    expect(undropped).toHaveLength(1);
    expect(undropped[0]).toMatch(/^No uniform soil fits both/);
    expect(undropped[0]).not.toContain('drop');
  });

  it('are two rods of one soil as well', () => {
    const two = `
electrodes:
  short: {kind: rod, length: 10 ft, diameter: 5/8 in, resistance: 750 ohm}
  long: {kind: rod, length: 55 ft, diameter: 5/8 in, resistance: 5 ohm}
`;
    const { contradictions } = earthOf(two);
    expect(contradictions.map((c) => c.at)).toEqual([['long', 'short']]);
    expect(contradictions[0]!.text).toContain('both 750 ohm at 10 ft');
  });

  it('that a uniform soil has are no contradiction', () => {
    const last = Math.round((750 * rodOhm(55, [1])) / rodOhm(10, [1]));
    expect(earthOf(deep.replace('[5 ohm]', `[${last} ohm]`)).contradictions).toEqual([]);
  });

  it('that rise on the way down fit no two layers that they reach', () => {
    const { contradictions } = earthOf(deep.replace('drops_at: 45 ft, ', '').replace('[5 ohm]', '[9000 ohm]'));
    expect(contradictions).toHaveLength(1);
    expect(contradictions[0]!.text).toMatch(/Neither uniform soil nor two layers fit/);
  });
});

describe('a rod against the soil that was taken', () => {
  const rod = (ohm: string): string => `
soil: {layers: [{resistivity: 100 to 200 ohm m}]}
electrodes: {rod: {kind: rod, length: 10 ft, diameter: 5/8 in, resistance: ${ohm}}}
`;
  const [lowOhm, highOhm] = [rodOhm(10, [100]), rodOhm(10, [200])];

  it('of more than that soil has for it is said, with both figures', () => {
    const { contradictions } = earthOf(rod('750 ohm'));
    expect(contradictions.map((c) => c.at)).toEqual([['rod']]);
    expect(contradictions[0]!.text).toContain(
      'rod was read as 750 ohm, and the soil as it is taken gives 33 to 66 ohm',
    );
    // 32.8 and 65.6 ohm: the exact rod of the reference in 100 ohm m.
    expect(lowOhm).toBeGreaterThan(32.7);
    expect(highOhm).toBeLessThan(66);
  });

  it('of less as well', () => {
    expect(measured(rod('5 ohm')).contradictions).toMatchObject([{ is: 'not the soil taken', at: ['rod'] }]);
  });

  it('within it, and within what readings may be off, is not', () => {
    for (const ohm of [lowOhm * 0.96, (lowOhm + highOhm) / 2, highOhm * 1.04])
      expect(measured(rod(`${ohm.toFixed(2)} ohm`)).contradictions).toEqual([]);
    for (const ohm of [lowOhm * 0.94, highOhm * 1.06])
      expect(measured(rod(`${ohm.toFixed(2)} ohm`)).contradictions).toHaveLength(1);
  });

  it('is held against the ground as it is, in a dry state too', () => {
    const states = 'states: {drought: {says: dry, dry: yes}}\n';
    const text = `${head}${rod('33 ohm')}${states}`;
    const { site, ground } = earthIn(text, 'drought');
    expect(ground.soil!.condition!.name).toBe('dry');
    expect(measuredSoil(site, ground).contradictions).toEqual([]);
    // In the dry ground the same rod has more than 5 % above that, whatever its soil.
    const dry = ground.soil!.profile.low!;
    expect(rodOhm(10, dry.resistivityOhmM, dry.thicknessM)).toBeGreaterThan(33 * 1.05);
  });

  it('measured while bonded contradicts nothing', () => {
    expect(measured(rod('5 ohm, measured: bonded')).contradictions).toEqual([]);
  });
});

describe('the soil of a measured electrode', () => {
  it('is the resistivity that gives the reading: 100 ohm m from 32.9 ohm of a 10 ft rod', () => {
    // 10 ft by 5/8 in in 100 ohm m: 32.797 ohm, exact kernel; 32.90 at ten even segments.
    const text = 'electrodes: {rod: {kind: rod, length: 10 ft, diameter: 5/8 in, resistance: 32.8 ohm}}\n';
    const [of] = measured(text).ofElectrodes;
    expect(of!.uniformOhmM.low).toBeGreaterThan(99.5);
    expect(of!.uniformOhmM.high).toBeLessThan(100.5);
    expect(earthOf(text).soilOfElectrodes[0]!.text).toBe(
      'rod was read as 32.8 ohm: in soil alike all through that would be 100 ohm m.',
    );
  });

  it('is asked of readings at full length too, and not of an instrument over its range', () => {
    const read = (resistance: string): string => `
electrodes: {rod: {kind: rod, length: 10 ft, diameter: 5/8 in}}
readings: {r: {kind: fall of potential, electrode: rod, resistance: [${resistance}]}}
`;
    const [of] = measured(read('30 ohm, 36 ohm')).ofElectrodes;
    expect(of!.measuredOhm).toEqual({ low: 30, high: 36 });
    expect(of!.uniformOhmM.low).toBeCloseTo(30 / rodOhm(10, [1]), 0);
    expect(of!.uniformOhmM.high).toBeCloseTo(36 / rodOhm(10, [1]), 0);
    expect(measured(read('over range')).ofElectrodes).toEqual([]);
  });
});
