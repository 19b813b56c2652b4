import { describe, expect, it } from 'vitest';
import { strikePlan } from '../../src/drawing/strike-plan.ts';
import { carrier, clubStrike, houseStrike } from '../report/sample-strike.ts';
import { clubStudy, houseStudy } from '../report/samples.ts';
import { boxesOf, overlap, textsOf } from './drawn.ts';

const plan = strikePlan(clubStudy, clubStrike)!;
const said = (svg: string) => textsOf(svg).map((t) => t.text);

/** Widths of the lines in the colour of a current, in the order of drawing. */
function widthsOf(svg: string): readonly number[] {
  return [...svg.matchAll(/<polyline [^>]*stroke="#123f5c"[^>]*stroke-width="([\d.]+)"/g)].map((m) => Number(m[1]));
}

describe('the plan of currents', () => {
  it('has the peak current beside the number of each run, and behind the name of each part, that carries', () => {
    const all = said(plan.svg);
    expect(all).toEqual(expect.arrayContaining(['9 tower: 29.1 kA', 'F35: 3.7 kA', 'F36: 3.5 kA', 'C42: 900 A']));
    expect(all).toEqual(expect.arrayContaining(['3 ring: ↓ 12.1 kA', '2 E-shack: ↓ 3.9 kA']));
  });

  it('says nothing of what carries less than a hundredth of the stroke', () => {
    // 60 A of 30 kA on line4, 130 A on c7.
    expect(said(plan.svg).some((t) => t.includes('60 A') || t.includes('130 A'))).toBe(false);
    expect(plan.missing).not.toContain('c7');
  });

  it('names what carries but is not drawn: too short, or of no known place', () => {
    for (const id of ['c1', 'c3', 'c5', 'outlet']) expect(plan.missing).toContain(id);
    for (const id of ['tower', 'line1', 'ring', 'feeder-bond']) expect(plan.missing).not.toContain(id);
  });

  it('draws half the current half as wide, the widest beneath', () => {
    const conductors = [carrier('line1', 8), carrier('line2', 4), carrier('feeder-bond', 2)];
    const { svg } = strikePlan(clubStudy, { ...clubStrike, conductors })!;
    const [first, second, third] = widthsOf(svg);
    expect(second! / first!).toBeCloseTo(0.5, 2);
    expect(third! / first!).toBeCloseTo(0.25, 2);
  });

  it('dashes what runs in the soil, as the site plan does', () => {
    const of = (id: string) =>
      strikePlan(clubStudy, { ...clubStrike, conductors: [carrier(id, 5)], electrodes: [] })!.svg;
    const isDashed = (svg: string) => /<polyline [^>]*stroke="#123f5c"[^>]*stroke-dasharray/.test(svg);
    expect(isDashed(of('line1'))).toBe(true);
    expect(isDashed(of('feeder-bond'))).toBe(false);
  });

  it('has labels that cover no other label and stay inside the frame', () => {
    const labels = boxesOf(plan.svg, 'fill-opacity');
    const frame = boxesOf(plan.svg, 'stroke-width="0.35"')[0]!;
    expect(labels.length).toBeGreaterThan(8);
    expect(labels.flatMap((a, i) => labels.slice(i + 1).filter((b) => overlap(a, b)))).toEqual([]);
    for (const l of labels) {
      expect(l.xMm).toBeGreaterThanOrEqual(frame.xMm);
      expect(l.xMm + l.widthMm).toBeLessThanOrEqual(frame.xMm + frame.widthMm);
      expect(l.yMm + l.heightMm).toBeLessThanOrEqual(frame.yMm + frame.heightMm);
    }
  });

  it('puts the tip of the mark on the struck support', () => {
    // The mark is the one filled in red; the support is a triangle of which the first corner is the upper one.
    const tip = /<polygon points="([\d.]+),([\d.]+) [^"]*" fill="#8a1c14"/.exec(plan.svg)!;
    const towers = [...plan.svg.matchAll(/<polygon points="([\d.]+),([\d.]+) ([\d.]+),[\d.]+ ([\d.]+),[\d.]+"\/>/g)];
    const distances = towers.map((t) => Math.hypot(Number(t[1]) - Number(tip[1]), Number(t[2]) - Number(tip[2])));
    expect(Math.min(...distances)).toBeLessThan(0.1);
    expect(said(plan.svg)).toContain('struck');
  });

  it('puts the mark where a line begins that a surge comes in on', () => {
    const tipOf = (at: string) => {
      const { svg } = strikePlan(clubStudy, { ...clubStrike, at })!;
      const found = /<polygon points="([\d.]+),([\d.]+) [^"]*" fill="#8a1c14"/.exec(svg)!;
      return [Number(found[1]), Number(found[2])] as const;
    };
    // The telephone line comes in 29.5 m west and 15.2 m south of the tower.
    const [tower, phone] = [tipOf('tower@top'), tipOf('phone')];
    expect((tower[0] - phone[0]) / (phone[1] - tower[1])).toBeCloseTo(29.5 / 15.2, 1);
  });

  it('tells those who cannot see it the greatest currents', () => {
    expect(/<desc>([^<]*)</.exec(plan.svg)![1]).toContain('tower 29.1 kA, c8 12.4 kA, ring ↓ 12.1 kA');
  });

  it('is the same each time', () => {
    expect(strikePlan(clubStudy, clubStrike)).toEqual(plan);
  });

  it('is not drawn without places, nor where nothing that carries has one', () => {
    expect(strikePlan(houseStudy, houseStrike)).toBeNull();
    expect(strikePlan(clubStudy, { ...clubStrike, conductors: [], electrodes: [] })).toBeNull();
    expect(strikePlan(clubStudy, { ...clubStrike, conductors: [carrier('thick-one', 9)], electrodes: [] })).toBeNull();
  });
});
