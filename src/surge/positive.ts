/** The figure when it is above zero and finite; RangeError, in words for a programmer, for any other. */
export function positive(value: number, name: string): number {
  if (!(value > 0 && value < Infinity)) throw new RangeError(`${name} must be above zero and finite: ${value}`);
  return value;
}

/** The figure when it is zero or more and finite; RangeError for any other. */
export function notNegative(value: number, name: string): number {
  if (!(value >= 0 && value < Infinity)) throw new RangeError(`${name} must be zero or more and finite: ${value}`);
  return value;
}

/** The figure when it lies from least to most; RangeError for any other. */
export function within(value: number, least: number, most: number, name: string): number {
  if (!(value >= least && value <= most)) throw new RangeError(`${name} must be ${least} to ${most}: ${value}`);
  return value;
}
