import type { WorkKind } from '../../../src/rework/work.ts';

/** What the practitioners of a layout wanted, written from the case text alone. */
export interface Wanted {
  /** Of a layout its id; of an example its folder and name below examples/. */
  readonly file: string;
  /** Hazards that they wanted removed: rule and a place of it. */
  readonly removed: readonly (readonly [rule: string, at: string])[];
  /** Works that they named, any of which may come first; `at` '': wherever. [] (examples alone): there is nothing to do. */
  readonly named: readonly (readonly [kind: WorkKind, at: string])[];
  /** Their words, shortened. */
  readonly says: string;
  /** Why another work comes first here all the same. */
  readonly exception?: string;
}

const oneSystem = 'all-electrodes-one-system';

/** Grade A: the works have to agree with them. Layouts without a work that somebody named are not in. */
export const wantedOfA: readonly Wanted[] = [
  {
    file: 'case-01',
    removed: [[oneSystem, 'tower-ground']],
    named: [
      ['bond', 'tower-ground'],
      ['move-panel', ''],
      ['add-rods', 'tower-ground'],
    ],
    says: 'Bond it, around the house, with rods; better still, put the entry panel at the service.',
  },
  {
    file: 'case-03',
    removed: [
      [oneSystem, 'shack-rods'],
      [oneSystem, 'tower-rod-1'],
    ],
    named: [
      ['bond', 'shack-rods'],
      ['bond', 'tower-rod-1'],
    ],
    says: 'Bond tower, shack and service.',
  },
  {
    file: 'case-05',
    removed: [['mast-grounded', 'mast']],
    named: [
      ['add-rods', 'meter'],
      ['tie-metalwork', 'mast'],
      ['bond', 'mast'],
    ],
    says: 'The missing electrode of the service is the bigger defect; then ground the mast and bond it.',
  },
  {
    file: 'case-05-rod',
    removed: [[oneSystem, 'mast-rod']],
    named: [
      ['bond', 'mast-rod'],
      ['add-rods', 'meter'],
    ],
    says: 'A rod that is not bonded is worse than none.',
  },
  {
    file: 'case-07',
    removed: [[oneSystem, 'shack-rod']],
    named: [['bond', 'shack-rod']],
    says: 'Bond anyway, sharp bends or not.',
  },
  {
    file: 'case-08',
    removed: [
      [oneSystem, 'antenna-rod'],
      ['screens-not-sole-bond', 'antenna-rod'],
    ],
    named: [['bond', 'antenna-rod']],
    says: 'Run copper between the rods; the shield does not do it.',
  },
  {
    file: 'case-10-upstairs',
    removed: [['shield-bonded-at-entry', 'coax']],
    named: [
      ['move-panel', ''],
      ['move-arrester', 'coax-arrester'],
    ],
    says: 'A single-point bus at entry level outside; stop the surge below.',
  },
  {
    file: 'case-14',
    removed: [
      [oneSystem, 'tower-rods'],
      ['screens-not-sole-bond', 'tower'],
    ],
    named: [['bond', 'tower-rods']],
    says: 'The shield must not be the only link between tower and panel.',
  },
  {
    file: 'case-15',
    removed: [[oneSystem, 'phone-ground']],
    named: [
      ['bond', 'phone-ground'],
      ['add-protector', ''],
    ],
    says: 'Protection at the service, and power, phone and radio grounds together at one point.',
  },
  {
    file: 'case-17',
    removed: [],
    named: [
      ['add-rods', 'service-rod'],
      ['bond', ''],
      ['move-arrester', ''],
    ],
    says: 'Mast conductor straight to the service rod and the coax the same way, shield bonded where it leaves.',
  },
  {
    file: 'case-18',
    removed: [[oneSystem, 'footing']],
    named: [['bond', 'footing']],
    says: 'The important bond is equipment to tower to service.',
  },
  {
    file: 'case-20',
    removed: [
      ['neutral-bonded-once', 'garage-panel'],
      [oneSystem, 'tower-rods'],
      ['shelters-within-reach-bonded', 'connector-panel'],
    ],
    named: [
      ['bond', 'tower-rods'],
      ['put-right', 'garage-panel'],
    ],
    says: 'One neutral bond for each system; the tower bonded permanently.',
  },
  {
    file: 'case-26',
    removed: [[oneSystem, 'vertical-rod']],
    named: [['bond', 'vertical-rod']],
    says: 'A rod that is not connected is no ground.',
  },
  {
    file: 'case-27-rod',
    removed: [[oneSystem, 'own-rod']],
    named: [['bond', 'own-rod']],
    says: 'The ground wire alone brought it in: the rod belongs to the one system.',
  },
  {
    file: 'case-32',
    removed: [
      ['mast-grounded', 'tower'],
      ['mast-grounded', 'short-tower-1'],
      ['mast-grounded', 'short-tower-2'],
    ],
    named: [
      ['tie-metalwork', 'tower'],
      ['tie-metalwork', 'short-tower-1'],
      ['tie-metalwork', 'short-tower-2'],
      ['add-rods', ''],
    ],
    says: 'Concrete-encased steel is the best there is; many wide straps on the surface.',
  },
  {
    file: 'case-34',
    removed: [['mast-grounded', 'tower']],
    named: [['add-rods', 'tower']],
    says: 'Rods or plates laid level and radially, as deep as the soil allows.',
  },
  {
    file: 'case-36',
    removed: [],
    named: [
      ['deepen-rod', 'rod-2'],
      ['add-rods', ''],
    ],
    says: 'Holes through the rock to soil, several rods in each.',
  },
  {
    file: 'case-37',
    removed: [],
    named: [
      ['deepen-rod', 'first-rod'],
      ['add-rods', 'first-rod'],
    ],
    says: 'Four rods of over 50 ft, into the moist layer.',
  },
  {
    file: 'case-40',
    removed: [['condition-sound', 'anchor-lead-6']],
    named: [['replace-conductor', 'anchor-lead-6']],
    says: 'Repair the melted conductor and keep inspecting.',
  },
  {
    file: 'case-43',
    removed: [['mast-grounded', 'mast']],
    named: [
      ['tie-metalwork', 'steel'],
      ['bond', 'steel'],
    ],
    says: 'Bond to the steel of the building.',
  },
  {
    file: 'case-49',
    removed: [[oneSystem, 'under-block']],
    named: [['bond', 'under-block']],
    says: 'Tie both earths, all shields on a plate.',
  },
  {
    file: 'case-50',
    removed: [],
    named: [
      ['add-rods', ''],
      ['bond', ''],
      ['add-protector', 'solar-dc'],
    ],
    says: 'Array to station and house, more than one rod, arresters on the DC lines.',
  },
  {
    file: 'case-56-apart',
    removed: [[oneSystem, 'tower-earth']],
    named: [
      ['bond', 'tower-earth'],
      ['tie-metalwork', 'generator'],
      ['tie-metalwork', 'fuel-tank'],
    ],
    says: 'Generator and tank on the site ring; protectors; tower tied to the shelter.',
  },
  {
    file: 'case-64',
    removed: [
      ['panel-tied-to-service', 'plate'],
      [oneSystem, 'shack-rod'],
      ['spare-and-disconnected-lines', 'hf-line'],
    ],
    named: [
      ['tie-metalwork', 'plate'],
      ['bond', 'tower-earth'],
      ['put-right', 'pulled-lines'],
    ],
    says: 'The plate to a rod below it, tied to all grounds; centre conductors grounded when pulled.',
  },
  {
    file: 'case-65',
    removed: [['shield-bonded-at-entry', 'feed']],
    named: [['move-line', 'feed']],
    says: 'Leave at the bottom of the tower.',
    exception:
      'Where the cables come in nothing bonds them, which is a hazard; leaving at 15 ft is advice that nobody can price.',
  },
  {
    file: 'case-67-near',
    removed: [
      ['pool-fixed-metal-bonded', 'tower'],
      [oneSystem, 'tower-rod'],
    ],
    named: [['bond', 'tower-rod']],
    says: 'Metal within 5 ft of the water is bonded to the grid of the pool; no tie beyond the common system.',
  },
  {
    file: 'case-70',
    removed: [['spare-and-disconnected-lines', 'feed']],
    named: [
      ['put-right', 'pulled-lines'],
      ['add-protector', 'feed'],
    ],
    says: 'A way for each centre conductor to drain, unused ports grounded, an arrester at the panel.',
  },
];

