import type { Sides, Standing } from './comparison.ts';

/** How a thing stands that is there on one side or both. */
export function standingOf(sides: Sides<unknown>, isSame: boolean): Standing {
  if (sides.before === null) return 'new';
  if (sides.after === null) return 'gone';
  return isSame ? 'same' : 'changed';
}
