import type { MastFacts } from '../../facts/facts.ts';
import { type PartIndex, partIndex } from '../../facts/part-index.ts';
import type { Line, PointRef, Site } from '../../site/site.ts';
import type { Interval } from '../../units/interval.ts';
import { exact } from '../../units/interval.ts';

/** A shielded line that comes down a mast of metal, and where its shield is bonded to it; heights in metres, null unknown. */
export interface LineOnMast {
  readonly line: Line;
  readonly mast: MastFacts;
  readonly antennaM: Interval | null;
  readonly bondsM: readonly (Interval | null)[];
  /** Somebody typed that a stop is not known, or no path of the site says anything of a mast. */
  readonly isOpen: boolean;
}

/** A mast on a roof is as short as a line is at its foot; the others are no masts of metal that stand on the ground. */
export const noMast: readonly string[] = ['building face', 'tree', 'wood pole', 'roof mast', 'air terminal'];
const shielded: readonly string[] = ['coax', 'cable tv'];

/** Each line from an antenna on a metal mast, by the order of the lines. */
export function linesOnMasts(site: Site, masts: readonly MastFacts[]): readonly LineOnMast[] {
  const metal = masts.filter((m) => m.metal === 'yes' && !noMast.includes(m.part.kind));
  const mastOf = new Map(metal.map((m) => [m.id, m]));
  const parts = partIndex(site);
  const lines = site.lines.filter((l) => l.present !== 'no' && shielded.includes(l.kind));
  const found = lines.flatMap((line): readonly LineOnMast[] => {
    const stops = line.path.flatMap((s) => (s.is === 'part' && s.at.part !== null ? [s.at.part] : []));
    const antenna = stops.find((id) => parts.get(id)?.section === 'antennas');
    const on = antenna === undefined ? null : (parts.get(antenna)?.on ?? null);
    const mast = mastOf.get(on?.part ?? '');
    if (mast === undefined || on === null) return [];
    const isOpen = line.path.some((s) => s.is === 'unknown');
    return [{ line, mast, antennaM: heightOf(on, mast), bondsM: bondsOn(line, mast, parts), isOpen }];
  });
  // a site whose paths say nothing of any mast is one where nobody looked up
  const isAnySaid = found.some((f) => f.bondsM.length > 0 || f.line.path.some((s) => isOnMast(s, f.mast.id)));
  return found.map((f) => ({ ...f, isOpen: f.isOpen || !isAnySaid }));
}

function isOnMast(stop: Line['path'][number], mast: string): boolean {
  return (stop.is === 'bond' || stop.is === 'bend' || stop.is === 'part') && stop.at?.part === mast;
}

/** Bonds of the path at this mast, and bars and arresters that hang on it. */
function bondsOn(line: Line, mast: MastFacts, parts: PartIndex): readonly (Interval | null)[] {
  const mounted = (id: string | null) => {
    const part = id === null ? undefined : parts.get(id);
    return part?.section === 'bars' || part?.section === 'arresters' ? part : undefined;
  };
  return line.path.flatMap((s) => {
    if (s.is === 'bond' && s.at.part === mast.id) return [heightOf(s.at, mast)];
    const met = s.is === 'part' ? mounted(s.at.part) : undefined;
    const part = met?.present === 'no' ? undefined : met;
    const carrier = part?.on?.part === mast.id ? part.on : mounted(part?.on?.part ?? null)?.on;
    return carrier?.part === mast.id ? [heightOf(carrier, mast)] : [];
  });
}

function heightOf({ atM, mark }: PointRef, { part }: MastFacts): Interval | null {
  if (mark === 'base') return exact(0);
  return mark === 'top' ? part.heightM : atM;
}
