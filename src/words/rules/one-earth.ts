import type { RuleWords } from '../rule-words.ts';
import { ownSupplySentences } from './own-supply-sentences.ts';

const trace = 'Trace the conductors from {at} to the [service] and type what is found, or `conductors: none`.';
const findService = 'Look where the power service is [grounded] and name it under `site.service`.';

export const oneEarth = {
  'service-electrode-known': {
    title: 'The [service] has an [electrode] that is known and tied',
    failTitle: 'The [service] has no [electrode]',
    why: 'Everything else is tied to the [electrode] of the power service; without it a fault or a strike has nowhere to go but through the wiring.',
    met: 'A way by permanent metal leads from the [service] to an [electrode] of the file.',
    remedy:
      'Have a [electrician] fit the [electrode] of the [service] and its [electrode conductor] before anything else is done.',
    because: {
      none: 'The station has no power service of its own (field station).',
      'service unknown': 'The file does not say where the power service is.',
      'find service': findService,
      tied: '{at} reaches an [electrode] through permanent metal.',
      'by the supply':
        'This supply brings the network operator’s [ground] along; an [electrode] of its own is not asked for the [service] itself.',
      'supply unknown':
        'Somebody looked and there is no [electrode]; whether the supply brings the network operator’s [ground] along (TN) or not (TT) is not known.',
      'find supply':
        'Ask the network operator, or read the label at the meter: TN-S, TN-C-S (PME) or TT; type it under `site.supply`.',
      'no electrode': 'Somebody looked and there is no [electrode] at all.',
      'not seen':
        '{at} {at?leads:lead} to {electrodes}, of which nobody knows whether {electrodes?it is:they are} there.',
      'see it':
        'Look whether {electrodes} {electrodes?is:are} there, and whether the wire ends on {electrodes?it:them}; type `present:`.',
      'not found': 'No [electrode] is known to be tied to {at}.',
      'find electrode':
        'Look at the meter and the panel for a bare or green conductor that goes to a rod, a pipe or the footing; type the [electrode] and that conductor.',
    },
  },
  'all-electrodes-one-system': {
    title: 'Every [electrode] belongs to one bonded system with the [service]',
    failTitle: '[Electrode]{at?:s} {at} {at?is:are} not bonded to the system of the [service]',
    why: 'A strike or a fault lifts one [electrode] by thousands of volts while the other stays behind; the radio, its cables or a person then join the two.',
    met: 'A way of permanent metal, joint by joint, to the [service]; soil, cable shields and power cords do not count. The supplier’s own [electrode] is left out.',
    exempt:
      'The bars of a footing that nobody reaches without breaking concrete need not be bonded in an existing building (United States): say so to the [authority]. A part on a TT supply of its own (`supply: tt` on its panel, no [protective conductor] in the feeder) is left to a [electrician], and no bond is offered; nor is one to loose metal in the building of that panel, or on a line to what is used there: nobody can tell which supply it belongs to.',
    remedy: 'Run a [bonding conductor] outside the building from {at} to the [electrode system] of the [service].',
    because: {
      ...ownSupplySentences,
      none: 'No [electrode] is in the file.',
      'field station':
        'The station has no power service; what may be touched together decides (see the rule on things within reach).',
      'conductors not whole':
        'Nothing that was typed ties {at} to the [service], and the conductors were not (all) looked at.',
      trace,
      apart: 'No permanent metal joins {at} to the [service].',
      'apart from the others':
        'Permanent metal does not join all of {at}, and at most one of their groups can hold the [service].',
      'decided by': 'Whether {at} {at?is:are} bonded depends on what is not known: {decidedBy}.',
      look: 'Go and look, and type what is found: {decidedBy}.',
      'in the system': '{at} is tied to the [service] through permanent metal.',
      'service unknown':
        'The file does not say where the power service is, so nobody can tell whether {at} {at?is:are} bonded to it.',
      'find service': findService,
    },
  },
  'antenna-rod-is-not-a-substitute': {
    title: 'An antenna’s own [electrode] stands beside the bond to the [service], never in its place',
    failTitle: '{at} has an [electrode] of its own and no bond to the [service]',
    why: 'The soil between two rods is no conductor: at a fault or a strike the full voltage stands between the antenna’s system and the house.',
    met: 'Antenna or mast reaches the system of the [service] through permanent metal.',
    remedy: 'Bond the [electrode] of {at} to the [electrode system] of the [service] with at least {=6 AWG} copper.',
    because: {
      none: 'No antenna or mast of the file is [grounded].',
      'field station': 'The station has no power service.',
      'service unknown': 'The file does not say where the power service is.',
      'find service': findService,
      both: '{at} reaches the system of the [service].',
      perhaps: 'Whether {at} {at?is:are} bonded to the [service] depends on what is not known.',
      trace,
      'rod only': '{at} reaches an [electrode], but nothing permanent leads on to the [service].',
    },
  },
  'screens-not-sole-bond': {
    title: 'Nothing is tied to the [service] by cable shields alone',
    failTitle: 'A cable shield is the only tie between {at} and the [service]',
    why: 'Shields are unplugged by hand, and the whole current in them couples into the core and the radio.',
    met: 'With every feed line taken away the part still reaches the [service].',
    remedy:
      'Run a separate [bonding conductor] from {at} to the system of the [service]; keep the shield bonded at both ends as well.',
    because: {
      ...ownSupplySentences,
      none: 'No [electrode], support or bar is tied to the [service] at all.',
      'no service': 'The file names no power service.',
      'by bonds': '{at} stays tied to the [service] with every feed line removed.',
      perhaps: 'Whether more than a shield ties {at} to the [service] depends on what is not known.',
      trace,
      'shield only': 'With the feed lines removed, nothing permanent is left between {at} and the [service].',
    },
  },
  'outlet-ground-not-lightning-ground': {
    title: 'Nothing outdoors is tied to the [service] by a power cord’s [protective conductor] alone',
    failTitle: 'A power cord is the only tie between {at} and the [service]',
    why: 'That conductor runs through the house beside the wiring of every room; it is no way for a strike, and it goes when the plug is pulled.',
    met: 'The part reaches the [service] without cords and outlet circuits.',
    remedy: 'Run a [bonding conductor] outside the building from {at} to the system of the [service].',
    because: {
      ...ownSupplySentences,
      none: 'Nothing outdoors is tied to the [service].',
      'no service': 'The file names no power service.',
      'by bonds': '{at} is tied to the [service] without any cord.',
      perhaps: 'Whether more than a power cord ties {at} to the [service] depends on what is not known.',
      trace,
      'cord only': 'Only the [protective conductor] of a cord or outlet circuit leads from {at} to the [service].',
    },
  },
  'iec-antenna-electrode-to-main-bar': {
    title: 'The [electrode] of an outdoor antenna is connected to the [main bar]',
    failTitle: '[Electrode]{at?:s} {at} of the antenna {at?is:are} not connected to the [main bar]',
    why: 'A separate [electrode] of the antenna stands at another potential than the protective conductors in the house; the radio joins the two.',
    met: 'Permanent metal leads from the antenna’s [electrode] to the [main bar], even where it is the foundation’s own.',
    remedy: 'Connect {at} to the [main bar] with at least 16 mm² copper (work of a [electrician]).',
    because: {
      ...ownSupplySentences,
      none: 'No outdoor antenna or mast is [grounded], or there is no [service].',
      'service unknown': 'The file does not say where the [main bar] is.',
      'find service': findService,
      tied: '{at} {at?is:are} tied to the [main bar].',
      perhaps: 'Whether {at} {at?is:are} tied to the [main bar] depends on what is not known.',
      trace,
      apart: 'No permanent metal joins {at} to the [main bar].',
    },
  },
  'uk-multiple-earth-rf-rod-bond': {
    title: 'On a TN-C-S supply every radio-frequency [electrode] is bonded to the [main bar]',
    failTitle: '[Electrode]{at?:s} {at} {at?is:are} not bonded to the [main bar] of a TN-C-S supply',
    why: 'When the supplier’s neutral breaks, everything on the [main bar] takes mains voltage against a [rod] that is kept apart, and a person may touch both.',
    met: 'Permanent metal leads to the [main bar]; a TT supply for a detached shack is the other accepted way.',
    remedy:
      'Have a [electrician] bond {at} to the [main bar] with at least 10 mm² copper (a main bond: the network operator may ask for more), or put the shack on a TT supply out of reach of the other. Do not make this connection yourself.',
    because: {
      ...ownSupplySentences,
      'field station': 'The station has no power service.',
      'other supply': 'The supply is not TN-C-S, or no [electrode] of the owner is in the file.',
      'supply unknown': 'The file does not say what kind of supply this is.',
      'find supply':
        'Ask the network operator, or read the label at the meter: TN-S, TN-C-S (PME) or TT; type it under `site.supply`.',
      tied: '{at} is bonded to the [main bar].',
      perhaps: 'Whether {at} {at?is:are} bonded to the [main bar] depends on what is not known.',
      trace,
      apart: 'No permanent metal joins {at} to the [main bar].',
    },
  },
  'neutral-bonded-once': {
    title: 'The [neutral] is bonded to [ground] at the [service] only',
    failTitle: 'The [neutral] is not bonded to [ground] exactly once, at the [service]: {at}',
    why: 'With two bonds the current of the house returns over bonding conductors, shields and cases at all times, and a broken [neutral] makes them live.',
    tools: { ask: 'electrician' },
    met: 'The [neutral] is bonded at the [service], and no sub-panel has a [neutral] bond; the meter box on the supply side counts apart. A generator or inverter that a line joins to the panel has a bond of its own where the transfer switch switches the [neutral] too, and none where it leaves it through; one that is joined to nothing has a bond of its own.',
    remedy:
      'Have a [electrician] look at {at}. A second bond: make sure first that the feeder has a [protective conductor] of its own (run one where it has none), and only then take the bond out and keep the two apart; without that conductor a fault there has no way back, and cases stay live. No bond at all: have it fitted at the [service]; of a source whose [neutral] is switched with it, at the source.',
    because: {
      none: 'There is no sub-panel, and nobody found the [service] without its bond.',
      'not at the service':
        'At {at} the [neutral] is not bonded to [ground], and nobody said whether it is on the supply side.',
      'open the meter box':
        'Have a [electrician] or the supplier look in the meter box for the bond between [neutral] and [ground], and type `neutral_bonded:` for it.',
      nowhere: 'At {at} and on the supply side of it the [neutral] is not bonded to [ground]: a fault has no way back.',
      'kept apart': 'At {at} the [neutral] is kept apart from [ground].',
      'one at a time': 'With {at} running the [neutral] is bonded once.',
      'bonded at the source too':
        'The [neutral] is bonded at {at} and at the panel that it feeds, and the transfer switch leaves it through.',
      'nowhere while it runs':
        'The transfer switch takes the [neutral] off the bond at the panel, and at {at} there is none: while it runs a fault has no way back, and no breaker trips.',
      'perhaps at the source too':
        'Whether the [neutral] is bonded at {at}, and whether the transfer switch switches it, is not known: it may be bonded twice, or nowhere while {at} runs.',
      'look at the switch':
        'Have a [electrician] look at {at} and its transfer switch: type `neutral_bonded:` and `neutral_switched:` for {at}.',
      'bonded again': 'At {at} the [neutral] is bonded to [ground] again.',
      'perhaps accepted':
        'At {at} the [neutral] is bonded to [ground] again. In Canada another building with an [electrode] of its own and no [protective conductor] in its feeder may have that bond.',
      ask: 'Have a [electrician] say whether the [neutral] may stay bonded at {at}. Take no bond out before that: where no [protective conductor] comes along, a fault has little else to go back by.',
      'nobody said': 'Nobody said whether the [neutral] is bonded at {at}.',
      'open it':
        'Have a [electrician] open {at} and look for a bonding screw or strap between the [neutral] bar and the case; type `neutral_bonded:` for {at}.',
    },
  },
  'shelters-within-reach-bonded': {
    title: 'Things that a person can touch at once are bonded together',
    failTitle: '{at} can be touched at once and are not bonded together as is asked',
    why: 'Whoever touches both bridges two [ground]s, which stand at different voltages at a fault or a strike.',
    met: 'Both belong to one bonded group, and where a conductor runs straight from one to the other it, or another way, is at least {=6 AWG} copper: thinner is a defect between shelters, vehicles and generators and in a field station, else advice. Asked of what is typed as within reach, of what a connector is pulled between, and of shelters, vehicles and generators (in a field station of all that people touch) that `near:` puts within {=2.5 m} of each other. The [protective conductor]s of cords are enough against a fault of the mains: where they alone tie the two, this is advice.',
    remedy: 'Bond {at} together with at least {=6 AWG} copper, or move them out of reach of each other.',
    remedyAbroad: 'Bond {at} together with at least 16 mm² copper, or move them out of reach of each other.',
    tools: { 'look at it': 'eyes', ask: 'electrician' },
    because: {
      none: 'Nothing is typed as within reach of anything else, no shelter, vehicle or generator has a distance to another, and no connector is pulled by hand between two bonded places.',
      'one group': '{at} belong to one bonded group.',
      'in pieces':
        'A bond joins {at}, but {inPieces} {inPieces?is:are} not one piece of metal: a piece that hangs free is not held.',
      'each piece':
        'Look where {inPieces} {inPieces?is:are} parted (gates, overlaps, painted joints). Bridge it with jumpers and type `continuous: yes`; or type each piece as a part of its own.',
      far: '{at} are farther from each other than one person reaches.',
      'how near': 'Whether one person reaches {at} at once is not known well enough.',
      tape: 'Measure how near {at} come to each other; type the distance under `near:`.',
      thin: 'What bonds {at} together is thin: {conductors}.',
      'size unknown': 'How thick the conductor is that bonds {at} together is not known.',
      'measure it': 'Measure the conductor that bonds {at} together (without its insulation); type `wire:`.',
      'metal unknown': 'Of what metal the conductor is that bonds {at} together is not known.',
      'look at it': 'Look of what metal the conductor is that bonds {at} together; type `wire:`.',
      'metal not listed':
        'The conductor that bonds {at} together is not of copper, and the document that asks it gives no size for its metal.',
      ask: 'Ask a [electrician] whether a conductor of that metal and size will do between {at}.',
      perhaps: 'Whether {at} are bonded together depends on what is not known.',
      trace: 'Trace what each of {at} is tied to; type each conductor.',
      'two groups': 'No bond joins {at}.',
      'two groups at a plug':
        'A connector is pulled by hand between {at}: the shield on either side of it is tied to one of them, and no bond joins the two.',
      'cords only':
        'Only the [protective conductor]s of cords and circuits join {at}: they serve at a fault of the mains, and hold nothing together in a strike.',
    },
  },
  'separate-building-electrode': {
    title:
      'A building fed by a feeder has an [electrode] of its own, and a [protective conductor] comes with the feeder',
    failTitle: 'The building of {at} lacks an [electrode] of its own or a [protective conductor] with its feeder',
    why: 'Without one the whole building rises to the voltage that a strike there drives along the feeder.',
    met: 'The panel of the building reaches an [electrode] without the feeder and not over the [service] or another building, and the feeder brings a [protective conductor]. Excepted: one branch circuit with its own [protective conductor].',
    remedy:
      'Have a [electrician] drive an [electrode] at the building of {at} and bond it at its disconnect, and run a [protective conductor] with the feeder where there is none.',
    because: {
      none: 'No sub-panel stands in another building.',
      'own electrode': '{at} reaches an [electrode] without the feeder and without another building.',
      shared:
        '{at} {at?leads:lead} to {electrode}, on which the wire of the [service] lands too; at which building it lies is not known.',
      'say where it lies':
        'Look at which building {electrode} goes into the soil and type `where:` with that building for it.',
      'place unknown': 'The file does not say which building {at} or the [service] {at?is:are} in.',
      'say where both': 'Type `where:` for {at} and for the [service].',
      'say where': 'Type `where:` for {at}.',
      'say where the service is': 'Type `where:` for the panel or bar of the [service].',
      perhaps: 'Whether {at} {at?has:have} an [electrode] of {at?its:their} own depends on what is not known.',
      look: 'Look outside the building of {at} for a rod or a conductor that goes into the soil; type what is there.',
      'no electrode':
        '{at} {at?reaches:reach} an [electrode] only over the feeder, the [service] or another building, or none at all.',
      'no conductor with the feeder':
        '{at} has an [electrode], and no [protective conductor] comes with the feeder: a fault there goes back through the soil alone or, where the [neutral] is bonded there, through that and the soil.',
      'feeder unknown': 'Nobody said whether a [protective conductor] comes with the feeder of {at}.',
      'open it':
        'Have a [electrician] open {at} and look for a bare or green conductor that comes with the feeder; type `protective_conductor:` for that line.',
    },
  },
} as const satisfies Record<string, RuleWords>;
