import type { Line, Site } from '../site/site.ts';
import { type Peak, peakOf } from '../surge/peak-of.ts';
import type { SurgeCourse } from '../surge/surge-course.ts';
import { overTime, type SurgeFigure } from '../surge/surge-figure.ts';
import { lineCore } from './line-core.ts';
import type { StrikeNetwork } from './strike-network.ts';

/** Core against shield at the far end of a line. */
export interface StrikeCore {
  readonly part: string;
  readonly peak: Peak;
}

/**
 * Core against shield at the far end of each shielded line, nothing in its core: transfer impedance times current, summed over
 * the spans of the shield, the core tied to the shield at the first stop. Of a braid R i + Mt di/dt; of a tube R i, the high side.
 */
export function strikeCores(site: Site, network: StrikeNetwork, course: SurgeCourse): readonly StrikeCore[] {
  const shields = new Set(network.branches.filter((b) => b.kind === 'shield' && b.lengthM > 0).map((b) => b.part));
  return site.lines
    .filter(({ id }) => shields.has(id))
    .map((line) => ({ part: line.id, peak: peakIn(course, coreFigure(line, network)) }))
    .sort((a, b) => (a.part < b.part ? -1 : 1));
}

function coreFigure(line: Line, { branches, points }: StrikeNetwork): SurgeFigure {
  const { leakageHPerM } = lineCore(line);
  const current = new Float64Array(branches.length + points.length);
  const slope = new Float64Array(current.length);
  branches.forEach(({ part, kind, resistanceOhm, lengthM }, branch) => {
    if (part !== line.id || kind !== 'shield' || lengthM === 0) return;
    current[branch] = resistanceOhm;
    slope[branch] = leakageHPerM * lengthM;
  });
  return { current, slope, own: [], strokeSlope: 0 };
}

function peakIn(course: SurgeCourse, figure: SurgeFigure): Peak {
  return peakOf(course.wave.timesS, overTime(course, figure));
}
