import type { Body } from '../electrodes/body.ts';
import { bodyOf } from '../electrodes/body-of.ts';
import { closedFormOf } from '../electrodes/closed-form-of.ts';
import { likelyFigures } from '../electrodes/electrode-resistance.ts';
import type { EnclosingSoils, Way } from '../electrodes/solved-resistance.ts';
import { positionsOf } from '../site/positions-of.ts';
import type { Electrode, Part, Site } from '../site/site.ts';
import type { Interval } from '../units/interval.ts';
import { byCertainty, type Certain } from './certain.ts';
import { cutElectrode } from './cut-electrodes.ts';
import { electrodeAt } from './electrode-at.ts';
import { electrodeShape } from './electrode-shape.ts';
import type { LeakingConductor } from './leaking-conductors.ts';
import { type LeakingLine, pieceId } from './leaking-line.ts';
import { liesAlong } from './lies-along.ts';

/** Metal at a known place in the soil that is solved as one potential. */
export interface PlacedBody {
  /** Of the electrode, or of a piece of it or of a conductor. */
  readonly id: string;
  readonly part: string;
  readonly body: Body;
  readonly certain: Certain;
}

export interface PlacedMetal {
  readonly bodies: readonly PlacedBody[];
  /** Long electrodes and buried conductors, cut. */
  readonly lines: readonly LeakingLine[];
}

/** All metal of a site in the soil whose place and figures are known: electrodes first, then the spans of conductors. */
export function placedMetal(
  site: Site,
  leaking: readonly LeakingConductor[],
  partOf: (id: string) => Part | undefined,
  soils: EnclosingSoils | null,
): PlacedMetal {
  const placeOf = positionsOf(site, partOf).of;
  const lines: LeakingLine[] = [];
  const bodies: PlacedBody[] = [];
  for (const e of site.electrodes.filter(({ present }) => present !== 'no')) {
    const body = placedBody(electrodeAt(e, e.id), placeOf(e.id));
    if (body === null) continue;
    const line = cutElectrode(e, body, wayOf(e), { site, partOf, soils });
    const certain = e.present === 'unknown' ? 'perhaps' : 'there';
    if (line === null) bodies.push({ id: e.id, part: e.id, body, certain });
    else bodies.push(...piecesOf(line));
    if (line !== null) lines.push(line);
  }
  for (const line of surestFirst(leaking)) {
    lines.push(line);
    // what lies on other metal touches the soil no more than that does
    const others = bodies.filter(({ certain }) => rank(certain) <= rank(line.certain)).flatMap((b) => b.body.runs);
    bodies.push(...piecesOf(line).filter(({ body }) => !liesAlong(body.runs, others)));
  }
  return { bodies, lines };
}

const rank = (certain: Certain): number => byCertainty.indexOf(certain);

function surestFirst(leaking: readonly LeakingConductor[]): readonly LeakingLine[] {
  const lines = leaking.flatMap(({ spans }) => spans ?? []);
  return byCertainty.flatMap((certain) => lines.filter((line) => line.certain === certain));
}

function piecesOf(line: LeakingLine): readonly PlacedBody[] {
  const { part, certain, pieces } = line;
  return pieces.map(({ body }, piece) => ({ id: pieceId(line, piece), part, body, certain }));
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

/** Of a buried wire whose points are all known. */
export function wayOf(e: Electrode): Way | null {
  const points = (e.route ?? []).map((p) => p.position);
  if (points.length < 2 || points.some((p) => p === null)) return null;
  return { route: points.map((p) => [p![0], p![1]] as const), closed: e.closed === 'yes' };
}
