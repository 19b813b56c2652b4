import { describe, expect, it } from 'vitest';
import { apparentResistivity, logsOf, soundingModel } from '../../src/soil/apparent-resistivity.ts';
import { sentBackByLayers } from '../../src/soil/apparent-resistivity-kernel.ts';
import { type LayeredSoil, layeredSoil } from '../../src/soil/layered-soil.ts';
import { reflections } from '../../src/soil/reflection.ts';
import {
  apparentOfReading,
  pinDistances,
  pinFactorPerM,
  pinsInLine,
  type SoundingPins,
  schlumbergerPins,
  wennerPins,
} from '../../src/soil/sounding-pins.ts';
import { findPython } from '../reference/python.ts';

/** Inner pins so near each other that the formula for MN -> 0 holds to 1e-8. */
const narrow = (halfOuterM: number): SoundingPins => schlumbergerPins(halfOuterM, 1e-4 * halfOuterM);
const spacingsM = [0.5, 1, 2, 5, 10, 20, 50];

/** Endless series of IEEE Std 81 (Wenner) and its counterpart for MN -> 0, equal to a Hankel transform to all four decimals. */
const twoLayers: readonly (readonly [soil: LayeredSoil, wenner: readonly number[], schlumberger: readonly number[]])[] =
  [
    [
      layeredSoil([100, 300], [6.1]),
      [100.0221, 100.1734, 101.2961, 113.7973, 149.2179, 203.5801, 264.0948],
      [100.0074, 100.0586, 100.4559, 105.9382, 128.7989, 178.6694, 248.1734],
    ],
    [
      layeredSoil([300, 100], [2]),
      [298.4347, 289.3675, 248.7052, 144.1635, 108.2117, 101.6532, 100.2511],
      [299.4594, 295.9705, 275.0311, 176.0105, 115.9265, 102.9313, 100.4325],
    ],
    [
      layeredSoil([100, 10], [1]),
      [94.4067, 73.3904, 33.8673, 11.2548, 10.187, 10.044, 10.0069],
      [97.8737, 86.9089, 51.5589, 13.0336, 10.3362, 10.0762, 10.0119],
    ],
    [
      layeredSoil([100, 1000], [3]),
      [100.3173, 102.3752, 115.1212, 195.9413, 329.8162, 513.2868, 766.916],
      [100.1072, 100.8345, 106.0128, 154.0876, 260.8992, 426.0948, 688.9913],
    ],
  ];

