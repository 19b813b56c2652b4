import type { Facts } from '../facts/facts.ts';

/**
 * Whether the supply brings its earth along (TN systems outside the United States and Canada: IEC 60364-1, 312.2, from
 * memory), and the installation needs no electrode of its own for the supply: its main bar is earthed by the network. In
 * Australia each installation has one all the same (multiple earthed neutral: AS/NZS 3000, from memory).
 */
export function isEarthedBySupplier(facts: Pick<Facts, 'header'>): boolean {
  return isEarthBrought(facts) && facts.header.region !== 'au';
}

/** Nobody said what kind of supply it is where some kinds bring all the earth that is asked. */
export function maySupplierEarth(facts: Pick<Facts, 'header'>): boolean {
  return mayBringEarth(facts) && facts.header.region !== 'au';
}

/** Bonded to the main bar of such a supply; whether that is enough for an antenna is not the same in every country. */
export function reachesSupplierEarth(facts: Pick<Facts, 'header' | 'bonding'>, part: string): boolean {
  return isEarthBrought(facts) && facts.bonding.serviceBy.bonds.has(part);
}

/** Bonded to the main bar of what may be such a supply. */
export function mayReachSupplierEarth(facts: Pick<Facts, 'header' | 'bonding'>, part: string): boolean {
  return mayBringEarth(facts) && facts.bonding.serviceBy.bonds.has(part);
}

/** The network earths the main bar, whatever the installation has beside. */
function isEarthBrought({ header }: Pick<Facts, 'header'>): boolean {
  const abroad = header.region !== 'us' && header.region !== 'ca';
  return abroad && (header.supply === 'tn-s' || header.supply === 'tn-c-s');
}

function mayBringEarth({ header }: Pick<Facts, 'header'>): boolean {
  return (header.region === 'iec' || header.region === 'uk' || header.region === 'au') && header.supply === 'unknown';
}
