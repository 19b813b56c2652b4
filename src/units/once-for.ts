/** A value worked out once for each object that it is asked of, and kept as long as that object. `work` has to be pure. */
export function onceFor<K extends object, V>(work: (of: K) => V): (of: K) => V {
  const made = new WeakMap<K, { readonly value: V }>();
  return (of) => {
    const before = made.get(of);
    if (before !== undefined) return before.value;
    const value = work(of);
    made.set(of, { value });
    return value;
  };
}
