import type { Part } from '../site/site.ts';

/** Cases through which a bond goes on; a telephone protector is in the list for its ground terminal. */
const kinds: ReadonlySet<string> = new Set([
  'service panel',
  'meter box',
  'sub-panel',
  'cabinet',
  'rack',
  'generator',
  'telephone protector',
]);

/**
 * Whether a bond goes on through the part: bars, electrodes, named joints, some cases, metalwork known to be continuous. Supports are
 * decided point by point. An antenna's grounded side is one piece of metal.
 */
export function passesOn(part: Part): boolean {
  if (part.section === 'equipment' || part.section === 'arresters') return kinds.has(part.kind);
  if (part.section === 'metalwork') return part.continuous === 'yes';
  return true;
}

/** Bars, panels and racks: what is `on` them is bolted to them. */
export function holdsByBolts(part: Part): boolean {
  if (part.section === 'bars') return true;
  return part.section === 'equipment' && ['service panel', 'sub-panel', 'rack'].includes(part.kind);
}
