import { chiSquareLimit } from '../math/chi-square.ts';
import { chooseLayers, type LayerCount, misfitShareOf } from './fit-choice.ts';
import { fitFigures } from './fit-figures.ts';
import { type FitWeighting, fitData } from './fit-problem.ts';
import type { FitReason, SoundingFit, TriedLayers } from './sounding-fit.ts';
import { type SoundingReading, samePins, type UsableReading, usableReadings } from './sounding-reading.ts';

export interface SoundingOptions {
  /** How far a reading may be off, as a share of itself (one standard deviation); default 0.05. */
  readonly noiseShare?: number;
  /** Default `relative`. */
  readonly weighting?: FitWeighting;
  /** Only this number of layers; default: as few as the readings allow. */
  readonly layers?: LayerCount;
}

/** Instrument, pin placing and a soil that is nowhere quite level together: some per cent. Common practice, no source. */
const usualNoise = 0.05;

/**
 * The soil that four-pin readings carry: uniform, two or three layers, each figure with its range, or why there is none. Readings
 * over range are left out, as no figure stands for them. Throws RangeError for a noise that is not between 0 and 1.
 */
export function fitSounding(readings: readonly SoundingReading[], options: SoundingOptions = {}): SoundingFit {
  const { noiseShare = usualNoise, weighting = 'relative', layers: only = null } = options;
  if (!(noiseShare > 0 && noiseShare < 1)) throw new RangeError('noise is a share between 0 and 1');
  const usable = usableReadings(readings);
  if ('key' in usable) return refused(readings, [], usable, noiseShare);
  return fitUsable(readings, usable, { noiseShare, weighting, only });
}

interface Wanted {
  readonly noiseShare: number;
  readonly weighting: FitWeighting;
  readonly only: LayerCount | null;
}

function fitUsable(all: readonly SoundingReading[], usable: readonly UsableReading[], wanted: Wanted): SoundingFit {
  const { noiseShare } = wanted;
  const groups = samePins(usable);
  const short = tooFew(usable, groups) ?? contradiction(groups, noiseShare);
  if (short !== null) return refused(all, usable, short, noiseShare);
  const measuredOhmM = usable.map(({ apparentOhmM }) => apparentOhmM);
  const data = fitData(
    usable.map(({ pins }) => pins),
    measuredOhmM,
    wanted.weighting,
  );
  const choice = chooseLayers({ data, noiseShare, spacings: groups.length }, wanted.only);
  if (choice.layers === null) return { ...refused(all, usable, choice.reason!, noiseShare), tried: choice.tried };
  const figures = fitFigures(data, choice.fits, noiseShare);
  return {
    readings: shownReadings(all, usable, Array.from(data.model.at(figures.logs))),
    chosen: choice.layers,
    reason: null,
    layers: figures.layers,
    misfitShare: misfitShareOf(data, figures.logs),
    noiseShare: figures.noiseShare,
    tried: choice.tried,
    tradeOffs: figures.tradeOffs,
  };
}

function refused(
  all: readonly SoundingReading[],
  usable: readonly UsableReading[],
  reason: FitReason,
  noiseShare: number,
): SoundingFit {
  const none = { chosen: null, layers: [], misfitShare: null, tradeOffs: [] };
  const tried: readonly TriedLayers[] = [];
  return { ...none, readings: shownReadings(all, usable, []), reason, noiseShare, tried };
}

function shownReadings(
  all: readonly SoundingReading[],
  usable: readonly UsableReading[],
  fittedOhmM: readonly number[],
) {
  return all.map((_, at) => {
    const place = usable.findIndex((reading) => reading.at === at);
    if (place < 0) return { measuredOhmM: null, fittedOhmM: null };
    return { measuredOhmM: usable[place]!.apparentOhmM, fittedOhmM: fittedOhmM[place] ?? null };
  });
}

type Groups = ReturnType<typeof samePins>;

function tooFew(usable: readonly UsableReading[], groups: Groups): FitReason | null {
  if (usable.length < 2) return { key: 'too few readings', readings: usable.length, needed: 2 };
  return groups.length < 2 ? { key: 'one spacing', readings: usable.length } : null;
}

/** Readings with the same pins that differ by more than noise does once in a thousand. */
function contradiction(groups: Groups, noiseShare: number): FitReason | null {
  for (const group of groups) {
    if (group.length < 2) continue;
    const ohmM = group.map(({ apparentOhmM }) => apparentOhmM);
    const mean = ohmM.reduce((sum, value) => sum + value, 0) / ohmM.length;
    const left = ohmM.reduce((sum, value) => sum + ((value / mean - 1) / noiseShare) ** 2, 0);
    if (left <= chiSquareLimit(group.length - 1, 0.999)) continue;
    const readings = group.map(({ at }) => at).sort((a, b) => a - b);
    return { key: 'readings contradict', readings, timesApart: Math.max(...ohmM) / Math.min(...ohmM) };
  }
  return null;
}
