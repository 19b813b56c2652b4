import { describe, expect, it } from 'vitest';
import { hasPlan, notOnPlan, sitePlan } from '../../src/drawing/site-plan.ts';
import type { Study } from '../../src/study/study.ts';
import { exampleFiles, studyOfExample, studyOfText } from '../examples/study-of-example.ts';
import { clubStudy, houseStudy } from '../report/samples.ts';
import { boxesOf, overlap, textsOf } from './drawn.ts';

const studies: readonly (readonly [string, Study])[] = [
  ['the club', clubStudy] as const,
  ...exampleFiles().map((file) => [file, studyOfExample(file)] as const),
].filter(([, study]) => hasPlan(study));

describe.each(studies)('the plan of %s', (_, study) => {
  const svg = sitePlan(study);
  const texts = textsOf(svg);
  /** Labels of places have paper beneath them that is not quite opaque; those of runs have round corners. */
  const labels = [...boxesOf(svg, 'fill-opacity'), ...boxesOf(svg, 'rx=')];
  const frame = boxesOf(svg, 'stroke-width="0.35"')[0]!;

  it('has labels that cover no other label and stay inside the frame', () => {
    expect(labels.length).toBeGreaterThan(3);
    const pairs = labels.flatMap((a, i) => labels.slice(i + 1).map((b) => [a, b] as const));
    expect(pairs.filter(([a, b]) => overlap(a, b))).toEqual([]);
    for (const l of labels) {
      expect(l.xMm).toBeGreaterThanOrEqual(frame.xMm);
      expect(l.yMm).toBeGreaterThanOrEqual(frame.yMm);
      expect(l.xMm + l.widthMm).toBeLessThanOrEqual(frame.xMm + frame.widthMm);
      expect(l.yMm + l.heightMm).toBeLessThanOrEqual(frame.yMm + frame.heightMm);
    }
  });

  it('has a north arrow, scale bars in both systems, and a legend', () => {
    const said = texts.map((t) => t.text);
    expect(said).toContain('N');
    expect(said.some((t) => /^\d[\d.]* m$/.test(t))).toBe(true);
    expect(said.some((t) => /^\d[\d.]* ft$/.test(t))).toBe(true);
    expect(said.some((t) => t.startsWith('Scale 1'))).toBe(true);
    expect(said).toContain('Legend');
  });

  it('shows every part whose place is known, by name or number, or says which it leaves out', () => {
    const said = texts.map((t) => t.text).join('\n');
    const missing = new Set(notOnPlan(study));
    const placed = study.parts.filter(
      (p) => p.positionM !== null && p.routeM.length < 2 && !['conductors', 'lines', 'joints'].includes(p.section),
    );
    expect(placed.length).toBeGreaterThan(1);
    for (const p of placed) expect(missing.has(p.id)).toBe(false);
    const named = placed.filter((p) => said.includes(` ${p.id}`));
    expect(named.length).toBeGreaterThan(placed.length * 0.7);
  });

  it('explains each letter before a number and the mark behind one, and no other', () => {
    const said = texts.map((t) => t.text);
    const labels = said.flatMap((t) => /^([A-Z]?)\d+(\??)$/.exec(t)?.slice(1) ?? []).filter((t) => t !== '');
    const legend = said.slice(said.indexOf('Legend')).filter((t) => /^[A-Z?]$/.test(t));
    expect([...legend].sort()).toEqual([...new Set(labels)].sort());
    expect(said.includes('not known whether in the soil')).toBe(labels.includes('?'));
  });

  it('is the same each time', () => {
    expect(sitePlan(study)).toBe(svg);
  });
});

describe('a plan to scale', () => {
  it('puts two rods 10 m apart as far apart as its scale says', () => {
    const rod = clubStudy.parts.find((p) => p.section === 'electrodes')!;
    const at = (id: string, east: number) => ({ ...rod, id, positionM: [east, 0, 0] as const, routeM: [] });
    const parts = [at('west', 0), at('east', 10)];
    const svg = sitePlan({ ...clubStudy, parts, buildings: [], conductors: [], findings: [] });
    const circles = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="1.8"/g)].map((m) => Number(m[1]));
    const ratio = Number(/1:(\d+)/.exec(svg)![1]);
    // The legend has the symbol as well, below.
    const [west, east] = circles.slice(0, 2);
    expect(Math.abs(east! - west!)).toBeCloseTo(10_000 / ratio, 1);
  });

  it('draws a guy thin from its support to its anchor, and a conductor on it to the anchor', () => {
    const study = studyOfText(`
site: {name: Field, region: iec, units: m, service: none}
electrodes:
  R1: {kind: rod, at: [0, 30], length: 1.5 m}
  R2: {kind: rod, at: [0, -30], length: 1.5 m}
supports:
  tower: {kind: tower, at: [0, 0], height: 12 m, guys: {west: {anchor: [-20, 0]}, east: {anchor: [20, 0]}, lost: {}}}
conductors:
  lead: {from: west@anchor, to: R1, wire: 16 mm2 copper, length: 37 m}
  other: {from: R2, to: east@tower, wire: 16 mm2 copper, length: 37 m}
`);
    const svg = sitePlan(study);
    const mmPerM = 1000 / Number(/1:(\d+)/.exec(svg)![1]);
    const runs = [...svg.matchAll(/<polyline points="([^"]*)"[^>]*stroke-width="(0\.15|0\.55)"/g)];
    const across = (width: string) =>
      runs
        .filter(([, , w]) => w === width)
        .map(([, points]) => points!.split(/[ ,]/).map(Number))
        .map(([x1, y1, x2, y2]) => [Math.abs(x2! - x1!) / mmPerM, Math.abs(y2! - y1!) / mmPerM]);
    // Two guys of 20 m along the ground; two wires from an anchor 20 m out to a rod 30 m away at right angles.
    const [guys, wires] = [across('0.15'), across('0.55')];
    expect(guys.map((d) => d.map(Math.round))).toEqual([
      [20, 0],
      [20, 0],
    ]);
    expect(wires.map((d) => d.map(Math.round))).toEqual([
      [20, 30],
      [20, 30],
    ]);
    expect(notOnPlan(study)).toEqual(['lost']);
    expect(textsOf(svg).map((t) => t.text)).toEqual(
      expect.arrayContaining(['stay, from its support to its anchor: thin', 'anchor of a stay']),
    );
  });

  it('puts the name of a building into a corner where no symbol hides it', () => {
    const study = studyOfText(`
site: {name: Field, region: iec, units: m, service: none}
buildings: {hut: {corners: [[0, 0], [4, 0], [4, 3], [0, 3]]}}
electrodes:
  NW: {kind: rod, at: [0.5, 2.6], length: 1.5 m}
  far: {kind: rod, at: [9, -6], length: 1.5 m}
`);
    const texts = textsOf(sitePlan(study));
    const [hut] = texts.filter((t) => t.text === 'hut');
    const circle = /<circle cx="([\d.]+)" cy="([\d.]+)" r="1.8"/.exec(sitePlan(study))!;
    expect(hut!.xMm).toBeGreaterThan(Number(circle[1]) + 1.8);
  });

  it('is not drawn from a single position', () => {
    expect(hasPlan(houseStudy)).toBe(false);
  });
});
