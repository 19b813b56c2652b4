import type { StudyFinding } from '../../study/study.ts';
import { byCodeUnit } from '../../units/by-code-unit.ts';
import { ownElectrodes } from './apart-groups.ts';
import { besideWall, buildingAt, nearestOn, roundWallM } from './building-walls.ts';
import { endSlackM } from './lay-conductor.ts';
import { comesDownM, type NewLead } from './moved-panel.ts';
import { placeM, plannedLength, typedPlace } from './owner-units.ts';
import { carriedBy, type PanelShift, relaidM, wiresOf } from './panel-shift.ts';
import { ownerOf, type Scene } from './scene.ts';
import { apartM, type Spot, spotsOf } from './way-to-lay.ts';

/** A panel where it is, and what is wrong with that. */
export interface PanelPlace {
  readonly panel: string;
  readonly building: string;
  readonly from: Spot;
  readonly about: readonly StudyFinding[];
}

/** A place on the wall that is better, with the lead that the panel has there. */
export interface BetterSpot {
  readonly shift: PanelShift;
  readonly lead: NewLead;
  readonly isAtService: boolean;
  /** Findings that are gone there, or no more than advice. */
  readonly answers: readonly StudyFinding[];
}

/** A hand's breadth off the wall. */
const standOffM = 0.3;
/** Nearer than this it is the same place: a shorter wire does there. Ours. */
const leastMoveM = 1;

/**
 * Places on the walls of its building where what is wrong with a panel is gone: the one of those by an electrode that is
 * nearest to where it hangs, and the one beside the service. What the file gives no place to is no goal.
 */
export function betterSpots(scene: Scene, place: PanelPlace): readonly BetterSpot[] {
  const byElectrodes = electrodesFor(scene, place.panel)
    .map((electrode) => spotAt(scene, place, electrode, goalOf(scene, place, electrode)))
    .filter((s) => s !== null && s.answers.length > 0) as readonly BetterSpot[];
  const moveM = ({ shift }: BetterSpot) => roundWallM(scene, place.building, shift.from, shift.to) ?? Infinity;
  const sorted = [...byElectrodes].sort(
    (a, b) =>
      b.answers.length - a.answers.length ||
      Number(isLong(a)) - Number(isLong(b)) ||
      moveM(a) - moveM(b) ||
      byCodeUnit(a.lead.to, b.lead.to),
  );
  const best = sorted[0] ?? null;
  const atService = besideService(scene, place);
  const isOther = atService !== null && atService.answers.length > 0 && !isSamePlace(best, atService);
  return [...(best === null ? [] : [best]), ...(isOther ? [atService] : [])];
}

function isLong({ lead }: BetterSpot): boolean {
  return lead.lengthM > shortM;
}

function isSamePlace(a: BetterSpot | null, b: BetterSpot): boolean {
  return a !== null && apartM(a.shift.to, b.shift.to) < leastMoveM;
}

/**
 * Electrodes of the service's group that stand at one known place or along a known route, and that nothing but advice is
 * found about: a panel is not led to one that has to be made good first. None where the panel is in another group.
 */
function electrodesFor(scene: Scene, panel: string): readonly string[] {
  const { main } = scene;
  if (main === null || scene.groupOf(panel)?.id !== main.id) return [];
  return ownElectrodes(scene, main).filter((id) => {
    const part = scene.part(id);
    const isWrong = scene.wrong.some((f) => f.severity !== 'advice' && f.at.includes(id));
    return part?.count === 1 && !isWrong && !/rods|radial/.test(part.kind) && spotsOf(part).length > 0;
  });
}

/** Where an electrode is the nearest to the panel as it hangs now. */
function goalOf(scene: Scene, { from }: PanelPlace, electrode: string): Spot | null {
  return nearestOn(spotsOf(scene.part(electrode)), from);
}

