import type { Electrode } from '../site/site.ts';

/**
 * The electrode that stands at a node of the graph. Of rods that nothing joins each is one by itself, with the figure that was stated (nobody
 * can have measured them as one); where it stands in the group is not known.
 */
export function electrodeAt(e: Electrode, node: string): Electrode {
  if (e.kind !== 'rods' || e.joined !== 'no') return e;
  const group = { members: null, layout: null, spacingM: null, radiusM: null, wire: null };
  return { ...e, ...group, id: node, kind: 'rod', position: null };
}
