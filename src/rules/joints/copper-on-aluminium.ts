import type { JointFacts } from '../../facts/facts.ts';
import { familiesAt, metalFamily } from './metal-family.ts';

/** Kinds that nobody makes for two metals. */
const never: ReadonlySet<string> = new Set(['hose clamp', 'twist', 'solder', 'sheet-metal screw']);
const fused: ReadonlySet<string> = new Set(['exothermic weld', 'welded', 'brazed']);

/** How copper meets aluminium at a joint; null: it does not, as far as anybody knows. */
export function copperOnAluminium(j: JointFacts): 'sheet' | 'made for both' | 'contact' | 'nobody said' | null {
  const { joined, clamp } = familiesAt(j);
  const all = new Set([...joined, clamp]);
  if (!all.has('copper') || !all.has('aluminium') || fused.has(j.kind ?? '')) return null;
  // a sheet that is itself copper, zinc or aluminium parts nothing
  if (j.shim !== null && metalFamily(j.shim) === 'other') return 'sheet';
  if (never.has(j.kind ?? '') || j.listed === 'no') return 'contact';
  return j.listed === 'yes' ? 'made for both' : 'nobody said';
}
