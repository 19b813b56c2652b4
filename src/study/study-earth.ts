/**
 * What the study says of the soil and of the electrodes in it. Only what the site's own metal does: the soil is solved, never
 * asked of a table. A figure that rests on a range is a range.
 */

/** A figure with its rigorous bounds; high is null where nothing bounds it from above. */
export interface Bounded {
  readonly value: number | null;
  readonly low: number;
  readonly high: number | null;
}

export interface StudyLayer {
  readonly resistivityOhmM: Bounded;
  /** null: the last layer, or unknown. */
  readonly thicknessM: Bounded | null;
}

/** The earth in one condition of the ground: as typed, or a state's, or a season's. */
export interface StudyEarthCondition {
  /** 'as typed', or the id of a state, or 'wet', 'dry', 'frozen'. */
  readonly id: string;
  /** In words: `frozen to 3 ft`. */
  readonly says: string;
  readonly layers: readonly StudyLayer[];
  /** Of the service's group, at the service bar. */
  readonly resistanceOhm: Bounded | null;
  readonly groups: readonly { readonly id: string; readonly resistanceOhm: Bounded | null }[];
  readonly electrodes: readonly {
    readonly id: string;
    readonly aloneOhm: Bounded | null;
    readonly currentShare: number | null;
  }[];
}

/** Layers that fit the four-pin readings, and how well. */
export interface StudySoilFit {
  readonly readings: readonly string[];
  /** Each reading beside what the layers give; spacing as for a row of four pins evenly spaced, or half the outer pins' distance. */
  readonly points: readonly {
    readonly reading: string;
    readonly spacingM: number;
    readonly measuredOhmM: number;
    readonly fittedOhmM: number | null;
  }[];
  /** The fitted curve, for a chart; by rising spacing. */
  readonly curve: readonly { readonly spacingM: number; readonly ohmM: number }[];
  /** Number of layers that the readings carry; null: none, and `text` says why. */
  readonly chosen: number | null;
  readonly layers: readonly {
    readonly resistivityOhmM: StudyFitted;
    readonly thicknessM: StudyFitted | null;
  }[];
  /** What is resolved of a layer (from 0) where its figures are not: ohm square metre, or siemens. */
  readonly tradeOffs: readonly {
    readonly layer: number;
    readonly of: 'thickness times resistivity' | 'thickness over resistivity';
    readonly range: StudyFitted;
  }[];
  /** Root mean square of (fitted - measured) / measured; null where nothing fits. */
  readonly misfitShare: number | null;
  readonly tried: readonly { readonly layers: number; readonly misfitShare: number }[];
  /** Sentences: what was found, what trades off against what, what is not resolved. */
  readonly text: readonly string[];
}

/** A fitted figure with its 95 % range; resolved: false where that is wider than one to ten. */
export interface StudyFitted {
  readonly value: number;
  readonly low: number;
  readonly high: number | null;
  readonly resolved: boolean;
}

/** Resistance of an electrode alone if it were driven to other depths, in one condition. */
export interface StudyDepthCurve {
  readonly electrode: string;
  readonly condition: string;
  /** Length as it is. */
  readonly lengthM: number | null;
  readonly points: readonly { readonly lengthM: number; readonly ohm: Bounded }[];
}

/** What one more rod like this brings, by its distance. */
export interface StudySpacingGain {
  readonly electrode: string;
  /** `ohm` of both joined; `gainShare` = 1 - that over the one alone (0.5: as if they did not feel each other). */
  readonly points: readonly { readonly spacingM: number; readonly ohm: number; readonly gainShare: number }[];
}

/** What ever more rods like this bring, in one straight line, evenly spaced and joined. */
export interface StudyRodLine {
  readonly electrode: string;
  readonly spacingM: number;
  /** Of one, two, three and so on, in the likely soil; null where they could not be solved. */
  readonly ohm: readonly (number | null)[];
}

/** Potential of the surface when a group of electrodes is at 1 volt against remote earth. */
export interface StudySurface {
  readonly group: string;
  readonly condition: string;
  /** Volt per volt of rise, row by row from the south-west corner; `columns` to the east, `rows` to the north. */
  readonly grid: {
    readonly westM: number;
    readonly southM: number;
    readonly stepM: number;
    readonly columns: number;
    readonly rows: number;
    readonly share: readonly number[];
  };
  /** Along the line from the electrode nearest to people, or the service, outwards. */
  readonly line: {
    readonly fromM: readonly [number, number];
    readonly toM: readonly [number, number];
    readonly points: readonly { readonly distanceM: number; readonly share: number }[];
  };
  /** Worst step of 1 m on that line, and where it begins. */
  readonly step: { readonly share: number; readonly atM: number };
  /** Worst difference between the group and the ground 1 m away from any of its parts above the soil with a place. */
  readonly touch: { readonly share: number; readonly part: string } | null;
}

export interface StudyEarthSolve {
  readonly segments: number;
  /** Estimate of how far a figure lies above what ever finer cutting would give. */
  readonly errorShare: number;
  readonly worstAt: string | null;
  /** Bare buried conductors that were solved as leaking metal. */
  readonly leaking: readonly string[];
  /** In sentences: what had to be left out, and how much it can matter. */
  readonly limits: readonly string[];
}

/** Potential that an electrode outside a group takes on through the soil, per volt of the group's rise. */
export interface StudyTransferred {
  readonly electrode: string;
  readonly group: string;
  readonly share: Bounded;
}

/** What an electrode measured alone says of the soil, were that uniform. */
export interface StudySoilOfElectrode {
  readonly electrode: string;
  readonly measuredOhm: Bounded;
  readonly uniformOhmM: Bounded;
  readonly text: string;
}
