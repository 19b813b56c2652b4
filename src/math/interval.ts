/** Everything between two numbers; `low` = `high` is a number known exactly, `high` may be Infinity. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}
