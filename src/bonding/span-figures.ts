import { resistancePerMetre } from '../materials/conductor-resistance.ts';
import { straightInductance } from '../materials/straight-inductance.ts';
import type { Conductor, Position, RoutePoint } from '../site/site.ts';
import { type Interval, mul, scale, sum } from '../units/interval.ts';
import type { Tie } from './tie.ts';

/** Figures of the spans of a conductor, in order; `parts` is in how many spans it lies, `cut` how many of its pieces the owner measured. */
export interface SpanFigures {
  readonly lengthM: Interval | null;
  readonly resistanceOhm: Interval | null;
  readonly inductanceH: Interval | null;
}

/** Length of a whole conductor: typed, else the sum of its pieces, else along its route; null: nobody knows. */
export function conductorLength(c: Conductor): Interval | null {
  if (c.lengthM !== null) return c.lengthM;
  if (c.lengthsM.length > 0) return sum(c.lengthsM);
  return c.route === null ? null : routeLength(c.route);
}

/**
 * Length, resistance and inductance of the straight run of each of so many spans. Where only splices part them, nothing branches off
 * and equal shares give the right sums. Stated figures are shared by length. `branches`: something lands in between.
 */
export function spanFigures(c: Conductor, spans: number, branches: boolean): readonly SpanFigures[] {
  const whole = conductorLength(c);
  const lengths = spanLengths(c, spans, branches, whole);
  const perMetre = c.wire === null ? null : resistancePerMetre(c.wire);
  return lengths.map((lengthM) => {
    const share = shareOf(lengthM, whole, spans, branches);
    const stated = c.resistance === null ? null : c.resistance.ohm;
    const computed = perMetre === null || lengthM === null ? null : mul(perMetre, lengthM);
    return {
      lengthM,
      resistanceOhm: stated === null ? computed : shared(stated, share),
      inductanceH:
        c.inductanceH === null ? runInductance(c, lengthM, whole, spans, branches) : shared(c.inductanceH, share),
    };
  });
}

/**
 * The inductance of a run is that of the whole run between the points at which something branches off, shared by length:
 * splicing a wire changes nothing.
 */
function runInductance(
  c: Conductor,
  lengthM: Interval | null,
  whole: Interval | null,
  spans: number,
  branches: boolean,
): Interval | null {
  if (branches || spans === 1) return straightInductance(c.wire, lengthM);
  const run = straightInductance(c.wire, whole);
  return run === null ? null : scale(run, 1 / spans);
}

function spanLengths(
  c: Conductor,
  spans: number,
  branches: boolean,
  whole: Interval | null,
): readonly (Interval | null)[] {
  if (c.lengthsM.length === spans) return c.lengthsM;
  const each = spans === 1 ? whole : whole === null || branches ? null : scale(whole, 1 / spans);
  return Array.from({ length: spans }, () => each);
}

/** null: nobody knows which share of the whole this span is. */
function shareOf(length: Interval | null, whole: Interval | null, spans: number, branches: boolean): number | null {
  if (spans === 1) return 1;
  if (!branches) return 1 / spans;
  if (length === null || whole === null || whole.high === 0 || !Number.isFinite(whole.high)) return null;
  return (length.low + length.high) / (whole.low + whole.high);
}

function shared(figure: Interval | null, share: number | null): Interval | null {
  return figure === null || share === null ? null : scale(figure, share);
}

function routeLength(route: readonly RoutePoint[]): Interval | null {
  const points = route.map((p) => p.position);
  if (points.length < 2 || points.some((p) => p === null)) return null;
  let length = 0;
  for (let i = 1; i < points.length; i++) length += distance(points[i - 1]!, points[i]!);
  return { low: length, high: length };
}

function distance(a: Position, b: Position): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/** Would somebody notice that the conductor is gone. */
export function conductorNoticed(c: Conductor): Tie['noticed'] {
  if (c.buriedM === 'yes' || (typeof c.buriedM === 'object' && c.buriedM !== null && c.buriedM.high > 0))
    return 'buried';
  if (c.runs === 'in a wall' || c.runs === 'under a floor' || c.runs === 'in conduit') return 'in a wall';
  return c.runs === 'open' || c.buriedM === 'no' ? 'visible' : 'unknown';
}
