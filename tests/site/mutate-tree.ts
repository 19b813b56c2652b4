import type { Chance } from './chance.ts';
import { copyOf, isPairs, type Loose, type Pairs } from './loose-tree.ts';

/** What mutations draw from: values by section and field, ids, words. */
export interface Pool {
  readonly byField: ReadonlyMap<string, readonly Loose[]>;
  readonly parts: readonly (readonly [section: string, id: string, part: Loose])[];
}

/** One value of a tree, and how to put another in its place. */
interface Slot {
  readonly path: readonly string[];
  readonly value: Loose;
  readonly put: (value: Loose) => void;
  readonly drop: () => void;
  readonly repeat: () => void;
}

export function poolOf(trees: readonly Pairs[]): Pool {
  const byField = new Map<string, Loose[]>();
  const parts: [string, string, Loose][] = [];
  for (const tree of trees) {
    for (const { path, value } of slotsOf(tree)) {
      const [section = '', id = '', field] = path;
      if (path.length === 2 && isPairs(value)) parts.push([section, id, value]);
      if (path.length === 3) byField.set(`${section}.${field}`, [...(byField.get(`${section}.${field}`) ?? []), value]);
    }
  }
  return { byField, parts };
}

function slotsOf(tree: Loose, path: readonly string[] = [], slots: Slot[] = []): Slot[] {
  if (Array.isArray(tree)) {
    tree.forEach((value, i) => {
      const here = [...path, String(i + 1)];
      slots.push({
        path: here,
        value,
        put: (v) => tree.splice(i, 1, v),
        drop: () => tree.splice(i, 1),
        repeat: () => tree.splice(i, 0, value),
      });
      slotsOf(value, here, slots);
    });
  } else if (isPairs(tree)) {
    for (const pair of tree.pairs) {
      const [key, value] = pair;
      const here = [...path, key];
      slots.push({
        path: here,
        value,
        put: (v) => {
          pair[1] = v;
        },
        drop: () => tree.pairs.splice(tree.pairs.indexOf(pair), 1),
        repeat: () => tree.pairs.push([key, copyOf(value)]),
      });
      slotsOf(value, here, slots);
    }
  }
  return slots;
}

type Mutation = (tree: Pairs, by: Chance, pool: Pool) => void;

const knownWords = ['seen', 'told', 'measured', 'assumed', 'planned'];
const onSlot =
  (
    change: (slot: Slot, by: Chance, pool: Pool, tree: Pairs) => void,
    fits: (slot: Slot) => boolean = () => true,
  ): Mutation =>
  (tree, by, pool) => {
    const slots = slotsOf(tree).filter(fits);
    if (slots.length > 0) change(by.pick(slots), by, pool, tree);
  };
const isField = ({ path }: Slot) => path.length === 3;
const isText = ({ value }: Slot) => typeof value === 'string';

function idsOf(tree: Pairs): readonly string[] {
  return tree.pairs.flatMap(([section, members]) =>
    isPairs(members) && section !== 'site' && section !== 'soil' ? members.pairs.map(([id]) => id) : [],
  );
}

function members(tree: Pairs, by: Chance): Pairs | null {
  const sections = tree.pairs.filter(
    ([name, s]) => isPairs(s) && s.pairs.length > 0 && !['site', 'soil'].includes(name),
  );
  return sections.length === 0 ? null : (by.pick(sections)[1] as Pairs);
}

/** Slips that leave the shape as it is: most of what they make fits the schema. */
export const gentle: readonly Mutation[] = [
  onSlot(({ path: [section, , field], put }, by, pool) => {
    put(copyOf(by.pick(pool.byField.get(`${section}.${field}`) ?? ['unknown'])));
  }, isField),
  onSlot(({ put }, by) => put(by.often(0.8) ? 'unknown' : null), isField),
  onSlot(
    ({ drop }) => drop(),
    ({ path }) => path.length === 2 || path.length === 3,
  ),
  onSlot(
    ({ value, put }, by, _, tree) => put(by.often(0.8) ? by.pick([...idsOf(tree), 'street', 'unknown']) : `${value}x`),
    (slot) =>
      isText(slot) &&
      slot.path.some((step) =>
        ['on', 'from', 'to', 'path', 'within_reach', 'along', 'service', 'near', 'passes'].includes(step),
      ),
  ),
  onSlot(
    ({ value, put }, by) => {
      put(
        (value as string).replace(/\d+(?:\.\d+)?/g, (n) =>
          by.pick(['0', '1', '7', `${n}0`, `${n}000`, `0.${n}`, '1e9', `-${n}`, n]),
        ),
      );
    },
    (slot) => isText(slot) && /\d/.test(slot.value as string),
  ),
  onSlot(
    ({ value, put }, by) =>
      put({
        pairs: [
          ['is', value],
          ['known', by.pick(knownWords)],
        ],
      }),
    isField,
  ),
  (tree, by) => {
    const group = members(tree, by);
    if (group === null) return;
    const [a, b] = [by.pick(group.pairs), by.pick(group.pairs)];
    [a[0], b[0]] = [b[0], a[0]];
  },
  (tree, by, pool) => {
    const [section, id, part] = by.pick(pool.parts);
    const found = tree.pairs.find(([name]) => name === section);
    const name = by.often(0.5) ? id : `${id}-${by.below(100)}`;
    if (found === undefined) tree.pairs.push([section, { pairs: [[name, copyOf(part)]] }]);
    else if (isPairs(found[1])) found[1].pairs.push([name, copyOf(part)]);
  },
  (tree, by, pool) => {
    const group = members(tree, by);
    const section = tree.pairs.find(([, s]) => s === group)?.[0];
    const fields = [...pool.byField.keys()].filter((key) => key.startsWith(`${section}.`));
    const part = group === null ? null : by.pick(group.pairs)[1];
    if (!isPairs(part ?? null) || fields.length === 0) return;
    const key = by.pick(fields);
    const field = key.slice(key.indexOf('.') + 1);
    if (!(part as Pairs).pairs.some(([name]) => name === field))
      (part as Pairs).pairs.push([field, copyOf(by.pick(pool.byField.get(key)!))]);
  },
];

