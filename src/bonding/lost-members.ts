import type { EdgeChoice } from './bond-choice.ts';
import type { ContractedMetal } from './contracted-metal.ts';
import { type Loss, lossesFrom } from './cut-points.ts';
import { metalNet, piecesOf } from './metal-net.ts';
import type { Tie } from './tie.ts';

/** What each single failure takes off every root: node or edge → members, in order. */
export type LostMembers = ReadonlyMap<string, readonly string[]>;

/**
 * Members that lose every root when one node or edge fails. A part on which several things land is lost only when all of
 * its landings are that reached a root before.
 */
export function lostMembers(
  metal: ContractedMetal,
  roots: readonly string[],
  choice: EdgeChoice,
  counts: (tie: Tie) => boolean,
): LostMembers {
  const nodes = roots.flatMap((id) => metal.members.get(id) ?? []);
  const reaching = reachingNodes(metal, nodes, counts);
  const lost = new Map<string, readonly string[]>();
  for (const loss of lossesFrom(metal.graph, nodes, choice)) {
    const members = membersLost(metal, loss, reaching);
    if (members.length > 0) lost.set(`${loss.of} ${loss.at}`, members);
  }
  return lost;
}

/** How many nodes of each member that has more than one reach a root. */
function reachingNodes(
  metal: ContractedMetal,
  roots: readonly string[],
  counts: (tie: Tie) => boolean,
): ReadonlyMap<string, number> {
  const several = [...metal.members].filter(([, nodes]) => nodes.length > 1);
  if (several.length === 0) return new Map();
  const net = metalNet(metal.graph);
  const { of } = piecesOf(net, counts);
  const pieces = new Set(roots.map((id) => of[net.numberOf.get(id)!]!));
  const reaches = (node: string) => pieces.has(of[net.numberOf.get(node)!]!);
  return new Map(several.map(([id, nodes]) => [id, nodes.filter(reaches).length]));
}

function membersLost(metal: ContractedMetal, loss: Loss, reaching: ReadonlyMap<string, number>): readonly string[] {
  const counts = new Map<string, number>();
  for (const node of loss.lost()) {
    const id = metal.memberOf.get(node);
    if (id !== undefined) counts.set(id, (counts.get(id) ?? 0) + 1);
  }
  return [...counts]
    .filter(([id, count]) => count >= (reaching.get(id) ?? 1))
    .map(([id]) => id)
    .sort();
}
