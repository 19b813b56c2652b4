import type { MetalGraph } from './build-graph.ts';
import { fieldPath } from './site-index.ts';

/** Fields that these ties depend on, each once, in order. */
export function decidingFields(metal: MetalGraph, keys: readonly string[], also: readonly string[] = []): string[] {
  return [...new Set([...keys.flatMap((key) => fieldsOfTie(metal, key)), ...also])].sort();
}

/** What decides whether a tie is there: what is said of the tie itself, and whether its part and what it joins are there. None for a tie that is. */
export function fieldsOfTie({ graph, index }: MetalGraph, key: string): readonly string[] {
  const { is, decidedBy, part } = graph.getEdgeAttributes(key);
  if (is === 'there') return [];
  const owners = [part, ...graph.extremities(key).map((node) => graph.getNodeAttribute(node, 'part'))];
  const unsure = owners.flatMap((id) => {
    const owner = index.parts.get(id);
    return owner?.present === 'unknown' ? [fieldPath(owner, 'present')] : [];
  });
  return [...(decidedBy === null ? [] : [decidedBy]), ...unsure];
}
