import type { Interval } from '../../units/interval.ts';
import { below, type IdSection, refuse, type Spot } from '../reading/report.ts';
import { childOf, type MapNode, type Span, sayNode, type TreeNode } from '../reading/tree.ts';
import type { PointRef } from '../site.ts';
import { fieldSchema, listOfKnown } from './collections.ts';
import { anyText, thingSections } from './common-fields.ts';
import { type FieldType, field } from './field.ts';
import { jointOrPoint, mention, readPoint } from './points.ts';
import { quantity } from './quantity.ts';
import { readValue, refuseOtherKeys } from './read-value.ts';
import { answer, oneOf } from './words.ts';

export const endWords = ['loose', 'grounded'] as const;

/** A gap may be nothing at all. */
const gap = quantity('length');
const end = oneOf(endWords);
const side = oneOf(['before', 'after']);
const openable: readonly IdSection[] = ['plugs', 'lines'];

export interface TypedOpening {
  readonly at: PointRef;
  readonly side: 'before' | 'after' | null;
  readonly gapM: Interval | null;
  readonly end: 'loose' | 'grounded' | null;
  /** Whether gap and end were typed, even as unknown. */
  readonly saysGap: boolean;
  readonly saysEnd: boolean;
  readonly spot: Spot;
  readonly node: TreeNode;
}

const opening: FieldType<TypedOpening> = {
  schema: {
    anyOf: [
      { type: 'string' },
      {
        type: 'object',
        additionalProperties: false,
        required: ['at'],
        properties: {
          at: { description: 'The plug that is pulled, or the stop that a line is taken off.', type: 'string' },
          side: fieldSchema(field(side, 'For a stop in the middle of a line: which side is taken off.')),
          gap: fieldSchema(field(gap, 'Distance between the two sides.')),
          end: fieldSchema(field(end, 'Whether the end on the side of the antenna hangs loose or is grounded.')),
        },
      },
    ],
  },
  expects: 'the id of a plug, a stop such as line1:radio, or {at: j1, gap: 2 in}',
  read: (node, spot) => {
    if (node.is !== 'map') return readOpening(node, null, spot);
    refuseOtherKeys(node, ['at', 'side', 'gap', 'end'], spot);
    const at = childOf(node, 'at');
    return at === null ? refuse(spot, node.at, 'opening-at-missing') : readOpening(at, node, spot);
  },
};

function readOpening(at: TreeNode, more: MapNode | null, spot: Spot): TypedOpening | null {
  if (at.is !== 'text') return refuse(spot, at.at, 'not-text', { found: sayNode(at), expects: opening.expects });
  const ref = readPoint(at.text.trim(), at, spot, 'joint');
  if (ref === null) return null;
  mention(spot, at, ref, openable, 'joint');
  const child = (key: string) => (more === null ? null : childOf(more, key));
  const read = <T>(key: string, type: FieldType<T>) => {
    const value = child(key);
    return value === null ? null : readValue(type, value, below(spot, key));
  };
  return {
    at: ref,
    side: read('side', side),
    gapM: read('gap', gap),
    end: read('end', end),
    saysGap: child('gap') !== null,
    saysEnd: child('end') !== null,
    spot,
    node: at,
  };
}

export interface TypedSetting {
  readonly key: string;
  readonly keyAt: Span;
  readonly value: TreeNode;
  readonly spot: Spot;
}

/** `part.field: value`, looked into once the parts are known. */
const settings: FieldType<readonly TypedSetting[]> = {
  schema: { type: 'object' },
  expects: 'fields of parts, such as {a1.present: no}',
  read: (node, spot) => {
    if (node.is !== 'map') return refuse(spot, node.at, 'not-parts', { found: sayNode(node), section: 'set' });
    return node.entries.map(({ key, keyAt, value }) => ({ key, keyAt, value, spot: below(spot, key) }));
  },
};

export const stateFields = {
  says: field(anyText, 'What is done or what happens, in a few words.'),
  open: field(listOfKnown(opening), 'Plugs that are pulled and stops that lines are taken off.'),
  gap: field(gap, 'Distance between the two sides of what is open.'),
  end: field(end, 'Whether the end on the side of the antenna hangs loose or is grounded.'),
  set: field(settings, 'Fields of parts that are different in this state.'),
  lost: field(listOfKnown(jointOrPoint([...thingSections, 'guys', 'plugs'])), 'Parts and joints that are gone.'),
  frozen: field(answer, 'Whether the ground is frozen.'),
  dry: field(answer, 'Whether the ground is dry.'),
  wet: field(answer, 'Whether the ground is wet.'),
  note: field(anyText, 'Anything worth knowing.'),
};
