import type { Study } from '../../study/study.ts';
import type { SiteChange } from '../../study/try-change.ts';
import type { ChangeValue } from '../../study/written-lists.ts';
import type { Interval } from '../../units/interval.ts';
import { readQuantity } from '../../units/quantity.ts';
import { footM } from '../../units/unit-table.ts';
import type { Material, WorkRun } from '../work.ts';
import { nearestOn } from './building-walls.ts';
import { buriedDepth, type Laid, layConductor } from './lay-conductor.ts';
import { each } from './new-work.ts';
import { plannedLength, typedPlace, type Units } from './owner-units.ts';
import { type PanelShift, type RelaidLine, relaidLines, relaidM, wiresOf } from './panel-shift.ts';
import { ownerOf, type Scene } from './scene.ts';
import { usualJoint } from './usual-joint.ts';
import { type Spot, spotsOf } from './way-to-lay.ts';

type Conductor = Study['conductors'][number];

/** What the panel is tied to at its new place. */
export interface NewLead {
  readonly to: string;
  /** As it will be typed. */
  readonly lengthM: number;
}

export interface MovedPanel {
  readonly changes: readonly SiteChange[];
  readonly laid: readonly Laid[];
  readonly materials: readonly Material[];
  readonly runs: readonly WorkRun[];
  readonly values: Readonly<Record<string, unknown>>;
}

/** Height at which a panel is mounted whose lead is to be short: a foot above the ground; ours. */
const low = { ft: footM, m: 0.3 } as const;

/** How far a panel comes down when it is moved, metres; one that hangs low, or whose height nobody typed, stays as high. */
export function comesDownM(scene: Scene, panel: string): number {
  return Math.max(0, (scene.part(panel)?.positionM?.[2] ?? 0) - low[scene.study.site.units]);
}

/**
 * The edits that move a panel: its place, what is no longer so of the arresters on it, the length of every wire and line that
 * ends there, and its lead. A wire that is there already between the panel and the end of the lead becomes the lead.
 */
export function movedPanel(scene: Scene, shift: PanelShift, lead: NewLead): MovedPanel {
  const wires = wiresOf(scene, shift.carried).map((w) => relaidWire(scene, shift, lead, w));
  const lines = relaidLines(scene, shift);
  const isThere = wires.some((w) => w.isLead);
  const laid = isThere ? [] : [newLead(scene, shift, lead)];
  return {
    changes: [
      { is: 'set', section: 'bars', id: shift.panel, field: 'at', value: newPlace(scene, shift) },
      ...arresterChanges(scene, shift),
      ...wires.flatMap((w) => w.changes),
      ...lines.map((l): SiteChange => ({ is: 'set', section: 'lines', id: l.id, field: l.field, value: l.value })),
    ],
    laid,
    materials: [...wires.flatMap((w) => w.materials), ...lines.flatMap(cableOf)],
    runs: wires.map((w) => w.run),
    values: {
      panel: shift.panel,
      to: lead.to,
      lengthM: { low: lead.lengthM, high: lead.lengthM },
      wire: wires.find((w) => w.isLead)?.wire ?? laid[0]?.wire ?? null,
      wires: listOf(wires.filter((w) => !w.isLead).map((w) => w.run.part)),
      lines: listOf(lines.map((l) => l.id)),
      depthM: wires.find((w) => w.run.depthM !== null)?.run.depthM ?? null,
    },
  };
}

/** '' says nothing in a step. */
function listOf(ids: readonly string[]): string {
  return ids.join(', ');
}

/** East, north, and the height where one was typed. */
function newPlace(scene: Scene, { panel, to }: PanelShift): ChangeValue {
  const { units } = scene.study.site;
  const upM = scene.part(panel)?.positionM?.[2] ?? 0;
  const place = typedPlace(to, units);
  if (upM === 0) return place;
  const height = upM - comesDownM(scene, panel);
  return [...place, Math.round((height / unitM(units)) * 100) / 100];
}

function unitM(units: Units): number {
  return units === 'ft' ? footM : 1;
}

/** Nobody has looked what burns easily beside the new place. */
function arresterChanges(scene: Scene, { carried, panel }: PanelShift): readonly SiteChange[] {
  const arresters = [...carried].filter((id) => id !== panel);
  return arresters.flatMap((id): readonly SiteChange[] => {
    const typed = scene.part(id)?.typed ?? {};
    const set = (field: string, value: ChangeValue | null): SiteChange => {
      return { is: 'set', section: 'arresters', id, field, value };
    };
    return [
      ...(typed.at === undefined ? [] : [set('at', null)]),
      ...(typed.near_fuel === undefined ? [] : [set('near_fuel', 'unknown')]),
    ];
  });
}

