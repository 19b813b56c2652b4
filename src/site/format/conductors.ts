import type { Interval } from '../../units/interval.ts';
import type { IdSection } from '../reading/report.ts';
import { below, placeOf, refuse } from '../reading/report.ts';
import { childOf } from '../reading/tree.ts';
import type { JointUse, PointRef } from '../site.ts';
import { fieldSchema, keySchema, list, listOfKnown, mapped, record, recordOr } from './collections.ts';
import { manyLengths } from './common-fields.ts';
import { type FieldType, field } from './field.ts';
import { conditionWords, jointList, jointUseSchema, readJointUse, unsaidJoint } from './joint-uses.ts';
import { along, runWords } from './lines.ts';
import { wire } from './material-types.ts';
import { point } from './points.ts';
import { bareDistance, bareLength, length, quantity, statedOhm } from './quantity.ts';
import { readValue, refuseOtherKeys } from './read-value.ts';
import { route } from './routes.ts';
import { partFormat } from './section.ts';
import { answer, oneOf, text } from './words.ts';

const endSections: readonly IdSection[] = [
  'electrodes',
  'supports',
  'antennas',
  'bars',
  'arresters',
  'equipment',
  'metalwork',
  'conductors',
  'guys',
];
const anyEnd = point(endSections);

/** Any part but the conductor itself, whose name stands in the path of the field. */
const end: FieldType<PointRef> = {
  ...anyEnd,
  read: (node, spot) => {
    const ref = anyEnd.read(node, spot);
    const [section, id = ''] = spot.path.split('.');
    return section === 'conductors' && ref?.part === id ? refuse(spot, node.at, 'end-itself', { id }) : ref;
  },
};

export interface TypedPass {
  readonly at: PointRef;
  readonly joint: JointUse;
}

const pass: FieldType<TypedPass> = {
  schema: {
    anyOf: [
      { type: 'string' },
      {
        type: 'object',
        required: ['part'],
        additionalProperties: false,
        properties: {
          part: fieldSchema(field(end, 'The part that it is clamped to.')),
          joint: keySchema(jointUseSchema, 'Kind of the joint, or the id of one of the section joints.'),
        },
      },
    ],
  },
  expects: 'a part, or {part: R2, joint: rod clamp}',
  read: (node, spot) => {
    if (node.is !== 'map') {
      const at = end.read(node, spot);
      return at === null ? null : { at, joint: unsaidJoint(placeOf(spot, node.at)) };
    }
    refuseOtherKeys(node, ['part', 'joint'], spot);
    const part = childOf(node, 'part');
    const at = part === null ? refuse(spot, node.at, 'pass-part-missing') : readValue(end, part, below(spot, 'part'));
    const joint = childOf(node, 'joint');
    const use = joint === null ? unsaidJoint(placeOf(spot, node.at)) : readJointUse(joint, below(spot, 'joint'));
    return at === null ? null : { at, joint: use };
  },
};

/** Depth below grade; `yes` is in soil at a depth nobody knows. */
const buried: FieldType<Interval | 'yes' | 'no'> = {
  schema: { anyOf: [answer.schema, bareDistance.schema] },
  expects: 'a depth, yes or no',
  read: (node, spot) => {
    const typed = node.is === 'text' ? node.text.trim().toLowerCase() : '';
    if (typed === 'no' || typed === 'false') return 'no';
    if (typed === 'yes' || typed === 'true') return 'yes';
    return quantity('length').read(node, spot);
  },
};

const bend = recordOr(
  record({
    angle: field(quantity('angle'), 'How far it turns.'),
    radius: field(length, 'Radius of the bend.'),
  }),
  mapped(quantity('angle'), (angle) => ({ angle, radius: null })),
);

const loop = record({
  opening: field(length, 'Width of its open side.'),
  length: field(bareLength, 'Length of the conductor round it.'),
});

export const conductors = partFormat({
  section: 'conductors',
  says: 'Wires, straps and tubes of permanent metal from one part to another.',
  kindsAre: 'closed',
  kinds: {},
  fields: {
    from: field(end, 'What its first end lands on.'),
    to: field(end, 'What its other end lands on.'),
    passes: field(listOfKnown(pass), 'Parts that it is clamped to on its way without being cut.'),
    wire: field(wire, 'Its size and metal, such as 6 AWG copper.'),
    length: field(bareLength, 'Its whole length.'),
    lengths: field(manyLengths, 'Length of each span between its ends and the parts that it passes.'),
    route: field(route, 'The points that it passes.'),
    resistance: field(statedOhm, 'Its resistance; overrides what is computed.'),
    inductance: field(quantity('inductance', { positive: true }), 'Its inductance; overrides what is computed.'),
    buried: field(buried, 'How deep it lies in soil; yes where the depth is not known.'),
    bends: field(list(bend), 'Its bends, each with angle and radius.'),
    joints: field(jointList, 'Its joints from the first end to the last; none: it is one piece with both.'),
    role: field(
      oneOf([
        'bond',
        'mast lead',
        'electrode tie',
        'service electrode wire',
        'down conductor',
        'protective',
        'arrester lead',
      ]),
      'What it is for, where that differs from what its ends say.',
    ),
    along: field(along, 'A line or conductor that it runs beside.'),
    runs: field(oneOf(runWords), 'How it runs indoors.'),
    labelled: field(answer, 'Whether a do-not-remove label hangs at its connection.'),
    enclosure: field(text(), 'Pipe, conduit or downspout that it runs in; none: nothing is round it.'),
    enclosure_bonded: field(oneOf(['both ends', 'one end', 'no']), 'Where a pipe of metal round it is bonded to it.'),
    guarded: field(answer, 'Whether a guard covers it where it could be damaged; yes too where nothing can get at it.'),
    rises: field(answer, 'Whether any of it runs upward on its way to ground.'),
    loop: field(loop, 'Where it loops over an obstacle: the open side, and the length round it.'),
    fixings: field(length, 'Distance from one fixing to the next.'),
    above_soil: field(bareDistance, 'How near it comes to soil, where it does not enter it.'),
    condition: field(oneOf(conditionWords), 'What it looks like: sound, loose, corroded or open.'),
  },
});
