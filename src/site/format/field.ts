import { refuse, type Spot } from '../reading/report.ts';
import { sayNode, type TextNode, type TreeNode } from '../reading/tree.ts';

/** A piece of JSON Schema. */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };
export type Schema = { readonly [key: string]: Json };

/**
 * What a field may hold: how it is read, and how a schema says so. `read` sees neither blanks nor `unknown` nor the
 * `{is, known}` wrapper (see read-value.ts); it returns null where it refused, after noting the problem.
 */
export interface FieldType<T> {
  readonly schema: Schema;
  /** Ends the sentence "here belongs ...". */
  readonly expects: string;
  readonly read: (node: TreeNode, spot: Spot) => T | null;
}

/** One field of the format: its type, its sentence, and the kinds it belongs to (none named: all). */
export interface Field<T> {
  readonly type: FieldType<T>;
  readonly says: string;
  readonly kinds: readonly string[] | null;
}

export type Fields = Readonly<Record<string, Field<unknown>>>;

/** What the fields of a table read as; null: unknown or left out. */
export type ValuesOf<F> = {
  readonly [K in keyof F]: F[K] extends Field<infer T> ? T | null : never;
};

export function field<T>(type: FieldType<T>, says: string, kinds: readonly string[] | null = null): Field<T> {
  return { type, says, kinds };
}

/** The node's text, or null with a problem where it is a list or a group. */
export function textOf(node: TreeNode, spot: Spot, expects: string): string | null {
  if (node.is === 'text') return (node as TextNode).text.trim();
  return refuse(spot, node.at, 'not-text', { found: sayNode(node), expects });
}
