import { describe, expect, it } from 'vitest';
import { strikeChart } from '../../src/drawing/strike-chart.ts';
import { clubStrike, houseStrike } from '../report/sample-strike.ts';
import { clubStudy } from '../report/samples.ts';
import { textsOf } from './drawn.ts';
import { axesAt, polylinesOf, readLinear, readLog } from './drawn-axes.ts';

const said = (svg: string) => textsOf(svg).map((t) => t.text);
const inPlot = [80, 40] as const;

/** A strike with curves through these points, in microseconds and volts. */
function withCurves(timesUs: readonly number[], curves: Readonly<Record<string, readonly number[]>>) {
  const potentialsV = Object.entries(curves).map(([part, volt]) => ({ part, volt }));
  return { ...clubStrike, traces: { timesS: timesUs.map((t) => t * 1e-6), potentialsV } };
}

describe('the chart of potentials', () => {
  const timesUs = [0, 0.1, 0.4, 1, 3, 10, 40, 100, 200];
  const tower = [0, 40e3, 200e3, 500e3, 420e3, 300e3, 150e3, 60e3, 20e3];
  const radio = [0, -5e3, -60e3, -90e3, 30e3, 40e3, 20e3, 9e3, 4e3];
  const svg = strikeChart(clubStudy, withCurves(timesUs, { tower, radio }))!;

  it('has each point at its time on a logarithmic axis and at its potential in kV', () => {
    const { x, y } = axesAt(svg, inPlot);
    for (const [i, volts] of [tower, radio].entries()) {
      const curve = polylinesOf(svg)[i]!;
      const wanted = timesUs.map((t, at) => [t, volts[at]! / 1e3] as const).filter(([t]) => t >= 0.1);
      expect(curve).toHaveLength(wanted.length);
      for (const [at, [timeUs, kilovolt]] of wanted.entries()) {
        expect(Math.abs(Math.log10(readLog(x, curve[at]![0]) / timeUs))).toBeLessThan(0.005);
        expect(Math.abs(readLinear(y, curve[at]![1]) - kilovolt)).toBeLessThan(0.2);
      }
    }
  });

  it('shows what swings below remote earth too', () => {
    expect(axesAt(svg, inPlot).y.ticks.some((t) => t.value <= -100)).toBe(true);
  });

  it('is linear in time where the last time is not long after the first', () => {
    const drawn = strikeChart(clubStudy, withCurves([0, 1, 2, 5, 10], { tower: [0, 10e3, 20e3, 10e3, 0] }))!;
    expect(said(drawn)).toContain('Time, µs');
    const { x } = axesAt(drawn, inPlot);
    const [curve] = polylinesOf(drawn);
    for (const [i, timeUs] of [0, 1, 2, 5, 10].entries()) expect(readLinear(x, curve![i]![0])).toBeCloseTo(timeUs, 1);
  });

  it('counts in volts where all lie low', () => {
    const drawn = strikeChart(clubStudy, withCurves([0, 1, 2, 5], { tower: [0, 300, 800, 100] }))!;
    expect(said(drawn)).toContain('Potential against remote ground, V');
    expect(readLinear(axesAt(drawn, inPlot).y, polylinesOf(drawn)[0]![2]![1])).toBeCloseTo(800, 0);
  });

  it('names each curve at its end and tells them apart without colour', () => {
    expect(said(svg)).toEqual(expect.arrayContaining(['tower', 'radio']));
    const dashes = [...svg.matchAll(/<polyline [^>]*>/g)].map(([p]) => /stroke-dasharray="([^"]*)"/.exec(p)?.[1] ?? '');
    expect(new Set(dashes).size).toBe(2);
  });

  it('says peak and time of each for those who cannot see it', () => {
    expect(/<desc>([^<]*)</.exec(svg)![1]).toContain(
      'tower: greatest 500 kV after 1 µs, radio: greatest -90 kV after 1',
    );
  });

  it('keeps the highest eight of more, and names of any length on the sheet', () => {
    const long = 'a-part-with-a-name-that-goes-on-and-on-beyond-every-measure';
    const many = Object.fromEntries(Array.from({ length: 12 }, (_, i) => [`${i}-${long}`, [0, i * 1e3, i * 2e3]]));
    const drawn = strikeChart(clubStudy, withCurves([0, 1, 2], many))!;
    expect(polylinesOf(drawn)).toHaveLength(8);
    expect(said(drawn).filter((t) => t.includes('a-part'))).toHaveLength(8);
    expect(said(drawn).some((t) => t.startsWith('3-a-part'))).toBe(false);
    for (const t of textsOf(drawn)) expect(t.xMm + t.text.length * t.sizeMm * 0.5, t.text).toBeLessThan(183);
  });

  it('is not drawn where there are no curves', () => {
    expect(strikeChart(clubStudy, houseStrike)).toBeNull();
    expect(strikeChart(clubStudy, withCurves([0], { tower: [0] }))).toBeNull();
  });
});
