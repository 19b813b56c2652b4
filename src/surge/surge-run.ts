import { checkSurgeSource } from './check-surge-network.ts';
import { stepWeights } from './mode-step.ts';
import { type SurgeDrive, surgeDrive } from './surge-drive.ts';
import { along, inductanceTimes, resistanceTimes, type SurgeModes } from './surge-modes.ts';
import type { SurgeSource } from './surge-network.ts';
import { type SampledWave, sampledWave, surgeTimes } from './surge-steps.ts';

export interface SurgeRun {
  readonly modes: SurgeModes;
  readonly source: SurgeSource;
  readonly drive: SurgeDrive;
  readonly wave: SampledWave;
  /** Modes and their slopes, time by time. */
  readonly z: Float64Array;
  readonly slope: Float64Array;
  /** Largest difference to the run with steps twice as long, over the largest state, in the measure of the energies. */
  readonly errorShare: number;
  /** What went in less what became heat and field, over what went in. */
  readonly energyShare: number;
}

export interface SurgeRunOptions {
  readonly untilS: number;
  /** Steps this many times finer than by default. */
  readonly fineness?: number;
}

/**
 * The modes over time from rest, for one current that is put in. Each step is exact for a source that is a parabola over it:
 * nothing rings, and no step is too long for a fast mode.
 */
export function surgeRun(modes: SurgeModes, source: SurgeSource, { untilS, fineness = 1 }: SurgeRunOptions): SurgeRun {
  checkSurgeSource(modes.network, source, untilS);
  const drive = surgeDrive(modes, source);
  const wave = sampledWave(source.wave, surgeTimes(source.wave, untilS, fineness));
  const { z, slope } = stepped(modes, drive, wave);
  const run = { modes, source, drive, wave, z, slope };
  return { ...run, errorShare: errorShareOf(run), energyShare: energyShareOf(run) };
}

function stepped({ count, stored, lost }: SurgeModes, drive: SurgeDrive, wave: SampledWave) {
  const steps = wave.timesS.length;
  const z = new Float64Array(steps * count);
  const slope = new Float64Array(steps * count);
  for (let k = 0; k < count; k++) {
    const [a, b] = [-drive.byCurrent[k]!, -drive.bySlope[k]!];
    const g = wave.currentA.map((i, t) => a * i + b * wave.slopeAPerS[t]!);
    const middle = wave.middleCurrentA.map((i, t) => a * i + b * wave.middleSlopeAPerS[t]!);
    if (stored[k] === 0) follow({ z, slope, wave, g, a, k, count, lost: lost[k]! });
    else decay({ z, slope, wave, g, middle, k, count, lost: lost[k]!, stored: stored[k]! });
  }
  return { z, slope };
}

interface OneMode {
  readonly z: Float64Array;
  readonly slope: Float64Array;
  readonly wave: SampledWave;
  readonly g: Float64Array;
  readonly k: number;
  readonly count: number;
  readonly lost: number;
}

/** A loop of resistances has its current at once; nothing in it feels a slope. */
function follow({ z, slope, wave, g, a, k, count, lost }: OneMode & { readonly a: number }): void {
  for (let t = 0; t < g.length; t++) {
    z[t * count + k] = g[t]! / lost;
    slope[t * count + k] = (a * wave.slopeAPerS[t]!) / lost;
  }
}

function decay({
  z,
  slope,
  wave,
  g,
  middle,
  k,
  count,
  lost,
  stored,
}: OneMode & { readonly middle: Float64Array; readonly stored: number }): void {
  let [at, lastStepS, weights] = [0, -1, stepWeights(0)];
  slope[k] = g[0]! / stored;
  for (let t = 1; t < g.length; t++) {
    const stepS = wave.timesS[t]! - wave.timesS[t - 1]!;
    if (Math.abs(stepS - lastStepS) > 1e-12 * stepS) weights = stepWeights((lost / stored) * stepS);
    lastStepS = stepS;
    const sum = weights.start * g[t - 1]! + weights.middle * middle[t - 1]! + weights.end * g[t]!;
    at = weights.kept * at + (stepS / stored) * sum;
    z[t * count + k] = at;
    slope[t * count + k] = (g[t]! - lost * at) / stored;
  }
}

type Stepped = Omit<SurgeRun, 'errorShare' | 'energyShare'>;

function errorShareOf({ modes, drive, wave, z, source }: Stepped): number {
  const half = sampledWave(
    source.wave,
    wave.timesS.filter((_, t) => t % 2 === 0),
  );
  const coarse = stepped(modes, drive, half).z;
  const { count, stored, lost } = modes;
  let [worst, largest] = [0, 0];
  for (let t = 0; t < half.timesS.length; t++) {
    let [apart, whole] = [0, 0];
    for (let k = 0; k < count; k++) {
      const weight = stored[k]! * 1e6 + lost[k]!;
      const [fine, rough] = [z[2 * t * count + k]!, coarse[t * count + k]!];
      apart += weight * (fine - rough) ** 2;
      whole += weight * fine ** 2;
    }
    [worst, largest] = [Math.max(worst, apart), Math.max(largest, whole)];
  }
  return largest === 0 ? 0 : Math.sqrt(worst / largest);
}

