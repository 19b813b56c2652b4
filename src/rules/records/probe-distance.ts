import type { Facts } from '../../facts/facts.ts';
import type { Electrode, Reading, Site } from '../../site/site.ts';
import type { Interval } from '../../units/interval.ts';
import { courseOf } from '../electrode-places/plan-distance.ts';
import { routeLength } from '../electrode-sizes/route-length.ts';
import { printedShare } from '../electrodes/driven.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Times the largest dimension of what was read. */
const timesLargest = 5;
/** Share of the way to the current probe, and how near to it a probe has to stand. */
const share = 0.62;
const within = 0.05;

export const probeDistance = rule({
  id: 'probe-distance',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'IEEE 81', edition: null, clause: 'fall of potential', provenance: 'memory' },
  needs: ['sections', 'site', 'bonding'],
  check(facts) {
    const read = facts.site.readings.filter((r) => r.kind === 'fall of potential' && r.on?.part != null);
    return read.length === 0 ? nothingThere(facts, 'readings') : read.map((r) => ofReading(r, facts));
  },
});

function ofReading(r: Reading, facts: Pick<Facts, 'site' | 'bonding'>): Verdict {
  const at = [r.id];
  const current = r.currentProbeM;
  const largestM = largestOf(r.on!.part!, facts);
  if (current === null || r.potentialProbeM.length === 0 || largestM === null)
    return { is: 'cannot tell', at, because: { key: 'probes unknown' }, settle: { key: 'find the sheet' } };
  const limit = timesLargest * largestM;
  const measured = { key: 'distanceLengthM', value: current, limit, sense: 'least' } as const;
  if (current.high < limit * printedShare) return { is: 'not met', at, because: { key: 'too near' }, measured };
  if (!r.potentialProbeM.some((p) => standsRight(p, current)))
    return { is: 'not met', at, because: { key: 'potential probe' } };
  return { is: 'met', at, because: { key: 'far enough' }, measured };
}

const standsRight = (p: Interval, current: Interval) =>
  Math.abs((p.low + p.high) / (current.low + current.high) - share) <= within;

/** Length of the electrode that was read alone, else across everything that its system has in the soil. */
function largestOf(part: string, { site, bonding }: Pick<Facts, 'site' | 'bonding'>): number | null {
  const own = site.electrodes.find((e) => e.id === part);
  if (own !== undefined) return sizeOf(own);
  const group = bonding.groups.find((g) => g.parts.includes(part));
  return group === undefined ? null : acrossM(site, group.electrodes);
}

function sizeOf(e: Electrode): number | null {
  const length = e.lengthM ?? routeLength(e);
  if (e.kind !== 'rods') return length?.high ?? null;
  const run = e.spacingM === null || e.members === null ? null : e.spacingM.high * (e.members - 1);
  return length === null || run === null ? null : Math.max(length.high, run);
}

function acrossM(site: Site, electrodes: readonly string[]): number | null {
  const courses = site.electrodes.filter((e) => electrodes.includes(e.id)).map((e) => courseOf(e));
  if (courses.some((c) => c.length === 0)) return null;
  const points = courses.flat();
  return Math.max(...points.flatMap((p) => points.map((q) => Math.hypot(p[0] - q[0], p[1] - q[1]))));
}
