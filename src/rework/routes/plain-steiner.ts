import { distanceM, type Point } from './point.ts';

/** The shortest tree where nothing is in the way. */
export interface PlainSteiner {
  /** Proved: no tree that joins the places is shorter, whatever is in the way. */
  readonly atLeastM: number;
  readonly lengthM: number;
  /** Where the shortest tree found branches. */
  readonly junctions: readonly Point[];
}

/** An edge of a topology: numbers of ends, then of junctions. */
type Edge = readonly [number, number];

const MOST_ROUNDS = 600;
/** Rounds stop when the length is known to this share. */
const CLOSE = 1e-11;

/**
 * The shortest tree that joins 3 to 6 places in the open. Each tree of that kind is one of the full topologies (k - 2
 * junctions of three ways; 105 for six places), some ways of which may have no length; each is tried. For a topology the
 * sum of lengths is convex; it is lowered by solving for springs of strength 1 / length again and again (Smith, How to find
 * Steiner minimal trees in Euclidean d-space, Algorithmica 7, 1992, from memory). The forces of the springs, scaled so that
 * none is above 1, balance at every junction: what they do over the ends is a lower bound of the sum (duality).
 */
export function plainSteiner(ends: readonly Point[]): PlainSteiner {
  let best: PlainSteiner = { atLeastM: Infinity, lengthM: Infinity, junctions: [] };
  for (const edges of topologies(ends.length)) {
    const found = shortestOf(edges, ends, best.lengthM);
    const atLeastM = Math.min(best.atLeastM, found.atLeastM);
    best = found.lengthM < best.lengthM ? { ...found, atLeastM } : { ...best, atLeastM };
  }
  return best;
}

/** All ways to join k ends by k - 2 junctions of three ways each. */
export function topologies(k: number): readonly (readonly Edge[])[] {
  let all: (readonly Edge[])[] = [[0, 1, 2].map((end): Edge => [end, k])];
  for (let end = 3; end < k; end++) {
    const junction = k + end - 2;
    all = all.flatMap((edges) =>
      edges.map(([u, v], i): readonly Edge[] => {
        const others = edges.filter((_, e) => e !== i);
        return [...others, [u, junction], [v, junction], [end, junction]];
      }),
    );
  }
  return all;
}

function shortestOf(edges: readonly Edge[], ends: readonly Point[], enoughM: number): PlainSteiner {
  const k = ends.length;
  const centre = [0, 1].map((axis) => ends.reduce((sum, p) => sum + p[axis]! / k, 0));
  const extentM = ends.reduce((most, p) => Math.max(most, distanceM(p, ends[0]!)), 0);
  if (extentM === 0) return { atLeastM: 0, lengthM: 0, junctions: [] };
  // Beside each other, so that no way has no length at the start.
  let places: Point[] = [...ends];
  for (let i = 0; i < k - 2; i++) {
    places.push([centre[0]! + extentM * 0.01 * Math.cos(i + 1), centre[1]! + extentM * 0.01 * Math.sin(i + 1)]);
  }
  let atLeastM = 0;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const strengths = edges.map(([u, v]) => 1 / Math.max(distanceM(places[u]!, places[v]!), extentM * 1e-13));
    places = balanced(edges, strengths, ends);
    atLeastM = Math.max(atLeastM, boundOf(edges, strengths, places));
    const lengthM = lengthOf(edges, places);
    if (atLeastM > enoughM || lengthM - atLeastM <= CLOSE * lengthM) break;
  }
  return { atLeastM, lengthM: lengthOf(edges, places), junctions: places.slice(k) };
}

function lengthOf(edges: readonly Edge[], places: readonly Point[]): number {
  return edges.reduce((sum, [u, v]) => sum + distanceM(places[u]!, places[v]!), 0);
}

function boundOf(edges: readonly Edge[], strengths: readonly number[], places: readonly Point[]): number {
  let work = 0;
  let most = 0;
  edges.forEach(([u, v], i) => {
    const lengthM = distanceM(places[u]!, places[v]!);
    work += strengths[i]! * lengthM * lengthM;
    most = Math.max(most, strengths[i]! * lengthM);
  });
  return most > 0 ? work / most : 0;
}

/** Junctions where the springs balance, the ends held. */
function balanced(edges: readonly Edge[], strengths: readonly number[], ends: readonly Point[]): Point[] {
  const k = ends.length;
  const rows = Array.from({ length: k - 2 }, () => new Float64Array(k));
  edges.forEach(([u, v], i) => {
    const w = strengths[i]!;
    for (const [here, there] of [
      [u, v],
      [v, u],
    ] as const) {
      if (here < k) continue;
      const row = rows[here - k]!;
      row[here - k]! += w;
      if (there >= k) row[there - k]! -= w;
      else for (const axis of [0, 1] as const) row[k - 2 + axis]! += w * ends[there]![axis];
    }
  });
  solveInPlace(rows);
  return [...ends, ...rows.map((row): Point => [row[k - 2]!, row[k - 1]!])];
}

/** Gauss and Jordan; springs to the ends make the diagonal the greatest of its column, so that no rows are swapped. */
function solveInPlace(rows: readonly Float64Array[]): void {
  rows.forEach((row, i) => {
    const pivot = row[i]!;
    for (let c = 0; c < row.length; c++) row[c]! /= pivot;
    rows.forEach((other, j) => {
      const factor = other[i]!;
      if (j !== i && factor !== 0) for (let c = 0; c < row.length; c++) other[c]! -= factor * row[c]!;
    });
  });
}
