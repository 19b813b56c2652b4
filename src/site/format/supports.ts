import { below, placeOf, refuse } from '../reading/report.ts';
import type { Span } from '../reading/tree.ts';
import { sayNode } from '../reading/tree.ts';
import { typedTexts } from '../reading/typed-texts.ts';
import type { SourcePlace } from '../site.ts';
import { record } from './collections.ts';
import { withinReach } from './common-fields.ts';
import { type FieldType, field, type ValuesOf } from './field.ts';
import { metalOrNone } from './material-types.ts';
import { placed } from './positions.ts';
import { bareLength, length } from './quantity.ts';
import { partFormat } from './section.ts';
import { answer, count, oneOf, text } from './words.ts';

export const guyFields = {
  anchor: field(placed, 'Where its anchor is.'),
  metal: field(metalOrNone, 'What it is made of; none: rope or another thing that does not conduct.'),
  turnbuckle: field(answer, 'Whether it has a turnbuckle.'),
  bypass: field(answer, 'Whether a jumper bridges the turnbuckle.'),
  insulators: field(answer, 'Whether insulators break it up.'),
  note: field(text(), 'Anything worth knowing.'),
};

const guy = record(guyFields);

export interface TypedGuy {
  readonly id: string;
  readonly values: ValuesOf<typeof guyFields>;
  readonly typed: Readonly<Record<string, string>>;
  readonly source: SourcePlace;
  readonly at: Span;
  readonly path: string;
}

/** Guys by id, or `none`. */
export const guys: FieldType<readonly TypedGuy[]> = {
  schema: { anyOf: [{ const: 'none' }, { type: 'object', additionalProperties: guy.schema }] },
  expects: 'guys by id, such as {guy-1: {anchor: [100, 40]}}, or none',
  read: (node, spot) => {
    if (node.is === 'text' && node.text.trim() === 'none') return [];
    if (node.is !== 'map') return refuse(spot, node.at, 'not-parts', { found: sayNode(node), section: 'guys' });
    return node.entries.map(({ key, keyAt, value }) => {
      const inner = below(spot, key);
      const read = value.is === 'blank' ? null : guy.read(value, inner);
      const nothing = { anchor: null, metal: null, turnbuckle: null, bypass: null, insulators: null, note: null };
      const typed = value.is === 'map' ? typedTexts(value.entries, spot.report.source.text) : {};
      return { id: key, values: read ?? nothing, typed, source: placeOf(inner, keyAt), at: keyAt, path: inner.path };
    });
  },
};

export const supports = partFormat({
  section: 'supports',
  says: 'Towers, masts, poles and whatever else holds antennas up.',
  kindsAre: 'closed',
  kinds: {
    tower: 'A tower of any build.',
    'lattice tower': 'A tower of legs and bracing, metal from foot to top.',
    mast: 'A tube or pole of metal.',
    'roof mast': 'A mast that stands on a roof.',
    'crank-up tower': 'A tower of sliding sections.',
    'tilt-over mast': 'A mast with a hinge.',
    'wood pole': 'A pole of wood.',
    'building face': 'A wall, gable or chimney.',
    tree: 'A tree.',
    'air terminal': 'A rod of the lightning protection, put up to be struck.',
    'water tank': 'A raised tank.',
  },
  fields: {
    height: field(bareLength, 'Height of its top above the ground.'),
    legs: field(count(1, 12), 'How many legs it has; `id.leg2` is the second.'),
    face: field(length, 'Width of one face.'),
    metal: field(metalOrNone, 'What it is made of; none: it is not of metal.'),
    sections: field(
      oneOf(['one piece', 'welded', 'bolted', 'sliding', 'hinged']),
      'How its sections meet; sliding and hinged ones do not count as one piece of metal.',
    ),
    jumpers: field(answer, 'Whether jumpers bridge the sections.'),
    base: field(text(), 'What it stands on or in.'),
    reach: field(oneOf(['public', 'fenced', 'signed']), 'Who can touch it; signed: anybody, past a warning.'),
    insulating_surface: field(answer, 'Whether asphalt or gravel insulates the ground round it.'),
    wall: field(length, 'Thickness of its wall where it is a tube.'),
    within_reach: withinReach,
    guys: field(guys, 'Its guys, by id.'),
  },
});
