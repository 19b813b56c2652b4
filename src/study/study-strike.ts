/**
 * What the study says of one strike. Volts between two things are what a cable laid along the route between them would see;
 * volts against remote earth rest on where remote earth is taken to be. Quasi-static: no travelling waves, no leader, no
 * corona. A figure that rests on the soil is a range.
 */
import type { Bounded } from './study-earth.ts';
import type { StudyStrikeMeaning } from './study-strike-meaning.ts';

/** The current that was put in. */
export interface StudyStroke {
  /** Key of a stroke: 'first negative, median'. */
  readonly name: string;
  /** Front and half-value times as the trade writes them: '1/200'. */
  readonly wave: string;
  readonly peakA: number;
  readonly frontS: number;
  readonly halfValueS: number;
  readonly steepestAPerS: number;
  readonly chargeC: number;
  /** Integral of the square of the current: specific energy, joule per ohm. */
  readonly actionA2s: number;
  readonly source: { readonly document: string; readonly edition: string | null; readonly provenance: string };
}

/** Between two things that a person or a cable joins. */
export interface StudyStrikeDifference {
  readonly a: string;
  /** A part, or 'remote earth'. */
  readonly b: string;
  /** straight: along the straight line between them; null: places are not known, and the figure is an upper estimate. */
  readonly route: 'straight' | null;
  /** Why it is asked: a line joins them, somebody reaches both, each against the service, a line that comes in from outside, or asked for by name. */
  readonly why: 'line' | 'reach' | 'service' | 'base' | 'outside' | 'asked';
  /** The line that joins them or comes in; null: none. */
  readonly by: string | null;
  readonly peakV: number;
  readonly rangeV: Bounded;
  readonly atS: number;
  /** Peak over the peak of the stroke, and over its greatest steepness. */
  readonly voltPerKiloampere: number;
  readonly voltPerKiloamperePerMicrosecond: number;
  /** With the protectors that conduct above their level (against the street: its conductor); null: none conducts. */
  readonly firedV?: number | null;
  /** The range holds wires known by length alone, taken as uncoupled (k = 0, the figure) and as coupled closely (k = 0.6). */
  readonly isBracketed: boolean;
  /** Some way between them is longer than the front allows, and the figure is without travel time: see `solve.longestWayM`. */
  readonly isBeyond: boolean;
  /** Where the way is too long, yet all of it is a chain in which waves travel: `peakV` is with, this without; null: no chain. */
  readonly lumpedV?: number | null;
}

export interface StudyStrikeConductor {
  /** A conductor, support or line. */
  readonly id: string;
  /** Largest of its spans. */
  readonly peakA: number;
  readonly atS: number;
  readonly shareOfPeak: number;
  readonly actionA2s: number;
  /**
   * typed: metal and section are the owner's (or a table's, by the class of a cable); taken: nobody typed the section, and the
   * least of such a support or hard line was taken, so that the rise is at most this; null: not known.
   */
  readonly sectionFrom: 'typed' | 'taken' | null;
  readonly sectionM2: number | null;
  /** By this stroke, of a wire, a support, a shield of known metal and section; null: not known. */
  readonly riseK: number | null;
  readonly melts: boolean | null;
  /** The same share of the first positive stroke of each protection level. */
  readonly levels: readonly {
    readonly level: 'I' | 'II' | 'III' | 'IV';
    readonly riseK: number | null;
    readonly melts: boolean;
  }[];
}

export interface StudyStrikeJoint {
  readonly id: string;
  readonly peakA: number;
  /** At its likely resistance; null: not known. */
  readonly peakV: number | null;
  readonly energyJ: number | null;
}

/** Core against shield at the far end of a line: what the shield's spans bring over. */
export interface StudyStrikeCore {
  readonly line: string;
  /** The box at which it is met. */
  readonly at: string;
  /** With nothing that conducts, and with the protectors that do; null: none of the site does. */
  readonly peakV: number;
  readonly firedV?: number | null;
}

/** The lead by which a line's shield is bonded at one place: its volts stand between shield and metal there. */
export interface StudyStrikeKit {
  readonly line: string;
  readonly at: string;
  readonly leadM: number;
  /** The length is the owner's; else what kits come with. */
  readonly isTyped: boolean;
  readonly peakA: number;
  readonly peakV: number;
}

/** A protector that reaches its level. */
export interface StudyStrikeFired {
  readonly arrester: string;
  readonly atS: number;
  /** null: it stands between two points of metal. */
  readonly line?: string | null;
  /** Volts across it as it begins to conduct, and the most from then on. */
  readonly levelV?: number;
  readonly afterV?: number;
  readonly peakA?: number;
  readonly chargeC?: number;
  readonly energyJ?: number;
  /** Core against case at the box where its line ends: with nothing that conducts; up to the firing; from then on. */
  readonly passes?: {
    readonly at: string;
    readonly openV: number;
    readonly beforeV: number;
    readonly afterV: number;
  } | null;
}

export interface StudyStrikeFailure {
  /** The conductor, joint or line that is lost. */
  readonly lost: string;
  /** What stands in one row of metal with it: losing that does the same. */
  readonly alike: readonly string[];
  /** What no longer hangs on anything: no figure can be named. */
  readonly separates: readonly string[];
  /** Protectors that reach their level only then, and that no longer do: then the figures are with those that conduct. */
  readonly fires?: readonly string[];
  readonly rests?: readonly string[];
  /** The difference that grows most; null: none does. */
  readonly worst: { readonly a: string; readonly b: string; readonly beforeV: number; readonly afterV: number } | null;
}

export interface StudyStrike extends StudyStrikeMeaning {
  /** Where it strikes, as the owner would type it. */
  readonly at: string;
  /** null where it could not be worked out; `refused` says why. */
  readonly stroke: StudyStroke | null;
  readonly refused: string | null;
  /** Against remote earth, likely figures, by id of the part. */
  readonly peakV: Readonly<Record<string, number>>;
  readonly differences: readonly StudyStrikeDifference[];
  readonly conductors: readonly StudyStrikeConductor[];
  readonly joints: readonly StudyStrikeJoint[];
  readonly electrodes: readonly { readonly id: string; readonly peakA: number; readonly shareOfPeak: number }[];
  readonly fired: readonly StudyStrikeFired[];
  /** Tubes that do not fire here, but would at the low end of what tubes of their kind do. */
  readonly mayFire?: readonly string[];
  readonly cores: readonly StudyStrikeCore[];
  readonly kits?: readonly StudyStrikeKit[];
  readonly failures: readonly StudyStrikeFailure[];
  /** Potentials over time of some parts, for a chart. */
  readonly traces: {
    readonly timesS: readonly number[];
    readonly potentialsV: readonly { readonly part: string; readonly volt: readonly number[] }[];
  };
  /** In words: what was taken because nobody typed it, what was left out. */
  readonly assumptions: readonly string[];
  readonly solve: {
    readonly branches: number;
    readonly loops: number;
    readonly steps: number;
    readonly errorShare: number;
    /** What the energy that went in and the energy that went into heat and fields differ by, relative. */
    readonly energyShare: number;
    /** The longest way through metal that counts, and how long one may be for this front. */
    readonly longestWayM: number;
    readonly mostWayM: number;
  } | null;
}
