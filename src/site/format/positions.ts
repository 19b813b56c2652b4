import type { Interval } from '../../units/interval.ts';
import { middle } from '../../units/interval.ts';
import { below, type IdSection, refuse, type Spot } from '../reading/report.ts';
import { childOf, type ListNode, type MapNode, sayNode, type TreeNode } from '../reading/tree.ts';
import type { PointRef, Position } from '../site.ts';
import { keySchema } from './collections.ts';
import type { FieldType } from './field.ts';
import { mention, readPoint } from './points.ts';
import { readFigure } from './quantity.ts';
import { isUnknown, refuseOtherKeys, unwrapped } from './read-value.ts';
import { refuseText } from './words.ts';

/** Metres east, north and up to add. */
export type Step = readonly [eastM: number, northM: number, upM: number];

/** Where something is, as typed: to be worked out once all places are known. */
export type Placed =
  | { readonly is: 'coordinates'; readonly position: Position }
  | { readonly is: 'named'; readonly ref: PointRef }
  | { readonly is: 'steps'; readonly from: PointRef; readonly step: Step | null }
  | { readonly is: 'aside'; readonly from: PointRef; readonly distanceM: Interval | null; readonly side: Step | null };

const anchors: readonly IdSection[] = ['places', 'buildings'];
const origins: readonly IdSection[] = [
  ...anchors,
  'electrodes',
  'supports',
  'bars',
  'equipment',
  'arresters',
  'antennas',
  'metalwork',
];

const half = Math.SQRT1_2;
const compass: Readonly<Record<string, Step>> = {
  n: [0, 1, 0],
  s: [0, -1, 0],
  e: [1, 0, 0],
  w: [-1, 0, 0],
  ne: [half, half, 0],
  nw: [-half, half, 0],
  se: [half, -half, 0],
  sw: [-half, -half, 0],
  up: [0, 0, 1],
  down: [0, 0, -1],
};

/** A position in any form: coordinates, a place, steps from a point, a distance to one side of a point. */
export const placed: FieldType<Placed> = {
  schema: {
    anyOf: [
      { type: 'string' },
      { type: 'array', minItems: 2, maxItems: 3, items: { type: ['number', 'string'] } },
      {
        type: 'object',
        additionalProperties: false,
        required: ['from'],
        properties: {
          from: keySchema({ type: 'string' }, 'The place, part or corner of a building from which it is measured.'),
          go: keySchema(
            { anyOf: [{ type: 'string' }, { type: 'array', items: { type: 'string' } }] },
            'Steps from there, each a length and a direction, such as 10 ft north.',
          ),
          distance: keySchema({ type: ['number', 'string'] }, 'How far it is from there.'),
          side: keySchema({ type: 'string' }, 'On which side of it: N, south-east, up.'),
        },
      },
    ],
  },
  expects: '[east, north], a place, or {from: house.ne, go: [10 ft north]}',
  read: (node, spot) => {
    if (node.is === 'list') return readCoordinates(node, spot);
    if (node.is === 'map') return readRelative(node, spot);
    return readNamed(node, spot, anchors, (ref) => ({ is: 'named', ref }));
  },
};

function readNamed(
  node: TreeNode,
  spot: Spot,
  to: readonly IdSection[],
  make: (ref: PointRef) => Placed,
): Placed | null {
  if (node.is !== 'text') return refuse(spot, node.at, 'not-text', { found: sayNode(node), expects: 'a place' });
  const ref = readPoint(node.text.trim(), node, spot, 'corner');
  if (ref === null) return null;
  mention(spot, node, ref, to, 'corner');
  return make(ref);
}

export function readCoordinates(node: ListNode, spot: Spot): Placed | null {
  if (node.items.length < 2 || node.items.length > 3) {
    return refuse(spot, node.at, 'coordinates-count', { count: node.items.length });
  }
  const figures = node.items.map((item, i) => readCoordinate(unwrapped(item), below(spot, i + 1)));
  const [east, north, up = 0] = figures;
  if (east == null || north == null || up === null) return null;
  return { is: 'coordinates', position: [east, north, up] };
}

