import { exact, type Interval } from '../units/interval.ts';
import { nearName } from '../units/near-name.ts';
import { type Citation, cite, commonPractice } from './source.ts';

export const jointNames = [
  'exothermic weld',
  'irreversible crimp',
  'brazed',
  'bolted lug',
  'set-screw lug',
  'rod clamp',
  'acorn clamp',
  'pipe clamp',
  'hose clamp',
  'split bolt',
  'U-bolt',
  'solder',
  'twist',
  'sheet-metal screw',
  'welded',
  'none',
] as const;

export type JointName = (typeof jointNames)[number];

/** What is known of a kind of joint before anybody measures one. */
export interface JointKind {
  readonly name: JointName;
  /** Contact resistance of one in service without a reading: from clean and tight to years outdoors. */
  readonly resistanceOhm: Interval;
  readonly resistanceSource: Citation;
  /** Cannot be undone or work loose without being destroyed. */
  readonly permanent: boolean;
  /** Holds by force (screw, bolt, spring, twist): works loose and corrodes, wants a look from time to time. */
  readonly mechanical: boolean;
  /** Fails when solder melts. */
  readonly dependsOnSolder: boolean;
  /** Whether the electrical code of the United States has it among the means of connecting an electrode. */
  readonly forElectrodes: 'yes' | 'if listed' | 'no';
  readonly forElectrodesSource: Citation;
  /** Temperature at which the joint gives way before the conductor does; null: it outlasts the conductor. */
  readonly heatLimitCelsius: Interval | null;
  readonly heatSource: Citation | null;
}

const contact = cite(
  'contact model and service ranges after R. Holm, Electric Contacts',
  null,
  'order of size only',
  'memory',
);
const list = cite('NFPA 70', null, '250.8 and 250.70', 'second-hand');
const heat = cite('IEEE Std 80', '2000', 'temperature limits of joints', 'memory');
const tinLead = cite('handbook tables: melting point of tin-lead solder', null, null, 'memory');

/** Fused or pressed into one: no more than a little of the conductor's own resistance. */
const fused: Interval = { low: 10e-6, high: 50e-6 };
/** Clean and tight 20 microohm; a clamp after years outdoors up to 100 milliohm. */
const clamped: Interval = { low: 20e-6, high: 100e-3 };
/** Clean and tight 20 microohm to 200; in service indoors or well kept up to a milliohm; neglected outdoors no better than a clamp. */
const makeshift: Interval = { low: 20e-6, high: 10 };

const pressure: Interval = { low: 250, high: 350 };

export const joints: readonly JointKind[] = [
  permanentJoint('exothermic weld', fused, contact, 'yes', null),
  { ...permanentJoint('irreversible crimp', fused, contact, 'if listed', pressure), mechanical: false },
  permanentJoint('brazed', fused, contact, 'if listed', exact(450)),
  mechanicalJoint('bolted lug', clamped, contact, 'if listed'),
  mechanicalJoint('set-screw lug', clamped, contact, 'if listed'),
  mechanicalJoint('rod clamp', clamped, contact, 'if listed'),
  mechanicalJoint('acorn clamp', clamped, contact, 'if listed'),
  mechanicalJoint('pipe clamp', clamped, contact, 'if listed'),
  mechanicalJoint('hose clamp', makeshift, commonPractice, 'no'),
  mechanicalJoint('split bolt', clamped, contact, 'if listed'),
  mechanicalJoint('U-bolt', clamped, commonPractice, 'if listed'),
  {
    ...permanentJoint('solder', { low: 10e-6, high: 100e-3 }, commonPractice, 'no', exact(183)),
    permanent: false,
    dependsOnSolder: true,
    heatSource: tinLead,
  },
  mechanicalJoint('twist', makeshift, commonPractice, 'no'),
  mechanicalJoint('sheet-metal screw', makeshift, commonPractice, 'no'),
  permanentJoint('welded', fused, contact, 'if listed', null),
  permanentJoint('none', exact(0), cite('one piece of metal: no joint', null, null, 'read'), 'yes', null),
];

/** Other spellings → name, in the plain form of `plainJoint`. */
const otherNames: Readonly<Record<string, JointName>> = {
  exothermic: 'exothermic weld',
  'exothermic welding': 'exothermic weld',
  'thermite weld': 'exothermic weld',
  'compression lug': 'irreversible crimp',
  'compression crimp': 'irreversible crimp',
  braze: 'brazed',
  brazing: 'brazed',
  'bolted connection': 'bolted lug',
  bolted: 'bolted lug',
  'set screw': 'set-screw lug',
  'setscrew lug': 'set-screw lug',
  'ground rod clamp': 'rod clamp',
  'earth rod clamp': 'rod clamp',
  acorn: 'acorn clamp',
  'water pipe clamp': 'pipe clamp',
  'jubilee clip': 'hose clamp',
  'worm drive clamp': 'hose clamp',
  'worm clamp': 'hose clamp',
  'split bolt connector': 'split bolt',
  ubolt: 'U-bolt',
  soldered: 'solder',
  twisted: 'twist',
  'self tapping screw': 'sheet-metal screw',
  weld: 'welded',
};

/** The kind of joint that a text names; null when it names none. */
export function readJoint(text: string): JointKind | null {
  const plain = plainJoint(text);
  const name = otherNames[plain] ?? jointNames.find((n) => plainJoint(n) === plain);
  return jointKind(name ?? null);
}

/** The kind of this name as the table has it; null for another one. */
export function jointKind(name: string | null): JointKind | null {
  return byName.get(name) ?? null;
}

const byName: ReadonlyMap<string | null, JointKind> = new Map(joints.map((j) => [j.name, j]));

/** The kind that was most likely meant; null when none is close. */
export function nearJoint(text: string): JointName | null {
  return nearName(text, jointNames) as JointName | null;
}

/** The range of a joint nobody can name: from fused to makeshift. */
export const unknownJointOhm: Interval = { low: fused.low, high: makeshift.high };

function plainJoint(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s-]+/g, ' ')
    .trim();
}

function permanentJoint(
  name: JointName,
  resistanceOhm: Interval,
  resistanceSource: Citation,
  forElectrodes: JointKind['forElectrodes'],
  heatLimitCelsius: Interval | null,
): JointKind {
  return {
    name,
    resistanceOhm,
    resistanceSource,
    permanent: true,
    mechanical: false,
    dependsOnSolder: false,
    forElectrodes,
    forElectrodesSource: list,
    heatLimitCelsius,
    heatSource: heatLimitCelsius === null ? null : heat,
  };
}

function mechanicalJoint(
  name: JointName,
  resistanceOhm: Interval,
  resistanceSource: Citation,
  forElectrodes: JointKind['forElectrodes'],
): JointKind {
  return {
    ...permanentJoint(name, resistanceOhm, resistanceSource, forElectrodes, pressure),
    permanent: false,
    mechanical: true,
  };
}
