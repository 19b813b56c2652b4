import type { Progress, Trying } from '../rework/plan/trials.ts';

export interface Following {
  readonly say: (progress: Progress) => void;
  /** Before the first line, in milliseconds. */
  readonly firstMs: number;
  /** Between two lines. */
  readonly everyMs: number;
}

/**
 * Runs something that tries works to its end; what it does is said while it runs. The first Ctrl-C stops it, and it
 * returns what it has; a second one ends the program.
 */
export async function follow<T>(trying: Trying<T>, { say, firstMs, everyMs }: Following): Promise<T> {
  let stop = false;
  const onStop = () => {
    stop = true;
  };
  process.once('SIGINT', onStop);
  try {
    let nextAt = performance.now() + firstMs;
    for (;;) {
      const next = trying.next(stop);
      if (next.done === true) return next.value;
      if (performance.now() > nextAt) {
        say(next.value);
        nextAt = performance.now() + everyMs;
      }
      // a signal is only heard between two turns of the loop
      await new Promise((resume) => setImmediate(resume));
    }
  } finally {
    process.removeListener('SIGINT', onStop);
  }
}
