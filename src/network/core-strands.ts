import type { BondingRun } from '../bonding/bonding-of.ts';
import type { Line } from '../site/site.ts';

/** The current-carrying conductors of a line, taken as one, from stop to stop. */
export interface CoreStrand {
  readonly line: Line;
  /** Nodes of the graph, from the antenna or the street inwards; those of one stop that only a blocked core parts are one. */
  readonly stops: readonly CoreStop[];
  /** It begins in the street, where its potential is that of remote earth. */
  readonly isFromStreet: boolean;
}

export interface CoreStop {
  readonly nodes: readonly string[];
  /** Of the line's shield at this stop, by the same numbers. */
  readonly shields: readonly string[];
  /** The part that is met there; null: a plug, the street, nobody knows. */
  readonly part: string | null;
}

/** All strands that are there, each as far as it is not taken off. */
export function coreStrands({
  graph,
  site,
  metal,
}: Pick<BondingRun, 'graph' | 'site' | 'metal'>): readonly CoreStrand[] {
  const isBlocked = (part: string | null) => part !== null && metal.index.parts.get(part)?.kind === 'dc-blocked';
  const isOuter = (stop: CoreStop) =>
    stop.nodes.some((node) => graph.getNodeAttribute(node, 'kind') === 'street') ||
    metal.index.parts.get(stop.part ?? '')?.section === 'antennas';
  const spans = coreSpans({ graph });
  return site.lines
    .filter(({ present }) => present === 'yes')
    .flatMap((line) => {
      const stops = stopsOf(line, graph, isBlocked);
      if (stops.length < 2) return [];
      const [first, last] = [stops[0]!, stops.at(-1)!];
      const inward = !isOuter(first) && isOuter(last) ? [...stops].reverse() : stops;
      const whole = untilParted(inward, spans);
      const isFromStreet = whole[0]!.nodes.some((node) => graph.getNodeAttribute(node, 'kind') === 'street');
      return whole.length < 2 ? [] : [{ line, stops: whole, isFromStreet }];
    });
}

/** Pairs of nodes that a stretch of core joins for sure, both ways round. */
function coreSpans({ graph }: Pick<BondingRun, 'graph'>): ReadonlySet<string> {
  const pairs = new Set<string>();
  graph.forEachEdge((_key, { kind, is, body }, a, b) => {
    if (kind !== 'core' || is !== 'there' || body !== 'span') return;
    pairs.add(`${a} ${b}`).add(`${b} ${a}`);
  });
  return pairs;
}

function stopsOf(line: Line, graph: BondingRun['graph'], isBlocked: (part: string | null) => boolean) {
  return line.path.flatMap((stop, index): CoreStop[] => {
    if (stop.is === 'bend') return [];
    const node = `${line.id}.core.${index + 1}`;
    if (!graph.hasNode(node)) return [];
    const part = stop.is === 'part' || stop.is === 'bond' ? stop.at.part : null;
    const all = isBlocked(part) ? [node, `${node}+`, `${node}-`].filter((id) => graph.hasNode(id)) : [node];
    const shield = `${line.id}.shield.${index + 1}`;
    return [{ nodes: all, shields: [shield, `${shield}+`, `${shield}-`].filter((id) => graph.hasNode(id)), part }];
  });
}

function untilParted(stops: readonly CoreStop[], spans: ReadonlySet<string>): readonly CoreStop[] {
  const isJoined = (a: CoreStop, b: CoreStop) =>
    a.nodes.some((from) => b.nodes.some((to) => spans.has(`${from} ${to}`)));
  const end = stops.findIndex((stop, i) => i > 0 && !isJoined(stops[i - 1]!, stop));
  return end < 0 ? stops : stops.slice(0, end);
}
