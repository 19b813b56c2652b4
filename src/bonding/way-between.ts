import type { PointRef, Site } from '../site/site.ts';
import { applyState } from './apply-state.ts';
import { type Asked, type AskedTrouble, askedNodes, namesIn } from './asked-nodes.ts';
import { type BestWay, bestWays } from './best-way.ts';
import { isBond, knownBonds, possibleBonds } from './bond-choice.ts';
import type { Way } from './bonding.ts';
import { buildGraph, type MetalGraph } from './build-graph.ts';
import { contractedMetal } from './contracted-metal.ts';
import { nodeCounter } from './count-separate.ts';
import { decidingFields } from './deciding-fields.ts';
import { type Members, membersOf } from './members.ts';
import { metalNet } from './metal-net.ts';
import { reaching } from './reached-parts.ts';
import { siteIndex } from './site-index.ts';
import { threeWay } from './three-way.ts';
import { wayOfEdges } from './way-of-edges.ts';
import { bestOf } from './ways-of-parts.ts';

/** What there is between two points of a site, by permanent metal. */
export interface Between {
  readonly from: string;
  readonly to: string;
  /** Both are the same piece of metal; there is no way to describe. */
  readonly same: boolean;
  readonly way: Way | null;
  /** With no way: paths of the fields that decide whether there is one; none: there is none whatever is unknown. */
  readonly decidedBy: readonly string[];
  readonly fromSide: Side;
  readonly toSide: Side;
}

/** What hangs together with one end. */
export interface Side {
  readonly parts: readonly string[];
  /** Conductors and parts of it that go on to where nobody has looked. */
  readonly untraced: readonly string[];
}

export type WayAnswer =
  | { readonly ok: true; readonly between: Between }
  | {
      readonly ok: false;
      readonly trouble: AskedTrouble;
      readonly point: PointRef;
      /** Everything that may be asked about by name. */
      readonly names: readonly string[];
    };

/**
 * The best way through permanent metal between two points of a site in one of its states (null: as typed), and how many separate
 * ways there are. Throws RangeError for a state that the site has not.
 */
export function wayBetween(site: Site, stateId: string | null, from: PointRef, to: PointRef): WayAnswer {
  const state = applyState(site, stateId);
  const metal = buildGraph(siteIndex(state.site), state.openings, [from, to]);
  const ends = [from, to].map((point) => ({ point, asked: askedNodes(metal, point) }));
  for (const { point, asked } of ends)
    if (asked.is !== 'found') return { ok: false, trouble: asked.is, point, names: namesIn(metal) };
  const [a, b] = ends.map(({ asked }) => nodesOf(asked)) as [readonly string[], readonly string[]];
  const members = membersOf(metal);
  const same = a.some((node) => b.includes(node));
  const best = same ? null : bestOf(a.map(bestWays(metal.graph, b, knownBonds(metal.graph))));
  const between: Between = {
    from: from.text,
    to: to.text,
    same,
    way: best === null ? null : wayOf(metal, members, [from, to], best, [a, b]),
    decidedBy: same || best !== null ? [] : deciding(metal, a, b),
    fromSide: sideOf(metal, members, a),
    toSide: sideOf(metal, members, b),
  };
  return { ok: true, between };
}

const nodesOf = (asked: Asked) => (asked.is === 'found' ? asked.nodes : []);

function wayOf(
  metal: MetalGraph,
  members: Members,
  [from, to]: readonly [PointRef, PointRef],
  best: BestWay,
  [a, b]: readonly [readonly string[], readonly string[]],
): Way {
  const separate = nodeCounter(contractedMetal(metal.index, metalNet(metal.graph), members))(a, b);
  return wayOfEdges(metal, from.text, to.text, best, separate);
}

function deciding(metal: MetalGraph, a: readonly string[], b: readonly string[]): readonly string[] {
  const ask = threeWay(metal.graph, b, possibleBonds(metal.graph));
  return decidingFields(
    metal,
    a.flatMap((node) => ask(node).decidedBy),
  );
}

function sideOf(metal: MetalGraph, members: Members, nodes: readonly string[]): Side {
  const isKnown = (tie: Parameters<typeof isBond>[0]) => tie.is === 'there' && isBond(tie);
  const places = metal.graph.filterNodes((node, { kind }) => kind === 'unknown' && node.startsWith('unknown:'));
  const all: Members = new Map([...members, ...places.map((node) => [node, [node]] as const)]);
  const reached = [...reaching(metalNet(metal.graph), all, [], isKnown, nodes)];
  return {
    parts: reached.filter((id) => members.has(id)),
    untraced: [...new Set(reached.filter((id) => !members.has(id)).map((id) => id.split(':')[1]!))].sort(),
  };
}
