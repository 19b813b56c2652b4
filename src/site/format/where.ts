import { type IdSection, refuse, type Spot } from '../reading/report.ts';
import { sayNode, type TreeNode } from '../reading/tree.ts';
import type { FieldType } from './field.ts';
import { mention, readPoint } from './points.ts';

/** `outside`, `inside` or a building's id, with where it was typed. */
export interface Located {
  readonly text: string;
  readonly node: TreeNode;
  readonly spot: Spot;
}

const buildings: readonly IdSection[] = ['buildings'];

/** outside, inside, or the id of a building. */
export const where: FieldType<Located> = {
  schema: { type: 'string', examples: ['outside', 'inside'] },
  expects: 'outside, inside or the id of a building',
  read: (node, spot) => readWhere(node, spot),
};

export function readWhere(node: TreeNode, spot: Spot): Located | null {
  if (node.is !== 'text') return refuse(spot, node.at, 'not-text', { found: sayNode(node), expects: where.expects });
  const text = node.text.trim();
  if (text === 'outside' || text === 'inside') return { text, node, spot };
  const ref = readPoint(text, node, spot, 'id');
  if (ref === null) return null;
  mention(spot, node, ref, buildings, 'id', ['outside', 'inside']);
  return { text, node, spot };
}
