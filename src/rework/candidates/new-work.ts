import type { SiteChange } from '../../study/try-change.ts';
import { byCodeUnit } from '../../units/by-code-unit.ts';
import { sumMaterials } from '../cost/counts-of.ts';
import type { Material, Work, WorkKind, WorkRun } from '../work.ts';
import type { Laid } from './lay-conductor.ts';

export interface NewWork {
  readonly kind: WorkKind;
  readonly subject: string;
  readonly at: readonly string[];
  readonly answers: readonly string[];
  readonly changes?: readonly SiteChange[];
  readonly laid?: readonly Laid[];
  readonly needs?: readonly string[];
  readonly materials?: readonly Material[];
  readonly runs?: readonly WorkRun[];
  readonly values?: Readonly<Record<string, unknown>>;
  /** Key of its sentences in the words room; left out: its kind. */
  readonly words?: string;
}

/** A work from its pieces: materials of one name are one line. */
export function newWork(w: NewWork): Work {
  const laid = w.laid ?? [];
  return {
    id: `${w.kind}:${w.subject}`,
    kind: w.kind,
    at: w.at,
    answers: [...new Set(w.answers)].sort(byCodeUnit),
    changes: [...(w.changes ?? []), ...laid.map((l) => l.change)],
    needs: w.needs ?? [],
    materials: sumMaterials([...(w.materials ?? []), ...laid.flatMap((l) => l.materials)]),
    runs: [...(w.runs ?? []), ...laid.map((l) => l.run)],
    values: { words: w.words ?? w.kind, ...w.values },
  };
}

export function each(name: string, count = 1): Material {
  return { name, unit: 'each', count: { low: count, high: count } };
}
