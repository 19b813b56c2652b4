import { jointNames, nearJoint, readJoint } from '../../materials/joints.ts';
import type { Metal } from '../../materials/metals.ts';
import type { Interval } from '../../units/interval.ts';
import { below, placeOf, refuse, type Spot } from '../reading/report.ts';
import { sayNode, type TreeNode } from '../reading/tree.ts';
import type { Answer, Condition, JointUse, SourcePlace, StatedOhm } from '../site.ts';
import { record, wrapped } from './collections.ts';
import { type FieldType, field, type Schema } from './field.ts';
import { metal } from './material-types.ts';
import { idPattern, mention, readPoint } from './points.ts';
import { quantity, statedOhm } from './quantity.ts';
import { isUnknown, unwrapped } from './read-value.ts';
import { answer, count, oneOf, text } from './words.ts';

export const conditionWords = ['sound', 'loose', 'corroded', 'open'] as const;

/** What the file says of how a wire meets its ends. */
export interface TypedJoints {
  /** `joints: none`. */
  readonly onePiece: boolean;
  readonly uses: readonly JointUse[];
}

/** A kind of joint by name, in any usual spelling. */
export const jointKind: FieldType<string> = {
  schema: { type: 'string', examples: [...jointNames] },
  expects: 'a kind of joint such as bolted lug',
  read: (node, spot) => {
    if (node.is !== 'text')
      return refuse(spot, node.at, 'not-text', { found: sayNode(node), expects: 'a kind of joint' });
    const typed = node.text.trim();
    if (typed === 'other') return 'other';
    const values = { text: typed, known: jointNames.join(', ') };
    return readJoint(typed)?.name ?? refuse(spot, node.at, 'joint-kind-unknown', values, nearJoint(typed));
  },
};

/** What may be said of a joint wherever one is typed. */
export const jointFields = {
  metal: field(metal, 'Metal of the clamp or connector itself.'),
  listed: field(answer, 'Whether it is listed (tested) for this use.'),
  for_burial: field(answer, 'Whether it is marked for direct burial.'),
  accessible: field(answer, 'Whether somebody can get at it to look.'),
  resistance: field(statedOhm, 'Its measured resistance; overrides the range of its kind.'),
  bolts: field(count(0), 'How many bolts or holes it has.'),
  for_wires: field(count(1), 'How many wires it is listed to hold; left out: one.'),
  shim: field(metal, 'A sheet of another metal between the clamp and what it is on.'),
  cleaned: field(answer, 'Whether paint and film were taken off where metal meets metal.'),
  contact: field(quantity('area', { positive: true }), 'Area on which a lug or strap lies flat.'),
  sealed: field(answer, 'Whether it is sealed against water.'),
  for_test: field(answer, 'Whether it is made to be opened with a tool for measuring.'),
};

const described = record({
  kind: field(jointKind, 'Kind of joint.'),
  ...jointFields,
  condition: field(oneOf(conditionWords), 'What it looks like: sound, loose, corroded or open.'),
  note: field(text(), 'Anything worth knowing.'),
});

/** One joint: a kind, the id of a joint, or a group of fields. */
export const jointUseSchema: Schema = { anyOf: [{ type: 'string' }, described.schema] };

/** The joints of a conductor in order, or one for both ends, or `none` where it is one piece with what it meets. */
export const jointList: FieldType<TypedJoints> = {
  schema: {
    anyOf: [{ type: 'string' }, { type: 'array', minItems: 2, items: wrapped(jointUseSchema) }],
  },
  expects: 'a list of joints from the first end to the last, or none',
  read: (node, spot) => {
    if (node.is === 'text' && node.text.trim() === 'none') return { onePiece: true, uses: [] };
    if (node.is !== 'list') {
      const use = readJointUse(node, spot);
      return { onePiece: false, uses: [use, use] };
    }
    const uses = node.items.map((item, i) => readJointUse(item, below(spot, i + 1)));
    if (uses.length >= 2) return { onePiece: false, uses };
    return refuse(spot, node.at, 'joints-count', { count: uses.length });
  },
};

/** One joint: the id of the `joints` section, a kind, a group of fields, or unknown. */
export function readJointUse(typed: TreeNode, spot: Spot): JointUse {
  const node = unwrapped(typed);
  const unsaid = unsaidJoint(placeOf(spot, node.at));
  if (isUnknown(node)) return unsaid;
  if (node.is === 'text') return { ...unsaid, ...readNamed(node.text.trim(), node, spot) };
  if (node.is === 'list') return refuse(spot, node.at, 'not-text', { found: 'a list', expects: 'a joint' }) ?? unsaid;
  const values = described.read(node, spot);
  return values === null ? unsaid : { ...unsaid, ...fromValues(values) };
}

function readNamed(typed: string, node: TreeNode, spot: Spot): Partial<JointUse> {
  const kind = readJoint(typed);
  if (kind !== null) return { kind: kind.name };
  const looksLikeId = idPattern.test(typed);
  if (!looksLikeId) {
    jointKind.read(node, spot);
    return {};
  }
  const ref = readPoint(typed, node, spot, 'id');
  if (ref !== null) mention(spot, node, ref, ['joints'], 'id', jointNames);
  return { named: typed };
}

interface JointValues {
  readonly kind: string | null;
  readonly metal: Metal | null;
  readonly resistance: StatedOhm | null;
  readonly condition: Condition | null;
  readonly listed: Answer | null;
  readonly for_burial: Answer | null;
  readonly accessible: Answer | null;
  readonly shim: Metal | null;
  readonly bolts: number | null;
  readonly for_wires: number | null;
  readonly cleaned: Answer | null;
  readonly contact: Interval | null;
  readonly sealed: Answer | null;
  readonly for_test: Answer | null;
}

function fromValues(values: JointValues): Partial<JointUse> {
  const { kind, resistance, shim, bolts } = values;
  return {
    kind,
    metal: values.metal,
    resistance,
    shim,
    bolts,
    forWires: values.for_wires,
    condition: values.condition ?? 'unknown',
    listed: values.listed ?? 'unknown',
    forBurial: values.for_burial ?? 'unknown',
    accessible: values.accessible ?? 'unknown',
    cleaned: values.cleaned ?? 'unknown',
    contactM2: values.contact,
    sealed: values.sealed ?? 'unknown',
    forTest: values.for_test ?? 'unknown',
  };
}

/** A joint of which nothing was said. */
export function unsaidJoint(source: SourcePlace): JointUse {
  return {
    named: null,
    kind: null,
    metal: null,
    resistance: null,
    condition: 'unknown',
    listed: 'unknown',
    forBurial: 'unknown',
    accessible: 'unknown',
    shim: null,
    bolts: null,
    source,
  };
}
