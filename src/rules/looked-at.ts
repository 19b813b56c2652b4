import type { Facts } from '../facts/facts.ts';
import type { SectionName } from '../site/site.ts';
import type { Verdict } from './rule.ts';

type Looked = Pick<Facts, 'sections' | 'header'>;

/** A section was typed (or typed as none), and nothing says that it is incomplete. */
export function isWhole({ sections, header }: Looked, section: SectionName): boolean {
  return sections[section] !== 'missing' && !header.incomplete.includes(section);
}

/** The sections of these that may hold more than what was typed. */
export function notWhole(facts: Looked, sections: readonly SectionName[]): readonly SectionName[] {
  return sections.filter((section) => !isWhole(facts, section));
}

/** For a rule with nothing to look at: not looked at when a section is missing, else not applicable. */
export function nothingThere({ sections }: Pick<Facts, 'sections'>, section: SectionName): readonly Verdict[] {
  return [{ is: sections[section] === 'missing' ? 'not looked at' : 'not applicable', because: { key: 'none' } }];
}

/** The part is bonded to a bar or a support, from which an untyped conductor may lead to an electrode that nobody typed. */
export function mayReachUntyped(facts: Looked & Pick<Facts, 'bonding' | 'site'>, part: string): boolean {
  if (isWhole(facts, 'electrodes')) return false;
  const { groups, groupOf } = facts.bonding;
  const group = groups.find((g) => g.id === groupOf.get(part));
  const passing = new Set([...facts.site.bars, ...facts.site.supports].map((p) => p.id));
  return group?.parts.some((id) => id !== part && passing.has(id)) ?? false;
}
