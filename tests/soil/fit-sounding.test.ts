import { describe, expect, it } from 'vitest';
import { apparentResistivity } from '../../src/soil/apparent-resistivity.ts';
import { fitSounding, type SoundingOptions } from '../../src/soil/fit-sounding.ts';
import { type LayeredSoil, layeredSoil } from '../../src/soil/layered-soil.ts';
import type { SoundingFit } from '../../src/soil/sounding-fit.ts';
import {
  pinFactorPerM,
  pinsInLine,
  type SoundingPins,
  schlumbergerPins,
  wennerPins,
} from '../../src/soil/sounding-pins.ts';
import type { SoundingReading } from '../../src/soil/sounding-reading.ts';

/** Even spaces (m) with the apparent resistivity (ohm m) that was read. */
type Published = readonly (readonly [spacingM: number, ohmM: number])[];

function evenSpaces(published: Published): readonly SoundingReading[] {
  return published.map(([aM, ohmM]) => ({ pins: wennerPins(aM), resistanceOhm: ohmM / (2 * Math.PI * aM) }));
}

/** What pins would read over a soil, each reading off by a share of itself. */
function readOver(soil: LayeredSoil, pins: readonly SoundingPins[], off: readonly number[] = []): SoundingReading[] {
  return apparentResistivity(soil, pins).map((ohmM, i) => ({
    pins: pins[i]!,
    resistanceOhm: (ohmM * (1 + (off[i] ?? 0)) * Math.abs(pinFactorPerM(pins[i]!))) / (2 * Math.PI),
  }));
}

/** Resistivities from the surface down, then thicknesses. */
function figuresOf({ layers }: SoundingFit): readonly number[] {
  const thicknesses = layers.flatMap(({ thicknessM }) => (thicknessM === null ? [] : [thicknessM.value]));
  return [...layers.map(({ resistivityOhmM }) => resistivityOhmM.value), ...thicknesses];
}

const fourFigures = (fit: SoundingFit): readonly string[] => figuresOf(fit).map((figure) => figure.toPrecision(4));
const misfitOf = (fit: SoundingFit, layers: number) => fit.tried.find((one) => one.layers === layers)!.misfitShare!;

function expectNoNaN(value: unknown): void {
  expect(
    JSON.stringify(value, (_, v) => (typeof v === 'number' && !Number.isFinite(v) ? 'not a number' : v)),
  ).not.toContain('not a number');
}

describe('literature set A', () => {
  // Del Alamo, IEEE Trans. Power Delivery 8 (1993); Gonos and Stathopulos, same 20 (2005); from memory, as are their answers
  const readings = evenSpaces([
    [2.5, 320],
    [5, 245],
    [7.5, 182],
    [10, 162],
    [12.5, 168],
    [15, 152],
  ]);

  it('is two layers, 372.73 / 145.26 ohm m and 2.690 m, by shares of the readings', () => {
    const fit = fitSounding(readings);
    expect(fit.chosen).toBe(2);
    // 372.73 / 145.26 / 2.69 in print
    expect(fourFigures(fit)).toEqual(['372.7', '145.3', '2.690']);
    expect(figuresOf(fit)[0]).toBeCloseTo(372.73, 1);
    expect(figuresOf(fit)[1]).toBeCloseTo(145.26, 1);
    // scipy: 3.54 %
    expect(fit.misfitShare).toBeCloseTo(0.0354, 4);
    expect(fit.tried.map(({ layers, whyNot }) => [layers, whyNot?.key ?? null])).toEqual([
      [1, 'misfit'],
      [2, null],
      [3, 'not needed'],
    ]);
  });

  it('is 364.68 / 143.63 / 2.828 in plain least squares, of which the print is 0.3 % off', () => {
    const fit = fitSounding(readings, { weighting: 'absolute' });
    // true optimum by scipy
    expect(figuresOf(fit)[0]).toBeCloseTo(364.68, 1);
    expect(figuresOf(fit)[1]).toBeCloseTo(143.63, 1);
    expect(figuresOf(fit)[2]).toBeCloseTo(2.828, 3);
    expect(fit.misfitShare).toBeCloseTo(0.0363, 4);
    [364.67, 143.56, 2.82].forEach((printed, at) => {
      expect(Math.abs(figuresOf(fit)[at]! / printed - 1)).toBeLessThan(0.003);
    });
  });
});

