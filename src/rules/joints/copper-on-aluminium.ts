import type { JointFacts } from '../../facts/facts.ts';
import { familiesAt, metalFamily } from './metal-family.ts';

/** Kinds that nobody makes for two metals. */
const never: ReadonlySet<string> = new Set(['hose clamp', 'twist', 'solder', 'sheet-metal screw']);
const fused: ReadonlySet<string> = new Set(['exothermic weld', 'welded', 'brazed']);

export const isNeverForTwo = ({ kind }: JointFacts): boolean => never.has(kind ?? '');

/** A sheet of another metal lies between; one that is itself copper, zinc or aluminium parts nothing. */
export const isParted = ({ shim }: JointFacts): boolean => shim !== null && metalFamily(shim) === 'other';

/** How copper meets aluminium at a joint; null: it does not, as far as anybody knows. */
export function copperOnAluminium(j: JointFacts): 'sheet' | 'made for both' | 'contact' | 'nobody said' | null {
  const { joined, clamp } = familiesAt(j);
  const all = new Set([...joined, clamp]);
  if (!all.has('copper') || !all.has('aluminium') || fused.has(j.kind ?? '')) return null;
  if (isParted(j)) return 'sheet';
  if (isNeverForTwo(j) || j.listed === 'no') return 'contact';
  return j.listed === 'yes' ? 'made for both' : 'nobody said';
}
