import { feedersFirst } from './feeders.ts';
import { type Group, isSure, ownerOf, type Scene } from './scene.ts';
import { isOnOtherSupply } from './two-supplies.ts';

/** Groups that a bond to the main one makes sense of. */
export function apartGroups({ study, main }: Scene): readonly Group[] {
  if (main === null) return [];
  return study.bonding.groups.filter((g) => g.id !== main.id && g.hasService !== true);
}

/** With electrodes of its own it is a group that is bonded; without, metal that is tied. */
export function bondKind(scene: Scene, group: Group): 'bond' | 'tie-metalwork' {
  return ownElectrodes(scene, group).length > 0 ? 'bond' : 'tie-metalwork';
}

/** What a group is called by in a work: an electrode, else a bar, else the first of its parts. */
export function bondSubject(scene: Scene, group: Group): string {
  const bar = group.parts.find((p) => scene.part(p)?.section === 'bars');
  return ownElectrodes(scene, group)[0] ?? bar ?? group.id;
}

/** Electrodes that something may be led to: surely there, and not the supplier's. */
export function ownElectrodes(scene: Scene, group: Group): readonly string[] {
  return group.electrodes.filter((e) => {
    const part = scene.part(ownerOf(e));
    return part !== undefined && part.owner !== 'utility' && isSure(part);
  });
}

/**
 * Sub-panels of a group of boxes alone whose feeder has no protective conductor, or of which nobody said: a fault comes back with
 * the feeder, never by a loose wire.
 */
export function cutOffPanels(scene: Scene, group: Group): readonly string[] {
  const parts = group.parts.flatMap((id) => scene.part(id) ?? []);
  if (!parts.every((p) => p.section === 'equipment' || p.section === 'arresters')) return [];
  return parts.filter((p) => p.kind === 'sub-panel' && feedersFirst(scene, p.id).length > 0).map((p) => p.id);
}

/**
 * Id of the work that ties a part to the main group, or that lays the protective conductor which does; null where it is tied
 * already, stands on another supply, or there is nothing to tie it to.
 */
export function bondIdFor(scene: Scene, part: string): string | null {
  const group = scene.groupOf(part);
  if (group === null || scene.main === null || group.id === scene.main.id) return null;
  if (isOnOtherSupply(scene, group.id)) return null;
  const [panel] = cutOffPanels(scene, group);
  if (panel !== undefined) return feedersFirst(scene, panel)[0] ?? null;
  return `${bondKind(scene, group)}:${bondSubject(scene, group)}`;
}
