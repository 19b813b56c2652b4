/**
 * The parts of a site as values, in SI units: what the owner typed of each. Unknown is null for a figure or a word and
 * 'unknown' for a yes-or-no; it is never a made-up value.
 */
import type { Metal } from '../materials/metals.ts';
import type { Wire } from '../materials/wire.ts';
import type { Interval } from '../units/interval.ts';

export type Answer = 'yes' | 'no' | 'unknown';
export type HowKnown = 'seen' | 'told' | 'measured' | 'assumed' | 'planned';
export type Condition = 'sound' | 'loose' | 'corroded' | 'open' | 'unknown';

export const partSections = [
  'electrodes',
  'supports',
  'antennas',
  'bars',
  'arresters',
  'equipment',
  'lines',
  'conductors',
  'joints',
  'metalwork',
] as const;
/** Sections whose members are parts of the site, in the order of the file format. */
export type PartSection = (typeof partSections)[number];

/** Where in the source text something was typed; 1-based. */
export interface SourcePlace {
  readonly line: number;
  readonly column: number;
}

/** Metres east, north, up of the site's origin; null where not known. */
export type Position = readonly [eastM: number, northM: number, upM: number];

/** A point of the site that a part, a place or a conductor's end names. */
export interface PointRef {
  /** As typed: `tower@45 ft`, `ring@12 ft`, `t1-rods.2`, `guy-1@anchor`, `street`, `unknown`. */
  readonly text: string;
  /** The part meant, 'street', or null for unknown. */
  readonly part: string | null;
  /** Height on a support, or distance along a wire's route; metres. */
  readonly atM: Interval | null;
  /** `@top`, `@base`, `@tower`, `@anchor`, `@entry` or null. */
  readonly mark: 'top' | 'base' | 'tower' | 'anchor' | null;
  /** `.leg2` → 'leg2', `.2` → '2'. */
  readonly member: string | null;
}

/** Where a part is: outside, a building's id ('inside' when no building is typed), or null for unknown. */
export type Where = string | null;

/** What every part may carry. */
export interface PartBase {
  readonly id: string;
  readonly section: PartSection;
  readonly kind: string;
  readonly present: Answer;
  readonly known: HowKnown;
  /** How single fields are known where it differs from the part: field name → how. */
  readonly fieldKnown: Readonly<Record<string, HowKnown>>;
  readonly condition: Condition;
  readonly position: Position | null;
  /** The named place it stands at, if one was named. */
  readonly place: string | null;
  readonly where: Where;
  readonly on: PointRef | null;
  /** null: nothing said (the format's default applies). */
  readonly bonded: Answer | null;
  readonly near: readonly { readonly part: string; readonly distanceM: Interval | null }[];
  readonly withinReach: readonly string[];
  readonly owner: string | null;
  readonly count: number;
  readonly note: string | null;
  readonly photo: readonly string[];
  readonly source: SourcePlace;
  /** The fields that the owner typed, as typed: field name → text. For the report and for messages. */
  readonly typed: Readonly<Record<string, string>>;
}

/** A resistance the owner states or read from an instrument. `over range` is {low: 0, high: Infinity, overRange}. */
export interface StatedOhm {
  readonly ohm: Interval;
  readonly overRange: boolean;
}

export type ElectrodePurpose = 'service' | 'antenna' | 'tower' | 'communications' | 'lightning' | 'equipment';

export interface Electrode extends PartBase {
  readonly section: 'electrodes';
  readonly metal: Metal | null;
  readonly topM: Interval | null;
  readonly lengthM: Interval | null;
  readonly diameterM: Interval | null;
  readonly angleDeg: Interval | null;
  readonly widthM: Interval | null;
  readonly heightM: Interval | null;
  readonly depthM: Interval | null;
  readonly layout: 'line' | 'triangle' | 'square' | 'ring' | 'star' | null;
  readonly spacingM: Interval | null;
  readonly radiusM: Interval | null;
  /** Members of a `rods` group, radials of a star; null: nobody counted them. */
  readonly members: number | null;
  /** What its owner put it in for; [] where nothing was said. */
  readonly serves: readonly ElectrodePurpose[];
  readonly listed: Answer;
  /** Covered by a skin that does not conduct. */
  readonly painted: Answer;
  readonly coatingM: Interval | null;
  readonly guarded: Answer;
  readonly standsIn: 'undisturbed soil' | 'compacted fill' | 'loose fill' | 'gravel' | null;
  readonly gravelM: Interval | null;
  readonly surface: 'open ground' | 'eaves' | 'paving' | null;
  /** Length that touches soil, where that was said. */
  readonly inSoilM: Interval | null;
  readonly thicknessM: Interval | null;
  readonly lattice: Answer;
  readonly concreteM: Interval | null;
  readonly membrane: Answer;
  /** Of a water pipe: metal all along. */
  readonly continuous: Answer;
  readonly joined: Answer;
  readonly wire: Wire | null;
  readonly route: readonly RoutePoint[] | null;
  readonly closed: Answer;
  readonly areaM2: Interval | null;
  readonly stands: 'on edge' | 'flat' | null;
  readonly cage: 'tied' | 'not tied' | 'unknown';
  readonly holeM: Interval | null;
  readonly backfill: string | null;
  readonly backfillOhmM: Interval | null;
  readonly cover: string | null;
  readonly resistance: StatedOhm | null;
  readonly measured: 'alone' | 'bonded' | null;
}

