import type { Group } from '../bonding/bonding.ts';
import type { SolvedBodies } from '../electrodes/solve-bodies.ts';
import { factorCholesky, solveFactored } from '../math/dense.ts';
import type { Ground } from './ground.ts';

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
  const bodiesOf = (parts: readonly string[]): readonly number[] => {
    const wanted = new Set(parts);
    return ground.partAt.flatMap((part, index) => (wanted.has(part) ? [index] : []));
  };
  const placed = groups.map(({ id, electrodes, parts }) => ({
    id,
    electrodes: electrodes.filter((e) => ground.partAt.includes(e)),
    bodies: bodiesOf([...electrodes, ...parts]),
  }));
  return placed
    .filter((group) => group.electrodes.length > 0)
    .flatMap((group) =>
      placed
        .filter((other) => other.id !== group.id)
        .flatMap((other) => other.electrodes)
        .flatMap((electrode) => {
          const share = shareOver(ground, group.bodies, bodiesOf([electrode]));
          return share === null ? [] : [{ electrode, group: group.id, share }];
        }),
    );
}

function shareOver({ together }: Ground, lifted: readonly number[], outside: readonly number[]) {
  const { low, likely, high } = together;
  const shares = [low, likely, high].map((solved) => (solved === null ? null : share(solved, lifted, outside)));
  const known = shares.filter((figure) => figure !== null);
  if (known.length === 0) return null;
  return { value: shares[1] ?? null, low: Math.min(...known), high: Math.max(...known) };
}

/**
 * V_u = R_ug I_g with R_gg I_g = V_g, bodies that belong together joined into one (their conductances added); what is in
 * neither floats. null where nothing of one of them is there on that side, or they coincide.
 */
function share(solved: SolvedBodies, lifted: readonly number[], outside: readonly number[]): number | null {
  const count = solved.aloneOhm.length;
  const isThere = (body: number): boolean => Number.isFinite(solved.aloneOhm[body]!);
  const [inner, outer] = [lifted.filter(isThere), outside.filter(isThere)];
  if (inner.length === 0 || outer.length === 0) return null;
  const all = [...inner, ...outer];
  const own = Float64Array.from(all.flatMap((a) => all.map((b) => solved.resistanceOhm[a * count + b]!)));
  const factored = factorCholesky(own, all.length);
  if (!factored.ok) return null;
  const atOneVolt = all.flatMap((_, row) => (row < inner.length ? [1, 0] : [0, 1]));
  const { solution } = solveFactored(factored, Float64Array.from(atOneVolt), 2);
  // conductances of the outer one: to the inner (negative) and of its own; no current leaves it
  let [toInnerSiemens, ownSiemens] = [0, 0];
  for (let row = inner.length; row < all.length; row++) {
    toInnerSiemens += solution[2 * row]!;
    ownSiemens += solution[2 * row + 1]!;
  }
  return -toInnerSiemens / ownSiemens;
}
