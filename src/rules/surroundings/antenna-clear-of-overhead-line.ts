import type { Site, Support } from '../../site/site.ts';
import { add, exact, type Interval, subtract } from '../../units/interval.ts';
import { apart } from '../apart.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { type OverheadLine, overheadLines } from './overhead-lines.ts';

/** How much farther than its height a mast stands from a power line, metres (10 ft as printed: 3 m; examination question T0B06). */
const marginM = 3;
/** Do not fall over by themselves, or carry the power line. */
const standing: readonly string[] = ['building face', 'tree', 'water tank'];

export const antennaClearOfOverheadLine = rule({
  id: 'antenna-clear-of-overhead-line',
  family: 'code',
  severity: 'hazard',
  codeSets: ['any'],
  source: {
    document: 'NFPA 70',
    edition: null,
    clause: '810.13, 810.16(B); the margin is of an examination question (T0B06)',
    provenance: 'second-hand',
  },
  limits: [{ key: 'marginLengthM', value: marginM, sense: 'least' }],
  needs: ['sections', 'site'],
  check({ sections, site }) {
    const masts = site.supports.filter(
      (s) => s.present !== 'no' && !standing.includes(s.kind) && s.owner?.toLowerCase() !== 'utility',
    );
    const lines = overheadLines(site);
    if (masts.length === 0) return nothingThere({ sections }, 'supports');
    if (lines.length === 0) return nothingThere({ sections }, 'metalwork');
    const between = apart(site);
    return masts.flatMap((m) => lines.map((line) => ofPair(m, heightOf(m, site), line, between(m.id, line.id))));
  },
});

/** Antennas that stand upright on what carries them, so that their length is height. */
const upright = /\b(?:vertical|j-pole|ground plane|whip)\b/i;

/** Top of the mast, or of what stands on it where its height or length was typed, metres; null: unknown. */
function heightOf(mast: Support, { antennas }: Site): Interval | null {
  const { heightM } = mast;
  if (heightM === null) return null;
  const tops = antennas
    .filter((a) => a.present !== 'no' && a.on?.part === mast.id)
    .flatMap((a) => {
      if (a.heightM !== null) return [a.heightM];
      const isOnTop = upright.test(a.kind) && a.on?.mark === 'top';
      return isOnTop && a.lengthM !== null ? [add(heightM, a.lengthM)] : [];
    });
  const all = [heightM, ...tops];
  return { low: Math.max(...all.map((h) => h.low)), high: Math.max(...all.map((h) => h.high)) };
}

function ofPair(mast: Support, heightM: Interval | null, line: OverheadLine, distance: Interval | null): Verdict {
  const at = [mast.id, line.id];
  const measured = clearOf(heightM, distance);
  const key = distance === null ? 'distance unknown' : 'height unknown';
  if (measured === null)
    return { is: 'cannot tell', at, because: { key }, settle: { key: key === 'height unknown' ? 'tape' : 'look up' } };
  if (measured.value.low >= marginM) return { is: 'met', at, because: { key: 'clear' }, measured };
  if (measured.value.high < 0 && line.certain) return { is: 'not met', at, because: { key: 'in reach' }, measured };
  if (measured.value.high < marginM && line.certain) return { is: 'not met', at, because: { key: 'near' }, measured };
  return { is: 'cannot tell', at, because: { key: 'not exact' }, settle: { key: 'look up' } };
}

/** How much the distance exceeds the height; with the height unknown, what the distance alone rules out. */
function clearOf(heightM: Interval | null, distance: Interval | null) {
  if (distance === null) return null;
  if (heightM === null && distance.low >= marginM) return null;
  const value = subtract(distance, heightM ?? exact(0));
  return { key: 'marginLengthM', value: rounded(value), limit: marginM, sense: 'least' } as const;
}

/** A foot as typed is a foot as printed: figures to a millimetre. */
const rounded = (i: Interval): Interval => ({ low: mm(i.low), high: mm(i.high) });
const mm = (m: number) => Math.round(m * 1000) / 1000;