export type RoutePoint = { readonly position: Position | null; readonly part: PointRef | null };

export interface Guy {
  readonly id: string;
  readonly anchor: Position | string | null;
  /** `none`: rope or another thing that does not conduct. */
  readonly metal: Metal | 'none' | null;
  readonly turnbuckle: Answer;
  readonly bypass: Answer;
  readonly insulators: Answer;
  readonly note: string | null;
  /** Its fields as typed: field name → text. */
  readonly typed: Readonly<Record<string, string>>;
  readonly source: SourcePlace;
}

export interface Support extends PartBase {
  readonly section: 'supports';
  readonly heightM: Interval | null;
  readonly legs: number | null;
  readonly faceM: Interval | null;
  /** null: unknown; 'none': not of metal. */
  readonly metal: Metal | 'none' | null;
  readonly sections: 'one piece' | 'welded' | 'bolted' | 'sliding' | 'hinged' | null;
  readonly jumpers: Answer;
  readonly base: string | null;
  readonly reach: 'public' | 'fenced' | 'signed' | null;
  readonly insulatingSurface?: Answer;
  readonly wallM?: Interval | null;
  readonly guys: readonly Guy[];
}

export interface Antenna extends PartBase {
  readonly section: 'antennas';
  readonly dcPath: Answer;
  readonly touchesSupport: Answer;
  readonly bandHz: Interval | null;
  readonly heightM: Interval | null;
  readonly lengthM: Interval | null;
  readonly base: 'insulated' | 'grounded' | null;
  /** What a wire antenna is made of. */
  readonly wire?: Wire | null;
  /** On the face of a building: below the edge of the roof, and out from the wall. */
  readonly belowRoofM?: Interval | null;
  readonly fromWallM?: Interval | null;
}

export interface Bar extends PartBase {
  readonly section: 'bars';
  readonly terminals: number | null;
  readonly onCover: Answer;
  /** Of the plate, seen from the front. */
  readonly areaM2: Interval | null;
  readonly sectionM2?: Interval | null;
  readonly metal?: Metal | null;
  /** Kind of the joint by which a bar, arrester or box hangs on what it is `on`. */
  readonly joint: string | null;
}

export interface Arrester extends PartBase {
  readonly section: 'arresters';
  readonly sparkoverV: Interval | null;
  readonly ratedPowerW: Interval | null;
  readonly arcV: Interval | null;
  readonly clamping: { readonly voltageV: Interval; readonly currentA: Interval } | null;
  readonly bandHz: Interval | null;
  readonly bleed: Answer;
  readonly leadM: Interval | null;
  readonly lineLeadM?: Interval | null;
  /** Of one indoors: along its line from where that goes through the wall. */
  readonly fromEntryM?: Interval | null;
  /** Something that burns easily is close to it. */
  readonly nearFuel?: Answer;
  readonly listed: Answer;
  readonly series: 'series' | 'shunt' | null;
  /** Number of wires of its line that it covers; 'all' where the owner says so or the line has one. */
  readonly covers: number | 'all' | null;
  /** Of a protector of the mains. */
  readonly testClass?: 'I' | 'II' | 'III' | null;
  readonly between: readonly [PointRef, PointRef] | null;
  readonly joint: string | null;
}

export interface Equipment extends PartBase {
  readonly section: 'equipment';
  readonly powerW: Interval | null;
  readonly swr: Interval | null;
  readonly neutralBonded: Answer;
  /** Of a source that feeds a panel: the transfer switch switches the neutral too. */
  readonly neutralSwitched: Answer;
  readonly ratingA: Interval | null;
  readonly phases: number | null;
  readonly supply: string | null;
  readonly serviceWire: Wire | null;
  readonly electrodeWire: Wire | null;
  readonly serial: string | null;
  readonly joint: string | null;
  /** What a switch does with the ports that it does not use. */
  readonly unusedPorts?: 'grounded' | 'floating' | null;
}

/** One stop of a line, in order. */
export type Stop =
  /** An antenna, bar, arrester, box, metalwork or point of a support that the line meets. */
  | { readonly is: 'part'; readonly at: PointRef; readonly source: SourcePlace }
  /** The shield is bonded here; the line goes on. */
  | { readonly is: 'bond'; readonly at: PointRef; readonly source: SourcePlace }
  /** A connector pulled by hand; tied to nothing. */
  | { readonly is: 'plug'; readonly id: string; readonly where?: Where; readonly source: SourcePlace }
  /** A bend of the route, tied to nothing. */
  | {
      readonly is: 'bend';
      readonly at: PointRef | null;
      readonly position: Position | null;
      readonly where: Where;
      readonly source: SourcePlace;
    }
  | { readonly is: 'street'; readonly source: SourcePlace }
  | { readonly is: 'unknown'; readonly source: SourcePlace };

