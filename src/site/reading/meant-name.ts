import { nearName } from '../../units/near-name.ts';

/** What people call things that have another name here: common usage of the trade, no source. */
const otherNames: Readonly<Record<string, readonly string[]>> = {
  // sections
  metalwork: ['fences', 'pipes', 'gutters', 'pools', 'metal', 'railings'],
  electrodes: ['rods', 'ground rods', 'earth rods', 'grounds', 'earths', 'radials'],
  supports: ['masts', 'towers', 'poles', 'structures'],
  lines: ['cables', 'coax', 'feed lines', 'feedlines', 'cords'],
  conductors: ['wires', 'bonds', 'jumpers', 'straps', 'ground wires'],
  joints: ['clamps', 'lugs', 'connections'],
  equipment: ['radios', 'boxes', 'gear', 'devices', 'panels'],
  arresters: ['protectors', 'surge protectors', 'lightning arresters', 'arrestors'],
  buildings: ['houses', 'sheds', 'huts'],
  readings: ['measurements', 'tests'],
  // kinds
  rod: ['ground rod', 'earth rod', 'ground stake', 'stake', 'copper pipe'],
  radial: ['radials', 'radial field', 'ground screen'],
  'buried wire': ['ring', 'ground ring', 'earth ring', 'counterpoise', 'buried ring'],
  'concrete-encased': ['ufer', 'foundation', 'footing'],
  mast: ['tubular mast', 'steel mast', 'metal mast', 'push-up mast', 'steel pole'],
  coax: ['coaxial', 'coaxial cable', 'feed line', 'feedline'],
  'open-wire': ['ladder line', 'twin lead', 'window line', 'balanced line'],
  network: ['ethernet', 'lan', 'cat5', 'cat6', 'data'],
  telephone: ['phone', 'dsl'],
  mains: ['power', 'ac', 'power cord', 'cord'],
  'dc supply': ['dc', 'dc power', '12 v'],
  control: ['rotator', 'rotator cable', 'rotor', 'rotor cable'],
  'gas tube': ['gdt', 'gas discharge tube', 'tube'],
  mov: ['varistor', 'metal oxide varistor'],
  'quarter-wave stub': ['stub', 'shorted stub'],
};

/** The name of a list that was meant: one that is a slip away, else one that is also called so; null: none. */
export function meantName(typed: string, names: readonly string[]): string | null {
  const word = plain(typed);
  const other = names.find((name) => otherNames[name]?.some((also) => plain(also) === word));
  return other ?? nearName(typed, names);
}

function plain(text: string): string {
  return text.toLowerCase().replace(/[\s_-]+/g, '');
}
