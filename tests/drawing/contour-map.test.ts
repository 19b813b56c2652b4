import { describe, expect, it } from 'vitest';
import { contourMap } from '../../src/drawing/contour-map.ts';
import { told } from '../../src/drawing/contour-profile.ts';
import type { StudySurface } from '../../src/study/study-earth.ts';
import { clubStudy } from '../report/samples.ts';
import { boxesOf, overlap, textsOf } from './drawn.ts';
import { axesAt, polylinesOf, readLinear } from './drawn-axes.ts';

const rod = clubStudy.parts.find((p) => p.kind === 'rod')!;
const site = {
  ...clubStudy,
  parts: [{ ...rod, id: 'R', positionM: [0, 0, 0] as const, routeM: [] }],
  buildings: [],
  guys: [],
};

/** A cone over the rod: 100 % at its tip, 0 at 10 m. */
const cone: StudySurface = {
  group: 'R',
  condition: 'as typed',
  grid: {
    westM: -12,
    southM: -9,
    stepM: 0.6,
    columns: 41,
    rows: 31,
    share: Array.from({ length: 41 * 31 }, (_, i) =>
      Math.max(0, 1 - Math.hypot(-12 + (i % 41) * 0.6, -9 + Math.floor(i / 41) * 0.6) / 10),
    ),
  },
  line: {
    fromM: [0, 0],
    toM: [6, 8],
    points: [0, 2.5, 5, 7.5, 10].map((distanceM) => ({ distanceM, share: 1 - distanceM / 10 })),
  },
  step: { share: 0.1, atM: 3 },
  touch: null,
};

describe('the map of a cone', () => {
  const svg = contourMap(site, cone);
  const mmPerM = 1000 / Number(/1:(\d+)/.exec(svg)![1]);
  const [, cx, cy] = /<circle cx="([\d.]+)" cy="([\d.]+)" r="1.8"/.exec(svg)!;
  const [x, y] = [Number(cx), Number(cy)];
  const lines = polylinesOf(svg).filter((l) => l.length > 12);

  it('has the line of 50 % 5 m round the rod, and that of 20 % 8 m, to scale', () => {
    const radii = lines.map((l) => l.map(([px, py]) => Math.hypot(px - x, py - y) / mmPerM));
    for (const wanted of [5, 8]) {
      const found = radii.filter((r) => Math.abs(r[0]! - wanted) < 0.1);
      expect(found).toHaveLength(1);
      for (const r of found[0]!) expect(Math.abs(r - wanted)).toBeLessThan(0.05);
    }
  });

  it('says the level on the line itself', () => {
    const label = textsOf(svg).find((t) => t.text === '50 %')!;
    // The middle of the text is about 2 mm right of where it begins, and half its height above its foot.
    const radius = Math.hypot(label.xMm + 2.2 - x, label.yMm - 0.8 - y) / mmPerM;
    expect(Math.abs(radius - 5)).toBeLessThan(1.2 / mmPerM);
  });

  it('draws the worst step beside the line from A to B, 3 m to 4 m along it, towards north-east', () => {
    const bar = /<line x1="([\d.]+)" y1="([\d.]+)" x2="([\d.]+)" y2="([\d.]+)" [^>]*stroke-width="1.1"/.exec(svg)!;
    const [x1, y1, x2, y2] = bar.slice(1, 5).map(Number) as [number, number, number, number];
    // 6 east and 8 north in 10: 0.6 and 0.8 of each metre; paper runs downwards. Along the line and across it:
    const along = (px: number, py: number) => ((px - x) * 0.6 + (y - py) * 0.8) / mmPerM;
    const across = (px: number, py: number) => Math.abs((px - x) * 0.8 - (y - py) * 0.6);
    expect(along(x1, y1)).toBeCloseTo(3, 1);
    expect(along(x2, y2)).toBeCloseTo(4, 1);
    // Past the symbol of an electrode on the line, 1.8 mm in radius, and the same for both ends.
    expect(across(x1, y1)).toBeGreaterThan(2.5);
    expect(across(x2, y2)).toBeCloseTo(across(x1, y1), 1);
  });

  it('explains every stroke and symbol', () => {
    const said = textsOf(svg).map((t) => t.text);
    const legend = ['equal potential, in % of the rise', 'worst step of 3.28 ft (1 m) on that line'];
    const more = ['line looked at for the worst step', 'edge of what was worked out', 'grounding electrode'];
    expect(said).toEqual(expect.arrayContaining(['Legend', 'N', 'A', 'B', ...legend, ...more]));
  });
});

