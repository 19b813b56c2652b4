import { describe, expect, it } from 'vitest';
import { depthChart } from '../../src/drawing/depth-chart.ts';
import { seasonCharts } from '../../src/drawing/season-chart.ts';
import { soundingChart } from '../../src/drawing/sounding-chart.ts';
import { spacingChart } from '../../src/drawing/spacing-chart.ts';
import type { Study } from '../../src/study/study.ts';
import { clubStudy, houseStudy } from '../report/samples.ts';
import { boxesOf, textsOf } from './drawn.ts';
import { axesAt, circlesOf, polylinesOf, readLinear, readLog } from './drawn-axes.ts';

const feet = 0.3048;
const said = (svg: string) => textsOf(svg).map((t) => t.text);
const exact = (ohm: number) => ({ value: ohm, low: ohm, high: ohm });

/** Coordinates are written to 0.01 mm; a decade is some 20 mm and more long. */
const offByLog = (found: number, wanted: number) => Math.abs(Math.log10(found / wanted));
const logSlack = 0.002;

describe('the sounding chart', () => {
  const fit = clubStudy.earth.soilFit!;
  const svg = soundingChart(clubStudy, fit);
  const left = [60, 30] as const;
  const right = [150, 30] as const;

  it('has each reading where its spacing in feet and its resistivity say', () => {
    const { x, y } = axesAt(svg, left);
    const drawn = circlesOf(svg, 1.2);
    const wanted = fit.points.filter((p) => p.reading === 'four-pin-1');
    expect(wanted).toHaveLength(5);
    for (const [i, p] of wanted.entries()) {
      const [atX, atY] = drawn[i]!;
      expect(offByLog(readLog(x, atX), p.spacingM / feet)).toBeLessThan(logSlack);
      expect(offByLog(readLog(y, atY), p.measuredOhmM)).toBeLessThan(logSlack);
    }
  });

  it('has metres where the site is typed in metres', () => {
    const metric = { ...clubStudy, site: { ...clubStudy.site, units: 'm' as const, region: 'iec' } };
    const drawn = soundingChart(metric, fit);
    const [atX] = circlesOf(drawn, 1.2)[0]!;
    expect(offByLog(readLog(axesAt(drawn, left).x, atX), 0.61)).toBeLessThan(logSlack);
    expect(said(drawn)).toEqual(expect.arrayContaining(['Spacing of the pins, m', 'Depth, m']));
  });

  it('has its curve through the fitted figures', () => {
    const { x, y } = axesAt(svg, left);
    const curve = polylinesOf(svg).find((line) => line.length === fit.curve.length)!;
    for (const [i, p] of fit.curve.entries()) {
      expect(offByLog(readLog(x, curve[i]![0]), p.spacingM / feet)).toBeLessThan(logSlack);
      expect(offByLog(readLog(y, curve[i]![1]), p.ohmM)).toBeLessThan(logSlack);
    }
  });

  it('has the layers as steps: 168 ohm m down to 1.62 m, 58 ohm m below it to the edge', () => {
    const { x, y } = axesAt(svg, right);
    const steps = polylinesOf(svg).find((line) => line.length === 4 && line[0]![0] > 120)!;
    const read = steps.map(([atX, atY]) => [readLog(x, atX), readLinear(y, atY) * feet] as const);
    for (const [i, ohmM] of [168, 168, 58, 58].entries()) expect(offByLog(read[i]![0], ohmM)).toBeLessThan(logSlack);
    expect(read[0]![1]).toBeCloseTo(0, 2);
    expect(read[1]![1]).toBeCloseTo(1.62, 2);
    expect(read[2]![1]).toBeCloseTo(1.62, 2);
    expect(read[3]![1]).toBeGreaterThan(1.62 * 1.5);
  });

  it('shows the range of each layer, 149 to 191 and 52 to 64 ohm m', () => {
    const { x } = axesAt(svg, right);
    const bands = boxesOf(svg, 'fill="#dbe3e9"').filter((b) => b.xMm > 120 && b.yMm < 60);
    const read = bands.map((b) => [readLog(x, b.xMm), readLog(x, b.xMm + b.widthMm)]);
    for (const [i, ends] of [
      [149, 191],
      [52, 64],
    ].entries()) {
      for (const [j, end] of ends.entries()) expect(offByLog(read[i]![j]!, end)).toBeLessThan(logSlack);
    }
  });

  it('without layers shows the readings alone', () => {
    const drawn = soundingChart(houseStudy, houseStudy.earth.soilFit!);
    expect(circlesOf(drawn, 1.2).length).toBe(3 + 1); // and the legend's
    expect(said(drawn)).not.toContain('the layers');
  });
});

