/**
 * The study: everything worked out about one site in one state, as one JSON document. Keys are a contract (added freely,
 * never renamed); base SI units with the unit in the key; lists in a total order; no clock. A figure that is not known
 * is null with its reason in `unknowns`; the open end of a range (`over 100 ft` has `high` Infinity) is null in JSON.
 * Report, drawings and comparisons read only this.
 */
import type { Interval } from '../units/interval.ts';
import type {
  Bounded,
  StudyDepthCurve,
  StudyEarthCondition,
  StudyEarthSolve,
  StudyRodLine,
  StudySoilFit,
  StudySoilOfElectrode,
  StudySpacingGain,
  StudySurface,
  StudyTransferred,
} from './study-earth.ts';

import type {
  StudyAgreement,
  StudyCondition,
  StudyFinding,
  StudyLook,
  StudySetCounts,
  StudySource,
} from './study-findings.ts';
import type { StudyPrices } from './study-prices.ts';
import type { StudyStrike } from './study-strike.ts';
import type { StudyWritten } from './written-lists.ts';

export type { Bounded } from './study-earth.ts';
export type * from './study-findings.ts';
export type * from './study-prices.ts';

export const studyFormat = 1;

export interface StudyPart {
  readonly id: string;
  readonly section: string;
  readonly kind: string;
  readonly present: string;
  readonly known: string;
  readonly condition: string;
  readonly where: string | null;
  readonly on: string | null;
  readonly place: string | null;
  readonly owner: string | null;
  readonly count: number;
  readonly note: string | null;
  readonly photos: readonly string[];
  /** East, north, up in metres; null where not known. */
  readonly positionM: readonly [number, number, number] | null;
  /** Points of a route (buried wire, pipe, conductor, line with known stops); [] where none is known. */
  readonly routeM: readonly (readonly [number, number, number])[];
  readonly heightM: Interval | null;
  /** The owner's own words, field by field, in the order of the file. */
  readonly typed: Readonly<Record<string, string>>;
  /** Group it belongs to; null for what no group holds (a line, a conductor's own joint). */
  readonly group: string | null;
}

/** A guy of a support, which is no part of its own and no bond. */
export interface StudyGuy {
  readonly id: string;
  readonly support: string;
  /** Place of its anchor: east, north, up in metres; null where not known. */
  readonly anchorM: readonly [number, number, number] | null;
  /** Where it holds its support; null: nobody is asked. */
  readonly heightM: Interval | null;
  readonly metal: string | null;
  readonly turnbuckle: string;
  /** Whether a jumper bridges the turnbuckle. */
  readonly bypass: string;
  readonly insulators: string;
  readonly note: string | null;
  /** The owner's own words, field by field, in the order of the file. */
  readonly typed: Readonly<Record<string, string>>;
}

export interface StudyWayPiece {
  readonly part: string;
  readonly from: string;
  readonly to: string;
  readonly body: string;
  readonly lengthM: Interval | null;
  readonly resistanceOhm: Interval | null;
  readonly inductanceH: Interval | null;
  readonly areaM2: Interval | null;
  readonly bendsDeg: number;
}

/** One entry of `paths`: from each antenna, mast, arrester, bar and box to its nearest electrode and to the service. */
export interface StudyPath {
  readonly from: string;
  readonly to: string;
  readonly aim: 'electrode' | 'service';
  readonly lengthM: Interval | null;
  readonly lengthAtLeastM: number;
  readonly resistanceOhm: Interval | null;
  readonly inductanceH: Interval | null;
  readonly bendsDeg: number;
  readonly through: readonly string[];
  readonly pieces: readonly StudyWayPiece[];
  readonly weakest: { readonly part: string; readonly areaM2: Interval } | null;
  readonly separatePaths: number;
  readonly separatePathsStrict: number;
  readonly byFeeder: boolean;
}

export interface StudyElectrode {
  readonly id: string;
  readonly aloneOhm: Bounded | null;
  /** Share of a current put into the service bar; null where the electrode is in another group or cannot be told. */
  readonly currentShare: number | null;
  /** Volt of the service's group per ampere that leaves here: what the others do to it included; null as for the share. */
  readonly inGroupOhm: number | null;
  readonly how: 'computed' | 'stated' | 'unknown';
  readonly formula: string | null;
  readonly source: StudySource | null;
  readonly group: string | null;
}

