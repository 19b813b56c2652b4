/**
 * The site as an immutable value, in SI units: what the owner typed, checked, with nothing added but what the format
 * itself implies. Unknown is null for a figure or a word and 'unknown' for a yes-or-no; it is never a made-up value.
 */
import type { Interval } from '../units/interval.ts';
import type {
  Answer,
  Antenna,
  Arrester,
  Bar,
  Conductor,
  Electrode,
  Equipment,
  HowKnown,
  Joint,
  Line,
  Metalwork,
  Part,
  PartSection,
  PointRef,
  Position,
  SourcePlace,
  StatedOhm,
  Support,
  Where,
} from './parts.ts';

export type * from './parts.ts';
export { partSections } from './parts.ts';

export type Region = 'us' | 'ca' | 'iec' | 'uk' | 'au' | 'unknown';
export type Supply = 'us-grounded' | 'tn-s' | 'tn-c-s' | 'tt' | 'unknown';
export type SectionName = PartSection | 'soil' | 'buildings' | 'places' | 'states' | 'readings' | 'prices';

export interface Building {
  readonly id: string;
  readonly corners: readonly Position[] | null;
  readonly heightM: Interval | null;
  readonly walls: string | null;
  readonly roof: string | null;
  /** Whether one or two families live in it. */
  readonly dwelling: Answer;
  readonly source: SourcePlace;
}

export interface Place {
  readonly id: string;
  readonly position: Position | null;
  readonly where: Where;
  readonly source: SourcePlace;
}

export interface State {
  readonly id: string;
  readonly says: string | null;
  readonly open: readonly {
    /** A plug's id, or 'line:stop'. */
    readonly at: string;
    readonly side: 'before' | 'after' | null;
    readonly gapM: Interval | null;
    readonly end: 'loose' | 'grounded' | 'unknown';
  }[];
  /** 'part.field' → the value as the file format would hold it. */
  readonly set: Readonly<Record<string, unknown>>;
  /** The parts that `set` changes, as they are in this state. */
  readonly changed?: readonly Part[];
  readonly lost: readonly string[];
  readonly frozen: Answer;
  readonly dry: Answer;
  readonly wet: Answer;
  readonly source: SourcePlace;
}

export interface Reading {
  readonly id: string;
  readonly kind:
    | 'four-pin'
    | 'fall of potential'
    | 'stakeless'
    | 'continuity'
    | 'joint'
    | 'potential'
    | 'other'
    | 'unknown';
  readonly date: string | null;
  readonly weather: string | null;
  readonly instrument: string | null;
  readonly by: string | null;
  readonly note: string | null;
  readonly position: Position | null;
  readonly on: PointRef | null;
  readonly between: readonly [PointRef, PointRef] | null;
  readonly spacingM: readonly Interval[];
  readonly pins: readonly (readonly Interval[])[];
  readonly currentProbeM: Interval | null;
  readonly potentialProbeM: readonly Interval[];
  /** Depth of the rod when it was read, and where its reading was seen to drop on the way down. */
  readonly drivenM: Interval | null;
  readonly dropsAtM: Interval | null;
  readonly direction: string | null;
  readonly resistance: readonly StatedOhm[];
  readonly reads: StatedOhm | null;
  readonly readsV: Interval | null;
  readonly currentA: Interval | null;
  readonly frequencyHz: Interval | null;
  readonly source: SourcePlace;
}

export interface Soil {
  readonly layers: readonly { readonly resistivityOhmM: Interval | null; readonly thicknessM: Interval | null }[];
  readonly type: string | null;
  readonly frostM: Interval | null;
  readonly known: HowKnown;
  readonly source: SourcePlace;
}

export interface CodeRef {
  readonly document: string;
  readonly edition: string | null;
  readonly amendments: string | null;
}

export interface Agreement {
  readonly rule: string;
  readonly at: string | null;
  readonly reason: string | null;
  readonly by: string | null;
  readonly date: string | null;
}

export interface SiteHeader {
  readonly name: string | null;
  readonly region: Region;
  readonly units: 'ft' | 'm';
  /** A part's id, 'none' (field station), or 'unknown'. */
  readonly service: string;
  readonly supply: Supply;
  readonly codes: readonly CodeRef[];
  /** Whose conditions are asked, each in a column of its own; left out: the region's. */
  readonly codeSets?: readonly Region[];
  readonly prepared: { readonly by: string | null; readonly for: string | null; readonly date: string | null };
  readonly address: string | null;
  readonly owner: string | null;
  readonly permit: string | null;
  readonly revision: string | null;
  readonly northDeg: number | null;
  readonly claims: string | null;
  readonly standard: string | null;
  /** A file of findings that were agreed to stand, beside those of `agreed`. */
  readonly agreedIn?: string | null;
  readonly incomplete: readonly SectionName[];
  readonly without: readonly string[];
  readonly temporary: Answer;
  /** Who installed the lightning protection that is claimed, and its certificate; null: unknown; left out: none. */
  readonly certificate?: string | null;
  readonly stormPlan?: Answer;
  readonly servicesLocated?: Answer;
  readonly agreed: readonly Agreement[];
}

/** Something accepted that the reader wants confirmed: a slip of unit, a strange size. */
export interface Question {
  readonly path: string;
  readonly source: SourcePlace;
  /** A message key of the words room, with its values. */
  readonly key: string;
  readonly values: Readonly<Record<string, string | number>>;
}

export interface Site {
  readonly file: string;
  readonly header: SiteHeader;
  readonly soil: Soil | null;
  readonly buildings: readonly Building[];
  readonly places: readonly Place[];
  readonly electrodes: readonly Electrode[];
  readonly supports: readonly Support[];
  readonly antennas: readonly Antenna[];
  readonly bars: readonly Bar[];
  readonly arresters: readonly Arrester[];
  readonly equipment: readonly Equipment[];
  readonly lines: readonly Line[];
  readonly conductors: readonly Conductor[];
  readonly joints: readonly Joint[];
  readonly metalwork: readonly Metalwork[];
  readonly states: readonly State[];
  readonly readings: readonly Reading[];
  readonly prices: Readonly<Record<string, string | number>> | null;
  /** listed: typed; none: looked at, there are none; missing: not looked at. */
  readonly sections: Readonly<Record<SectionName, 'listed' | 'none' | 'missing'>>;
  readonly questions: readonly Question[];
  /** Defaults that had to be taken: where, what, and a message key for the effect. */
  readonly defaults: readonly { readonly path: string; readonly taken: string; readonly key: string }[];
}
