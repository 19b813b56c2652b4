import type { Schema } from '../../format/field.ts';
import { sections } from '../../format/format.ts';

/** The name of every section and of every field of a section. */
export const fieldNames: ReadonlySet<string> = new Set([
  'kind',
  ...sections.map(({ name }) => name),
  ...sections.flatMap(({ fields }) => Object.keys(fields)),
]);

/** The fields that hold a list in some section. */
export const listNames: ReadonlySet<string> = new Set(
  sections.flatMap(({ fields }) =>
    Object.entries(fields).flatMap(([name, { type }]) => (isList(type.schema) ? [name] : [])),
  ),
);

function isList({ type, anyOf }: Schema): boolean {
  return type === 'array' || (Array.isArray(anyOf) && anyOf.some((one) => isList(one as Schema)));
}
