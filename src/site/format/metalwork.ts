import { withinReach } from './common-fields.ts';
import { field } from './field.ts';
import { metal } from './material-types.ts';
import { bareDistance, length, quantity } from './quantity.ts';
import { route } from './routes.ts';
import { partFormat } from './section.ts';
import { answer, text } from './words.ts';

export const metalwork = partFormat({
  section: 'metalwork',
  says: 'Other metal that a strike or a person may meet; kinds are free words.',
  kindsAre: 'free',
  kinds: {
    'gas pipe': 'A gas pipe; never an electrode.',
    'water pipe': 'A water pipe.',
    fence: 'A metal fence.',
    'electric fence': 'The live wire of a fence for animals, which is not to be bonded.',
    gutter: 'A gutter or downspout.',
    siding: 'Metal siding.',
    'roof sheet': 'A metal roof.',
    'oil pipe': 'An oil pipe.',
    'sewer pipe': 'A sewer pipe of metal.',
    'cable tray': 'A tray or ladder that cables lie on.',
    conduit: 'A pipe of metal that wires run in.',
    'wall foil': 'Foil in a wall.',
    railing: 'A railing.',
    tank: 'A tank.',
    pool: 'A pool.',
    'solar array': 'Solar panels with their frames.',
    'steel frame': 'The frame of a building.',
    'overhead power line': 'A power line overhead.',
    'service mast': 'The mast of the power service.',
    'property line': 'The edge of the property.',
  },
  fields: {
    route: field(route, 'The points that it passes.'),
    metal: field(metal, 'What it is made of.'),
    buried: field(answer, 'Whether any of it lies in soil.'),
    depth: field(bareDistance, 'How deep it lies.'),
    continuous: field(answer, 'Whether it is one piece of metal from end to end.'),
    joints: field(text(), 'How its pieces meet.'),
    size: field(length, 'Its diameter or thickness.'),
    clearance: field(quantity('length'), 'Gap to what is below or beside it.'),
    voltage: field(quantity('voltage', { positive: true }), 'Voltage of a power line between its wires.'),
    clamp_from_entry: field(
      quantity('length'),
      'How far from its entry into the building the bond of a pipe is clamped.',
    ),
    within_reach: withinReach,
  },
});
