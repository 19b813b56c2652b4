import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Interval } from '../../src/math/interval.ts';
import { type LayeredSoil, layerAt, mostLayers, thinnestLayerM } from '../../src/soil/layered-soil.ts';
import type { SoilLayers } from '../../src/soil/layers.ts';
import { profileBounds, type SoilZone } from '../../src/soil/profile-bounds.ts';

const range = (low: number, high = low): Interval => ({ low, high });
const layer = (ohmM: Interval, thicknessM: Interval | null = null) => ({ resistivityOhmM: ohmM, thicknessM });

/** One admitted soil: resistivity at a depth, worked out from its own figures. */
interface Admitted {
  readonly ohmM: readonly number[];
  /** One per layer but the last. */
  readonly thickM: readonly number[];
  readonly zones: readonly { readonly footM: number; readonly ratio: number }[];
}

function ohmMAt({ ohmM, thickM, zones }: Admitted, depthM: number): number {
  const at = thickM.findIndex((_, i) => depthM <= thickM.slice(0, i + 1).reduce((sum, thick) => sum + thick, 0));
  const zone = zones.find((z) => depthM <= z.footM);
  return ohmM[at < 0 ? thickM.length : at]! * (zone?.ratio ?? 1);
}

const ohmMAtBound = (soil: LayeredSoil, depthM: number): number => soil.resistivityOhmM[layerAt(soil, depthM)]!;

const between = (least: number, greatest: number): fc.Arbitrary<Interval> =>
  fc
    .tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }))
    .map(([a, b]) => [least * (greatest / least) ** Math.min(a, b), least * (greatest / least) ** Math.max(a, b)])
    .map(([low, high]) => range(low!, high!));

const layers: fc.Arbitrary<SoilLayers> = fc.array(
  fc.record({
    resistivityOhmM: between(5, 20_000),
    thicknessM: fc.oneof({ weight: 4, arbitrary: between(0.05, 20) }, { weight: 1, arbitrary: fc.constant(null) }),
  }),
  { minLength: 1, maxLength: 5 },
);
const zones: fc.Arbitrary<readonly SoilZone[]> = fc.array(
  fc.record({ footM: between(0.1, 3), ratio: between(0.4, 40) }),
  { maxLength: 3 },
);
/** Shares of the way through each range, used in turn. */
const shares = fc.array(fc.oneof(fc.constantFrom(0, 1), fc.double({ min: 0, max: 1, noNaN: true })), {
  minLength: 24,
  maxLength: 24,
});

function admit(soil: SoilLayers, changed: readonly SoilZone[], at: readonly number[]): Admitted {
  let next = 0;
  const within = ({ low, high }: Interval): number => {
    const share = at[next++]!;
    // not low + share * (high - low), which may end beyond high by rounding
    return Math.min(high, low * (1 - share) + high * share);
  };
  return {
    ohmM: soil.map((l) => within(l.resistivityOhmM)),
    thickM: soil.slice(0, -1).map((l) => within(l.thicknessM ?? range(0, 40))),
    zones: changed.map((z) => ({ footM: within(z.footM), ratio: within(z.ratio) })),
  };
}

