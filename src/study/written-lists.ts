import { meetingsOf } from '../facts/joint-meetings.ts';
import type { ChangeValue } from '../site/change.ts';
import type { Conductor, JointUse, Line, Site, State, StatedOhm, Stop } from '../site/site.ts';
import { byCodeUnit } from '../units/by-code-unit.ts';
import type { Interval } from '../units/interval.ts';

export type { ChangeValue } from '../site/change.ts';

/** Lists of the file as a change writes them again, and every name that is taken: what a new part may not be called. */
export interface StudyWritten {
  /** Ids of parts, buildings, places, states, readings, plugs and guys. */
  readonly ids: readonly string[];
  /** Sections that nobody looked at: a first part in one of them would say that somebody did. */
  readonly missing: readonly string[];
  /** Sections that hold only some of what is there. */
  readonly incomplete: readonly string[];
  readonly lines: readonly {
    readonly id: string;
    readonly path: readonly ChangeValue[];
    /** One for each piece between stops, bends left out; [] where none was typed. */
    readonly lengths: readonly string[];
  }[];
  readonly conductors: readonly {
    readonly id: string;
    /** As typed from the first end over its splices to the other; null: one piece with both, or nobody said. */
    readonly joints: readonly ChangeValue[] | null;
    /** Ids of the joints in the same order; null where a joint is none. */
    readonly jointIds: readonly (string | null)[];
    readonly bends: readonly WrittenBend[];
  }[];
  readonly states: readonly { readonly id: string; readonly open: readonly ChangeValue[] }[];
}

/** A bend as it is typed; without a radius nobody gave one. */
export interface WrittenBend {
  readonly angle: string;
  readonly radius?: string;
}

type Units = Site['header']['units'];

/** Figures come back in the units of the site, to a thousandth; what was typed as known in a way of its own is taken as told. */
export function writtenLists(site: Site): StudyWritten {
  const { units } = site.header;
  return {
    ids: idsOf(site),
    missing: Object.entries(site.sections)
      .filter(([, is]) => is === 'missing')
      .map(([section]) => section)
      .sort(byCodeUnit),
    incomplete: site.header.incomplete,
    lines: site.lines.map((l) => ({
      id: l.id,
      path: pathOf(l, units),
      lengths: l.lengthsM.map((m) => span(m, units)),
    })),
    conductors: site.conductors.map((c) => ({
      id: c.id,
      joints: jointsOf(c),
      jointIds: jointIdsOf(c),
      bends: c.bends.map((b) => bendOf(b, units)),
    })),
    states: site.states.map((s) => ({ id: s.id, open: s.open.map((o) => openingOf(o, units)) })),
  };
}

function idsOf(site: Site): readonly string[] {
  const { electrodes, supports, antennas, bars, arresters, equipment, lines, conductors, joints, metalwork } = site;
  const parts = [electrodes, supports, antennas, bars, arresters, equipment, lines, conductors, joints, metalwork];
  const others = [site.buildings, site.places, site.states, site.readings, supports.flatMap((s) => s.guys)];
  const plugs = lines.flatMap((l) => l.path.flatMap((s) => (s.is === 'plug' ? [s.id] : [])));
  return [...new Set([...[...parts, ...others].flat().map((p) => p.id), ...plugs])].sort(byCodeUnit);
}

function pathOf(line: Line, units: Units): readonly ChangeValue[] {
  return line.path.map((stop) => stopValue(stop, units));
}

function stopValue(stop: Stop, units: Units): ChangeValue {
  if (stop.is === 'part') return stop.at.text;
  if (stop.is === 'bond') return { bond: stop.at.text };
  if (stop.is === 'plug') return { plug: stop.id, ...said({ where: stop.where ?? null }) };
  if (stop.is !== 'bend') return stop.is;
  const bend = stop.at?.text ?? stop.position?.map((m) => figure(m, units)) ?? 'unknown';
  return { bend, ...said({ where: stop.at === null ? stop.where : null }) };
}

function jointsOf(c: Conductor): readonly ChangeValue[] | null {
  // a list of two says that there is no splice: who said nothing did not say that
  if (c.onePiece || c.typed.joints === undefined) return null;
  return [c.fromJoint, ...c.splices, c.toJoint].map(jointValue);
}

function jointIdsOf(c: Conductor): readonly (string | null)[] {
  const { from, splices, to } = meetingsOf(c);
  return [from, ...splices, to].map((m) => m.joint);
}

function bendOf({ angleDeg, radiusM }: Conductor['bends'][number], units: Units): WrittenBend {
  const angle = angleDeg === null ? 'unknown' : range({ low: tidy(angleDeg.low), high: tidy(angleDeg.high) }, 'deg');
  return radiusM === null ? { angle } : { angle, radius: span(radiusM, units) };
}

/** A joint of a conductor as typed: the id of a clamp, a kind alone, or all that was said of it. */
function jointValue(use: JointUse): ChangeValue {
  if (use.named !== null) return use.named;
  const more = said({
    metal: use.metal?.name ?? null,
    listed: use.listed,
    for_burial: use.forBurial,
    accessible: use.accessible,
    resistance: use.resistance === null ? null : ohms(use.resistance),
    condition: use.condition,
    shim: use.shim?.name ?? null,
    bolts: use.bolts ?? null,
    for_wires: use.forWires ?? null,
    cleaned: use.cleaned ?? null,
    contact: use.contactM2 == null ? null : areaText(use.contactM2),
    sealed: use.sealed ?? null,
    for_test: use.forTest ?? null,
  });
  const kind = use.kind ?? 'unknown';
  return Object.keys(more).length === 0 ? kind : { kind, ...more };
}

function openingOf({ at, side, gapM, end }: State['open'][number], units: Units): ChangeValue {
  return { at, ...said({ side, gap: gapM === null ? null : span(gapM, units), end }) };
}

/** Fields of which something was said. */
function said(fields: Readonly<Record<string, string | number | null>>): Readonly<Record<string, string | number>> {
  const known = Object.entries(fields).filter(
    (f): f is [string, string | number] => f[1] !== null && f[1] !== 'unknown',
  );
  return Object.fromEntries(known);
}

/** Less than a foot in inches, as a tape is read. */
function span(m: Interval | null, units: Units): string {
  if (m === null) return 'unknown';
  if (units === 'ft' && m.high < 0.3048) return range({ low: tidy(m.low / 0.0254), high: tidy(m.high / 0.0254) }, 'in');
  return range({ low: figure(m.low, units), high: figure(m.high, units) }, units);
}

function ohms({ ohm, overRange }: StatedOhm): string {
  return overRange ? 'over range' : range(ohm, 'ohm');
}

function areaText(m2: Interval): string {
  return range({ low: tidy(m2.low * 1e6), high: tidy(m2.high * 1e6) }, 'mm2');
}

function range({ low, high }: Interval, unit: string): string {
  if (low === high) return `${low} ${unit}`;
  if (high === Infinity) return `over ${low} ${unit}`;
  return low === 0 ? `under ${high} ${unit}` : `${low} to ${high} ${unit}`;
}

function figure(m: number, units: Units): number {
  return tidy(units === 'ft' ? m / 0.3048 : m);
}

/** A thousandth of a unit: what a tape shows, and free of the digits that a conversion leaves behind. */
function tidy(value: number): number {
  return Math.round(value * 1000) / 1000;
}
