import type { SiteChange } from '../../study/try-change.ts';
import type { ChangeValue } from '../../study/written-lists.ts';
import type { Material, WorkRun } from '../work.ts';
import { comesDownBy, isUp } from './foot-height.ts';
import { type Laid, layConductor } from './lay-conductor.ts';
import { placeM, plannedLength, typedPlace } from './owner-units.ts';
import { ownerOf, type Scene } from './scene.ts';
import { isUs, usualWire } from './usual-wire.ts';
import { apartM, type Spot, spotsOf, type WayToLay } from './way-to-lay.ts';

/**
 * Rods as a region takes them: 8 ft by 5/8 in (NFPA 70, 250.52(A)(5), second-hand), 10 ft in Canada (Canadian Electrical
 * Code, 3 m, from memory), 10 ft by 3/4 in where a tower standard or a class is claimed (TIA-222-G, second-hand;
 * MIL-HDBK-1004/6), 2.5 m by 16 mm elsewhere (IEC 60728-11, second-hand).
 */
const rods = {
  us: { length: '8 ft', lengthM: 2.4384, diameter: '5/8 in' },
  ca: { length: '10 ft', lengthM: 3.048, diameter: '5/8 in' },
  claimed: { length: '10 ft', lengthM: 3.048, diameter: '3/4 in' },
  iec: { length: '2.5 m', lengthM: 2.5, diameter: '16 mm' },
} as const;

export function usualRod({ study }: Scene) {
  const { region, claims } = study.site;
  if (!isUs(region)) return rods.iec;
  if (claims !== null) return rods.claimed;
  return region === 'ca' ? rods.ca : rods.us;
}

export interface Driven {
  readonly changes: readonly SiteChange[];
  readonly materials: readonly Material[];
  readonly runs: readonly WorkRun[];
}

export interface ToDrive {
  /** Name of the rod; the wire to it is called after it. */
  readonly id: string;
  /** What it is tied to. */
  readonly to: string;
  /** null: nobody knows where it could stand. */
  readonly spot: Spot | null;
  /** null: not told, since it stands where something else does. */
  readonly spacingM: number | null;
  readonly metal?: string;
  readonly wire?: string;
  /** Where the thing stands that it is tied to, if the same work puts it there. */
  readonly beside?: Spot | null | undefined;
}

/** One more rod and the wire that ties it to a point. */
export function driveRod(
  scene: Scene,
  { id, to, spot, spacingM, metal = 'copper-clad steel', wire: ownWire, beside }: ToDrive,
): Driven {
  const { units } = scene.study.site;
  const size = usualRod(scene);
  const at = spot === null ? null : typedPlace(spot, units);
  const near = spacingM === null ? [] : [{ part: ownerOf(to), distance: plannedLength(spacingM, units).text }];
  const fields: Record<string, ChangeValue> = {
    kind: 'rod',
    ...(at !== null ? { at } : near.length > 0 ? { near } : {}),
    length: size.length,
    diameter: size.diameter,
    metal,
    listed: 'yes',
    known: 'planned',
  };
  const wire = tieOf(scene, {
    id,
    to,
    wire: ownWire ?? usualWire(scene, 'in soil'),
    spacingM,
    spot: at === null ? null : placeM(at, units),
    beside,
  });
  return {
    changes: [{ is: 'add', section: 'electrodes', id, fields }, wire.change],
    materials: [{ name: `${size.length} rod`, unit: 'each', count: { low: 1, high: 1 } }, ...wire.materials],
    runs: [{ part: id, routeM: spot === null ? [] : [spot], lengthM: exact(size.lengthM), depthM: null }, wire.run],
  };
}

const exact = (m: number) => ({ low: m, high: m });

type Tie = Pick<ToDrive, 'id' | 'to' | 'spot' | 'spacingM' | 'beside'> & { readonly wire: string };

/** From the rod to what it is tied to, round what is in the way. */
function tieOf(scene: Scene, { id: rod, to, wire, spot, spacingM, beside }: Tie): Laid {
  const id = scene.newId(`wire-${rod}`);
  const there = beside == null ? spotsOf(scene.part(ownerOf(to))) : [beside];
  const nearest = spot === null ? undefined : [...there].sort((a, b) => apartM(a, spot) - apartM(b, spot))[0];
  const told: WayToLay | null = spacingM === null ? null : { routeM: [], lengthM: spacingM };
  const flat =
    spot === null || nearest === undefined ? told : { routeM: [spot, nearest], lengthM: apartM(spot, nearest) };
  const downM = comesDownBy(scene, rod, to);
  const way = flat === null || downM === undefined ? flat : { ...flat, downM };
  return layConductor(scene, {
    id,
    from: rod,
    to,
    duty: isUp(scene.part(ownerOf(to))) ? 'lead' : 'in soil',
    way,
    wire,
    rods: scene.part(ownerOf(to)) === undefined ? [rod, to] : [rod],
  });
}