function readCoordinate(node: TreeNode, spot: Spot): number | null {
  if (isUnknown(node)) return null;
  if (node.is !== 'text') return refuseText(node, spot, 'a coordinate such as 12 or 12 ft');
  const read = readFigure(node.text.trim(), 'length', { bare: true, signed: true }, node, spot);
  if (read === null) return null;
  const figure = (read.interval.low + read.interval.high) / 2;
  return Number.isFinite(figure) ? figure : refuse(spot, node.at, 'coordinate-open', { text: node.text });
}

function readRelative(node: MapNode, spot: Spot): Placed | null {
  refuseOtherKeys(node, ['from', 'go', 'distance', 'side'], spot);
  const from = childOf(node, 'from');
  if (from === null) return refuse(spot, node.at, 'from-missing', {});
  if (isUnknown(from)) return null;
  const go = childOf(node, 'go');
  const distance = childOf(node, 'distance');
  if (go !== null && distance !== null) return refuse(spot, node.at, 'go-and-distance', {});
  const fromSpot = below(spot, 'from');
  if (go !== null) {
    const step = readSteps(go, below(spot, 'go'));
    return readNamed(from, fromSpot, origins, (ref) => ({ is: 'steps', from: ref, step }));
  }
  const distanceM = distance === null || isUnknown(distance) ? null : readDistance(distance, below(spot, 'distance'));
  const sideNode = childOf(node, 'side');
  const side = sideNode === null || isUnknown(sideNode) ? null : readSide(sideNode, below(spot, 'side'));
  return readNamed(from, fromSpot, origins, (ref) => ({ is: 'aside', from: ref, distanceM, side }));
}

function readDistance(node: TreeNode, spot: Spot): Interval | null {
  if (node.is !== 'text') return refuseText(node, spot, 'a distance such as 35 ft');
  return readFigure(node.text.trim(), 'length', { bare: true }, node, spot)?.interval ?? null;
}

function readSteps(node: TreeNode, spot: Spot): Step | null {
  if (isUnknown(node)) return null;
  const items = node.is === 'list' ? node.items : [node];
  let sum: Step | null = [0, 0, 0];
  items.forEach((item, i) => {
    const step = isUnknown(item) ? null : readStep(item, node.is === 'list' ? below(spot, i + 1) : spot);
    sum = step === null || sum === null ? null : add(sum, step, 1);
  });
  return sum;
}

function readStep(node: TreeNode, spot: Spot): Step | null {
  const expects = 'a length and a direction, such as 10 ft north';
  if (node.is !== 'text') return refuseText(node, spot, expects);
  const [, far, direction] = /^(.*\S)\s+(\S+)$/.exec(node.text.trim()) ?? [];
  const toward = direction === undefined ? null : directionOf(direction);
  if (far === undefined || toward === null) return refuseText(node, spot, expects);
  const length = readFigure(far, 'length', { bare: true }, node, spot);
  const distance = length === null ? null : middle(length.interval);
  return distance === null ? null : add([0, 0, 0], toward, distance);
}

function readSide(node: TreeNode, spot: Spot): Step | null {
  if (node.is !== 'text') return refuseText(node, spot, 'a side such as N or north-east');
  return directionOf(node.text.trim()) ?? refuseText(node, spot, 'a side such as N or north-east');
}

/** `N`, `north`, `NE`, `north-east`, `northeast`, `up`. */
export function directionOf(word: string): Step | null {
  const letters = word
    .toLowerCase()
    .replace(/north/g, 'n')
    .replace(/south/g, 's')
    .replace(/east/g, 'e')
    .replace(/west/g, 'w')
    .replace(/[\s-]/g, '');
  return Object.hasOwn(compass, letters) ? compass[letters]! : null;
}

export function add(from: Step, step: Step, times: number): Step {
  return [from[0] + step[0] * times, from[1] + step[1] * times, from[2] + step[2] * times];
}
