import type { Facts } from '../facts/facts.ts';
import { sparkFieldVPerM } from '../rules/strike/spark-field.ts';
import type { Interval } from '../units/interval.ts';
import type { Study } from './study.ts';

type Gap = NonNullable<Study['gaps']>[number];

/** Where the state takes lines off: how far the sides are apart, what that withstands, and what the default strike puts across. */
export function gapsOf(facts: Pick<Facts, 'site' | 'strike'>, stateId: string | null): readonly Gap[] {
  const { site } = facts;
  const state = site.states.find((s) => s.id === stateId);
  if (state === undefined || state.open.length === 0) return [];
  const peaks = new Map(facts.strike.gaps.map((gap) => [gap.line, Math.abs(gap.peak.value)]));
  return state.open
    .flatMap(({ at, side, gapM, end }) =>
      linesAt(site, at).map((line): Gap => {
        const peakV = peaks.get(line) ?? null;
        return { at, line, side, gapM, end, withstandV: gapM === null ? null : withstandOf(gapM), peakV };
      }),
    )
    .sort((a, b) => (a.at === b.at ? (a.line < b.line ? -1 : 1) : a.at < b.at ? -1 : 1));
}

/** A plug belongs to the lines that name it; `line1:radio` names its line. */
function linesAt({ lines }: Facts['site'], at: string): readonly string[] {
  const named = at.split(':')[0]!;
  return lines
    .filter((line) => line.id === named || line.path.some((stop) => stop.is === 'plug' && stop.id === at))
    .map((line) => line.id);
}

function withstandOf({ low, high }: Interval): Interval {
  return { low: low * sparkFieldVPerM, high: high * sparkFieldVPerM };
}
