import type { StudyFinding } from '../../study/study.ts';
import type { Interval } from '../../units/interval.ts';
import type { ComparedFindings, FindingHow } from '../comparison.ts';
import { isSameNumber } from '../same-figure.ts';

export type FindingList = Exclude<keyof ComparedFindings, 'agreedOtherwise'>;

export interface WhatBecame {
  readonly list: FindingList;
  readonly how: FindingHow | null;
}

const severities = ['advice', 'defect', 'hazard'] as const;
const unchanged: WhatBecame = { list: 'unchanged', how: null };

/**
 * What became of a condition that was open on both sides. A failure that was found out is worse: whoever relies on the
 * comparison must hear of it. A failure that cannot be told any more is unsettled and not better: nothing was repaired by
 * knowing less.
 */
export function changeOf(before: StudyFinding, after: StudyFinding): WhatBecame {
  if (before.outcome === 'cannot tell' && after.outcome === 'not met') return { list: 'worse', how: 'found not met' };
  if (before.outcome === 'not met' && after.outcome === 'cannot tell') return { list: 'unsettled', how: null };
  const weight = severities.indexOf(after.severity) - severities.indexOf(before.severity);
  if (weight !== 0) return { list: weight > 0 ? 'worse' : 'better', how: 'severity' };
  const farther = after.outcome === 'not met' ? fartherFromLimit(before.measured, after.measured) : 0;
  return farther === 0 ? unchanged : { list: farther > 0 ? 'worse' : 'better', how: 'figure' };
}

/** 1: the figure lies farther beyond its limit than it did; -1: nearer; 0: the same, or nobody can say. */
function fartherFromLimit(before: StudyFinding['measured'], after: StudyFinding['measured']): -1 | 0 | 1 {
  if (before === null || after === null || before.unit !== after.unit) return 0;
  const [was, is] = [beyond(before), beyond(after)];
  if (was === null || is === null) return 0;
  const ends = [sign(was.low, is.low), sign(was.high, is.high)];
  if (ends.includes(1) && ends.includes(-1)) return 0;
  return (ends.find((s) => s !== 0) ?? 0) as -1 | 0 | 1;
}

/** Figures of a strike come out of time steps: a hundredth of a per cent is no change. */
const sameShare = 1e-4;

const sign = (was: number, is: number): number => (isSameNumber(was, is, sameShare) ? 0 : Math.sign(is - was));

/** How far beyond its limit, as a share of the limit: a failing figure lies above what is at most allowed, or below what is asked. */
function beyond({ value, limit }: NonNullable<StudyFinding['measured']>): Interval | null {
  const range = typeof value === 'number' ? { low: value, high: value } : value;
  // the open end of a range is null in a study that was stored
  const [low, high] = [range.low ?? 0, range.high ?? Number.POSITIVE_INFINITY];
  const scale = limit === 0 ? 1 : Math.abs(limit);
  const excess = { low: (low - limit) / scale, high: (high - limit) / scale };
  if (excess.low >= 0) return excess;
  return excess.high <= 0 ? { low: -excess.high, high: -excess.low } : null;
}
