import type { ArresterFacts } from '../../facts/facts.ts';
import { boxesOnLine, linePeak, linePower, lineSwr, sparkOverBand } from '../../facts/line-peak.ts';
import type { Equipment, Line } from '../../site/site.ts';
import type { Interval } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** How many times the line's peak the lowest spark-over should be: the trade's rule for selecting a tube, read in a note. */
const margin = 1.5;
/** Ours: more than two of the trade's steps above what is asked; the lowest usual tube stands for a line that only receives. */
const mostTimes = 4;
const lowestTubeV = 90;

export const arresterFitsPower = rule({
  id: 'arrester-fits-power',
  family: 'strike',
  severity: 'advice',
  codeSets: ['any'],
  source: {
    document: 'a selection note for gas tubes on coax lines: 1.5 times the peak voltage; the upper limit is ours',
    edition: null,
    clause: null,
    provenance: 'second-hand',
  },
  needs: ['sections', 'arresters', 'site'],
  check({ sections, arresters, site }) {
    const coax = new Map(site.lines.flatMap((l) => (l.kind === 'coax' ? [[l.id, l] as const] : [])));
    const asked = arresters.flatMap((a) => {
      const lines = [...new Set(a.lines)].flatMap((id) => coax.get(id) ?? []);
      const boxes = lines.flatMap((l) => boxesOnLine(l, site));
      return a.part.kind === 'quarter-wave stub' || boxes.length === 0 ? [] : [{ a, line: lines[0]!, boxes }];
    });
    if (asked.length === 0) return nothingThere({ sections }, 'arresters');
    return asked.map(({ a, line, boxes }) => ofArrester(a, line, boxes));
  },
});

function ofArrester({ id, part }: ArresterFacts, line: Line, boxes: readonly Equipment[]): Verdict {
  const at = [id];
  const powerW = linePower(boxes);
  if (powerW === null)
    return { is: 'cannot tell', at, because: { key: 'power unknown' }, settle: { key: 'type power' } };
  const peakV = linePeak(powerW, line, lineSwr(boxes));
  const values = { powerW, peakV };
  if (part.sparkoverV === null) return byRating(at, part.ratedPowerW, values);
  const { low, high } = sparkOverBand(part.sparkoverV);
  const least = { key: 'sparkoverV', value: low, sense: 'least' } as const;
  if (low < margin * peakV.low) {
    const measured = { ...least, limit: margin * peakV.low };
    const severity = high < peakV.low ? 'defect' : 'advice';
    return { is: 'not met', at, because: { key: 'low', values }, measured, severity };
  }
  if (low < margin * peakV.high)
    return { is: 'cannot tell', at, because: { key: 'swr unknown' }, settle: { key: 'type swr' } };
  const mostV = mostTimes * Math.max(lowestTubeV, margin * peakV.high);
  if (low > mostV) {
    const measured = { key: 'sparkoverV', value: low, limit: mostV, sense: 'most' } as const;
    return { is: 'not met', at, because: { key: 'high', values }, measured };
  }
  return { is: 'met', at, because: { key: 'fits' }, measured: { ...least, limit: margin * peakV.high } };
}

type Values = Readonly<Record<'powerW' | 'peakV', Interval>>;

/** Where nobody typed at what voltage it fires, by the power that its maker gives. */
function byRating(at: readonly string[], rated: Interval | null, values: Values): Verdict {
  const { powerW } = values;
  const unknown = { is: 'cannot tell', at, because: { key: 'level unknown' }, settle: { key: 'read it' } } as const;
  if (powerW.high === 0) return { is: 'met', at, because: { key: 'receives' } };
  if (rated === null) return unknown;
  const measured = { key: 'ratedPowerW', value: rated, limit: powerW.high, sense: 'least' } as const;
  if (rated.low >= powerW.high) return { is: 'met', at, because: { key: 'rated' }, measured };
  if (rated.high >= powerW.low) return unknown;
  return { is: 'not met', at, because: { key: 'rated less', values }, measured };
}
