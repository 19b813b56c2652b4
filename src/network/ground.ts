import { siteIndex } from '../bonding/site-index.ts';
import { conductorLength } from '../bonding/span-figures.ts';
import type { Body, Run } from '../electrodes/body.ts';
import { bodyOf } from '../electrodes/body-of.ts';
import { closedFormOf } from '../electrodes/closed-form-of.ts';
import { likelyFigures } from '../electrodes/electrode-resistance.ts';
import { type ScaledSoil, scaledSoils, scaledSolver } from '../electrodes/scaled-soil.ts';
import type { SolvedBodies } from '../electrodes/solve-bodies.ts';
import { type EnclosingSoils, solvedResistance, type Way } from '../electrodes/solved-resistance.ts';
import { positionsOf } from '../site/positions-of.ts';
import type { Electrode, Site } from '../site/site.ts';
import type { LayeredSoil } from '../soil/layered-soil.ts';
import type { Interval } from '../units/interval.ts';
import { type AloneOhm, aloneOhm } from './alone-ohm.ts';
import { amongAll } from './among-all.ts';
import { type Certain, isThere, type Side } from './certain.ts';
import { electrodeAt } from './electrode-at.ts';
import { electrodeShape } from './electrode-shape.ts';
import type { GroundSoil } from './ground-soil.ts';
import { type LeakingConductor, leakingConductors } from './leaking-conductors.ts';

/**
 * All bare metal in the soil of a site, solved together in the plain soils that enclose its soil: what each electrode has
 * alone, and what they feel of each other. What has no place is solved alone and felt by nobody.
 */
export interface Ground {
  readonly soil: GroundSoil | null;
  readonly images: EnclosingSoils | null;
  readonly alone: ReadonlyMap<string, AloneOhm>;
  readonly leaking: readonly LeakingConductor[];
  /** Alone, of leaking conductors whose place is not known. */
  readonly aloneOfLeaking: ReadonlyMap<string, NonNullable<AloneOhm['ohm']>>;
  /** Index of what was solved together, by id of the electrode or `pieceId` of a conductor. */
  readonly indexOf: ReadonlyMap<string, number>;
  /** null: no soil known, nothing with a place, or refused. What is not there on a side has Infinity and is felt by nothing. */
  readonly together: {
    readonly low: SolvedBodies | null;
    readonly likely: SolvedBodies | null;
    readonly high: SolvedBodies | null;
  };
  /** What could not be solved together, and the part at which it failed. */
  readonly refused: { readonly reason: string; readonly at: string } | null;
}

/** Id of one piece of a leaking conductor, in `Ground.indexOf`. */
export function pieceId(conductor: string, span: number, piece: number): string {
  return `${conductor}/soil${span + 1}.${piece + 1}`;
}

export function groundOf(site: Site, soil: GroundSoil | null): Ground {
  const images = soilsOf(soil);
  const { parts } = siteIndex(site);
  const there = site.electrodes.filter((e) => e.present !== 'no');
  const alone = new Map(there.map((e) => [e.id, aloneOhm(electrodeAt(e, e.id), images, wayOf(e))]));
  const leaking = leakingConductors(site, (id) => parts.get(id));
  const placeOf = positionsOf(site, (id) => parts.get(id)).of;
  const electrodes = there.flatMap((e): Placed[] => {
    const body = placedBody(electrodeAt(e, e.id), placeOf(e.id));
    const certain = e.present === 'unknown' ? 'perhaps' : 'there';
    return body === null ? [] : [{ id: e.id, part: e.id, body, certain }];
  });
  const pieces = leaking.flatMap(({ id, spans, certain }) =>
    (spans ?? []).flatMap((bodies, span) =>
      bodies.map((body, piece): Placed => ({ id: pieceId(id, span, piece), part: id, body, certain })),
    ),
  );
  const placed = [...electrodes, ...pieces];
  return {
    soil,
    images,
    alone,
    leaking,
    aloneOfLeaking: aloneOfLeaking(site, leaking, images),
    indexOf: new Map(placed.map(({ id }, index) => [id, index])),
    ...solvedTogether(placed, images),
  };
}

