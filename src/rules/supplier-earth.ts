import type { Facts } from '../facts/facts.ts';

/**
 * Whether the supply brings its earth along (TN systems outside the United States and Canada: IEC 60364-1, 312.2, from
 * memory): the installation then needs no electrode of its own for the supply, and its main bar is earthed by the network.
 */
export function isEarthedBySupplier({ header }: Pick<Facts, 'header'>): boolean {
  const abroad = header.region !== 'us' && header.region !== 'ca';
  return abroad && (header.supply === 'tn-s' || header.supply === 'tn-c-s');
}

/** Nobody said what kind of supply it is where some kinds bring their earth along. */
export function maySupplierEarth({ header }: Pick<Facts, 'header'>): boolean {
  return (header.region === 'iec' || header.region === 'uk' || header.region === 'au') && header.supply === 'unknown';
}

/** Bonded to the main bar of such a supply; whether that is enough for an antenna is not the same in every country. */
export function reachesSupplierEarth(facts: Pick<Facts, 'header' | 'bonding'>, part: string): boolean {
  return isEarthedBySupplier(facts) && facts.bonding.serviceBy.bonds.has(part);
}

/** Bonded to the main bar of what may be such a supply. */
export function mayReachSupplierEarth(facts: Pick<Facts, 'header' | 'bonding'>, part: string): boolean {
  return maySupplierEarth(facts) && facts.bonding.serviceBy.bonds.has(part);
}
