import type { Comparison } from './comparison.ts';

/** Parts of the later study that are new or changed and that its file calls planned: nobody says that they stand. By id. */
export function plannedParts({ parts }: Pick<Comparison, 'parts'>): readonly string[] {
  const all = [...parts.added, ...parts.changed.map((c) => c.after)];
  const ids = all.filter((p) => p.known === 'planned' && p.present !== 'no').map((p) => p.id);
  return [...new Set(ids)].sort();
}
