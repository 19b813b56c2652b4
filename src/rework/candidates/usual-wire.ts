import type { Scene } from './scene.ts';

export type Duty = 'in soil' | 'lead' | 'indoors';

/**
 * Sizes that every rule of a region passes that is asked of such a wire: 6 AWG copper between electrodes (NFPA 70, 810.21(J),
 * second-hand), 16 mm2 copper for an antenna (IEC 60728-11, second-hand), 35 mm2 down conductors in Australia (AS/NZS 1768,
 * second-hand). Where a class of lightning protection is claimed, 2/0 AWG (TIA-222-G, second-hand) and 50 mm2 (IEC 62305-3,
 * from memory).
 */
const sizes = {
  us: { usual: '6 AWG copper', claimed: '2/0 AWG tinned copper' },
  iec: { usual: '16 mm2 copper', claimed: '50 mm2 tinned copper' },
  au: { usual: '35 mm2 copper', claimed: '50 mm2 tinned copper' },
} as const;

export function usualWire({ study }: Scene, duty: Duty): string {
  const { region, claims } = study.site;
  const size = sizes[region === 'au' ? 'au' : isUs(region) ? 'us' : 'iec'];
  if (claims !== null && duty !== 'indoors') return size.claimed;
  return region === 'au' && duty === 'indoors' ? sizes.iec.usual : size.usual;
}

/** The same with a coat of tin, for what lands on zinc-coated steel in the soil, which bare copper beside it would eat. */
export function tinned(wire: string): string {
  return /tinned/.test(wire) ? wire : wire.replace(/ copper$/, ' tinned copper');
}

export function isUs(region: string): boolean {
  return region === 'us' || region === 'ca' || region === 'unknown';
}
