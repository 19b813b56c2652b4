import { ownElectrodes } from './apart-groups.ts';
import { isOnGround } from './landings.ts';
import { type Group, ownerOf, type Scene } from './scene.ts';

/** Points of a group that a second way could join: on the side that is lost, and on the side that is kept. */
export interface Sides {
  readonly lost: readonly string[];
  readonly kept: readonly string[];
}

/**
 * The two sides of a group once conductors and joints are gone. What is kept is where the service is, else where most
 * electrodes are; pieces between two of those that are gone are on neither side. A part that a lost clamp sits on is taken
 * only where there is no other: the same clamp would go again.
 */
export function sidesOf(scene: Scene, group: Group, cut: ReadonlySet<string>, part: string): Sides {
  const { study } = scene;
  const ties = study.bonding.ties.filter((t) => t.kind === 'metal' && !isGone(t.part, cut));
  const lost = reach(part, ties);
  const others = group.parts.filter((id) => !lost.has(id));
  const home = others.includes(study.site.service) ? study.site.service : mostEarthed(scene, others, ties);
  const kept = home === null ? new Set<string>() : reach(home, ties);
  const clamped = new Set(study.joints.filter((j) => cut.has(j.id) && j.on !== null).map((j) => ownerOf(j.on!)));
  const named = new Set(
    [...clamped].filter((id) => study.joints.some((j) => cut.has(j.id) && j.on === id && isNamed(scene, j.id))),
  );
  const own = pointsIn(scene, group, lost);
  const spared = own.filter((p) => !named.has(ownerOf(p)));
  return { lost: spared.length > 0 ? spared : own, kept: pointsIn(scene, group, kept) };
}

/** A clamp that the file names holds more than one wire. */
function isNamed(scene: Scene, joint: string): boolean {
  return scene.part(joint)?.section === 'joints';
}

/** A tie is gone with its conductor, or with a joint of it. */
function isGone(conductor: string, cut: ReadonlySet<string>): boolean {
  return cut.has(conductor) || [...cut].some((c) => c.startsWith(`${conductor}:`));
}

interface Pair {
  readonly a: string;
  readonly b: string;
}

function reach(from: string, ties: readonly Pair[]): ReadonlySet<string> {
  const seen = new Set([from]);
  const queue = [from];
  for (let at = queue.pop(); at !== undefined; at = queue.pop()) {
    const here = at;
    const next = ties.flatMap(({ a, b }) => (a === here ? [b] : b === here ? [a] : [])).filter((id) => !seen.has(id));
    for (const id of next) seen.add(id);
    queue.push(...next);
  }
  return seen;
}

/** Of the pieces that are left the one with most electrodes, by one of its parts. */
function mostEarthed(scene: Scene, parts: readonly string[], ties: readonly Pair[]): string | null {
  const electrodes = parts.filter((id) => scene.part(id)?.section === 'electrodes');
  const count = (id: string) => [...reach(id, ties)].filter((p) => scene.part(p)?.section === 'electrodes').length;
  return electrodes.reduce<string | null>((best, id) => (best === null || count(id) > count(best) ? id : best), null);
}

/** Electrodes, bars, feet of masts and the service; where there are none of them the boxes. */
function pointsIn(scene: Scene, group: Group, side: ReadonlySet<string>): readonly string[] {
  const parts = group.parts.filter((id) => side.has(id) && scene.part(id)?.present !== 'no');
  const of = (...sections: readonly string[]) => parts.filter((id) => sections.includes(scene.part(id)?.section ?? ''));
  const masts = of('supports')
    .filter((id) => isOnGround(scene, id))
    .map((id) => `${id}@base`);
  const service = parts.filter((id) => id === scene.study.site.service);
  const electrodes = ownElectrodes(scene, group).filter((id) => side.has(ownerOf(id)));
  const good = [...new Set([...electrodes, ...of('bars'), ...masts, ...service])];
  if (good.length > 0) return good;
  const roof = of('supports').map((id) => `${id}@base`);
  return roof.length > 0 ? roof : of('arresters', 'equipment', 'metalwork');
}
