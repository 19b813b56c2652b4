import type { PointRef } from '../site/site.ts';
import type { Interval } from '../units/interval.ts';
import { addTie, type BondingGraph, type GraphBuilder, graphBuilder, tieOf } from './graph-builder.ts';
import { nodeOfPoint } from './node-of-point.ts';
import type { Opening } from './opening.ts';
import type { SiteIndex } from './site-index.ts';
import { addBodies, joinLandings } from './tie-bodies.ts';
import { tieConductors } from './tie-conductors.ts';
import { tieLines } from './tie-lines.ts';
import { tieMounted } from './tie-mounted.ts';
import { tieSaid } from './tie-said.ts';
import { tieSupports } from './tie-supports.ts';

/** The metal of a site as a graph, with the points of each part and what its owner calls them. */
export interface MetalGraph {
  readonly graph: BondingGraph;
  readonly index: SiteIndex;
  /** Nodes of a part beside the one that has its id. */
  readonly landings: ReadonlyMap<string, readonly string[]>;
  /** Points of supports as typed. */
  readonly typed: ReadonlyMap<string, string>;
  /** Heights of points of supports, of those that are known, above the foot. */
  readonly heights: ReadonlyMap<string, Interval>;
}

/**
 * The site in one state as an undirected multigraph: a node for each thing that metal meets at, an edge for each tie that is there or may
 * be. Figures that nobody knows are null. Points of supports that somebody asks about (`also`) become nodes too. Linear time.
 */
export function buildGraph(index: SiteIndex, openings: readonly Opening[], also: readonly PointRef[] = []): MetalGraph {
  const builder = graphBuilder(index);
  addBodies(builder);
  tieConductors(builder);
  tieMounted(builder);
  tieLines(builder, openings);
  tieGaps(builder);
  for (const point of also) if (isOfSupport(index, point)) nodeOfPoint(builder, point, 'asked');
  tieSupports(builder);
  joinLandings(builder);
  tieSaid(builder);
  const { graph, landings, typed, heights } = builder;
  return { graph, index, landings, typed, heights };
}

/** A support alone stands for all its points. */
function isOfSupport({ parts }: SiteIndex, { part, atM, mark }: PointRef): boolean {
  return parts.get(part ?? '')?.section === 'supports' && (atM !== null || mark !== null);
}

/** Arresters typed `between` two points: a gap of their own. */
function tieGaps(builder: GraphBuilder): void {
  for (const arrester of builder.index.site.arresters) {
    if (arrester.present === 'no' || arrester.between === null) continue;
    const [a, b] = arrester.between.map((point) => nodeOfPoint(builder, point, arrester.id));
    if (a != null && b != null) addTie(builder, a, b, tieOf('gap', arrester.id, { body: 'span' }));
  }
}
