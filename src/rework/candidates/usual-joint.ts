import { readMetal } from '../../materials/metals.ts';
import { readWire } from '../../materials/wire.ts';
import type { StudyPart } from '../../study/study.ts';
import type { ChangeValue } from '../../study/written-lists.ts';
import { ownerOf, type Scene } from './scene.ts';

/** A joint as it is typed, and what is bought for it. */
export interface UsualJoint {
  readonly typed: ChangeValue;
  readonly material: string;
}

/** To a rod that is driven: welded, since nobody sees it again. */
export const rodWeld: UsualJoint = { typed: 'exothermic weld', material: 'exothermic weld' };
const lug: UsualJoint = { typed: 'bolted lug', material: 'bolted lug' };
const rodClamp: UsualJoint = {
  typed: { kind: 'rod clamp', metal: 'bronze', listed: 'yes', for_burial: 'yes' },
  material: 'rod clamp',
};
const pipeClamp: UsualJoint = {
  typed: { kind: 'pipe clamp', metal: 'bronze', listed: 'yes', for_burial: 'yes' },
  material: 'pipe clamp',
};
/** On the steel of a mast: two bolts, of a metal that goes with zinc. */
const steelLug: UsualJoint = {
  typed: { kind: 'bolted lug', metal: 'tinned copper', bolts: 2, listed: 'yes' },
  material: 'bolted lug',
};

const rebarKind = 'U-bolt';
/** On the reinforcement of a footing, or on its stub above ground: no kind of joint is nearer to the clamp that is listed for it. */
const rebarClamp: UsualJoint = {
  typed: { kind: rebarKind, metal: 'bronze', listed: 'yes', for_burial: 'yes' },
  material: 'clamp for reinforcing steel',
};

/** On the flange or plate at the foot of a tower, never on the tube of a leg. */
const flangeWeld: UsualJoint = rodWeld;

/** Electrodes that a weld may be made to: what is driven or laid of copper or of copper on steel. */
const welded: readonly string[] = ['rod', 'rods', 'buried wire', 'radial', 'plate', 'drilled rod', 'strap on rock'];

/** The joint that a place wants: no solder, nothing that works loose in soil, a metal that goes with what it is on. */
export function usualJoint(scene: Scene, point: string | null, wire: string | null): UsualJoint | null {
  const on = point === null ? undefined : scene.part(ownerOf(point));
  if (hasAluminium(wireMetal(wire)) || hasAluminium(metalOf(scene, on))) return onAluminium(on);
  if (on === undefined) return lug;
  if (on.section === 'electrodes') return onElectrode(on);
  if (on.section === 'supports') return /tower/.test(on.kind) ? flangeWeld : steelLug;
  if (on.section === 'metalwork') return /pipe|tank/.test(on.kind) ? pipeClamp : lug;
  return on.section === 'conductors' ? rodWeld : lug;
}

function onElectrode({ kind }: StudyPart): UsualJoint {
  if (kind === 'pipe' || kind === 'well casing' || kind.includes('water')) return pipeClamp;
  if (kind === 'structural steel') return rodWeld;
  if (kind === 'concrete-encased') return rebarClamp;
  return welded.includes(kind) ? rodWeld : rodClamp;
}

/**
 * A weld of copper is not made to aluminium: what is bought is marked for both metals, and none such is for soil, where
 * aluminium has no place (NFPA 70, 250.64(A) and 250.52(B), second-hand). null: on what lies in soil no joint puts it right.
 */
function onAluminium(on: StudyPart | undefined): UsualJoint | null {
  if (on?.section === 'conductors') return made('irreversible crimp');
  if (on?.section === 'supports') return made('bolted lug', { bolts: 2 });
  const isPipe = on?.section === 'metalwork' && /pipe|tank/.test(on.kind);
  if (isPipe || on?.kind === 'water pipe') return made('pipe clamp');
  return on?.section === 'electrodes' && on.kind !== 'structural steel' ? null : made('bolted lug');
}

/** How the fittings are called that are marked for both metals. */
const both = ' for aluminium and copper';

function made(kind: string, more: Readonly<Record<string, ChangeValue>> = {}): UsualJoint {
  return { typed: { kind, ...more, listed: 'yes', for_burial: 'no' }, material: `${kind}${both}` };
}

/** Where a wire has to end on aluminium all the same. */
export const lugForBoth: UsualJoint = made('bolted lug');

export function isForBoth({ material }: UsualJoint): boolean {
  return material.endsWith(both);
}

/** Of what a work buys, the fitting for a joint of a kind that goes by a name of its own; null: it is bought by its kind. */
export function fittingFor(kind: string, on: string | null, bought: readonly string[]): string | null {
  const isRebar = kind === rebarKind && on === 'concrete-encased';
  const names = isRebar ? [rebarClamp.material] : bought.includes(kind) ? [] : [`${kind}${both}`];
  return names.find((name) => bought.includes(name)) ?? null;
}

function hasAluminium(metal: string | null): boolean {
  return metal !== null && /aluminium/.test(metal);
}

function wireMetal(text: string | null): string | null {
  const read = text === null ? null : readWire(text);
  return read?.ok === true ? (read.wire.metal?.name ?? null) : null;
}

/** Of an electrode and a wire also by what it is made of. */
function metalOf({ study }: Scene, part: StudyPart | undefined): string | null {
  if (part === undefined) return null;
  if (part.section === 'conductors') return wireMetal(study.conductors.find((c) => c.id === part.id)?.wire ?? null);
  const typed = readMetal(part.typed.metal ?? '')?.name ?? null;
  return typed ?? study.electrodes?.find((e) => e.id === part.id)?.metal ?? null;
}
