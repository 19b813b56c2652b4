import { describe, expect, it } from 'vitest';
import { apparentResistivity } from '../../src/soil/apparent-resistivity.ts';
import { fitSounding } from '../../src/soil/fit-sounding.ts';
import { layeredSoil } from '../../src/soil/layered-soil.ts';
import type { FittedFigure, SoundingFit, TradeOff } from '../../src/soil/sounding-fit.ts';
import { wennerPins } from '../../src/soil/sounding-pins.ts';
import { soilFitOf } from '../../src/study/soil-fit-of.ts';
import { termsOf } from '../../src/words/terms.ts';

const speech = { terms: termsOf('iec'), unitsFirst: 'si' } as const;

/** The sentences on a fit of readings at some spacings. */
function textOf(fit: SoundingFit, spacingsM: readonly number[]): string {
  const points = spacingsM.map((spacingM) => ({ reading: 'row', spacingM }));
  return soilFitOf({ points, fit, curve: [] }, true, speech).text.join('\n');
}

/** A fit of evenly spaced pins over a soil, each reading off by a share of itself. */
function fitOver(
  ohmM: readonly number[],
  thickM: readonly number[],
  spacingsM: readonly number[],
  off: readonly number[],
) {
  const read = apparentResistivity(
    layeredSoil(ohmM, thickM),
    spacingsM.map((aM) => wennerPins(aM)),
  );
  return fitSounding(
    spacingsM.map((aM, i) => ({
      pins: wennerPins(aM),
      resistanceOhm: (read[i]! * (1 + (off[i] ?? 0))) / (2 * Math.PI * aM),
    })),
  );
}

describe('as many figures as spacings', () => {
  const spacings = [1.5, 3, 6];
  const text = textOf(fitOver([200, 50], [3], spacings, []), spacings);

  it('is said to fit always, and no misfit is told', () => {
    expect(text).toContain(
      'These layers have 3 figures to choose, and there are readings at 3 spacings: so many readings always fit so many figures',
    );
    expect(text).not.toContain('misses the readings by');
  });

  it('readings again at the same spacings are no more of them', () => {
    const twice = [...spacings, ...spacings];
    expect(textOf(fitOver([200, 50], [3], twice, [0.01, 0, 0.01, -0.01, 0, -0.01]), twice)).toContain('at 3 spacings');
  });

  it('one more spacing has a misfit', () => {
    const four = [1, 2, 4, 8];
    const said = textOf(fitOver([200, 50], [2], four, [0.02, -0.02, 0.02, -0.02]), four);
    expect(said).toMatch(/the fit misses the readings by \d/);
    expect(said).not.toContain('always fit');
  });
});

describe('what is not resolved', () => {
  const figure = (value: number, low: number | null, high: number | null): FittedFigure => ({
    value,
    low,
    high,
    resolved: low !== null && high !== null && high / low <= 10,
  });
  const [top, floor] = [figure(111, 100, 123), figure(55.5, 50, 61)];
  const readings = [1, 2, 4, 8, 16, 32].map(() => ({ measuredOhmM: 100, fittedOhmM: 100 }));
  const fitWith = (layers: SoundingFit['layers'], tradeOffs: readonly TradeOff[] = []): SoundingFit => ({
    readings,
    chosen: layers.length as 2 | 3,
    reason: null,
    layers,
    misfitShare: 0.02,
    noiseShare: 0.05,
    tried: [],
    tradeOffs,
  });
  const said = (fit: SoundingFit): string => textOf(fit, [1, 2, 4, 8, 16, 32]);

  it('has a range and no figure: wider than one to ten, or without an end', () => {
    const text = said(
      fitWith([
        { resistivityOhmM: figure(77.7, 20, 201), thicknessM: figure(3.33, 1, null) },
        { resistivityOhmM: figure(44.4, null, 80), thicknessM: null },
      ]),
    );
    expect(text).toContain(
      'a resistivity that is not resolved (20 to 201 ohm m) for a thickness that is not resolved, over 1 m (3.28 ft); a resistivity that is not resolved (under 80 ohm m) below',
    );
    expect(text).toContain('Not resolved: what the readings allow runs over more than one to ten, or has no end.');
    expect(text).not.toMatch(/77\.7|3\.33|44\.4/);
  });

  it('just within one to ten is a figure', () => {
    const text = said(
      fitWith([
        { resistivityOhmM: figure(77.7, 20, 200), thicknessM: figure(3.33, 1, 9) },
        { resistivityOhmM: floor, thicknessM: null },
      ]),
    );
    expect(text).toContain('77.7 ohm m (20 to 200 ohm m) for 3.33 m');
    expect(text).not.toContain('not resolved');
  });

  it.each([
    ['thickness over resistivity', 'only the one over the other: 0.25 siemens (0.21 to 0.3)'],
    ['thickness times resistivity', 'only the one times the other: 0.25 ohm square metre (0.21 to 0.3)'],
  ] as const)('a middle layer of which %s is, has that in the place of both', (of, words) => {
    const middle = { resistivityOhmM: figure(3.21, 0.1, 20), thicknessM: figure(0.803, 0.02, 5) };
    const trade: TradeOff = { layer: 1, of, range: figure(0.25, 0.21, 0.3) };
    const layers = [
      { resistivityOhmM: top, thicknessM: figure(2, 1.8, 2.2) },
      middle,
      { resistivityOhmM: floor, thicknessM: null },
    ];
    const text = said(fitWith(layers, [trade]));
    expect(text).toContain(`a layer of which neither thickness nor resistivity is resolved, ${words}; 55.5 ohm m`);
    expect(text).not.toMatch(/3\.21|0\.803/);
    expect(text).not.toContain('Of layer 2');
  });

  it('where one of both is resolved the other has its range, and the product a sentence', () => {
    const layers = [
      { resistivityOhmM: top, thicknessM: figure(2, 1.8, 2.2) },
      { resistivityOhmM: figure(900, 500, 5000), thicknessM: figure(1.11, 0.15, 2) },
      { resistivityOhmM: floor, thicknessM: null },
    ];
    const trade: TradeOff = { layer: 1, of: 'thickness times resistivity', range: figure(1000, 900, 1100) };
    const text = said(fitWith(layers, [trade]));
    expect(text).toContain('900 ohm m (500 to 5000 ohm m) for a thickness that is not resolved');
    expect(text).toContain('Of layer 2 thickness times resistivity is resolved: 1000 ohm square metre (900 to 1100).');
  });

  it('a thin layer that conducts, read with noise, ends in thickness over resistivity', () => {
    const spacings = [0.5, 1, 2, 4, 8, 16, 32, 64];
    const fit = fitOver([300, 5, 800], [4, 0.4], spacings, [0.02, -0.03, 0.01, 0.03, -0.02, 0.02, -0.01, 0.02]);
    expect(fit.chosen).toBe(3);
    const [trade] = fit.tradeOffs;
    expect(trade?.of).toBe('thickness over resistivity');
    // 0.4 m / 5 ohm m
    expect(trade!.range.low!).toBeLessThan(0.08);
    expect(trade!.range.high!).toBeGreaterThan(0.08);
    expect(textOf(fit, spacings)).toContain('only the one over the other');
  });
});
