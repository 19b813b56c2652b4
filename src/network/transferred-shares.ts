import type { Group } from '../bonding/bonding.ts';
import { liftedPotentials } from '../electrodes/lifted-potentials.ts';
import { once } from '../units/once.ts';
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
  if (Object.values(ground.together).every((solved) => solved === null)) return [];
  const pieces = piecesByPart(ground.partAt);
  const placed = groups.map((group) => ({
    id: group.id,
    electrodes: group.electrodes.filter((e) => pieces.has(e)),
    bodies: groupBodies(group, ground),
  }));
  return placed
    .filter((group) => group.electrodes.length > 0)
    .flatMap((group) => {
      const shareOf = shareWhenLifted(ground, group.bodies);
      const others = placed.filter((other) => other.id !== group.id).flatMap((other) => other.electrodes);
      return others.flatMap((electrode) => {
        const share = shareOf(pieces.get(electrode)!);
        return share === null ? [] : [{ electrode, group: group.id, share }];
      });
    });
}

function piecesByPart(partAt: readonly string[]): ReadonlyMap<string, readonly number[]> {
  const pieces = new Map<string, number[]>();
  for (const [index, part] of partAt.entries()) pieces.set(part, [...(pieces.get(part) ?? []), index]);
  return pieces;
}

/** An electrode of one piece floats as it is; one of several is tied to itself, which takes a solve of its own. */
function shareWhenLifted({ together }: Ground, lifted: readonly number[]) {
  const sides = [together.low, together.likely, together.high];
  const loose = once(() => sides.map((solved) => (solved === null ? null : liftedPotentials(solved, lifted))));
  const potentials = (outside: readonly number[], side: number) => {
    const solved = sides[side]!;
    return solved === null || outside.length === 1 ? loose()[side]! : liftedPotentials(solved, lifted, [outside]);
  };
  return (outside: readonly number[]): TransferredShare['share'] | null => {
    const shares = sides.map((solved, side) => {
      const there = outside.find((body) => solved !== null && Number.isFinite(solved.aloneOhm[body]!));
      return there === undefined ? null : (potentials(outside, side)?.[there] ?? null);
    });
    const known = shares.filter((figure) => figure !== null);
    if (known.length === 0) return null;
    return { value: shares[1] ?? null, low: Math.min(...known), high: Math.max(...known) };
  };
}
