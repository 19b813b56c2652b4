import type { StudyFinding } from '../../study/study.ts';
import type { Names } from '../matching/names.ts';

/** A finding at some of its places: what is matched with one of the other side. */
export interface FindingUnit {
  readonly finding: StudyFinding;
  /** Its own ids, and the same as after calls them, in order. */
  readonly at: readonly string[];
  readonly key: readonly string[];
  /** Places that no study knows by name, such as a reading: any of the other side may be it. */
  readonly isNameless: boolean;
}

/** What is open: not met, or it cannot be told. */
export function openFindings(findings: readonly StudyFinding[]): readonly StudyFinding[] {
  return findings.filter((f) => f.outcome !== 'met');
}

/**
 * Units of one side. Places that cannot be told for one reason stand in one finding; each is a unit of its own, so that they
 * may be gathered otherwise. What is not met is about all its places at once.
 */
export function unitsOf(
  findings: readonly StudyFinding[],
  side: 'before' | 'after',
  names: Names,
): readonly FindingUnit[] {
  const isKnown = side === 'before' ? names.isBefore : names.isAfter;
  const unit = (finding: StudyFinding, at: readonly string[]): FindingUnit => ({
    finding,
    at,
    key: (side === 'before' ? at.map(names.toAfter) : [...at]).sort(),
    isNameless: at.length > 0 && at.every((place) => !isKnown(place.split(/[:@.]/)[0]!)),
  });
  return findings.flatMap((f) => placesOf(f).map((at) => unit(f, at)));
}

/** Doubts that were gathered are taken place by place, so that another gathering is no difference. */
export function placesOf({ outcome, measured, at }: StudyFinding): readonly (readonly string[])[] {
  const isGathered = outcome === 'cannot tell' && measured === null && at.length > 1;
  return isGathered ? at.map((place) => [place]) : [at];
}
