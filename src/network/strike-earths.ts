import type { Electrode, Site } from '../site/site.ts';
import { effectiveLength, impulseCoefficient } from '../surge/effective-length.ts';
import { ionisedEffectiveLength } from '../surge/effective-reach.ts';
import { type Interval, middle } from '../units/interval.ts';
import type { Ground } from './ground.ts';
import { metalDistance } from './metal-distance.ts';
import { routeWay } from './site-ways.ts';
import { soilAt } from './soil-at.ts';
import type { StrikeNetwork } from './strike-network.ts';
import { wayLengthM } from './strike-ways.ts';

/** An electrode, or a bare wire in the soil, in a strike: how much of its length counts, and what it has to it. */
export interface StrikeEarth {
  readonly part: string;
  readonly peakA: number;
  /** Of the soil at its depth. */
  readonly resistivityOhmM: Interval;
  /** Farthest that its metal goes from where current enters it, metres; null: not known. */
  readonly armM: number | null;
  /** How much of such an arm counts for the front, without and with breakdown of the soil about it. */
  readonly effectiveM: Interval;
  readonly ionisedM: Interval;
  /** The arm goes on beyond: also with breakdown, perhaps (without it alone), not. */
  readonly isLonger: 'yes' | 'without breakdown' | 'no' | 'unknown';
  /** Alone, at direct current; null: not known. */
  readonly aloneOhm: { readonly value: number | null; readonly low: number; readonly high: number } | null;
  /** Peak potential over peak current by length and front, of the likely figure alone; null: not known. */
  readonly impulseOhm: number | null;
}

/** What each is asked with. */
export interface EarthsAsk {
  readonly frontS: number;
  /** Peak of the stroke. */
  readonly peakA: number;
  readonly intoSoil: readonly { readonly part: string; readonly peak: { readonly value: number } }[];
}

/**
 * Each electrode and bare wire that takes current from a strike, in the soil at its depth: effective length by two definitions
 * (without breakdown of the soil, with it), and its conventional impedance. The most current first.
 */
export function strikeEarths(
  site: Site,
  network: StrikeNetwork,
  ground: Ground,
  ask: EarthsAsk,
): readonly StrikeEarth[] {
  const { soil } = ground;
  if (soil === null || soil.profile.low === null || soil.profile.high === null) return [];
  const [lowAt, highAt] = [soilAt(site, soil.profile.low), soilAt(site, soil.profile.high)];
  const electrodes = new Map(site.electrodes.map((e) => [e.id, e]));
  const rows = ask.intoSoil.flatMap(({ part, peak }): StrikeEarth[] => {
    if (Math.abs(peak.value) < ask.peakA * leastShare) return [];
    const electrode = electrodes.get(part);
    const resistivityOhmM = { low: lowAt(part), high: highAt(part) };
    const aloneOhm = ground.aloneOf(part)?.ohm ?? null;
    const armM = electrode !== undefined && !isLine(electrode) ? null : armOf(network, part, wholeM(electrode));
    const front = (ohmM: number) => effectiveLength(ohmM, ask.frontS);
    const effectiveM = ordered(front(resistivityOhmM.low), front(resistivityOhmM.high));
    const broken = (ohmM: number) => ionisedEffectiveLength(ohmM, ask.frontS, Math.max(leastA, Math.abs(peak.value)));
    const ionisedM = ordered(broken(resistivityOhmM.low), broken(resistivityOhmM.high));
    const middleOhmM = Math.sqrt(resistivityOhmM.low * resistivityOhmM.high);
    const times = armM === null || armM === 0 ? null : impulseCoefficient(armM, middleOhmM, ask.frontS);
    const impulseOhm = aloneOhm?.value == null || times === null ? null : aloneOhm.value * times;
    const isLonger = longer(armM, effectiveM, ionisedM);
    return [
      {
        part,
        peakA: Math.abs(peak.value),
        resistivityOhmM,
        armM,
        effectiveM,
        ionisedM,
        isLonger,
        aloneOhm,
        impulseOhm,
      },
    ];
  });
  return rows.sort((a, b) => b.peakA - a.peakA || (a.part < b.part ? -1 : 1));
}

/** Less of the stroke is left out. Ours. */
const leastShare = 0.01;
/** Rods and wires: what the formulas are for. */
function isLine({ kind }: Electrode): boolean {
  return ['rod', 'rods', 'drilled rod', 'buried wire', 'radial', 'ring', 'pipe', 'strap on rock'].includes(kind);
}

/** One that is one piece to the network: as if fed at its end. */
function wholeM(electrode: Electrode | undefined): number | null {
  if (electrode === undefined) return null;
  const route = routeWay(electrode.route, electrode.closed === 'yes');
  return likely(electrode.lengthM) ?? (route.length < 2 ? null : wayLengthM(route));
}

function likely(figure: Interval | null): number | null {
  return figure === null ? null : middle(figure);
}

/** The formula with breakdown wants a current; below, it breaks nothing down. */
const leastA = 1000;

function longer(armM: number | null, effectiveM: Interval, ionisedM: Interval): StrikeEarth['isLonger'] {
  if (armM === null) return 'unknown';
  if (armM > Math.max(effectiveM.high, ionisedM.high)) return 'yes';
  return armM > effectiveM.high ? 'without breakdown' : 'no';
}

function ordered(a: number, b: number): Interval {
  return { low: Math.min(a, b), high: Math.max(a, b) };
}

/** Farthest metal of a part from the nearest point where another part meets it, metres; null: its length is not known. */
function armOf({ surge, branches }: StrikeNetwork, part: string, wholeM: number | null): number | null {
  const own = branches.flatMap((b, i) => (b.part === part ? [i] : []));
  if (own.length === 0) return wholeM;
  const isOwn = new Set(own);
  const nodes = new Set(own.flatMap((i) => [surge.branches[i]!.from, surge.branches[i]!.to]));
  const met = new Set(
    surge.branches.flatMap(({ from, to }, i) => (isOwn.has(i) ? [] : [from, to].filter((node) => nodes.has(node)))),
  );
  if (met.size === 0) return null;
  // one more node joins all the places where current enters
  const entry = surge.nodeCount;
  const metal = own.map((i) => ({ ...surge.branches[i]!, lengthM: branches[i]!.lengthM }));
  const entries = [...met].map((to) => ({ from: entry, to, lengthM: 0 }));
  const distanceM = metalDistance(surge.nodeCount + 1, [...metal, ...entries], entry);
  // the farthest point of a stretch lies between its ends where current comes to both
  const farthest = metal.map(({ from, to, lengthM }) => (distanceM[from]! + distanceM[to]! + lengthM) / 2);
  return Math.max(...farthest.filter(Number.isFinite)) + danglingM(metal, met, wholeM);
}

interface OwnMetal {
  readonly from: number;
  readonly to: number;
  readonly lengthM: number;
}

/** A piece leaks at its middle: what is beyond that at a free end is no branch. */
function danglingM(metal: readonly OwnMetal[], met: ReadonlySet<number>, wholeM: number | null): number {
  const count = new Map<number, number>();
  for (const node of metal.flatMap(({ from, to }) => [from, to])) count.set(node, (count.get(node) ?? 0) + 1);
  const free = [...count].filter(([node, times]) => times === 1 && !met.has(node)).length;
  const restM = (wholeM ?? 0) - metal.reduce((sum, { lengthM }) => sum + lengthM, 0);
  return free === 0 ? 0 : Math.max(0, restM) / free;
}
