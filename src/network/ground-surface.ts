import type { BondingRun } from '../bonding/bonding-of.ts';
import { siteIndex } from '../bonding/site-index.ts';
import { liftedPotentials } from '../electrodes/lifted-potentials.ts';
import type { SolvedBodies } from '../electrodes/solve-bodies.ts';
import { potentialAt } from '../electrodes/surface-potential.ts';
import { positionsOf } from '../site/positions-of.ts';
import type { Position } from '../site/site.ts';
import type { Ground } from './ground.ts';
import { groupBodies } from './group-bodies.ts';

/** Potential of the surface while a group of electrodes is at one volt against remote earth, likely soil. */
export interface GroundSurface {
  readonly group: string;
  readonly grid: {
    readonly westM: number;
    readonly southM: number;
    readonly stepM: number;
    readonly columns: number;
    readonly rows: number;
    readonly share: readonly number[];
  };
  readonly line: {
    readonly fromM: readonly [number, number];
    readonly toM: readonly [number, number];
    readonly points: readonly { readonly distanceM: number; readonly share: number }[];
  };
  readonly step: { readonly share: number; readonly atM: number };
  readonly touch: { readonly share: number; readonly part: string } | null;
}

/** A step and the reach of an arm, metres: IEEE Std 80-2000, clause 8, and IEC 60479-1 (both from memory). */
const paceM = 1;
const reachM = 1;
/** Points of the longer side of the grid, and how far it goes beyond the electrodes. */
const gridPoints = 33;
const leastMarginM = 5;

/** One for each group that has an electrode with a place. All its electrodes and buried wires at one potential. */
export function groundSurfaces(run: BondingRun, ground: Ground): readonly GroundSurface[] {
  const solved = ground.together.likely;
  if (solved === null) return [];
  return run.bonding.groups.flatMap((group) => {
    if (!group.electrodes.some((e) => ground.partAt.includes(e))) return [];
    const members = groupBodies(group, ground);
    const bodyV = liftedPotentials(solved, members, tiedOutside(ground, members));
    return bodyV === null ? [] : [surfaceOf(run, group, solved, bodyV, members)];
  });
}

/** Pieces of one wire that belongs to no lifted group hang together. */
function tiedOutside({ partAt }: Ground, members: readonly number[]): readonly (readonly number[])[] {
  const inside = new Set(members);
  const pieces = new Map<string, number[]>();
  for (const [index, part] of partAt.entries())
    if (!inside.has(index)) pieces.set(part, [...(pieces.get(part) ?? []), index]);
  return [...pieces.values()].filter((own) => own.length > 1);
}

function surfaceOf(
  run: BondingRun,
  group: { readonly id: string; readonly parts: readonly string[] },
  solved: SolvedBodies,
  bodyV: Float64Array,
  members: readonly number[],
): GroundSurface {
  const { segments } = solved;
  const own = [...segments.body.keys()].filter((j) => members.includes(segments.body[j]!));
  const [east, north] = [0, 1].map((axis) => own.map((j) => segments.middleM[3 * j + axis]!));
  const box = {
    west: Math.min(...east!),
    east: Math.max(...east!),
    south: Math.min(...north!),
    north: Math.max(...north!),
  };
  const line = lineFrom(solved, bodyV, box, own);
  return {
    group: group.id,
    grid: gridOf(solved, bodyV, box),
    ...line,
    touch: touchOf(run, group, solved, bodyV),
  };
}

interface Box {
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
}

function gridOf(solved: SolvedBodies, bodyV: Float64Array, box: Box): GroundSurface['grid'] {
  const extentM = Math.max(box.east - box.west, box.north - box.south);
  const marginM = Math.max(leastMarginM, extentM / 3);
  const stepM = (extentM + 2 * marginM) / (gridPoints - 1);
  const [westM, southM] = [box.west - marginM, box.south - marginM];
  const columns = Math.floor((box.east + marginM - westM) / stepM + 1e-9) + 1;
  const rows = Math.floor((box.north + marginM - southM) / stepM + 1e-9) + 1;
  const points = new Float64Array(3 * columns * rows);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      points.set([westM + column * stepM, southM + row * stepM, 0], 3 * (row * columns + column));
    }
  }
  return { westM, southM, stepM, columns, rows, share: Array.from(potentialAt(solved, bodyV, points)) };
}

/** From the group's outermost metal in the east outwards, where the surface falls off steepest, to the east. */
function lineFrom(solved: SolvedBodies, bodyV: Float64Array, box: Box, own: readonly number[]) {
  const { middleM } = solved.segments;
  const start = own.reduce((best, j) => (middleM[3 * j]! > middleM[3 * best]! ? j : best));
  const [eastM, northM] = [middleM[3 * start]!, middleM[3 * start + 1]!];
  const lengthM = Math.max(10, (box.east - box.west) / 2);
  const count = Math.ceil(lengthM / (paceM / 4)) + 1;
  const distances = Array.from({ length: count }, (_, k) => (k * paceM) / 4);
  const points = Float64Array.from(distances.flatMap((d) => [eastM + d, northM, 0]));
  const share = potentialAt(solved, bodyV, points);
  const perPace = 4;
  let step = { share: 0, atM: 0 };
  for (let k = 0; k + perPace < count; k++) {
    const difference = Math.abs(share[k]! - share[k + perPace]!);
    if (difference > step.share) step = { share: difference, atM: distances[k]! };
  }
  return {
    line: {
      fromM: [eastM, northM] as const,
      toM: [eastM + distances.at(-1)!, northM] as const,
      points: distances.map((distanceM, k) => ({ distanceM, share: share[k]! })),
    },
    step,
  };
}

/** Nobody on the ground reaches what stands higher, metres: IEC 60364-4-41, arm's reach (from memory). */
const tooHighM = 2.5;

/** Sections of things that a person outdoors can touch. */
const touchable: ReadonlySet<string> = new Set(['supports', 'bars', 'equipment', 'metalwork']);

/** Worst of what stands outdoors above the soil and belongs to the group: its potential less that of the ground an arm away. */
function touchOf(
  run: BondingRun,
  { parts }: { readonly parts: readonly string[] },
  solved: SolvedBodies,
  bodyV: Float64Array,
) {
  const index = siteIndex(run.site);
  const places = positionsOf(run.site, (id) => index.parts.get(id));
  const outdoors = parts.flatMap((id) => {
    const part = index.parts.get(id);
    const at: Position | null = part !== undefined && touchable.has(part.section) ? places.of(id) : null;
    const isInReach = at !== null && at[2] < tooHighM && part?.kind !== 'roof mast';
    return part === undefined || !isInReach || (part.where ?? 'outside') !== 'outside' ? [] : [{ id, at }];
  });
  let worst: { readonly share: number; readonly part: string } | null = null;
  for (const { id, at } of outdoors) {
    const around = Float64Array.from(
      [0, 1, 2, 3, 4, 5, 6, 7].flatMap((k) => {
        const angle = (k * Math.PI) / 4;
        return [at[0] + reachM * Math.cos(angle), at[1] + reachM * Math.sin(angle), 0];
      }),
    );
    const share = 1 - Math.min(...potentialAt(solved, bodyV, around));
    if (worst === null || share > worst.share) worst = { share, part: id };
  }
  return worst;
}
