import { reachedFrom } from './components.ts';
import type { ContractedMetal } from './contracted-metal.ts';
import type { Csr } from './csr.ts';
import { type Loss, lossesIn } from './cut-points.ts';

/** What each single failure takes off every root: node or edge → members, in order. */
export type LostMembers = ReadonlyMap<string, readonly string[]>;

/**
 * Members that lose every root when one node or edge fails; `bonds` are the rows of the metal with the bonds that count. A
 * part on which several things land is lost only when all of its landings are that reached a root before.
 */
export function lostMembers(metal: ContractedMetal, bonds: Csr, roots: readonly string[]): LostMembers {
  const starts = new Set(roots.flatMap((id) => numbersOf(metal, bonds, id)));
  const owners = bonds.ids.map((id) => metal.memberOf.get(id));
  const reaching = reachingNodes(metal, bonds, starts);
  const lost = new Map<string, readonly string[]>();
  for (const loss of lossesIn(bonds, [...starts])) {
    const members = membersLost(owners, loss, reaching);
    if (members.length > 0) lost.set(`${loss.of} ${loss.at}`, members);
  }
  return lost;
}

function numbersOf({ members }: ContractedMetal, { numberOf }: Csr, id: string): number[] {
  return (members.get(id) ?? []).map((node) => numberOf.get(node)!);
}

/** How many nodes of each member that has more than one reach a root. */
function reachingNodes(metal: ContractedMetal, bonds: Csr, starts: ReadonlySet<number>): ReadonlyMap<string, number> {
  const seen = new Uint8Array(bonds.ids.length);
  for (const start of starts) if (seen[start] === 0) reachedFrom(bonds, start, seen);
  const several = [...metal.members].filter(([, nodes]) => nodes.length > 1);
  return new Map(several.map(([id]) => [id, numbersOf(metal, bonds, id).filter((n) => seen[n] === 1).length]));
}

function membersLost(
  owners: readonly (string | undefined)[],
  loss: Loss,
  reaching: ReadonlyMap<string, number>,
): readonly string[] {
  const counts = new Map<string, number>();
  loss.forEachLost((node) => {
    const id = owners[node];
    if (id !== undefined) counts.set(id, (counts.get(id) ?? 0) + 1);
  });
  const lost: string[] = [];
  for (const [id, count] of counts) if (count >= (reaching.get(id) ?? 1)) lost.push(id);
  return lost.sort();
}
