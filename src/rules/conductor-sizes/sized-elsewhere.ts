import type { Verdict } from '../rule.ts';

/**
 * Leaves out the doubts about a size or metal that nobody knows, where a rule that asks less of the same conductor raises
 * them already; with nothing left, not looked at. What fails the lesser rule too stands under it.
 */
export function sizedElsewhere(
  verdicts: readonly Verdict[],
  lesser: string | ((conductor: string) => string),
): readonly Verdict[] {
  const ruleOf = (conductor: string) => (typeof lesser === 'string' ? lesser : lesser(conductor));
  const known = verdicts.filter((v) => v.is !== 'cannot tell' || !/^(?:size|metal) unknown$/.test(v.because.key));
  if (known.length === 0) return [{ is: 'not looked at', because: { key: 'asked elsewhere' } }];
  return known.map((v) => (v.is === 'not met' ? { ...v, under: `${ruleOf(v.at.join('+'))}:${v.at.join('+')}` } : v));
}
