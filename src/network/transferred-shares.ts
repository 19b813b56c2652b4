import type { Group } from '../bonding/bonding.ts';
import { liftedPotentials } from '../electrodes/lifted-potentials.ts';
import type { Ground } from './ground.ts';
import { groupBodies } from './group-bodies.ts';

/** Potential that an electrode outside a group takes on, per volt of the group's rise; bounds by the enclosing soils. */
export interface TransferredShare {
  readonly electrode: string;
  readonly group: string;
  readonly share: { readonly value: number | null; readonly low: number; readonly high: number };
}

/**
 * For each group of electrodes and each electrode outside it, both with known places: what reaches the one through the soil
 * when the other is lifted to one volt by a current from far away. The metal of the group, buried wires too, counts as one
 * potential, and so does that of the electrode.
 */
export function transferredShares(groups: readonly Group[], ground: Ground): readonly TransferredShare[] {
  const placed = groups.map((group) => ({
    id: group.id,
    electrodes: group.electrodes.filter((e) => ground.partAt.includes(e)),
    bodies: groupBodies(group, ground),
  }));
  const piecesOf = (electrode: string): readonly number[] =>
    ground.partAt.flatMap((part, index) => (part === electrode ? [index] : []));
  return placed
    .filter((group) => group.electrodes.length > 0)
    .flatMap((group) =>
      placed
        .filter((other) => other.id !== group.id)
        .flatMap((other) => other.electrodes)
        .flatMap((electrode) => {
          const share = shareOver(ground, group.bodies, piecesOf(electrode));
          return share === null ? [] : [{ electrode, group: group.id, share }];
        }),
    );
}

function shareOver({ together }: Ground, lifted: readonly number[], outside: readonly number[]) {
  const { low, likely, high } = together;
  const shares = [low, likely, high].map((solved) => {
    const there = outside.find((body) => solved !== null && Number.isFinite(solved.aloneOhm[body]!));
    if (solved === null || there === undefined) return null;
    return liftedPotentials(solved, lifted, [outside])?.[there] ?? null;
  });
  const known = shares.filter((figure) => figure !== null);
  if (known.length === 0) return null;
  return { value: shares[1] ?? null, low: Math.min(...known), high: Math.max(...known) };
}
