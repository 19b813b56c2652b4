import { mountJoint, withinReach } from './common-fields.ts';
import { field } from './field.ts';
import { wire } from './material-types.ts';
import { quantity } from './quantity.ts';
import { partFormat } from './section.ts';
import { answer, count, oneOf, text } from './words.ts';

export const supplyWords = ['us-grounded', 'tn-s', 'tn-c-s', 'tt'] as const;

export const equipment = partFormat({
  section: 'equipment',
  says: 'Boxes: panels, radios, computers; kinds are free words.',
  kindsAre: 'free',
  kinds: {
    'service panel': 'The main panel, where the supply comes in.',
    'meter box': 'The box of the meter.',
    'sub-panel': 'A panel fed from another.',
    transceiver: 'A radio that sends and receives.',
    receiver: 'A radio that only receives.',
    amplifier: 'A power amplifier.',
    tuner: 'A matching unit.',
    'coax switch': 'A switch of coax lines.',
    'power supply': 'A supply of direct current.',
    controller: 'The control box of a rotator or switch.',
    rotator: 'A motor on the support.',
    computer: 'A computer.',
    modem: 'A modem.',
    router: 'A router.',
    rack: 'A metal rack.',
    cabinet: 'A metal cabinet.',
    generator: 'A generator: a source of power of its own.',
  },
  fields: {
    power: field(quantity('power'), 'Power that it puts out.'),
    swr: field(quantity('number', { positive: true }), 'Highest standing wave ratio at that power.'),
    neutral_bonded: field(answer, 'Whether neutral and ground are joined in it.'),
    neutral_switched: field(
      answer,
      'Of a generator or another source that feeds a panel: whether the transfer switch switches the neutral too.',
    ),
    rating: field(quantity('current', { positive: true }), 'Rating of its main breaker or fuse.'),
    phases: field(count(1, 3), 'How many phases it has.'),
    supply: field(oneOf(supplyWords), 'Earthing of the supply, where it differs from that of the site.'),
    service_wire: field(wire, 'The wire of the supply.'),
    electrode_wire: field(wire, 'The wire from it to the electrode.'),
    within_reach: withinReach,
    serial: field(text(), 'Its serial number.'),
    unused_ports: field(oneOf(['grounded', 'floating']), 'What a switch does with the ports not in use.'),
    joint: mountJoint,
  },
});
