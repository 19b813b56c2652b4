import { MultiUndirectedGraph } from 'graphology';
import type { Part } from '../site/site.ts';
import type { Interval } from '../units/interval.ts';
import type { SiteIndex } from './site-index.ts';
import type { NodeFacts, NodeKind, Tie, TieKind } from './tie.ts';
import { type WireTaps, wireTaps } from './wire-taps.ts';

export type BondingGraph = MultiUndirectedGraph<NodeFacts, Tie>;

/** The graph while it is built: parts that are absent get no node, what does not conduct gets no tie. */
export interface GraphBuilder {
  readonly index: SiteIndex;
  readonly graph: BondingGraph;
  /** Nodes at which things land on a part that has more than one: points of a support, landings on a case or on metalwork. */
  readonly landings: Map<string, string[]>;
  /** Joints that do not conduct. */
  readonly openJoints: Set<string>;
  /** Heights of points of supports that are ranges or figures; and the points as the owner types them. */
  readonly heights: Map<string, Interval>;
  readonly typed: Map<string, string>;
  readonly taps: WireTaps;
}

export function graphBuilder(index: SiteIndex): GraphBuilder {
  const graph: BondingGraph = new MultiUndirectedGraph<NodeFacts, Tie>();
  const taps = wireTaps(index.site);
  return { index, graph, landings: new Map(), openJoints: new Set(), heights: new Map(), typed: new Map(), taps };
}

/** Adds the node if it is not there yet. */
export function addNode(
  { graph }: GraphBuilder,
  id: string,
  kind: NodeKind,
  part: string,
  more: Partial<NodeFacts> = {},
): string {
  if (!graph.hasNode(id)) graph.addNode(id, { kind, part, heightM: null, noticed: 'unknown', ...more });
  return id;
}

/** Nodes of a part beyond its first, in the order in which they were asked for. */
export function addLanding(builder: GraphBuilder, part: string, node: string): string {
  const held = builder.landings.get(part);
  if (held === undefined) builder.landings.set(part, [node]);
  else if (!held.includes(node)) held.push(node);
  return node;
}

const noLength = { low: 0, high: 0 };

/** A tie that is there, of no length, unless `more` says otherwise. */
export function tieOf(kind: TieKind, part: string, more: Partial<Tie> = {}): Tie {
  return {
    kind,
    body: 'contact',
    is: 'there',
    decidedBy: null,
    part,
    lengthM: noLength,
    resistanceOhm: null,
    inductanceH: null,
    areaM2: null,
    bendsDeg: 0,
    noticed: 'unknown',
    ...more,
  };
}

/**
 * Joins two nodes. Nothing is added where the part or a node's part is open or absent; where one of them is perhaps not there, the tie is unknown.
 * The key names part, kind and ends, so it does not depend on the order of building.
 */
export function addTie(builder: GraphBuilder, a: string, b: string, tie: Tie): void {
  const { graph, openJoints } = builder;
  if (a === b || openJoints.has(a) || openJoints.has(b)) return;
  const parts = [tie.part, graph.getNodeAttribute(a, 'part'), graph.getNodeAttribute(b, 'part')].map((id) =>
    builder.index.parts.get(id),
  );
  if (parts.some((p) => p !== undefined && (p.present === 'no' || conductsNot(p)))) return;
  const unsure = parts.find((p) => p?.present === 'unknown');
  const known: Tie =
    unsure === undefined || tie.is === 'unknown'
      ? tie
      : { ...tie, is: 'unknown', decidedBy: `${unsure.section}.${unsure.id}.present` };
  const [first, last] = a < b ? [a, b] : [b, a];
  graph.addUndirectedEdgeWithKey(freeKey(graph, `${tie.part}|${tie.kind}|${first}|${last}`), a, b, known);
}

function conductsNot(part: Part): boolean {
  return part.condition === 'open';
}

function freeKey(graph: BondingGraph, key: string): string {
  if (!graph.hasEdge(key)) return key;
  for (let n = 2; ; n++) if (!graph.hasEdge(`${key}|${n}`)) return `${key}|${n}`;
}
