import type { State } from '../site/site.ts';

/** A place at which a state takes a line off: a plug, or a stop of a line on one side or both. */
export type Opening = State['open'][number];
