import { nameWords } from './problems/name-words.ts';
import type { ProblemWords } from './problems/problem-words.ts';
import { shapeWords } from './problems/shape-words.ts';
import { slipWords } from './problems/slip-words.ts';
import { standardWords } from './problems/standard-words.ts';
import { syntaxWords } from './problems/syntax-words.ts';
import { valueWords } from './problems/value-words.ts';

/** Key of a problem → its words. `{name}` is filled with a value of the problem. */
export const problemWords: Readonly<Record<string, ProblemWords>> = {
  ...slipWords,
  ...syntaxWords,
  ...nameWords,
  ...shapeWords,
  ...valueWords,
  ...standardWords,
};
