import type { BondingRun } from '../bonding/bonding-of.ts';
import { filament } from '../materials/straight-inductance.ts';
import type { Position, Site } from '../site/site.ts';
import { inductanceMatrix, type StraightPiece } from '../surge/inductance-matrix.ts';
import type { SurgeNetwork } from '../surge/surge-network.ts';
import type { Side } from './certain.ts';
import { earthPoints } from './earth-points.ts';
import { type EarthPoint, earthRanges } from './earth-ranges.ts';
import type { Ground } from './ground.ts';
import { laidApart } from './laid-apart.ts';
import { type StrikeBranch, strikeBranches } from './strike-branches.ts';
import { strikeTies } from './strike-ties.ts';
import { wayLengthM } from './strike-ways.ts';

/** A site's metal and earth as plain arrays for a strike, and whose each of them is. */
export interface StrikeNetwork {
  readonly ok: true;
  readonly surge: SurgeNetwork;
  /** Node of the graph by number; numbers beyond are points along metal in the soil. */
  readonly nodes: readonly string[];
  /** Node of `surge` by number of the graph's node; -1: hangs on nothing that reaches the soil. */
  readonly at: Int32Array;
  /** Those of `surge.branches`, in their order. */
  readonly branches: readonly StrikeBranch[];
  /** Those of `surge.earth`, in their order. */
  readonly points: readonly EarthPoint[];
  /** All straight pieces with a place, and the branch of `surge` that each is of. */
  readonly pieces: readonly StraightPiece[];
  readonly branchOfPiece: Int32Array;
  /** Fields that decide whether something carries current too, which is not counted. */
  readonly notCounted: readonly string[];
  /** Parts that were typed within others, and lie two diameters beside them. */
  readonly laidApart: readonly string[];
  /** Electrodes of which nobody knows what they have to the soil: left out. */
  readonly unknownElectrodes: readonly string[];
}

/** Nothing reaches the soil, or the resistance of an electrode (`parts`; none: the soil itself) is not known on that side. */
export interface NoStrikeNetwork {
  readonly ok: false;
  readonly reason: 'no electrode' | 'no soil';
  readonly parts: readonly string[];
}

export function strikeNetwork(
  run: Pick<BondingRun, 'graph' | 'site' | 'metal'>,
  ground: Ground,
  side: Side,
): StrikeNetwork | NoStrikeNetwork {
  const ties = strikeTies(run);
  const electrodes = new Map(run.site.electrodes.map((e) => [e.id, e]));
  const leaking = earthPoints({ ...run, electrodes }, ties.whole, ground);
  if (leaking === null) return { ok: false, reason: 'no electrode', parts: [] };
  const all = strikeBranches(run, ties, leaking);
  const earth = earthOn(leaking.points, ground, side);
  if (earth === null) return { ok: false, reason: 'no soil', parts: unknownOf(leaking.points, ground) };
  const at = clusters(leaking.nodeCount, all, earth.points);
  const branches = all.filter(({ from, to }) => at[from] !== at[to] && at[from]! >= 0);
  const laid = piecesOf(branches);
  const { branchOfPiece } = laid;
  const place = placeInFile(run.site);
  const { pieces, moved } = laidApart(
    laid.pieces,
    [...branchOfPiece].map((branch) => place.get(branches[branch]!.part) ?? 0),
  );
  const { ownH, mutualH } = inductances(branches, pieces, branchOfPiece);
  return {
    ok: true,
    surge: {
      nodeCount: at.reduce((most, n) => Math.max(most, n + 1), 0),
      branches: branches.map((b, i) => ({
        from: at[b.from]!,
        to: at[b.to]!,
        resistanceOhm: b.resistanceOhm,
        inductanceH: ownH[i]!,
      })),
      mutualH,
      earth: { nodes: earth.points.map((p) => at[p.node]!), resistanceOhm: earth.resistanceOhm },
    },
    nodes: ties.whole.nodes,
    at,
    branches,
    points: earth.points,
    pieces,
    branchOfPiece,
    notCounted: ties.notCounted,
    laidApart: idsInOrder(moved.map((piece) => branches[branchOfPiece[piece]!]!.part)),
    unknownElectrodes: unknownOf(leaking.points, ground),
  };
}

/** Of wires in one trench the one that was typed first lies where it was typed: what they are called must not decide that. */
function placeInFile({ supports, lines, conductors, electrodes, metalwork }: Site): ReadonlyMap<string, number> {
  const all = [...supports, ...electrodes, ...conductors, ...metalwork, ...lines];
  return new Map(all.map(({ id }, i) => [id, i]));
}

/** Electrodes of which nothing is known though the soil is. */
function unknownOf(points: readonly EarthPoint[], { soil }: Ground): readonly string[] {
  const open = points.filter((p) => p.certain !== 'perhaps' && p.alone.ohm?.value == null);
  return soil === null ? [] : idsInOrder(open.map((p) => p.part));
}