describe('literature set B', () => {
  // a substation site, read on a public page; the designer used a uniform 112.20 ohm m
  const readings = evenSpaces([
    [0.31, 56.98],
    [0.92, 88.15],
    [1.52, 95.48],
    [4.57, 110.64],
    [6.1, 120.71],
    [9.15, 143.11],
    [15.24, 182.01],
    [21.34, 209.21],
    [27.44, 227.6],
    [33.54, 242.36],
    [39.63, 251.55],
    [45.73, 258.64],
  ]);

  it('is not two layers: 70.97 / 274.04 ohm m and 3.28 m leave 11.5 %', () => {
    const fit = fitSounding(readings);
    // scipy: rms 11.5 %
    expect(misfitOf(fit, 2)).toBeCloseTo(0.115, 3);
    expect(fit.tried[1]!.whyNot).toMatchObject({ key: 'misfit' });
    expect(fit.chosen).toBe(3);
    expect(fit.misfitShare).toBeLessThan(0.02);
    expect(fitSounding(readings, { layers: 2 })).toMatchObject({ chosen: null, reason: { key: 'misfit' }, layers: [] });
  });

  it('of its thin top only thickness over resistivity is told', () => {
    const { layers, tradeOffs } = fitSounding(readings);
    expect(layers[0]!.resistivityOhmM).toMatchObject({ low: null, resolved: false });
    expect(layers[0]!.thicknessM).toMatchObject({ low: null, resolved: false });
    expect(tradeOffs).toMatchObject([{ layer: 0, of: 'thickness over resistivity', range: { resolved: true } }]);
    expect(layers[1]!.resistivityOhmM.resolved).toBe(true);
    expect(layers[2]!.resistivityOhmM.resolved).toBe(true);
  });
});

describe('literature set C', () => {
  // a utility's manual, table B-3, traverse 1 (read)
  const readings = evenSpaces([
    [1, 132.59],
    [1.5, 136.02],
    [2, 137.75],
    [3, 122.92],
    [4.5, 128.66],
    [6, 127.06],
    [9, 140.26],
    [13.5, 136.5],
  ]);

  it('is uniform, about 133 ohm m', () => {
    const fit = fitSounding(readings);
    expect(fit.chosen).toBe(1);
    expect(Math.abs(figuresOf(fit)[0]! - 133)).toBeLessThan(1);
    expect(fit.layers[0]!.thicknessM).toBeNull();
    // scipy: two layers leave 4.0 %
    expect(misfitOf(fit, 2)).toBeCloseTo(0.04, 3);
    expect(fit.tried[1]!.whyNot).toEqual({ key: 'no better', layers: 1 });
  });

  it('has the range of a mean: 1.96 of 5 % over the root of eight', () => {
    const { low, high } = fitSounding(readings).layers[0]!.resistivityOhmM;
    const half = Math.log(high! / low!) / 2;
    expect(Math.abs(half / ((1.96 * 0.05) / Math.sqrt(8)) - 1)).toBeLessThan(0.05);
  });
});

describe('readings without noise', () => {
  const spread = [0.5, 1, 2, 4, 8, 16, 32];

  it('give back two layers, whatever the arrangement of pins', () => {
    const soil = layeredSoil([300, 80], [2]);
    const arrangements: readonly (readonly SoundingPins[])[] = [
      spread.map((aM) => wennerPins(aM)),
      spread.map((aM) => wennerPins(aM, aM / 10)).slice(0, 5),
      spread.map((sM) => schlumbergerPins(1.5 * sM, 0.2 * sM)),
      spread.map((aM) => pinsInLine([0, aM, 2.2 * aM, 2.9 * aM])),
      // all kinds together
      [wennerPins(1), schlumbergerPins(3, 0.5), pinsInLine([5, 2, 9, 0]), wennerPins(20, 0.3)],
    ];
    for (const pins of arrangements) {
      const fit = fitSounding(readOver(soil, pins));
      expect(fit.chosen).toBe(2);
      [300, 80, 2].forEach((truth, at) => {
        expect(figuresOf(fit)[at]! / truth).toBeCloseTo(1, 4);
      });
      expect(fit.readings.every((r) => Math.abs(r.fittedOhmM! / r.measuredOhmM! - 1) < 1e-4)).toBe(true);
    }
  });

  it('give back three layers', () => {
    const soil = layeredSoil([1000, 200, 30], [1, 5]);
    const fit = fitSounding(
      readOver(
        soil,
        [...spread, 64].map((aM) => wennerPins(aM)),
      ),
    );
    expect(fit.chosen).toBe(3);
    [1000, 200, 30, 1, 5].forEach((truth, at) => {
      expect(figuresOf(fit)[at]! / truth).toBeCloseTo(1, 3);
    });
    expect(fit.tradeOffs).toEqual([]);
  });

  it('come back in the order they were given', () => {
    const soil = layeredSoil([300, 80], [2]);
    const readings = readOver(
      soil,
      [8, 1, 32, 2].map((aM) => wennerPins(aM)),
    );
    const fit = fitSounding(readings);
    fit.readings.forEach(({ measuredOhmM }, i) => {
      expect(measuredOhmM).toBeCloseTo(apparentResistivity(soil, [readings[i]!.pins])[0]!, 9);
    });
    expect(figuresOf(fitSounding([...readings].reverse()))).toEqual(figuresOf(fit));
  });
});

