import { list, listOfKnown, record } from './collections.ts';
import { anyText } from './common-fields.ts';
import { field } from './field.ts';
import { soilType } from './material-types.ts';
import { placed } from './positions.ts';
import { bareLength, length, quantity } from './quantity.ts';
import { howKnownWords } from './read-value.ts';
import { corners } from './routes.ts';
import { where } from './where.ts';
import { answer, oneOf } from './words.ts';

const layer = record({
  resistivity: field(quantity('resistivity', { positive: true }), 'Resistivity of the layer.'),
  thickness: field(length, 'How thick it is; the last layer goes down without end.'),
});

const known = field(oneOf(howKnownWords), 'How this is known: seen, told, measured, assumed or planned.');
const note = field(anyText, 'Anything worth knowing.');
const photo = field(listOfKnown(anyText), 'File names of photographs.');

export const soilFields = {
  layers: field(list(layer), 'Layers from the top down.'),
  type: field(soilType, 'Kind of soil, where nobody measured it.'),
  frost: field(length, 'How deep the ground freezes.'),
  known,
  note,
};

export const buildingFields = {
  corners: field(corners, 'Its corners in order round it.'),
  height: field(bareLength, 'Height of the eaves or roof.'),
  walls: field(anyText, 'What the walls are made of.'),
  roof: field(anyText, 'What the roof is made of.'),
  dwelling: field(answer, 'Whether one or two families live in it.'),
  known,
  note,
  photo,
};

export const placeFields = {
  at: field(placed, 'Where it is.'),
  where: field(where, 'outside, inside, or the id of the building that it is in.'),
  known,
  note,
  photo,
};
