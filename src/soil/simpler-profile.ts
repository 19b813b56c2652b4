import { mostLayers, thinnestLayerM } from './layered-soil.ts';

/** A stretch of depth of one resistivity; the last one goes down without end. */
export interface ProfilePiece {
  readonly ohmM: number;
  readonly thickM: number;
}

/**
 * A profile with neighbours of one resistivity joined, then those too thin to be a layer, then the least of those that are
 * more than the most layers, each taken together with a neighbour at `join` of both (Math.min: the profile only falls;
 * Math.max: it only rises). `merged`: how many were, beyond those of one resistivity. Least: log of resistivity times depth
 * that changes.
 */
export function simplerProfile(
  pieces: readonly ProfilePiece[],
  join: (a: number, b: number) => number,
): { readonly profile: readonly ProfilePiece[]; readonly merged: number } {
  const profile: ProfilePiece[] = [];
  for (const piece of pieces) {
    const last = profile.at(-1);
    if (last?.ohmM !== piece.ohmM) profile.push(piece);
    else profile[profile.length - 1] = together(last, piece, join);
  }
  let merged = 0;
  for (;;) {
    const thin = profile.slice(0, -1).findIndex(({ thickM }) => thickM < thinnestLayerM);
    if (thin < 0 && profile.length <= mostLayers) return { profile, merged };
    // the pair begins at the thin one or just above it, else anywhere
    const from = thin < 0 ? 0 : Math.max(0, thin - 1);
    const to = thin < 0 ? profile.length - 2 : Math.min(thin, profile.length - 2);
    const at = leastOf(from, to, (i) => changeBy(profile[i]!, profile[i + 1]!, join));
    profile.splice(at, 2, together(profile[at]!, profile[at + 1]!, join));
    merged++;
  }
}

type Join = (a: number, b: number) => number;

function together(a: ProfilePiece, b: ProfilePiece, join: Join): ProfilePiece {
  return { ohmM: join(a.ohmM, b.ohmM), thickM: a.thickM + b.thickM };
}

function changeBy(a: ProfilePiece, b: ProfilePiece, join: Join): number {
  const ohmM = join(a.ohmM, b.ohmM);
  const change = (p: ProfilePiece): number => (p.ohmM === ohmM ? 0 : Math.abs(Math.log(ohmM / p.ohmM)) * p.thickM);
  return change(a) + change(b);
}

function leastOf(from: number, to: number, cost: (at: number) => number): number {
  let least = from;
  for (let at = from + 1; at <= to; at++) if (cost(at) < cost(least)) least = at;
  return least;
}