/** Energy in at the node against heat in all resistances, energy in the field, and what the channel takes; Simpson over pairs of steps. */
function energyShareOf({ modes, drive, wave, z, slope }: Stepped): number {
  const { count, stored, lost } = modes;
  const own = ownFigures(modes, drive);
  let [put, heat, channel, field, last] = [0, 0, 0, 0, 0];
  const at = (t: number) => {
    const [i, di] = [wave.currentA[t]!, wave.slopeAPerS[t]!];
    let [volt, hot, held, toChannel] = [
      own.ohm * i + own.henry * di,
      own.ohm * i * i,
      (own.ownHenry * i * i) / 2,
      own.channel * di * i,
    ];
    for (let k = 0; k < count; k++) {
      const [zk, dzk] = [z[t * count + k]!, slope[t * count + k]!];
      volt += drive.byCurrent[k]! * zk + own.selfByMode[k]! * dzk;
      hot += 2 * i * drive.byCurrent[k]! * zk + lost[k]! * zk * zk;
      held += i * own.selfByMode[k]! * zk + (stored[k]! * zk * zk) / 2;
      toChannel += own.channelByMode[k]! * zk * di;
    }
    return { power: volt * i, hot, held, toChannel };
  };
  for (let t = 0; t + 2 < wave.timesS.length; t += 2) {
    const [a, b, c] = [at(t), at(t + 1), at(t + 2)];
    const sixth = (wave.timesS[t + 2]! - wave.timesS[t]!) / 6;
    put += sixth * (a.power + 4 * b.power + c.power);
    heat += sixth * (a.hot + 4 * b.hot + c.hot);
    channel += sixth * (a.toChannel + 4 * b.toChannel + c.toChannel);
    if (t === 0) last = a.held;
    field = c.held - last;
  }
  return put === 0 ? 0 : Math.abs(put - heat - field - channel) / put;
}

/** The source's own way: its resistance and inductance, the channel's share of it, and what each mode adds. */
function ownFigures({ network, loops, count, shape }: SurgeModes, { ohm, henry, way }: SurgeDrive) {
  const elements = Array.from(way.keys()).filter((e) => way[e] !== 0);
  const signed = { elements: Int32Array.from(elements), signs: Int8Array.from(elements, (e) => way[e]!) };
  const metal = inductanceTimes(network, signed);
  const channelHenry = henry.map((value, e) => value - metal[e]!);
  const byMode = (volts: Float64Array) => {
    const sum = new Float64Array(count);
    loops.loops.forEach((loop, row) => {
      const volt = along(loop, volts);
      for (let k = 0; k < count; k++) sum[k] = sum[k]! + shape[row * count + k]! * volt;
    });
    return sum;
  };
  return {
    ohm: along(signed, ohm),
    henry: along(signed, henry),
    ownHenry: along(signed, metal),
    channel: along(signed, channelHenry),
    selfByMode: byMode(metal),
    channelByMode: byMode(channelHenry),
  };
}

/** A figure over time that is linear in the currents of the elements: by the source's current and slope, by the modes and theirs. */
export interface SurgeFigure {
  readonly current: number;
  readonly slope: number;
  readonly modes: Float64Array;
  readonly modeSlopes: Float64Array;
}

/** A sum of element currents, each times its weight; `slopes`: of their slopes instead. */
export function currentFigure(run: SurgeRun, weights: Float64Array, slopes = false): SurgeFigure {
  const { modes, drive } = run;
  const own = weights.reduce((sum, weight, e) => sum + weight * drive.way[e]!, 0);
  const byMode = ofLoops(modes, weights);
  const none = new Float64Array(modes.count);
  return slopes
    ? { current: 0, slope: own, modes: none, modeSlopes: byMode }
    : { current: own, slope: 0, modes: byMode, modeSlopes: none };
}

function ofLoops({ loops, count, shape }: SurgeModes, weights: Float64Array): Float64Array {
  const sum = new Float64Array(count);
  loops.loops.forEach((loop, row) => {
    const weight = along(loop, weights);
    if (weight === 0) return;
    for (let k = 0; k < count; k++) sum[k] = sum[k]! + shape[row * count + k]! * weight;
  });
  return sum;
}

/** Potential of a node against remote earth, volts. */
export function potentialFigure(run: SurgeRun, node: number): SurgeFigure {
  const { modes, drive } = run;
  const way = modes.loops.toEarth[node];
  if (way == null) throw new RangeError(`no node ${node}`);
  return {
    current: along(way, drive.ohm),
    slope: along(way, drive.henry),
    modes: ofLoops(modes, resistanceTimes(modes.network, way)),
    modeSlopes: ofLoops(modes, inductanceTimes(modes.network, way)),
  };
}

/** A figure at all times of the run. */
export function overTime({ wave, z, slope, modes }: SurgeRun, figure: SurgeFigure): Float64Array {
  const { count } = modes;
  return wave.timesS.map((_, t) => {
    let sum = figure.current * wave.currentA[t]! + figure.slope * wave.slopeAPerS[t]!;
    const row = t * count;
    for (let k = 0; k < count; k++) sum += figure.modes[k]! * z[row + k]! + figure.modeSlopes[k]! * slope[row + k]!;
    return sum;
  });
}
