import type { FindingChange } from '../compare/comparison.ts';
import type { Bounded, StudyFinding } from '../study/study.ts';
import type { Interval } from '../units/interval.ts';
import { compareWords as words } from '../words/compare-words.ts';
import { earthOhmText } from '../words/earth-ohm.ts';
import { type Speech, say, type Values } from '../words/say.ts';
import type { TerminalPage } from './page-blocks.ts';
import { severityColours, severityMarks } from './severity-marks.ts';
import { plain, type Terminal } from './terminal.ts';

/** What the page of a comparison is written with: the words and units of the second study. */
export interface ComparePage extends TerminalPage {
  /** false: the first study was written in the words of another region; its sentences stay off this page. */
  readonly sameWords: boolean;
}

export function comparePage(speech: Speech, terminal: Terminal, sameWords = true): ComparePage {
  return { terminal, sameWords, sentence: (template, values: Values = {}) => plain(say(template, values, speech)) };
}

/** Severity and title of a finding; by rule and place where its words are another region's. */
export function findingHead(page: ComparePage, change: FindingChange): string {
  const { sentence, terminal } = page;
  const told = (change.after ?? change.before)!;
  const isForeign = change.after === null && !page.sameWords;
  const title = isForeign ? byRule(page, told) : plain(told.title);
  const mark = terminal.paint(severityMarks[told.severity], severityColours[told.severity]);
  return `${mark}  ${told.outcome === 'cannot tell' ? sentence(words.doubt, { title }) : title}`;
}

function byRule({ sentence }: ComparePage, { rule, at }: StudyFinding): string {
  return at.length === 0 ? sentence(words.byRuleAlone, { rule }) : sentence(words.byRule, { rule, at });
}

/** A resistance to distant soil with its bounds; not known where the only one is that of the metal. */
export function ohmText(figure: Bounded | null): string {
  return earthOhmText(figure) ?? words.unknown;
}

/** What was written as null is an open end. */
export function rangeOf({ low, high }: { readonly low: number; readonly high: number | null }): Interval {
  return { low, high: high ?? Number.POSITIVE_INFINITY };
}