describe.each(clubStudy.earth.surfaces.map((s) => [s.group, s] as const))('the map round %s', (_, surface) => {
  const svg = contourMap(clubStudy, surface);
  const frame = boxesOf(svg, 'stroke-width="0.35"')[0]!;
  const labels = [...boxesOf(svg, 'fill-opacity'), ...boxesOf(svg, 'rx=')].filter((b) => b.yMm < frame.heightMm);

  it('has labels that cover no other label and stay inside the frame', () => {
    expect(labels.length).toBeGreaterThan(8);
    const pairs = labels.flatMap((a, i) => labels.slice(i + 1).map((b) => [a, b] as const));
    expect(pairs.filter(([a, b]) => overlap(a, b))).toEqual([]);
    for (const l of labels) {
      expect(l.xMm).toBeGreaterThanOrEqual(frame.xMm);
      expect(l.yMm).toBeGreaterThanOrEqual(frame.yMm);
      expect(l.xMm + l.widthMm).toBeLessThanOrEqual(frame.xMm + frame.widthMm);
      expect(l.yMm + l.heightMm).toBeLessThanOrEqual(frame.yMm + frame.heightMm);
    }
  });

  it('has the numbers of the plan', () => {
    const said = textsOf(svg).map((t) => t.text);
    const shown = surface.group === 'ring' ? '3 ring' : '1 E-service';
    expect(said.some((t) => t.startsWith(shown))).toBe(true);
  });

  it('is the same each time', () => {
    expect(contourMap(clubStudy, surface)).toBe(svg);
  });
});

describe('the letters of the line from A to B', () => {
  /** A line of 8 m to the east that begins so far east of the rod. */
  const lineFrom = (eastM: number) => ({
    ...cone,
    line: { ...cone.line, fromM: [eastM, 0] as const, toM: [eastM + 8, 0] as const },
  });
  const letterOf = (svg: string) => {
    const { xMm, yMm } = textsOf(svg).find((t) => t.text === 'A')!;
    return { xMm: xMm - 0.6, yMm: yMm - 3, widthMm: 3.4, heightMm: 3.8 };
  };
  const symbolOf = (svg: string) => {
    const [, cx, cy] = /<circle cx="([\d.]+)" cy="([\d.]+)" r="1.8"/.exec(svg)!;
    return { xMm: Number(cx) - 1.8, yMm: Number(cy) - 1.8, widthMm: 3.6, heightMm: 3.6 };
  };

  it.each([0, 0.3, 0.7, 1])('lie under no symbol where the line begins %s m from it', (eastM) => {
    const svg = contourMap(site, lineFrom(eastM));
    expect(overlap(letterOf(svg), symbolOf(svg))).toBe(false);
  });

  it('stand on the line, beyond its end, where nothing is there', () => {
    const svg = contourMap(site, lineFrom(4));
    const [letter, symbol] = [letterOf(svg), symbolOf(svg)];
    expect(letter.yMm + 1.9).toBeCloseTo(symbol.yMm + 1.8, 1);
  });
});

it('a part that stands elsewhere is left out', () => {
  const far = { ...rod, id: 'far-rod', positionM: [400, 0, 0] as const, routeM: [] };
  const svg = contourMap({ ...site, parts: [...site.parts, far] }, cone);
  expect(textsOf(svg).some((t) => t.text.includes('far-rod'))).toBe(false);
  expect(/1:(\d+)/.exec(svg)![1]).toBe(/1:(\d+)/.exec(contourMap(site, cone))![1]);
});

describe('the curve beside the map of a cone', () => {
  const svg = contourMap(site, cone);
  const { x, y } = axesAt(svg, [150, 25]);

  it('falls from 100 % at A to 0 at 10 m', () => {
    const curve = polylinesOf(svg).find((l) => l.length === 5 && l.every(([atX]) => atX > 125));
    for (const [i, m] of [0, 2.5, 5, 7.5, 10].entries()) {
      expect(readLinear(x, curve![i]![0]) * 0.3048).toBeCloseTo(m, 1);
      expect(readLinear(y, curve![i]![1])).toBeCloseTo(100 - 10 * m, 0);
    }
  });

  it('shades the worst step, from 3 m to 4 m', () => {
    const [strip] = boxesOf(svg, 'fill="#dbe3e9"');
    expect(readLinear(x, strip!.xMm) * 0.3048).toBeCloseTo(3, 1);
    expect(readLinear(x, strip!.xMm + strip!.widthMm) * 0.3048).toBeCloseTo(4, 1);
  });

  it('is told to those who cannot see it, in full at the metal, at 1 m and each time twice as far, and at its end', () => {
    expect(svg).toContain('Along the line from A to B, by the distance from A: 100 % at 0 ft (0 m), 75 % at');
    const points = [0, 0.25, 0.5, 1, 1.5, 2, 3, 4, 6, 7].map((distanceM) => ({ distanceM, share: 1 }));
    expect(told(points).map((p) => p.distanceM)).toEqual([0, 1, 2, 4, 7]);
  });

  it('is left out where there is no line', () => {
    const none = contourMap(site, { ...cone, line: { ...cone.line, points: cone.line.points.slice(0, 1) } });
    expect(textsOf(none).map((t) => t.text)).not.toContain('Potential, % of the rise');
  });
});
