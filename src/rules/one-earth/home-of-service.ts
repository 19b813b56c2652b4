import type { Facts } from '../../facts/facts.ts';

/** The building of the service: of the part that it is, be that a box or a bar, else of its panel. null: not known. */
export function homeOfService({ bonding, boxes, site }: Pick<Facts, 'bonding' | 'boxes' | 'site'>): string | null {
  const { part } = bonding.service;
  const own = [...boxes, ...site.bars].find((b) => b.id === part)?.where ?? null;
  return own ?? boxes.find((b) => b.part.kind === 'service panel')?.where ?? null;
}
