import { expect, it } from 'vitest';
import { findingsOf } from './verdicts-of.ts';

/**
 * Figures just on each side of a threshold, a pair for each metal and unit system: the first of a pair meets the condition,
 * the second does not. `site` puts a figure, as somebody types it, into a small site with one place for the rule to look at.
 */
export function eitherSide(
  rule: string,
  site: (figure: string) => string,
  pairs: readonly (readonly [within: string, beyond: string])[],
): void {
  it.each(pairs)(`${rule}: %s and %s`, (within, beyond) => {
    const outcomes = [within, beyond].map((figure) => [
      figure,
      ...new Set(findingsOf(rule, site(figure)).findings.map((f) => f.outcome)),
    ]);
    expect(outcomes).toEqual([
      [within, 'met'],
      [beyond, 'not met'],
    ]);
  });
}
