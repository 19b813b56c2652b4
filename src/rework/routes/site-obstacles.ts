import type { Study, StudyPart } from '../../study/study.ts';
import { byCodeUnit } from '../../units/by-code-unit.ts';
import type { Area, Barrier, Ground, Trench } from './ground.ts';
import { distanceM, type Point } from './point.ts';
import { runOnEnds } from './run-on-ends.ts';

/** Beside a wall: room for a spade and for the footing. Ours, no source. */
export const WALL_CLEARANCE_M = 0.3;
/** Beside a gas pipe, whose place is seldom known to a hand's breadth. Ours, no source; the supplier's own figure outranks it. */
export const GAS_CLEARANCE_M = 1;
/** Beside a pool, a tank: within 1.5 m (5 ft) of a pool metal joins the pool's own bonding (NEC 680.26(B), from memory). */
export const POOL_CLEARANCE_M = 1.5;
/** What a metre in a trench that is there counts, against a metre of new one. Ours: half the work is the filling. */
export const TRENCH_FACTOR = 0.5;

/** An end of a pipe this near to a wall or to a tank ends there; any other is taken to run on. Ours. */
const AT_ITS_END_M = 1.5;

/** Kinds of metalwork that routes go round, as closed shapes or as runs. */
const shapes: Readonly<Record<string, number>> = { pool: POOL_CLEARANCE_M, tank: POOL_CLEARANCE_M };
const runs: Readonly<Record<string, number>> = { 'gas pipe': GAS_CLEARANCE_M };

/** Lines whose trench a bonding conductor may share; mains, telephone and cable TV belong to others. */
const ownLines: readonly string[] = ['coax', 'open-wire', 'single wire', 'control'];

/**
 * The ground that bonding routes of a site run in: buildings, pools and tanks as closed shapes, gas pipes as runs that are
 * not crossed, buried conductors, wires and station lines with typed routes as trenches. Parts that are not there, or whose
 * place is not known, are left out. A gas pipe whose end lies at no wall and no tank goes on for nobody knows how far: it
 * is drawn on past all that the site has, and no route goes round its end. Clearances are ours.
 */
export function siteObstacles(study: Study): Ground {
  const there = study.parts.filter((p) => p.present !== 'no');
  const areas = [...buildingsOf(study), ...there.flatMap(areaOf)].sort((a, b) => byCodeUnit(a.id, b.id));
  return {
    areas,
    barriers: barriersOf(there, areas, placesOf(study)),
    trenches: there.flatMap(trenchOf).sort((a, b) => byCodeUnit(a.id, b.id)),
  };
}

function buildingsOf(study: Study): readonly Area[] {
  return study.buildings
    .filter((b) => b.cornersM.length > 0)
    .map((b) => ({ id: b.id, cornersM: b.cornersM.map(onGround), clearanceM: WALL_CLEARANCE_M }));
}

function areaOf(part: StudyPart): readonly Area[] {
  const clearanceM = shapes[part.kind];
  if (part.section !== 'metalwork' || clearanceM === undefined) return [];
  const cornersM = placesOfPart(part);
  return cornersM.length === 0 ? [] : [{ id: part.id, cornersM, clearanceM }];
}

function barriersOf(parts: readonly StudyPart[], areas: readonly Area[], places: readonly Point[]): readonly Barrier[] {
  const pipes = parts.filter((p) => p.section === 'metalwork' && runs[p.kind] !== undefined);
  return pipes
    .map((p) => ({ id: p.id, routeM: placesOfPart(p), clearanceM: runs[p.kind]! }))
    .filter((b) => b.routeM.length > 0)
    .map((b) => ({ ...b, ...runOnEnds(b.routeM, areas, places, AT_ITS_END_M) }))
    .sort((a, b) => byCodeUnit(a.id, b.id));
}

function trenchOf(part: StudyPart): readonly Trench[] {
  if (!isTrench(part)) return [];
  const routeM = part.routeM.map(onGround).filter((p, i, all) => i === 0 || distanceM(p, all[i - 1]!) > 0);
  return routeM.length < 2 ? [] : [{ id: part.id, routeM, factor: TRENCH_FACTOR }];
}

/** Whether its way through the ground was typed: two ends alone do not say how it lies. */
function isTrench({ section, kind, typed }: StudyPart): boolean {
  if (section === 'electrodes') return kind === 'buried wire' && typed.route !== undefined;
  if (section === 'conductors') return isYes(typed.buried) && typed.route !== undefined;
  return section === 'lines' && ownLines.includes(kind) && isYes(typed.buried) && /\bbend:/.test(typed.path ?? '');
}

function isYes(typed: string | undefined): boolean {
  return typed !== undefined && !/^\s*(?:no|false|unknown)\s*$/i.test(typed);
}

/** All places on the ground that a study has. */
function placesOf(study: Study): readonly Point[] {
  return [...study.parts.flatMap(placesOfPart), ...study.buildings.flatMap((b) => b.cornersM.map(onGround))];
}

function placesOfPart({ routeM, positionM }: StudyPart): readonly Point[] {
  if (routeM.length > 0) return routeM.map(onGround);
  return positionM === null ? [] : [onGround(positionM)];
}

/** A place of a study seen from above. */
export function onGround([east, north]: readonly [number, number, number]): Point {
  return [east, north];
}
