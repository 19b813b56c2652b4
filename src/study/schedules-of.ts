import type { Facts } from '../facts/facts.ts';
import { partIndex } from '../facts/part-index.ts';
import type { Site, Stop } from '../site/site.ts';
import { byCodeUnit } from '../units/by-code-unit.ts';
import type { Interval } from '../units/interval.ts';
import type { Study } from './study.ts';

/** Conductors with what was worked out for each; by id. */
export function conductorRows(facts: Pick<Facts, 'conductors'>): Study['conductors'] {
  return facts.conductors.map((c) => ({
    id: c.id,
    role: c.role,
    from: c.part.from.text,
    to: c.part.to.text,
    wire: c.wire?.text ?? null,
    areaM2: c.areaM2,
    lengthM: c.lengthM,
    resistanceOhm: c.resistanceOhm,
    inductanceH: c.inductanceH,
    buried: c.inSoil,
    bendsDeg: c.bends.reduce((sum, b) => sum + (b.angleDeg?.high ?? 0), 0),
  }));
}

/** Electrodes that are there, with what each is made of; by id. */
export function electrodeRows(site: Site): NonNullable<Study['electrodes']> {
  return site.electrodes
    .filter((e) => e.present !== 'no')
    .map((e) => ({
      id: e.id,
      kind: e.kind,
      members: e.kind === 'rods' || e.kind === 'radial' ? e.members : 1,
      metal: (e.metal ?? e.wire?.metal)?.name ?? null,
      wire: e.wire?.text ?? null,
      lengthM: e.lengthM ?? routeLength(e),
    }))
    .sort((a, b) => byCodeUnit(a.id, b.id));
}

function routeLength({ route, closed }: Site['electrodes'][number]): Interval | null {
  const points = (route ?? []).map((p) => p.position);
  const closing = closed === 'yes' && points.length > 2 ? [points[0]!] : [];
  const all = [...points, ...closing];
  if (all.length < 2 || all.some((p) => p === null)) return null;
  const lengthM = all
    .slice(1)
    .reduce((sum, p, i) => sum + Math.hypot(...[0, 1, 2].map((k) => p![k]! - all[i]![k]!)), 0);
  return { low: lengthM, high: lengthM };
}

export function jointRows(facts: Pick<Facts, 'joints'>): Study['joints'] {
  return facts.joints.map(
    ({ id, kind, holds, on, resistanceOhm, listed, forBurial, buried, accessible, condition }) => ({
      id,
      kind,
      holds,
      on,
      resistanceOhm,
      listed,
      forBurial,
      buried,
      accessible,
      condition,
    }),
  );
}

export function arresterRows(facts: Pick<Facts, 'arresters'>): Study['arresters'] {
  return facts.arresters.map((a) => ({
    id: a.id,
    kind: a.part.kind,
    on: a.part.on?.text ?? null,
    lines: a.lines,
    where: a.where,
    leadM: a.part.leadM,
    listed: a.part.listed,
    sparkoverV: a.part.sparkoverV,
    bonded: a.bonded,
  }));
}

/** Lines with their stops as typed, conductors and wall crossings. */
export function lineRows({ site, bonding }: Pick<Facts, 'site' | 'bonding'>): Study['lines'] {
  const stops = new Map(site.lines.map((l) => [l.id, l.path.map(stopText)]));
  return bonding.lines.map((l) => ({
    id: l.id,
    kind: l.kind,
    stops: stops.get(l.id) ?? [],
    conductors: l.conductors,
    crossings: l.crossings.map(({ building, after, before, which, count, protector, bondedTo, certain }) => ({
      building,
      after,
      before,
      which,
      count,
      protector,
      bondedTo,
      certain,
    })),
  }));
}

function stopText(stop: Stop): string {
  if (stop.is === 'part') return stop.at.text;
  if (stop.is === 'bond') return `bond ${stop.at.text}`;
  if (stop.is === 'plug') return `plug ${stop.id}`;
  return stop.is === 'bend' ? `bend${stop.at === null ? '' : ` ${stop.at.text}`}` : stop.is;
}

/** Ties between parts, for the diagram: each pair of parts and kind once. */
export function tieRows({ site, bonding }: Pick<Facts, 'site' | 'bonding'>): Study['bonding']['ties'] {
  const index = partIndex(site);
  const rows = bonding.ties.filter((t) => t.a !== t.b && index.has(t.a) && index.has(t.b));
  return rows.map(({ a, b, kind, is, part }) => ({ a, b, kind, is, part }));
}
