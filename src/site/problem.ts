import type { SourcePlace } from './site.ts';

/** One thing that makes a file unusable: where, what (a message key of the words room with its values), near names. */
export interface Problem {
  readonly source: SourcePlace;
  /** Path of the field, such as `conductors.c1.length`; '' for the whole file. */
  readonly path: string;
  readonly key: string;
  readonly values: Readonly<Record<string, string | number>>;
  /** The one name most likely meant, or null. */
  readonly near: string | null;
}
