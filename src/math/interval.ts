/** A range of figures, low <= high. One shape for the whole house: see units. */
export type { Interval } from '../units/interval.ts';
