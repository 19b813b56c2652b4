import type { StudyStrikeForce } from '../study/study-strike-meaning.ts';
import { formatQuantity } from '../units/format.ts';
import type { Interval } from '../units/interval.ts';
import { pageWords } from '../words/page.ts';
import { strikeBesideWords } from '../words/strike-beside-words.ts';
import { figure, type PageContext, partName, sayIn } from './page-context.ts';

const words = strikeBesideWords.force;

/** Told from here on, newton; the same limit as the study's own. */
export const leastForceN = 500;
const newtonPerPound = 4.448;

/** `510 N (110 lbf)`. */
export function newtonIn(page: PageContext, newton: number): string {
  const digits = (value: number) => formatQuantity(value, 'number', 'si', { digits: 2 }) ?? '';
  return sayIn(page, words.newton, { newton: digits(newton), pound: digits(newton / newtonPerPound) });
}

/** What a force does, in a sentence. */
export function forceSentence(page: PageContext, one: StudyStrikeForce, newton: number): string {
  const force = newtonIn(page, newton);
  const part = partName(page, one.part);
  if (one.beside === null) return sayIn(page, words.bend, { part, turnsDeg: one.turnsDeg ?? 0, force });
  const apart = figure(page, one.apartM, 'length');
  return sayIn(page, one.attracts ? words.parallelPull : words.parallelPush, {
    part,
    beside: partName(page, one.beside),
    apart: one.apartTaken ? sayIn(page, words.taken, { apart }) : apart,
    force,
  });
}

/** `1.9 times`; a range where the SWR is one. */
export function timesIn(page: PageContext, times: Interval | null): string {
  const says = times === null ? null : formatQuantity(times, 'number', 'si', { digits: 2 });
  return says === null ? pageWords.page.unknown : sayIn(page, strikeBesideWords.margin.times, { times: says });
}
