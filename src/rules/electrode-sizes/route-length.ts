import type { Electrode } from '../../site/site.ts';
import type { Interval } from '../../units/interval.ts';

/** Along the typed route; null where a point has no place. */
export function routeLength({ route, closed }: Electrode): Interval | null {
  const places = (route ?? []).map((p) => p.position);
  if (places.length < 2 || places.some((p) => p === null)) return null;
  const [first, last] = [places[0]!, places.at(-1)!];
  const isShut = closed === 'yes' && (first[0] !== last[0] || first[1] !== last[1]);
  const run = isShut ? [...places, first] : places;
  const pieces = run.slice(1).map((p, i) => Math.hypot(p![0] - run[i]![0], p![1] - run[i]![1]));
  const sum = pieces.reduce((a, b) => a + b, 0);
  return { low: sum, high: sum };
}
