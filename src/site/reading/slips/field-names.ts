import { sections } from '../../format/format.ts';

/** The name of every section and of every field of a section. */
export const fieldNames: ReadonlySet<string> = new Set([
  'kind',
  ...sections.map(({ name }) => name),
  ...sections.flatMap(({ fields }) => Object.keys(fields)),
]);
