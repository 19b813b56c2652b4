import { realpathSync } from 'node:fs';
import { candidatesOf } from '../../rework/candidates/candidates-of.ts';
import { costOf } from '../../rework/cost/cost-of.ts';
import { type QuickLook, type TryChanges, triedOf } from '../../rework/plan/outlook.ts';
import { planWorks } from '../../rework/plan/plan-works.ts';
import type { Progress } from '../../rework/plan/trials.ts';
import type { WorksPlan } from '../../rework/work.ts';
import type { Beside } from '../../rules/run-rules.ts';
import { siteFileLimit } from '../../site/read-site-bytes.ts';
import { type KnownSite, newEarthLook, newTries, strikeRules } from '../../study/try-change.ts';
import { say } from '../../words/say.ts';
import { sayProblem } from '../../words/say-problem.ts';
import { worksCommandWords as words } from '../../words/works-command-words.ts';
import { besideSite } from '../beside-site.ts';
import { type ExitCode, exitCode, Stop } from '../exit-code.ts';
import { readBytes, writeWhole } from '../files.ts';
import { follow } from '../follow.ts';
import { siteOfBytes } from '../load-site.ts';
import { print } from '../print.ts';
import { sayWorks } from '../say-works.ts';
import { studyOfSite } from '../study-of-file.ts';
import { plain, terminalOf } from '../terminal.ts';
import { version } from '../version.ts';
import { worksJson } from '../works-json.ts';

export interface WorksOptions {
  readonly state?: string;
  readonly budget?: string;
  readonly hours?: string;
  readonly json?: boolean;
  /** The improved site file. */
  readonly output?: string;
  /** Folder for the page of works and the contractor's sheet. */
  readonly sheet?: string;
  readonly pdf?: boolean;
  readonly browser?: string;
}

/** Works in order, each with its recomputed effect; the improved site file where one is asked for. */
export async function works(file: string, options: WorksOptions): Promise<ExitCode> {
  const plan = await planOfFile(file, options);
  const toStdout = options.output === '-';
  const written = writeImproved(file, options.output, plan);
  const terminal = terminalOf(process.stdout, process.env.NO_COLOR);
  if (!toStdout) print(options.json ? worksJson(plan) : sayWorks(plan, { file, ...options, written }, terminal), '-');
  const sheets = await writePages(plan, file, options);
  return (options.output !== undefined && !written) || !sheets ? exitCode.output : exitCode.fine;
}

/** Whether the pages that were asked for are written; their names go where they are not in the way of what is printed. */
async function writePages(plan: WorksPlan, file: string, { sheet, ...options }: WorksOptions): Promise<boolean> {
  if (sheet === undefined) return true;
  const inTheWay = options.json === true || options.output === '-';
  const tell = (text: string) => (inTheWay ? process.stderr : process.stdout).write(`${plain(text)}\n`);
  if (plan.stopped) {
    tell(fill(words.sheetsNotWritten, { sheet }));
    return false;
  }
  const { writeSheets } = await import('../write-sheets.ts');
  tell(fill(words.sheets, { list: (await writeSheets(plan, file, { sheet, ...options })).join(', ') }));
  return true;
}

/** The plan of a site file within the limits that were asked for. */
export async function planOfFile(file: string, options: WorksOptions): Promise<WorksPlan> {
  const limits = { budget: numberOf('--budget', options.budget), hours: numberOf('--hours', options.hours) };
  refuseSameFile(file, options.output);
  const bytes = readBytes(file, siteFileLimit);
  const { site, checksum } = siteOfBytes(bytes, file, options.state ?? null);
  const text = new TextDecoder('utf-8').decode(bytes);
  const beside = besideSite(site, file);
  const before = studyOfSite(site, checksum, options, beside);
  if (limits.budget !== null && (before.prices?.lines ?? []).length === 0) {
    throw new Stop(exitCode.input, fill(words.noPrices, { file }));
  }
  const { tryChanges, quick } = triesOf(file, { text, site }, options, beside);
  const trying = planWorks({ before, text, candidatesOf, costOf, tryChanges, quick, limits });
  return follow(trying, { say: sayProgress, firstMs: 1000, everyMs: process.stderr.isTTY ? 1000 : 10_000 });
}

interface AllTries {
  readonly tryChanges: TryChanges;
  readonly quick: QuickLook;
}

function triesOf(file: string, known: KnownSite, options: WorksOptions, beside: Beside): AllTries {
  const fileName = known.site.file;
  const asked = { state: options.state ?? null, version, checksum: '', date: null, beside };
  const tries = newTries(fileName, asked, known);
  const looking =
    (once: { readonly withoutStrike: boolean }): TryChanges =>
    (text, changes) => {
      const tried = tries(text, changes, once);
      if ('problem' in tried) return { problem: sayProblem(tried.problem, file) };
      return triedOf(tried.text, tried.run.study);
    };
  return {
    tryChanges: looking({ withoutStrike: false }),
    quick: {
      tryChanges: looking({ withoutStrike: true }),
      leavesOut: strikeRules,
      earthOhm: newEarthLook(fileName, options.state ?? null, known),
    },
  };
}

/** Whether a file was asked for and written, whole. A byte order mark of the owner's file stays. */
function writeImproved(file: string, output: string | undefined, { text, stopped }: WorksPlan): boolean {
  if (output === undefined || stopped) return false;
  const [first, second, third] = readBytes(file, siteFileLimit);
  const mark = first === 0xef && second === 0xbb && third === 0xbf ? '\ufeff' : '';
  if (output === '-') process.stdout.write(mark + text);
  else writeWhole(output, mark + text);
  return true;
}

function refuseSameFile(file: string, output: string | undefined): void {
  if (output === undefined || output === '-') return;
  if (pathOf(output) === pathOf(file)) throw new Stop(exitCode.output, fill(words.sameFile, { output }));
}

function pathOf(path: string): string | null {
  try {
    return realpathSync(path);
  } catch {
    return null;
  }
}

function numberOf(option: string, typed: string | undefined): number | null {
  if (typed === undefined) return null;
  const value = /^\d+(?:\.\d+)?$/.test(typed.trim()) ? Number(typed) : Number.NaN;
  if (Number.isFinite(value)) return value;
  throw new Stop(exitCode.input, fill(words.notNumber, { option, typed }));
}

function fill(template: string, values: Readonly<Record<string, string>>): string {
  return plain(say(template, values, { terms: 'us', unitsFirst: 'us' }));
}

/** One short line; on a terminal it takes the place of the one before. */
function sayProgress({ doing, done, of }: Progress): void {
  const line = fill(words.progress[doing], { done: String(done + 1), of: of === null ? '' : String(of) });
  const said = `${line} (${words.progress.stop})`;
  process.stderr.write(process.stderr.isTTY ? `\r\u001b[K${said}` : `${said}\n`);
}
