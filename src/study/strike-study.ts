import { type NearbySide, type StrikeFacts, strikeFacts } from '../facts/strike-facts.ts';
import { pointOfText } from '../site/point-text.ts';
import type { Site } from '../site/site.ts';
import type { Speech } from '../words/say.ts';
import { speechOf } from './speech-of.ts';
import { strikeAssumptions, strikeRefused, strokeName } from './strike-assumptions.ts';
import type {
  StudyStrike,
  StudyStrikeConductor,
  StudyStrikeDifference,
  StudyStrikeJoint,
  StudyStrikeKit,
} from './study-strike.ts';

/** What the study of a strike is asked; null: what is usual. */
export interface StrikeStudyAsk {
  readonly state: string | null;
  readonly at: string | null;
  readonly currentA: number | null;
  readonly wave: string | null;
  readonly between: readonly (readonly [string, string])[];
  /** A strike near by instead of one into the site. */
  readonly nearby?: { readonly distanceM: number; readonly side: NearbySide | null; readonly text: string } | null;
  /** Field at which soil breaks down; null: it holds. */
  readonly ionisationVPerM?: number | null;
}

/** One strike as somebody asks for it, with everything that a page shows. */
export function strikeStudy(site: Site, ask: StrikeStudyAsk): StudyStrike {
  const { state, at, currentA, wave, between, nearby = null, ionisationVPerM = null } = ask;
  const point = at === null ? null : pointOfText(at);
  const named = between.flat().flatMap((text) => pointOfText(text) ?? []);
  const facts = strikeFacts(site, state, {
    at: point,
    wave,
    currentA,
    between,
    named,
    mostWires: null,
    detail: true,
    nearby,
    ionisationVPerM,
  });
  return strikeOfFacts(facts, site, at !== null || nearby !== null, speechOf(site));
}

/** The study of a strike that the facts hold; `isAsked`: somebody named where it strikes. */
export function strikeOfFacts(strike: StrikeFacts, site: Site, isAsked: boolean, speech: Speech): StudyStrike {
  const { stroke, at, solve } = strike;
  const { figures, waveName, source } = stroke;
  const refused = strikeRefused(strike, speech);
  const mostWayM = (lightMPerS * figures.frontS) / 10;
  const ways = strike.differences.map((d) => d.wayM).filter(Number.isFinite);
  return {
    at,
    stroke: {
      name: strokeName(strike, speech),
      wave: waveName,
      peakA: figures.peakA,
      frontS: figures.frontS,
      halfValueS: figures.tailS,
      steepestAPerS: figures.steepestAPerS,
      chargeC: figures.chargeC,
      actionA2s: figures.specificEnergyJPerOhm,
      source,
    },
    refused,
    peakV: Object.fromEntries(strike.peaks.map(({ part, peak }) => [part, Math.abs(peak.value)])),
    differences: strike.differences.map((d) => differenceRow(d, strike, mostWayM)),
    conductors: strike.conductors.map((c) => conductorRow(c, figures.peakA)),
    joints: strike.joints.map(jointRow).sort((a, b) => (b.energyJ ?? 0) - (a.energyJ ?? 0) || (a.id < b.id ? -1 : 1)),
    electrodes: strike.electrodes.map(({ part, peak }) => ({
      id: part,
      peakA: Math.abs(peak.value),
      shareOfPeak: Math.abs(peak.value) / figures.peakA,
    })),
    fired: strike.fired,
    mayFire: strike.guarded?.mayFire ?? [],
    cores: strike.cores.map(({ part, peak }) => ({
      line: part,
      at: lastOf(site, part),
      peakV: Math.abs(peak.value),
      firedV: strike.fired.length === 0 ? null : (strike.guarded?.corePeakV.get(part) ?? null),
    })),
    kits: strike.kits.map(kitRow),
    failures: strike.failures.map(({ lost, alike, separates, fires, rests, worst }) => ({
      lost,
      alike,
      separates,
      fires,
      rests,
      worst: worst === null ? null : { a: worst.pair.a, b: worst.pair.b, beforeV: worst.beforeV, afterV: worst.afterV },
    })),
    forces: strike.forces,
    sideFlashes: strike.sideFlashes,
    margins: strike.margins,
    earths: strike.earths,
    how: strike.how,
    ionisationVPerM: strike.ionisationVPerM,
    ionised: strike.ionised,
    traces: strike.traces,
    assumptions: strikeAssumptions(strike, site, isAsked, speech),
    solve: solve === null ? null : { ...solve, longestWayM: Math.max(0, ...ways), mostWayM },
  };
}

const lightMPerS = 299_792_458;

function differenceRow(
  { pair, peak, route, low, high, firedPeak, isBracketed, wayM }: StrikeFacts['differences'][number],
  { stroke, travel }: StrikeFacts,
  mostWayM: number,
): StudyStrikeDifference {
  const lumpedV = Math.abs(peak.value);
  const isLong = wayM > mostWayM;
  const chain = isLong && travel !== null ? travel(pair) : null;
  const peakV = chain === null ? lumpedV : Math.abs(chain.value);
  return {
    ...pair,
    route,
    peakV,
    rangeV: {
      value: peakV,
      low: Math.min(low ?? peakV, peakV),
      high: high === null ? (low === null ? peakV : null) : Math.max(high, peakV),
    },
    atS: (chain ?? peak).atS,
    voltPerKiloampere: (peakV / stroke.figures.peakA) * 1e3,
    voltPerKiloamperePerMicrosecond: (peakV / stroke.figures.steepestAPerS) * 1e9,
    firedV: firedPeak === null ? null : Math.abs(firedPeak.value),
    isBracketed,
    isBeyond: isLong && chain === null,
    lumpedV: chain === null ? null : lumpedV,
  };
}

function kitRow({ line, at, leadM, isTyped, current, volts }: StrikeFacts['kits'][number]): StudyStrikeKit {
  return { line, at, leadM, isTyped, peakA: Math.abs(current.value), peakV: Math.abs(volts.value) };
}

function conductorRow(
  { part, peak, actionA2s, heated, heat, levels }: StrikeFacts['conductors'][number],
  peakA: number,
): StudyStrikeConductor {
  return {
    id: part,
    peakA: Math.abs(peak.value),
    atS: peak.atS,
    shareOfPeak: Math.abs(peak.value) / peakA,
    actionA2s,
    sectionFrom: heated?.from ?? null,
    sectionM2: heated?.areaM2 ?? null,
    riseK: heat?.riseK ?? null,
    melts: heat?.melts ?? null,
    levels,
  };
}

function jointRow({ part, peak, resistanceOhm, actionA2s }: StrikeFacts['joints'][number]): StudyStrikeJoint {
  const peakA = Math.abs(peak.value);
  return { id: part, peakA, peakV: peakA * resistanceOhm, energyJ: actionA2s * resistanceOhm };
}

/** The box at the far end of a line. */
function lastOf(site: Site, line: string): string {
  const stops = site.lines.find(({ id }) => id === line)?.path ?? [];
  const last = [...stops].reverse().find((stop) => stop.is === 'part');
  return last?.is === 'part' ? (last.at.part ?? line) : line;
}