export interface Line extends PartBase {
  readonly section: 'lines';
  readonly path: readonly Stop[];
  /** One per piece between named stops (bends add none); null where unknown. */
  readonly lengthsM: readonly (Interval | null)[];
  /** The whole, where only that was typed. */
  readonly lengthM: Interval | null;
  readonly cable: string | null;
  readonly impedanceOhm: Interval | null;
  readonly wires: number | null;
  readonly buried: Answer;
  readonly overhead: Answer;
  readonly enclosure: string | null;
  readonly protectiveConductor: Answer;
  readonly along: { readonly part: string; readonly spacingM: Interval | null } | null;
  readonly runs: string | null;
  readonly metalInside: Answer;
  readonly voltageV?: Interval | null;
  /** How far insulators hold an open line off the wall. */
  readonly standoffM?: Interval | null;
  readonly guarded?: Answer;
  readonly dripLoop?: Answer;
}

/** A wire's meeting with a part: on a named clamp of the `joints` section, on a joint of its own, or as one piece. */
export interface JointUse {
  /** Id of the `joints` section, or null for a joint of the conductor's own. */
  readonly named: string | null;
  readonly kind: string | null;
  readonly metal: Metal | null;
  readonly resistance: StatedOhm | null;
  readonly condition: Condition;
  readonly listed: Answer;
  readonly forBurial: Answer;
  readonly accessible: Answer;
  /** A sheet of another metal between the clamp and what it is on. */
  readonly shim?: Metal | null;
  readonly bolts?: number | null;
  /** How many wires it is listed to hold. */
  readonly forWires?: number | null;
  readonly cleaned?: Answer;
  /** Where a lug or strap lies flat. */
  readonly contactM2?: Interval | null;
  readonly sealed?: Answer;
  /** Made to be opened with a tool for measuring. */
  readonly forTest?: Answer;
  readonly source: SourcePlace;
}

export interface Conductor extends PartBase {
  readonly section: 'conductors';
  readonly from: PointRef;
  readonly to: PointRef;
  readonly passes: readonly { readonly at: PointRef; readonly joint: JointUse }[];
  readonly wire: Wire | null;
  readonly lengthM: Interval | null;
  readonly lengthsM: readonly (Interval | null)[];
  readonly route: readonly RoutePoint[] | null;
  readonly resistance: StatedOhm | null;
  readonly inductanceH: Interval | null;
  /** Depth below grade; 'yes': in soil, depth unknown; 'no': not in soil; null: nobody said. */
  readonly buriedM: Interval | 'yes' | 'no' | null;
  readonly bends: readonly { readonly angleDeg: Interval | null; readonly radiusM: Interval | null }[];
  /** true: `joints: none`, the ends are one piece with what they meet. */
  readonly onePiece: boolean;
  readonly fromJoint: JointUse;
  readonly toJoint: JointUse;
  readonly splices: readonly JointUse[];
  readonly role: string | null;
  readonly along: { readonly part: string; readonly spacingM: Interval | null } | null;
  readonly runs: string | null;
  /** A label that says not to take it off. */
  readonly labelled?: Answer;
  readonly enclosure: string | null;
  /** Where a pipe of metal round it is bonded to it. */
  readonly enclosureBonded?: 'both ends' | 'one end' | 'no' | null;
  /** Covered where it could be damaged, or out of reach. */
  readonly guarded?: Answer;
  /** Any of it runs upward on its way to ground. */
  readonly rises?: Answer;
  readonly loop?: { readonly openingM: Interval | null; readonly lengthM: Interval | null } | null;
  readonly fixingsM?: Interval | null;
  readonly aboveSoilM?: Interval | null;
}

export interface Joint extends PartBase {
  readonly section: 'joints';
  readonly metal: Metal | null;
  readonly listed: Answer;
  readonly forBurial: Answer;
  readonly accessible: Answer;
  readonly resistance: StatedOhm | null;
  readonly bolts: number | null;
  /** How many wires it is listed to hold. */
  readonly forWires?: number | null;
  readonly shim?: Metal | null;
  readonly cleaned?: Answer;
  /** Where a lug or strap lies flat. */
  readonly contactM2?: Interval | null;
  readonly sealed?: Answer;
  /** Made to be opened with a tool for measuring. */
  readonly forTest?: Answer;
}

export interface Metalwork extends PartBase {
  readonly section: 'metalwork';
  readonly route: readonly RoutePoint[] | null;
  readonly metal: Metal | null;
  readonly buried: Answer;
  readonly depthM: Interval | null;
  readonly continuous: Answer;
  readonly joints: string | null;
  readonly sizeM: Interval | null;
  /** Gap to what is below or beside it. */
  readonly clearanceM?: Interval | null;
  readonly voltageV?: Interval | null;
  /** From the entry of a pipe to the clamp of its bond. */
  readonly clampFromEntryM?: Interval | null;
}

export type Part = Electrode | Support | Antenna | Bar | Arrester | Equipment | Line | Conductor | Joint | Metalwork;
