import type { Part, PointRef } from '../site/site.ts';
import { isBond } from './bond-choice.ts';
import type { MetalGraph } from './build-graph.ts';
import { jointMeant } from './joint-id.ts';
import { pointName } from './node-of-point.ts';

/** `no such`: no part has the name; `absent`: typed as not there; `no metal`: there, but nothing of it can be bonded. */
export type Asked = { readonly is: 'found'; readonly nodes: readonly string[] } | { readonly is: AskedTrouble };
export type AskedTrouble = 'no such' | 'absent' | 'no metal' | 'above top';

/**
 * Where a point that somebody asks about lies in the graph: all nodes at which something may meet it. A part stands for each of its
 * points, a conductor for its ends. The graph must have been built with the point.
 */
export function askedNodes(metal: MetalGraph, point: PointRef): Asked {
  const { index } = metal;
  if (index.guys.has(point.part ?? '')) return foundIn(metal, [`${point.part}@${point.mark ?? 'tower'}`], 'no metal');
  if (point.text.includes(':')) return foundIn(metal, [jointMeant(index.site, point.text) ?? point.text], 'no such');
  const part = index.parts.get(point.part ?? '');
  if (part === undefined) return { is: 'no such' };
  if (part.present === 'no') return { is: 'absent' };
  if (isAbove(part, point)) return { is: 'above top' };
  return foundIn(metal, nodesOf(metal, part, point), point.member === null ? 'no metal' : 'no such');
}

function foundIn({ graph }: MetalGraph, ids: readonly string[], otherwise: AskedTrouble): Asked {
  const nodes = ids.filter((node) => graph.hasNode(node));
  return nodes.length === 0 ? { is: otherwise } : { is: 'found', nodes };
}

function isAbove(part: Part, { atM }: PointRef): boolean {
  return part.section === 'supports' && atM !== null && part.heightM !== null && atM.low > part.heightM.high;
}

function nodesOf({ graph, landings }: MetalGraph, part: Part, point: PointRef): readonly string[] {
  const points = landings.get(part.id) ?? [];
  if (part.section === 'supports') {
    return point.atM === null && point.mark === null ? points : [pointName(part, point)];
  }
  if (part.section === 'conductors' || part.section === 'lines') return endsOf(graph, part.id);
  if (point.member === null) return [part.id, ...points];
  const isOne = part.section === 'electrodes' && part.joined !== 'no';
  return isOne ? [part.id] : [`${part.id}.${point.member}`];
}

/** Nodes that the part's own bonds join. */
function endsOf(graph: MetalGraph['graph'], part: string): readonly string[] {
  const ends = new Set<string>();
  graph.forEachEdge((_key, tie, a, b) => {
    if (tie.part === part && isBond(tie)) ends.add(a).add(b);
  });
  return [...ends].sort();
}

/** Names of parts, guys and joints, in order. */
export function namesIn({ graph, index }: MetalGraph): readonly string[] {
  const joints = graph.filterNodes((_node, { kind }) => kind === 'joint');
  return [...new Set([...index.parts.keys(), ...index.guys.keys(), ...joints])].sort();
}
