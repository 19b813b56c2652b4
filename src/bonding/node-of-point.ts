import type { Conductor, Electrode, Metalwork, Part, PointRef, Support } from '../site/site.ts';
import { type Interval, isExact } from '../units/interval.ts';
import { addLanding, addNode, type GraphBuilder } from './graph-builder.ts';
import { passesOn } from './passes-on.ts';
import { conductorNoticed } from './span-figures.ts';
import { isMetal } from './support-metal.ts';
import type { NodeKind } from './tie.ts';
import { tapNode } from './wire-taps.ts';

/**
 * The node at which something meets a point of the site, made when it is first asked for; null for an absent or unknown
 * part. `lander` names what lands (a conductor, a line, a mounted part): where a bond does not go on through the part, each lander has a node of its own.
 */
export function nodeOfPoint(builder: GraphBuilder, point: PointRef, lander: string): string | null {
  if (point.part === null) return null;
  const guyed = builder.index.guys.get(point.part);
  if (guyed !== undefined) return guyNode(builder, guyed, point.part, point.mark ?? 'tower');
  const part = builder.index.parts.get(point.part);
  if (part === undefined || part.present === 'no') return null;
  if (part.section === 'supports') return supportNode(builder, part, point, lander);
  if (part.section === 'electrodes') return electrodeNode(builder, part, point);
  if (part.section === 'lines') return null;
  if (part.section === 'conductors') return wireNode(builder, part, point);
  if (part.section === 'joints') return addNode(builder, part.id, 'joint', part.id);
  return passesOn(part) ? bodyOf(builder, part) : landingNode(builder, part, lander);
}

/** A wire that lands on another meets it where the other was laid with a point for it. */
function wireNode(builder: GraphBuilder, wire: Conductor, point: PointRef): string | null {
  const isTapped = builder.taps.get(wire.id)?.some(({ text }) => text === point.text) === true;
  return isTapped ? addNode(builder, tapNode(point), 'wire', wire.id, { noticed: conductorNoticed(wire) }) : null;
}

/** The node that stands for the part itself. */
export function bodyOf(builder: GraphBuilder, part: Part): string {
  return addNode(builder, part.id, kindOf(part), part.id, { noticed: noticedOf(part) });
}

function kindOf({ section }: Part): NodeKind {
  const kinds: Partial<Record<Part['section'], NodeKind>> = {
    electrodes: 'electrode',
    supports: 'support',
    antennas: 'antenna',
    bars: 'bar',
    arresters: 'arrester',
    equipment: 'case',
    joints: 'joint',
    metalwork: 'metalwork',
  };
  return kinds[section] ?? 'unknown';
}

function noticedOf(part: Part) {
  if (part.section === 'electrodes') return 'buried' as const;
  if (part.section === 'metalwork') return part.buried === 'yes' ? ('buried' as const) : ('unknown' as const);
  return part.section === 'arresters' ? ('unknown' as const) : ('visible' as const);
}

/** What lands on a case or on metalwork: the lander's own point of it, and the part's own node beside. */
function landingNode(builder: GraphBuilder, part: Part, lander: string): string {
  bodyOf(builder, part);
  const kind = (part as Metalwork).section === 'metalwork' ? 'metalwork' : 'landing';
  return addLanding(builder, part.id, addNode(builder, `${part.id}/${lander}`, kind, part.id));
}

/** A rods group is one node; each rod is one where they are not joined, and a landing on no rod in particular another. */
function electrodeNode(builder: GraphBuilder, part: Electrode, point: PointRef): string {
  if (part.kind !== 'rods' || part.joined !== 'no') return bodyOf(builder, part);
  if (point.member === null) return addNode(builder, part.id, 'electrode', part.id, { noticed: 'buried' });
  const rod = `${part.id}.${point.member}`;
  return addLanding(builder, part.id, addNode(builder, rod, 'electrode', part.id, { noticed: 'buried' }));
}

function supportNode(builder: GraphBuilder, support: Support, point: PointRef, lander: string): string | null {
  if (isMetal(support) === 'no') {
    return addNode(builder, `${pointName(support, point)}/${lander}`, 'unknown', `unknown:${support.id}/${lander}`);
  }
  const id = pointName(support, point);
  const typed = point.member === null ? point.text : id;
  const before = builder.typed.get(id);
  if (before === undefined || typed < before) builder.typed.set(id, typed);
  return supportPoint(builder, support, id, heightOf(support, point));
}

/** `guy-1@tower`: above the turnbuckle; `guy-1@anchor`: below it. */
export function guyNode(builder: GraphBuilder, support: Support, guy: string, mark: string): string | null {
  return support.present === 'no' ? null : addNode(builder, `${guy}@${mark}`, 'guy', support.id);
}

/** A point of a support that is of metal, or may be. */
export function supportPoint(builder: GraphBuilder, support: Support, id: string, heightM: Interval | null): string {
  if (heightM !== null) builder.heights.set(id, heightM);
  const known = heightM !== null && isExact(heightM) ? heightM.low : null;
  return addLanding(
    builder,
    support.id,
    addNode(builder, id, 'support', support.id, { heightM: known, noticed: 'visible' }),
  );
}

/** Millimetre to which two heights are told apart. */
const apartM = 1e-3;

/** Same name for equal heights: base and top by their marks, other heights by millimetres. */
export function pointName(support: Support, point: PointRef): string {
  const height = heightOf(support, point);
  if (point.mark === 'base' || (height !== null && isExact(height) && Math.abs(height.low) < apartM)) {
    return `${support.id}@base`;
  }
  const top = support.heightM;
  const isTop = height !== null && top !== null && isExact(height) && isExact(top);
  if (point.mark === 'top' || (isTop && Math.abs(height.low - top.low) < apartM)) return `${support.id}@top`;
  if (height === null) return support.id;
  const low = height.low.toFixed(3);
  return isExact(height) ? `${support.id}@${low} m` : `${support.id}@${low}-${height.high.toFixed(3)} m`;
}

function heightOf(support: Support, point: PointRef): Interval | null {
  if (point.mark === 'base') return { low: 0, high: 0 };
  return point.mark === 'top' ? support.heightM : point.atM;
}
