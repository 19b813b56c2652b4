import type { Wave } from '../surge/wave.ts';
import { type WaveFigures, waveFigures } from '../surge/wave-figures.ts';
import { wave0p25x100, wave1p2x50, wave1x200, wave8x20, wave10x350 } from '../surge/wave-presets.ts';

/** Waves as the trade writes them, front and half-value times in microseconds. */
export const strikeWaves = ['10/350', '1/200', '0.25/100', '8/20', '1.2/50'] as const;
export type StrikeWaveName = (typeof strikeWaves)[number];

export interface StrikeStroke {
  readonly waveName: StrikeWaveName;
  readonly wave: Wave;
  readonly figures: WaveFigures;
  /** Whether wave and peak are the usual ones: the median first negative stroke. */
  readonly isDefault: boolean;
  readonly source: { readonly document: string; readonly edition: string | null; readonly provenance: string };
}

/**
 * Usual peaks, ampere: the median first negative stroke (CIGRE TB 549, 2013, read in a summary), the greatest first positive
 * one of levels III and IV and the median subsequent one (IEC 62305-1; Electra 69, 1980; from memory), 10 kA of a test.
 */
const usualPeakA: Readonly<Record<StrikeWaveName, number>> = {
  '10/350': 100e3,
  '1/200': 30e3,
  '0.25/100': 12e3,
  '8/20': 10e3,
  '1.2/50': 10e3,
};

const shapes: Readonly<Record<StrikeWaveName, (peak: number) => Wave>> = {
  '10/350': wave10x350,
  '1/200': wave1x200,
  '0.25/100': wave0p25x100,
  '8/20': wave8x20,
  '1.2/50': wave1p2x50,
};

const standard = { document: 'IEC 62305-1', edition: '2010', provenance: 'memory' };
const testWaves = { document: 'IEC 60060-1', edition: null, provenance: 'memory' };
const median = { document: 'CIGRE Technical Brochure 549', edition: '2013', provenance: 'second-hand' };

/** The stroke that was asked for; null: the usual wave, the usual peak of it. RangeError for a wave that is none of these. */
export function strikeStroke(name: string | null, peakA: number | null): StrikeStroke {
  const waveName = strikeWaves.find((wave) => wave === (name ?? '1/200'));
  if (waveName === undefined) throw new RangeError(`${name} is no wave`);
  const isDefault = (name === null || name === '1/200') && peakA === null;
  const wave = shapes[waveName](peakA ?? usualPeakA[waveName]);
  const isTest = waveName === '8/20' || waveName === '1.2/50';
  const source = isDefault ? median : isTest ? testWaves : standard;
  return {
    waveName,
    wave,
    figures: waveFigures(wave, waveName === '1.2/50' ? 'voltage' : 'current'),
    isDefault,
    source,
  };
}
