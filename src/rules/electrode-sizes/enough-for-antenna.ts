import type { ElectrodeFacts } from '../../facts/facts.ts';
import type { Answer } from '../../site/site.ts';
import type { Measured } from '../rule.ts';
import { best, both, reaches } from './answers.ts';
import { twoRuns } from './two-runs.ts';

/** One rod of 2.5 m, two of 1.5 m that stand 3 m apart, or two runs of 2.5 m (IEC 60728-11). */
export const rodM = 2.5;
export const shortRodM = 1.5;
const apartM = 3;
/** Kinds that the clause speaks of; others may or may not be enough. */
const known: readonly string[] = ['rod', 'rods', 'buried wire', 'radial', 'plate', 'concrete-encased'];

/**
 * Whether the electrodes of an antenna hold any one of the arrangements that will do, with the longest rod as the figure where
 * nothing but one long rod makes it enough.
 */
export function enoughForAntenna(all: readonly ElectrodeFacts[]): {
  readonly answer: Answer;
  readonly measured?: Measured;
} {
  const sure = all.filter((e) => e.part.present === 'yes');
  const other = others(sure);
  if (other.includes('yes')) return { answer: 'yes' };
  const rod = longRod(sure);
  if (rod === 'yes') return { answer: 'yes', ...longest(sure) };
  const isOpen =
    [rod, ...other].includes('unknown') ||
    all.some((e) => e.part.present === 'unknown' || !known.includes(e.part.kind));
  return { answer: isOpen ? 'unknown' : 'no' };
}

/** All that will do but one long rod. */
function others(sure: readonly ElectrodeFacts[]): readonly Answer[] {
  const footings = sure.filter((e) => e.part.kind === 'concrete-encased').map((e) => isEarth(e.part));
  return [best(footings), twoRods(sure), twoRuns(sure)];
}

/** A footing that a sheet or paint parts from the soil is none; one bar of a cage that is not tied may be too short. */
function isEarth({ membrane, painted, cage }: ElectrodeFacts['part']): Answer {
  if (membrane === 'yes' || painted === 'yes') return 'no';
  return cage === 'not tied' ? 'unknown' : 'yes';
}

function longest(sure: readonly ElectrodeFacts[]): { readonly measured: Measured } {
  const lengths = sure.filter(isRod).flatMap((e) => (e.part.lengthM == null ? [] : [e.part.lengthM]));
  const value = lengths.reduce((most, l) => (l.low > most.low ? l : most));
  return { measured: { key: 'rodLengthM', value, limit: rodM, sense: 'least' } };
}

const isRod = (e: ElectrodeFacts) => e.part.kind === 'rod' || e.part.kind === 'rods';

function longRod(all: readonly ElectrodeFacts[]): Answer {
  return best(all.filter(isRod).map((e) => reaches(e.part.lengthM, rodM)));
}

function twoRods(all: readonly ElectrodeFacts[]): Answer {
  const rods = all.filter((e) => isRod(e) && reaches(e.part.lengthM, shortRodM) !== 'no');
  const groups = rods.filter((e) => e.part.kind === 'rods' && e.part.members !== 1);
  const inGroups = groups.map((e) => both(reaches(e.part.lengthM, shortRodM), reaches(e.part.spacingM, apartM)));
  const pairs = rods.flatMap((a, i) =>
    rods
      .slice(i + 1)
      .map((b) => both(both(reaches(a.part.lengthM, shortRodM), reaches(b.part.lengthM, shortRodM)), farApart(a, b))),
  );
  return best([...inGroups, ...pairs]);
}

function farApart(a: ElectrodeFacts, b: ElectrodeFacts): Answer {
  const [p, q] = [a.part.position, b.part.position];
  if (p === null || q === null) return 'unknown';
  return Math.hypot(p[0] - q[0], p[1] - q[1]) >= apartM * (1 - 2e-3) ? 'yes' : 'no';
}
