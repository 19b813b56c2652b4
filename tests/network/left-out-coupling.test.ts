import { describe, expect, it } from 'vitest';
import { earthIn } from './earth-in.ts';
import { random } from './random.ts';

interface Rods {
  readonly soil: string;
  readonly lengthsM: readonly number[];
  /** Of each wire to the bar. */
  readonly leadOhm: readonly number[];
}

function figures({ soil, lengthsM, leadOhm }: Rods, places: readonly (readonly [number, number])[] | null) {
  const at = (i: number): string =>
    places === null ? '' : `at: [${places[i]![0].toFixed(3)}, ${places[i]![1].toFixed(3)}], `;
  const rods = lengthsM.map((m, i) => `  R${i}: {kind: rod, ${at(i)}length: ${m.toFixed(2)} m, diameter: 16 mm}`);
  const wires = leadOhm.map(
    (ohm, i) => `  w${i}: {from: bar, to: R${i}, resistance: ${ohm.toFixed(3)} ohm, joints: none, buried: no}`,
  );
  return earthIn(`
site: {name: Rods anywhere, region: iec, units: m, service: bar}
soil: {layers: [${soil}]}
bars: {bar: {kind: station ground bar}}
electrodes:
${rods.join('\n')}
conductors:
${wires.join('\n')}
`).dc.earth;
}

const soils = [
  '{resistivity: 100 ohm m}',
  '{resistivity: 400 ohm m, thickness: 1.5 m}, {resistivity: 60 ohm m}',
  '{resistivity: 50 ohm m, thickness: 1.2 m}, {resistivity: 900 ohm m}',
];

/** Two to five rods, some of them almost touching, some far away. */
function anyRods(
  next: () => number,
): Rods & { readonly placements: readonly (readonly (readonly [number, number])[])[] } {
  const count = 2 + Math.floor(next() * 4);
  const lengthsM = Array.from({ length: count }, () => 0.6 + 5.4 * next());
  const leadOhm = Array.from({ length: count }, () => (next() < 0.5 ? 0 : 10 * next() ** 3));
  const placement = () => {
    const spreadM = 0.2 * 1000 ** next();
    return Array.from({ length: count }, (_, i) => [0.1 * i + spreadM * next(), spreadM * next()] as const);
  };
  return {
    soil: soils[Math.floor(next() * soils.length)]!,
    lengthsM,
    leadOhm,
    placements: [placement(), placement(), placement()],
  };
}

describe('rods whose places nobody typed', () => {
  const next = random(20260502);
  const cases = Array.from({ length: 16 }, (_, i) => [i + 1, anyRods(next)] as const);

  it.each(cases)('case %i: no placement of them leaves what is said without places', (_i, rods) => {
    const said = figures(rods, null);
    expect(said.couplingLeftOut.length).toBeGreaterThan(0);
    const { low, value, high } = said.resistanceOhm!;
    const alone = rods.lengthsM.map(
      (m, i) => figures({ ...rods, lengthsM: [m], leadOhm: [rods.leadOhm[i]!] }, null).resistanceOhm!.value!,
    );
    // At most that of the best one alone, its own wire counted.
    expect(high).toBeCloseTo(Math.min(...alone), 6);
    for (const placement of rods.placements) {
      const earth = figures(rods, placement);
      expect(earth.couplingLeftOut).toEqual([]);
      const placed = earth.resistanceOhm!.value!;
      // The elements of two solves differ by some parts in a thousand.
      expect(placed).toBeGreaterThan(value! * 0.997);
      expect(placed).toBeGreaterThan(low * 0.997);
      expect(placed).toBeLessThan(high * 1.003);
    }
  });

  it('far apart have what was said; side by side they are one thicker rod', () => {
    const rods = { soil: soils[0]!, lengthsM: [3, 3], leadOhm: [0, 0] };
    const said = figures(rods, null).resistanceOhm!;
    const far = figures(rods, [
      [0, 0],
      [2000, 0],
    ]).resistanceOhm!.value!;
    const near = figures(rods, [
      [0, 0],
      [0.04, 0],
    ]).resistanceOhm!.value!;
    expect(far / said.value!).toBeCloseTo(1, 2);
    // Of sqrt(a s) radius: ln(4 L / a) - 1 falls from 6.313 to 5.508 (F1 of the reference).
    expect(near / said.high).toBeCloseTo(5.508 / 6.313, 2);
  });
});
