import { describe, expect, it } from 'vitest';
import type { SparkGap, SurgeDevice, Varistor } from '../../src/surge/device.ts';
import { type DeviceCourse, deviceRun } from '../../src/surge/device-run.ts';
import { overTime, potentialFigure } from '../../src/surge/surge-figure.ts';
import type { SurgeNetwork } from '../../src/surge/surge-network.ts';
import { surgeRun } from '../../src/surge/surge-run.ts';
import { currentAt, type Wave } from '../../src/surge/wave.ts';
import { wave1x200, wave8x20 } from '../../src/surge/wave-presets.ts';
import { modesOf } from './modes-of.ts';

/** The node 0 on an electrode. */
const lone = (ohm: number): SurgeNetwork => ({
  nodeCount: 1,
  branches: [],
  mutualH: null,
  earth: { nodes: [0], resistanceOhm: [ohm] },
});

const steady = (volts: number) => ({ slopeVPerS: 100, sparkOverV: { low: volts, high: volts } });

const gap = (volts: number, arcV = 30, slopeOhm = 0.05): SparkGap => ({
  kind: 'gap',
  from: 0,
  to: null,
  sparkOver: [steady(volts)],
  side: 'high',
  arcV,
  slopeOhm,
});

function stroke(network: SurgeNetwork, wave: Wave, untilS: number, devices: readonly SurgeDevice[]): DeviceCourse {
  return deviceRun(surgeRun(modesOf(network), { node: 0, wave, channelH: null }, { untilS }), devices);
}

describe('a gap across an electrode of 20 ohm', () => {
  const wave = wave1x200(1e3);
  const course = stroke(lone(20), wave, 50e-6, [gap(5e3)]);
  const [device] = course.devices;

  it('fires when its volts are reached and not before', () => {
    let [low, high] = [0, 2e-6];
    for (let turn = 0; turn < 60; turn++) {
      const middle = (low + high) / 2;
      if (20 * currentAt(wave, middle) < 5e3) low = middle;
      else high = middle;
    }
    expect(Math.abs(device!.firedAtS! - high)).toBeLessThan(1e-9);
    const before = course.wave.timesS.findIndex((time) => time >= high) - 1;
    expect(Math.max(...device!.currentA.subarray(0, before))).toBe(0);
  });

  it('then has its arc volts, and the electrode what is left (by hand)', () => {
    const volts = overTime(course, potentialFigure(course, 0));
    let checked = 0;
    course.wave.timesS.forEach((time, t) => {
      if (time <= device!.firedAtS!) return;
      const i = currentAt(wave, time);
      // 20 (i - j) = 30 + 0.05 j
      const j = (20 * i - 30) / 20.05;
      expect(Math.abs(device!.currentA[t]! - j)).toBeLessThan(1e-6 * 1e3);
      expect(Math.abs(volts[t]! - (30 + 0.05 * j))).toBeLessThan(1e-5 * 5e3);
      expect(Math.abs(device!.volts[t]! - volts[t]!)).toBeLessThan(1e-6 * 5e3);
      checked++;
    });
    expect(checked).toBeGreaterThan(100);
  });
});

