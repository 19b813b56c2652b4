import type { StudyPart } from '../../study/study.ts';
import type { ChangeValue } from '../../study/written-lists.ts';

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

/** On the flange or plate at the foot of a tower, never on the tube of a leg. */
const flangeWeld: UsualJoint = rodWeld;

/** Electrodes that a weld may be made to: what is driven or laid of copper or of copper on steel. */
const welded: readonly string[] = ['rod', 'rods', 'buried wire', 'radial', 'plate', 'drilled rod', 'strap on rock'];

/** The joint that a place wants: no solder, nothing that works loose in soil, a metal that goes with what it is on. */
export function usualJoint(on: StudyPart | undefined): UsualJoint {
  if (on === undefined) return lug;
  if (on.section === 'electrodes') return onElectrode(on);
  if (on.section === 'supports') return /tower/.test(on.kind) ? flangeWeld : steelLug;
  if (on.section === 'metalwork') return /pipe|tank/.test(on.kind) ? pipeClamp : lug;
  return on.section === 'conductors' ? rodWeld : lug;
}

function onElectrode({ kind }: StudyPart): UsualJoint {
  if (kind === 'pipe' || kind === 'well casing' || kind.includes('water')) return pipeClamp;
  return welded.includes(kind) ? rodWeld : rodClamp;
}
