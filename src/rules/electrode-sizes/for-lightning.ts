import type { ElectrodeFacts, Facts } from '../../facts/facts.ts';
import { claimsOf } from '../claims.ts';
import { purposesOf } from '../electrodes/purposes-of.ts';

/** Electrodes of a lightning protection system: those that serve one, or all where the site claims one and says of none. */
export function forLightning(
  facts: Pick<Facts, 'header' | 'electrodes' | 'conductors' | 'site'>,
): readonly ElectrodeFacts[] {
  const own = facts.electrodes.filter((e) => e.part.owner !== 'utility');
  const serving = own.filter((e) => purposesOf(e.part, facts).has('lightning'));
  return serving.length > 0 || !claimsOf(facts.header).lightning ? serving : own;
}
