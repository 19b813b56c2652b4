import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** One condition as the collection of clauses has it: facts in short words, how each was seen. */
export interface ConditionRow {
  readonly id: string;
  readonly group: string;
  /** `none`: an exemption, which never fails. */
  readonly severity: string;
  readonly regions: readonly string[];
  readonly threshold: string;
  readonly clause: string;
  readonly seen: string;
}

/** The table beside this file, in its order. */
export const conditionRows: readonly ConditionRow[] = readFileSync(
  join(import.meta.dirname, 'conditions-table.tsv'),
  'utf8',
)
  .trimEnd()
  .split('\n')
  .slice(1)
  .map((line) => {
    const [id, group, severity, regions, threshold, clause, seen] = line.split('\t') as [
      string,
      string,
      string,
      string,
      string,
      string,
      string,
    ];
    return { id, group, severity, regions: regions.split(' '), threshold, clause, seen };
  });

/**
 * Provenances that a rule of the row may have: that of the threshold, where a row says how the figures were seen; else
 * any that is named. What was seen as a heading alone is no reading of a threshold. Numbers of our own say so.
 */
export function provenancesOf({ seen, threshold, clause }: ConditionRow): ReadonlySet<string> {
  const parts = seen.split(/[;,] /).filter((p) => !/heading|^clause | clause$|papers|table exists/.test(p));
  const ofFigures = parts.filter((p) => /figures|sizes/.test(p));
  const looked = ofFigures.length > 0 ? ofFigures : parts;
  const all = looked.flatMap((p) => {
    if (p.includes('READ-1')) return ['read'];
    if (/READ-2|READ-T/.test(p)) return ['second-hand'];
    return p.includes('RECALLED') ? ['memory'] : [];
  });
  const isOwn = /\bour/.test(threshold) || /^ours$|common practice|our number/.test(clause);
  return new Set([...all, ...(isOwn ? ['ours'] : [])]);
}
