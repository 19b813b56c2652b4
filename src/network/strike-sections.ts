import { inductanceMatrix, type StraightPiece } from '../surge/inductance-matrix.ts';
import type { Point } from '../surge/straight-piece.ts';
import type { StrikeBranch } from './strike-branches.ts';
import type { StrikeNetwork } from './strike-network.ts';

/**
 * The same metal with every branch of known place cut into equal sections of at most so many metres: more nodes along it, and
 * the partial inductances of all sections. What a branch has beside its straight pieces is shared by length.
 */
export function strikeSections(quiet: StrikeNetwork, mostM: number): StrikeNetwork {
  const { surge, branches, pieces, branchOfPiece } = quiet;
  const own = branches.map((): number[] => []);
  pieces.forEach((_, piece) => {
    own[branchOfPiece[piece]!]!.push(piece);
  });
  const cut: Cut = { nodeCount: surge.nodeCount, branches: [], ends: [], pieces: [], owners: [], origin: [] };
  branches.forEach((branch, b) => {
    const run = own[b]!.map((piece) => pieces[piece]!);
    const whole = run.reduce((sum, piece) => sum + lengthOf(piece), 0);
    cutBranch(cut, branch, { b, ends: surge.branches[b]!, run, count: Math.max(1, Math.ceil(whole / mostM)) });
  });
  const size = cut.branches.length;
  const mutualH = byBranch(cut.pieces, cut.owners, size);
  addRests(mutualH, quiet, cut);
  return {
    ...quiet,
    branches: cut.branches,
    pieces: cut.pieces,
    branchOfPiece: Int32Array.from(cut.owners),
    surge: {
      ...surge,
      nodeCount: cut.nodeCount,
      branches: cut.ends.map((ends, i) => ({ ...ends, inductanceH: mutualH[i * (size + 1)]! })),
      mutualH,
    },
  };
}

interface Cut {
  nodeCount: number;
  readonly branches: StrikeBranch[];
  readonly ends: StrikeNetwork['surge']['branches'][number][];
  readonly pieces: StraightPiece[];
  readonly owners: number[];
  readonly origin: number[];
}

interface Whole {
  readonly b: number;
  readonly ends: Cut['ends'][number];
  readonly run: readonly StraightPiece[];
  readonly count: number;
}

function cutBranch(cut: Cut, branch: StrikeBranch, { b, ends, run, count }: Whole): void {
  const sections = sectionsOf(run, count);
  let from = ends.from;
  for (let s = 0; s < count; s++) {
    const to = s === count - 1 ? ends.to : cut.nodeCount++;
    const resistanceOhm = ends.resistanceOhm / count;
    for (const piece of sections[s] ?? []) {
      cut.pieces.push(piece);
      cut.owners.push(cut.branches.length);
    }
    cut.branches.push({ ...branch, resistanceOhm, lengthM: branch.lengthM / count });
    cut.ends.push({ from, to, resistanceOhm, inductanceH: 0 });
    cut.origin.push(b);
    from = to;
  }
}

/** A way of pieces in so many stretches of equal length. */
function sectionsOf(run: readonly StraightPiece[], count: number): readonly (readonly StraightPiece[])[] {
  const eachM = run.reduce((sum, piece) => sum + lengthOf(piece), 0) / count;
  const sections = Array.from({ length: count }, (): StraightPiece[] => []);
  let doneM = 0;
  for (const piece of run) {
    const lengthM = lengthOf(piece);
    for (let s = 0; s < count; s++) {
      const [a, b] = [Math.max(0, s * eachM - doneM), Math.min(lengthM, (s + 1) * eachM - doneM)];
      if (b - a <= 1e-9 * lengthM) continue;
      sections[s]!.push({ ...piece, from: along(piece, a / lengthM), to: along(piece, b / lengthM) });
    }
    doneM += lengthM;
  }
  return sections;
}

function along({ from, to }: StraightPiece, share: number): Point {
  const at = (k: 0 | 1 | 2) => from[k] + share * (to[k] - from[k]);
  return [at(0), at(1), at(2)];
}

function lengthOf({ from, to }: StraightPiece): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
}

function byBranch(pieces: readonly StraightPiece[], owners: readonly number[], size: number): Float64Array {
  const matrix = new Float64Array(size * size);
  const byPiece = inductanceMatrix(pieces);
  const count = pieces.length;
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < count; j++) {
      const at = owners[i]! * size + owners[j]!;
      matrix[at] = matrix[at]! + byPiece[i * count + j]!;
    }
  }
  return matrix;
}

/** What the whole branch has more than its pieces make. */
function addRests(mutualH: Float64Array, { surge, branches }: StrikeNetwork, { origin, branches: cut }: Cut): void {
  const size = cut.length;
  const pieceH = new Float64Array(branches.length);
  const counts = new Float64Array(branches.length);
  for (let i = 0; i < size; i++) {
    counts[origin[i]!] = counts[origin[i]!]! + 1;
    for (let j = 0; j < size; j++) {
      if (origin[i] === origin[j]) pieceH[origin[i]!] = pieceH[origin[i]!]! + mutualH[i * size + j]!;
    }
  }
  for (let i = 0; i < size; i++) {
    const b = origin[i]!;
    const restH = Math.max(0, surge.branches[b]!.inductanceH - pieceH[b]!);
    mutualH[i * (size + 1)] = mutualH[i * (size + 1)]! + restH / counts[b]!;
  }
}
