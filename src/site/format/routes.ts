import { below, type IdSection, refuse, type Spot } from '../reading/report.ts';
import { sayNode, type TreeNode } from '../reading/tree.ts';
import type { PointRef } from '../site.ts';
import type { FieldType } from './field.ts';
import { mention, readPoint } from './points.ts';
import { type Placed, placed, readCoordinates } from './positions.ts';
import { isUnknown } from './read-value.ts';

/** A point that a route passes, as typed. */
export interface TypedRoutePoint {
  readonly placed: Placed | null;
  readonly part: PointRef | null;
}

const routeSections: readonly IdSection[] = [
  'places',
  'buildings',
  'electrodes',
  'supports',
  'antennas',
  'bars',
  'arresters',
  'equipment',
  'metalwork',
];

/** Points in order: coordinates, places, or points of parts. */
export const route: FieldType<readonly TypedRoutePoint[]> = {
  schema: { type: 'array', minItems: 2, items: { anyOf: [{ type: 'string' }, placed.schema] } },
  expects: 'a list of points, such as [[0, 4], [-30, 4]]',
  read: (node, spot) => {
    if (node.is !== 'list')
      return refuse(spot, node.at, 'not-a-list', { found: sayNode(node), expects: route.expects });
    const points = node.items.map((item, i) => readRoutePoint(item, below(spot, i + 1)));
    return points.length >= 2 ? points : refuse(spot, node.at, 'route-short', { count: points.length });
  },
};

function readRoutePoint(node: TreeNode, spot: Spot): TypedRoutePoint {
  if (isUnknown(node)) return { placed: null, part: null };
  if (node.is === 'list') return { placed: readCoordinates(node, spot), part: null };
  if (node.is !== 'text') return { placed: placed.read(node, spot), part: null };
  const ref = readPoint(node.text.trim(), node, spot, 'corner');
  if (ref === null) return { placed: null, part: null };
  mention(spot, node, ref, routeSections, 'corner');
  return { placed: { is: 'named', ref }, part: ref };
}

/** The corners of a building, in order round it. */
export const corners: FieldType<readonly (Placed | null)[]> = {
  schema: { type: 'array', minItems: 3, items: placed.schema },
  expects: 'a list of corners, such as [[0, 0], [48, 0], [48, 30], [0, 30]]',
  read: (node, spot) => {
    if (node.is !== 'list')
      return refuse(spot, node.at, 'not-a-list', { found: sayNode(node), expects: corners.expects });
    if (node.items.length < 3) return refuse(spot, node.at, 'corners-few', { count: node.items.length });
    return node.items.map((item, i) => (isUnknown(item) ? null : placed.read(item, below(spot, i + 1))));
  },
};
