import type { FigureSource } from './figure-source.ts';
import { type Stroke, type StrokeKind, stroke } from './stroke.ts';

export const protectionLevels = ['I', 'II', 'III', 'IV'] as const;
export type ProtectionLevel = (typeof protectionLevels)[number];

/** What a protection level is laid out for: IEC 62305-1:2010, Tables 3 to 5. Levels III and IV share every maximum. */
export interface LevelFigures {
  readonly level: ProtectionLevel;
  readonly firstPositiveA: number;
  /** Of the first positive impulse, as printed: its wave has 2.8 % more (tail of the rounded constants). */
  readonly specificEnergyJPerOhm: number;
  readonly impulseChargeC: number;
  readonly firstNegativeA: number;
  readonly firstNegativeMeanAPerS: number;
  readonly subsequentA: number;
  readonly subsequentMeanAPerS: number;
  readonly longStrokeC: number;
  readonly longStrokeS: number;
  readonly flashChargeC: number;
  /** The least peak that the air terminals are laid out to catch, and the rolling sphere that goes with it. */
  readonly leastPeakA: number;
  readonly sphereRadiusM: number;
  /** Share of strokes below the greatest peak, and above the least. */
  readonly belowGreatest: number;
  readonly aboveLeast: number;
  readonly sources: LevelSources;
}

/** Where the figures of a level come from. */
export interface LevelSources {
  readonly firstPositive: FigureSource;
  readonly negative: FigureSource;
  readonly others: FigureSource;
}

const standard = { document: 'IEC 62305-1', edition: '2010' } as const;
const quoted: FigureSource = { ...standard, clause: 'Tables 3 to 5, as in a trade guide', provenance: 'second-hand' };
const quotedWaves: FigureSource = { ...standard, clause: 'annex B, as in research scripts', provenance: 'second-hand' };
const recalled: FigureSource = { ...standard, clause: 'Tables 3 to 5', provenance: 'memory' };

const ofLevelI: LevelFigures = {
  level: 'I',
  firstPositiveA: 200e3,
  specificEnergyJPerOhm: 10e6,
  impulseChargeC: 100,
  firstNegativeA: 100e3,
  firstNegativeMeanAPerS: 100e9,
  subsequentA: 50e3,
  subsequentMeanAPerS: 200e9,
  longStrokeC: 200,
  longStrokeS: 0.5,
  flashChargeC: 300,
  leastPeakA: 3e3,
  sphereRadiusM: 20,
  belowGreatest: 0.99,
  aboveLeast: 0.99,
  sources: { firstPositive: quoted, negative: quotedWaves, others: recalled },
};

const ofLevelII: LevelFigures = {
  level: 'II',
  firstPositiveA: 150e3,
  specificEnergyJPerOhm: 5.6e6,
  impulseChargeC: 75,
  firstNegativeA: 75e3,
  firstNegativeMeanAPerS: 75e9,
  subsequentA: 37.5e3,
  subsequentMeanAPerS: 150e9,
  longStrokeC: 150,
  longStrokeS: 0.5,
  flashChargeC: 225,
  leastPeakA: 5e3,
  sphereRadiusM: 30,
  belowGreatest: 0.98,
  aboveLeast: 0.97,
  sources: { firstPositive: quoted, negative: recalled, others: recalled },
};

const ofLevelIII: LevelFigures = {
  level: 'III',
  firstPositiveA: 100e3,
  specificEnergyJPerOhm: 2.5e6,
  impulseChargeC: 50,
  firstNegativeA: 50e3,
  firstNegativeMeanAPerS: 50e9,
  subsequentA: 25e3,
  subsequentMeanAPerS: 100e9,
  longStrokeC: 100,
  longStrokeS: 0.5,
  flashChargeC: 150,
  leastPeakA: 10e3,
  sphereRadiusM: 45,
  belowGreatest: 0.95,
  aboveLeast: 0.91,
  sources: { firstPositive: quoted, negative: recalled, others: recalled },
};

const ofLevelIV: LevelFigures = {
  ...ofLevelIII,
  level: 'IV',
  leastPeakA: 16e3,
  sphereRadiusM: 60,
  aboveLeast: 0.84,
};

const byLevel = { I: ofLevelI, II: ofLevelII, III: ofLevelIII, IV: ofLevelIV } as const;

/** The figures of a level; null for a name that is none. */
export function levelFigures(level: string): LevelFigures | null {
  return Object.hasOwn(byLevel, level) ? byLevel[level as ProtectionLevel] : null;
}

/** The greatest stroke of a kind that a level is laid out for, and where its peak comes from. */
export function strokeAtLevel(kind: StrokeKind, level: ProtectionLevel): Stroke & { readonly source: FigureSource } {
  const { firstPositiveA, firstNegativeA, subsequentA, sources } = byLevel[level];
  switch (kind) {
    case 'first-positive':
      return { ...stroke(kind, firstPositiveA), source: sources.firstPositive };
    case 'first-negative':
      return { ...stroke(kind, firstNegativeA), source: sources.negative };
    case 'subsequent':
      return { ...stroke(kind, subsequentA), source: sources.negative };
  }
}
