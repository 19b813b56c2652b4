import { describe, expect, it } from 'vitest';
import type { EncasedShape, RodsShape } from '../../src/electrodes/electrode.ts';
import { electrodeShape } from '../../src/network/electrode-shape.ts';
import { readSite } from '../../src/site/read-site.ts';

function shapeOf<Shape>(typed: string): Shape {
  const { site } = readSite(
    `site: {name: Shapes, region: iec, units: m, service: none}\nelectrodes: {E1: {${typed}}}\n`,
    'shapes.site.yaml',
  );
  return electrodeShape(site!.electrodes[0]!) as Shape;
}

describe('rods', () => {
  it('keep the angle that was typed; without one they are upright', () => {
    expect(shapeOf('kind: rod, length: 2.4 m, angle: 30 deg')).toMatchObject({ angleDeg: { low: 30, high: 30 } });
    expect(shapeOf('kind: rod, length: 2.4 m')).toMatchObject({ angleDeg: null });
  });

  it('whose head stands out of the ground are that much shorter in the soil', () => {
    const rod = (typed: string) => {
      const { lengthM, topM } = shapeOf<RodsShape>(typed);
      return [lengthM?.low, lengthM?.high, topM?.low, topM?.high].map((figure) => Number(figure?.toFixed(9)));
    };
    expect(rod('kind: rod, length: 2.4 m, top: -30 cm')).toEqual([2.1, 2.1, 0, 0]);
    expect(rod('kind: rod, length: 2.4 m, top: 30 cm')).toEqual([2.4, 2.4, 0.3, 0.3]);
    expect(rod('kind: well casing, length: 20 m, diameter: 15 cm, top: -1 m')).toEqual([19, 19, 0, 0]);
    // at 60 degrees from upright 30 cm of height are 60 cm of rod
    expect(rod('kind: rod, length: 2.4 m, angle: 60 deg, top: -30 cm')).toEqual([1.8, 1.8, 0, 0]);
    expect(rod('kind: rod, length: 2.4 m, top: -3 m')[1]).toBeLessThan(0);
  });

  const group = 'kind: rods, count: 3, layout: line, spacing: 3 m, length: 2.4 m, top: 0.5 m';
  it('the wire between them counts where it is known and may be bare', () => {
    const joined = shapeOf<RodsShape>(`${group}, wire: round 8 mm copper`).joiningWire;
    expect(joined?.radiusM?.low).toBeCloseTo(0.004, 12);
    expect(shapeOf<RodsShape>(`${group}, wire: 25 mm2 copper insulated`).joiningWire).toBeNull();
    expect(shapeOf<RodsShape>(group).joiningWire).toBeNull();
  });
});

/**
 * Beam of 0.5 x 0.5 m. By hand: four bars of 10 mm with 75 mm of concrete stand 0.34 m apart, (0.005 x 0.34^3 x sqrt 2)^(1/4) =
 * 0.1291 m; of 25 mm with 40 mm, 0.395 m apart, (0.0125 x 0.395^3 x sqrt 2)^(1/4) = 0.1817 m: radii of the bar that does as much.
 */
describe('a footing with reinforcement', () => {
  const core = (cage: string): EncasedShape['coreDiameterM'] =>
    shapeOf<EncasedShape>(`kind: concrete-encased, length: 6 m, width: 0.5 m, depth: 0.5 m${cage}`).coreDiameterM;

  it('tied is a cage', () => {
    expect(core(', cage: tied')?.low).toBeCloseTo(2 * 0.1291, 3);
    expect(core(', cage: tied')?.high).toBeCloseTo(2 * 0.1817, 3);
  });

  it('not tied is its bars alone, one of 10 to 25 mm', () => {
    expect(core(', cage: not tied')).toEqual({ low: 0.01, high: 0.025 });
  });

  it('that nobody looked at is anything between', () => {
    expect(core('')?.low).toBe(0.01);
    expect(core('')?.high).toBeCloseTo(2 * 0.1817, 3);
  });

  it('with a wire laid in that no cage is tied to is that wire', () => {
    expect(core(', cage: not tied, wire: round 8 mm copper')?.high).toBeCloseTo(0.008, 12);
  });

  it('too slim for a cage has one bar', () => {
    const slim = shapeOf<EncasedShape>('kind: concrete-encased, length: 6 m, width: 0.12 m, depth: 0.3 m, cage: tied');
    expect(slim.coreDiameterM).toEqual({ low: 0.01, high: 0.025 });
  });
});
