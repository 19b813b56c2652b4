import type { Study } from '../study/study.ts';
import { type ExitCode, exitCode, Stop } from './exit-code.ts';

export const exitLevels = ['hazard', 'defect', 'advice', 'cannot-tell'] as const;
export type ExitLevel = (typeof exitLevels)[number];

export function readExitLevel(text: string): ExitLevel {
  const level = exitLevels.find((l) => l === text);
  if (level !== undefined) return level;
  throw new Stop(exitCode.input, `--exit-1-from ${text}: no such level. From worst: ${exitLevels.join(', ')}.`);
}

/** 1 when anything stands at or above the level in any set that is asked; findings agreed to stand do not count. */
export function exitCodeOf({ verdict }: Study, level: ExitLevel | null): ExitCode {
  if (level === null) return exitCode.fine;
  const counted = [verdict, ...(verdict.bySet ?? [])];
  const counts = counted.map((v) => [v.hazards, v.defects, v.advices, v.cannotTell]);
  const asked = counts.flatMap((all) => all.slice(0, exitLevels.indexOf(level) + 1));
  return asked.some((n) => n > 0) ? exitCode.findings : exitCode.fine;
}
