/** What each name is joined to, by pairs of names. */
export function neighbours(pairs: Iterable<readonly [string, string]>): ReadonlyMap<string, readonly string[]> {
  const nextTo = new Map<string, string[]>();
  const add = (from: string, to: string) => {
    const list = nextTo.get(from);
    if (list === undefined) nextTo.set(from, [to]);
    else list.push(to);
  };
  for (const [a, b] of pairs) {
    add(a, b);
    add(b, a);
  }
  return nextTo;
}

/** All that can be reached from any of `roots`, these too. */
export function reachedFrom(
  roots: readonly string[],
  nextTo: ReadonlyMap<string, readonly string[]>,
): ReadonlySet<string> {
  const reached = new Set(roots);
  // A set goes on to what is added while it is walked.
  for (const id of reached) for (const other of nextTo.get(id) ?? []) reached.add(other);
  return reached;
}
