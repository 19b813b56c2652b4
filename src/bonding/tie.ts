import type { Interval } from '../units/interval.ts';

/**
 * How two nodes hang together. Only `metal` and, for groups, `feeder` are bonds.
 *  metal       permanent metal: bonding conductor, tower steel with bonded sections, strap, enclosure, clamp
 *  feeder      protective conductor of a fixed feeder between panels: counts for groups, never for the strike
 *  shield      coax between two points: unplugged by hand, couples into the core
 *  cord        protective conductor of a cord or an outlet circuit
 *  case        a case that passes nothing on, between two things that land on it
 *  loose-metal metalwork not known to be continuous, a sliding joint without jumper; conducts in a surge
 *  guy         a guy wire
 *  core        a core, wire or other current-carrying conductor of a line
 *  gap         conducts only while a surge has fired it: gas tube, protector, air gap of a pulled plug
 *  drain       passes static only: bleed resistor, choke, shorted stub, antenna joined at DC
 */
export type TieKind =
  | 'metal'
  | 'feeder'
  | 'shield'
  | 'cord'
  | 'case'
  | 'loose-metal'
  | 'guy'
  | 'core'
  | 'gap'
  | 'drain';

/** What a tie physically is: decides its resistance and how it is reported. */
export type TieBody =
  /** A span of wire, strap, tube or of a support's own metal. */
  | 'span'
  /** The contact of a joint with the part that it is on. */
  | 'contact'
  /** Something not described: `bonded: yes` without a conductor. */
  | 'undescribed';

/** Attributes of an edge of the bonding graph. An edge exists only when the tie is there or unknown. */
export interface Tie {
  readonly kind: TieKind;
  readonly body: TieBody;
  /** there: known to be; unknown: may be. */
  readonly is: 'there' | 'unknown';
  /** For an unknown tie: path of the field that decides, such as `arresters.phone-block.bonded`. */
  readonly decidedBy: string | null;
  /** The part (conductor, joint, support, line, arrester, …) it belongs to. */
  readonly part: string;
  readonly lengthM: Interval | null;
  /** Range of DC resistance; null: unknown. Zero is allowed (one piece). */
  readonly resistanceOhm: Interval | null;
  /** Inductance of the straight run, for spans; null: unknown or not asked. */
  readonly inductanceH: Interval | null;
  readonly areaM2: Interval | null;
  /** Sum of bends on it, degrees. */
  readonly bendsDeg: number;
  /** Would somebody notice its loss. */
  readonly noticed: 'visible' | 'buried' | 'in a wall' | 'unknown';
  /** Which span of its conductor it is, from 0. */
  readonly span?: number;
}

export type NodeKind =
  | 'electrode'
  | 'joint'
  /** A point of a wire that passes a clamp uncut; the wire is whole there. */
  | 'wire'
  | 'bar'
  | 'support'
  | 'antenna'
  | 'arrester'
  | 'case'
  /** What lands on a case that passes nothing on; one node per landing. */
  | 'landing'
  | 'shield'
  | 'core'
  | 'protective'
  | 'metalwork'
  | 'guy'
  | 'street'
  | 'unknown';

/** Attributes of a node of the bonding graph. */
export interface NodeFacts {
  readonly kind: NodeKind;
  /** The part that it belongs to; 'street' and 'unknown:<where>' are no parts of the site. */
  readonly part: string;
  /** Height above grade where it is known, metres. */
  readonly heightM: number | null;
  readonly noticed: Tie['noticed'];
}
