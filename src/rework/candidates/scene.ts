import type { Study, StudyFinding, StudyPart } from '../../study/study.ts';
import { byCodeUnit } from '../../units/by-code-unit.ts';
import { type NoRoute, routeBetween, routeFromPlace, type SiteRoute } from '../routes/route-between.ts';
import { wrongOf } from '../wrong-of.ts';

export type Group = Study['bonding']['groups'][number];

/** A study as works are looked for in it: its parts by id, its groups, what is wrong, and names that are free. */
export interface Scene {
  readonly study: Study;
  /** Not met and not agreed to, in the order of the study; folded ones too. */
  readonly wrong: readonly StudyFinding[];
  readonly part: (id: string) => StudyPart | undefined;
  /** Parts of a section that are there or will be, by id. */
  readonly parts: (section: string) => readonly StudyPart[];
  /** Group of a part or of a point of it; null where no group holds it. */
  readonly groupOf: (point: string) => Group | null;
  /**
   * The group that bonds lead to: the service's, else the one with most electrodes that are surely there. null: there is none,
   * and whether one that is perhaps there is there is for somebody to look at first.
   */
  readonly main: Group | null;
  /** A name that nothing in the file has. */
  readonly newId: (wished: string) => string;
  /** The way in the ground between two points, each sought once; null: there is none, or a place is not known. */
  readonly route: (from: string, to: string) => GroundWay | null;
  /** The same from a place where nothing is yet. */
  readonly routeFrom: (spot: readonly [number, number], to: string) => GroundWay | null;
  /** What is wrong by these rules, in the order of the study. */
  readonly findings: (...rules: readonly string[]) => readonly StudyFinding[];
}

/** Where metal could run in the ground: east, north in metres. */
export interface GroundWay {
  readonly routeM: readonly (readonly [number, number])[];
  readonly lengthM: number;
}

export function sceneOf(study: Study): Scene {
  const byId = new Map(study.parts.map((p) => [p.id, p]));
  const groups = new Map(study.bonding.groups.map((g) => [g.id, g]));
  const taken = new Set(study.written?.ids ?? study.parts.map((p) => p.id));
  const wrong = wrongOf(study.findings);
  return {
    study,
    wrong,
    part: (id) => byId.get(id),
    parts: (section) => study.parts.filter((p) => p.section === section && p.present !== 'no').sort(byPartId),
    groupOf: (point) => groups.get(byId.get(ownerOf(point))?.group ?? '') ?? null,
    main: mainGroup(study),
    newId: (wished) => freeId(taken, wished),
    route: routesOf(study),
    routeFrom: (spot, to) => wayOf(routeFromPlace(study, spot, ownerOf(to))),
    findings: (...rules) => wrong.filter((f) => rules.includes(f.rule)),
  };
}

const byPartId = (a: StudyPart, b: StudyPart) => byCodeUnit(a.id, b.id);

/** Part that a point is of: `tower@2 ft`, `tower.leg1@base`, `rods.2`. */
export function ownerOf(point: string): string {
  return point.split('@')[0]!.split('.')[0]!;
}

function routesOf(study: Study): Scene['route'] {
  const known = new Map<string, GroundWay | null>();
  return (from, to) => {
    const key = JSON.stringify([ownerOf(from), ownerOf(to)]);
    const before = known.get(key);
    if (before !== undefined) return before;
    const way = wayOf(routeBetween(study, [ownerOf(from), ownerOf(to)]));
    known.set(key, way);
    return way;
  };
}

function wayOf(found: SiteRoute | NoRoute): GroundWay | null {
  return 'none' in found ? null : { routeM: found.legs[0]?.routeM ?? [], lengthM: found.lengthM };
}

function mainGroup({ bonding, parts }: Study): Group | null {
  const withService = bonding.groups.find((g) => g.hasService === true);
  if (withService !== undefined) return withService;
  const sure = new Set(parts.filter(isSure).map((p) => p.id));
  const countOf = (g: Group) => g.electrodes.filter((e) => sure.has(ownerOf(e))).length;
  const most = Math.max(0, ...bonding.groups.map(countOf));
  return most === 0 ? null : (bonding.groups.find((g) => countOf(g) === most) ?? null);
}

/** There, or to be built: nothing is led to what may not be there. */
export function isSure({ present }: Pick<StudyPart, 'present'>): boolean {
  return present === 'yes';
}

function freeId(taken: ReadonlySet<string>, wished: string): string {
  const clean = wished.replace(/[^\p{L}\p{M}\p{N}_-]+/gu, '-');
  for (let n = 1; ; n++) {
    const id = n === 1 ? clean : `${clean}-${n}`;
    if (!taken.has(id)) return id;
  }
}
