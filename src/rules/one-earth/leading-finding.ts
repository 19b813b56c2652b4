import type { Facts } from '../../facts/facts.ts';
import type { RuleId } from '../rule-ids.ts';

/**
 * The finding of the region's own clause that leads where a group of electrodes is found apart: it names the size and who
 * does the work. null: the general one leads. Only with the service known, since else nobody knows which group is apart.
 */
export function leadingFinding(
  { header, bonding, site }: Pick<Facts, 'header' | 'bonding' | 'site'>,
  electrodes: readonly string[],
): string | null {
  if (bonding.service.is !== 'known') return null;
  const id = (rule: RuleId) => `${rule}:${electrodes.join('+')}`;
  if (header.region === 'uk' && header.supply === 'tn-c-s') return id('uk-multiple-earth-rf-rod-bond');
  if (header.region !== 'uk' && header.region !== 'iec') return null;
  const group = bonding.groups.find((g) => g.electrodes.includes(electrodes[0]!));
  const outdoor = new Set([...site.antennas, ...site.supports].map((p) => p.id));
  return group?.parts.some((part) => outdoor.has(part)) ? id('iec-antenna-electrode-to-main-bar') : null;
}

/** As the parent of a finding of this rule, which itself may be the one that leads. */
export function underLeading(rule: RuleId, leading: string | null): { readonly under?: string } {
  return leading === null || leading.startsWith(`${rule}:`) ? {} : { under: leading };
}
