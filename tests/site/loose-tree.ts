import { parse } from 'yaml';

/** A file's values in a form in which a name may stand twice: to be mutated and printed again. */
export type Loose = string | number | boolean | null | Loose[] | Pairs;
export interface Pairs {
  pairs: [string, Loose][];
}

export function isPairs(value: Loose | undefined): value is Pairs {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

export function looseOf(text: string): Pairs {
  return turned(parse(text, { mapAsMap: true })) as Pairs;
}

function turned(value: unknown): Loose {
  if (value instanceof Map) return { pairs: [...value].map(([key, inner]) => [String(key), turned(inner)]) };
  if (Array.isArray(value)) return value.map(turned);
  return value as Loose;
}

/** A copy that shares nothing with the tree. */
export function copyOf<T extends Loose>(value: T): T {
  if (Array.isArray(value)) return value.map(copyOf) as T;
  return isPairs(value) ? ({ pairs: value.pairs.map(([key, inner]) => [key, copyOf(inner)]) } as T) : value;
}

/** Plain values, as another reader of YAML would hand them on; null where a name stands twice, which none accepts. */
export function plainOf(value: Loose): { readonly value: unknown } | null {
  let twice = false;
  const walk = (at: Loose): unknown => {
    if (Array.isArray(at)) return at.map(walk);
    if (!isPairs(at)) return at;
    const group = Object.create(null) as Record<string, unknown>;
    for (const [key, inner] of at.pairs) {
      twice ||= Object.hasOwn(group, key);
      group[key] = walk(inner);
    }
    return group;
  };
  const plain = walk(value);
  return twice ? null : { value: plain };
}

/** How a tree is printed: on one line in braces, or so many levels below one another and the rest in braces. */
export type Layout = 'json' | 1 | 2 | 3;

export function printed(value: Loose, layout: Layout): string {
  if (layout === 'json') return `${inBraces(value, JSON.stringify)}\n`;
  return isPairs(value) && value.pairs.length > 0 ? below(value, layout, '') : `${inBraces(value, scalar)}\n`;
}

function below({ pairs }: Pairs, levels: number, indent: string): string {
  const line = ([key, value]: [string, Loose]): string => {
    const name = `${indent}${scalar(key)}:`;
    if (value === null) return `${name}\n`;
    if (levels > 0 && isPairs(value) && value.pairs.length > 0)
      return `${name}\n${below(value, levels - 1, `${indent}  `)}`;
    return `${name} ${inBraces(value, scalar)}\n`;
  };
  return pairs.map(line).join('');
}

function inBraces(value: Loose, write: (scalar: string | number | boolean) => string): string {
  if (value === null) return 'null';
  if (Array.isArray(value)) return `[${value.map((item) => inBraces(item, write)).join(', ')}]`;
  if (!isPairs(value)) return write(value);
  return `{${value.pairs.map(([key, inner]) => `${write(key)}: ${inBraces(inner, write)}`).join(', ')}}`;
}

function scalar(value: string | number | boolean): string {
  const plain =
    typeof value !== 'string' || (/^[\p{L}\p{N}_/][\p{L}\p{N}_/.@' -]*$/u.test(value) && !value.endsWith(' '));
  return plain ? String(value) : JSON.stringify(value);
}