describe('a gap', () => {
  const wave = wave8x20(2e3);

  it('fires later on a steep rise, by the table of its spark-over', () => {
    const sparkOver = [
      { slopeVPerS: 100, sparkOverV: { low: 190, high: 290 } },
      { slopeVPerS: 100e6, sparkOverV: { low: 400, high: 500 } },
      { slopeVPerS: 1e9, sparkOverV: { low: 600, high: 700 } },
    ];
    // 3 ohm under a double exponential that rises by some 1 kA/us: 3 kV/us, beyond the last point
    const steep: Wave = { kind: 'double-exponential', peakA: 1e3, factor: 1, frontS: 1e-6, tailS: 1e-3 };
    const course = stroke(lone(3), steep, 5e-6, [{ ...gap(1), sparkOver }]);
    const at = course.devices[0]!.firedAtS!;
    const mean = (3 * currentAt(steep, at)) / at;
    const level = 500 + 200 * Math.log10(mean / 100e6);
    expect(Math.abs((3 * currentAt(steep, at)) / level - 1)).toBeLessThan(0.01);
  });

  it('takes either sign, goes out when its current goes through zero, and fires again', () => {
    const swinging: Wave = { kind: 'damped-sine', peakA: 1e3, factor: 1, tauS: 1e-3, omegaPerS: 2 * Math.PI * 5e4 };
    const course = stroke(lone(2), swinging, 40e-6, [gap(600)]);
    const [{ currentA, volts }] = course.devices as [DeviceCourse['devices'][number]];
    // two whole turns: it fires in each half, the arc holds against the swing
    const signs = currentA.filter((current) => current !== 0).map(Math.sign);
    const changes = signs.filter((sign, i) => i > 0 && sign !== signs[i - 1]).length;
    expect(changes).toBe(3);
    expect(Math.max(...volts.map(Math.abs))).toBeLessThan(600 * 1.003);
    currentA.forEach((current, t) => {
      if (Math.abs(current) > 1)
        expect(Math.abs(volts[t]! - (Math.sign(current) * 30 + 0.05 * current))).toBeLessThan(1e-3);
    });
  });

  it('below its level changes nothing at all', () => {
    const network: SurgeNetwork = {
      nodeCount: 2,
      branches: [{ from: 0, to: 1, resistanceOhm: 0.01, inductanceH: 5e-6 }],
      mutualH: null,
      earth: { nodes: [0, 1], resistanceOhm: [10, 20] },
    };
    const run = surgeRun(modesOf(network), { node: 0, wave, channelH: null }, { untilS: 60e-6 });
    const quiet = deviceRun(run, [{ ...gap(1e6), to: 1 }, varistor(1e5)]);
    expect(quiet.devices.map(({ firedAtS }) => firedAtS)).toEqual([null, null]);
    expect(quiet.z).toBe(run.z);
    // one that fires leaves the one that does not alone, and all before it as it was
    const mixed = deviceRun(run, [gap(1e6), gap(5e3)]);
    expect(mixed.devices[0]!.firedAtS).toBe(null);
    const until = mixed.wave.timesS.findIndex((time) => time >= mixed.devices[1]!.firedAtS!);
    expect(until).toBeGreaterThan(10);
    const [own, same] = [overTime(mixed, potentialFigure(mixed, 1)), overTime(run, potentialFigure(run, 1))];
    let compared = 0;
    mixed.wave.timesS.subarray(0, until).forEach((time, t) => {
      const other = run.wave.timesS.indexOf(time);
      if (other < 0) return;
      expect(Math.abs(own[t]! - same[other]!)).toBeLessThan(1e-6 * 2e4);
      compared++;
    });
    expect(compared).toBeGreaterThan(10);
  });
});

/** 1 mA at its level, 20 % more for each factor of ten. */
function varistor(volts: number): Varistor {
  const points = [-3, -1, 1, 3, 5].map((power) => ({ currentA: 10 ** power, volts: volts * 1.2 ** (power + 3) }));
  return { kind: 'varistor', from: 0, to: null, points };
}

describe('a varistor across an electrode of 10 ohm', () => {
  const wave = wave8x20(3e3);
  const course = stroke(lone(10), wave, 60e-6, [varistor(300)]);
  const [device] = course.devices;

  it('follows its curve: volts and amps at every time are one of its points, and all currents add up', () => {
    const exponent = Math.log10(1.2);
    let checked = 0;
    course.wave.timesS.forEach((time, t) => {
      const [current, volts] = [device!.currentA[t]!, device!.volts[t]!];
      if (current < 1e-3) return;
      expect(Math.abs(volts / (300 * (current / 1e-3) ** exponent) - 1)).toBeLessThan(1e-6);
      expect(Math.abs(volts / 10 + current - currentAt(wave, time))).toBeLessThan(1e-6 * 3e3);
      checked++;
    });
    expect(checked).toBeGreaterThan(100);
    expect(Math.max(...device!.volts)).toBeGreaterThan(900);
  });
});

it('says what is wrong with a device', () => {
  const run = surgeRun(modesOf(lone(10)), { node: 0, wave: wave1x200(1e3), channelH: null }, { untilS: 1e-5 });
  expect(() => deviceRun(run, [{ ...gap(100), from: 3 }])).toThrow(new RangeError('no device from node 3 to null'));
  expect(() => deviceRun(run, [gap(20, 30)])).toThrow(new RangeError('a gap fires above its arc voltage'));
  expect(() => deviceRun(run, [gap(100, 30, 0)])).toThrow(RangeError);
  const falling = { ...varistor(100), points: [{ currentA: 1, volts: 100 }, { currentA: 2, volts: 90 }] }; // biome-ignore format: one curve
  expect(() => deviceRun(run, [falling])).toThrow(new RangeError('points of a curve rise in current and volts'));
});