describe('the depth chart', () => {
  const curves = [
    { electrode: 'E', condition: 'as typed', lengthM: 2 * feet * 4, points: [4, 8, 16].map((ft) => at(ft, 400 / ft)) },
    { electrode: 'E', condition: 'frozen', lengthM: 2 * feet * 4, points: [4, 8, 16].map((ft) => at(ft, 1600 / ft)) },
  ];
  function at(ft: number, ohm: number) {
    return { lengthM: ft * feet, ohm: { value: ohm, low: ohm / 2, high: ohm * 2 } };
  }
  const svg = depthChart(clubStudy, curves);
  const { x, y } = axesAt(svg, [60, 30]);

  it('has each curve through its figures, the one over the other', () => {
    const [typed, frozen] = polylinesOf(svg).filter((line) => line.length === 3);
    for (const [i, ft] of [4, 8, 16].entries()) {
      expect(readLinear(x, typed![i]![0])).toBeCloseTo(ft, 1);
      expect(offByLog(readLog(y, typed![i]![1]), 400 / ft)).toBeLessThan(logSlack);
      expect(offByLog(readLog(y, frozen![i]![1]), 1600 / ft)).toBeLessThan(logSlack);
    }
  });

  it('has a strip from low to high behind the first', () => {
    const strips = [...svg.matchAll(/<polygon points="([^"]*)"[^>]*fill-opacity/g)].map((m) =>
      m[1]!.split(' ').map((p) => Number(p.split(',')[1])),
    );
    expect(strips).toHaveLength(1);
    // Low at 4 ft, first; high at 4 ft, last.
    expect(offByLog(readLog(y, strips[0]![0]!), 50)).toBeLessThan(logSlack);
    expect(offByLog(readLog(y, strips[0]!.at(-1)!), 200)).toBeLessThan(logSlack);
  });

  it('marks the length as it is, 8 ft', () => {
    const dotted = /<line x1="([\d.]+)"[^>]*stroke-dasharray="0.6 0.9"/.exec(svg)!;
    expect(readLinear(x, Number(dotted[1]))).toBeCloseTo(8, 1);
    expect(said(svg)).toContain('as it is');
  });

  it('tells curves apart by dash and marker, and names each at its end', () => {
    const dashes = [...svg.matchAll(/<polyline [^>]*>/g)].map(
      (m) => /stroke-dasharray="([^"]*)"/.exec(m[0])?.[1] ?? '',
    );
    expect(new Set(dashes).size).toBe(2);
    const names = textsOf(svg).filter((t) => ['as typed', 'frozen'].includes(t.text));
    expect(names).toHaveLength(2);
    const [typed, frozen] = ['as typed', 'frozen'].map((n) => names.find((t) => t.text === n)!);
    expect(frozen!.yMm).toBeLessThan(typed!.yMm);
    for (const n of names) expect(n.xMm).toBeGreaterThan(Math.max(...x.ticks.map((t) => t.atMm)));
  });

  it('keeps the names of six curves that end together a line apart', () => {
    const six = ['a1', 'b2', 'c3', 'd4', 'e5', 'f6'].map((condition) => ({ ...curves[0]!, condition }));
    const rows = textsOf(depthChart(clubStudy, six)).filter((t) => /^[a-f]\d$/.test(t.text));
    expect(rows).toHaveLength(6);
    const heights = rows.map((t) => t.yMm).sort((a, b) => a - b);
    for (const [i, h] of heights.slice(1).entries()) expect(h - heights[i]!).toBeGreaterThan(2.7);
  });

  it('names the curve of another electrode by that, and marks its length too', () => {
    const other = { ...curves[0]!, electrode: 'F', lengthM: 16 * feet };
    const drawn = depthChart(clubStudy, [...curves, other]);
    expect(said(drawn)).toEqual(expect.arrayContaining(['as typed', 'frozen', 'F']));
    const dotted = [...drawn.matchAll(/<line x1="([\d.]+)"[^>]*stroke-dasharray="0.6 0.9"/g)].map((m) => Number(m[1]));
    const lengths = dotted.slice(0, 2).map((atX) => readLinear(axesAt(drawn, [60, 30]).x, atX));
    expect(lengths[0]).toBeCloseTo(8, 1);
    expect(lengths[1]).toBeCloseTo(16, 1);
  });

  it('says the ranges at that length to those who cannot see it', () => {
    expect(svg).toContain(
      'At the length as it is: E as typed 25 to 100 ohm at 8 ft (2.44 m), E frozen 100 to 400 ohm at 8 ft (2.44 m).',
    );
  });
});

