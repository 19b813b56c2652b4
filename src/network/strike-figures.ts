import type { BondingRun } from '../bonding/bonding-of.ts';
import type { PointRef } from '../site/site.ts';
import { type Peak, peakOf } from '../surge/peak-of.ts';
import { overTime, potentialFigure } from '../surge/surge-figure.ts';
import type { SurgeRun } from '../surge/surge-run.ts';
import { waveFigures } from '../surge/wave-figures.ts';
import { wave10x350 } from '../surge/wave-presets.ts';
import { lazily } from '../units/lazily.ts';
import { once } from '../units/once.ts';
import type { Ground } from './ground.ts';
import { type HeatedPart, heatedParts } from './heated-parts.ts';
import { metalDistance } from './metal-distance.ts';
import { type NoStrikePoint, strikePoint, usualWave } from './strike-asked.ts';
import { type StrikeCore, strikeCores } from './strike-cores.ts';
import { type StrikeFailure, strikeFailures } from './strike-failures.ts';
import { peakWithFired, type StrikeGuarded, strikeGuarded } from './strike-guarded.ts';
import { heatOf, heatOfAtLevels, type StrikeHeat } from './strike-heat.ts';
import { noHolds, type StrikeHolds, strikeHolds } from './strike-holds.ts';
import { type StrikeKit, strikeKits } from './strike-kits.ts';
import { noMeaning, type StrikeMeaning, strikeMeaning } from './strike-meaning.ts';
import type { NearbyAsk } from './strike-nearby.ts';
import { type StrikeRun, strikeOf } from './strike-of.ts';
import { remoteEarth, type StrikePair, strikePairs } from './strike-pairs.ts';
import { type StrikeFired, type StrikeProtected, strikeProtected } from './strike-protected.ts';
import { type StrikeCarried, strikeBetween, strikeCarried, strikeIntoSoil } from './strike-result.ts';
import { coupledSides, type KnownStrike, namedNodes, type SidesAsk, strikeOnSide } from './strike-sides.ts';
import { type StrikeTaken, strikeTaken } from './strike-taken.ts';
import { type StrikeTravel, strikeTravel } from './strike-travel.ts';
import { type StrikeStroke, strikeStroke } from './strike-wave.ts';

/** What a strike is asked; null: the usual. */
export interface StrikeAsk {
  readonly at: PointRef | null;
  readonly wave: string | null;
  readonly currentA: number | null;
  /** Pairs that are asked for, as typed, and the points that they name. */
  readonly between: readonly (readonly [string, string])[];
  readonly named: readonly PointRef[];
  /** A site of more conductors and lines than this is refused; null: none is. */
  readonly mostWires: number | null;
  /** Also in the soil at its least and its greatest resistivity, and what the first positive strokes would do. */
  readonly detail: boolean;
  /** A strike near by instead: nothing of it enters. */
  readonly nearby?: (NearbyAsk & { readonly text: string }) | null;
  /** Field at which soil breaks down, volts per metre; null, or left out: it holds. */
  readonly ionisationVPerM?: number | null;
}

export interface StrikeDifference {
  readonly pair: StrikePair;
  readonly peak: Peak;
  readonly route: 'straight' | null;
  /** Over the range of the soil; null: not worked out, or not known at that end. */
  readonly low: number | null;
  readonly high: number | null;
  /** With the protectors that conduct above their level; null: none does, or it is not worked out. */
  readonly firedPeak: Peak | null;
  /** The range holds wires known by length alone, taken as uncoupled and as coupled closely. */
  readonly isBracketed: boolean;
  /** Shortest way through metal between the two, or from the struck point, metres. */
  readonly wayM: number;
}

export interface StrikeConductor {
  readonly part: string;
  readonly peak: Peak;
  readonly actionA2s: number;
  /** What is heated of it; null: its metal or section is not known. */
  readonly heated: HeatedPart | null;
  readonly heat: StrikeHeat | null;
  readonly levels: readonly ({ readonly level: 'I' | 'II' | 'III' | 'IV' } & StrikeHeat)[];
}

