import { once } from './once.ts';

/** An object whose members are worked out when they are first read, each once, in the order given. `work` has to be pure. */
export function lazily<T extends object>(work: { readonly [Name in keyof T]: () => T[Name] }): T {
  const made: Partial<T> = {};
  for (const name of Object.keys(work) as (keyof T)[]) {
    Object.defineProperty(made, name, { enumerable: true, get: once(work[name]) });
  }
  return made as T;
}
