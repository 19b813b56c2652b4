import { rules } from '../rules/index.ts';
import type { KnownRule } from '../site/standard/read-standard.ts';

/** The rules that an owner's standard may name, and the figure of each that it may set another limit to. */
export function knownRules(): readonly KnownRule[] {
  return rules.map((r) => ({ id: r.id, key: r.limits?.[0]?.key ?? null }));
}
