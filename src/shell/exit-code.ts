/** Exit codes are kinds, not counts. */
export const exitCode = {
  fine: 0,
  /** Findings at or above the level asked for. */
  findings: 1,
  /** The input cannot be used. */
  input: 2,
  /** Our fault. */
  fault: 3,
  /** An output that was asked for could not be made. */
  output: 4,
} as const;

export type ExitCode = (typeof exitCode)[keyof typeof exitCode];

/** Ends a command with a sentence for the person and a kind for the script. */
export class Stop extends Error {
  readonly code: ExitCode;

  constructor(code: ExitCode, sentence: string) {
    super(sentence);
    this.code = code;
  }
}
