import type { Interval } from '../../units/interval.ts';
import type { TypedSite } from '../reading/typed-site.ts';
import type { Reading, StatedOhm } from '../site.ts';
import type { Places } from './places.ts';

type TypedReading = TypedSite['readings'][number];

export function buildReading({ id, kind, values, source }: TypedReading, places: Places): Reading {
  return {
    id,
    kind: kind as Reading['kind'],
    date: values.date,
    weather: values.weather,
    instrument: values.instrument,
    by: values.by,
    note: values.note,
    position: places.position(values.at),
    on: values.electrode ?? values.on ?? values.joint,
    between: values.between,
    spacingM: known<Interval>(values.spacing),
    pins: (values.pins ?? []).map((row) => known<Interval>(row)),
    currentProbeM: values.current_probe,
    potentialProbeM: known<Interval>(values.potential_probe),
    drivenM: values.driven,
    dropsAtM: values.drops_at,
    direction: values.direction,
    resistance: known<StatedOhm>(values.resistance),
    reads: values.reads?.ohm ?? null,
    readsV: values.reads?.volt ?? null,
    currentA: values.current,
    frequencyHz: values.frequency,
    source,
  };
}

function known<T>(items: readonly (T | null)[] | null): readonly T[] {
  return (items ?? []).filter((item): item is T => item !== null);
}
