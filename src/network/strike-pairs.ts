import type { Line, Part, Site } from '../site/site.ts';
import { byCodeUnit } from '../units/by-code-unit.ts';

/** Two things between which a strike's volts are asked for, and why. */
export interface StrikePair {
  readonly a: string;
  /** A part, or `remoteEarth`. */
  readonly b: string;
  readonly why: 'line' | 'reach' | 'service' | 'base' | 'outside' | 'asked';
  /** The line that joins them or comes in from outside. */
  readonly by: string | null;
}

/** What a line that comes in from outside brings with it until its protector fires. */
export const remoteEarth = 'remote earth';

/**
 * Everything that a person or a cable joins: boxes and bars along a line from one to the next (for a protector, what carries
 * it); a support's foot and the first of them that a line from it comes to; what is within reach of each other; every box and
 * the service; what a line from the street comes to, against remote earth. Each pair once, by the first reason in that order;
 * in order of the reasons, then of the ids.
 */
export function strikePairs(site: Site, partOf: (id: string) => Part | undefined): readonly StrikePair[] {
  const isThere = (id: string | null): id is string => id !== null && partOf(id)?.present === 'yes';
  const boxes = site.equipment.filter((e) => isThere(e.id));
  const service = site.header.service;
  // a pair that a signal line joins too is that line's: its ports stand less than a mains cord
  const mainsLast = [...site.lines].sort((a, b) => Number(a.kind === 'mains') - Number(b.kind === 'mains'));
  const all: StrikePair[] = [
    ...mainsLast.filter((l) => isThere(l.id)).flatMap((line) => alongLine(line, partOf)),
    ...[...site.supports, ...site.bars, ...site.arresters, ...site.equipment, ...site.metalwork].flatMap((part) =>
      part.withinReach.map((other): StrikePair => ({ a: part.id, b: other, why: 'reach', by: null })),
    ),
    ...boxes.map(({ id }): StrikePair => ({ a: id, b: service, why: 'service', by: null })),
    ...site.lines.filter((l) => isThere(l.id)).flatMap((line) => fromOutside(line, partOf)),
  ];
  const isPair = ({ a, b }: StrikePair) => a !== b && isThere(a) && (b === remoteEarth || isThere(b));
  const byEnds = new Map<string, StrikePair>();
  for (const pair of all.filter(isPair)) {
    const key = [pair.a, pair.b].sort().join(' ');
    if (!byEnds.has(key)) byEnds.set(key, pair);
  }
  const rank = ({ why }: StrikePair) => reasons.indexOf(why);
  return [...byEnds.values()].sort((x, y) => rank(x) - rank(y) || byCodeUnit(x.a, y.a) || byCodeUnit(x.b, y.b));
}

const reasons: readonly StrikePair['why'][] = ['asked', 'line', 'base', 'reach', 'service', 'outside'];

function stopsOf(line: Line, partOf: (id: string) => Part | undefined): readonly Part[] {
  return line.path.flatMap((stop) => {
    const id = stop.is === 'part' || stop.is === 'bond' ? stop.at.part : null;
    const part = id === null ? undefined : partOf(id);
    return part === undefined || part.present === 'no' ? [] : [part];
  });
}

/** Sections whose members have a case or a bar that somebody touches or plugs into. */
const touched: ReadonlySet<string> = new Set(['equipment', 'bars']);

function alongLine(line: Line, partOf: (id: string) => Part | undefined): readonly StrikePair[] {
  const stops = stopsOf(line, partOf);
  const met = stops.flatMap((part) => (touched.has(part.section) ? [part] : (panelOf(part, partOf) ?? [])));
  const boxes = met.filter(({ id }, i) => id !== met[i - 1]?.id);
  const between = boxes.slice(1).map(({ id }, i): StrikePair => ({ a: boxes[i]!.id, b: id, why: 'line', by: line.id }));
  const support = stops.find(({ section }) => section === 'supports') ?? carrierOf(stops[0], partOf);
  const [first] = boxes;
  if (support === undefined || first === undefined) return between;
  return [...between, { a: support.id, b: first.id, why: 'base', by: line.id }];
}

/** The bar or box that carries a protector: a line that lands on the one comes to the other. */
function panelOf(part: Part, partOf: (id: string) => Part | undefined): Part | null {
  if (part.section !== 'arresters' || part.on?.part == null) return null;
  const carrier = partOf(part.on.part);
  return carrier !== undefined && carrier.present !== 'no' && touched.has(carrier.section) ? carrier : null;
}

function carrierOf(part: Part | undefined, partOf: (id: string) => Part | undefined): Part | undefined {
  const carrier = part?.on?.part == null ? undefined : partOf(part.on.part);
  return carrier?.section === 'supports' ? carrier : undefined;
}

function fromOutside(line: Line, partOf: (id: string) => Part | undefined): readonly StrikePair[] {
  if (!line.path.some((stop) => stop.is === 'street')) return [];
  const stops = line.path[0]?.is === 'street' ? stopsOf(line, partOf) : [...stopsOf(line, partOf)].reverse();
  return stops.slice(0, 1).map(({ id }) => ({ a: id, b: remoteEarth, why: 'outside', by: line.id }));
}