describe('ranges', () => {
  const pins = [0.5, 1, 2, 4, 8, 16].map((aM) => wennerPins(aM));
  const off = [0.04, -0.05, 0.02, 0.03, -0.04, 0.01];

  it('hold the truth and the value, and grow with the noise', () => {
    const readings = readOver(layeredSoil([300, 80], [2]), pins, off);
    const widths = [0.03, 0.05, 0.1].map((noiseShare) => {
      const { layers } = fitSounding(readings, { noiseShare });
      const { value, low, high } = layers[0]!.thicknessM!;
      expect(low! < value && value < high! && low! < 2 && 2 < high!).toBe(true);
      return Math.log(high! / low!);
    });
    expect(widths[0]! < widths[1]! && widths[1]! < widths[2]!).toBe(true);
  });

  it('are those of the misfit where it shows more noise than was stated', () => {
    const readings = readOver(layeredSoil([300, 80], [2]), pins, off);
    const { noiseShare, misfitShare } = fitSounding(readings, { noiseShare: 0.03 });
    // six readings, three figures
    expect(noiseShare).toBeCloseTo(misfitShare! * Math.SQRT2, 6);
    expect(fitSounding(readings, { noiseShare: 0.05 }).noiseShare).toBeCloseTo(0.05, 12);
  });

  it('have no end where a floor resists or conducts more than the spacings can tell', () => {
    const over = (ohmM: number) => {
      const { layers } = fitSounding(readOver(layeredSoil([100, ohmM], [8]), pins));
      return layers[1]!.resistivityOhmM;
    };
    expect(over(1e5)).toMatchObject({ high: null, resolved: false });
    expect(over(1)).toMatchObject({ low: null, resolved: false });
  });
});

describe('a middle layer that is thin', () => {
  const pins = [0.5, 1, 2, 4, 8, 16, 32, 64].map((aM) => wennerPins(aM));
  const tradeOffs = (soil: LayeredSoil) => fitSounding(readOver(soil, pins), { noiseShare: 0.03 }).tradeOffs;

  it('and conducts: thickness over resistivity is told, the two are not', () => {
    // 0.5 m / 10 ohm m = 0.05 S
    const [told, ...others] = tradeOffs(layeredSoil([300, 10, 300], [2, 0.5]));
    expect(others).toEqual([]);
    expect(told).toMatchObject({ layer: 1, of: 'thickness over resistivity', range: { resolved: true } });
    expect(told!.range.low! < 0.05 && 0.05 < told!.range.high!).toBe(true);
  });

  it('and resists: thickness times resistivity is told, the two are not', () => {
    // 1 m x 3000 ohm m
    const [told, ...others] = tradeOffs(layeredSoil([60, 3000, 60], [2, 1]));
    expect(others).toEqual([]);
    expect(told).toMatchObject({ layer: 1, of: 'thickness times resistivity', range: { resolved: true } });
    expect(told!.range.low! < 3000 && 3000 < told!.range.high!).toBe(true);
  });
});

