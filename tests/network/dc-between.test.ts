import { describe, expect, it } from 'vitest';
import { dcBetween } from '../../src/network/dc-between.ts';
import { pointOfText } from '../../src/site/point-text.ts';
import { readSite } from '../../src/site/read-site.ts';

function between(text: string, from: string, to: string) {
  const { site, problems } = readSite(text, 'test');
  if (site === null) throw new Error(JSON.stringify(problems));
  return dcBetween(site, null, pointOfText(from)!, pointOfText(to)!);
}

const shareOf = (dc: ReturnType<typeof between>, part: string) => dc?.shares.find((s) => s.part === part)?.share;

/** Two bars joined by 2 and by 3 milliohm, nothing between the wires and the bars. */
const twoWires = `
site: {name: Two wires, units: m, service: A}
bars: {A: {kind: station ground bar}, B: {kind: station ground bar}}
conductors:
  w2: {from: A, to: B, resistance: 2 mohm, joints: none}
  w3: {from: A, to: B, resistance: 3 mohm, joints: none}
`;

describe('what an instrument reads between two points', () => {
  it('takes all ways together: 2 and 3 milliohm side by side are 1.2', () => {
    const dc = between(twoWires, 'A', 'B');
    expect(dc?.betweenOhm.low).toBeCloseTo(1.2e-3, 12);
    expect(dc?.betweenOhm.value).toBeCloseTo(1.2e-3, 12);
    expect(dc?.betweenOhm.high).toBeCloseTo(1.2e-3, 12);
  });

  it('shares the current the other way round: 3/5 by 2 milliohm, 2/5 by 3', () => {
    const dc = between(twoWires, 'A', 'B');
    expect(dc?.leaves).toBe('at the other point');
    expect(shareOf(dc, 'w2')).toBeCloseTo(0.6, 12);
    expect(shareOf(dc, 'w3')).toBeCloseTo(0.4, 12);
    expect(dc?.residual).toBeLessThan(1e-12);
  });

  it('has no figure to earth without an electrode', () => {
    expect(between(twoWires, 'A', 'B')).toMatchObject({ fromEarthOhm: null, toEarthOhm: null });
  });

  // 30 ohm at A; 60 ohm at B behind 1.2 milliohm: 30 x 60.0012 / 90.0012 = 20.000133...; A takes 60.0012/90.0012.
  const grounded = `${twoWires}
  r1: {from: A, to: R1, resistance: 0 ohm, joints: none}
  r2: {from: B, to: R2, resistance: 0 ohm, joints: none}
electrodes: {R1: {kind: rod, resistance: 30 ohm}, R2: {kind: rod, resistance: 60 ohm}}
`;

  it('goes on into the soil by each electrode', () => {
    const dc = between(grounded, 'A', 'B');
    expect(dc?.fromEarthOhm?.value).toBeCloseTo((30 * 60.0012) / 90.0012, 9);
    expect(shareOf(dc, 'R1')).toBeCloseTo(60.0012 / 90.0012, 12);
    expect(shareOf(dc, 'R2')).toBeCloseTo(30 / 90.0012, 12);
    expect(shareOf(dc, 'w2')).toBeCloseTo((0.6 * 30) / 90.0012, 12);
  });

  it('bounds what is known as ranges by all low and all high', () => {
    const ranged = grounded.replace('2 mohm', '1 to 4 mohm').replace('30 ohm', '20 to 40 ohm');
    const dc = between(ranged, 'A', 'B');
    // Metal alone: 1 || 3 = 0.75 and 4 || 3 = 12/7 milliohm; the soil beside it: 80 ohm and 100 ohm.
    const parallel = (a: number, b: number) => (a * b) / (a + b);
    expect(dc?.betweenOhm.low).toBeCloseTo(parallel(0.75e-3, 80), 12);
    expect(dc?.betweenOhm.high).toBeCloseTo(parallel(12e-3 / 7, 100), 12);
  });

  it('leaves a share open that hangs on what is not known', () => {
    const unknown = twoWires.replace('resistance: 3 mohm', 'wire: unknown');
    expect(shareOf(between(unknown, 'A', 'B'), 'w2')).toBeUndefined();
  });

  it('is null where nothing joins the two', () => {
    expect(between(`${twoWires}equipment: {radio: {kind: transceiver}}\n`, 'A', 'radio')).toBeNull();
  });
});
