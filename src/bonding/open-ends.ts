import type { MetalGraph } from './build-graph.ts';
import type { Grouping } from './groups.ts';
import { type MetalNet, piecesOf } from './metal-net.ts';
import type { Tie } from './tie.ts';

/** What may join a group to more than is known. */
export interface OpenEnds {
  /** Groups that may go on by a wire that nobody traced, or by a bond to nobody knows what: id → fields that decide. */
  readonly openEnds: ReadonlyMap<string, readonly string[]>;
  /** Groups with electrodes that ties which may be there would join to others. */
  readonly perhapsJoined: ReadonlySet<string>;
}

interface Piece {
  readonly fields: Set<string>;
  readonly groups: Set<string>;
}

/** Looks at the pieces of metal that there would be if every tie that may be there were. */
export function openEnds(metal: MetalGraph, net: MetalNet, grouping: Grouping): OpenEnds {
  const { of } = piecesOf(net, (tie) => isBond(tie));
  const pieces = new Map<number, Piece>();
  const withElectrodes = new Set(grouping.groups.filter((g) => g.electrodes.length > 0).map((g) => g.id));
  net.ids.forEach((node, n) => {
    const piece = pieces.get(of[n]!) ?? { fields: new Set<string>(), groups: new Set<string>() };
    pieces.set(of[n]!, piece);
    const group = grouping.groupOfNode(n);
    if (group !== null) piece.groups.add(group);
    if (metal.graph.getNodeAttribute(node, 'kind') === 'unknown') piece.fields.add(fieldOfEnd(node, metal));
  });
  const all = [...pieces.values()];
  const open = all.filter((p) => p.fields.size > 0).flatMap((p) => pairsOf(p));
  const joined = all.map((p) => [...p.groups].filter((g) => withElectrodes.has(g))).filter((list) => list.length > 1);
  return { openEnds: new Map(open), perhapsJoined: new Set(joined.flat()) };
}

const isBond = (tie: Tie) => tie.kind === 'metal' || tie.kind === 'feeder';

function pairsOf({ fields, groups }: Piece): (readonly [string, readonly string[]])[] {
  const sorted = [...fields].sort();
  return [...groups].map((group) => [group, sorted] as const);
}

/** `unknown:c1:to` is the end `to` of c1, `unknown:R1:bonded` what R1 is bonded to. */
function fieldOfEnd(node: string, { index }: MetalGraph): string {
  const [, id = '', field = ''] = node.split(':');
  const section = index.parts.get(id)?.section ?? 'conductors';
  return `${section}.${id}.${field}`;
}