/** One stroke of one site, by the owner's ids. */
export interface StrikeFigures extends StrikeMeaning, StrikeHolds {
  readonly at: string;
  readonly stroke: StrikeStroke;
  readonly refused: NoStrikePoint | { readonly reason: 'too large'; readonly parts: readonly string[] } | null;
  readonly peaks: readonly { readonly part: string; readonly peak: Peak }[];
  readonly differences: readonly StrikeDifference[];
  readonly conductors: readonly StrikeConductor[];
  readonly joints: readonly {
    readonly part: string;
    readonly peak: Peak;
    readonly resistanceOhm: number;
    readonly actionA2s: number;
  }[];
  readonly electrodes: readonly { readonly part: string; readonly peak: Peak }[];
  readonly cores: readonly StrikeCore[];
  readonly kits: readonly StrikeKit[];
  /** Empty without `detail`. */
  readonly fired: readonly StrikeFired[];
  readonly guarded: StrikeGuarded | null;
  /** Differences with travel time, where a way is too long without; null: not worked out. */
  readonly travel: StrikeTravel | null;
  /** One loss at a time; empty without `detail`. */
  readonly failures: readonly StrikeFailure[];
  readonly traces: {
    readonly timesS: readonly number[];
    readonly potentialsV: readonly { readonly part: string; readonly volt: readonly number[] }[];
  };
  readonly taken: StrikeTaken | null;
  readonly solve: {
    readonly branches: number;
    readonly loops: number;
    readonly steps: number;
    readonly errorShare: number;
    readonly energyShare: number;
  } | null;
}

/** All that is said of one stroke into one point of a site. */
export function strikeFigures(bonded: BondingRun, ground: Ground, ask: StrikeAsk): StrikeFigures {
  const stroke = strikeStroke(ask.wave ?? usualWave(bonded.site, ask.at), ask.currentA);
  const none = (refused: NonNullable<StrikeFigures['refused']>, at = ask.at?.text ?? ''): StrikeFigures => {
    return { ...nothing, at, stroke, refused };
  };
  if (ask.mostWires !== null && wiresOf(bonded) > ask.mostWires) return none({ reason: 'too large', parts: [] });
  const named = namedNodes(bonded, ask.named);
  const entered = strikePoint(bonded, ground, ask, { wave: stroke.wave, named });
  if ('reason' in entered) return none(entered, ask.nearby?.text);
  const asked: SidesAsk = { point: entered, wave: stroke.wave, named, ionisationVPerM: ask.ionisationVPerM ?? null };
  const likely = strikeOnSide(bonded, ground, 'likely', asked);
  if (!likely.ok) return none(likely, entered.text);
  const sides = ask.detail ? (['low', 'high'] as const) : [];
  const others = sides.flatMap((side) => {
    const run = strikeOnSide(bonded, ground, side, asked);
    return run.ok ? [run] : [];
  });
  return lazily<StrikeFigures>({
    at: () => entered.text,
    stroke: () => stroke,
    refused: () => null,
    ...worked(bonded, likely, others, { ask, stroke }),
    ...strikeHolds(bonded, likely),
    ...strikeMeaning(bonded, ground, likely, stroke),
  });
}

type Worked = Omit<StrikeFigures, 'at' | 'stroke' | 'refused' | keyof StrikeMeaning | keyof StrikeHolds>;

function worked(
  bonded: BondingRun,
  likely: KnownStrike,
  others: readonly KnownStrike[],
  { ask, stroke }: { readonly ask: StrikeAsk; readonly stroke: StrikeStroke },
): { readonly [Name in keyof Worked]: () => Worked[Name] } {
  const { run, network } = likely;
  const carried = once(() => strikeCarried(network, run));
  const guarded = once(() => (ask.detail ? strikeProtected(bonded, likely.site, likely, stroke.wave) : null));
  const slow = once(() => (ask.detail ? slowShares(likely) : new Map<string, number>()));
  const isJoint = (part: string) =>
    bonded.graph.hasNode(part) && bonded.graph.getNodeAttribute(part, 'kind') === 'joint';
  return {
    peaks: () => peaksOf(bonded, likely),
    differences: () => differencesOf(bonded, likely, others, { ask, guarded: guarded() }),
    conductors: () => {
      const heatedOf = heatedParts(bonded.site);
      const { index } = bonded.metal;
      return carried()
        .filter(({ part }) => !isJoint(part) && (index.parts.has(part) || index.guys.has(part)))
        .map(({ part, peak, actionA2s }) => {
          const heated = heatedOf(part);
          const share = slow().get(part);
          const levels = share === undefined ? [] : heatOfAtLevels(heated, share);
          return { part, peak, actionA2s, heated, heat: heatOf(heated, actionA2s), levels };
        });
    },
    joints: () => carried().filter(({ part }) => isJoint(part)),
    electrodes: () => strikeIntoSoil(network, run),
    cores: () => strikeCores(bonded.site, network, run),
    kits: () => strikeKits(bonded.site, network, run),
    fired: () => guarded()?.fired ?? [],
    travel: () => (ask.detail ? strikeTravel(likely.site, likely, stroke.wave) : null),
    guarded: () => (guarded() === null ? null : strikeGuarded(bonded.site, guarded()!)),
    failures: () =>
      ask.detail && wiresOf(bonded) <= mostWires
        ? failuresOf(bonded, likely, carried(), { stroke, guarded: guarded() })
        : [],
    traces: () => tracesOf(bonded, likely),
    taken: () => strikeTaken(bonded, network),
    solve: () => ({
      branches: network.branches.length,
      loops: run.modes.count,
      steps: run.wave.timesS.length - 1,
      errorShare: run.errorShare,
      energyShare: run.energyShare,
    }),
  };
}

