import { basename } from 'node:path';
import { compareStudies } from '../../compare/compare-studies.ts';
import type { Comparison } from '../../compare/comparison.ts';
import { tabulateStates } from '../../compare/tabulate-states.ts';
import { speechOf } from '../../drawing/speech.ts';
import type { Study } from '../../study/study.ts';
import { compareWords as words } from '../../words/compare-words.ts';
import { say } from '../../words/say.ts';
import { type ExitCode, exitCode, Stop } from '../exit-code.ts';
import { type ExitLevel, exitLevels, readExitLevel } from '../exit-level.ts';
import { print } from '../print.ts';
import { sayCompare } from '../say-compare.ts';
import { sayStates } from '../say-states.ts';
import { statesOfFile, typedState } from '../states-of-file.ts';
import { studiesFrom } from '../study-from.ts';
import { terminalOf } from '../terminal.ts';

export interface CompareOptions {
  readonly state?: string;
  /** `storm,winter`, or `all`. */
  readonly states?: string;
  readonly date?: string;
  /** Also the figures of the default strike. */
  readonly strike?: boolean;
  readonly json?: boolean;
  readonly output?: string;
  /** Least level at which worse is 1; without it, worse in anything. */
  readonly exit1From?: string;
}

/** Two studies, and what became of the one in the other. */
export interface Compared {
  readonly before: Study;
  readonly after: Study;
  readonly comparison: Comparison;
}

/** What became better, worse, new, gone between two files or two states; several states in one table. 1: worse in a finding. */
export function compare(files: readonly string[], options: CompareOptions): ExitCode {
  const states = askedStates(files, options);
  const level = levelOf(options);
  if (states !== null && states.length !== 2) return compareStates(files[0]!, states, options);
  const compared = comparedOf(files, options);
  const { after, comparison } = compared;
  const terminal = terminalOf(process.stdout, process.env.NO_COLOR);
  const next = say(words.next, { command: 'check', file: files.at(-1)! }, speechOf(after));
  const text = options.json
    ? `${JSON.stringify(comparison, null, 2)}\n`
    : sayCompare(comparison, speechOf(after), terminal, next);
  print(text, options.output);
  return exitOf(comparison, level);
}

/** Least level at which worse is 1, as typed; without it the last one. */
export function levelOf({ exit1From }: CompareOptions): ExitLevel {
  return exit1From === undefined ? 'cannot-tell' : readExitLevel(exit1From);
}

/** 1 when a finding at or above the level is new or worse; those agreed to stand or folded under another do not count. */
export function exitOf({ findings }: Comparison, level: ExitLevel): ExitCode {
  const worse = [...findings.new, ...findings.worse].filter((c) => c.counts);
  const levels = worse.map(({ after }) => (after!.outcome === 'not met' ? after!.severity : 'cannot-tell'));
  const isWorse = levels.some((l) => exitLevels.indexOf(l) <= exitLevels.indexOf(level));
  return isWorse ? exitCode.findings : exitCode.fine;
}

/** Two files, a stored study standing in for either, or two states of one. `options.strike` and `json`: with the default strike. */
export function comparedOf(files: readonly string[], options: CompareOptions): Compared {
  const states = askedStates(files, options);
  const detail = options.json === true || options.strike === true;
  const ask = { ...(options.date === undefined ? {} : { date: options.date }), detail };
  if (states !== null) {
    const [before, after] = statesOfFile(files[0]!, states, ask) as [Study, Study];
    return { before, after, comparison: compareStudies(before, after) };
  }
  const state = options.state === undefined ? {} : { state: options.state };
  const [before, after] = studiesFrom(files, () => ({ ...ask, ...state }));
  const stored = files.filter((_, i) => [before, after][i]!.isStored);
  return { before: before!.study, after: after!.study, comparison: comparing(before!.study, after!.study, stored) };
}

/** A stored study may have been edited by hand into something that no evenground wrote. */
function comparing(before: Study, after: Study, stored: readonly string[]): Comparison {
  try {
    return compareStudies(before, after);
  } catch (error) {
    if (stored.length === 0 || !(error instanceof TypeError || error instanceof RangeError)) throw error;
    const sentence = say(
      words.input.notWhole,
      { files: stored.map((file) => basename(file)), why: error.message },
      plainSpeech,
    );
    throw new Stop(exitCode.input, sentence);
  }
}

const plainSpeech = { terms: 'us', unitsFirst: 'us' } as const;

/** States that were asked for; null: two files. Whatever does not fit is said at once. */
function askedStates(files: readonly string[], { state, states }: CompareOptions): readonly string[] | null {
  const { input } = words;
  const sentence = (template: string, values = {}) => say(template, values, plainSpeech);
  if (states === undefined) {
    if (files.length !== 2) throw new Stop(exitCode.input, sentence(input.oneFile));
    return null;
  }
  const given = states.split(',').map((id) => id.trim());
  const wrong = [
    ...(files.length === 1 ? [] : [sentence(input.twoFilesAndStates, { count: files.length })]),
    ...(state === undefined ? [] : [input.statesAndState]),
    ...(given.includes('') || (given.length < 2 && given[0] !== 'all')
      ? [sentence(input.statesCount, { given: states === '' ? input.nothing : states })]
      : []),
  ];
  if (wrong.length > 0) throw new Stop(exitCode.input, wrong.join('\n'));
  return given[0] === 'all' && given.length === 1 ? [] : given.map(typedState);
}

/** All of a file's states, or those that were named, in one table. */
function compareStates(file: string, states: readonly string[], options: CompareOptions): ExitCode {
  const studies = statesOfFile(file, states, options.date === undefined ? {} : { date: options.date });
  const table = tabulateStates(studies);
  const terminal = terminalOf(process.stdout, process.env.NO_COLOR);
  const page = () => sayStates(table, file, speechOf(studies[0]!), terminal);
  print(options.json ? `${JSON.stringify(table, null, 2)}\n` : page(), options.output);
  return exitCode.fine;
}
