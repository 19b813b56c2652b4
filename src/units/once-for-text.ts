/** A value worked out once for each text that it is asked of, and kept: for texts of which there are few. `work` has to be pure. */
export function onceForText<V>(work: (text: string) => V): (text: string) => V {
  const made = new Map<string, V>();
  return (text) => {
    const before = made.get(text);
    if (before !== undefined) return before;
    const value = work(text);
    made.set(text, value);
    return value;
  };
}