/** Conductors and lines beyond which one loss at a time, and a strike that nobody asked for by name, take too long. */
export const mostWires = 250;

function wiresOf({ site }: BondingRun): number {
  return site.conductors.length + site.lines.length;
}

const nothing: Worked & StrikeMeaning & StrikeHolds = {
  ...noHolds,
  ...noMeaning,
  peaks: [],
  differences: [],
  conductors: [],
  joints: [],
  electrodes: [],
  cores: [],
  kits: [],
  fired: [],
  guarded: null,
  travel: null,
  failures: [],
  traces: { timesS: [], potentialsV: [] },
  taken: null,
  solve: null,
};

/** A range that a coupling makes wider by less is as wide as before. */
const leastWider = 0.99;

function differencesOf(
  bonded: BondingRun,
  likely: KnownStrike,
  others: readonly KnownStrike[],
  { ask, guarded }: { readonly ask: StrikeAsk; readonly guarded: StrikeProtected | null },
): readonly StrikeDifference[] {
  const partOf = (id: string) => bonded.metal.index.parts.get(id);
  const asked = ask.between.map(([a, b]): StrikePair => ({ a, b, why: 'asked', by: null }));
  const named = new Set(asked.map(({ a, b }) => [a, b].sort().join(' ')));
  const usual = strikePairs(bonded.site, partOf).filter(({ a, b }) => !named.has([a, b].sort().join(' ')));
  const coupled = others.length > 0 ? coupledSides([likely, ...others], likely.run.source.wave) : [];
  return [...asked, ...usual].flatMap((pair) => {
    const { nodeOf } = likely.places;
    if (nodeOf(pair.a) === null || (pair.b !== remoteEarth && nodeOf(pair.b) === null)) return [];
    const found = once(() => betweenIn(pair, likely)!);
    const range = once(() => rangeOf(Math.abs(found().peak.value), pair, others, coupled));
    return [
      // a rule asks for few of them, and of those for few figures
      lazily<StrikeDifference>({
        pair: () => pair,
        peak: () => found().peak,
        route: () => found().route,
        low: () => range().low,
        high: () => range().high,
        isBracketed: () => range().isBracketed,
        firedPeak: () => (guarded === null || guarded.fired.length === 0 ? null : peakWithFired(guarded, pair)),
        wayM: () => wayBetween(likely, pair),
      }),
    ];
  });
}

function betweenIn(pair: StrikePair, { network, run, places }: StrikeRun) {
  return strikeBetween(pair, network, run, places);
}

/** Over the ends of the soil's range, and with wires known by length alone taken as closely coupled. */
function rangeOf(
  likelyV: number,
  pair: StrikePair,
  others: readonly KnownStrike[],
  coupled: readonly StrikeRun[],
): Pick<StrikeDifference, 'low' | 'high' | 'isBracketed'> {
  const voltsIn = (one: StrikeRun) => {
    const at = betweenIn(pair, one);
    return at === null ? [] : [Math.abs(at.peak.value)];
  };
  const ends = others.flatMap(voltsIn);
  if (others.length === 0 || ends.length < others.length) return { low: null, high: null, isBracketed: false };
  const apart = [likelyV, ...ends];
  const all = [...apart, ...coupled.flatMap(voltsIn)];
  const isBracketed =
    Math.min(...all) < leastWider * Math.min(...apart) || leastWider * Math.max(...all) > Math.max(...apart);
  return { low: Math.min(...all), high: Math.max(...all), isBracketed };
}

/** Losing what carries less than this of the stroke changes nothing that counts; and so many losses are tried, the largest first. */
const leastShare = 0.01;
const mostFailures = 60;

function failuresOf(
  bonded: BondingRun,
  likely: KnownStrike,
  carried: readonly StrikeCarried[],
  { stroke, guarded }: { readonly stroke: StrikeStroke; readonly guarded: StrikeProtected | null },
) {
  const { index } = bonded.metal;
  const isLost = ({ part, peak }: StrikeCarried) =>
    index.parts.get(part)?.section !== 'supports' && Math.abs(peak.value) >= leastShare * stroke.figures.peakA;
  const groups = inSeries(carried.filter(isLost), (part) => index.parts.has(part)).slice(0, mostFailures);
  const pairs = strikePairs(bonded.site, (id) => index.parts.get(id)).filter(({ b }) => b !== remoteEarth);
  const watched = [...index.parts.values()].filter((p) => watchedSections.has(p.section)).map((p) => p.id);
  return strikeFailures(likely.site, likely, {
    wave: stroke.wave,
    groups,
    pairs,
    watched: watched.sort(),
    guarded,
  });
}

