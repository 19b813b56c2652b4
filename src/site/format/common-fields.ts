import type { IdSection } from '../reading/report.ts';
import { partSections } from '../site.ts';
import { list, listOfKnown, mapped, record, recordOr } from './collections.ts';
import { type FieldType, field } from './field.ts';
import { jointKind } from './joint-uses.ts';
import { id, point } from './points.ts';
import { placed } from './positions.ts';
import { bareDistance } from './quantity.ts';
import { howKnownWords } from './read-value.ts';
import { where } from './where.ts';
import { answer, count, oneOf, text } from './words.ts';

/** Everything that one can put a hand on. */
export const thingSections: readonly IdSection[] = partSections;

const carrierSections: readonly IdSection[] = [...thingSections, 'guys', 'buildings'];

/** How far another part is. */
const neighbour = recordOr(
  record({
    part: field(id([...thingSections, 'buildings', 'places', 'guys']), 'The part that is near.'),
    distance: field(bareDistance, 'How far it is at the closest.'),
  }),
  mapped(id([...thingSections, 'buildings', 'places', 'guys']), (part) => ({ part, distance: null })),
);

export const anyText: FieldType<string> = text();

/** Fields of every part. */
export const commonFields = {
  at: field(placed, 'Where it stands: [east, north], a place, or a position from a corner or place.'),
  where: field(where, 'outside, inside, or the id of the building that it is in.'),
  on: field(point(carrierSections), 'What carries it; a bar, panel or rack also ties it.'),
  bonded: field(answer, 'Whether it is bonded, where no conductor is typed that shows it.'),
  known: field(oneOf(howKnownWords), 'How this is known: seen, told, measured, assumed or planned.'),
  near: field(listOfKnown(neighbour), 'Parts close by, each with its distance.'),
  note: field(anyText, 'Anything worth knowing.'),
  photo: field(listOfKnown(anyText), 'File names of photographs.'),
  present: field(answer, 'no: meant to be there and is not.'),
  owner: field(anyText, 'Whose it is; utility: the supplier of power or telephone.'),
  count: field(count(1), 'How many there are, all alike.'),
};

/** Whether one person can touch both. */
export const withinReach = field(
  listOfKnown(id([...thingSections, 'guys'])),
  'Ids of what a person can touch at the same time.',
);

/** Kind of the joint by which something hangs on what it is `on`. */
export const mountJoint = field(jointKind, 'Kind of the joint by which it is bolted to what it is on.');

export const manyLengths = list(bareDistance);
