/** A range of figures, low <= high. One shape for the whole house: see units. */
export { type Interval, middle } from '../units/interval.ts';
