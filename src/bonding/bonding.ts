/** What the bonding room works out about one site in one state. Ids are the owner's; lists are in a total order. */
import type { Interval } from '../units/interval.ts';
import type { Tie } from './tie.ts';

export interface Group {
  /** The first id in order. */
  readonly id: string;
  readonly electrodes: readonly string[];
  readonly parts: readonly string[];
  /** null when the service is unknown. */
  readonly hasService: boolean | null;
  /** Parts that belong only through a feeder's protective conductor. */
  readonly byFeeder: readonly string[];
}

export interface PerhapsUnbonded {
  readonly electrode: string;
  /** Paths of the fields that decide. */
  readonly decidedBy: readonly string[];
}

export interface Bridge {
  readonly groups: readonly [string, string];
  /** The weakest kind of tie on it, as the tie that is not a bond. */
  readonly tie: Tie['kind'];
  /** Parts that it goes through, from the first group to the second: lines, boxes, conductors between them. */
  readonly parts: readonly string[];
  /** false: a tie on it may be there or not. */
  readonly certain: boolean;
}

export interface WeakPoint {
  /** Id of the joint, conductor or part whose single loss undoes something. */
  readonly at: string;
  readonly kind: 'joint' | 'conductor' | 'part';
  readonly losesService: readonly string[];
  readonly losesEarth: readonly string[];
  readonly electrodesLost: readonly string[];
  readonly noticed: Tie['noticed'];
  /** false: only with the ties known to be there; an unknown tie may be a second way. */
  readonly certain: boolean;
}

/** One piece of a way. */
export interface WayPiece {
  readonly part: string;
  readonly from: string;
  readonly to: string;
  readonly body: Tie['body'];
  readonly lengthM: Interval | null;
  readonly resistanceOhm: Interval | null;
  readonly inductanceH: Interval | null;
  readonly areaM2: Interval | null;
  readonly bendsDeg: number;
}

export interface Way {
  readonly from: string;
  readonly to: string;
  /** null where one piece has no known length; `lengthAtLeastM` sums what is known. */
  readonly lengthM: Interval | null;
  readonly lengthAtLeastM: number;
  readonly resistanceOhm: Interval | null;
  readonly inductanceH: Interval | null;
  readonly bendsDeg: number;
  /** Parts and joints passed, ends left out. */
  readonly through: readonly string[];
  readonly pieces: readonly WayPiece[];
  /** The span of least section; null where none is known. */
  readonly weakest: { readonly part: string; readonly areaM2: Interval } | null;
  readonly separatePaths: number;
  readonly separatePathsStrict: number;
  /** Goes through a feeder's protective conductor. */
  readonly byFeeder: boolean;
}

/** The two ways that are asked for of each antenna, mast, arrester, bar and box; null where there is none. */
export interface WaysOfPart {
  readonly part: string;
  readonly toElectrode: Way | null;
  readonly toService: Way | null;
  /** Whether a way exists if every unknown tie is there; with the ties that decide. */
  readonly perhaps: { readonly toElectrode: readonly string[]; readonly toService: readonly string[] };
}

export interface LineConductor {
  readonly which: 'shield' | 'core' | 'protective';
  readonly count: number;
  /** Points where it is bonded (a shield) or lands on a protective bar. */
  readonly bondedAt: readonly string[];
  readonly protectedBy: readonly string[];
  /** What drains static from it: antenna, bleed, choke, stub; by part id. */
  readonly drainedBy: readonly string[];
  /** Wires that no protector covers; null: cannot tell. */
  readonly unprotected: number | null;
}

export interface Crossing {
  readonly line: string;
  readonly building: string;
  /** The stops before (outside) and after (inside) the wall. */
  readonly after: string;
  readonly before: string;
  readonly which: 'shield' | 'core' | 'protective';
  readonly count: number;
  /** null: none. */
  readonly protector: string | null;
  /** What the shield or protector is bonded to at or before the wall; null: none. */
  readonly bondedTo: string | null;
  /** false: a stop does not say where it is, so the crossing itself is not known. */
  readonly certain: boolean;
}

export interface LineFacts {
  readonly id: string;
  readonly kind: string;
  readonly conductors: readonly LineConductor[];
  readonly crossings: readonly Crossing[];
}

export interface Reach {
  readonly part: string;
  /** A line or conductor that still reaches the part in this state, and what it comes from. */
  readonly by: readonly { readonly line: string; readonly from: string }[];
}

/** A tie between two parts, as a diagram draws it: conductors with their joints contracted, mounts, shields, gaps. */
export interface PartTie {
  readonly a: string;
  readonly b: string;
  readonly kind: Tie['kind'];
  readonly is: Tie['is'];
  /** The conductor, line or arrester that makes it; the part itself for a mount. */
  readonly part: string;
}

/** A ring drawn closed that is not, with what is missing. */
export interface OpenRing {
  readonly at: string;
  readonly why: 'not closed' | 'unknown';
}

export interface Bonding {
  readonly state: string;
  readonly service: { readonly part: string | null; readonly is: 'known' | 'none' | 'unknown' };
  readonly groups: readonly Group[];
  /** null with the service unknown. */
  readonly unbondedElectrodes: readonly string[] | null;
  readonly perhapsUnbonded: readonly PerhapsUnbonded[];
  /** Groups that may go on by a wire that nobody traced, or by a bond to nobody knows what: id → fields that decide. */
  readonly openEnds: ReadonlyMap<string, readonly string[]>;
  /** Groups with electrodes that ties which may be there would join to others. */
  readonly perhapsJoined: ReadonlySet<string>;
  readonly bridges: readonly Bridge[];
  readonly weakPoints: readonly WeakPoint[];
  readonly ways: readonly WaysOfPart[];
  readonly lines: readonly LineFacts[];
  readonly reach: readonly Reach[];
  /** Each pair of parts, kind and maker once; by a, b, part. */
  readonly ties: readonly PartTie[];
  readonly openRings: readonly OpenRing[];
  /** Metal parts that no bond ties to anything: groups of their own on which nothing lands. */
  readonly tiedToNothing: readonly string[];
  /** Group id of each part, by permanent metal with feeders / without feeders. */
  readonly groupOf: ReadonlyMap<string, string>;
  /** Electrodes that each part reaches when only these kinds of tie count. */
  readonly serviceBy: {
    /** Parts that reach the service by bonds. */
    readonly bonds: ReadonlySet<string>;
    /** Parts that reach it when shields count too. */
    readonly bondsAndShields: ReadonlySet<string>;
    /** Parts that reach it when cords count too (no shields). */
    readonly bondsAndCords: ReadonlySet<string>;
    /** Parts that may reach it by bonds if every unknown tie is there. */
    readonly perhaps: ReadonlySet<string>;
  };
  readonly earthBy: {
    readonly bonds: ReadonlySet<string>;
    readonly perhaps: ReadonlySet<string>;
  };
}