describe('apparent resistivity', () => {
  it.each(twoLayers)(
    'of two layers (%o) to four decimals, four even spaces and a narrow inner pair',
    (soil, even, inner) => {
      const rounded = (pins: SoundingPins[]): number[] =>
        apparentResistivity(soil, pins).map((v) => Number(v.toFixed(4)));
      expect(rounded(spacingsM.map((aM) => wennerPins(aM)))).toEqual(even);
      expect(rounded(spacingsM.map(narrow))).toEqual(inner);
    },
  );

  it('of uniform soil is its own, and equal layers are one', () => {
    expect(apparentResistivity(layeredSoil([70]), [wennerPins(3)])).toEqual([70]);
    const equal = { resistivityOhmM: [70, 70, 70], thicknessM: [1, 2] };
    const [ohmM] = apparentResistivity(equal, [wennerPins(3)]);
    expect(ohmM! / 70 - 1).toBeCloseTo(0, 12);
  });

  it('of boundaries far above or far below the spacing is that of the deep or of the upper layer', () => {
    const [ohmM] = apparentResistivity(layeredSoil([500, 20], [0.002]), [wennerPins(200)]);
    expect(ohmM! / 20 - 1).toBeCloseTo(0, 3);
    const [above] = apparentResistivity(layeredSoil([500, 20], [2000]), [wennerPins(2)]);
    expect(above! / 500 - 1).toBeCloseTo(0, 6);
  });

  it('does not change with the unit of length', () => {
    const soil = { resistivityOhmM: [400, 60, 500], thicknessM: [1, 4] };
    const feet = { ...soil, thicknessM: soil.thicknessM.map((m) => m / 0.3048) };
    const [metres, inFeet] = [
      apparentResistivity(soil, [wennerPins(6)]),
      apparentResistivity(feet, [wennerPins(6 / 0.3048)]),
    ];
    expect(metres[0]! / inFeet[0]!).toBeCloseTo(1, 7);
  });

  it('meets the Sunde graph example: 100 over 300 ohm m, twice the upper at 19 m, boundary at 6.06 m', () => {
    // IEEE Std 80-2000, 13.4.2.2 (from memory), reads 7.0 m off the graph and 6.1 m by computer; the series gives a/H = 3.135
    const at19 = (boundaryM: number): number =>
      apparentResistivity(layeredSoil([100, 300], [boundaryM]), [wennerPins(19)])[0]!;
    let [low, high] = [3, 12];
    while (high - low > 1e-6) {
      const middle = (low + high) / 2;
      if (at19(middle) > 200) low = middle;
      else high = middle;
    }
    expect(Math.abs(19 / low - 3.135)).toBeLessThan(0.0005);
    expect(low.toFixed(2)).toBe('6.06');
    expect(at19(7)).toBeLessThan(192);
  });

  it('refuses what it cannot work out', () => {
    const soil = layeredSoil([100, 300], [0.2]);
    expect(() => apparentResistivity(soil, [wennerPins(2, 0.3)])).toThrow(RangeError);
    expect(() => apparentResistivity(soil, [wennerPins(0)])).toThrow(RangeError);
    expect(() => apparentResistivity(soil, [schlumbergerPins(3, 0)])).toThrow(RangeError);
    expect(() => apparentResistivity(soil, [wennerPins(2, -0.1)])).toThrow(RangeError);
  });
});

describe('a reading of four pins in uniform soil', () => {
  it('is 2 pi a R in even spaces', () => {
    // MIL-HDBK-419A volume II, 1-3 (read): 20 ft, 2 ohm; 2 pi 610 cm 2 ohm by hand (printed 7662 by a rounded constant)
    expect(apparentOfReading(wennerPins(6.1), 2) * 100).toBeCloseTo(7665, 0);
  });

  it('takes pins as points at their depth', () => {
    // 4 pi a R / (1 + 2a/sqrt(a^2 + 4b^2) - a/sqrt(a^2 + b^2)) by hand for a = 1, b = 0.2, R = 10: 125.6637 / 1.876373
    expect(apparentOfReading(wennerPins(1, 0.2), 10)).toBeCloseTo(66.972, 3);
    expect(apparentOfReading(wennerPins(1, 1e-9), 10)).toBeCloseTo(20 * Math.PI, 9);
  });

  it('has the usual factor of the narrow inner pair', () => {
    // pi (S^2 - s^2) / (2 s) R by hand: S = 10, s = 1, R = 1
    expect(apparentOfReading(schlumbergerPins(10, 1), 1)).toBeCloseTo((Math.PI * 99) / 2, 9);
  });

  it('of pins anywhere in a line is by 1/AM - 1/BM - 1/AN + 1/BN, whichever way they are listed', () => {
    // by hand: pins at 0, 1, 4, 9: 1/1 - 1/8 - 1/4 + 1/5 = 0.825
    expect(pinFactorPerM(pinsInLine([0, 1, 4, 9]))).toBeCloseTo(0.825, 12);
    expect(pinFactorPerM(pinsInLine([9, 4, 0, 1]))).toBeCloseTo(0.825, 12);
    // leads crossed: the same soil
    const crossed = { currentM: [9, 0], potentialM: [1, 4], pinDepthM: 0 } as const;
    expect(apparentOfReading(crossed, 5)).toBeCloseTo((10 * Math.PI) / 0.825, 9);
  });
});

