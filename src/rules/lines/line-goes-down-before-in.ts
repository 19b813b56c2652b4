import type { MastFacts } from '../../facts/facts.ts';
import { partIndex } from '../../facts/part-index.ts';
import type { Line, PointRef, Site } from '../../site/site.ts';
import { type Interval, isAtMost } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { indoorMasts } from '../masts/indoor-masts.ts';
import { noMast } from '../masts/shield-points.ts';
import { rule, type Verdict } from '../rule.ts';

/** Highest point at which a line should leave a tower, metres above grade. Ours, after MIL-HDBK-419A (bond at the turn). */
const highestExitM = 1;

export const lineGoesDownBeforeIn = rule({
  id: 'line-goes-down-before-in',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: {
    document: 'MIL-HDBK-419A',
    edition: 'vol. II',
    clause: 'bond where the line turns from vertical to horizontal',
    provenance: 'read',
  },
  limits: [{ key: 'exitHeightLengthM', value: highestExitM, sense: 'most' }],
  needs: ['sections', 'masts', 'site'],
  check({ sections, masts, site }) {
    const indoors = indoorMasts(site);
    const isTower = (m: MastFacts) => m.metal !== 'no' && !noMast.includes(m.part.kind) && !indoors.has(m.id);
    const towers = new Set(masts.filter(isTower).map((m) => m.id));
    const verdicts = site.lines
      .filter((l) => l.kind !== 'mains' && l.present !== 'no')
      .flatMap((l) => ofLine(l, site, towers));
    return verdicts.length > 0 ? verdicts : nothingThere({ sections }, 'lines');
  },
});

function ofLine(line: Line, site: Site, towers: ReadonlySet<string>): readonly Verdict[] {
  const exit = exitHeight(line, site, towers);
  if (exit === 'no tower') return [];
  const at = [line.id];
  if (exit === null) return [{ is: 'cannot tell', at, because: { key: 'exit unknown' }, settle: { key: 'look' } }];
  const measured = { key: 'exitHeightLengthM', value: exit, limit: highestExitM, sense: 'most' } as const;
  const low = isAtMost(exit, highestExitM);
  if (low === 'yes') return [{ is: 'met', at, because: { key: 'low' }, measured }];
  if (low === 'no') return [{ is: 'not met', at, because: { key: 'high' }, measured }];
  return [{ is: 'cannot tell', at, because: { key: 'exit unknown' }, settle: { key: 'look' }, measured }];
}

/**
 * Height of the last stop at a metal support that the line leaves for somewhere else; null: no stop says it. What the line
 * begins at (an antenna, a machine) is not where it leaves; a bar, arrester or box is where it hangs.
 */
function exitHeight(line: Line, site: Site, towers: ReadonlySet<string>): Interval | null | 'no tower' {
  let last: Interval | null | 'no tower' = 'no tower';
  let left = false;
  line.path.forEach((stop, i) => {
    const point = stop.is === 'part' || stop.is === 'bond' || stop.is === 'bend' ? stop.at : null;
    const at = pointAtTower(point, site, towers);
    if (at !== null) last = i === 0 && stop.is === 'part' ? null : heightOf(at);
    else if (last !== 'no tower') left = true;
  });
  return left ? last : 'no tower';
}

const heightOf = (point: PointRef): Interval | null =>
  point.mark === 'base' ? { low: 0, high: 0 } : (point.atM ?? null);

/** The point of a tower that a stop is at: its own, or that of the part that hangs there. */
function pointAtTower(point: PointRef | null, site: Site, towers: ReadonlySet<string>): PointRef | null {
  const { get } = partIndex(site);
  const seen = new Set<string>();
  for (let at = point; at?.part != null && !seen.has(at.part); ) {
    if (towers.has(at.part)) return at;
    seen.add(at.part);
    at = get(at.part)?.on ?? null;
  }
  return null;
}
