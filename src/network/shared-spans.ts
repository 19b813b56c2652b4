import { conductorLength } from '../bonding/span-figures.ts';
import type { Conductor } from '../site/site.ts';
import { type Interval, middle } from '../units/interval.ts';
import type { StrikeBranch } from './strike-branches.ts';

/**
 * What the owner typed of a whole wire that passes clamps, shared over its spans by their lengths: length, resistance and
 * inductance. A span of which nobody knows anything leaves the wire as it is. `cut`: wires that are cut into pieces in the soil.
 */
export function sharedSpans(
  branches: readonly StrikeBranch[],
  conductors: readonly Conductor[],
  cut: ReadonlySet<string>,
): readonly StrikeBranch[] {
  const shared = new Map<StrikeBranch, StrikeBranch>();
  for (const c of conductors) {
    if (c.passes.length === 0 || cut.has(c.id)) continue;
    const own = branches.filter(({ part, lengthM }) => part === c.id && lengthM > 0);
    const isOpen = own.every(({ lengthFrom }) => lengthFrom === 'straight');
    if (own.length <= 1 || !isOpen) continue;
    const sumM = own.reduce((sum, { lengthM }) => sum + lengthM, 0);
    for (const branch of own) shared.set(branch, spanOf(branch, c, branch.lengthM / sumM, sumM));
  }
  return shared.size === 0 ? branches : branches.map((branch) => shared.get(branch) ?? branch);
}

function spanOf(branch: StrikeBranch, c: Conductor, share: number, sumM: number): StrikeBranch {
  const wholeM = likely(conductorLength(c));
  // one that is shorter than its straight ways is asked about, and no way
  const lengthM = wholeM !== null && wholeM > sumM ? wholeM * share : branch.lengthM;
  const wholeOhm = likely(c.resistance?.ohm ?? null);
  const wholeH = likely(c.inductanceH);
  return {
    ...branch,
    lengthM,
    lengthFrom: lengthM === branch.lengthM ? branch.lengthFrom : 'typed',
    // what is longer than the way is one run, not one for each span
    inRun: 1 / share,
    resistanceOhm: wholeOhm === null ? (branch.resistanceOhm * lengthM) / branch.lengthM : wholeOhm * share,
    ...(wholeH === null ? {} : { statedH: wholeH * share, way: null }),
  };
}

function likely(figure: Interval | null): number | null {
  return figure === null ? null : (middle(figure) ?? figure.low);
}
