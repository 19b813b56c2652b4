/** A condition that is known and that no rule asks: what it is, and why it is not asked. */
export interface NotStated {
  readonly title: string;
  readonly reason: string;
}

/** By the id under which the conditions are counted; the catalogue shows them after the rules. */
export const notStated: Readonly<Record<string, NotStated>> = {
  'lightning-system-bonded-to-service': {
    title: 'The [electrode]s of lightning protection are bonded to the [service]',
    reason: 'Asked by all-electrodes-one-system, which leaves no [electrode] out, whatever it serves.',
  },
  'auxiliary-rod-no-loophole': {
    title: 'An auxiliary rod that serves an antenna is bonded like any other',
    reason: 'Asked by all-electrodes-one-system, which leaves no [electrode] out, whatever it serves.',
  },
  'tower-ring-tied-to-building-ring': {
    title: 'Tower and building are joined by more than the shields of feed lines',
    reason: 'Asked by screens-not-sole-bond and all-electrodes-one-system; a third finding would say the same again.',
  },
  'test-method-stated': {
    title: 'A reading names its method',
    reason: 'Asked within resistance-has-provenance: the kind of a reading is its method.',
  },
  'no-orphan-electrode': {
    title: 'Every [electrode] reaches the [service]',
    reason: 'Asked by all-electrodes-one-system; a second finding would say the same again.',
  },
  'path-mixed-role': {
    title: 'A way through a shield, a cord or a circuit’s [protective conductor] does not count',
    reason: 'Held by what counts as a bond: no rule on masts or arresters sees such a way.',
  },
  'path-length-to-earth': {
    title: 'Length of the way from each mast and arrester to [ground]',
    reason: 'A figure, no condition: the table of ways of a report gives it; bond-run-short judges it.',
  },
  'parallel-resistance-honest': {
    title: 'Rods close together are not worked out as if they were far apart',
    reason: 'Held by the solve in the soil, in which all metal acts on all other.',
  },
  'protective-conductor-kept': {
    title: 'The mains’ [protective conductor] is never lifted to cure hum',
    reason: 'About what is advised, not about the site: no remedy here lifts one, and the cautions say so.',
  },
  'unplugging-is-not-protection': {
    title: 'Pulling plugs in a storm meets no condition of [grounding]',
    reason: 'Held by what is asked: every rule looks at the site as typed, and a pulled plug bonds nothing.',
  },
  'mast-earthing-is-no-lightning-system': {
    title: 'A mast that is [grounded] does not protect the building',
    reason: 'About what is claimed: no rule counts it as such, and the cautions of a report say so.',
  },
  'antenna-exempt-zone-iec': {
    title: 'An antenna close to the wall and well below the roof needs no [electrode conductor]',
    reason:
      'An exemption: held by iec-mast-earthed, antenna-earthing-size-iec and antenna-bonding-size-iec, from `below_roof:` and `from_wall:`.',
  },
  'ground-indoors-or-out': {
    title: 'A [grounding] conductor may run inside or outside',
    reason:
      'An exemption: no rule of the code set flags a run indoors; no-lightning-path-through-building gives it as practice.',
  },
  'transmitter-metal-grounded': {
    title: 'The metal of a transmitter that people touch is [grounded]',
    reason: 'Asked by no-orphan-equipment of every metal case, and by earth-is-not-a-fault-path of every fed one.',
  },
  'slender-mast-one-path': {
    title: 'One way down is enough for a slender mast',
    reason: 'An exemption that never fails; it is held within two-paths-from-strike-point and dead-end-length.',
  },
  'arrester-outside-on-rod': {
    title: 'The entry panel is outdoors with its own [electrode] close below',
    reason:
      'Asked by discharge-unit-place (outdoors) and bond-run-short (close); a third finding would say the same again.',
  },
  'panel-arrester-on-panel': {
    title: 'Arresters are bolted to the panel, not hung on a wire',
    reason: 'Asked by arrester-lead-short with the same limit; a second finding would say the same again.',
  },
  'water-pipe-bonded': {
    title: 'Metal water piping is bonded to the [service]',
    reason: 'Asked by metalwork-bonded, as a hazard where it is a water pipe.',
  },
  'gas-pipe-bonded': {
    title: 'Metal gas piping is bonded, and not used as an [electrode]',
    reason: 'Asked by metalwork-bonded, as a hazard where it is a gas pipe, and by gas-pipe-never-electrode.',
  },
  'structural-steel-bonded': {
    title: 'Steel that forms the frame of a building is bonded',
    reason: 'Asked by metalwork-bonded of the kind `steel frame`; its size hangs on the wires of the supply.',
  },
  'fence-bonded': {
    title: 'A metal fence near a tower is bonded to its ring',
    reason:
      'Asked by metalwork-bonded of a fence within {=3 m} of a tower or mast, as advice; not of the live wire of one for animals.',
  },
  'generator-frame': {
    title: 'A portable generator that feeds cords alone needs no rod',
    reason: 'An exemption that never fails; no-orphan-equipment holds it where a generator is the only source.',
  },
  'field-rods-spacing': {
    title: 'Short rods in place of one stand two to four lengths apart',
    reason: 'Asked by rod-spacing-effective of all rods, in the field too.',
  },
  'caravan-out-of-scope': {
    title: 'Vehicles and caravans lie outside the rules of an IEC region',
    reason:
      'The site has no vehicle as a kind of part; what is typed of one is judged as what it is, and its maker’s rules come first.',
  },
  'field-10-ohm-and-8-m': {
    title: 'Field equipments on different [electrode]s are joined by two bare conductors',
    reason:
      'Within reach of one person shelters-within-reach-bonded asks it; beyond, it hangs on two resistances that nobody measures in the field.',
  },
  'corrosive-soil-coating': {
    title: 'A [down conductor] that enters corrosive soil is coated',
    reason:
      'The clause has no figure for what corrosive soil is, and a file does not say what coats a conductor; condition-sound takes what was found eaten.',
  },
};
