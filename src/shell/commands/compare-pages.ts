import { speechOf } from '../../drawing/speech.ts';
import { comparePagesWords } from '../../words/compare-pages-words.ts';
import { compareWords } from '../../words/compare-words.ts';
import { say } from '../../words/say.ts';
import { type ExitCode, exitCode, Stop } from '../exit-code.ts';
import { print } from '../print.ts';
import { type ComparePagesAsk, checkComparePages, writeComparePages } from '../write-compare-pages.ts';
import { type CompareOptions, comparedOf, exitOf, levelOf } from './compare.ts';

export type ComparePagesOptions = CompareOptions & ComparePagesAsk;

/** The comparison as pages: the report of before and after, the statement, or both; the default strike is in. */
export async function comparePages(files: readonly string[], options: ComparePagesOptions): Promise<ExitCode> {
  checkComparePages(options);
  const level = levelOf(options);
  const states = options.states?.split(',') ?? null;
  if (states !== null && states.length !== 2) throw new Stop(exitCode.input, comparePagesWords.twoStates);
  const compared = comparedOf(files, { ...options, strike: true });
  const { comparison } = compared;
  const names = await writeComparePages({ ...compared, file: files.at(-1)! }, options);
  const values = { better: String(comparison.betterIn), worse: comparison.worseIn };
  const verdict = say(compareWords.verdict, values, speechOf(compared.after));
  const text = options.json
    ? `${JSON.stringify(comparison, null, 2)}\n`
    : `${verdict} ${say(comparePagesWords.open, { names }, speechOf(compared.after))}\n`;
  print(text, options.output);
  return exitOf(comparison, level);
}
