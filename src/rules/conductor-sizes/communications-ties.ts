import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import { purposesOf } from '../electrodes/purposes-of.ts';

/** Wires that tie an electrode that serves telephone, cable or network alone to something other than its own protector. */
export function communicationsTies(facts: Pick<Facts, 'conductors' | 'site'>): readonly ConductorFacts[] {
  const own = facts.site.electrodes.filter((e) => {
    const serves = purposesOf(e, facts);
    return e.present !== 'no' && serves.size === 1 && serves.has('communications');
  });
  const ids = new Set(own.map((e) => e.id));
  return facts.conductors.filter((c) => {
    const isTie = c.role === 'electrode tie' || c.role === 'bond';
    return isTie && [...c.ends, ...c.passes].some((id) => id !== null && ids.has(id));
  });
}
