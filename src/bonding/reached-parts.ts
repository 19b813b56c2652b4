import { isBond } from './bond-choice.ts';
import type { Bonding } from './bonding.ts';
import type { Members } from './members.ts';
import { type MetalNet, piecesOf } from './metal-net.ts';
import type { Tie } from './tie.ts';

const isThere = (tie: Tie) => tie.is === 'there';

/** Which members reach the service, when only bonds count, when shields or cords do too, and when every unknown tie is there. */
export function serviceReach(net: MetalNet, members: Members, service: readonly string[]): Bonding['serviceBy'] {
  const from = (counts: (tie: Tie) => boolean) => reaching(net, members, service, counts);
  const alsoBy = (kind: Tie['kind']) => (tie: Tie) =>
    isThere(tie) && (isBond(tie) || tie.kind === kind || tie.kind === 'case');
  return {
    bonds: from((tie) => isThere(tie) && isBond(tie)),
    bondsAndShields: from(alsoBy('shield')),
    bondsAndCords: from(alsoBy('cord')),
    perhaps: from(isBond),
  };
}

/** Which members reach an electrode by bonds; what leads to where nobody has looked perhaps does. */
export function earthReach(net: MetalNet, members: Members, electrodes: readonly string[]): Bonding['earthBy'] {
  const bonds = reaching(net, members, electrodes, (tie) => isThere(tie) && isBond(tie));
  const open = net.ids.filter((id) => id.startsWith('unknown:'));
  return { bonds, perhaps: reaching(net, members, electrodes, isBond, open) };
}

/** Members of which any node hangs together with a target's. */
export function reaching(
  net: MetalNet,
  members: Members,
  targets: readonly string[],
  counts: (tie: Tie) => boolean,
  alsoNodes: readonly string[] = [],
): ReadonlySet<string> {
  const { of } = piecesOf(net, counts);
  const nodes = [...targets.flatMap((id) => members.get(id) ?? []), ...alsoNodes];
  const pieces = new Set(nodes.map((id) => of[net.numberOf.get(id)!]!));
  const reached = new Set<string>();
  for (const [id, own] of members) if (own.some((node) => pieces.has(of[net.numberOf.get(node)!]!))) reached.add(id);
  return reached;
}
