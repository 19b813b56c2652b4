import { describe, expect, it } from 'vitest';
import { type CutCourse, cutter } from '../../src/surge/cut-run.ts';
import { peakOf } from '../../src/surge/peak-of.ts';
import type { SurgeCourse } from '../../src/surge/surge-course.ts';
import { currentFigure, overTime, potentialFigure } from '../../src/surge/surge-figure.ts';
import { surgeImpedance } from '../../src/surge/surge-impedance.ts';
import type { SurgeNetwork } from '../../src/surge/surge-network.ts';
import { surgeRun } from '../../src/surge/surge-run.ts';
import { wave0p25x100, wave1p2x50, wave1x200, wave10x350 } from '../../src/surge/wave-presets.ts';
import { random } from '../network/random.ts';
import { caseNetwork, caseWave } from './case-network.ts';
import { lightningCases } from './lightning-cases.ts';
import { modesOf } from './modes-of.ts';
import { randomNetwork } from './random-network.ts';

function without({ branches, mutualH, ...rest }: SurgeNetwork, cut: readonly number[]): SurgeNetwork {
  const count = branches.length;
  const isKept = (i: number) => !cut.includes(i);
  return {
    ...rest,
    branches: branches.filter((_, i) => isKept(i)),
    mutualH: mutualH?.filter((_, at) => isKept(at % count) && isKept(Math.floor(at / count))) ?? null,
  };
}

function potential(course: SurgeCourse, node: number, other: number | null = null): Float64Array {
  const volt = overTime(course, potentialFigure(course, node));
  if (other === null) return volt;
  const less = overTime(course, potentialFigure(course, other));
  return volt.map((value, t) => value - less[t]!);
}

function branchCurrent(course: SurgeCourse, branch: number): Float64Array {
  return overTime(course, currentFigure(course, new Float64Array(course.drive.way.length).fill(1, branch, branch + 1)));
}

function cutOf(run: Parameters<typeof cutter>[0], branches: readonly number[]): CutCourse {
  const cut = cutter(run)(branches);
  if (!cut.ok) throw new Error('cut off');
  return cut;
}

describe('ring of eight electrodes, the segment beside the struck corner cut', () => {
  const found = lightningCases.find(({ title }) => title.includes('ring'))!;
  const { network, nodes, names } = caseNetwork(found);
  const at = (node: string) => nodes.indexOf(node);
  const cut = names.indexOf('r8');
  const source = { node: at('D'), wave: caseWave(found), channelH: null };
  const whole = surgeRun(modesOf(network), source, { untilS: 100e-6 });
  const anew = surgeRun(modesOf(without(network, [cut])), source, { untilS: 100e-6 });
  const peaks = (course: SurgeCourse) =>
    [potential(course, at('D')), potential(course, at('N1'), at('N5'))].map(
      (volt) => peakOf(course.wave.timesS, volt).value,
    ) as [number, number];

  // a circuit simulator gave these figures for the ring whole and cut: 469.2 and 516.7, 67.7 and 151.8 kV; 4.6341 and 4.6361 ohm
  it('goes from 4.6341 to 4.6361 ohm', () => {
    expect(surgeImpedance(whole.modes, at('D'), 0).toFixed(4)).toBe('4.6341');
    expect(surgeImpedance(anew.modes, at('D'), 0).toFixed(4)).toBe('4.6361');
  });

  it.each([
    ['a network without it', anew],
    ['the volts over the cut', cutOf(whole, [cut])],
  ])('goes from 469.2 to 516.7 kV at the top and from 67.7 to 151.8 kV across, by %s', (_, course) => {
    expect(peaks(whole).map((volt) => (volt / 1e3).toFixed(1))).toEqual(['469.2', '67.7']);
    expect(peaks(course).map((volt) => (volt / 1e3).toFixed(1))).toEqual(['516.7', '151.8']);
  });
});

const waves = [wave10x350(100e3), wave1x200(50e3), wave0p25x100(25e3), wave1p2x50(30e3)] as const;

/**
 * Largest difference of any potential of a node that is left, and of any current of a branch: over the largest potential and over
 * the stroke's peak.
 */
