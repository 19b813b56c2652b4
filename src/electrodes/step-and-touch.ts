import { endsOf, type Segments } from './segments.ts';
import type { SolvedBodies } from './solve-bodies.ts';
import { readable } from './surface-grid.ts';
import { surfacePotential } from './surface-potential.ts';

/** Potential of the surface along a straight line on the plan, and the worst pace on it. */
export interface StepLine {
  readonly fromM: readonly [number, number];
  readonly toM: readonly [number, number];
  readonly points: readonly { readonly distanceM: number; readonly share: number }[];
  /** Greatest difference over one pace along the line, and where that pace begins; 0 where the line is shorter than a pace. */
  readonly step: { readonly share: number; readonly atM: number };
}

/** A pace, and the reach of an arm, metres: IEEE Std 80-2000, clause 8, and IEC 60479-1 (both from memory). */
const paceM = 1;
const reachM = 1;
/** Points to a pace, so far from the metal that the line begins at, metres; paces are tried from each. */
const perPace = 4;
const nearM = 20;

/**
 * Shares along a line of at least `lengthM` from a place on the plan in a direction (unit vector), all bodies at the
 * potentials given (volt, one per body). There are four points to a pace as far as 20 m, beyond that one. The worst pace is that
 * of the points tried: to either side of them it may be a little worse, where the line passes over metal between two.
 */
export function stepLine(
  solved: SolvedBodies,
  bodyV: ArrayLike<number>,
  fromM: readonly [number, number],
  [east, north]: readonly [number, number],
  lengthM: number,
): StepLine {
  const distances = distancesOf(lengthM);
  const places = Float64Array.from(distances.flatMap((d) => [fromM[0] + d * east, fromM[1] + d * north]));
  const share = Array.from(surfacePotential(solved, bodyV, places), readable);
  let step = { share: 0, atM: 0 };
  for (const [k, atM] of distances.entries()) {
    const ahead = distances.indexOf(atM + paceM, k);
    const difference = ahead < 0 ? 0 : Math.abs(share[k]! - share[ahead]!);
    if (difference > step.share) step = { share: readable(difference), atM };
  }
  const endM = distances.at(-1)!;
  return {
    fromM,
    toM: [fromM[0] + endM * east, fromM[1] + endM * north],
    points: distances.map((distanceM, k) => ({ distanceM, share: share[k]! })),
    step,
  };
}

function distancesOf(lengthM: number): readonly number[] {
  const distances = [0];
  for (let d = 0; d < lengthM; distances.push(d)) d += d < nearM ? paceM / perPace : paceM;
  return distances;
}

/**
 * For each place on the plan the greatest difference between metal there, at one potential, and the ground that somebody stands
 * on who touches it: eight directions.
 */
export function touchShares(
  solved: SolvedBodies,
  bodyV: ArrayLike<number>,
  metalV: number,
  placesM: readonly (readonly [number, number])[],
): readonly number[] {
  const around = placesM.flatMap(([eastM, northM]) =>
    directions.flatMap((angle) => [eastM + reachM * Math.cos(angle), northM + reachM * Math.sin(angle)]),
  );
  const volts = surfacePotential(solved, bodyV, Float64Array.from(around));
  return placesM.map((_, place) => {
    const own = volts.subarray(directions.length * place, directions.length * (place + 1));
    return readable(Math.max(...own.map((volt) => Math.abs(metalV - volt))));
  });
}

const directions = [0, 1, 2, 3, 4, 5, 6, 7].map((k) => (k * Math.PI) / 4);

/** Where some of the bodies reach furthest east, on the plan; the first of several. */
export function eastEndOf(segments: Segments, bodies: readonly number[]): readonly [number, number] {
  const own = new Set(bodies);
  let found: readonly [number, number] = [-Infinity, 0];
  for (let i = 0; i < segments.count; i++) {
    if (!own.has(segments.body[i]!)) continue;
    for (const [east, north] of endsOf(segments, i)) if (east > found[0]) found = [east, north];
  }
  return found;
}
