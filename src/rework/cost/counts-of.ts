import { byCodeUnit } from '../../units/by-code-unit.ts';
import { add, exact, type Interval } from '../../units/interval.ts';
import type { Material, Work } from '../work.ts';
import { type MaterialKind, materialKind } from './material-kind.ts';

/** What a work takes, counted. */
export interface Counts {
  readonly conductorM: Interval;
  /** Of the new runs, what lies in soil. */
  readonly buriedM: Interval;
  /** What does not. */
  readonly inAirM: Interval;
  readonly rods: number;
  readonly joints: number;
  readonly protectors: number;
}

/** A count that is a range is taken at its upper end: what may be needed has to be brought. */
export function countsOf({ materials, runs }: Pick<Work, 'materials' | 'runs'>): Counts {
  const pieces = (kind: MaterialKind) =>
    materials.reduce((n, m) => n + (m.unit === 'each' && materialKind(m) === kind ? Math.ceil(m.count.high) : 0), 0);
  const conductorM = total(materials.filter((m) => materialKind(m) === 'conductor').map((m) => m.count));
  const inSoil = runs.filter((r) => r.depthM !== null && r.depthM > 0);
  const inAir = runs.filter((r) => r.depthM === null || r.depthM <= 0);
  return {
    conductorM,
    buriedM: lengthOf(inSoil, conductorM),
    inAirM: runs.length === 0 ? conductorM : lengthOf(inAir, conductorM),
    rods: pieces('rod'),
    joints: pieces('joint'),
    protectors: pieces('protector'),
  };
}

/** A run of unknown length is nothing at least, and at most all the conductor that there is. */
function lengthOf(runs: Work['runs'], conductorM: Interval): Interval {
  return total(runs.map((r) => r.lengthM ?? { low: 0, high: conductorM.high }));
}

function total(all: readonly Interval[]): Interval {
  return all.reduce(add, exact(0));
}

/** The same materials of several works as one list, by name. */
export function addMaterials(works: readonly Pick<Work, 'materials'>[]): readonly Material[] {
  const all = [...sumMaterials(works.flatMap((w) => w.materials))];
  return all.sort((a, b) => byCodeUnit(a.name, b.name) || byCodeUnit(a.unit, b.unit));
}

/** Materials of one name are one line, where it stood first. */
export function sumMaterials(materials: readonly Material[]): readonly Material[] {
  const byKey = new Map<string, Material>();
  for (const m of materials) {
    const key = `${m.unit} ${m.name}`;
    const before = byKey.get(key);
    byKey.set(key, before === undefined ? m : { ...m, count: add(before.count, m.count) });
  }
  return [...byKey.values()];
}
