import { describe, expect, it } from 'vitest';
import { conditionNames, dryTop, namedCondition, wetTop } from '../../src/materials/soil-conditions.ts';
import { moistureRatio } from '../../src/materials/soil-moisture.ts';

describe('resistivity by moisture', () => {
  // booklet on earth testing (from memory), top soil and sandy loam, ohm cm
  it.each([
    [5, 20, 165_000 / 12_000, 43_000 / 6_300],
    [10, 15, 53_000 / 19_000, 18_500 / 10_500],
    [30, 15, 6_400 / 19_000, 4_200 / 10_500],
    [2.5, 5, 250 / 165, 150 / 43],
  ])('at %d %% against %d %%: between top soil and sandy loam', (percent, against, topSoil, sandyLoam) => {
    const ratio = moistureRatio(percent, against)!;
    expect(ratio.low).toBeCloseTo(Math.min(topSoil, sandyLoam), 9);
    expect(ratio.high).toBeCloseTo(Math.max(topSoil, sandyLoam), 9);
  });

  it('is 1 against itself and falls as soil gets wetter', () => {
    let last = Number.POSITIVE_INFINITY;
    for (let percent = 2.5; percent <= 30; percent += 0.5) {
      const { low, high } = moistureRatio(percent, 12)!;
      expect(low).toBeLessThanOrEqual(high);
      expect(high).toBeLessThan(last);
      last = high;
    }
    expect(moistureRatio(12, 12)).toEqual({ low: 1, high: 1 });
  });

  it('has no figure outside the curves: without moisture it is above 1e7 ohm m', () => {
    expect(moistureRatio(0, 10)).toBeNull();
    expect(moistureRatio(10, 31)).toBeNull();
  });
});

describe('named conditions', () => {
  const frostM = { low: 0.9, high: 0.9 };

  it('dry ones raise resistivity, wet ones lower it', () => {
    expect(dryTop.ratio.low).toBeGreaterThan(1);
    expect(wetTop.ratio.high).toBe(1);
    expect(wetTop.ratio.low).toBeGreaterThan(0.3);
    expect(namedCondition('dry', frostM).dryRatio).toEqual(dryTop.ratio);
    expect(namedCondition('wet', frostM).wetRatio).toEqual(wetTop.ratio);
  });

  it('a drought reaches deeper than a summer', () => {
    const [dry, summer] = [namedCondition('dry', null), namedCondition('summer', null)];
    expect(dry.dryDepthM!.low).toBeGreaterThanOrEqual(summer.dryDepthM!.high);
  });

  it('only winter freezes, and only where a frost depth is typed', () => {
    for (const name of conditionNames) {
      expect(namedCondition(name, frostM).frostM).toEqual(name === 'winter' ? frostM : null);
      expect(namedCondition(name, null).frostM).toBeNull();
    }
  });

  it('every one says where its figures come from, depths of drying being practice without a source', () => {
    for (const name of conditionNames) {
      const documents = namedCondition(name, frostM).sources.map((s) => s.document);
      expect(documents).toContain('common practice, no source');
      expect(documents.length).toBe(name === 'winter' ? 3 : 2);
    }
  });
});
