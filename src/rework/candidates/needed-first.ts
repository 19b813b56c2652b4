import type { StudyPart } from '../../study/study.ts';
import { bondIdFor } from './apart-groups.ts';
import { ownerOf, type Scene } from './scene.ts';
import { isUs } from './usual-wire.ts';

const shielded: readonly string[] = ['coax', 'cable tv'];

/** Lines whose shield would carry a group to the service once one end of it is tied there. */
export function shieldedLinesOf(scene: Scene, box: string): readonly string[] {
  return scene.study.lines.filter((l) => shielded.includes(l.kind) && l.stops.includes(box)).map((l) => l.id);
}

/**
 * Works without which a shield that is bonded would be the only tie of a mast, a bar or an electrode to the service: bonds of
 * all groups that the line meets on its way.
 */
export function bondsOfLine(scene: Scene, line: string): readonly string[] {
  const row = scene.study.lines.find((l) => l.id === line);
  if (row === undefined || !shielded.includes(row.kind)) return [];
  const met = row.stops.map((s) => ownerOf(s.replace(/^bond /, '')));
  const groups = met.map((id) => scene.groupOf(id)).filter((g) => g !== null);
  const wanting = groups.filter((g) => g.parts.some((id) => isGrounding(scene.part(id))));
  return [...new Set(wanting.flatMap((g) => bondIdFor(scene, g.id) ?? []))];
}

function isGrounding(part: StudyPart | undefined): boolean {
  return part !== undefined && ['electrodes', 'supports', 'bars'].includes(part.section);
}

/**
 * The rods that a service needs that has no electrode, before masts and protectors are led to it; [] where it has one, where
 * a wire of it leads nobody knows where, and where the supplier's may be the one (regions other than US and Canada).
 */
export function rodOfService(scene: Scene): readonly string[] {
  const { main, study } = scene;
  const isKnown = study.site.service !== 'unknown' && study.site.service !== 'none';
  if (main === null || !isKnown || !isUs(study.site.region) || main.electrodes.length > 0) return [];
  const isOpen = study.conductors.some((c) => [c.from, c.to].includes('unknown') && leads(c, main.parts));
  return isOpen ? [] : [serviceRodId(scene)];
}

function leads({ from, to }: { readonly from: string; readonly to: string }, parts: readonly string[]): boolean {
  return [from, to].some((p) => parts.includes(ownerOf(p)));
}

export function serviceRodId(scene: Scene): string {
  return `add-rods:${scene.study.site.service}`;
}

/** Works without which what lands on a part hangs on nothing: the rods of the service, and the bond of the part itself. */
export function neededToLand(scene: Scene, part: string): readonly string[] {
  const bond = bondIdFor(scene, part);
  return [...rodOfService(scene), ...(bond === null ? [] : [bond])];
}
