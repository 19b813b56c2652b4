import { readCable } from '../materials/cables.ts';
import { type CoaxCore, coaxCore } from '../materials/coax-core.ts';
import type { Line } from '../site/site.ts';
import { middle } from '../units/interval.ts';

/** Where nobody typed it: what feed lines of transmitters have, ohm. Ours. */
const usualImpedanceOhm = 50;

/** What a line has between core and shield. */
export function lineCore({ cable, impedanceOhm }: Line): CoaxCore {
  const known = cable === null ? null : readCable(cable);
  return coaxCore(known?.name ?? null, (impedanceOhm === null ? null : middle(impedanceOhm)) ?? usualImpedanceOhm);
}
