import type { Progress, Trying } from '../rework/plan/trials.ts';

export interface Following {
  readonly say: (progress: Progress) => void;
  /** Before the first line, and between two, in milliseconds. */
  readonly everyMs: number;
}

/**
 * Runs something that tries works to its end; what it does is said from a second on. The first Ctrl-C stops it, and it
 * returns what it has; a second one ends the program.
 */
export async function follow<T>(trying: Trying<T>, { say, everyMs }: Following): Promise<T> {
  let stop = false;
  const onStop = () => {
    stop = true;
  };
  process.once('SIGINT', onStop);
  try {
    let saidAt = performance.now();
    for (;;) {
      const next = trying.next(stop);
      if (next.done === true) return next.value;
      if (performance.now() - saidAt > everyMs) {
        say(next.value);
        saidAt = performance.now();
      }
      // a signal is only heard between two turns of the loop
      await new Promise((resume) => setImmediate(resume));
    }
  } finally {
    process.removeListener('SIGINT', onStop);
  }
}
