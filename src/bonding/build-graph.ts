import { addTie, type BondingGraph, type GraphBuilder, graphBuilder, tieOf } from './graph-builder.ts';
import { nodeOfPoint } from './node-of-point.ts';
import type { Opening } from './opening.ts';
import type { SiteIndex } from './site-index.ts';
import { addBodies, joinLandings } from './tie-bodies.ts';
import { tieConductors } from './tie-conductors.ts';
import { tieLines } from './tie-lines.ts';
import { tieMounted } from './tie-mounted.ts';
import { tieSupports } from './tie-supports.ts';

/** The metal of a site as a graph, with the points of each part and what its owner calls them. */
export interface MetalGraph {
  readonly graph: BondingGraph;
  readonly index: SiteIndex;
  /** Nodes of a part beside the one that has its id. */
  readonly landings: ReadonlyMap<string, readonly string[]>;
  /** Points of supports as typed. */
  readonly typed: ReadonlyMap<string, string>;
}

/**
 * The site in one state as an undirected multigraph: a node for each thing that metal meets at, an edge for each tie that is there or may
 * be. Figures that nobody knows are null. Linear time.
 */
export function buildGraph(index: SiteIndex, openings: readonly Opening[]): MetalGraph {
  const builder = graphBuilder(index);
  addBodies(builder);
  tieConductors(builder);
  tieMounted(builder);
  tieLines(builder, openings);
  tieGaps(builder);
  tieSupports(builder);
  joinLandings(builder);
  const { graph, landings, typed } = builder;
  return { graph, index, landings, typed };
}

/** Arresters typed `between` two points: a gap of their own. */
function tieGaps(builder: GraphBuilder): void {
  for (const arrester of builder.index.site.arresters) {
    if (arrester.present === 'no' || arrester.between === null) continue;
    const [a, b] = arrester.between.map((point) => nodeOfPoint(builder, point, arrester.id));
    if (a != null && b != null) addTie(builder, a, b, tieOf('gap', arrester.id, { body: 'span' }));
  }
}