const odd: readonly Loose[] = [
  0,
  -1,
  1e308,
  -1e308,
  5e-324,
  Number.MAX_SAFE_INTEGER,
  1e21,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  true,
  null,
  '',
  ' ',
  'none',
  'NaN ft',
  'Infinity m',
  '1e400 ft',
  '-0 ohm',
  `${'9'.repeat(400)} ft`,
  '1/0 in',
  '0/0 AWG copper',
  'over range',
  'over 0 ft',
  '5 to 1 ft',
  'a'.repeat(5000),
  '@',
  'tower@',
  '@top',
  'x@1e400 ft',
  'a:b:c',
  'a.b.c',
  '__proto__',
  'constructor',
  'toString',
  '\u0000',
  '\uD800',
  '\u202Ereversed',
  '😀'.repeat(50),
  '{}',
  '[]',
];

function nested(value: Loose, by: Chance): Loose {
  let deep = value;
  for (let i = by.below(70); i > 0; i--) deep = by.often(0.5) ? [deep] : { pairs: [['is', deep]] };
  return deep;
}

/** Anything at all. */
export const wild: readonly Mutation[] = [
  (tree, by) => {
    const slots = slotsOf(tree);
    if (slots.length === 0) return;
    const [a, b] = [by.pick(slots), by.pick(slots)];
    a.put(copyOf(b.value));
    b.put(copyOf(a.value));
  },
  onSlot(({ drop }) => drop()),
  onSlot(({ repeat }) => repeat()),
  onSlot(({ put }, by) => put(by.pick(odd))),
  onSlot(({ put }, by) =>
    put(by.often(0.5) ? [by.pick(odd), by.pick(odd)] : { pairs: [[String(by.pick(odd)), by.pick(odd)]] }),
  ),
  onSlot(({ value, put }, by) => put(nested(value, by))),
  onSlot(({ value, put }) => put([value])),
  onSlot(
    ({ put }, by, _, tree) =>
      put(
        `${by.pick([...idsOf(tree), 'no-such'])}${by.pick(['@5 ft', '@top', '@anchor', '.2', '.leg9', ':from', ':x', '@-3 ft'])}`,
      ),
    isText,
  ),
  (tree, by) => {
    const groups = [tree, ...slotsOf(tree).map(({ value }) => value)].filter(
      (g): g is Pairs => isPairs(g) && g.pairs.length > 0,
    );
    const pair = by.pick(by.pick(groups.length > 0 ? groups : [{ pairs: [['x', null]] }]).pairs);
    const [key] = pair;
    pair[0] = by.pick([
      `${key}s`,
      key.slice(1),
      key.toUpperCase(),
      String(by.pick(odd)),
      by.pick([...idsOf(tree), 'kind']),
    ]);
  },
  (tree, by) => {
    const pair = tree.pairs[by.below(Math.max(1, tree.pairs.length))];
    if (pair !== undefined) pair[1] = by.pick<Loose>(['none', 'unknown', [], 3, { pairs: [] }, null]);
  },
];

/** A tree with a few slips: gentle ones alone, or any. */
export function mutateTree(tree: Pairs, by: Chance, pool: Pool): Pairs {
  const copy = copyOf(tree);
  const isGentle = by.often(0.6);
  for (let i = 1 + by.below(4); i > 0; i--) {
    const mutation = by.pick(isGentle || by.often(0.4) ? gentle : wild);
    mutation(copy, by, pool);
  }
  return copy;
}
