import type { Part } from '../site/site.ts';
import { addTie, type GraphBuilder, tieOf } from './graph-builder.ts';
import { bodyOf } from './node-of-point.ts';
import { passesOn } from './passes-on.ts';
import { fieldPath } from './site-index.ts';
import { serviceNode } from './tie-mounted.ts';

/**
 * A pipe, bar or panel that is said to be bonded while its wires lead to no service: they come to it, or they are all that was
 * meant, and nobody can tell which. So a bond of its own to the service is unknown there. Called when every other tie is made.
 */
export function tieSaid(builder: GraphBuilder): void {
  const { metalwork, bars, equipment, header } = builder.index.site;
  const all: readonly Part[] = [...metalwork, ...bars, ...equipment];
  const isSaid = (p: Part) => p.bonded === 'yes' && p.on === null && p.present !== 'no' && p.id !== header.service;
  const said = all.filter((p) => isSaid(p) && passesOn(p));
  if (said.length === 0) return;
  const service = serviceNode(builder, said[0]!);
  if (service === null) return;
  const held = heldFrom(builder, service);
  for (const part of said) if (!held.has(part.id)) tiePerhaps(builder, part, service);
}

function tiePerhaps(builder: GraphBuilder, part: Part, service: string): void {
  const unknown = { is: 'unknown', decidedBy: fieldPath(part, 'bonded') } as const;
  addTie(
    builder,
    bodyOf(builder, part),
    service,
    tieOf('metal', part.id, { body: 'undescribed', lengthM: null, ...unknown }),
  );
}

/** Nodes that permanent metal holds to this one. */
function heldFrom({ graph }: GraphBuilder, from: string): ReadonlySet<string> {
  const held = new Set([from]);
  for (const node of held) {
    graph.forEachEdge(node, (_key, { kind, is }, a, b) => {
      if (is === 'there' && (kind === 'metal' || kind === 'feeder')) held.add(a === node ? b : a);
    });
  }
  return held;
}
