import { describe, expect, it } from 'vitest';
import { readMetal } from '../../src/materials/metals.ts';
import { heatingBy, leastUnmeltedArea } from '../../src/surge/melting.ts';
import { energyForRise, leastArea, temperatureRise } from '../../src/surge/temperature-rise.ts';
import { gaugeAreaM2, gaugeNumber } from '../../src/units/wire-gauge.ts';

const heatingOf = (name: string) => readMetal(name)!.heating!;
const energies = [2.5e6, 5.6e6, 10e6] as const;

type Row = readonly [mm2: number, at2p5: number | null, at5p6: number | null, at10: number | null];

/**
 * IEC 62305-1:2010 annex D, rise in kelvin at 2.5, 5.6 and 10 MJ/ohm as printed (from memory). null: blank in the standard,
 * where the melting point is passed.
 */
const annexD: Readonly<Record<string, readonly Row[]>> = {
  aluminium: [
    [4, null, null, null],
    [10, 564, null, null],
    [16, 146, 454, null],
    [25, 52, 132, 283],
    [50, 12, 28, 52],
    [100, 3, 7, 12],
  ],
  steel: [
    [4, null, null, null],
    [10, null, null, null],
    [16, 1120, null, null],
    [25, 211, 913, null],
    [50, 37, 96, 211],
    [100, 9, 20, 37],
  ],
  copper: [
    [4, null, null, null],
    [10, 169, 542, null],
    [16, 56, 143, 309],
    [25, 22, 51, 98],
    [50, 5, 12, 22],
    [100, 1, 3, 5],
  ],
  'stainless steel': [
    [4, null, null, null],
    [10, null, null, null],
    [16, null, null, null],
    [25, 940, null, null],
    [50, 190, 460, 940],
    [100, 45, 100, 190],
  ],
};

const entries = Object.entries(annexD).flatMap(([metal, rows]) =>
  rows.flatMap(([mm2, ...printed]) => printed.map((rise, at) => [metal, mm2, energies[at]!, rise] as const)),
);

describe('rise by a lightning current, IEC 62305-1 annex D', () => {
  it('has all 72 places of the table', () => {
    expect(entries).toHaveLength(72);
    expect(entries.filter(([, , , rise]) => rise !== null)).toHaveLength(42);
  });

  it.each(entries)('%s %d mm2 at %d J/ohm: %d K', (metal, mm2, energy, printed) => {
    const { riseK, melts } = heatingBy(heatingOf(metal), mm2 * 1e-6, energy);
    if (printed === null) {
      expect({ riseK, melts }).toEqual({ riseK: null, melts: true });
      return;
    }
    expect(melts).toBe(false);
    expect(Math.abs(riseK! - printed)).toBeLessThanOrEqual(Math.max(0.02 * printed, 0.5));
  });

  // Worked out apart from this program, one decimal: mm2 that just melts at 2.5, 5.6 and 10 MJ/ohm.
  it.each([
    ['copper', [5.6, 8.3, 11.1]],
    ['aluminium', [9.7, 14.5, 19.3]],
    ['steel', [15.1, 22.5, 30.1]],
    ['stainless steel', [21.2, 31.7, 42.3]],
  ] as const)('%s does not melt from %j mm2 up', (metal, mm2) => {
    for (const [at, energy] of energies.entries()) {
      const least = leastUnmeltedArea(heatingOf(metal), energy);
      expect(Math.abs(least * 1e6 - mm2[at]!)).toBeLessThanOrEqual(0.0501);
      expect(heatingBy(heatingOf(metal), least * 1.0001, energy).melts).toBe(false);
      expect(heatingBy(heatingOf(metal), least * 0.9999, energy).melts).toBe(true);
    }
  });
});

/** Copper by gauge, rise in kelvin at 0.055, 0.55, 2.5, 5.6, 10 MJ/ohm, worked out apart from this program. */
const gauges = [
  ['10', '10.5', '127', null, null, null],
  ['8', '4.11', '44.2', '272', '1042', null],
  ['6', '1.62', '16.6', '84.8', '230', '549'],
  ['4', '0.638', '6.45', '30.7', '73.9', '147'],
  ['2', '0.252', '2.53', '11.7', '27.0', '50.2'],
  ['1/0', '0.100', '0.999', '4.57', '10.4', '18.8'],
  ['2/0', '0.063', '0.628', '2.87', '6.46', '11.7'],
  ['4/0', '0.025', '0.248', '1.13', '2.54', '4.55'],
] as const;

describe('copper by American wire gauge', () => {
  it.each(gauges)('%s AWG: %s, %s, %s, %s, %s K', (gauge, ...printed) => {
    const areaM2 = gaugeAreaM2(gaugeNumber(gauge)!);
    for (const [at, energy] of [0.055e6, 0.55e6, ...energies].entries()) {
      const { riseK, melts } = heatingBy(heatingOf('copper'), areaM2, energy);
      const rise = printed[at]!;
      expect(melts).toBe(rise === null);
      if (rise === null) continue;
      const digits = rise.split('.')[1]?.length ?? 0;
      expect(Math.abs(riseK! - Number(rise)), `${energy}`).toBeLessThanOrEqual(0.501 * 10 ** -digits);
    }
  });
});

describe('laws of heating', () => {
  const copper = heatingOf('copper');

  it('energy, section and rise lead back to each other', () => {
    for (const rise of [0.1, 10, 163, 1000]) {
      const energy = energyForRise(copper, 13.3e-6, rise);
      expect(temperatureRise(copper, 13.3e-6, energy)).toBeCloseTo(rise, 9);
      expect(leastArea(copper, energy, rise) * 1e6).toBeCloseTo(13.3, 9);
    }
  });

  // Hand: rho W/R / (q^2 gamma c) = 17.8e-9 x 1e6 / (1e-10 x 8920 x 385) = 51.83 K.
  it('a metal whose resistance does not grow heats in proportion', () => {
    const flat = { ...copper, temperatureCoefficientPerK: 0 };
    expect(temperatureRise(flat, 10e-6, 1e6)).toBeCloseTo(51.83, 2);
    expect(temperatureRise(flat, 10e-6, 2e6)).toBeCloseTo(2 * temperatureRise(flat, 10e-6, 1e6), 10);
    const nearlyFlat = { ...copper, temperatureCoefficientPerK: 1e-12 };
    expect(temperatureRise(nearlyFlat, 10e-6, 1e6)).toBeCloseTo(temperatureRise(flat, 10e-6, 1e6), 6);
    expect(energyForRise(flat, 10e-6, 51.83)).toBeCloseTo(1e6, -3);
  });

  it('no current, no rise; a hair of wire melts', () => {
    expect(temperatureRise(copper, 1e-6, 0)).toBe(0);
    expect(heatingBy(copper, 1e-9, 1e6)).toEqual({ riseK: null, melts: true });
  });

  it.each([0, -1, Number.NaN, Infinity])('a section or density of %d is refused', (figure) => {
    expect(() => temperatureRise(copper, figure, 1e6)).toThrow(RangeError);
    expect(() => temperatureRise({ ...copper, densityKgPerM3: figure }, 1e-5, 1e6)).toThrow(RangeError);
    expect(() => leastArea(copper, 1e6, figure)).toThrow(RangeError);
  });

  it.each([-1, Number.NaN, Infinity])('an action integral of %d is refused', (figure) => {
    expect(() => temperatureRise(copper, 1e-5, figure)).toThrow(RangeError);
    expect(() => heatingBy({ ...copper, meltingCelsius: figure }, 1e-5, 1e6)).toThrow(RangeError);
  });
});
