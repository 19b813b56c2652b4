import type { Group } from '../bonding/bonding.ts';
import type { Ground } from './ground.ts';

/** Indexes of the bodies in the soil that hang together with a group: its electrodes, and the buried wires that land on its parts. */
export function groupBodies(
  { electrodes, parts }: Pick<Group, 'electrodes' | 'parts'>,
  ground: Ground,
): readonly number[] {
  const own = new Set([...electrodes, ...parts]);
  for (const { id, certain, meets } of ground.leaking) {
    if (certain !== 'perhaps' && meets.some((part) => own.has(part))) own.add(id);
  }
  return ground.partAt.flatMap((part, index) => (own.has(part) ? [index] : []));
}
