import { describe, expect, it } from 'vitest';
import type { SurgeDevice } from '../../src/surge/device.ts';
import { deviceRun } from '../../src/surge/device-run.ts';
import { peakOf } from '../../src/surge/peak-of.ts';
import { overTime, potentialFigure } from '../../src/surge/surge-figure.ts';
import type { SurgeNetwork } from '../../src/surge/surge-network.ts';
import { surgeRun } from '../../src/surge/surge-run.ts';
import type { Wave } from '../../src/surge/wave.ts';
import { wave1x200 } from '../../src/surge/wave-presets.ts';
import { modesOf } from '../surge/modes-of.ts';
import { findNgspice } from './ngspice.ts';
import { deviceVector, type NamedNetwork, ngspiceNetlist, nodeVector, type TimedDevice } from './ngspice-netlist.ts';

const ngspice = findNgspice('devices under a stroke against ngspice');

const gap = (from: number, to: number | null, volts: number): SurgeDevice => ({
  kind: 'gap',
  from,
  to,
  sparkOver: [{ slopeVPerS: 100, sparkOverV: { low: volts, high: volts } }],
  side: 'low',
  arcV: 40,
  slopeOhm: 0.1,
});

const varistor = (from: number, to: number | null, volts: number): SurgeDevice => ({
  kind: 'varistor',
  from,
  to,
  points: [
    { currentA: 1e-3, volts },
    { currentA: 1e4, volts: 3 * volts },
  ],
});

/** Linear between samples. */
function at(timesS: Float64Array, figures: Float64Array, timeS: number): number {
  const next = Math.max(
    1,
    timesS.findIndex((time) => time >= timeS),
  );
  const [a, b] = [timesS[next - 1]!, timesS[next]!];
  return figures[next - 1]! + ((figures[next]! - figures[next - 1]!) * (timeS - a)) / (b - a);
}

type Answer = ReadonlyMap<string, Float64Array>;

/** Gaps close one after the other, each when ngspice itself finds their volts at their level with those before closed. */
function answered(named: NamedNetwork, wave: Wave, untilS: number): Answer {
  const answer = ngspice!.run(ngspiceNetlist([named], wave, untilS, untilS / 20_000));
  const times = answer.get('time')!;
  const closings = named.devices!.map(({ device, closesAtS }) => {
    if (device.kind !== 'gap' || closesAtS !== null) return null;
    const from = answer.get(nodeVector(named, device.from))!;
    const to = device.to === null ? null : answer.get(nodeVector(named, device.to))!;
    const level = device.sparkOver[0]!.sparkOverV.low;
    const next = from.findIndex((volts, t) => volts - (to?.[t] ?? 0) >= level);
    if (next < 1) return null;
    const [a, b] = [next - 1, next].map((t) => from[t]! - (to?.[t] ?? 0)) as [number, number];
    return times[next - 1]! + ((level - a) / (b - a)) * (times[next]! - times[next - 1]!);
  });
  const first = Math.min(...closings.map((time) => time ?? Infinity));
  if (first === Infinity) return answer;
  const devices = named.devices!.map((timed, d) => (closings[d] === first ? { ...timed, closesAtS: first } : timed));
  return answered({ ...named, devices }, wave, untilS);
}

const wire = (from: number, to: number, microhenry: number) => ({
  from,
  to,
  resistanceOhm: 5e-3,
  inductanceH: microhenry * 1e-6,
});

/** A mast 0 on its electrode 1, a bond to a house 2 with an electrode, a box 3 on the house; some of the wires beside each other. */
const network: SurgeNetwork = {
  nodeCount: 4,
  branches: [wire(0, 1, 8), wire(1, 2, 15), wire(2, 3, 4), wire(3, 2, 6)],
  mutualH: Float64Array.of(8, 2, 0.5, 0, 2, 15, 1, 2, 0.5, 1, 4, 3, 0, 2, 3, 6).map((microhenry) => microhenry * 1e-6),
  earth: {
    nodes: [1, 2],
    resistanceOhm: [
      [25, 3],
      [3, 15],
    ],
  },
};

describe.skipIf(ngspice === null)(`against ngspice${ngspice === null ? ' (SKIPPED: no ngspice)' : ''}`, () => {
  const wave = wave1x200(10e3);
  const untilS = 10e-6;

  it.each([
    ['a gap to remote earth', [gap(2, null, 40e3)]],
    ['a gap between two nodes', [gap(0, 3, 60e3)]],
    ['a varistor to remote earth', [varistor(2, null, 10e3)]],
    ['a varistor between two nodes', [varistor(0, 3, 20e3)]],
    ['two gaps and a varistor', [gap(2, null, 20e3), gap(0, 3, 30e3), varistor(1, null, 4e3)]],
  ] as const)('%s: potentials and its current to 0.2 %%', (_, devices) => {
    const timed = devices.map((device): TimedDevice => ({ device, closesAtS: null }));
    const named = { name: 'a', network, into: 0, devices: timed };
    const answer = answered(named, wave, untilS);
    const theirTimes = answer.get('time')!;
    const run = surgeRun(modesOf(network), { node: 0, wave, channelH: null }, { untilS });
    const course = deviceRun(run, devices);
    for (const device of course.devices) expect(device.firedAtS).not.toBe(null);
    const pairs = [
      ...[0, 1, 2, 3].map(
        (node) => [overTime(course, potentialFigure(course, node)), nodeVector(named, node)] as const,
      ),
      ...course.devices.map(({ currentA }, d) => [currentA, deviceVector(named, d)] as const),
    ];
    for (const [ours, vector] of pairs) {
      const theirs = answer.get(vector)!;
      const peak = Math.abs(peakOf(theirTimes, theirs).value);
      let apart = 0;
      course.wave.timesS.forEach((time, t) => {
        // a jump may lie a little apart
        const isJump = course.devices.some(({ firedAtS }) => Math.abs(time - firedAtS!) < 3e-9);
        if (!isJump && time > 0) apart = Math.max(apart, Math.abs(ours[t]! - at(theirTimes, theirs, time)));
      });
      expect(apart / peak).toBeLessThan(2e-3);
    }
  });
});
