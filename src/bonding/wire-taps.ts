import type { Conductor, PointRef, Site } from '../site/site.ts';
import { type Interval, isExact } from '../units/interval.ts';

/** Conductor → the points of it at which other wires land, as typed: those of which nobody knows the place first, then from its start. */
export type WireTaps = ReadonlyMap<string, readonly PointRef[]>;

export function wireTaps(site: Site): WireTaps {
  const wires = new Set(site.conductors.map(({ id }) => id));
  const taps = new Map<string, Map<string, PointRef>>();
  for (const c of site.conductors) {
    for (const point of [c.from, c.to, ...c.passes.map(({ at }) => at)]) {
      if (point.part === null || !wires.has(point.part) || point.part === c.id) continue;
      const held = taps.get(point.part) ?? new Map<string, PointRef>();
      taps.set(point.part, held.set(point.text, point));
    }
  }
  const place = ({ atM }: PointRef) => atM?.low ?? -1;
  const sorted = (points: Map<string, PointRef>) =>
    [...points.values()].sort((a, b) => place(a) - place(b) || (a.text < b.text ? -1 : 1));
  return new Map([...taps].map(([id, points]) => [id, sorted(points)] as const));
}

/** The node of a point at which a wire lands on another. */
export function tapNode({ part, text }: PointRef): string {
  return `${part}/tap ${text}`;
}

/** Lengths of the spans that taps at known places make of a wire that nothing else parts; null where they are not known. */
export function tappedLengths(c: Conductor, taps: readonly PointRef[]): readonly Interval[] | null {
  const whole = c.lengthM;
  if (taps.length === 0 || c.passes.length + c.splices.length > 0 || whole === null || !isExact(whole)) return null;
  const places = [0, ...taps.map(({ atM }) => (atM !== null && isExact(atM) ? atM.low : Number.NaN)), whole.low];
  const spans = places.slice(1).map((end, i) => end - places[i]!);
  return spans.every((length) => length >= 0) ? spans.map((length) => ({ low: length, high: length })) : null;
}