describe('what layers send back', () => {
  const soils = [
    layeredSoil([100, 300], [6.1]),
    layeredSoil([400, 60, 500], [1, 4]),
    layeredSoil([5000, 100, 1000, 20, 70], [0.3, 1, 3, 2]),
  ];

  it('is that of the reflections', () => {
    for (const soil of soils) {
      const lambdas = Float64Array.from([1e-4, 0.01, 0.3, 1, 5]);
      const sent = new Float64Array(lambdas.length);
      sentBackByLayers(logsOf(soil), lambdas, sent, null);
      lambdas.forEach((lambda, j) => {
        const q = reflections(soil, lambda).down[0]! * Math.exp(-2 * lambda * soil.thicknessM[0]!);
        expect(sent[j]! / (q / (1 - q))).toBeCloseTo(1, 12);
      });
    }
  });

  it('has the slopes that differences show', () => {
    for (const soil of soils) {
      const model = soundingModel(
        [1, 4, 16, 50].map((aM) => wennerPins(aM)),
        0.2,
      );
      const logs = logsOf(soil);
      const { slopes } = model.withSlopes(logs);
      slopes.forEach((slope, log) => {
        const moved = (by: number) => model.at(logs.map((value, at) => (at === log ? value + by : value))).slice();
        const [up, down] = [moved(1e-5), moved(-1e-5)];
        const scale = Math.max(...up);
        slope.forEach((value, i) => {
          expect((value - (up[i]! - down[i]!) / 2e-5) / scale).toBeCloseTo(0, 7);
        });
      });
    }
  });
});

interface Potentials {
  readonly ohm: readonly number[];
  readonly errorShare: readonly number[];
}

const python = findPython(['numpy', 'scipy'], 'apparent resistivity of layers against a numerical Hankel inversion');

describe.skipIf(python === null)(
  `apparent resistivity against a numerical Hankel inversion by scipy${python === null ? ' (SKIPPED: no python3 with scipy)' : ''}`,
  () => {
    /** Invented: frost or a dried-out top, a seam that conducts, one that resists, four and five layers. */
    const soils = [
      layeredSoil([400, 60, 500], [1, 4]),
      layeredSoil([100, 600, 50], [1.5, 6]),
      layeredSoil([5000, 100, 20], [0.3, 3]),
      layeredSoil([200, 5, 800], [2, 0.1]),
      layeredSoil([100, 2000, 10, 300], [0.5, 1, 3]),
      layeredSoil([30, 100, 300, 1000, 3000], [1, 1, 2, 4]),
    ];
    const pins: readonly SoundingPins[] = [
      ...[0.5, 2, 7, 30].map((aM) => wennerPins(aM)),
      wennerPins(1, 0.25),
      wennerPins(5, 0.25),
      schlumbergerPins(10, 1),
      schlumbergerPins(40, 8),
      pinsInLine([0, 1.3, 4, 22]),
      pinsInLine([0, 10, 11, 12.5], 0.25),
    ];

    it('for even and uneven spaces, pins at the surface and driven: 1e-6', () => {
      const distancesM = [...new Set(pins.flatMap((p) => pinDistances(p).map(({ distanceM }) => distanceM)))];
      const depthsM = [0, 0.25];
      const cases = soils.map((s) => ({ ohmM: s.resistivityOhmM, thickM: s.thicknessM, depthsM, distancesM }));
      const answers = (python!.run('layered-potential.py', { cases }) as { readonly cases: readonly Potentials[] })
        .cases;
      soils.forEach((soil, at) => {
        expect(Math.max(...answers[at]!.errorShare)).toBeLessThan(1e-8);
        const ours = apparentResistivity(soil, pins);
        pins.forEach((p, i) => {
          const depth = depthsM.indexOf(p.pinDepthM);
          // listed by depth of the source, then distance, then depth of the receiver
          const ohmAt = (distanceM: number): number =>
            answers[at]!.ohm[(depth * distancesM.length + distancesM.indexOf(distanceM)) * depthsM.length + depth]!;
          const ohm = pinDistances(p).reduce((sum, { sign, distanceM }) => sum + sign * ohmAt(distanceM), 0);
          expect(Math.abs(ours[i]! / apparentOfReading(p, ohm) - 1), `${soil.resistivityOhmM} ${i}`).toBeLessThan(1e-6);
        });
      });
    });
  },
);
