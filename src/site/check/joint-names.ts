import type { TypedStop } from '../format/stops.ts';
import type { TypedPart, TypedSite } from '../reading/typed-site.ts';
import type { PointRef } from '../site.ts';

/** Id → what may follow it after a colon: ends and splices of a conductor, stops of a line, what carries a mounted part. */
export function jointNamesOf(site: TypedSite): ReadonlyMap<string, readonly string[]> {
  const names = new Map<string, readonly string[]>();
  for (const conductor of site.parts.conductors) names.set(conductor.id, ofConductor(conductor));
  for (const line of site.parts.lines) names.set(line.id, (line.values.path ?? []).flatMap(stopNames));
  const mounted = [...site.parts.bars, ...site.parts.arresters, ...site.parts.equipment];
  for (const { id, values } of mounted) if (values.on?.part != null) names.set(id, [values.on.part]);
  return names;
}

function ofConductor({ values }: TypedPart<'conductors'>): readonly string[] {
  const meets = [values.from, ...(values.passes ?? []).map((p) => p.at), values.to];
  const parts = meets.flatMap((at) => (at?.part == null ? [] : [at.part, at.text]));
  const splices = Math.max(0, (values.joints?.uses.length ?? 0) - 2);
  return ['from', 'to', ...new Set(parts), ...Array.from({ length: splices }, (_, i) => `splice${i + 1}`)];
}

/** What a stop of a line is called in `line1:...`. */
export function stopNames(stop: TypedStop): readonly string[] {
  if (stop.is === 'plug') return [stop.id];
  if (stop.is === 'bend') return [];
  if (stop.is === 'street' || stop.is === 'unknown') return [stop.is];
  return pointNames(stop.at);
}

function pointNames({ part, text }: PointRef): readonly string[] {
  if (part === null) return [];
  return text === part ? [part] : [part, text];
}
