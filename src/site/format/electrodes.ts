import { listOfKnown } from './collections.ts';
import { field } from './field.ts';
import { conditionWords } from './joint-uses.ts';
import { metal, wire } from './material-types.ts';
import { bareDistance, bareLength, length, quantity, statedOhm } from './quantity.ts';
import { route } from './routes.ts';
import { partFormat } from './section.ts';
import { answer, oneOf, text } from './words.ts';

const rods = ['rod', 'rods'];
const wires = ['buried wire', 'radial', 'strap on rock'];
const hollow = ['pipe', 'well casing', 'water pipe'];

/** What an electrode is put in for. */
export const purposes = ['service', 'antenna', 'tower', 'communications', 'lightning', 'equipment'] as const;

export const electrodes = partFormat({
  section: 'electrodes',
  says: 'What is in the ground or in concrete to make contact with the soil.',
  kindsAre: 'closed',
  kinds: {
    rod: 'One driven rod.',
    rods: 'Several rods alike, typed as one part; `id.2` is the second.',
    'buried wire': 'A bare wire or strap in a trench; `closed: yes` makes it a ring.',
    radial: 'One or several wires that run out from a point.',
    plate: 'A plate of metal.',
    'concrete-encased': 'Reinforcement or wire in a footing.',
    pipe: 'A metal pipe used as an electrode.',
    'water pipe': 'A metal water pipe in the soil that counts as an electrode.',
    'well casing': 'The steel casing of a well.',
    'drilled rod': 'A wire or rod in a drilled hole with backfill.',
    'strap on rock': 'A strap laid over rock.',
    'structural steel': 'The steel frame of a building.',
  },
  fields: {
    metal: field(metal, 'What it is made of.'),
    top: field(
      quantity('length', { bare: false, signed: true }),
      'Depth of its upper end below the ground; 0 in if left out.',
    ),
    resistance: field(statedOhm, 'Its measured resistance to remote earth; overrides what is computed.'),
    measured: field(oneOf(['alone', 'bonded']), 'Whether the resistance was read with it disconnected.'),
    condition: field(oneOf(conditionWords), 'What it looks like: sound, loose, corroded or open.'),
    serves: field(
      listOfKnown(oneOf(purposes)),
      'What it was put in for; equipment: an auxiliary electrode of one machine. Left out: by what lands on it.',
    ),
    listed: field(answer, 'Whether it is listed (tested) for this use.'),
    painted: field(answer, 'Whether paint, enamel, tar, epoxy or another skin that does not conduct covers it.'),
    length: field(bareLength, 'How long it is.', [...rods, ...wires, ...hollow, 'concrete-encased', 'drilled rod']),
    diameter: field(length, 'Its diameter; of a footing that of its bars.', [
      ...rods,
      ...hollow,
      'drilled rod',
      'concrete-encased',
    ]),
    coating: field(length, 'Thickness of the copper or zinc on its steel.', [...rods, ...wires, 'plate']),
    angle: field(quantity('angle'), 'Angle from the vertical, for a rod driven aslant.', rods),
    guarded: field(answer, 'Whether its top and clamp are guarded where they stand out of the ground.', rods),
    stands_in: field(
      oneOf(['undisturbed soil', 'compacted fill', 'loose fill', 'gravel']),
      'What it was driven or laid into.',
      [...rods, ...wires, 'plate'],
    ),
    gravel: field(length, 'How deep the gravel reaches that it passes through.', rods),
    surface: field(oneOf(['open ground', 'eaves', 'paving']), 'What is above it: open ground, eaves or paving.', wires),
    in_soil: field(bareLength, 'How much of its length touches soil.', wires),
    layout: field(oneOf(['line', 'triangle', 'square', 'ring', 'star']), 'How several stand to each other.', [
      'rods',
      'radial',
    ]),
    spacing: field(bareLength, 'Distance from one rod to the next.', ['rods']),
    radius: field(length, 'Radius of the ring or star that they stand in.', ['rods']),
    joined: field(answer, 'Whether a wire joins its members.', ['rods', 'radial']),
    wire: field(wire, 'The wire that it is made of, or that joins its members.', [
      'rods',
      ...wires,
      'drilled rod',
      'concrete-encased',
    ]),
    route: field(route, 'The points that it passes.', wires),
    closed: field(answer, 'Whether it closes on itself to a ring.', ['buried wire', 'radial']),
    depth: field(bareDistance, 'How deep it lies.', ['buried wire', 'radial', 'plate', 'concrete-encased', ...hollow]),
    area: field(quantity('area', { positive: true }), 'The area that it covers or encloses.', [
      'buried wire',
      'radial',
    ]),
    width: field(length, 'Width of the plate or footing.', ['plate', 'concrete-encased']),
    height: field(bareLength, 'Height of the plate.', ['plate']),
    stands: field(oneOf(['on edge', 'flat']), 'How the plate lies.', ['plate']),
    thickness: field(length, 'Thickness of the plate.', ['plate']),
    lattice: field(answer, 'Whether the plate is a lattice.', ['plate']),
    concrete: field(length, 'Thickness of the concrete round its bars or wire.', ['concrete-encased']),
    membrane: field(answer, 'Whether a vapour barrier or insulation lies between the concrete and the soil.', [
      'concrete-encased',
    ]),
    continuous: field(answer, 'Whether it is metal all along, with no plastic piece.', ['water pipe']),
    cage: field(oneOf(['tied', 'not tied']), 'Whether the reinforcement is tied together and to what leaves it.', [
      'concrete-encased',
    ]),
    hole: field(length, 'Diameter of the drilled hole.', ['drilled rod']),
    backfill: field(text(), 'What the hole is filled with.', ['drilled rod']),
    backfill_resistivity: field(quantity('resistivity', { positive: true }), 'Resistivity of the backfill.', [
      'drilled rod',
    ]),
    cover: field(text(), 'What covers the strap.', ['strap on rock']),
  },
});
