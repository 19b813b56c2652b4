import type { Site } from '../../site/site.ts';

/** Boxes that transmit. */
export function transmitters({ equipment }: Site): ReadonlySet<string> {
  const there = equipment.filter((e) => e.present !== 'no' && /^(?:transceiver|amplifier|transmitter)$/.test(e.kind));
  return new Set(there.map((e) => e.id));
}
