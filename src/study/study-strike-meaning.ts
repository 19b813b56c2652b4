/** What a strike's figures mean for what stands beside its ways, or was chosen for them. Lengths in metres, figures as ranges. */

interface Range {
  readonly low: number;
  readonly high: number;
}

/** Force on runs side by side, or on a bend, at the peaks of their currents. */
export interface StudyStrikeForce {
  readonly kind: 'parallel' | 'bend';
  readonly part: string;
  /** The run beside it; null: a bend. */
  readonly beside: string | null;
  /** In this stroke; of runs side by side on each metre of them, of a bend on its longer arm. */
  readonly forceN: number;
  /** With the same shares of the greatest stroke of protection level I. */
  readonly atLevelIN: number;
  /** true: pulls together; false: pushes apart, or straightens. */
  readonly attracts: boolean;
  readonly peakA: number;
  readonly besideA: number | null;
  readonly lengthM: number;
  readonly apartM: number | null;
  /** How far apart was taken as two cable diameters. */
  readonly apartTaken: boolean;
  readonly turnsDeg: number | null;
}

/** A way down for the current, and metal beside it that is not tied straight to it. */
export interface StudySideFlash {
  /** null: how far the metal is from any of the ways is not known. */
  readonly way: string | null;
  readonly metal: string;
  readonly distanceM: Range | null;
  /** Along the way from the nearest point down to the soil. */
  readonly lengthM: number | null;
  /** The height of the metal is not known, and the most unfavourable was taken. */
  readonly heightTaken: boolean;
  readonly downConductors: number;
  readonly between: 'air' | 'solid' | 'unknown';
  /** What NFPA 780 asks (bonding distance), and what IEC 62305-3 asks (separation distance; over its levels where none is claimed). */
  readonly nfpaM: Range | null;
  readonly iecM: Range | null;
  readonly level: 'I' | 'II' | 'III' | 'IV' | null;
  /** By the method of the site's region. */
  readonly outcome: 'met' | 'not met' | 'cannot tell';
}

/** A protector on a coax line against the radio's own voltage. */
export interface StudyArresterMargin {
  readonly arrester: string;
  readonly line: string;
  readonly powerW: Range | null;
  readonly impedanceOhm: Range;
  readonly swr: Range | null;
  readonly peakV: Range | null;
  readonly sparkoverV: Range | null;
  /** What the lowest spark-over should be: 1.5 times the peak. */
  readonly leastV: Range | null;
  /** Lowest spark-over over the peak. */
  readonly times: Range | null;
  /** The most power that it carries with that margin. */
  readonly mostW: number | null;
  readonly outcome: 'met' | 'not met' | 'cannot tell' | 'not applicable';
}

/** How much of an electrode counts in a front. */
export interface StudyStrikeEarth {
  readonly part: string;
  readonly peakA: number;
  readonly resistivityOhmM: Range;
  /** Farthest that its metal goes from where current enters it; null: not known, or no rod and no wire. */
  readonly armM: number | null;
  /** How much of an arm counts: without breakdown of the soil, and with it (two definitions). */
  readonly effectiveM: Range;
  readonly ionisedM: Range;
  readonly isLonger: 'yes' | 'without breakdown' | 'no' | 'unknown';
  readonly aloneOhm: { readonly value: number | null; readonly low: number; readonly high: number } | null;
  /** Peak potential over peak current of it alone (conventional impedance). */
  readonly impulseOhm: number | null;
}

/** An electrode about which the soil broke down. */
export interface StudyIonisedElectrode {
  readonly part: string;
  readonly peakA: number;
  /** Current at which the breakdown starts to tell. */
  readonly onsetA: number;
  /** Its own resistance, and what is left of it at the peak. */
  readonly ohm: number;
  readonly ionisedOhm: number;
}

export interface StudyStrikeMeaning {
  /** struck: the lightning enters at `at`; line: a surge along a line; nearby: nothing enters, it only induces. */
  readonly how: 'struck' | 'line' | 'nearby';
  /** Field at which soil was taken to break down, volts per metre; null: it was taken to hold. */
  readonly ionisationVPerM: number | null;
  readonly ionised: readonly StudyIonisedElectrode[];
  readonly forces: readonly StudyStrikeForce[];
  readonly sideFlashes: readonly StudySideFlash[];
  readonly margins: readonly StudyArresterMargin[];
  readonly earths: readonly StudyStrikeEarth[];
}