function gap(cut: CutCourse, anew: SurgeCourse, cutBranches: readonly number[], peakA: number): number {
  const nodes = cut.modes.loops.toEarth.flatMap((way, node) => (way === null ? [] : [node]));
  const branches = cut.modes.network.branches.flatMap((_, i) => (cutBranches.includes(i) ? [] : [i]));
  const volts = nodes.map((node) => [potential(cut, node), potential(anew, node)] as const);
  const amps = branches.map((branch, i) => [branchCurrent(cut, branch), branchCurrent(anew, i)] as const);
  const apart = (pairs: readonly (readonly [Float64Array, Float64Array])[]) =>
    Math.max(
      ...pairs.map(([own, other]) => own.reduce((most, x, t) => Math.max(most, Math.abs(x - other[2 * t]!)), 0)),
    );
  const largest = Math.max(...volts.map(([, other]) => Math.max(...other.map(Math.abs))));
  return Math.max(apart(volts) / largest, apart(amps) / peakA);
}

describe('branches of random networks', () => {
  const next = random(21);
  const made = Array.from({ length: 60 }, (_, i) => {
    const soil = i % 3 === 0;
    const network = randomNetwork(next, { nodes: 3 + (i % 6), more: 4, electrodes: 3, coupled: i % 4 !== 0, soil });
    const source = { node: 0, wave: waves[i % 4]!, channelH: null };
    const run = surgeRun(modesOf(network), source, { untilS: 20e-6 });
    return { network, source, cutAt: cutter(run) };
  });

  it.each([
    ['one by one', (branch: number) => [branch]],
    ['two at a time', (branch: number, count: number) => [branch, (branch + 2) % count]],
  ])('%s are cut as in a network without them, and the error said holds within twice', (_, cutsAt) => {
    let compared = 0;
    for (const { network, source, cutAt } of made) {
      for (let branch = 0; branch < network.branches.length; branch++) {
        const cuts = cutsAt(branch, network.branches.length);
        const cut = cutAt(cuts);
        if (!cut.ok || cut.separated.length > 0) continue;
        const anew = surgeRun(modesOf(without(network, cuts)), source, { untilS: 20e-6 });
        const apart = gap(cut, anew, cuts, source.wave.peakA);
        expect(apart).toBeLessThan(1e-3);
        expect(apart).toBeLessThan(Math.max(2 * cut.errorShare, 1e-6));
        compared++;
      }
    }
    expect(compared).toBeGreaterThan(200);
  });
});

describe('a clamp that lets go', () => {
  const wire = (from: number, to: number) => ({ from, to, resistanceOhm: 5e-3, inductanceH: 4e-6 });
  // 0 struck; three wires meet at the clamp 1; 3 has its own electrode, 4 hangs on 3, 5 on the clamp alone
  const network: SurgeNetwork = {
    nodeCount: 6,
    branches: [wire(0, 1), wire(1, 2), wire(3, 1), wire(0, 3), wire(3, 4), wire(1, 5)],
    mutualH: null,
    earth: { nodes: [2, 3, 0], resistanceOhm: [10, 20, 50] },
  };
  const source = { node: 0, wave: wave1x200(50e3), channelH: null };
  const run = surgeRun(modesOf(network), source, { untilS: 10e-6 });

  it('loses all that it holds, and what hangs on it alone has no potential', () => {
    const cuts = [0, 1, 2, 5];
    const cut = cutOf(run, cuts);
    expect(cut.separated).toEqual([1, 5]);
    expect(() => potentialFigure(cut, 1)).toThrow('node 1 is not there or hangs free: its potential is not defined');
    const left: SurgeNetwork = {
      nodeCount: 3,
      branches: [wire(0, 1), wire(1, 2)],
      mutualH: null,
      earth: { nodes: [1, 0], resistanceOhm: [20, 50] },
    };
    const anew = surgeRun(modesOf(left), source, { untilS: 10e-6 });
    for (const [node, same] of [
      [0, 0],
      [3, 1],
      [4, 2],
    ] as const) {
      // biome-ignore format: pairs
      const [own, other] = [potential(cut, node), potential(anew, same)];
      const largest = Math.max(...other.map(Math.abs));
      const apart = own.map((volt, t) => Math.abs(volt - other[2 * t]!));
      expect(Math.max(...apart)).toBeLessThan(1e-4 * largest);
    }
    expect(Math.max(...potential(cut, 2).map(Math.abs))).toBeLessThan(1e-3);
  });

  it('may cut the struck node off: there is nothing to work out then', () => {
    const alone: SurgeNetwork = { ...network, earth: { nodes: [2, 3], resistanceOhm: [10, 20] } };
    const cutAt = cutter(surgeRun(modesOf(alone), source, { untilS: 10e-6 }));
    expect(cutAt([0, 3])).toEqual({ ok: false, separated: [0] });
    expect(() => cutAt([6])).toThrow(new RangeError('no branch 6 to cut'));
  });
});