function besideService(scene: Scene, place: PanelPlace): BetterSpot | null {
  const [service] = spotsOf(scene.part(scene.study.site.service));
  const beside = service === undefined ? null : besideWall(scene, place.building, service, standOffM);
  if (beside === null) return null;
  const near = electrodesFor(scene, place.panel).flatMap((electrode) => {
    const end = nearestOn(spotsOf(scene.part(electrode)), beside);
    return end === null ? [] : [{ electrode, endM: apartM(end, beside) }];
  });
  const nearest = near.reduce<(typeof near)[number] | null>((x, y) => (x === null || y.endM < x.endM ? y : x), null);
  const found = nearest === null ? null : spotAt(scene, place, nearest.electrode, service!);
  return found === null ? null : { ...found, isAtService: true };
}

/** The panel on the wall nearest to a goal, tied to an electrode; null: no wall is known there, or it hangs there already. */
function spotAt(scene: Scene, place: PanelPlace, electrode: string, goal: Spot | null): BetterSpot | null {
  const { panel, building, from } = place;
  const { units } = scene.study.site;
  const wished = goal === null ? null : besideWall(scene, building, goal, standOffM);
  if (wished === null) return null;
  const to = placeM(typedPlace(wished, units), units);
  const moveM = roundWallM(scene, building, from, to);
  // a place rounded into a house, or nearer to another one, is none
  if (moveM === null || moveM < leastMoveM || buildingAt(scene, to) !== building) return null;
  const end = nearestOn(spotsOf(scene.part(electrode)), to);
  const { lengthM } = plannedLength(apartM(to, end!) + endSlackM, units);
  const shift = { panel, building, from, to, downM: comesDownM(scene, panel), carried: carriedBy(scene, panel) };
  const lead = { to: electrode, lengthM };
  const hereM = leadHereM(scene, place);
  const isWorse = lengthM > Math.max(hereM, shortM);
  const answers = isWorse
    ? []
    : place.about.filter((f) => (lengthM < hereM || isOfWire(f)) && isGone(scene, shift, lead, f));
  return { shift, lead, isAtService: false, answers };
}

/** About a wire that ends on the panel; else about its way into the soil. */
function isOfWire({ rule }: StudyFinding): boolean {
  return rule === 'bond-between-groups-long';
}

/** What its lead could be where it hangs, to the nearest electrode: a wire that is cut shorter moves no panel. */
function leadHereM(scene: Scene, { panel, from }: PanelPlace): number {
  const ends = electrodesFor(scene, panel).map((id) => apartM(from, nearestOn(spotsOf(scene.part(id)), from)!));
  return plannedLength(Math.min(...ends) + endSlackM, scene.study.site.units).lengthM;
}

/** Whether a finding is gone at the new place, or is advice there and was a defect; as far as lengths tell: whoever tries it knows. */
function isGone(scene: Scene, shift: PanelShift, lead: NewLead, f: StudyFinding): boolean {
  const limit = f.measured?.limit ?? 0;
  if (isOfWire(f)) return wireThereM(scene, shift, lead, f.at[0]!) <= limit;
  if (f.rule === 'entry-lead-volts') return voltsThere(f, lead) <= spare * limit;
  return lead.lengthM <= (f.severity === 'advice' ? shortM : limit);
}

/** The limit that bond-run-short has for advice; what it calls a defect is longer. */
const shortM = 1;
/** Volts do not go with the length alone. */
const spare = 0.7;

function voltsThere({ because }: StudyFinding, lead: NewLead): number {
  const { leadV, lengthM } = because.values as Readonly<Record<string, unknown>>;
  const before = typeof lengthM === 'number' ? lengthM : Number.NaN;
  return typeof leadV === 'number' && before > 0 ? (leadV * lead.lengthM) / before : Infinity;
}

function wireThereM(scene: Scene, shift: PanelShift, lead: NewLead, id: string): number {
  const wire = wiresOf(scene, shift.carried).find((w) => w.row.id === id);
  if (wire?.row.lengthM == null) return Infinity;
  if (ownerOf(wire.other) === ownerOf(lead.to)) return lead.lengthM;
  return plannedLength(relaidM(scene, shift, wire.other, wire.row.lengthM), scene.study.site.units).lengthM;
}
