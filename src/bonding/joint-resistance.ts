import { readJoint } from '../materials/joints.ts';
import type { JointUse, Site } from '../site/site.ts';
import type { Interval } from '../units/interval.ts';
import type { SiteIndex } from './site-index.ts';

/** What a reading says of a joint, by its id: readings of kind `joint`. */
export function jointReadings(site: Site): ReadonlyMap<string, Interval> {
  const readings = site.readings.filter((r) => r.kind === 'joint' && r.on !== null && r.reads !== null);
  return new Map(readings.map((r) => [r.on!.text, r.reads!.ohm]));
}

/** Resistance of a joint, ohm: what was read, else what is stated, else the range of its kind; null: nobody knows the kind. */
export function jointResistance(
  { parts }: SiteIndex,
  readings: ReadonlyMap<string, Interval>,
  joint: string,
  use: JointUse,
): Interval | null {
  const named = parts.get(joint);
  const own = named?.section === 'joints' ? named : null;
  const read = readings.get(joint);
  if (read !== undefined) return read;
  const stated = own?.resistance ?? use.resistance;
  if (stated !== null) return stated.ohm;
  return resistanceOfKind(own?.kind ?? use.kind);
}

/** Range of a kind of joint; null for a kind that is not known. */
export function resistanceOfKind(kind: string | null): Interval | null {
  return kind === null ? null : (readJoint(kind)?.resistanceOhm ?? null);
}