interface RelaidWire {
  readonly isLead: boolean;
  readonly wire: string | null;
  readonly changes: readonly SiteChange[];
  readonly materials: readonly Material[];
  readonly run: WorkRun;
}

/** Fields that told how the old run went, and figures of it. */
const ofOldRun: readonly string[] = ['route', 'lengths', 'bends', 'loop', 'resistance', 'inductance', 'rises'];

function relaidWire(
  scene: Scene,
  shift: PanelShift,
  lead: NewLead,
  { row, other }: { readonly row: Conductor; readonly other: string },
): RelaidWire {
  const { typed = {} } = scene.part(row.id) ?? {};
  const isLead = ownerOf(other) === ownerOf(lead.to);
  const lengthM = isLead ? lead.lengthM : newLengthM(scene, shift, row, other);
  const set = (field: string, value: ChangeValue | null): SiteChange => {
    return { is: 'set', section: 'conductors', id: row.id, field, value };
  };
  const isSaid = isLead || typed.length !== undefined || row.lengthM !== null;
  const count = lengthM === null ? { low: 0, high: Infinity } : { low: lengthM, high: lengthM };
  return {
    isLead,
    wire: row.wire,
    changes: [
      ...(isSaid ? [set('length', lengthM === null ? 'unknown' : textOf(scene, lengthM))] : []),
      ...ofOldRun.filter((field) => typed[field] !== undefined).map((field) => set(field, null)),
      ...(isLead ? outdoors(typed).map(([field, value]) => set(field, value)) : []),
    ],
    materials: isCut(row, lengthM) ? [each(lug)] : [...wireOf(row, count), each(lug), each(jointAt(scene, other, row))],
    run: {
      part: row.id,
      routeM: isLead ? leadRoute(scene, shift, lead) : [],
      lengthM: lengthM === null ? null : count,
      depthM: depthOf(scene, row),
    },
  };
}

/** A lead to an electrode by the wall runs outside, whatever way the wire took before. */
function outdoors({
  where,
  runs,
}: Readonly<Record<string, string>>): readonly (readonly [string, ChangeValue | null])[] {
  return [
    ...(where === undefined || where === 'outside' ? [] : [['where', 'outside'] as const]),
    ...(runs === undefined ? [] : [['runs', null] as const]),
  ];
}

/** What is long enough is cut shorter; a longer one is laid anew, and joined anew at both ends. */
function isCut({ lengthM }: Conductor, nowM: number | null): boolean {
  return lengthM !== null && nowM !== null && nowM <= lengthM.low;
}

function wireOf({ wire }: Conductor, count: Interval): readonly Material[] {
  return wire === null ? [] : [{ name: wire, unit: 'm', count }];
}

function jointAt(scene: Scene, point: string, { wire }: Conductor): string {
  return usualJoint(scene, point, wire)?.material ?? lug;
}

/** As deep as typed; in soil at a depth that nobody knows as deep as new ones; null: it is not in soil. */
function depthOf(scene: Scene, { id, buried }: Conductor): number | null {
  if (buried !== 'yes') return null;
  const { units } = scene.study.site;
  const read = readQuantity(scene.part(id)?.typed.buried ?? '', 'length', { bareUnit: units });
  return read.ok && Number.isFinite(read.interval.high) ? read.interval.high : buriedDepth[units].m;
}

const lug = 'bolted lug';

/** As it will be typed; null: nobody knows how long it is now. */
function newLengthM(scene: Scene, shift: PanelShift, row: Conductor, other: string): number | null {
  if (row.lengthM === null || !Number.isFinite(row.lengthM.high)) return null;
  return plannedLength(relaidM(scene, shift, other, row.lengthM), scene.study.site.units).lengthM;
}

function textOf(scene: Scene, lengthM: number): string {
  return plannedLength(lengthM, scene.study.site.units).text;
}

function newLead(scene: Scene, shift: PanelShift, lead: NewLead): Laid {
  return layConductor(scene, {
    id: scene.newId(`bond-${shift.panel}`),
    from: shift.panel,
    to: lead.to,
    duty: 'lead',
    way: { routeM: leadRoute(scene, shift, lead), lengthM: lead.lengthM },
    slackM: 0,
  });
}

/** One straight leg. */
function leadRoute(scene: Scene, { to }: PanelShift, lead: NewLead): readonly Spot[] {
  const end = nearestOn(spotsOf(scene.part(ownerOf(lead.to))), to);
  return end === null ? [] : [to, end];
}

/** A line that gets longer is a new one, or one with a piece joined on: what is bought is what is added. */
function cableOf({ cable, moreM }: RelaidLine): readonly Material[] {
  if (moreM === null) return [{ name: cable, unit: 'm', count: { low: 0, high: Infinity } }];
  return moreM > 0 ? [{ name: cable, unit: 'm', count: { low: moreM, high: moreM } }] : [];
}
