/**
 * A binary heap of the numbers 0 to count - 1: gives the one that comes first, and can be told that one has moved
 * forward.
 */
export interface NumberHeap {
  /** Puts a number in, or moves it forward after its rank became better. */
  readonly raise: (n: number) => void;
  /** Takes out the number that comes first; -1 when empty. */
  readonly takeFirst: () => number;
}

/** `before(a, b)`: a comes first. Each step costs the logarithm of how many are in. */
export function numberHeap(count: number, before: (a: number, b: number) => boolean): NumberHeap {
  const heap = new Int32Array(count);
  const slotOf = new Int32Array(count).fill(-1);
  let size = 0;

  function put(n: number, slot: number): void {
    heap[slot] = n;
    slotOf[n] = slot;
  }

  function raise(n: number): void {
    let slot = slotOf[n]! === -1 ? size++ : slotOf[n]!;
    while (slot > 0) {
      const above = (slot - 1) >> 1;
      if (!before(n, heap[above]!)) break;
      put(heap[above]!, slot);
      slot = above;
    }
    put(n, slot);
  }

  function takeFirst(): number {
    if (size === 0) return -1;
    const first = heap[0]!;
    slotOf[first] = -1;
    const last = heap[--size]!;
    if (size > 0) sink(last);
    return first;
  }

  function sink(n: number): void {
    let slot = 0;
    for (;;) {
      let below = 2 * slot + 1;
      if (below >= size) break;
      if (below + 1 < size && before(heap[below + 1]!, heap[below]!)) below++;
      if (!before(heap[below]!, n)) break;
      put(heap[below]!, slot);
      slot = below;
    }
    put(n, slot);
  }

  return { raise, takeFirst };
}