/** Grade B: the thread was of two minds; either side may come first, and nothing has to be removed. */
export const wantedOfB: readonly Wanted[] = [
  {
    file: 'case-30',
    removed: [],
    named: [
      ['bond', 'rods-1'],
      ['bond', 'rods-2'],
      ['add-protector', ''],
    ],
    says: 'A bond that long adds nothing: local earth and a panel; others bond.',
  },
  {
    file: 'case-47-pme',
    removed: [[oneSystem, 'mast-rod']],
    named: [['bond', 'mast-rod']],
    says: 'No island: a rod on the side of the supply is main-bonded.',
  },
  {
    file: 'case-47-touch',
    removed: [['shelters-within-reach-bonded', 'radio']],
    named: [['bond', 'mast-rod']],
    says: 'An island is dangerous where the two earths can be touched together.',
  },
  {
    file: 'case-53',
    removed: [],
    named: [
      ['bond', 'tower-rod'],
      ['move-panel', ''],
      ['add-protector', ''],
      ['tie-metalwork', 'rack'],
      ['add-rods', ''],
    ],
    says: 'Line earthed at the entry, rack and tower bonded; disputed whether the two earths are joined.',
  },
];

/**
 * The example sites, by practice: what their README says is wrong, and what the rules say of the rest. A work that takes a hazard
 * away has to come before one that takes a defect away, and that before advice.
 */
