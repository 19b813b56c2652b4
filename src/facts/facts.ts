/**
 * The one list of what a rule may ask: name and type. Each is worked out at most once (see facts-of.ts). A rule gets
 * only the facts that it names.
 */

import type { Bonding } from '../bonding/bonding.ts';
import type { ReachInState } from '../bonding/reach-in-states.ts';
import type { Metal } from '../materials/metals.ts';
import type { Wire } from '../materials/wire.ts';
import type { AloneOhm } from '../network/alone-ohm.ts';
import type { EarthCondition } from '../network/earth-conditions.ts';
import type { MeasuredSoil } from '../network/measured-soil.ts';
import type { ReadingTrap } from '../network/reading-traps.ts';
import type { SiteSounding } from '../network/site-sounding.ts';
import type { SoilAnswers } from '../network/soil-answers.ts';
import type { TransferredShare } from '../network/transferred-shares.ts';
import type {
  Answer,
  Arrester,
  Condition,
  Conductor,
  Electrode,
  Equipment,
  SectionName,
  Site,
  SiteHeader,
  Support,
} from '../site/site.ts';
import type { Interval } from '../units/interval.ts';
import type { StrikeFacts } from './strike-facts.ts';

/** What a conductor is by what it joins, unless the owner says otherwise. */
export type ConductorRole =
  | 'service electrode wire'
  | 'electrode tie'
  | 'mast lead'
  | 'arrester lead'
  | 'bond'
  | 'down conductor'
  | 'protective'
  | 'unknown';

export interface ConductorFacts {
  readonly id: string;
  readonly part: Conductor;
  readonly role: ConductorRole;
  readonly wire: Wire | null;
  readonly areaM2: Interval | null;
  readonly lengthM: Interval | null;
  readonly resistanceOhm: Interval | null;
  readonly inductanceH: Interval | null;
  /** Whether any of it is in soil, indoors. */
  readonly inSoil: Answer;
  readonly indoors: Answer;
  /** Ids of the parts at its ends and passes; null for an end nobody knows. */
  readonly ends: readonly [string | null, string | null];
  readonly passes: readonly string[];
  /** Its only way: losing it takes an antenna, mast or arrester off earth. */
  readonly deadEnd: boolean;
  readonly bends: readonly { readonly angleDeg: Interval | null; readonly radiusM: Interval | null }[];
  /** Whether it lies on the best way of a mast, antenna, arrester or entry panel to earth: a lightning path. */
  readonly lightningPath: boolean;
}

export interface JointFacts {
  /** `clamp1`, `c1:E1`, `c1:from`, `a1:entry`. */
  readonly id: string;
  readonly kind: string | null;
  readonly metal: Metal | null;
  /** Conductors (and mounted parts) that it holds. */
  readonly holds: readonly string[];
  /** The part that it is on. */
  readonly on: string | null;
  /** Metals of the wires it holds and of the part it is on. */
  readonly wireMetals: readonly (Metal | null)[];
  readonly onMetal: Metal | null;
  readonly buried: Answer;
  readonly listed: Answer;
  readonly forBurial: Answer;
  readonly accessible: Answer;
  readonly condition: Condition;
  readonly resistanceOhm: Interval | null;
  /** A sheet of another metal under the clamp. */
  readonly shim: Metal | null;
  readonly bolts: number | null;
  /** How many wires it is listed to hold; null: nobody said. */
  readonly forWires: number | null;
  readonly cleaned: Answer;
  readonly contactM2: Interval | null;
  readonly sealed: Answer;
  /** Made to be opened with a tool for measuring. */
  readonly forTest: Answer;
  /** false for an end typed `joints: none`. */
  readonly typed: boolean;
}

export interface ElectrodeFacts {
  readonly id: string;
  readonly part: Electrode;
  readonly aloneOhm: { readonly value: number | null; readonly low: number; readonly high: number } | null;
  readonly how: 'computed' | 'stated' | 'unknown';
  readonly formula: string | null;
  readonly source: AloneOhm['source'];
  /** What is not known and keeps the resistance open. */
  readonly missing: readonly string[];
  /** Measured alone by a reading or stated as such. */
  readonly measuredOhm: { readonly ohm: Interval; readonly overRange: boolean } | null;
  /** Group of the electrode and how many electrodes of any kind (rods counted singly) are in it. */
  readonly group: string | null;
  readonly electrodesInGroup: number;
}

export interface MastFacts {
  readonly id: string;
  readonly part: Support;
  readonly metal: Answer;
  readonly antennas: readonly string[];
}

export interface ArresterFacts {
  readonly id: string;
  readonly part: Arrester;
  readonly lines: readonly string[];
  /** Kinds of those lines, in the same order. */
  readonly lineKinds: readonly string[];
  readonly where: string | null;
  readonly bonded: Answer;
}

export interface BoxFacts {
  readonly id: string;
  readonly part: Equipment;
  readonly where: string | null;
  /** Mains lines that end on it. */
  readonly mains: readonly string[];
}

export interface EarthFacts {
  /** Service's own group to remote earth. */
  readonly resistanceOhm: { readonly value: number | null; readonly low: number; readonly high: number } | null;
  readonly groups: readonly {
    readonly id: string;
    readonly resistanceOhm: { readonly value: number | null; readonly low: number; readonly high: number } | null;
  }[];
  /** Resistance to remote earth of every part that reaches one. */
  readonly ofPart: ReadonlyMap<string, { readonly value: number | null; readonly low: number; readonly high: number }>;
  readonly currentShare: ReadonlyMap<string, number>;
  readonly couplingLeftOut: readonly (readonly [string, string])[];
  /** Supports, guys and electrodes that may leak too: in for the low figures alone. */
  readonly perhaps: readonly string[];
  /** What only an unknown tie joins to the service's group: likewise. */
  readonly perhapsTied: readonly string[];
  readonly residual: number;
  readonly worstAt: string | null;
}

export interface GroundFacts {
  /** The ground as it is in the state of the study first, then in other conditions. */
  readonly conditions: readonly EarthCondition[];
  readonly transferred: readonly TransferredShare[];
  /** What electrodes measured alone say of the soil. */
  readonly measured: MeasuredSoil;
  /** Readings that are not what they look like. */
  readonly traps: readonly ReadingTrap[];
  /** The four-pin readings; null: there are none, or the soil was typed and only a page shows them. */
  readonly sounding: SiteSounding | null;
  /** What only a page shows: curves and the surface. */
  readonly answers: SoilAnswers;
}

export interface Facts {
  readonly site: Site;
  readonly header: SiteHeader;
  /** Whether the region whose conditions are asked is one of isAmerican(): a rule that asks no more of it says the same in all those. */
  readonly isAmerican: boolean;
  /** Whether a section was typed, typed as none, or not looked at; `incomplete` ones count as missing for what is not in them. */
  readonly sections: Readonly<Record<SectionName, 'listed' | 'none' | 'missing'>>;
  readonly bonding: Bonding;
  readonly electrodes: readonly ElectrodeFacts[];
  readonly masts: readonly MastFacts[];
  readonly conductors: readonly ConductorFacts[];
  readonly joints: readonly JointFacts[];
  readonly arresters: readonly ArresterFacts[];
  readonly boxes: readonly BoxFacts[];
  readonly earth: EarthFacts;
  /** What the soil does; no rule asks for it. */
  readonly ground: GroundFacts;
  /** What still reaches each box, as typed and in every state of the file. */
  readonly reachInStates: readonly ReachInState[];
  /** The median first negative stroke at the top of the highest support, else at the first antenna. */
  readonly strike: StrikeFacts;
}

export type FactName = keyof Facts;
