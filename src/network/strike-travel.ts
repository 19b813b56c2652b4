import { chargedRun } from '../surge/chain-run.ts';
import { elastances } from '../surge/elastances.ts';
import type { Peak } from '../surge/peak-of.ts';
import type { StraightPiece } from '../surge/straight-piece.ts';
import type { SurgeCourse } from '../surge/surge-course.ts';
import { surgeModes } from '../surge/surge-modes.ts';
import type { Wave } from '../surge/wave.ts';
import { waveFigures } from '../surge/wave-figures.ts';
import { metalDistance } from './metal-distance.ts';
import type { StrikeNetwork } from './strike-network.ts';
import { type StrikeRun, type StrikeSite, strikeOf } from './strike-of.ts';
import { remoteEarth, type StrikePair } from './strike-pairs.ts';
import { strikeBetween } from './strike-result.ts';
import { strikeSections } from './strike-sections.ts';

const lightMPerS = 299_792_458;

/** How long a way may be for a figure without travel time: a tenth of what light runs during the front, metres. */
export function quasiStaticM(frontS: number): number {
  return (lightMPerS * frontS) / 10;
}

/** Sections are a third of that. Ours: a chain of three errs by less than one per cent. */
const sectionShare = 1 / 3;
/** More nodes than this take too long. */
const mostNodes = 240;
/** Light passes all metal of known place within this share of the front: currents and charges act on each other at once here. Ours. */
const siteShare = 1 / 3;

/** Differences with travel time: of those whose way is too long without, and can be cut into sections. */
export type StrikeTravel = (pair: StrikePair) => Peak | null;

/**
 * The same stroke with the charges of all metal in the air whose place is known: long pieces of it become chains in which a wave
 * runs with the speed of light. A way on which more metal has no place, or lies in the soil, than may be without travel time
 * stays without a figure. null: the site is too large for that, or too wide for the front.
 */
export function strikeTravel(site: StrikeSite, likely: StrikeRun, wave: Wave): StrikeTravel | null {
  const mostM = quasiStaticM(waveFigures(wave).frontS);
  const network = strikeSections(likely.network, sectionShare * mostM);
  const { nodes, cells } = chargedCells(network);
  if (nodes.length === 0 || nodes.length > mostNodes || acrossM(network.pieces) > 10 * siteShare * mostM) return null;
  const modes = surgeModes(network.surge);
  if (!modes.ok) return null;
  const run = strikeOf({ ...site, network, modes }, likely.at, wave);
  if (!run.ok) return null;
  const course: SurgeCourse = chargedRun(run.run, { nodes, elastance: elastances(cells) });
  return (pair) => {
    if (!(restBetween(likely, pair) <= mostM)) return null;
    return strikeBetween(pair, network, course, run.places)?.peak ?? null;
  };
}

/** Corner to corner of the box about all pieces, metres. */
function acrossM(pieces: readonly StraightPiece[]): number {
  const spans = ([0, 1, 2] as const).map((k) => {
    const all = pieces.flatMap(({ from, to }) => [from[k], to[k]]);
    return Math.max(...all) - Math.min(...all);
  });
  return Math.hypot(...spans);
}

function piecesByBranch({ branches, pieces, branchOfPiece }: StrikeNetwork): readonly (readonly StraightPiece[])[] {
  const own = branches.map((): StraightPiece[] => []);
  pieces.forEach((piece, p) => {
    own[branchOfPiece[p]!]!.push(piece);
  });
  return own;
}

/** Halves of the pieces in the air, by the node that they reach to. */
function chargedCells(network: StrikeNetwork) {
  const byNode = new Map<number, StraightPiece[]>();
  const add = (node: number, all: readonly StraightPiece[]) => byNode.set(node, [...(byNode.get(node) ?? []), ...all]);
  piecesByBranch(network).forEach((run, b) => {
    if (run.length === 0 || !isInAir(run)) return;
    const { from, to } = network.surge.branches[b]!;
    const [first, second] = halves(run);
    add(from, first);
    add(to, second);
  });
  const nodes = [...byNode.keys()].sort((a, b) => a - b);
  return { nodes, cells: nodes.map((node) => byNode.get(node)!) };
}

function isInAir(run: readonly StraightPiece[]): boolean {
  return run.every(({ from, to }) => from[2] >= 0 && to[2] >= 0);
}

function halves(run: readonly StraightPiece[]): readonly [StraightPiece[], StraightPiece[]] {
  const [first, second]: [StraightPiece[], StraightPiece[]] = [[], []];
  const middle = (run.length - 1) / 2;
  run.forEach((piece, i) => {
    if (i < middle) first.push(piece);
    else if (i > middle) second.push(piece);
    else {
      const { from, to } = piece;
      const half = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2, (from[2] + to[2]) / 2] as const;
      first.push({ ...piece, to: half });
      second.push({ ...piece, from: half });
    }
  });
  return [first, second];
}

/** Shortest way between the two over metal that is no chain, metres; metal that is one counts nothing. */
function restBetween({ network, places, run }: StrikeRun, { a, b }: StrikePair): number {
  const [first, second] = [places.nodeOf(a), b === remoteEarth ? run.source.node : places.nodeOf(b)];
  if (first === null || second === null) return Number.POSITIVE_INFINITY;
  const { surge, branches } = network;
  const own = piecesByBranch(network);
  const metal = surge.branches.map(({ from, to }, i) => {
    const isChain = own[i]!.length > 0 && isInAir(own[i]!);
    return { from, to, lengthM: isChain ? 0 : branches[i]!.lengthM };
  });
  return metalDistance(surge.nodeCount, metal, first)[second]!;
}
