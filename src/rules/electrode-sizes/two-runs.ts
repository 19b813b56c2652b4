import type { ElectrodeFacts } from '../../facts/facts.ts';
import type { Answer, Electrode } from '../../site/site.ts';
import { isAtLeast } from '../../units/interval.ts';
import { best, both, reaches } from './answers.ts';
import { routeLength } from './route-length.ts';

/** IEC 60728-11, second-hand: each of two runs, metres. */
export const runLimitM = 2.5;
/** Section of a run: copper; steel, in older texts and since. */
const copperM2 = 50e-6;
const oldSteelM2 = 80e-6;
const steelM2 = 90e-6;
/** By more than this two runs spread. */
const spreadDeg = 60;
/** Ends of two runs within this distance are one place, metres. Ours. */
const touchM = 0.5;

/**
 * Whether level runs in the soil make the electrode of an antenna. A ring is two runs and more, spread all round; of single
 * runs the plan tells the angle between them.
 */
export function twoRuns(all: readonly ElectrodeFacts[]): Answer {
  const wires = all.filter((e) => e.part.kind === 'buried wire' || e.part.kind === 'radial');
  const isStar = (e: ElectrodeFacts) => e.part.kind === 'radial';
  const rings = wires
    .filter((e) => !isStar(e) && e.part.closed !== 'no')
    .map((e) => both(both(e.part.closed, longRun(e, 2 * runLimitM)), thickRun(e.part)));
  const runs = wires.filter((e) => (isStar(e) || e.part.closed === 'no') && longRun(e, runLimitM) !== 'no');
  const thick = runs.filter((e) => thickRun(e.part) !== 'no');
  const count = thick.reduce((n, { part }) => n + (part.kind === 'radial' ? (part.members ?? 2) : 1), 0);
  const pairs = thick.flatMap((x, i) => thick.slice(i + 1).map((y) => ofPair(x, y)));
  const isStarIn = thick.some((e) => isStar(e) && e.part.members !== 1);
  if (pairs.includes('yes')) return best([...rings, 'yes']);
  const isOpen = count >= 2 && (isStarIn || pairs.includes('unknown'));
  return best([...rings, isOpen ? 'unknown' : 'no']);
}

const longRun = ({ part }: ElectrodeFacts, limit: number) => reaches(part.lengthM ?? routeLength(part), limit);

function ofPair(a: ElectrodeFacts, b: ElectrodeFacts): Answer {
  const sizes = [a, b].map((e) => both(longRun(e, runLimitM), thickRun(e.part)));
  return both(both(sizes[0]!, sizes[1]!), spread(a.part, b.part));
}

/** 50 mm² of copper, 90 mm² of steel (80 in older texts); a section or metal that nobody knows is not known to do. */
function thickRun({ wire }: Electrode): Answer {
  const metal = wire?.metal?.name ?? null;
  if (wire?.areaM2 == null || metal === null) return 'unknown';
  const share = 1 - 2e-3;
  if (/copper$/.test(metal)) return isAtLeast(wire.areaM2, copperM2 * share);
  if (!/steel/.test(metal)) return 'unknown';
  if (isAtLeast(wire.areaM2, oldSteelM2 * share) === 'no') return 'no';
  // between the figures of two editions nobody can tell
  return isAtLeast(wire.areaM2, steelM2 * share) === 'yes' ? 'yes' : 'unknown';
}

/** Whether two straight runs that begin at one place go apart by more than 60 degrees. */
function spread(a: Electrode, b: Electrode): Answer {
  const [p, q] = [endsOf(a), endsOf(b)];
  if (p === null || q === null) return 'unknown';
  const angles = [p, [p[1], p[0]] as const].flatMap(([from, to]) =>
    [q, [q[1], q[0]] as const].flatMap(([start, end]) =>
      Math.hypot(from[0] - start[0], from[1] - start[1]) <= touchM ? [angleDeg(from, to, start, end)] : [],
    ),
  );
  if (angles.length === 0) return 'unknown';
  return angles.some((deg) => deg > spreadDeg) ? 'yes' : 'no';
}

type End = readonly [number, number];

function endsOf({ route }: Electrode): readonly [End, End] | null {
  const places = (route ?? []).map((p) => p.position);
  const [from, to] = [places[0] ?? null, places.at(-1) ?? null];
  if (places.length < 2 || from === null || to === null) return null;
  return [
    [from[0], from[1]],
    [to[0], to[1]],
  ];
}

function angleDeg(from: End, to: End, start: End, end: End): number {
  const [u, v] = [
    [to[0] - from[0], to[1] - from[1]],
    [end[0] - start[0], end[1] - start[1]],
  ] as const;
  const cos = (u[0] * v[0] + u[1] * v[1]) / (Math.hypot(...u) * Math.hypot(...v));
  return (Math.acos(Math.min(1, Math.max(-1, cos))) * 180) / Math.PI;
}