export interface Study {
  readonly format: number;
  readonly tool: { readonly name: string; readonly version: string };
  readonly site: {
    readonly name: string | null;
    readonly region: string;
    readonly units: 'ft' | 'm';
    readonly file: string;
    readonly checksum: string;
    readonly service: string;
    readonly supply: string;
    readonly address: string | null;
    readonly owner: string | null;
    readonly permit: string | null;
    readonly revision: string | null;
    readonly prepared: { readonly by: string | null; readonly for: string | null; readonly date: string | null };
    readonly northDeg: number;
    readonly claims: string | null;
    readonly temporary: string;
  };
  readonly state: {
    readonly id: string;
    readonly says: string | null;
    /** What the state says of the ground; left out in older studies. */
    readonly ground?: { readonly frozen: string; readonly dry: string; readonly wet: string };
    /** Parts that it takes as lost. */
    readonly lost?: readonly string[];
    /** Fields that it sets: `part.field` and the owner's words. */
    readonly set?: Readonly<Record<string, string>>;
  };
  /** States of the site, the one as typed left out. */
  readonly states: readonly { readonly id: string; readonly says: string | null }[];
  readonly codes: readonly {
    readonly document: string;
    readonly edition: string | null;
    readonly amendments: string | null;
  }[];
  /** Whose conditions were asked; several: each finding and condition says which, 'any' stands in all. */
  readonly codeSets?: readonly string[];
  /** What was agreed to stand: how firmly it was said, and what no longer answers to anything. */
  readonly agreements?: readonly StudyAgreement[];
  /** Buildings and named places, for the plan. */
  readonly buildings: readonly {
    readonly id: string;
    readonly cornersM: readonly (readonly [number, number, number])[];
    readonly heightM: Interval | null;
  }[];
  /** Named places that are no parts; left out in older studies. */
  readonly places?: readonly {
    readonly id: string;
    readonly positionM: readonly [number, number, number] | null;
    readonly where: string | null;
  }[];
  readonly parts: readonly StudyPart[];
  /** Support by support, in the order of the file. */
  readonly guys: readonly StudyGuy[];
  readonly assumptions: readonly { readonly path: string; readonly taken: string; readonly effect: string }[];
  readonly unknowns: readonly {
    readonly path: string;
    readonly why: string;
    readonly settle: string;
    readonly line: number | null;
    readonly column: number | null;
  }[];
  /** Accepted, but strange: the reader asks about it. */
  readonly questions: readonly {
    readonly path: string;
    readonly line: number;
    readonly column: number;
    readonly text: string;
  }[];
  readonly bonding: {
    readonly groups: readonly {
      readonly id: string;
      readonly electrodes: readonly string[];
      readonly parts: readonly string[];
      readonly hasService: boolean | null;
      readonly byFeeder: readonly string[];
    }[];
    readonly unbondedElectrodes: readonly string[] | null;
    readonly perhapsUnbonded: readonly { readonly electrode: string; readonly decidedBy: readonly string[] }[];
    readonly bridges: readonly {
      readonly groups: readonly [string, string];
      readonly tie: string;
      readonly parts: readonly string[];
      /** false: a tie on it may be there or not. */
      readonly certain: boolean;
    }[];
    readonly weakPoints: readonly {
      readonly at: string;
      readonly kind: 'joint' | 'conductor' | 'part';
      readonly losesService: readonly string[];
      readonly losesEarth: readonly string[];
      readonly electrodesLost: readonly string[];
      readonly noticed: string;
      readonly certain: boolean;
    }[];
    readonly openRings: readonly { readonly at: string; readonly why: string }[];
    readonly tiedToNothing: readonly string[];
    /** Ties between parts, for the diagram: conductors, mounts, shields, gaps. */
    readonly ties: readonly {
      readonly a: string;
      readonly b: string;
      readonly kind: string;
      readonly is: string;
      readonly part: string;
    }[];
  };
  readonly paths: readonly StudyPath[];
  readonly lines: readonly {
    readonly id: string;
    readonly kind: string;
    readonly stops: readonly string[];
    readonly conductors: readonly {
      readonly which: 'shield' | 'core' | 'protective';
      readonly count: number;
      readonly bondedAt: readonly string[];
      readonly protectedBy: readonly string[];
      readonly drainedBy: readonly string[];
      readonly unprotected: number | null;
    }[];
    readonly crossings: readonly {
      readonly building: string;
      readonly after: string;
      readonly before: string;
      readonly which: 'shield' | 'core' | 'protective';
      readonly count: number;
      readonly protector: string | null;
      readonly bondedTo: string | null;
      readonly certain: boolean;
    }[];
  }[];
  readonly reach: readonly {
    readonly part: string;
    readonly by: readonly { readonly line: string; readonly from: string }[];
  }[];
  /** The same as typed (state null) and in every state of the file. */
  readonly reachInStates: readonly { readonly state: string | null; readonly reach: Study['reach'] }[];
  /** Where the state takes lines off; [] as typed. Left out in older studies. */
  readonly gaps?: readonly {
    /** A plug, or a line and its stop, as the owner types it. */
    readonly at: string;
    readonly line: string;
    /** Of its stop, where only one side is taken off. */
    readonly side: 'before' | 'after' | null;
    /** How far the sides are apart; null: nobody knows. */
    readonly gapM: Interval | null;
    readonly end: 'loose' | 'grounded' | 'unknown';
    /** Up to which voltage no spark runs on across it: 5 kV a centimetre between points, from memory. */
    readonly withstandV: Interval | null;
    /** Across the widest-stressed opening of the line in the default strike; null: both sides do not reach the soil by metal. */
    readonly peakV: number | null;
  }[];
  readonly conductors: readonly {
    readonly id: string;
    readonly role: string;
    readonly from: string;
    readonly to: string;
    readonly wire: string | null;
    readonly areaM2: Interval | null;
    readonly lengthM: Interval | null;
    readonly resistanceOhm: Interval | null;
    readonly inductanceH: Interval | null;
    readonly buried: string;
    readonly bendsDeg: number;
  }[];
  /** What each electrode is made of; left out in older studies. */
  readonly electrodes?: readonly {
    readonly id: string;
    readonly kind: string;
    /** Rods of a group, radials of a star; 1 for what is one piece; null: nobody counted them. */
    readonly members: number | null;
    readonly metal: string | null;
    readonly wire: string | null;
    /** Of one piece: as typed, else along its route. */
    readonly lengthM: Interval | null;
  }[];
  readonly joints: readonly {
    readonly id: string;
    readonly kind: string | null;
    readonly holds: readonly string[];
    readonly on: string | null;
    readonly resistanceOhm: Interval | null;
    readonly listed: string;
    readonly forBurial: string;
    readonly buried: string;
    readonly accessible: string;
    readonly condition: string;
  }[];
  readonly arresters: readonly {
    readonly id: string;
    readonly kind: string;
    readonly on: string | null;
    readonly lines: readonly string[];
    readonly where: string | null;
    readonly leadM: Interval | null;
    readonly listed: string;
    readonly sparkoverV: Interval | null;
    readonly bonded: string;
  }[];
  readonly earth: {
    /** Of the site's own electrodes in the service's group, at the service bar, neutral and outside lines lifted. */
    readonly resistanceOhm: Bounded | null;
    readonly withServicesOhm: Bounded | null;
    readonly electrodes: readonly StudyElectrode[];
    readonly groups: readonly { readonly id: string; readonly resistanceOhm: Bounded | null }[];
    readonly soil: {
      readonly layers: readonly { readonly resistivityOhmM: Interval | null; readonly thicknessM: Interval | null }[];
      readonly type: string | null;
      readonly known: string;
    } | null;
    /** Each part that reaches an electrode by bonds, to remote earth at the best of its points; by id. */
    readonly parts: readonly { readonly id: string; readonly resistanceOhm: Bounded | null }[];
    /** Coupling through soil that had to be left out, by pair of electrodes. */
    readonly couplingLeftOut: readonly (readonly [string, string])[];
    /** How well the network was solved: the largest current imbalance relative to what was put in, and where. */
    readonly residual: number;
    readonly worstAt: string | null;
    /** The ground as it is first; where a page shows them also that of every state and season. */
    readonly conditions: readonly StudyEarthCondition[];
    /** null: no four-pin reading. */
    readonly soilFit: StudySoilFit | null;
    readonly soilOfElectrodes: readonly StudySoilOfElectrode[];
    /** Readings that no one soil can give, each in a sentence. */
    readonly contradictions: readonly { readonly at: readonly string[]; readonly text: string }[];
    /** Readings that are not the resistance to earth that they look like. */
    readonly readingTraps: readonly { readonly reading: string; readonly at: string; readonly text: string }[];
    readonly transferred: readonly StudyTransferred[];
    readonly depthCurves: readonly StudyDepthCurve[];
    readonly spacingGains: readonly StudySpacingGain[];
    readonly rodLines: readonly StudyRodLine[];
    /** One per group of electrodes with places; [] in a study that nobody draws. */
    readonly surfaces: readonly StudySurface[];
    /** null: nothing could be solved in the soil. */
    readonly solve: StudyEarthSolve | null;
  };
  /** The default strike, with what only a page shows; empty where nobody asked for that, or nothing is there to be struck. */
  readonly strikes: readonly StudyStrike[];
  readonly findings: readonly StudyFinding[];
  readonly conditions: readonly StudyCondition[];
  /** What could not be told as a list of things to look at, the one that settles most first. */
  readonly lookAt?: readonly StudyLook[];
  readonly verdict: {
    readonly hazards: number;
    readonly defects: number;
    readonly advices: number;
    readonly cannotTell: number;
    readonly agreed: number;
    /** With several code sets: the counts of each; those above are of the first. */
    readonly bySet?: readonly StudySetCounts[];
    /** Three sentences. */
    readonly text: readonly string[];
    /** The first three things to do, most pressing first. */
    readonly actions: readonly { readonly finding: string; readonly text: string }[];
  };
  /** What things cost the owner; null or left out: the file has no prices. */
  readonly prices?: StudyPrices | null;
  /** What works have to know to edit the file; left out in older studies. */
  readonly written?: StudyWritten;
  /** Documents and formulas that figures and rules rest on, each once. */
  readonly sources: readonly StudySource[];
}
