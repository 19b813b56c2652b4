import type { Study } from '../study/study.ts';
import type { StudyStrike } from '../study/study-strike.ts';
import type { DrawnRun } from './draw-runs.ts';
import { partOfPoint } from './item-numbers.ts';
import { type Cluster, clustersOf } from './plan-clusters.ts';
import type { PlanScale } from './plan-scale.ts';
import { type StrikeCurrent, sayCurrent } from './strike-currents.ts';
import { middleOf } from './strike-runs.ts';

/**
 * What the plan of currents names: electrodes and supports that carry, ends of conductors that carry, boxes between which
 * a difference stands, and what is struck. Everything else is on the site plan.
 */
export function strikeSite(study: Study, strike: StudyStrike, currents: ReadonlyMap<string, StrikeCurrent>): Study {
  const ends = study.conductors.filter((c) => currents.has(c.id)).flatMap((c) => [c.from, c.to]);
  const boxes = strike.differences.flatMap((d) => [d.a, d.b]);
  const shown = new Set([...currents.keys(), strike.at, ...ends, ...boxes].map(partOfPoint));
  const parts = study.parts.filter((p) => shown.has(p.id) && !(p.section === 'joints' && !currents.has(p.id)));
  return { ...study, parts, guys: [], findings: [] };
}

/** Places with their parts; behind the name of each what it carries. */
export function strikeClusters(
  site: Study,
  numbers: ReadonlyMap<string, string>,
  currents: ReadonlyMap<string, StrikeCurrent>,
  scale: PlanScale,
): readonly Cluster[] {
  const told = (id: string) => currents.get(id) ?? null;
  return clustersOf(site, numbers, scale).map((c) => ({
    ...c,
    entries: c.entries.map((e) => {
      const current = told(e.id);
      return current === null ? e : { ...e, text: `${e.text}: ${sayCurrent(current)}` };
    }),
  }));
}

/** A label for each run that carries and has no symbol of its own: its letter, its number, its current. */
export function runLabels(
  runs: readonly DrawnRun[],
  numbers: ReadonlyMap<string, string>,
  currents: ReadonlyMap<string, StrikeCurrent>,
  named: ReadonlySet<string>,
): readonly Cluster[] {
  return runs.flatMap(({ run, points }): readonly Cluster[] => {
    const current = currents.get(run.id);
    if (current === undefined || named.has(run.id)) return [];
    const text = `${run.letter}${numbers.get(run.id) ?? ''}: ${sayCurrent(current)}`;
    return [{ at: middleOf(points), entries: [{ id: run.id, symbol: 'joint', text }] }];
  });
}
