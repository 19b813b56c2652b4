import type { Conductor, JointUse, PointRef } from '../site/site.ts';
import type { Interval } from '../units/interval.ts';
import { addNode, addTie, type GraphBuilder, tieOf } from './graph-builder.ts';
import { type Meeting, meetingsOf } from './joint-id.ts';
import { jointReadings, jointResistance } from './joint-resistance.ts';
import { nodeOfPoint } from './node-of-point.ts';
import { conductorNoticed, spanFigures } from './span-figures.ts';
import type { Tie } from './tie.ts';
import { tapNode, tappedLengths } from './wire-taps.ts';

/** Every conductor with its joints: wire end, span, joint, contact, what it lands on. */
export function tieConductors(builder: GraphBuilder): void {
  const readings = jointReadings(builder.index.site);
  for (const c of builder.index.site.conductors) if (c.present !== 'no') tieConductor(builder, c, readings);
}

function tieConductor(builder: GraphBuilder, c: Conductor, readings: ReadonlyMap<string, Interval>): void {
  const { from, passes, splices, to } = meetingsOf(c);
  const land = (meeting: Meeting, mark: string) => landingOf(builder, c, meeting, mark, readings);
  const chain: { readonly arrive: string; readonly leave: string }[] = [];
  const start = land(from, 'from');
  chain.push({ arrive: start, leave: start });
  const taps = builder.taps.get(c.id) ?? [];
  for (const tap of taps) {
    const wire = addNode(builder, tapNode(tap), 'wire', c.id, { noticed: conductorNoticed(c) });
    chain.push({ arrive: wire, leave: wire });
  }
  passes.forEach((pass, i) => {
    const wire = addNode(builder, `${c.id}/pass${i + 1}`, 'wire', c.id, { noticed: conductorNoticed(c) });
    hang(builder, c, wire, land(pass, `pass${i + 1}`));
    chain.push({ arrive: wire, leave: wire });
  });
  splices.forEach((splice, i) => {
    chain.push(spliceOf(builder, c, splice, i, readings));
  });
  const end = land(to, 'to');
  chain.push({ arrive: end, leave: end });
  const lengthsM = tappedLengths(c, taps);
  layWire(builder, lengthsM === null ? c : { ...c, lengthsM }, chain, passes.length + taps.length > 0);
}

/** A clamp that a whole wire passes: it hangs on the wire, and losing it does not part the wire. */
function hang(builder: GraphBuilder, c: Conductor, wire: string, joint: string): void {
  addTie(builder, wire, joint, tieOf('metal', c.id, { resistanceOhm: { low: 0, high: 0 } }));
}

/** The spans, one after the other. The bends of the whole stand on the first. */
function layWire(
  builder: GraphBuilder,
  c: Conductor,
  chain: readonly { readonly arrive: string; readonly leave: string }[],
  branches: boolean,
): void {
  const figures = spanFigures(c, chain.length - 1, branches);
  const bendsDeg = c.bends.reduce((sum, b) => sum + (b.angleDeg?.high ?? 0), 0);
  const noticed = conductorNoticed(c);
  figures.forEach((figure, i) => {
    const more: Partial<Tie> = { ...figure, areaM2: c.wire?.areaM2 ?? null, bendsDeg: i === 0 ? bendsDeg : 0, noticed };
    addTie(builder, chain[i]!.leave, chain[i + 1]!.arrive, tieOf('metal', c.id, { body: 'span', span: i, ...more }));
  });
}

/** The node at which the wire ends: its joint, tied to what it lands on, or that itself where there is no joint. */
function landingOf(
  builder: GraphBuilder,
  c: Conductor,
  meeting: Meeting,
  mark: string,
  readings: ReadonlyMap<string, Interval>,
): string {
  const { joint, use } = meeting;
  const target = targetOf(builder, meeting, joint ?? c.id) ?? nowhere(builder, c, meeting.at, mark);
  if (joint === null || joint === target) return target;
  const node = jointNode(builder, joint, use);
  tieJoint(builder, joint, target, jointResistance(builder.index, readings, joint, use), use);
  return node;
}

/** A named clamp says what it is on; else the wire does. */
function targetOf(builder: GraphBuilder, { joint, at }: Meeting, lander: string): string | null {
  const named = joint === null ? undefined : builder.index.parts.get(joint);
  const on = named?.section === 'joints' ? (named.on ?? at) : at;
  const typed = at !== null && on?.part === at.part ? at : on;
  return typed === null ? null : nodeOfPoint(builder, typed, lander);
}

/** Where an end lands on nothing that is known to be there. */
function nowhere(builder: GraphBuilder, c: Conductor, at: PointRef | null, mark: string): string {
  const kind = at === null || at.part === null ? 'unknown' : 'wire';
  return addNode(builder, `unknown:${c.id}:${mark}`, kind, `unknown:${c.id}:${mark}`);
}

export function jointNode(
  builder: GraphBuilder,
  joint: string,
  use: Pick<JointUse, 'condition' | 'accessible'>,
): string {
  const named = builder.index.parts.get(joint);
  const own = named?.section === 'joints' ? named : null;
  if (use.condition === 'open' || own?.condition === 'open' || own?.present === 'no') builder.openJoints.add(joint);
  const accessible = own?.accessible ?? use.accessible;
  const noticed = accessible === 'yes' ? 'visible' : 'unknown';
  return addNode(builder, joint, 'joint', joint, { noticed });
}

/** The contact of a joint with what it is on: once for each pair, however many wires it holds. */
function tieJoint(
  builder: GraphBuilder,
  joint: string,
  target: string,
  resistanceOhm: Interval | null,
  use: Pick<JointUse, 'accessible'>,
): void {
  if (builder.graph.hasEdge(joint, target)) return;
  const noticed = use.accessible === 'yes' ? 'visible' : 'unknown';
  addTie(builder, joint, target, tieOf('metal', joint, { resistanceOhm, noticed }));
}

/** A splice stands in the wire itself: it is lost with all that goes through it. */
function spliceOf(
  builder: GraphBuilder,
  c: Conductor,
  { joint, use }: Meeting,
  i: number,
  readings: ReadonlyMap<string, Interval>,
): { readonly arrive: string; readonly leave: string } {
  const wire = addNode(builder, `${c.id}/splice${i + 1}`, 'wire', c.id);
  if (joint === null) return { arrive: wire, leave: wire };
  const node = jointNode(builder, joint, use);
  addTie(
    builder,
    node,
    wire,
    tieOf('metal', joint, { resistanceOhm: jointResistance(builder.index, readings, joint, use) }),
  );
  return { arrive: node, leave: wire };
}
