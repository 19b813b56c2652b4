import type { StudyPart } from '../../study/study.ts';
import { ownElectrodes } from './apart-groups.ts';
import { type Group, isSure, ownerOf, type Scene } from './scene.ts';
import { isOnWall } from './wall-of-panel.ts';

/** Points of a group that a bond may land on: electrodes, bars and masts; where it has none, whatever metal it is. */
export function landingsOf(scene: Scene, group: Group): readonly string[] {
  const good = [...ownElectrodes(scene, group), ...idsIn(scene, group, 'bars'), ...masts(scene, group)];
  if (good.length > 0) return good;
  const roof = idsIn(scene, group, 'supports').map((id) => `${id}@base`);
  return roof.length > 0 ? roof : idsIn(scene, group, 'equipment', 'metalwork', 'antennas', 'arresters');
}

/** Points of the main group for one that is to be tied to it: a box to a bar in the room, a pipe to the service, a fence to what is near. */
export function landingsFor(scene: Scene, group: Group, main: Group): readonly string[] {
  const { service } = scene.study.site;
  const panel = main.parts.includes(service) ? [service] : [];
  const bars = idsIn(scene, main, 'bars').filter((id) => id !== service);
  const electrodes = ownElectrodes(scene, main);
  const parts = group.parts.map((id) => scene.part(id)).filter((p) => p !== undefined);
  const others = scene
    .parts('bars')
    .filter(isSure)
    .map((b) => b.id);
  if (parts.every(isBox)) {
    const building = buildingOfBoxes(scene, group);
    if (building !== null) return ofBuilding(scene, building, parts, bars, others);
    return firstOf(barsFor(scene, parts, bars), barsFor(scene, parts, others), panel, electrodes);
  }
  if (parts.every((p) => p.section === 'metalwork' && /pipe/.test(p.kind))) return firstOf(panel, bars, electrodes);
  const all = [...electrodes, ...bars, ...(electrodes.length > 0 ? [] : panel), ...masts(scene, main)];
  return all.length > 0 ? all : idsIn(scene, main, 'equipment', 'metalwork');
}

/** The one of several buildings that all boxes of a group stand in; null: there is only one, or nobody knows. */
export function buildingOfBoxes(scene: Scene, group: Group): string | null {
  const { buildings } = scene.study;
  const parts = group.parts.flatMap((id) => scene.part(id) ?? []);
  const [where, ...others] = [...new Set(parts.flatMap((p) => p.where ?? []))];
  const isDeclared = buildings.length > 1 && buildings.some((b) => b.id === where);
  return isDeclared && others.length === 0 && parts.every(isBox) ? where! : null;
}

/** Bars, else panels of the building itself: a wire across the garden holds no box. */
function ofBuilding(
  scene: Scene,
  building: string,
  boxes: readonly StudyPart[],
  bars: readonly string[],
  others: readonly string[],
): readonly string[] {
  const isHere = (id: string) => {
    const where = scene.part(id)?.where ?? 'outside';
    return where === building || (where === 'outside' && isOnWall(scene, id, building) !== false);
  };
  const panels = (scene.main?.parts ?? []).filter((id) => {
    const part = scene.part(id);
    return part?.section === 'equipment' && /panel|meter/.test(part.kind) && part.where === building;
  });
  return firstOf(
    barsFor(scene, boxes, bars.filter(isHere)),
    barsFor(scene, boxes, others.filter(isHere)),
    panels.filter((id) => id === scene.study.site.service),
    panels,
  );
}

function isBox(part: StudyPart): boolean {
  return part.section === 'equipment' || part.section === 'arresters';
}

/** Bars where the box is; else those of the station, else any. */
function barsFor(scene: Scene, boxes: readonly StudyPart[], bars: readonly string[]): readonly string[] {
  const wheres = boxes.map((b) => b.where);
  const kindOf = (id: string) => scene.part(id)?.kind;
  return firstOf(
    bars.filter((id) => wheres.includes(scene.part(id)?.where ?? null) && kindOf(id) === 'station ground bar'),
    bars.filter((id) => kindOf(id) === 'station ground bar'),
    bars.filter((id) => kindOf(id) === 'entry panel'),
    bars,
  );
}

function firstOf(...lists: readonly (readonly string[])[]): readonly string[] {
  return lists.find((l) => l.length > 0) ?? [];
}

/** Parts of a group in these sections, those that are not there left out; of bars also those that may not be there. */
function idsIn(scene: Scene, group: Group, ...sections: readonly string[]): readonly string[] {
  return group.parts.filter((id) => {
    const part = scene.part(id);
    if (part === undefined || !sections.includes(part.section) || ownerOf(id) !== id) return false;
    return part.section === 'bars' ? isSure(part) : part.present !== 'no';
  });
}

function masts(scene: Scene, group: Group): readonly string[] {
  return idsIn(scene, group, 'supports')
    .filter((id) => isOnGround(scene, id))
    .map((id) => `${id}@base`);
}

/** A mast on a roof is no place to lead a bond to. */
export function isOnGround(scene: Scene, support: string): boolean {
  const part = scene.part(support);
  return part?.kind !== 'roof mast' && (part?.positionM?.[2] ?? 0) < 1;
}
