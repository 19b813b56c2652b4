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
  'earth-rod-clear-of-buried-services': {
    title: 'Buried services are located before a rod is driven',
    reason: 'About work to come, which a file of what is there cannot show; the cautions of a report say so.',
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
};
