import { byCodeUnit } from '../units/by-code-unit.ts';
import type { Sides } from './comparison.ts';

/**
 * Rows of both sides side by side: those whose key is the same stand together, several of one key in their order. In the
 * order of the keys; keys are as after says.
 */
export function pairRows<T>(
  before: readonly T[],
  after: readonly T[],
  keyBefore: (row: T) => string,
  keyAfter: (row: T) => string,
): readonly Sides<T | null>[] {
  const rows = new Map<string, { before: T[]; after: T[] }>();
  const at = (key: string) => {
    const known = rows.get(key) ?? { before: [], after: [] };
    rows.set(key, known);
    return known;
  };
  for (const row of before) at(keyBefore(row)).before.push(row);
  for (const row of after) at(keyAfter(row)).after.push(row);
  return [...rows]
    .sort(([x], [y]) => byCodeUnit(x, y))
    .flatMap(([, { before: b, after: a }]) =>
      Array.from({ length: Math.max(b.length, a.length) }, (_, i) => ({ before: b[i] ?? null, after: a[i] ?? null })),
    );
}
