import type { Part } from '../site/site.ts';
import type { MetalGraph } from './build-graph.ts';
import { isMetal, isOnePiece } from './support-metal.ts';

/**
 * What stands in groups, by the id under which it stands, with its nodes: parts of metal; each point of a support that is not known to be one
 * piece (its base stands as the support); each rod of a group that nothing joins.
 */
export type Members = ReadonlyMap<string, readonly string[]>;

const noMembers: ReadonlySet<Part['section']> = new Set(['lines', 'conductors', 'joints'] as const);

export function membersOf(metal: MetalGraph): Members {
  const members = new Map<string, readonly string[]>();
  for (const part of metal.index.parts.values()) {
    if (part.present === 'no' || noMembers.has(part.section)) continue;
    for (const [id, nodes] of membersOfPart(metal, part)) members.set(id, nodes);
  }
  return new Map([...members].sort(([a], [b]) => (a < b ? -1 : 1)));
}

function membersOfPart(metal: MetalGraph, part: Part): readonly (readonly [string, readonly string[]])[] {
  const points = metal.landings.get(part.id) ?? [];
  if (part.section === 'supports') {
    if (isMetal(part) === 'no') return [];
    if (isOnePiece(part).is === 'yes') return [[part.id, points]];
    return points.map((node) => [node === `${part.id}@base` ? part.id : pointId(metal, part.id, node), [node]]);
  }
  const own = metal.graph.hasNode(part.id) ? [part.id] : [];
  if (part.section === 'electrodes') return [...own, ...points].map((node) => [node, [node]]);
  return own.length === 0 ? [] : [[part.id, [...own, ...points]]];
}

/** As the owner typed it; a point that nobody gave a height stands apart from the base. */
function pointId(metal: MetalGraph, support: string, node: string): string {
  if (node === support) return `${support}@unknown`;
  return metal.typed.get(node) ?? node;
}
