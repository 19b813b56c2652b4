import type { Site } from '../site/site.ts';
import { deviceVoltsOver, reachedAtS } from '../surge/device-reach.ts';
import { type Peak, peakOf } from '../surge/peak-of.ts';
import type { StrikePair } from './strike-pairs.ts';
import type { StrikeProtected } from './strike-protected.ts';
import { strikeBetween } from './strike-result.ts';

/** What the protectors of a site were taken to be in a strike, and what they let through. */
export interface StrikeGuarded {
  /** Of those that do not fire: tubes that would at the low end of what their kind does. */
  readonly mayFire: readonly string[];
  /** Core against shield at the far end of a line with what conducts, by line. */
  readonly corePeakV: ReadonlyMap<string, number>;
  readonly tubes: readonly string[];
  readonly varistors: readonly string[];
  readonly stubs: readonly string[];
  /** Of those that have one, a bleed resistor or choke: it carries nothing. */
  readonly bleeds: readonly string[];
  readonly outside: readonly { readonly line: string; readonly ohm: number }[];
}

export function strikeGuarded(site: Site, { live, open, course, fired }: StrikeProtected): StrikeGuarded {
  const has = new Set(fired.map(({ arrester }) => arrester));
  const rest = live.devices.filter(({ arrester }) => !has.has(arrester));
  const low = rest.filter(
    ({ device }) => device.kind === 'gap' && reachedAtS(open.run, { ...device, side: 'low' }) !== null,
  );
  const ofKind = (kind: 'gap' | 'varistor') =>
    idsOf(live.devices.filter(({ device }) => device.kind === kind).map(({ arrester }) => arrester));
  const there = site.arresters.filter(({ present }) => present === 'yes');
  return {
    mayFire: idsOf(low.map(({ arrester }) => arrester)),
    corePeakV: new Map(
      [...live.ends].map(([line, { core, case: own }]) => [
        line,
        Math.abs(peakOf(course.wave.timesS, deviceVoltsOver(course, { from: core, to: own })).value),
      ]),
    ),
    tubes: ofKind('gap'),
    varistors: ofKind('varistor'),
    stubs: idsOf(there.filter(({ kind }) => kind === 'quarter-wave stub').map(({ id }) => id)),
    bleeds: idsOf(there.filter(({ bleed }) => bleed === 'yes').map(({ id }) => id)),
    outside: [...live.outside].map(([line, { ohm }]) => ({ line, ohm })).sort((a, b) => (a.line < b.line ? -1 : 1)),
  };
}

function idsOf(ids: readonly string[]): readonly string[] {
  return [...new Set(ids)].sort();
}

/** A pair with what conducts; against the street: the conductor that comes in from there, which is no longer where it was. */
export function peakWithFired({ live, open, course }: StrikeProtected, pair: StrikePair): Peak | null {
  const street = pair.why === 'outside' && pair.by !== null ? live.outside.get(pair.by) : undefined;
  if (street === undefined) return strikeBetween(pair, live.network, course, open.places)?.peak ?? null;
  const node = open.places.nodeOf(pair.a);
  return node === null ? null : peakOf(course.wave.timesS, deviceVoltsOver(course, { from: node, to: street.node }));
}
