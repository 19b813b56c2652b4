import { type IdSection, type Mention, refuse, type Spot } from '../reading/report.ts';
import type { TreeNode } from '../reading/tree.ts';
import type { PointRef } from '../site.ts';
import { type FieldType, textOf } from './field.ts';
import { readFigure } from './quantity.ts';

/** A letter of any script, a digit, - or _; marks that sit on a letter count with it. */
export const idPattern = /^[\p{L}\p{M}\p{N}_-]+$/u;
export const reservedIds: readonly string[] = ['street', 'unknown', 'none', 'inside', 'outside', 'yes', 'no'];

const marks = ['top', 'base', 'tower', 'anchor'] as const;

/** Where nobody knows where it is. */
export const unknownPoint: PointRef = { text: 'unknown', part: null, atM: null, mark: null, member: null };

/** A point of the site: `tower@45 ft`, `rods.2`, `guy-1@anchor`. What it names is looked up later. */
export function point(to: readonly IdSection[], alsoStreet = false): FieldType<PointRef> {
  return reference(to, 'point', 'a point such as main-panel, tower@45 ft or rods.2', alsoStreet);
}

/** A joint, part or point: `clamp1`, `c1:E1`, `tower@top`. */
export function jointOrPoint(to: readonly IdSection[]): FieldType<PointRef> {
  return reference(to, 'joint', 'a joint such as c1:E1 or clamp1');
}

/** An id alone. */
export function id(to: readonly IdSection[]): FieldType<string> {
  const type = reference(to, 'id', 'the id of a part');
  return { ...type, read: (node, spot) => type.read(node, spot)?.text ?? null };
}

function reference(
  to: readonly IdSection[],
  form: Mention['form'],
  expects: string,
  alsoStreet = false,
): FieldType<PointRef> {
  return {
    schema: { type: 'string' },
    expects,
    read: (node, spot) => {
      const typed = textOf(node, spot, expects);
      if (typed === null) return null;
      if (alsoStreet && typed === 'street') return { ...unknownPoint, text: 'street', part: 'street' };
      const ref = readPoint(typed, node, spot, form);
      if (ref !== null) mention(spot, node, ref, to, form);
      return ref;
    },
  };
}

export function mention(
  spot: Spot,
  node: TreeNode,
  ref: PointRef,
  to: readonly IdSection[],
  form: Mention['form'],
  alsoNear: readonly string[] = [],
): void {
  spot.report.mentions.push({ spot, at: node.at, ref, to, form, alsoNear });
}

/** Takes a point apart; a joint `c1:E1` keeps what follows the colon as its member. */
export function readPoint(typed: string, node: TreeNode, spot: Spot, form: Mention['form']): PointRef | null {
  const [, name, member, joint, place] = /^([^.@:]+)(?:\.([^.@:]+))?(?::(.+?))?(?:@(.+))?$/u.exec(typed) ?? [];
  const wrongForm = (form === 'id' && name !== typed) || (joint !== undefined && form !== 'joint');
  if (name === undefined || !idPattern.test(name.trim()) || wrongForm) {
    return refuse(spot, node.at, wrongForm && form === 'id' ? 'id-with-more' : 'point-unreadable', { text: typed });
  }
  const point = (atM: PointRef['atM'], mark: PointRef['mark']): PointRef => ({
    text: typed,
    part: name.trim(),
    member: joint ?? member ?? null,
    atM,
    mark,
  });
  if (place === undefined) return point(null, null);
  const mark = marks.find((m) => m === place.trim());
  if (mark !== undefined) return point(null, mark);
  const height = readHeight(place.trim(), node, spot);
  return height === null ? null : point(height, null);
}

function readHeight(place: string, node: TreeNode, spot: Spot) {
  if (place === 'unknown') return refuse(spot, node.at, 'height-unknown', { text: place });
  if (/^\p{L}/u.test(place) && !/^(?:over|under|about)\b/.test(place)) {
    return refuse(spot, node.at, 'mark-unknown', { text: place, marks: marks.join(', ') });
  }
  return readFigure(place, 'length', {}, node, spot)?.interval ?? null;
}
