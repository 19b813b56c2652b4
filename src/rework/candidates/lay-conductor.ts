import type { SiteChange } from '../../study/try-change.ts';
import type { ChangeValue } from '../../study/written-lists.ts';
import type { Interval } from '../../units/interval.ts';
import type { Material, WorkRun } from '../work.ts';
import { areOnOneRoof, comesDownBy, typedWay } from './foot-height.ts';
import { plannedLength, type Units } from './owner-units.ts';
import { ownerOf, type Scene } from './scene.ts';
import { lugForBoth, rodWeld, type UsualJoint, usualJoint } from './usual-joint.ts';
import { type Duty, usualWire } from './usual-wire.ts';
import { type WayToLay, wayToLay } from './way-to-lay.ts';

export type { Duty } from './usual-wire.ts';

/** Metal to lay between two points, as it is typed, bought and told. */
export interface Laid {
  readonly change: SiteChange;
  readonly materials: readonly Material[];
  readonly run: WorkRun;
  readonly wire: string;
  /** Values for the sentences of its work: `down` where it comes down from a roof or a wall. */
  readonly says: Readonly<Record<string, string>>;
}

export interface ToLay {
  /** A name that is free. */
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly duty: Duty;
  readonly wire?: string | undefined;
  /** Where its way is known already. */
  readonly way?: WayToLay | null;
  /** For both ends beside what the way is long; 0 where that is counted. */
  readonly slackM?: number;
  /** Ends that the same work drives. */
  readonly rods?: readonly string[];
  /** Joints that its ends want, where a part does not tell; null: as usual. */
  readonly joints?: readonly (UsualJoint | null)[];
}

/** Depth of a bonding wire that joins electrodes: below a spade's first cut. Ours; local frost and ploughs may ask for more. */
export const buriedDepth = { ft: { text: '18 in', m: 0.4572 }, m: { text: '0.5 m', m: 0.5 } } as const;

/** For both ends: up a wall, down to a rod's top, round a corner that no plan shows; ours. */
export const endSlackM = 0.6;

export function layConductor(
  scene: Scene,
  { id, from, to, duty, wire = usualWire(scene, duty), way, slackM = endSlackM, rods = [], joints = [] }: ToLay,
): Laid {
  const { units } = scene.study.site;
  const found = way === undefined ? wayToLay(scene, from, to) : way;
  const length = lengthOf(found, slackM, units);
  const ends = [from, to].map((p, i) => {
    return joints[i] ?? (rods.includes(p) ? rodWeld : (usualJoint(scene, p, wire) ?? lugForBoth));
  });
  const fields: Record<string, ChangeValue> = {
    from,
    to,
    wire,
    length: length?.text ?? 'unknown',
    ...routeField(found, scene, from, to),
    ...placeFields(scene, from, to, duty),
    joints: ends.map((e) => e.typed),
    known: 'planned',
  };
  const lengthM: Interval | null = length === null ? null : { low: length.lengthM, high: length.lengthM };
  return {
    change: { is: 'add', section: 'conductors', id, fields },
    materials: [
      { name: wire, unit: 'm', count: lengthM ?? { low: 0, high: Infinity } },
      ...ends.map((e): Material => ({ name: e.material, unit: 'each', count: { low: 1, high: 1 } })),
    ],
    run: { part: id, routeM: found?.routeM ?? [], lengthM, depthM: duty === 'in soil' ? buriedDepth[units].m : null },
    wire,
    says: comesDownBy(scene, from, to) === undefined || areOnOneRoof(scene, from, to) ? {} : { down: 'yes' },
  };
}

/** null: nobody knows the way, or how far it comes down. */
function lengthOf(way: WayToLay | null, slackM: number, units: Units): ReturnType<typeof plannedLength> | null {
  if (way === null || way.downM === null) return null;
  return plannedLength(way.lengthM + (way.downM ?? 0) + slackM, units);
}

/** Where there are corners all points of the way, so that a plan draws it from end to end. */
function routeField(
  way: WayToLay | null,
  scene: Scene,
  from: string,
  to: string,
): Readonly<Record<string, ChangeValue>> {
  const points = way?.routeM ?? [];
  return points.length < 3 ? {} : { route: typedWay(scene, from, to, points) };
}

function placeFields(scene: Scene, from: string, to: string, duty: Duty): Readonly<Record<string, ChangeValue>> {
  if (duty === 'in soil') return { buried: buriedDepth[scene.study.site.units].text, where: 'outside' };
  const wheres = [from, to].map((point) => scene.part(ownerOf(point))?.where ?? null);
  const where = duty === 'lead' ? 'outside' : (wheres.find((w) => w !== null && w !== 'outside') ?? null);
  return { ...(where === null ? {} : { where }), buried: 'no' };
}
