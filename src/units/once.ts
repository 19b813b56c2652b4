/** A value that is worked out when it is first asked for, and once. `work` has to be pure. */
export function once<T>(work: () => T): () => T {
  let done: { readonly value: T } | null = null;
  return () => {
    done ??= { value: work() };
    return done.value;
  };
}
