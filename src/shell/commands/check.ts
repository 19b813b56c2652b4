import type { ExitCode } from '../exit-code.ts';
import { exitCodeOf, readExitLevel } from '../exit-level.ts';
import { print } from '../print.ts';
import { sayCheck } from '../say-check.ts';
import { type StudyAsk, studyOfFile } from '../study-of-file.ts';
import { terminalOf } from '../terminal.ts';

export interface CheckOptions extends StudyAsk {
  readonly json?: boolean;
  readonly exit1From: string;
  readonly output?: string;
}

/** Findings in order, or the study as JSON. */
export function check(file: string, options: CheckOptions): ExitCode {
  const level = readExitLevel(options.exit1From);
  // the study as JSON is the one that a report keeps, with what only a page shows
  const study = studyOfFile(file, { ...options, detail: options.json === true });
  const terminal = terminalOf(process.stdout, process.env.NO_COLOR);
  print(options.json ? `${JSON.stringify(study, null, 2)}\n` : sayCheck(study, file, terminal), options.output);
  return exitCodeOf(study, level);
}
