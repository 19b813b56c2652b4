import type { Body, Run, SoilPoint } from '../electrodes/body.ts';

/** A stretch of a line of metal: a body by itself, leaking at its middle. */
export interface LinePiece {
  readonly body: Body;
  /** Of its middle from the start of the line, along the metal. */
  readonly middleM: number;
}

/** Longer stretches of metal than this are no longer one piece, metres; and a line has at most so many. */
const longestPieceM = 10;
const mostPieces = 6;

/** How many pieces a line of so many metres is cut into. */
export function pieceCount(lengthM: number): number {
  return Math.min(mostPieces, Math.max(1, Math.ceil(lengthM / longestPieceM)));
}

/**
 * Runs that follow each other, cut into so many pieces of equal length. Several lines side by side (arms from one point) are
 * cut alike; what is equally far along all of them is one piece.
 */
export function linePieces(lines: readonly (readonly Run[])[], count: number): readonly LinePiece[] {
  const cut = lines.map((runs) => cutLine(runs, count));
  const lengthM = lineLengthM(lines[0]!);
  return Array.from({ length: count }, (_, k) => ({
    body: { runs: cut.flatMap((stretches) => stretches[k]!) },
    middleM: ((k + 0.5) / count) * lengthM,
  })).filter(({ body }) => body.runs.length > 0);
}

export function lineLengthM(runs: readonly Run[]): number {
  return runs.reduce((sum, run) => sum + runLengthM(run), 0);
}

function runLengthM({ from, to }: Run): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
}

/** A stub at a cut, in radii, that is too short to be a run by itself goes with the stretch beside it. */
const leastRadii = 4;

function cutLine(runs: readonly Run[], count: number): readonly (readonly Run[])[] {
  const pieceM = lineLengthM(runs) / count;
  return stretchesAt(
    runs,
    Array.from({ length: count - 1 }, (_, k) => (k + 1) * pieceM),
  );
}

/** Runs that follow each other, parted at distances from their start (metres, rising): one stretch more than there are cuts. */
export function stretchesAt(runs: readonly Run[], cutsM: readonly number[]): readonly (readonly Run[])[] {
  const stretches: Run[][] = Array.from({ length: cutsM.length + 1 }, () => []);
  let doneM = 0;
  for (const run of runs) {
    const lengthM = runLengthM(run);
    const leastM = leastRadii * run.radiusM;
    const own = cutsM.map((cut) => cut - doneM).filter((cut) => cut > leastM && cut < lengthM - leastM);
    const marks = [0, ...own, lengthM];
    for (const [i, end] of marks.slice(1).entries()) {
      const middleM = doneM + (marks[i]! + end) / 2;
      const at = cutsM.filter((cut) => cut <= middleM).length;
      stretches[at]!.push({ ...run, from: along(run, marks[i]! / lengthM), to: along(run, end / lengthM) });
    }
    doneM += lengthM;
  }
  return stretches;
}

function along({ from, to }: Run, share: number): SoilPoint {
  if (share === 0) return from;
  if (share === 1) return to;
  return [
    from[0] + share * (to[0] - from[0]),
    from[1] + share * (to[1] - from[1]),
    from[2] + share * (to[2] - from[2]),
  ];
}
