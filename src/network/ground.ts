import { siteIndex } from '../bonding/site-index.ts';
import { type ScaledSoil, scaledSolver } from '../electrodes/scaled-soil.ts';
import type { Cutting } from '../electrodes/segments.ts';
import { mostSegments, type SolvedBodies, type SolveOptions, type UnsolvedBodies } from '../electrodes/solve-bodies.ts';
import { aloneErrorShare, type EnclosingSoils, solvedResistance } from '../electrodes/solved-resistance.ts';
import type { Part, Site } from '../site/site.ts';
import { lazily } from '../units/lazily.ts';
import { once } from '../units/once.ts';
import { type AloneOhm, aloneOhm } from './alone-ohm.ts';
import { amongAll } from './among-all.ts';
import { isThere, type Side } from './certain.ts';
import { electrodeAt } from './electrode-at.ts';
import { enclosingSoils } from './enclosing-soils.ts';
import { type GroundSoil, groundSoil } from './ground-soil.ts';
import { type LeakingConductor, leakingConductors } from './leaking-conductors.ts';
import type { LeakingLine } from './leaking-line.ts';
import { type PlacedBody, placedMetal, wayOf } from './placed-bodies.ts';

/**
 * All bare metal in the soil of a site, solved together in the plain soils that enclose its soil: what each electrode has
 * alone, and what they feel of each other. What has no place is solved alone and felt by nobody. Every member is worked out
 * when it is first read: who asks what one rod has alone does not wait for the whole site.
 */
export interface Ground {
  readonly soil: GroundSoil | null;
  readonly images: EnclosingSoils | null;
  readonly alone: ReadonlyMap<string, AloneOhm>;
  /** One of `alone`, without the others. */
  readonly aloneOf: (electrode: string) => AloneOhm | undefined;
  readonly leaking: readonly LeakingConductor[];
  /** What is cut into pieces: long electrodes, and conductors with a place. */
  readonly lines: readonly LeakingLine[];
  /** Alone, of leaking conductors whose place is not known. */
  readonly aloneOfLeaking: ReadonlyMap<string, NonNullable<AloneOhm['ohm']>>;
  /** Index of what was solved together, by id of the electrode or `pieceId` of a line. */
  readonly indexOf: ReadonlyMap<string, number>;
  /** The electrode or conductor of each index. */
  readonly partAt: readonly string[];
  /** null: no soil known, nothing with a place, or refused. What is not there on a side has Infinity and is felt by nothing. */
  readonly together: {
    readonly low: SolvedBodies | null;
    readonly likely: SolvedBodies | null;
    readonly high: SolvedBodies | null;
  };
  /**
   * Estimate of how far figures lie above what ever finer cutting would give: of each alone, or of all together by what halving
   * the pieces costs, whichever is more; 0: nothing was solved.
   */
  readonly errorShare: number;
  /** What could not be solved together, and the part at which it failed. */
  readonly refused: { readonly reason: UnsolvedBodies['reason']; readonly at: string } | null;
}

export function groundOf(site: Site, soil: GroundSoil | null): Ground {
  const images = enclosingSoils(soil);
  const { parts } = siteIndex(site);
  const partOf = (id: string): Part | undefined => parts.get(id);
  const aloneOf = eachAlone(site, soil, images);
  const leaking = once(() => leakingConductors(site, partOf, images));
  const metal = once(() => placedMetal(site, leaking(), partOf, images));
  const solved = once(() => solvedTogether(metal().bodies, images));
  return lazily<Ground>({
    soil: () => soil,
    images: () => images,
    alone: () => new Map([...aloneOf].map(([id, work]) => [id, work()])),
    aloneOf: () => (id) => aloneOf.get(id)?.(),
    leaking,
    lines: () => metal().lines,
    aloneOfLeaking: () => aloneOfLeaking(leaking(), images),
    indexOf: () => new Map(metal().bodies.map(({ id }, index) => [id, index])),
    partAt: () => metal().bodies.map(({ part }) => part),
    together: () => solved().together,
    errorShare: () => solved().errorShare,
    refused: () => solved().refused,
  });
}

