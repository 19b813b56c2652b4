import type { BondingRun } from '../bonding/bonding-of.ts';
import { siteIndex } from '../bonding/site-index.ts';
import { liftedPotentials } from '../electrodes/lifted-potentials.ts';
import type { SolvedBodies } from '../electrodes/solve-bodies.ts';
import { eastEndOf, type StepLine, stepLine, touchShares } from '../electrodes/step-and-touch.ts';
import { isSameSurface, metalBelow } from '../electrodes/surface-alike.ts';
import { extentOf, gridFrame, type SurfaceGrid, surfaceGrid } from '../electrodes/surface-grid.ts';
import { positionsOf } from '../site/positions-of.ts';
import type { Position } from '../site/site.ts';
import type { Ground } from './ground.ts';
import { groupBodies } from './group-bodies.ts';

/** Potential of the surface while a group of electrodes is at one volt against remote earth, likely soil. */
export interface GroundSurface {
  readonly group: string;
  readonly grid: SurfaceGrid;
  readonly line: Omit<StepLine, 'step'>;
  readonly step: StepLine['step'];
  readonly touch: { readonly share: number; readonly part: string } | null;
}

/** The line of steps is at least so long, and at most: nobody walks further in search of the worst. Metres. */
const leastLineM = 10;
const mostLineM = 200;

/** One for each group that has an electrode with a place. All its electrodes and buried wires at one potential. */
export function groundSurfaces(run: BondingRun, ground: Ground): readonly GroundSurface[] {
  const solved = ground.together.likely;
  if (solved === null) return [];
  const drawn: Drawn[] = [];
  return run.bonding.groups.flatMap((group) => {
    if (!group.electrodes.some((e) => ground.partAt.includes(e))) return [];
    const members = groupBodies(group, ground);
    const bodyV = liftedPotentials(solved, members, tiedOutside(ground, members));
    if (bodyV === null) return [];
    const { grid, line } = drawnSurface({ solved, bodyV, members }, drawn);
    const { step, ...along } = line;
    return [{ group: group.id, grid, line: along, step, touch: touchOf(run, group, solved, bodyV) }];
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

interface Lifted {
  readonly solved: SolvedBodies;
  readonly bodyV: Float64Array;
  readonly members: readonly number[];
}

interface Drawn {
  readonly metal: string;
  readonly grid: SurfaceGrid;
  readonly line: StepLine;
}

/** Lone rods far from anything are many: one that lies like one before it has the same grid and line at its own place. */
function drawnSurface({ solved, bodyV, members }: Lifted, drawn: Drawn[]): Drawn {
  const { segments } = solved;
  const frame = gridFrame(segments, members);
  const metal = metalBelow(segments, frame, members);
  // from the outermost metal outwards, where the surface falls off steepest
  const start = eastEndOf(segments, members);
  const alike = drawn.find((d) => d.metal === metal && isSameSurface(solved, bodyV, frame, d.grid));
  if (alike !== undefined) {
    const lengthM = alike.line.toM[0] - alike.line.fromM[0];
    const line = { ...alike.line, fromM: start, toM: [start[0] + lengthM, start[1]] as const };
    return { metal, grid: { ...frame, share: alike.grid.share }, line };
  }
  const { eastM, westM } = extentOf(segments, members);
  const line = stepLine(solved, bodyV, start, [1, 0], Math.min(mostLineM, Math.max(leastLineM, (eastM - westM) / 2)));
  const made = { metal, grid: surfaceGrid(solved, bodyV, frame), line };
  drawn.push(made);
  return made;
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
  const shares = touchShares(
    solved,
    bodyV,
    1,
    outdoors.map(({ at }) => [at[0], at[1]] as const),
  );
  let worst: { readonly share: number; readonly part: string } | null = null;
  for (const [i, { id }] of outdoors.entries()) {
    const share = shares[i]!;
    if (worst === null || share > worst.share) worst = { share, part: id };
  }
  return worst;
}
