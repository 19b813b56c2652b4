import { field } from './field.ts';
import { wire } from './material-types.ts';
import { bareDistance, bareLength, quantity } from './quantity.ts';
import { partFormat } from './section.ts';
import { answer, oneOf } from './words.ts';

export const antennas = partFormat({
  section: 'antennas',
  says: 'Antennas of every kind; kinds are free words.',
  kindsAre: 'free',
  kinds: {
    'half-wave dipole': 'A wire fed in the middle.',
    'J-pole': 'A vertical with a matching stub at its foot.',
    'ground plane': 'A vertical over radials of its own.',
    vertical: 'A vertical radiator.',
    yagi: 'A beam of several elements.',
    loop: 'A closed loop of wire.',
    'long wire': 'A wire fed at its end.',
    dish: 'A dish.',
    'magnetic foot': 'A whip on a magnet.',
    GPS: 'A receiver for satellite time or position.',
  },
  fields: {
    dc_path: field(answer, 'Whether its feed conductors are joined for direct current.'),
    touches_support: field(answer, 'Whether its metal meets that of what carries it.'),
    band: field(quantity('frequency', { positive: true }), 'Its frequency or band.'),
    height: field(bareLength, 'Height of the antenna, or of its top.'),
    length: field(bareLength, 'Length of its longest element.'),
    wire: field(wire, 'Wire that the antenna is made of.'),
    below_roof: field(bareLength, 'How far all of it stays below the edge of the roof, on the face of a building.'),
    from_wall: field(bareDistance, 'How far it reaches out from the wall.'),
    base: field(oneOf(['insulated', 'grounded']), 'How a vertical stands on its foot.'),
  },
});
