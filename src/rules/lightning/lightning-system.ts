import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import type { Support } from '../../site/site.ts';
import { claimsOf } from '../claims.ts';

/** What the file shows of a lightning protection system. */
export interface LightningSystem {
  /** Down conductors: only those that the owner calls so. */
  readonly down: readonly ConductorFacts[];
  readonly terminals: readonly Support[];
  /** Groups by permanent metal that hold any of it. */
  readonly groups: ReadonlySet<string>;
}

/** null: none is claimed, and no part of one is typed. */
export function lightningSystem(
  facts: Pick<Facts, 'header' | 'conductors' | 'site' | 'bonding'>,
): LightningSystem | null {
  const down = facts.conductors.filter((c) => c.role === 'down conductor');
  const terminals = facts.site.supports.filter((s) => s.kind === 'air terminal' && s.present !== 'no');
  if (!claimsOf(facts.header).lightning && down.length === 0 && terminals.length === 0) return null;
  const parts = [...terminals.map((t) => t.id), ...down.flatMap((c) => [...c.ends, ...c.passes])];
  const groups = parts.flatMap((id) => facts.bonding.groupOf.get(id ?? '') ?? []);
  return { down, terminals, groups: new Set(groups) };
}
