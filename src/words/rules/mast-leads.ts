import type { RuleWords } from '../rule-words.ts';

/** One look along a line on its mast settles both. */
const lookAlongLine =
  'Follow {at} down the mast and note the height of every bond of its shield; type each as `{bond: tower@48 ft}` in the path, and the height of the antenna.';

export const mastLeads = {
  'tower-leg-connections': {
    title: 'Each leg of a tower has its own lead',
    failTitle: 'Not every leg of {at} has a lead',
    why: 'Leads all round share the current of a strike and keep the legs at one voltage.',
    met: 'As many conductors as legs land at the foot, one on each leg (`tower.leg2@base`): three of a lattice tower whose legs nobody counted. Other towers are asked where somebody counted them, tubes never.',
    remedy: 'Lead a conductor from each leg of {at} to its own [electrode], and join the [electrode]s.',
    because: {
      none: 'No tower with legs is in the file.',
      'no lead': 'No conductor lands at the foot of a tower with legs.',
      'each leg': 'Each leg of {at} has a lead.',
      'which leg': 'Which legs of {at} the leads are on is not known.',
      'perhaps more': 'Not all conductors are in the file; {at} may have more leads.',
      look: 'Look at each leg of {at} for a conductor and type the leg: `from: tower.leg2@base`.',
      few: 'Not every leg of {at} has a conductor at its foot.',
    },
  },
  'tower-not-through-concrete-alone': {
    title: 'A strike on a mast has a way to the soil beside its block of concrete',
    failTitle: '{at}: a strike goes through the block of concrete alone',
    why: 'Current through damp concrete makes steam; a base that was the only way has cracked in a strike.',
    met: 'A conductor at its foot leads, at once or by a bar, to an [electrode] other than its own block, or to the [service]. Tied bars in the block are a good second way.',
    remedy: 'Lead a conductor from the foot of {at} to a rod or ring in the soil beside the block.',
    because: {
      none: 'No mast of metal has a foot in the soil.',
      'no lead': 'No conductor lands at the foot of a mast; that is asked of its own.',
      beside: 'A conductor leads from {at} to something other than its own block.',
      'end unknown': 'What the conductor at the foot of {at} ends on, or leads to from there, is not known.',
      'whose block': 'Whether the concrete that {at} {at?is:are} tied to is its own block is not known.',
      trace: 'Look for a conductor at the foot of {at} and follow it to where it ends; type it.',
      'concrete alone': 'Every conductor at the foot of {at} leads to the concrete there alone.',
    },
  },
  'shield-bonded-top-and-base': {
    title: 'Shields are bonded to the mast at the antenna and at the foot',
    failTitle: 'The shield of {at} is not bonded to its mast at top and foot',
    why: 'Bonded at both ends, shield and mast share the current and stay at one voltage; bonded at neither, the line takes it into the house.',
    met: 'One bond within {=3 m} of the antenna, and another within {=3 m} of the foot; on a mast lower than that one bond does. Masts on roofs and indoors are left out.',
    remedy: 'Fit a bonding kit on {at} at the antenna, and one at the foot before it leaves the mast.',
    because: {
      none: 'No shielded line comes down a mast of metal.',
      both: 'The shield of {at} is bonded at top and foot.',
      neither: 'The shield of {at} is bonded to the mast neither at the antenna nor at the foot.',
      'one for both': 'One bond of the shield of {at} stands for both ends; one at each is asked.',
      'no top': 'The shield of {at} is not bonded to the mast near the antenna.',
      'no base': 'The shield of {at} is not bonded to the mast at its foot.',
      'heights unknown': 'At which heights the shield of {at} is bonded to the mast is not known.',
      look: lookAlongLine,
    },
  },
  'shield-bonded-midway': {
    title: 'Shields on a tall mast are bonded between top and foot as well',
    failTitle: 'The shield of {at} has no bond between top and foot',
    why: 'On a tall mast the voltage between shield and steel grows between two bonds until it jumps.',
    met: 'Where the antenna is higher than {=60.96 m}, a bond lies between the lowest and the highest quarter. Practice adds one every {=23 m} to {=30 m}.',
    remedy: 'Fit a bonding kit on {at} half way up.',
    because: {
      none: 'No shielded line comes down a mast of metal.',
      'not tall': 'No line comes from higher than {=60.96 m}.',
      midway: 'The shield of {at} is bonded half way up.',
      'heights unknown': 'At which heights the shield of {at} is bonded to the mast is not known.',
      look: lookAlongLine,
      'none midway': 'The shield of {at} is bonded nowhere half way up.',
    },
  },
  'earth-is-not-a-fault-path': {
    title: 'No box relies on the soil to bring a fault back',
    failTitle: 'A fault in {at} can go back through the soil alone',
    why: 'Soil carries too little current to trip a breaker: the case stays live until somebody touches it.',
    met: 'Metal leads back from the case to a panel: the [protective conductor] of its cord, or a bond to the system of the [service]. Outside the United States a sub-panel counts where its feeder, a bond or its bonded neutral brings it back in turn. An [electrode] of its own is welcome beside that, never in its place.',
    remedy:
      'Give {at} a cord, circuit or feeder with a [protective conductor], and bond its [electrode] to the system of the [service]. Feeders and panels are for a [electrician].',
    tools: { 'open panel': 'electrician', 'ask device': 'electrician' },
    because: {
      none: 'No box on a mains line is in the file.',
      'no electrode': 'No box on a mains line reaches an [electrode].',
      metal: 'Metal leads from {at} back to a panel.',
      perhaps: 'Whether metal leads from {at} back to a panel depends on what is not known.',
      look: 'Look how {at} {at?is:are} fed (two or three pins: `protective_conductor:` of the line) and whether a bond lands on {at?it:them}.',
      'panel unknown': 'For a fault at {at}: whether metal leads from {panel} back to the [service] is not known.',
      'open panel':
        'Have a [electrician] look whether a [protective conductor] comes with the feeder of {panel}, and whether its neutral is bonded there. Type `protective_conductor:` of the line and `neutral_bonded:` of {panel}.',
      'earth of panel':
        'For a fault at {at}: {panel} has an [electrode] of its own and no [protective conductor] from the [service], so that it goes back through the soil.',
      'ask device':
        'Have a [electrician] say whether a residual-current device guards all behind {panel} and whether local rules allow it (TT). Without that device the cases stay live.',
      'panel cut off':
        'For a fault at {at}: the feeder of {panel} has no [protective conductor], no bond leads from {panel} to the [service], and its neutral is not bonded there. No breaker trips.',
      'soil alone':
        '{at} {at?is:are} fed without a [protective conductor] and tied to an [electrode] that nothing joins to the panel.',
    },
  },
} as const satisfies Record<string, RuleWords>;