describe('too little to go by', () => {
  const two = layeredSoil([300, 80], [2]);
  const keyOf = (readings: readonly SoundingReading[], options?: SoundingOptions) => {
    const fit = fitSounding(readings, options);
    expectNoNaN(fit);
    expect([fit.chosen, fit.layers, fit.tradeOffs, fit.misfitShare]).toEqual([null, [], [], null]);
    return fit.reason;
  };

  it('no reading, one reading, one spacing, two spacings over two layers', () => {
    expect(keyOf([])).toEqual({ key: 'too few readings', readings: 0, needed: 2 });
    expect(keyOf(readOver(two, [wennerPins(2)]))).toEqual({ key: 'too few readings', readings: 1, needed: 2 });
    const same = readOver(two, [wennerPins(2), wennerPins(2), wennerPins(2)]);
    expect(keyOf(same)).toEqual({ key: 'one spacing', readings: 3 });
    const apart = readOver(two, [wennerPins(1), wennerPins(20)]);
    expect(keyOf(apart)).toEqual({ key: 'too few spacings', spacings: 2, needed: 3 });
    expect(keyOf([...apart, ...apart])).toEqual({ key: 'too few spacings', spacings: 2, needed: 3 });
  });

  it('two spacings over uniform soil are enough for uniform soil', () => {
    const fit = fitSounding(readOver(layeredSoil([120]), [wennerPins(1), wennerPins(20)]));
    expect([fit.chosen, Math.round(figuresOf(fit)[0]!)]).toEqual([1, 120]);
  });

  it('three layers asked of five spacings', () => {
    const readings = readOver(
      layeredSoil([1000, 200, 30], [1, 5]),
      [0.5, 2, 8, 16, 64].map((aM) => wennerPins(aM)),
    );
    expect(keyOf(readings, { layers: 3 })).toEqual({ key: 'too few spacings', spacings: 5, needed: 6 });
  });

  it('the same pins with readings further apart than noise; not with readings nearer', () => {
    const pins = [1, 2, 4, 8].map((aM) => wennerPins(aM));
    const readings = readOver(two, pins);
    const twice = { pins: wennerPins(4), resistanceOhm: (readings[2]!.resistanceOhm as number) * 2 };
    const reason = keyOf([...readings, twice]);
    expect(reason).toMatchObject({ key: 'readings contradict', readings: [2, 4] });
    expect((reason as { timesApart: number }).timesApart).toBeCloseTo(2, 9);
    const nearly = { pins: wennerPins(4), resistanceOhm: (readings[2]!.resistanceOhm as number) * 1.1 };
    expect(fitSounding([...readings, nearly]).chosen).toBe(2);
    expect(fitSounding([...readings, twice], { noiseShare: 0.4 }).reason).toBeNull();
  });

  it('readings that no level layers give', () => {
    const zigzag = evenSpaces([100, 300, 100, 300, 100, 300, 100, 300].map((ohmM, at) => [1 + at, ohmM] as const));
    const reason = keyOf(zigzag);
    expect(reason).toMatchObject({ key: 'misfit' });
    const { tried } = fitSounding(zigzag);
    expect(tried.map((one) => one.layers)).toEqual([1, 2, 3]);
    for (const { misfitShare, whyNot } of tried) {
      expect(misfitShare).toBeGreaterThan(0.2);
      expect(whyNot).not.toBeNull();
    }
  });
});

describe('bad input', () => {
  const good = readOver(
    layeredSoil([300, 80], [2]),
    [1, 2, 4, 8].map((aM) => wennerPins(aM)),
  );
  const withOne = (reading: SoundingReading): SoundingFit => {
    const fit = fitSounding([...good, reading]);
    expectNoNaN(fit);
    return fit;
  };

  it.each([0, -3, Number.NaN, Number.POSITIVE_INFINITY])('a reading of %d ohm is named', (resistanceOhm) => {
    const { reason, chosen } = withOne({ pins: wennerPins(3), resistanceOhm });
    expect([chosen, reason]).toEqual([null, { key: 'reading not above zero', reading: 4 }]);
  });

  it('a reading that is no soil is named', () => {
    // ohm typed for milliohm at a spacing of 100 m
    const { reason } = withOne({ pins: wennerPins(100), resistanceOhm: 1e7 });
    expect(reason).toMatchObject({ key: 'no resistivity of soil', reading: 4 });
  });

  it.each([
    ['a spacing of zero', wennerPins(0)],
    ['a spacing that is no number', wennerPins(Number.NaN)],
    ['a spacing beyond all bounds', wennerPins(Number.POSITIVE_INFINITY)],
    ['inner pins in one place', schlumbergerPins(5, 0)],
    ['two pins in one place', pinsInLine([0, 0, 3, 7])],
    ['pins driven deeper than they stand apart', wennerPins(0.5, 0.6)],
    ['pins at a depth that is no number', wennerPins(1, Number.NaN)],
    ['pins above ground', wennerPins(1, -0.1)],
  ])('%s is named', (_, pins) => {
    expect(withOne({ pins, resistanceOhm: 4 }).reason).toEqual({ key: 'pins not usable', reading: 4 });
  });

  it('a spacing below zero is the same line walked the other way', () => {
    expect(fitSounding(good.map((r, i) => (i === 1 ? { ...r, pins: wennerPins(-2) } : r))).chosen).toBe(2);
  });

  it('readings over range are left out, and nothing else makes a reason', () => {
    const one = withOne({ pins: wennerPins(3), resistanceOhm: 'over range' });
    expect(one.chosen).toBe(2);
    expect(one.readings[4]).toEqual({ measuredOhmM: null, fittedOhmM: null });
    const all = fitSounding(good.map((r) => ({ ...r, resistanceOhm: 'over range' as const })));
    expect([all.chosen, all.reason]).toEqual([null, { key: 'over range', readings: 4 }]);
    const but = fitSounding(good.map((r, i) => (i > 0 ? { ...r, resistanceOhm: 'over range' as const } : r)));
    expect(but.reason).toEqual({ key: 'too few readings', readings: 1, needed: 2 });
  });

  it('a noise that is none is a mistake of the program', () => {
    for (const noiseShare of [0, -0.1, 1, Number.NaN])
      expect(() => fitSounding(good, { noiseShare })).toThrow(RangeError);
  });
});