describe('the season chart', () => {
  const withEarth = (conditions: Study['earth']['conditions']): Study => ({
    ...clubStudy,
    earth: { ...clubStudy.earth, conditions },
  });
  const condition = (id: string, ohm: number, group: number) => ({
    id,
    says: id,
    layers: [],
    electrodes: [],
    resistanceOhm: { value: ohm, low: ohm / 2, high: ohm * 3 },
    groups: [{ id: 'ring', resistanceOhm: { value: group, low: group, high: null } }],
  });
  const [svg] = seasonCharts(withEarth([condition('as typed', 10, 4), condition('frozen', 60, 9)]));
  const { x } = axesAt(svg!, [80, 12]);
  const bars = boxesOf(svg!, 'fill="#dbe3e9"');

  it('has a bar from the least to the greatest figure, on a logarithmic scale', () => {
    const [typed, frozen] = bars;
    expect(offByLog(readLog(x, typed!.xMm), 5)).toBeLessThan(logSlack);
    expect(offByLog(readLog(x, typed!.xMm + typed!.widthMm), 30)).toBeLessThan(logSlack);
    expect(offByLog(readLog(x, frozen!.xMm), 30)).toBeLessThan(logSlack);
    expect(offByLog(readLog(x, frozen!.xMm + frozen!.widthMm), 180)).toBeLessThan(logSlack);
  });

  it('has a dot at the likely figure', () => {
    const dots = circlesOf(svg!, 0.8).map(([atX]) => readLog(x, atX));
    for (const [i, ohm] of [10, 60, 4, 9].entries()) expect(offByLog(dots[i]!, ohm)).toBeLessThan(logSlack);
  });

  it('has an arrow where nothing bounds it from above, and says so', () => {
    expect(svg!.match(/<polygon/g)).toHaveLength(2 + 1); // and the legend's
    expect(said(svg!)).toEqual(expect.arrayContaining(['over 4 ohm', 'no upper bound is known', '30 to 180 ohm']));
  });

  it('has an arrow to the left, and no decades of milliohm, where only the metal bounds it from below', () => {
    const metal = (id: string, high: number | null) => ({
      ...condition(id, 10, 4),
      resistanceOhm: { value: null, low: 0.0024, high },
      groups: [],
    });
    const [chart] = seasonCharts(withEarth([metal('as typed', 411), metal('frozen', 439), metal('dry', null)]));
    expect(said(chart!)).toEqual(
      expect.arrayContaining(['up to 411 ohm', 'up to 439 ohm', 'unknown', 'no lower bound is known']),
    );
    expect(said(chart!).join(' ')).not.toMatch(/milliohm|0\.01/);
    expect(chart!.match(/<polygon/g)).toHaveLength(2 + 1); // and the legend's
    expect(said(svg!)).not.toContain('no lower bound is known');
    expect(seasonCharts(withEarth([metal('as typed', null), metal('frozen', null)]))).toEqual([]);
  });

  it('is linear from 0 where figures lie close together', () => {
    const [close] = seasonCharts(withEarth([condition('as typed', 10, 6), condition('dry', 11, 7)]));
    expect(axesAt(close!, [80, 12]).x.ticks[0]!.value).toBe(0);
  });

  it('leaves out the group of the service where it is the whole', () => {
    const names = said(seasonCharts(clubStudy)[0]!);
    expect(names).toEqual(expect.arrayContaining(['The whole, at the service', 'Group of ring', 'Group of E-shack']));
    expect(names).not.toContain('Group of E-service');
  });

  it('goes on on a second sheet before one is longer than paper', () => {
    const many = Array.from({ length: 12 }, (_, i) => `group-${i}`);
    const of = (id: string) => ({
      ...condition(id, 10, 4),
      groups: many.map((g) => ({ id: g, resistanceOhm: exact(20) })),
    });
    const sheets = seasonCharts(withEarth(['as typed', 'wet', 'dry', 'frozen'].map(of)));
    expect(sheets.length).toBeGreaterThan(1);
    for (const sheet of sheets) expect(Number(/height="([\d.]+)mm"/.exec(sheet)![1])).toBeLessThan(212);
    for (const g of many) expect(sheets.filter((s) => said(s).includes(`Group of ${g}`))).toHaveLength(1);
  });

  it('is not drawn where nothing is known', () => {
    expect(seasonCharts(withEarth([]))).toEqual([]);
  });
});

