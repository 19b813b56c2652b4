import { rules } from '../rules/index.ts';
import type { Limit } from '../rules/rule.ts';
import type { KnownRule } from '../site/standard/read-standard.ts';

/** The rules that an owner's standard may name, and the figure of each that it may set another limit to. */
export function knownRules(): readonly KnownRule[] {
  return rules.map(({ id, limits = [] }) => {
    const key = limits[0]?.key ?? null;
    return key === null ? { id, key } : { id, key, senses: sensesOf(limits, key) };
  });
}

function sensesOf(limits: readonly Limit[], key: string): readonly Limit['sense'][] {
  return [...new Set(limits.filter((l) => l.key === key).map((l) => l.sense))];
}
