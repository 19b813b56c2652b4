import type { WorkKind } from '../../../src/rework/work.ts';

/** What the practitioners of a layout wanted, written from the case text alone. */
export interface Wanted {
  readonly file: string;
  /** Hazards that they wanted removed: rule and a place of it. */
  readonly removed: readonly (readonly [rule: string, at: string])[];
  /** Works that they named, any of which may come first; `at` '': wherever. */
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
    exception: 'The layout has all that they named; of what is left, a bond of the radio costs less than a rod.',
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
    exception:
      'The plate where the cables are pulled ends nowhere; nobody spoke of it, and a short wire takes a hazard away.',
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
    exception:
      'The #8 wire of the array is smaller than the clause asks; nobody looked at it, and it costs wire alone.',
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
    file: 'case-47',
    removed: [],
    named: [['bond', 'mast-rod']],
    says: 'No island: a rod on the side of the supply is main-bonded.',
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