function idsInOrder(ids: readonly string[]): readonly string[] {
  return [...new Set(ids)].sort();
}

/** Points with a resistance, and what they feel of each other. */
function earthOn(all: readonly EarthPoint[], ground: Ground, side: Side) {
  // one of which nothing is known takes no current, so that volts are not too low
  const points = all.filter((p) => p.certain === 'perhaps' || p.alone.ohm?.value != null);
  const { earth } = earthRanges(points, ground);
  const matrix = side === 'likely' ? earth.nominalOhm : side === 'low' ? earth.lowOhm : earth.highOhm;
  if (matrix === null) return null;
  const own = matrix.map((row, i) => (typeof row === 'number' ? row : row[i]!));
  const there = points.flatMap((_, i) => (own[i]! > 0 && Number.isFinite(own[i]!) ? [i] : []));
  if (there.length === 0) return null;
  const between = (i: number, j: number): number => {
    const row = matrix[i]!;
    return typeof row === 'number' ? (i === j ? row : 0) : row[j]!;
  };
  return {
    points: there.map((i) => points[i]!),
    resistanceOhm: there.map((i) => there.map((j) => between(i, j))),
  };
}

/** One number for nodes with nothing between them; -1 for what reaches no point of the soil. */
function clusters(nodeCount: number, branches: readonly StrikeBranch[], points: readonly EarthPoint[]): Int32Array {
  const isNothing = ({ resistanceOhm, lengthM, statedH }: StrikeBranch) =>
    resistanceOhm === 0 && (statedH === null ? lengthM === 0 : statedH === 0);
  const root = joined(nodeCount, branches.filter(isNothing));
  const island = joined(nodeCount, branches);
  const earthed = new Set(points.map((p) => island(p.node)));
  const numberOf = new Map<number, number>();
  return Int32Array.from({ length: nodeCount }, (_, node) => {
    if (!earthed.has(island(node))) return -1;
    const own = root(node);
    const number = numberOf.get(own) ?? numberOf.size;
    numberOf.set(own, number);
    return number;
  });
}

/** Which node stands for each when all ends of the branches are drawn together. */
function joined(nodeCount: number, branches: readonly StrikeBranch[]): (node: number) => number {
  const parent = Int32Array.from({ length: nodeCount }, (_, node) => node);
  const find = (node: number): number => {
    let at = node;
    while (parent[at] !== at) {
      parent[at] = parent[parent[at]!]!;
      at = parent[at]!;
    }
    return at;
  };
  for (const { from, to } of branches) {
    const [a, b] = [find(from), find(to)];
    if (a !== b) parent[Math.max(a, b)] = Math.min(a, b);
  }
  return find;
}

function piecesOf(branches: readonly StrikeBranch[]) {
  const pieces: StraightPiece[] = [];
  const owners: number[] = [];
  branches.forEach(({ way, radiusM }, branch) => {
    for (const [i, to] of (way ?? []).slice(1).entries()) {
      const from = way![i]!;
      if (apartM(from, to) < leastPieceM) continue;
      pieces.push({ from, to, radiusM });
      owners.push(branch);
    }
  });
  return { pieces, branchOfPiece: Int32Array.from(owners) };
}

const leastPieceM = 0.01;

/**
 * Partial inductances of the branches (henry): of those with a place by all pairs of their straight pieces; of the rest by
 * length alone, coupled to nothing. Metal longer than its straight way has what is over as if it lay apart.
 */
function inductances(branches: readonly StrikeBranch[], pieces: readonly StraightPiece[], branchOfPiece: Int32Array) {
  const size = branches.length;
  const mutualH = new Float64Array(size * size);
  const byPiece = inductanceMatrix(pieces);
  const count = pieces.length;
  for (let i = 0; i < count; i++) {
    const row = branchOfPiece[i]! * size;
    for (let j = 0; j < count; j++)
      mutualH[row + branchOfPiece[j]!] = mutualH[row + branchOfPiece[j]!]! + byPiece[i * count + j]!;
  }
  branches.forEach((branch, i) => {
    mutualH[i * (size + 1)] = mutualH[i * (size + 1)]! + (branch.statedH ?? unplacedH(branch));
  });
  return { mutualH, ownH: Float64Array.from(branches, (_, i) => mutualH[i * (size + 1)]!) };
}

/** Of the stretch of a run that has no place, or is longer than its way: its share of the whole run's. */
function unplacedH({ way, lengthM, radiusM, inRun }: StrikeBranch): number {
  const restM = lengthM - (way === null ? 0 : wayLengthM(way));
  return restM > 0 ? filament(inRun * restM, radiusM) / inRun : 0;
}

function apartM(a: Position, b: Position): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}
