import { mountJoint, withinReach } from './common-fields.ts';
import { field } from './field.ts';
import { metal } from './material-types.ts';
import { quantity } from './quantity.ts';
import { partFormat } from './section.ts';
import { answer, count } from './words.ts';

export const bars = partFormat({
  section: 'bars',
  says: 'Plates and bars on which conductors meet.',
  kindsAre: 'closed',
  kinds: {
    'entry panel': 'The plate at which lines come in.',
    'station ground bar': 'The bar behind the station.',
    'tower bar': 'A bar at a tower.',
    'intersystem bonding termination': 'The terminal at the service for telephone, cable and antenna bonds.',
    'main earthing bar': 'The main earthing terminal of the building.',
  },
  fields: {
    terminals: field(count(0), 'How many terminals it has.'),
    on_cover: field(answer, 'Whether it is fixed to a cover that can be taken off.'),
    area: field(quantity('area', { positive: true }), 'Area of the plate.'),
    section: field(quantity('area', { positive: true }), 'Cross-section of the bar, such as 30 mm x 5 mm as 150 mm2.'),
    metal: field(metal, 'What it is made of.'),
    joint: mountJoint,
    within_reach: withinReach,
  },
});
