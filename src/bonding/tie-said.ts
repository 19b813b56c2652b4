import type { Metalwork } from '../site/site.ts';
import { addTie, type GraphBuilder, tieOf } from './graph-builder.ts';
import { bodyOf } from './node-of-point.ts';
import { passesOn } from './passes-on.ts';
import { fieldPath } from './site-index.ts';
import { serviceNode } from './tie-mounted.ts';

/**
 * A pipe that is said to be bonded while its wires lead to no service: they come to it, or they are all that was meant, and
 * nobody can tell which. So a bond of its own to the service is unknown there. Called when every other tie is made.
 */
export function tieSaid(builder: GraphBuilder): void {
  const said = builder.index.site.metalwork.filter((m) => m.bonded === 'yes' && m.present !== 'no' && passesOn(m));
  if (said.length === 0) return;
  const service = serviceNode(builder, said[0]!);
  if (service === null) return;
  const held = heldFrom(builder, service);
  for (const pipe of said) if (!held.has(pipe.id)) tiePerhaps(builder, pipe, service);
}

function tiePerhaps(builder: GraphBuilder, pipe: Metalwork, service: string): void {
  const unknown = { is: 'unknown', decidedBy: fieldPath(pipe, 'bonded') } as const;
  addTie(
    builder,
    bodyOf(builder, pipe),
    service,
    tieOf('metal', pipe.id, { body: 'undescribed', lengthM: null, ...unknown }),
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
