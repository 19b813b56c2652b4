import { mapped, record, recordOr } from './collections.ts';
import { manyLengths } from './common-fields.ts';
import { field } from './field.ts';
import { id } from './points.ts';
import { bareDistance, bareLength, quantity } from './quantity.ts';
import { partFormat } from './section.ts';
import { path } from './stops.ts';
import { answer, count, oneOf, text } from './words.ts';

const runsWith = id(['lines', 'conductors']);

/** What a line or conductor runs beside. */
export const along = recordOr(
  record({
    part: field(runsWith, 'The line or conductor that it runs beside.'),
    spacing: field(bareDistance, 'Distance between the two.'),
  }),
  mapped(runsWith, (part) => ({ part, spacing: null })),
);

/** Lines of bare or open wire. */
const openKinds = ['open-wire', 'single wire'];

export const runWords = ['open', 'in a wall', 'under a floor', 'in conduit'] as const;

export const lines = partFormat({
  section: 'lines',
  says: 'Everything that carries signals or power from box to box, or comes in from the street.',
  kindsAre: 'closed',
  kinds: {
    coax: 'Coaxial cable.',
    'open-wire': 'Two parallel wires.',
    'single wire': 'One wire.',
    control: 'Rotator, switch and relay wires.',
    network: 'Network cable.',
    telephone: 'Telephone line.',
    'cable tv': 'Cable television.',
    mains: 'Power, cords too.',
    'dc supply': 'Direct current, solar too.',
    usb: 'USB cable.',
    serial: 'Serial data cable.',
    audio: 'Audio cable.',
    fibre: 'Optical fibre.',
  },
  fields: {
    path: field(path, 'Its stops in order, from the antenna or street to the last box.'),
    lengths: field(manyLengths, 'Length of each piece between two named stops, in order.'),
    length: field(bareLength, 'Length of the whole line.'),
    cable: field(text(), 'The cable, by size or type.'),
    impedance: field(quantity('resistance', { positive: true }), 'Characteristic impedance.'),
    wires: field(count(1, 1000), 'How many wires it has.'),
    buried: field(answer, 'Whether any of it lies in soil.'),
    overhead: field(answer, 'Whether any of it hangs free outdoors.'),
    enclosure: field(text(), 'Pipe or conduit that it runs in.'),
    protective_conductor: field(answer, 'Whether a mains line has a protective conductor.'),
    along: field(along, 'Another line or conductor that it runs beside.'),
    runs: field(oneOf(runWords), 'How it runs indoors.'),
    metal_inside: field(answer, 'Whether a fibre has metal in it.', ['fibre']),
    voltage: field(quantity('voltage', { positive: true }), 'Voltage between its wires.', ['mains']),
    standoff: field(bareDistance, 'How far insulators hold it off the wall.', openKinds),
    guarded: field(answer, 'Whether nobody can easily touch it.', openKinds),
    drip_loop: field(answer, 'Whether it has a low point outside before it goes in.'),
  },
});
