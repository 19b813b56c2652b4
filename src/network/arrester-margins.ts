import type { Line, Site } from '../site/site.ts';
import { leastSparkOver, mostPower, usualMargin } from '../surge/arrester-sizing.ts';
import { byCodeUnit } from '../units/by-code-unit.ts';
import type { Interval } from '../units/interval.ts';
import { boxesOnLine, lineImpedance, linePeak, linePower, lineSwr, sparkOverBand } from './line-peak.ts';

/** A protector on a coax line against the radio's own voltage. */
export interface ArresterMargin {
  readonly arrester: string;
  readonly line: string;
  /** Greatest power on the line; null: a box that sends has no figure. */
  readonly powerW: Interval | null;
  readonly impedanceOhm: Interval;
  /** null: nobody knows; from a matched line to all reflected. */
  readonly swr: Interval | null;
  /** Peak of the RF voltage; null: the power is not known. */
  readonly peakV: Interval | null;
  /** Lowest and highest at which it fires; null: nobody typed it. */
  readonly sparkoverV: Interval | null;
  /** What its lowest spark-over should be: the peak times the usual margin. */
  readonly leastV: Interval | null;
  /** Lowest spark-over over the peak, at the worst and at the best; null: not known. */
  readonly times: Interval | null;
  /** The most power that its lowest spark-over leaves with the margin at the worst SWR; null: spark-over is not known. */
  readonly mostW: number | null;
  readonly outcome: 'met' | 'not met' | 'cannot tell' | 'not applicable';
}

export { usualMargin };

/**
 * Every protector that fires on a coax line that a box meets: the peak RF voltage against its spark-over. Not applicable where
 * all boxes only receive. In order of the protectors' ids, then of the lines'.
 */
export function arresterMargins(site: Site): readonly ArresterMargin[] {
  const asked = site.arresters.filter((a) => a.present !== 'no' && a.kind !== 'quarter-wave stub');
  return asked
    .flatMap((a) =>
      site.lines
        .filter((l) => l.present !== 'no' && l.kind === 'coax' && meets(l, a.id) && boxesOnLine(l, site).length > 0)
        .map((line) => marginOf(a.id, a.sparkoverV, line, site)),
    )
    .sort((x, y) => (x.arrester === y.arrester ? byCodeUnit(x.line, y.line) : byCodeUnit(x.arrester, y.arrester)));
}

function meets(line: Line, part: string): boolean {
  return line.path.some((stop) => stop.is === 'part' && stop.at.part === part);
}

function marginOf(arrester: string, typedV: Interval | null, line: Line, site: Site): ArresterMargin {
  const boxes = boxesOnLine(line, site);
  const [powerW, swr, impedanceOhm] = [linePower(boxes), lineSwr(boxes), lineImpedance(line)];
  const sparkoverV = typedV === null ? null : sparkOverBand(typedV);
  const peakV = powerW === null ? null : linePeak(powerW, line, swr);
  const sends = peakV !== null && peakV.high > 0;
  const leastV = sends ? { low: least(peakV.low), high: least(peakV.high) } : null;
  const times =
    sends && sparkoverV !== null ? { low: sparkoverV.low / peakV.high, high: sparkoverV.low / peakV.low } : null;
  // all reflected doubles the peak, as an SWR of four would
  const worstSwr = Math.max(1, swr?.high ?? 4);
  const mostW =
    sparkoverV === null || sparkoverV.low <= 0 ? null : mostPower(sparkoverV.low, impedanceOhm.high, worstSwr);
  const outcome = peakV !== null && !sends ? 'not applicable' : outcomeOf(times);
  return { arrester, line: line.id, powerW, impedanceOhm, swr, peakV, sparkoverV, leastV, times, mostW, outcome };
}

function least(peakV: number): number {
  return peakV > 0 ? leastSparkOver(peakV) : 0;
}

function outcomeOf(times: Interval | null): ArresterMargin['outcome'] {
  if (times === null) return 'cannot tell';
  if (times.low >= usualMargin) return 'met';
  return times.high < usualMargin ? 'not met' : 'cannot tell';
}
