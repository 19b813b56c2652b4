import { expect, it } from 'vitest';
import { gatherDoubts } from '../../src/rules/gather-doubts.ts';
import type { Verdict } from '../../src/rules/rule.ts';

const doubt = (at: readonly string[], because = 'unknown', more: Partial<Verdict> = {}): Verdict =>
  ({ is: 'cannot tell', at, because: { key: because }, settle: { key: 'look' }, ...more }) as Verdict;

it('makes one verdict of places that cannot be told for the same reason, in order and each once', () => {
  expect(gatherDoubts([doubt(['b', 'a']), doubt(['c']), doubt(['a'])])).toEqual([doubt(['a', 'b', 'c'])]);
});

it('keeps places apart whose reason, way to settle or cause differs', () => {
  const all = [
    doubt(['a']),
    doubt(['b'], 'other'),
    doubt(['c'], 'unknown', { settle: { key: 'ask' } }),
    doubt(['d'], 'unknown', { under: 'finding' }),
    doubt(['e'], 'unknown', { because: { key: 'unknown', values: { by: 'x' } } }),
  ];
  expect(gatherDoubts(all)).toEqual(all);
});

it('keeps a doubt with a figure to itself: each place has its own figure', () => {
  const measured = { key: 'lengthM', value: 1, limit: 2, sense: 'least' } as const;
  const all = [doubt(['a'], 'unknown', { measured }), doubt(['b'], 'unknown', { measured })];
  expect(gatherDoubts(all)).toEqual(all);
});

it('leaves what is certain as it stands', () => {
  const certain: readonly Verdict[] = [
    { is: 'not met', at: ['b'], because: { key: 'x' } },
    { is: 'not met', at: ['a'], because: { key: 'x' } },
    { is: 'met', at: ['c'], because: { key: 'y' } },
    { is: 'not looked at', because: { key: 'none' } },
  ];
  expect(gatherDoubts(certain)).toEqual(certain);
});
