import { below, type IdSection, placeOf, refuse, type Spot } from '../reading/report.ts';
import { childOf, type MapNode, sayNode, type TreeNode } from '../reading/tree.ts';
import type { PointRef } from '../site.ts';
import { keySchema } from './collections.ts';
import type { FieldType, Schema } from './field.ts';
import { idPattern, mention, readPoint, unknownPoint } from './points.ts';
import { type Placed, readCoordinates } from './positions.ts';
import { isUnknown, refuseOtherKeys } from './read-value.ts';
import { type Located, readWhere } from './where.ts';

/** A stop of a line as typed; a bend's place is worked out later. */
export type TypedStop =
  | { readonly is: 'part'; readonly at: PointRef; readonly node: TreeNode }
  | { readonly is: 'bond'; readonly at: PointRef; readonly node: TreeNode }
  | { readonly is: 'plug'; readonly id: string; readonly where: Located | null; readonly node: TreeNode }
  | {
      readonly is: 'bend';
      readonly at: PointRef | null;
      readonly placed: Placed | null;
      readonly where: Located | null;
      readonly node: TreeNode;
    }
  | { readonly is: 'street'; readonly node: TreeNode }
  | { readonly is: 'unknown'; readonly node: TreeNode };

export const stopSections: readonly IdSection[] = [
  'antennas',
  'supports',
  'bars',
  'arresters',
  'equipment',
  'metalwork',
];
const bondSections: readonly IdSection[] = [
  'supports',
  'bars',
  'arresters',
  'equipment',
  'metalwork',
  'electrodes',
  'conductors',
];
const bendSections: readonly IdSection[] = [...stopSections, 'places', 'buildings', 'electrodes'];
const expects = 'a stop: the id of a part, street, unknown, {bond: ...}, {plug: ...} or {bend: ...}';

/** The stops of a line, in order. */
export const path: FieldType<readonly TypedStop[]> = {
  schema: { type: 'array', items: stopSchema() },
  expects: 'a list of stops, such as [beam, {bond: tower@2 ft}, radio]',
  read: (node, spot) => {
    if (node.is !== 'list') return refuse(spot, node.at, 'not-a-list', { found: sayNode(node), expects: path.expects });
    return node.items.map((item, i) => readStop(item, below(spot, i + 1))).filter((stop) => stop !== null);
  },
};

function stopSchema(): Schema {
  const bend = { anyOf: [{ type: 'string' }, { type: 'array', items: { type: ['number', 'string'] } }] };
  const text = { type: 'string' };
  const made = (key: string, value: Schema, more: Readonly<Record<string, Schema>> = {}): Schema => ({
    type: 'object',
    additionalProperties: false,
    required: [key],
    properties: { [key]: value, ...more },
  });
  const where = keySchema(text, 'outside, inside, or the id of the building that it is in.');
  const bond = keySchema(text, 'What the shield is bonded to here, such as tower@2 ft.');
  const plug = { description: 'An id for a connector that is pulled by hand; it ties nothing.', ...text };
  const turn = keySchema(bend, 'A bend of the route, at a place or point; it ties nothing.');
  return { anyOf: [text, made('bond', bond), made('plug', plug, { where }), made('bend', turn, { where })] };
}

function readStop(node: TreeNode, spot: Spot): TypedStop | null {
  if (isUnknown(node)) return { is: 'unknown', node };
  if (node.is === 'map') return readMadeStop(node, spot);
  if (node.is !== 'text') return refuse(spot, node.at, 'not-text', { found: sayNode(node), expects });
  if (node.text.trim() === 'street') return { is: 'street', node };
  const at = readPoint(node.text.trim(), node, spot, 'point');
  if (at === null) return null;
  mention(spot, node, at, stopSections, 'point');
  return { is: 'part', at, node };
}

function readMadeStop(node: MapNode, spot: Spot): TypedStop | null {
  const [key = ''] = ['bond', 'plug', 'bend'].filter((k) => childOf(node, k) !== null);
  const value = childOf(node, key);
  if (value === null) return refuse(spot, node.at, 'stop-unreadable', {});
  refuseOtherKeys(node, key === 'bond' ? [key] : [key, 'where'], spot);
  const inner = below(spot, key);
  if (key === 'bond') return readBond(value, inner, node);
  const whereNode = childOf(node, 'where');
  const where = whereNode === null || isUnknown(whereNode) ? null : readWhere(whereNode, below(spot, 'where'));
  return key === 'plug' ? readPlug(value, inner, where, node) : readBend(value, inner, where, node);
}

function readBond(value: TreeNode, spot: Spot, node: TreeNode): TypedStop | null {
  if (isUnknown(value)) return { is: 'bond', at: unknownPoint, node };
  if (value.is !== 'text') return refuse(spot, value.at, 'not-text', { found: sayNode(value), expects: 'a point' });
  const at = readPoint(value.text.trim(), value, spot, 'point');
  if (at === null) return null;
  mention(spot, value, at, bondSections, 'point');
  return { is: 'bond', at, node };
}

function readPlug(value: TreeNode, spot: Spot, where: Located | null, node: TreeNode): TypedStop | null {
  const id = value.is === 'text' ? value.text.trim() : '';
  if (!idPattern.test(id)) return refuse(spot, value.at, 'id-letters', { id });
  spot.report.plugs.push({ id, spot, at: value.at });
  return { is: 'plug', id, where, node };
}

function readBend(value: TreeNode, spot: Spot, where: Located | null, node: TreeNode): TypedStop | null {
  if (isUnknown(value)) return { is: 'bend', at: null, placed: null, where, node };
  if (value.is === 'list') return { is: 'bend', at: null, placed: readCoordinates(value, spot), where, node };
  if (value.is !== 'text') return refuse(spot, value.at, 'not-text', { found: sayNode(value), expects: 'a point' });
  const at = readPoint(value.text.trim(), value, spot, 'corner');
  if (at === null) return null;
  mention(spot, value, at, bendSections, 'corner');
  return { is: 'bend', at, placed: { is: 'named', ref: at }, where, node };
}

/** Where in the file a stop was typed. */
export function stopPlace(stop: TypedStop, spot: Spot) {
  return placeOf(spot, stop.node.at);
}
