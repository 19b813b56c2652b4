/**
 * What kind of figure a quantity is; each has one SI base unit in which it is kept. `temperature` is a difference or rise
 * in kelvin, `celsius` a temperature on the scale. `action` is the action integral of a surge, A²s, which is the same as
 * joule per ohm. `number` is a bare figure without a unit (a ratio, an SWR).
 */
export type Dimension =
  | 'length'
  | 'area'
  | 'resistivity'
  | 'resistance'
  | 'power'
  | 'frequency'
  | 'voltage'
  | 'current'
  | 'angle'
  | 'inductance'
  | 'time'
  | 'temperature'
  | 'celsius'
  | 'charge'
  | 'speed'
  | 'action'
  | 'energy'
  | 'mass'
  | 'current rise'
  | 'field'
  | 'resistance per length'
  | 'inductance per length'
  | 'number';

/** Suffix of a field's name → dimension. The longest suffix that fits wins. */
const suffixes: readonly (readonly [suffix: string, dimension: Dimension])[] = [
  ['Celsius', 'celsius'],
  ['APerS', 'current rise'],
  ['MPerS', 'speed'],
  ['OhmPerM', 'resistance per length'],
  ['HPerM', 'inductance per length'],
  ['VPerM', 'field'],
  ['OhmM', 'resistivity'],
  ['Ohm', 'resistance'],
  ['Deg', 'angle'],
  ['A2s', 'action'],
  ['Hz', 'frequency'],
  ['Kg', 'mass'],
  ['M2', 'area'],
  ['M', 'length'],
  ['W', 'power'],
  ['V', 'voltage'],
  ['A', 'current'],
  ['H', 'inductance'],
  ['S', 'time'],
  ['K', 'temperature'],
  ['C', 'charge'],
  ['J', 'energy'],
];

/**
 * The dimension that a field's name ends in: `lengthM` is a length, `resistivityOhmM` a resistivity; null for a name
 * without a unit (`count`, `separatePaths`). The unit must follow a small letter or a digit.
 */
export function dimensionOfKey(key: string): Dimension | null {
  const found = suffixes.find(
    ([suffix]) => key.endsWith(suffix) && /[\p{Ll}\d]$/u.test(key.slice(0, key.length - suffix.length)),
  );
  if (found === undefined) return null;
  const perSomethingElse = /Per\p{Lu}\p{L}*\d?$/u.test(key) && !found[0].includes('Per');
  return perSomethingElse ? null : found[1];
}