describe('the spacing chart', () => {
  const gains = [
    { electrode: 'E1', points: [4, 8, 16].map((ft) => ({ spacingM: ft * feet, ohm: 50, gainShare: 0.5 - 1 / ft })) },
  ];
  const svg = spacingChart(clubStudy, gains);
  const { x, y } = axesAt(svg, [60, 30]);

  it('has each gain over its distance', () => {
    const [curve] = polylinesOf(svg);
    for (const [i, ft] of [4, 8, 16].entries()) {
      expect(readLinear(x, curve![i]![0])).toBeCloseTo(ft, 1);
      expect(readLinear(y, curve![i]![1])).toBeCloseTo(50 - 100 / ft, 1);
    }
  });

  it('marks 50 % as what it would be without mutual influence', () => {
    const level = /<line [^>]*y1="([\d.]+)"[^>]*stroke-dasharray="0.6 0.9"/.exec(svg)!;
    expect(readLinear(y, Number(level[1]))).toBeCloseTo(50, 1);
    expect(said(svg)).toContain('50 %: as if they did not feel each other');
  });
});

it('charts keep their text on the sheet, with names of any length', () => {
  const long = 'an-electrode-with-a-name-that-goes-on-and-on-beyond-every-measure';
  const e = clubStudy.earth;
  const svgs = [
    soundingChart(clubStudy, { ...e.soilFit!, points: e.soilFit!.points.map((p) => ({ ...p, reading: long })) }),
    depthChart(
      clubStudy,
      e.depthCurves.map((c) => ({ ...c, electrode: long, condition: long })),
    ),
    spacingChart(
      clubStudy,
      e.spacingGains.map((g) => ({ ...g, electrode: long })),
    ),
    ...seasonCharts(clubStudy),
  ];
  for (const svg of svgs) {
    // Half the size is the mean width of a letter, a little less than that of Helvetica in running text.
    for (const t of textsOf(svg)) {
      expect(t.xMm).toBeGreaterThanOrEqual(0);
      expect(t.xMm + t.text.length * t.sizeMm * 0.5, t.text).toBeLessThan(183);
    }
  }
});
