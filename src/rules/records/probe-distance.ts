import type { Facts } from '../../facts/facts.ts';
import type { Answer, Electrode, Reading } from '../../site/site.ts';
import { exact, type Interval, max, scale } from '../../units/interval.ts';
import { courseOf, type Plan } from '../electrode-places/plan-distance.ts';
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
  const unknown = {
    is: 'cannot tell',
    at,
    because: { key: 'probes unknown' },
    settle: { key: 'find the sheet' },
  } as const;
  if (current === null || r.potentialProbeM.length === 0 || largestM === null) return unknown;
  const askedM = scale(largestM, timesLargest);
  const measured = { key: 'distanceLengthM', value: current, sense: 'least' } as const;
  if (current.high < askedM.low * printedShare)
    return { is: 'not met', at, because: { key: 'too near' }, measured: { ...measured, limit: askedM.low } };
  const stands = r.potentialProbeM.map((p) => standsRight(p, current));
  if (stands.every((s) => s === 'no')) return { is: 'not met', at, because: { key: 'potential probe' } };
  if (current.low < askedM.high * printedShare || !stands.includes('yes')) return unknown;
  return { is: 'met', at, because: { key: 'far enough' }, measured: { ...measured, limit: askedM.high } };
}

function standsRight(p: Interval, current: Interval): Answer {
  const ratio = { low: p.low / current.high, high: p.high / current.low };
  const [least, most] = [share - within - 1e-9, share + within + 1e-9];
  if (ratio.high < least || ratio.low > most) return 'no';
  return ratio.low >= least && ratio.high <= most ? 'yes' : 'unknown';
}

/** Largest dimension of the electrode that was read alone, else of everything that its system has in the soil. */
function largestOf(part: string, { site, bonding }: Pick<Facts, 'site' | 'bonding'>): Interval | null {
  const own = site.electrodes.find((e) => e.id === part);
  if (own !== undefined) return sizeOf(own);
  const group = bonding.groups.find((g) => g.parts.includes(part));
  const all = site.electrodes.filter((e) => group?.electrodes.includes(e.id) && e.present !== 'no');
  const sizes = all.map(sizeOf);
  const points = all.map((e) => courseOf(e));
  if (all.length === 0 || sizes.includes(null)) return null;
  if (all.length > 1 && points.some((c) => c.length === 0)) return null;
  return [...sizes, exact(acrossM(points.flat()))].reduce((most, s) => max(most!, s!));
}

/** Of a wire that closes on itself, whose places are not typed: between its length over pi (a circle) and half of it. */
function sizeOf(e: Electrode): Interval | null {
  const course = courseOf(e);
  if (course.length > 1) return exact(acrossM(course));
  const length = e.lengthM ?? routeLength(e);
  if (length === null) return null;
  if (e.closed === 'yes') return { low: length.low / Math.PI, high: length.high / 2 };
  if (e.kind !== 'rods') return length;
  return e.spacingM === null || e.members === null ? null : max(length, scale(e.spacingM, e.members - 1));
}

/** Between the two points of these that are farthest from each other, metres. */
function acrossM(points: readonly Plan[]): number {
  return Math.max(0, ...points.flatMap((p) => points.map((q) => Math.hypot(p[0] - q[0], p[1] - q[1]))));
}
