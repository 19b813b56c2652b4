import type { MetalGraph } from '../bonding/build-graph.ts';
import type { Site, Support } from '../site/site.ts';
import type { StraightPiece } from '../surge/straight-piece.ts';
import { middle } from '../units/interval.ts';

/** Where lightning strikes: a node of the graph, and the point as an owner names it. */
export interface StrikePoint {
  readonly node: string;
  readonly text: string;
  /**
   * Left out: the lightning comes down upright on the node. `line`: the current comes in along a line, whose way outside nobody
   * knows. A piece: the channel of a strike near by, of which nothing enters; the node is where ways are counted from.
   */
  readonly channel?: 'line' | StraightPiece;
}

/** The top of the highest support that has one of metal, else the first antenna that is there; null: neither. */
export function defaultStrikePoint(
  { supports, antennas }: Site,
  { graph }: Pick<MetalGraph, 'graph'>,
): StrikePoint | null {
  const tops = supports
    .filter((s) => graph.hasNode(`${s.id}@top`))
    .sort((a, b) => topM(b) - topM(a) || (a.id < b.id ? -1 : 1));
  const [highest] = tops;
  if (highest !== undefined) return { node: `${highest.id}@top`, text: `${highest.id}@top` };
  const antenna = antennas.find((a) => graph.hasNode(a.id));
  return antenna === undefined ? null : { node: antenna.id, text: antenna.id };
}

/** Above the site's origin; of unknown height, lower than all that are known. */
function topM({ heightM, position }: Support): number {
  const height = heightM === null ? null : middle(heightM);
  return height === null ? Number.NEGATIVE_INFINITY : height + (position?.[2] ?? 0);
}
