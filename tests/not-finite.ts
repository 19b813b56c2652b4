/** Where a value holds a number that is none: NaN or an endless one, as paths. JSON would write them as null. */
export function notFinite(value: unknown, path = ''): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path}: ${value}`];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, own]) => notFinite(own, `${path}.${key}`));
}
