import type { ElectrodeFacts } from '../../facts/facts.ts';
import type { Answer } from '../../site/parts.ts';
import { type Interval, isAtLeast } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { printedShare, rodsPipesPlates } from './driven.ts';
import { type RodPair, rodPairs, rodsApart } from './rod-pairs.ts';

/** 6 ft. */
const leastM = 1.8288;

/** Closer than the clause asks, whatever is not known. */
export const isTooClose = (spacingM: Interval): boolean => isAtLeast(spacingM, leastM * printedShare) === 'no';

/** The doubt about spacings of which nothing is said, as the parent of another about the same rods: one tape settles both. */
export function underUnmeasured(pairs: readonly RodPair[]): { readonly under: string } {
  const open = pairs.filter(({ spacingM, wireM }) => spacingM === null && !(wireM !== null && isTooClose(wireM)));
  return { under: `rod-spacing-minimum:${[...new Set(open.flatMap((p) => p.at))].sort().join('+')}` };
}

export const rodSpacingMinimum = rule({
  id: 'rod-spacing-minimum',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2020', clause: '250.53(A)(3), (B)', provenance: 'second-hand' },
  limits: [{ key: 'spacingLengthM', value: leastM, sense: 'least' }],
  needs: ['sections', 'electrodes', 'site'],
  check({ sections, electrodes, site }) {
    const rods = rodsPipesPlates(electrodes);
    const pairs = rodPairs(rods, site.conductors);
    if (pairs.length === 0) return nothingThere({ sections }, 'electrodes');
    return pairs.map((pair) => {
      const verdict = ofPair(pair);
      return verdict.is === 'not met' ? asOne(pair.at, verdict, furtherOut(pair.at, rods, pairs)) : verdict;
    });
  },
});

function ofPair({ at, spacingM, wireM }: RodPair): Verdict {
  if (wireM !== null && isTooClose(wireM))
    return { is: 'not met', at, because: { key: 'short wire', values: { wireLengthM: wireM } } };
  if (spacingM === null)
    return { is: 'cannot tell', at, because: { key: 'spacing unknown' }, settle: { key: 'measure it' } };
  const measured = { key: 'spacingLengthM', value: spacingM, limit: leastM, sense: 'least' } as const;
  const far = isAtLeast(spacingM, leastM * printedShare);
  if (far === 'yes') return { is: 'met', at, because: { key: 'far enough' }, measured };
  if (far === 'no') return { is: 'not met', at, because: { key: 'near' }, measured };
  return { is: 'cannot tell', at, because: { key: 'spacing unknown' }, settle: { key: 'measure it' }, measured };
}

/**
 * The clause speaks of electrodes that are needed for it: two that stand close count as one, and with one further out of the
 * same system there are two that are far enough apart (from memory).
 */
function asOne(at: readonly string[], notMet: Verdict, further: Answer): Verdict {
  if (further === 'yes') return { is: 'met', at, because: { key: 'count as one' } };
  if (further === 'no') return notMet;
  return { is: 'cannot tell', at, because: { key: 'perhaps as one' }, settle: { key: 'measure others' } };
}

function furtherOut(at: readonly string[], rods: readonly ElectrodeFacts[], pairs: readonly RodPair[]): Answer {
  const near = rods.filter((e) => at.includes(e.id));
  const others = rods.filter((e) => !at.includes(e.id) && near.every((n) => n.group !== null && n.group === e.group));
  const answers = others.map((e): Answer => {
    const apart = near.map((n) => isFarFrom(n, e, pairs));
    if (apart.includes('no')) return 'no';
    return e.part.present === 'yes' && apart.every((a) => a === 'yes') ? 'yes' : 'unknown';
  });
  if (answers.includes('yes')) return 'yes';
  return answers.includes('unknown') ? 'unknown' : 'no';
}

function isFarFrom(a: ElectrodeFacts, b: ElectrodeFacts, pairs: readonly RodPair[]): Answer {
  const apartM = rodsApart(a.part, b.part);
  if (apartM !== null) return isAtLeast(apartM, leastM * printedShare);
  const pair = pairs.find((p) => p.at.includes(a.id) && p.at.includes(b.id));
  return pair !== undefined && pair.wireM !== null && isTooClose(pair.wireM) ? 'no' : 'unknown';
}
