import fc from 'fast-check';
import { expect, test } from 'vitest';
import { numberHeap } from '../../src/bonding/number-heap.ts';

test('numbers come out in the order of their ranks, also of those that moved forward while in', () => {
  const ranks = fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 1, maxLength: 60 });
  fc.assert(
    fc.property(ranks, fc.array(fc.tuple(fc.nat(59), fc.integer({ min: 1, max: 40 }))), (first, moves) => {
      const rank = [...first];
      const heap = numberHeap(rank.length, (a, b) => rank[a]! < rank[b]!);
      for (let n = 0; n < rank.length; n++) heap.raise(n);
      for (const [n, by] of moves) {
        if (n >= rank.length) continue;
        rank[n]! -= by;
        heap.raise(n);
      }
      const out = rank.map(() => heap.takeFirst());
      expect(out.map((n) => rank[n])).toEqual([...rank].sort((a, b) => a - b));
      expect(new Set(out).size).toBe(rank.length);
      expect(heap.takeFirst()).toBe(-1);
    }),
  );
});

test('a number taken out may come in again', () => {
  const heap = numberHeap(2, (a, b) => a < b);
  heap.raise(1);
  expect(heap.takeFirst()).toBe(1);
  heap.raise(1);
  heap.raise(0);
  expect([heap.takeFirst(), heap.takeFirst(), heap.takeFirst()]).toEqual([0, 1, -1]);
});
