import type { Arrester, Line } from '../site/site.ts';
import { bondOfArrester } from './arrester-bond.ts';
import type { LineConductor, LineFacts } from './bonding.ts';
import { crossingsOf } from './crossings.ts';
import { type LineMakeUp, lineMakeUp } from './line-make-up.ts';
import type { SiteIndex } from './site-index.ts';

/** What each line's conductors meet: where bonded, protected, drained; and the walls that they cross. By id. */
export function lineFacts(index: SiteIndex): readonly LineFacts[] {
  const lines = index.site.lines.filter((line) => line.present !== 'no');
  return [...lines].sort((a, b) => (a.id < b.id ? -1 : 1)).map((line) => factsOf(index, line));
}

function factsOf(index: SiteIndex, line: Line): LineFacts {
  const make = lineMakeUp(index, line);
  const conductors = [
    ...(make.shield ? [shieldOf(index, line)] : []),
    ...(make.cores === 'no' ? [] : [coreOf(index, line, make)]),
    ...(make.protective === 'no' ? [] : [protectiveOf(index, line)]),
  ];
  return { id: line.id, kind: line.kind, conductors, crossings: crossingsOf(index, line, conductors) };
}

const none = { count: 1, bondedAt: [], protectedBy: [], drainedBy: [], unprotected: 0 } as const;

/** A shield is bonded where its owner says so, at bars, and through arresters at what they are on. */
function shieldOf(index: SiteIndex, line: Line): LineConductor {
  const bondedAt = line.path.flatMap((stop) => {
    if (stop.is === 'bond') return [stop.at.text];
    if (stop.is !== 'part' || stop.at.part === null) return [];
    const part = index.parts.get(stop.at.part);
    if (part === undefined || part.present === 'no') return [];
    if (part.section === 'bars') return [part.id];
    return part.section === 'arresters' ? bondOfArrester(part) : [];
  });
  return { ...none, which: 'shield', bondedAt: [...new Set(bondedAt)] };
}

function protectiveOf(index: SiteIndex, line: Line): LineConductor {
  const bondedAt = partsAt(index, line).filter((part) => part.section === 'bars');
  return { ...none, which: 'protective', bondedAt: bondedAt.map((part) => part.id) };
}

function coreOf(index: SiteIndex, line: Line, make: LineMakeUp): LineConductor {
  const arresters = partsAt(index, line).filter((part) => part.section === 'arresters');
  const draining = partsAt(index, line).filter((part) => {
    if (part.section === 'antennas') return part.dcPath === 'yes';
    return part.section === 'arresters' && (part.kind === 'quarter-wave stub' || part.bleed === 'yes');
  });
  return {
    which: 'core',
    count: make.count,
    bondedAt: [],
    protectedBy: arresters.map((a) => a.id),
    drainedBy: draining.map((part) => part.id),
    unprotected: unprotectedWires(arresters, make),
  };
}

/** Parts at which the line stops, in order, absent ones left out. */
export function partsAt({ parts }: SiteIndex, line: Line) {
  const ids = line.path.flatMap((stop) => (stop.is === 'part' && stop.at.part !== null ? [stop.at.part] : []));
  return [...new Set(ids)].flatMap((id) => parts.get(id) ?? []).filter((part) => part.present !== 'no');
}

/**
 * Wires that no protector covers. Several protectors on a line cover the same wires unless one covers all. null where nobody says
 * how many one covers, or how many wires there are.
 */
function unprotectedWires(arresters: readonly Arrester[], { count, counted }: LineMakeUp): number | null {
  if (arresters.length === 0) return count;
  const sure = arresters.filter((a) => a.present === 'yes');
  const single = counted && count === 1;
  if (sure.some((a) => a.covers === 'all' || (a.covers === null && single))) return 0;
  if (!counted || sure.length < arresters.length || arresters.some((a) => a.covers === null)) return null;
  return Math.max(0, count - Math.max(...sure.map((a) => a.covers as number)));
}
