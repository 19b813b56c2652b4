import { type BestWay, bestWays } from './best-way.ts';
import { knownBonds, possibleBonds } from './bond-choice.ts';
import type { Way, WaysOfPart } from './bonding.ts';
import type { MetalGraph } from './build-graph.ts';
import type { Separate } from './count-separate.ts';
import { decidingFields } from './deciding-fields.ts';
import type { Members } from './members.ts';
import { threeWay } from './three-way.ts';
import { wayOfEdges } from './way-of-edges.ts';

/** The ways of these members to the nearest electrode and to the service. */
export function waysOfParts(
  metal: MetalGraph,
  members: Members,
  asked: readonly string[],
  electrodes: readonly string[],
  service: readonly string[],
  count: (from: string, to: string) => Separate,
): readonly WaysOfPart[] {
  const toElectrode = wayFinder(metal, members, electrodes, count);
  const toService = wayFinder(metal, members, service, count);
  return asked.map((part) => {
    const [electrode, home] = [toElectrode(part), toService(part)];
    return {
      part,
      toElectrode: electrode.way,
      toService: home.way,
      perhaps: { toElectrode: electrode.perhaps, toService: home.perhaps },
    };
  });
}

function wayFinder(
  metal: MetalGraph,
  members: Members,
  targets: readonly string[],
  count: (from: string, to: string) => Separate,
) {
  const { graph } = metal;
  const nodes = targets.flatMap((id) => members.get(id) ?? []);
  const targetOf = new Map(targets.flatMap((id) => (members.get(id) ?? []).map((node) => [node, id] as const)));
  const best = bestWays(graph, nodes, knownBonds(graph));
  const doubt = threeWay(graph, nodes, possibleBonds(graph));
  return (part: string): { readonly way: Way | null; readonly perhaps: readonly string[] } => {
    const own = members.get(part) ?? [];
    if (targetOf.has(own[0]!) && targets.includes(part)) return { way: null, perhaps: [] };
    const found = bestOf(own.map(best));
    if (found !== null) {
      const to = targetOf.get(found.nodes.at(-1)!)!;
      return { way: wayOfEdges(metal, part, to, found, count(part, to)), perhaps: [] };
    }
    const deciding = own.map(doubt).filter((answer) => answer.is === 'unknown');
    return {
      way: null,
      perhaps: decidingFields(
        metal,
        deciding.flatMap((answer) => answer.decidedBy),
      ),
    };
  };
}

/** The shortest of several; of equals the first by the nodes that it passes. */
export function bestOf(ways: readonly (BestWay | null)[]): BestWay | null {
  return ways
    .filter((way) => way !== null)
    .reduce<BestWay | null>((best, way) => (best === null || compare(way, best) < 0 ? way : best), null);
}

function compare(a: BestWay, b: BestWay): number {
  const [x, y] = [a.nodes.join(' '), b.nodes.join(' ')];
  return (
    a.unknownLengths - b.unknownLengths ||
    a.lengthAtLeastM - b.lengthAtLeastM ||
    a.edges.length - b.edges.length ||
    (x < y ? -1 : x > y ? 1 : 0)
  );
}