function aloneOfLeaking(site: Site, leaking: readonly LeakingConductor[], images: EnclosingSoils | null) {
  const lengths = new Map(site.conductors.map((c) => [c.id, conductorLength(c)]));
  return new Map(
    leaking.flatMap(({ id, spans, radiusM, depthM }) => {
      if (spans !== null) return [];
      const { ohm } = solvedResistance({ kind: 'wire', lengthM: lengths.get(id) ?? null, radiusM, depthM }, images);
      return ohm === null ? [] : [[id, ohm] as const];
    }),
  );
}

interface Placed {
  readonly id: string;
  readonly part: string;
  readonly body: Body;
  readonly certain: Certain;
}

function soilsOf(soil: GroundSoil | null): EnclosingSoils | null {
  if (soil === null) return null;
  const { low, likely, high } = soil.profile;
  const scaled = scaledSoils();
  const of = (plain: LayeredSoil | null): ScaledSoil | null => (plain === null ? null : scaled(plain));
  return { low: of(low), likely: of(likely), high: of(high) };
}

/** The body of an electrode at its likely figures and at its place; null where one of them is not known. */
function placedBody(e: Electrode, place: readonly [number, number, number] | null): Body | null {
  const shape = electrodeShape(e);
  if (shape === null) return null;
  const form = closedFormOf(shape);
  const isKnown = form.alsoMissing.length === 0 && !Object.values(form.figures).includes(null);
  const way = wayOf(e);
  if (!isKnown || (place === null && way === null)) return null;
  const figures = likelyFigures(form.figures as Readonly<Record<string, Interval>>);
  const made = bodyOf(shape, figures, {
    ...way,
    at: place === null ? [0, 0] : [place[0], place[1]],
  });
  return made.ok ? made.body : null;
}

/** Rods in some eight pieces, long wires in more, stubs in two: what bodies feel of each other needs no finer cut. */
function siteCutting({ from, to }: Run, runsOfBody: number): number {
  const lengthM = Math.hypot(from[0] - to[0], from[1] - to[1], from[2] - to[2]);
  const pieces = 2 * Math.round((runsOfBody === 1 ? 0.9 : 0.5) * Math.sqrt(lengthM));
  return Math.min(10, Math.max(2, pieces));
}
const siteErrorShare = 0.01;
const finerUpTo = 150;

/** Of a buried wire whose points are all known. */
function wayOf(e: Electrode): Way | null {
  const points = (e.route ?? []).map((p) => p.position);
  if (points.length < 2 || points.some((p) => p === null)) return null;
  return { route: points.map((p) => [p![0], p![1]] as const), closed: e.closed === 'yes' };
}

/**
 * All in the soil of least resistivity, without what may not be there in the others: even metal that nothing is tied to
 * carries current along and lowers what the rest has.
 */
function solvedTogether(
  placed: readonly Placed[],
  images: EnclosingSoils | null,
): Pick<Ground, 'together' | 'refused'> {
  const none = { low: null, likely: null, high: null };
  if (images === null || placed.length === 0) return { together: none, refused: null };
  let refused: Ground['refused'] = null;
  const solvers = new Map<string, ReturnType<typeof scaledSolver>>();
  const solve = (soil: ScaledSoil | null, side: Side): SolvedBodies | null => {
    const there = placed.flatMap(({ certain }, index) => (isThere(certain, side) ? [index] : []));
    if (soil === null || there.length === 0) return null;
    const key = there.join();
    const bodies = there.map((index) => placed[index]!.body);
    const solver =
      solvers.get(key) ?? scaledSolver(bodies, { cutting: siteCutting, errorShare: siteErrorShare, finerUpTo });
    solvers.set(key, solver);
    const solved = solver(soil);
    if (solved.ok) return amongAll(solved, there, placed.length);
    refused = { reason: solved.reason, at: placed[there[solved.body]!]!.part };
    return null;
  };
  const together = {
    low: solve(images.low, 'low'),
    likely: solve(images.likely, 'likely'),
    high: solve(images.high, 'high'),
  };
  return { together, refused };
}
