import type { Crossing, LineFacts } from '../../bonding/bonding.ts';

/** Kinds of line that carry radio frequency from an antenna. */
export const feedLines: readonly string[] = ['coax', 'open-wire', 'single wire'];

/** Kinds whose wires bring a surge in beside the feed lines; mains has rules of its own, fibre without metal brings nothing. */
export const controlLines: readonly string[] = [
  'control',
  'network',
  'telephone',
  'cable tv',
  'dc supply',
  'usb',
  'serial',
  'audio',
];

/** Where a conductor of the line goes from outside to inside, of that kind. */
export function crossingsOf(line: LineFacts, which: Crossing['which']): readonly Crossing[] {
  return line.crossings.filter((c) => c.which === which);
}
