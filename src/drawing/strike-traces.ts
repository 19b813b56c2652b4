import type { StudyStrike } from '../study/study-strike.ts';

/** Potential of one part over time. */
export interface StrikeTrace {
  readonly part: string;
  readonly points: readonly { readonly timeS: number; readonly volt: number }[];
}

/** More curves than this cannot be told apart. */
const most = 8;

/** The curves that a chart shows: those of at least two points, the highest where there are too many, in the order of the study. */
export function strikeTraces({ traces }: StudyStrike): readonly StrikeTrace[] {
  const { timesS } = traces;
  const all = traces.potentialsV.map(({ part, volt }) => ({
    part,
    points: timesS.flatMap((timeS, i) => (volt[i] === undefined ? [] : [{ timeS, volt: volt[i] }])),
  }));
  const drawable = all.filter((t) => t.points.length > 1);
  const peaks = drawable.map((t) => Math.abs(peakOfTrace(t).volt)).sort((a, b) => b - a);
  const least = peaks[most - 1] ?? 0;
  return drawable.filter((t) => Math.abs(peakOfTrace(t).volt) >= least).slice(0, most);
}

/** Where it lies farthest from 0; the first of such points. */
export function peakOfTrace({ points }: StrikeTrace): { readonly timeS: number; readonly volt: number } {
  return points.reduce((best, p) => (Math.abs(p.volt) > Math.abs(best.volt) ? p : best));
}