/** Parts of the same current to nine digits stand in one row of metal: losing any is losing all. The one with a name first. */
function inSeries(
  carried: readonly StrikeCarried[],
  isPart: (part: string) => boolean,
): readonly (readonly string[])[] {
  const rows = new Map<string, string[]>();
  const sizeA = ({ peak }: StrikeCarried) => Math.abs(peak.value);
  for (const one of [...carried].sort((a, b) => sizeA(b) - sizeA(a) || (a.part < b.part ? -1 : 1))) {
    const key = sizeA(one).toPrecision(9);
    rows.set(key, [...(rows.get(key) ?? []), one.part]);
  }
  const rank = (part: string) => (isPart(part) ? 0 : 1);
  return [...rows.values()].map((row) => row.sort((a, b) => rank(a) - rank(b) || (a < b ? -1 : 1)));
}

const watchedSections: ReadonlySet<string> = new Set(['supports', 'bars', 'arresters', 'equipment']);

function wayBetween({ network, places, run }: KnownStrike, { a, b }: StrikePair): number {
  const first = places.nodeOf(a);
  const second = b === remoteEarth ? (run.source.node ?? first) : places.nodeOf(b);
  if (first === null || second === null) return Number.POSITIVE_INFINITY;
  const { surge, branches } = network;
  const metal = surge.branches.map(({ from, to }, i) => ({ from, to, lengthM: branches[i]!.lengthM }));
  return metalDistance(surge.nodeCount, metal, first)[second]!;
}

/** Against remote earth: everything with a node that reaches the soil, and the struck point. */
function peaksOf({ metal }: BondingRun, { run, places, at, network }: KnownStrike) {
  const sections: ReadonlySet<string> = new Set([
    'supports',
    'bars',
    'arresters',
    'equipment',
    'antennas',
    'electrodes',
  ]);
  const parts = [...metal.index.parts.values()].filter(({ section }) => sections.has(section)).map(({ id }) => id);
  const rows = parts.sort().flatMap((part) => {
    const node = places.nodeOf(part);
    return node === null ? [] : [{ part, peak: potentialPeak(run, node) }];
  });
  const struck = network.at[network.nodes.indexOf(at.node)]!;
  if (at.channel !== undefined) return rows;
  return [...rows.filter(({ part }) => part !== at.text), { part: at.text, peak: potentialPeak(run, struck) }];
}

function potentialPeak(run: SurgeRun, node: number): Peak {
  return peakOf(run.wave.timesS, overTime(run, potentialFigure(run, node)));
}

/** Of the struck point, its support's foot, the service, the first bar and the first two boxes. */
function tracesOf({ site }: BondingRun, { run, places, at, network }: KnownStrike): StrikeFigures['traces'] {
  const isMet = (part: string) => places.nodeOf(part) !== null;
  const foot = at.text.split('@')[0]!;
  const wanted = [
    foot,
    site.header.service,
    ...site.bars.slice(0, 1).map((b) => b.id),
    ...site.equipment.map((e) => e.id),
  ];
  const parts = [...new Set(wanted)].filter(isMet).slice(0, mostTraces);
  const last = run.wave.timesS.findIndex((time) => time > 30 * run.wave.timesS[fewSteps]!);
  const kept = shown(last < 0 ? run.wave.timesS.length : last);
  const trace = (part: string, node: number) => {
    const volt = overTime(run, potentialFigure(run, node));
    return { part, volt: kept.map((t) => volt[t]!) };
  };
  const struck = network.at[network.nodes.indexOf(at.node)]!;
  return {
    timesS: kept.map((t) => run.wave.timesS[t]!),
    potentialsV: [
      ...(at.channel === undefined ? [trace(at.text, struck)] : []),
      ...parts.filter((p) => p !== at.text).map((part) => trace(part, places.nodeOf(part)!)),
    ],
  };
}

const mostTraces = 4;
/** A hundred steps are about the time constant of the front. */
const fewSteps = 100;
const mostPoints = 200;

function shown(count: number): readonly number[] {
  const every = Math.max(1, Math.ceil(count / mostPoints));
  return Array.from({ length: Math.ceil(count / every) }, (_, i) => i * every);
}

/** What share of the action integral of a first positive stroke each part takes. */
function slowShares({ site, at }: KnownStrike): ReadonlyMap<string, number> {
  const wave = wave10x350(1);
  const slow = strikeOf(site, at, wave);
  if (!slow.ok) return new Map();
  const whole = waveFigures(wave).specificEnergyJPerOhm;
  return new Map(strikeCarried(slow.network, slow.run).map(({ part, actionA2s }) => [part, actionA2s / whole]));
}
