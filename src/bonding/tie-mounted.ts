import type { Antenna, Arrester, Bar, Equipment, Metalwork, Part, PointRef } from '../site/site.ts';
import { addNode, addTie, type GraphBuilder, tieOf } from './graph-builder.ts';
import { resistanceOfKind } from './joint-resistance.ts';
import { bodyOf, nodeOfPoint } from './node-of-point.ts';
import { holdsByBolts, passesOn } from './passes-on.ts';
import { fieldPath } from './site-index.ts';
import { isMetal } from './support-metal.ts';

type Mounted = Antenna | Arrester | Bar | Equipment | Metalwork;

/** What hangs on what: bolted parts, antennas that touch their support, and `bonded` where no conductor says how. */
export function tieMounted(builder: GraphBuilder): void {
  const { site } = builder.index;
  const landedOn = conductorEnds(builder);
  const parts: readonly Part[] = [...site.bars, ...site.arresters, ...site.equipment, ...site.metalwork];
  for (const part of parts) if (part.present !== 'no') tiePart(builder, part, landedOn);
  for (const antenna of site.antennas) if (antenna.present !== 'no') tieAntenna(builder, antenna, landedOn);
  const rest: readonly Part[] = [...site.electrodes, ...site.supports];
  for (const part of rest) if (part.present !== 'no') tieStated(builder, part, landedOn);
}

interface LandedOn {
  /** Parts whose bond a conductor describes: null, or the field that decides whether that wire is there. */
  readonly described: ReadonlyMap<string, string | null>;
  /** Parts that any conductor lands on. */
  readonly all: ReadonlySet<string>;
}

/**
 * A conductor that lands on a part describes its bond, unless it only comes from what the part is to ground: the lead of a
 * mast down to a pipe is not what bonds the pipe.
 */
function conductorEnds({ index }: GraphBuilder): LandedOn {
  const described = new Map<string, string | null>();
  const all = new Set<string>();
  const isServed = (id: string | null) => served.has(index.parts.get(id ?? '')?.section ?? '');
  for (const c of index.site.conductors) {
    if (c.present === 'no') continue;
    const ends = [c.from, c.to, ...c.passes.map((p) => p.at)].map((p) => p.part);
    for (const part of ends) {
      all.add(part ?? '');
      const others = ends.filter((id) => id !== part);
      if (part === null || (index.parts.get(part)?.section === 'metalwork' && others.every(isServed))) continue;
      const isSure = c.present === 'yes' || described.get(part) === null;
      described.set(part, isSure ? null : fieldPath(c, 'present'));
    }
  }
  return { described, all };
}

/** What a lead comes from that grounds it. */
const served: ReadonlySet<string> = new Set(['supports', 'antennas', 'arresters']);

function tiePart(builder: GraphBuilder, part: Part, landedOn: LandedOn): void {
  const carrier = part.on?.part == null ? undefined : builder.index.parts.get(part.on.part);
  const bolts = carrier !== undefined && (part.section === 'arresters' || holdsByBolts(carrier));
  if (bolts && part.bonded !== 'no') bolt(builder, part as Mounted, part.on!);
  else tieStated(builder, part, landedOn);
}

/** Bolted to what it is on, with a joint of its own: `a1:entry`. */
function bolt(builder: GraphBuilder, part: Mounted, on: PointRef): void {
  const target = carrierNode(builder, part, on);
  if (target === null) return;
  const joint = addNode(builder, `${part.id}:${on.part}`, 'joint', `${part.id}:${on.part}`);
  const kind = 'joint' in part ? part.joint : null;
  const unknown = unknownIf(part.bonded === 'unknown', fieldPath(part, 'bonded'));
  addTie(
    builder,
    ownLanding(builder, part, joint),
    joint,
    tieOf('metal', joint, { resistanceOhm: { low: 0, high: 0 } }),
  );
  addTie(builder, joint, target, tieOf('metal', joint, { resistanceOhm: resistanceOfKind(kind), ...unknown }));
}

const unknownIf = (is: boolean, decidedBy: string) => (is ? { is: 'unknown' as const, decidedBy } : {});

/** The node of what carries a part; null where that is not of metal or not there. */
function carrierNode(builder: GraphBuilder, part: Part, on: PointRef): string | null {
  const carrier = on.part === null ? undefined : builder.index.parts.get(on.part);
  if (carrier?.section === 'supports' && isMetal(carrier) === 'no') return null;
  return nodeOfPoint(builder, on, part.id);
}

/** Where something lands on the mounted part itself. */
function ownLanding(builder: GraphBuilder, part: Part, lander: string): string {
  const point = { text: part.id, part: part.id, atM: null, mark: null, member: null };
  return nodeOfPoint(builder, point, lander) ?? bodyOf(builder, part);
}

/** Of an antenna, `touches_support` says whether its metal meets the support's. */
function tieAntenna(builder: GraphBuilder, antenna: Antenna, landedOn: LandedOn): void {
  const body = bodyOf(builder, antenna);
  const target = antenna.on === null ? null : carrierNode(builder, antenna, antenna.on);
  if (target !== null && antenna.touchesSupport !== 'no') {
    const unknown = unknownIf(antenna.touchesSupport === 'unknown', fieldPath(antenna, 'touches_support'));
    addTie(builder, body, target, tieOf('metal', antenna.id, { ...unknown, noticed: 'visible' }));
  }
  if (antenna.bonded !== null) tieStated(builder, antenna, landedOn);
}

/** `bonded` where no conductor lands: to what carries the part, else to the service's system, by something undescribed. */
function tieStated(builder: GraphBuilder, part: Part, landedOn: LandedOn): void {
  const carrier = part.on === null ? null : carrierNode(builder, part, part.on);
  // what carries a part is named: no wire is meant by that
  const described = carrier === null ? landedOn.described.get(part.id) : undefined;
  // of metal that no wire lands on nobody said anything
  const isOpen = carrier !== null || (part.section === 'metalwork' && !landedOn.all.has(part.id));
  const bonded = part.bonded ?? (isOpen ? 'unknown' : 'no');
  if (bonded === 'no' || (bonded === 'yes' && described === null)) return;
  const target = carrier ?? serviceNode(builder, part) ?? somewhere(builder, part);
  const decidedBy = bonded === 'unknown' ? fieldPath(part, 'bonded') : (described ?? null);
  const unknown = decidedBy === null ? {} : { is: 'unknown' as const, decidedBy };
  const more = { body: 'undescribed' as const, lengthM: null, ...unknown };
  addTie(builder, ownLanding(builder, part, `${part.id}:bonded`), target, tieOf('metal', part.id, more));
}

/** The part that the service is; null where that is not known, absent, or the part itself. */
export function serviceNode(builder: GraphBuilder, part: Part): string | null {
  const service = builder.index.parts.get(builder.index.site.header.service);
  if (service === undefined || service.id === part.id || service.present === 'no') return null;
  return passesOn(service) || service.section === 'supports' ? ownLanding(builder, service, part.id) : null;
}

/** Bonded, but nobody says to what. */
function somewhere(builder: GraphBuilder, part: Part): string {
  return addNode(builder, `unknown:${part.id}:bonded`, 'unknown', `unknown:${part.id}:bonded`);
}