describe('bounds of a soil known by ranges', () => {
  const depthM = fc.double({ min: 1e-6, max: 60, noNaN: true });

  it('enclose every admitted soil at every depth', () => {
    fc.assert(
      fc.property(
        layers,
        zones,
        shares,
        fc.array(depthM, { minLength: 20, maxLength: 20 }),
        (soil, changed, at, zs) => {
          const { low, high, likely } = profileBounds(soil, changed);
          const one = admit(soil, changed, at);
          for (const z of zs) {
            const here = ohmMAt(one, z);
            expect(ohmMAtBound(low!, z)).toBeLessThanOrEqual(here * (1 + 1e-12));
            expect(ohmMAtBound(high!, z)).toBeGreaterThanOrEqual(here * (1 - 1e-12));
            if (likely === null) continue;
            expect(ohmMAtBound(likely, z)).toBeGreaterThanOrEqual(ohmMAtBound(low!, z) * (1 - 1e-12));
            expect(ohmMAtBound(likely, z)).toBeLessThanOrEqual(ohmMAtBound(high!, z) * (1 + 1e-12));
          }
        },
      ),
      { numRuns: 400 },
    );
  });

  it('are plain soils: at most twelve layers, none thinner than a millimetre', () => {
    fc.assert(
      fc.property(layers, zones, (soil, changed) => {
        for (const bound of [profileBounds(soil, changed).low!, profileBounds(soil, changed).high!]) {
          expect(bound.resistivityOhmM.length).toBeLessThanOrEqual(mostLayers);
          for (const thickM of bound.thicknessM) expect(thickM).toBeGreaterThanOrEqual(thinnestLayerM);
        }
      }),
    );
  });

  it('of exact figures are that soil, all three', () => {
    const soil = [layer(range(300), range(2)), layer(range(50), range(4)), layer(range(900))];
    const plain = { resistivityOhmM: [300, 50, 900], thicknessM: [2, 4] };
    expect(profileBounds(soil)).toEqual({ low: plain, high: plain, likely: plain, merged: 0, moved: 0 });
  });

  // by hand: the boundary of 100..200 over 500..800 lies between 1 and 4 m, so down to 4 m it may be the upper layer, and
  // from 1 m on the lower one
  it('of a boundary somewhere take the upper layer down to its lowest place for the one, its highest for the other', () => {
    const { low, high, likely } = profileBounds([layer(range(100, 200), range(1, 4)), layer(range(500, 800))]);
    expect(low).toEqual({ resistivityOhmM: [100, 500], thicknessM: [4] });
    expect(high).toEqual({ resistivityOhmM: [200, 800], thicknessM: [1] });
    expect(likely!.thicknessM[0]).toBeCloseTo(2, 12);
    expect(likely!.resistivityOhmM[0]).toBeCloseTo(Math.sqrt(20_000), 9);
  });

  it('of a boundary of unknown depth leave it anywhere, and nothing is likely', () => {
    const { low, high, likely } = profileBounds([layer(range(2000)), layer(range(60))].map((l) => ({ ...l })));
    expect(low).toEqual({ resistivityOhmM: [60], thicknessM: [] });
    expect(high).toEqual({ resistivityOhmM: [2000], thicknessM: [] });
    expect(likely).toBeNull();
  });

  // by hand: frozen to 0.5..1.5 m, layer of 100 down to exactly 1 m over 30; ratio 5
  it('of a zone across a boundary are met at each depth by some admitted soil', () => {
    const soil = [layer(range(100), range(1)), layer(range(30))];
    const { low, high } = profileBounds(soil, [{ footM: range(0.5, 1.5), ratio: range(5) }]);
    expect(low).toEqual({ resistivityOhmM: [500, 100, 30], thicknessM: [0.5, 0.5] });
    expect(high).toEqual({ resistivityOhmM: [500, 150, 30], thicknessM: [1, 0.5] });
  });

  it('have no side where a resistivity is open', () => {
    const { low, high, likely } = profileBounds([layer({ low: 3000, high: Number.POSITIVE_INFINITY })]);
    expect(low).toEqual({ resistivityOhmM: [3000], thicknessM: [] });
    expect(high).toBeNull();
    expect(likely).toBeNull();
    expect(profileBounds([layer(range(0, 5))]).low).toBeNull();
  });

  it('of fifteen layers take three together, outward', () => {
    const many = Array.from({ length: 15 }, (_, at) => layer(range(at % 2 === 0 ? 100 : 130 + at), range(1)));
    const { low, high, merged } = profileBounds(many);
    expect(merged).toBeGreaterThanOrEqual(6);
    for (let z = 0.5; z < 20; z += 0.5) {
      const here = many[Math.min(14, Math.ceil(z) - 1)]!.resistivityOhmM.low;
      expect(ohmMAtBound(low!, z)).toBeLessThanOrEqual(here);
      expect(ohmMAtBound(high!, z)).toBeGreaterThanOrEqual(here);
    }
    expect(low!.resistivityOhmM.length).toBeLessThanOrEqual(mostLayers);
  });

  it('of no layer are refused', () => {
    expect(() => profileBounds([])).toThrow(RangeError);
  });
});