export const wantedOfExamples: readonly Wanted[] = [
  {
    file: 'first-dipole/first-dipole',
    removed: [
      [oneSystem, 'old-rod'],
      ['shield-bonded-at-entry', 'coax'],
    ],
    named: [
      ['bond', 'old-rod'],
      ['move-panel', ''],
      ['add-protector', 'coax'],
    ],
    says: 'The rod at the gable belongs to the system of the meter, the line comes in by a plate outside.',
  },
  {
    file: 'marl-hill/marl-hill',
    removed: [
      [oneSystem, 'E2'],
      [oneSystem, 'anchor-rod'],
      ['panel-tied-to-service', 'entry'],
      ['neutral-bonded-once', 'shed-panel'],
      ['separate-building-electrode', 'shed-panel'],
      ['shelters-within-reach-bonded', 'rotator-box'],
      ['shelters-within-reach-bonded', 'amplifier'],
      ['shield-bonded-at-entry', 'line2'],
      ['shield-bonded-at-entry', 'line3'],
      ['shield-bonded-at-entry', 'line4'],
      ['arrester-bonded', 'a2'],
      ['spare-and-disconnected-lines', 'line1'],
      ['spare-and-disconnected-lines', 'line2'],
      ['no-solder-in-path', 'c3:tower-rods'],
    ],
    named: [
      ['bond', 'E2'],
      ['put-right', 'shed-panel'],
    ],
    says: 'The shack rod and the plate tied to the service; the second neutral bond out, since it puts current on cases every day.',
  },
  {
    file: 'repeater-hut/repeater-hut',
    removed: [['shelters-within-reach-bonded', 'fence']],
    named: [
      ['tie-metalwork', 'fence'],
      ['tie-metalwork', 'generator'],
    ],
    says: 'Hut, tower, fence, rack and generator rise together; fence and generator are still missing. No rod for its ohms.',
  },
  {
    file: 'rod-in-rock/rod-in-rock',
    removed: [['shield-bonded-at-entry', 'coax']],
    named: [
      ['move-panel', ''],
      ['move-line', 'coax'],
      ['add-protector', 'coax'],
    ],
    says: 'Not the 750 ohm, but the line that comes in bare is what hurts somebody first.',
  },
  {
    file: 'town-flat/town-flat',
    removed: [
      ['iec-mast-earthed', 'lift-mast'],
      ['shield-bonded-at-entry', 'coax'],
      ['shield-bonded-at-entry', 'tv'],
      ['spare-and-disconnected-lines', 'coax'],
    ],
    named: [
      ['tie-metalwork', 'lift-mast'],
      ['bond', 'lift-mast'],
      ['put-right', 'pulled-lines'],
    ],
    says: 'The mast earthed, two metres from the wire of the block; until then the plug that is pulled has a place to go. Whether mast and wire hold together, the wire of the block decides, which nobody traced.',
  },
  {
    file: 'two-buildings/two-buildings',
    removed: [
      [oneSystem, 'radio-rod'],
      ['panel-tied-to-service', 'shop-plate'],
      ['neutral-bonded-once', 'shop-panel'],
      ['shelters-within-reach-bonded', 'power-supply'],
      ['shield-bonded-at-entry', 'feed-loop'],
      ['spare-and-disconnected-lines', 'feed-beam'],
      ['spare-and-disconnected-lines', 'feed-fan'],
    ],
    named: [
      ['put-right', 'shop-panel'],
      ['put-right', 'pulled-lines'],
      ['bond', 'radio-rod'],
    ],
    says: 'The feeder wired as a house’s and the radio earth by itself; both lines of the mast lie loose beside the radio in a storm.',
  },
  {
    file: 'small/barn-with-class/barn-with-class',
    removed: [],
    named: [['second-path', '']],
    says: 'Advice alone: its bar hangs on one conductor.',
  },
  {
    file: 'small/coast-station/coast-station',
    removed: [],
    named: [],
    says: 'Papers and a pair of metals to look at: for a person.',
  },
  {
    file: 'small/farm-wires/farm-wires',
    removed: [],
    named: [['second-path', 'tower']],
    says: 'A tall tower of three legs that stands on one lead.',
  },
  {
    file: 'small/field-weekend/field-weekend',
    removed: [],
    named: [['add-rods', 'rod']],
    says: 'Two days on a meadow: the mast has a rod, and nobody showed that the one is enough.',
  },
  {
    file: 'small/hall-with-class/hall-with-class',
    removed: [],
    named: [['second-path', '']],
    says: 'Advice alone: its bar hangs on one conductor.',
  },
  {
    file: 'small/mast-as-terminal/mast-as-terminal',
    removed: [],
    named: [],
    says: 'Pairs of metals to look at each year.',
  },
  {
    file: 'small/protected-hall/protected-hall',
    removed: [],
    named: [
      ['add-protector', ''],
      ['second-path', ''],
      ['move-line', 'coax'],
    ],
    says: 'Advice alone: mains without a protector, single conductors, a line that comes in high.',
  },
  {
    file: 'small/protected-house/protected-house',
    removed: [],
    named: [['replace-conductor', 'gutter-bond']],
    says: 'The gutter is bonded by a wire that is too thin for the lightning protection that is claimed.',
  },
  {
    file: 'small/radio-site/radio-site',
    removed: [[oneSystem, 'other-rod']],
    named: [['bond', 'other-rod']],
    says: 'A rod by itself; the owner agreed to it, and a bond ends it all the same.',
  },
  {
    file: 'small/relay-hut/relay-hut',
    removed: [],
    named: [
      ['tie-metalwork', 'radio-1'],
      ['tie-metalwork', 'radio-2'],
      ['add-rods', 'tower'],
      ['add-protector', 'guide-2'],
    ],
    says: 'Radios that nothing ties, a tower without a rod for each leg, a rigid line without a protector; a waveguide has no core to protect.',
  },
  {
    file: 'small/shed-with-terminal/shed-with-terminal',
    removed: [],
    named: [],
    says: 'One air terminal on one conductor, as the standard allows a shed.',
  },
  {
    file: 'small/steel-hall/steel-hall',
    removed: [],
    named: [['second-path', '']],
    says: 'Advice alone: its bar hangs on one conductor.',
  },
  {
    file: 'small/tower-standard/tower-standard',
    removed: [],
    named: [
      ['second-path', 'down-east'],
      ['second-path', 'tower-legs'],
      ['add-rods', ''],
    ],
    says: 'A second way down for the barn, a lead for each leg and the rods that the tower standard counts.',
  },
  {
    file: 'small/wet-site/wet-site',
    removed: [],
    named: [],
    says: 'Pairs of metals and a test to be done in each season.',
  },
];
