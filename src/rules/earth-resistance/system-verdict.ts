import type { Facts } from '../../facts/facts.ts';
import { isAtMost } from '../../units/interval.ts';
import type { Verdict } from '../rule.ts';
import { systemOhm } from './system-ohm.ts';

/** The system of electrodes against a goal. */
export function systemVerdict(
  facts: Pick<Facts, 'site' | 'bonding' | 'electrodes' | 'earth'>,
  mostOhm: number,
): Verdict {
  const system = systemOhm(facts, mostOhm);
  if (system === null) return { is: 'not applicable', because: { key: 'no figure' } };
  const at = system.electrodes;
  if (system.how === 'over range') return { is: 'not met', at, because: { key: 'over range' } };
  const measured = { key: 'resistanceOhm', value: system.ohm, limit: mostOhm, sense: 'most' } as const;
  if (system.how === 'at most') return { is: 'met', at, because: { key: 'one is low' }, measured };
  const isRead = system.how === 'measured';
  const low = isAtMost(system.ohm, mostOhm);
  if (low === 'yes') return { is: 'met', at, because: { key: isRead ? 'reads low' : 'works out low' }, measured };
  if (low === 'no') return { is: 'not met', at, because: { key: isRead ? 'reads high' : 'works out high' }, measured };
  return { is: 'cannot tell', at, because: { key: 'wide' }, settle: { key: 'measure the system' }, measured };
}