function eachAlone(site: Site, soil: GroundSoil | null, images: EnclosingSoils | null) {
  const typed = once(() => (soil === null || soil.condition === null ? null : enclosingSoils(groundSoil(site, null))));
  return new Map(
    site.electrodes
      .filter((e) => e.present !== 'no')
      .map((e) => [e.id, once(() => aloneOhm(electrodeAt(e, e.id), images, wayOf(e), typed()))] as const),
  );
}

function aloneOfLeaking(leaking: readonly LeakingConductor[], images: EnclosingSoils | null) {
  return new Map(
    leaking.flatMap(({ id, spans, lengthM, radiusM, depthM }) => {
      if (spans !== null) return [];
      const { ohm } = solvedResistance({ kind: 'wire', lengthM, radiusM, depthM }, images);
      return ohm === null ? [] : [[id, ohm] as const];
    }),
  );
}

/**
 * Rods in four or so pieces, long wires in more, stubs in two: what bodies feel of each other needs no finer cut, and among
 * many of them a coarser one does (forty-five: 0.2 % of the whole).
 */
function siteCutting(bodies: number): Cutting {
  const fineness = Math.min(1.2, 30 / bodies);
  return ({ from, to }, runsOfBody) => {
    const lengthM = Math.hypot(from[0] - to[0], from[1] - to[1], from[2] - to[2]);
    const pieces = 2 * Math.round(fineness * (runsOfBody === 1 ? 1 : 0.6) * Math.sqrt(lengthM));
    return Math.min(10, Math.max(2, pieces));
  };
}

/** Time goes with pieces times bodies: of many bodies fewer pieces are solved together, some seconds for each soil. */
const mostPiecesTimesBodies = 240_000;

function optionsOf(bodies: number): SolveOptions {
  const most = Math.min(mostSegments, Math.floor(mostPiecesTimesBodies / bodies));
  return { cutting: siteCutting(bodies), finerUpTo: 0, mostSegments: most };
}

/**
 * All in the soil of least resistivity, without what may not be there in the others: even metal that nothing is tied to
 * carries current along and lowers what the rest has.
 */
function solvedTogether(placed: readonly PlacedBody[], images: EnclosingSoils | null): Solved {
  const none = { low: null, likely: null, high: null };
  if (images === null || placed.length === 0) return { together: none, refused: null, errorShare: 0 };
  let refused: Ground['refused'] = null;
  const solvers = new Map<string, ReturnType<typeof scaledSolver>>();
  const solve = (soil: ScaledSoil | null, side: Side): SolvedBodies | null => {
    const there = placed.flatMap(({ certain }, index) => (isThere(certain, side) ? [index] : []));
    if (soil === null || there.length === 0) return null;
    const key = there.join();
    const bodies = there.map((index) => placed[index]!.body);
    const solver = solvers.get(key) ?? scaledSolver(bodies, optionsOf(bodies.length));
    solvers.set(key, solver);
    const solved = solver(soil);
    if (solved.ok) return amongAll(solved, there, placed.length);
    refused = { reason: solved.reason, at: placed[there[solved.body]!]!.part };
    return null;
  };
  const together = lazily<Ground['together']>({
    low: () => solve(images.low, 'low'),
    likely: () => solve(images.likely, 'likely'),
    high: () => solve(images.high, 'high'),
  });
  // both ask for all three sides
  const all = () => [together.likely, together.high, together.low];
  return lazily<Solved>({
    together: () => together,
    refused: () => {
      all();
      return refused;
    },
    errorShare: () => {
      const shown = all().find((solved) => solved !== null);
      return shown == null ? 0 : Math.max(aloneErrorShare, shown.togetherHalvingShare);
    },
  });
}

type Solved = Pick<Ground, 'together' | 'refused' | 'errorShare'>;
