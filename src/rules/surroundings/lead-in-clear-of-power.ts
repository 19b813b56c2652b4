import { partIndex } from '../../facts/part-index.ts';
import type { Line, Site } from '../../site/site.ts';
import { type Interval, isAtLeast, sum } from '../../units/interval.ts';
import { apart } from '../apart.ts';
import { feedLines } from '../lines/crossing-lines.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { type OverheadLine, overheadLines } from './overhead-lines.ts';

/** Least distance to open power conductors of up to 250 V, and above that, metres (2 ft, 10 ft as printed). */
const leastM = { low: 0.6, high: 3 } as const;
const lowVoltageV = 250;

export const leadInClearOfPower = rule({
  id: 'lead-in-clear-of-power',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '810.18(A)', provenance: 'second-hand' },
  limits: [
    { key: 'distanceLengthM', value: leastM.low, sense: 'least', of: 'up to 250 V' },
    { key: 'distanceLengthM', value: leastM.high, sense: 'least', of: 'above 250 V' },
  ],
  needs: ['sections', 'site'],
  check({ sections, site }) {
    const leadIns = site.lines.filter((l) => feedLines.includes(l.kind) && l.present !== 'no' && isOutdoors(l, site));
    const power = overheadLines(site);
    if (leadIns.length === 0) return nothingThere({ sections }, 'lines');
    if (power.length === 0) return nothingThere({ sections }, 'metalwork');
    const between = apart(site);
    return leadIns.flatMap((l) => power.map((p) => ofPair(l, p, between(l.id, p.id) ?? atLeast(l, p.id, between))));
  },
});

/** It comes from an antenna that is not said to be indoors, or from a place outside. */
function isOutdoors(line: Line, site: Site): boolean {
  const { whereOf } = partIndex(site);
  return line.path.some((s) => s.is === 'part' && whereOf(s.at.part) === 'outside');
}

/** Of a line without a place: no nearer than one of its stops less its whole length. */
function atLeast(line: Line, power: string, between: ReturnType<typeof apart>): Interval | null {
  const lengthM = line.lengthM ?? (line.lengthsM.length > 0 ? sum(line.lengthsM) : null);
  if (lengthM === null) return null;
  const lows = line.path.flatMap((s) => {
    const far = s.is === 'part' && s.at.part !== null ? between(s.at.part, power) : null;
    return far === null ? [] : [far.low - lengthM.high];
  });
  const low = Math.max(0, ...lows);
  return low === 0 ? null : { low, high: Infinity };
}

function ofPair(line: Line, power: OverheadLine, distanceM: Interval | null): Verdict {
  const at = [line.id, power.id];
  const voltage = power.part.voltageV ?? null;
  const limit = voltage === null ? null : voltage.high <= lowVoltageV ? leastM.low : limitAbove(voltage);
  if (distanceM === null)
    return { is: 'cannot tell', at, because: { key: 'distance unknown' }, settle: { key: 'look up' } };
  const measured = { key: 'distanceLengthM', value: distanceM, limit: limit ?? leastM.high, sense: 'least' } as const;
  const enough = limit === null ? whateverVoltage(distanceM) : isAtLeast(distanceM, limit);
  if (enough === 'yes') return { is: 'met', at, because: { key: 'clear' }, measured };
  if (enough === 'no' && power.certain) return { is: 'not met', at, because: { key: 'near' }, measured };
  if (limit === null && enough === 'unknown')
    return { is: 'cannot tell', at, because: { key: 'voltage unknown' }, settle: { key: 'ask voltage' } };
  return { is: 'cannot tell', at, because: { key: 'distance unknown' }, settle: { key: 'look up' } };
}

/** null: on both sides of the limit. */
const limitAbove = (voltage: Interval) => (voltage.low > lowVoltageV ? leastM.high : null);

/** What holds for low voltage as well as for high. */
function whateverVoltage(distanceM: Interval): 'yes' | 'no' | 'unknown' {
  if (isAtLeast(distanceM, leastM.high) === 'yes') return 'yes';
  return isAtLeast(distanceM, leastM.low) === 'no' ? 'no' : 'unknown';
}
