import type { RuleWords } from '../rule-words.ts';

export const electrodes = {
  'gas-pipe-never-electrode': {
    title: 'No gas pipe serves as an [electrode]',
    failTitle: 'Gas pipe {at} serves as an [electrode]',
    why: 'A strike can burn a pinhole into a gas pipe, and the supplier may put in a plastic piece at any time.',
    met: 'No lead of a mast, antenna or arrester ends on it, and no bar or radio has its only way to [ground] over it. Bonding the pipe to the [service] is another thing and is asked for.',
    remedy: 'Take the lead off {at} and bring it to an [electrode]; then bond the pipe as the gas code asks.',
    because: {
      none: 'No gas pipe is in the file.',
      'not used': 'Nothing leads to [ground] over {at}.',
      used: 'To [ground] over {at} goes: {by}.',
      'other way': 'To {at} goes: {by}; whether what it comes from has another way to [ground] is not known.',
      trace:
        'Follow every other conductor from what is bonded to {at} to where it ends, and say which are there (`present:`).',
      perhaps: 'Nothing that was typed leads to {at}, and the conductors were not (all) looked at.',
      look: 'Look along {at} for clamps; type each conductor that ends there.',
    },
  },
  'rod-length-us': {
    title: 'Rods are at least {=8 ft} in the soil',
    failTitle: 'Rod {at} is too short',
    why: 'A short or cut rod has more resistance and ends in soil that dries and freezes.',
    met: '{=8 ft} of each rod stand in soil, what sticks out not counted; a cut rod does not meet it even when it measures well.',
    remedy:
      'Drive a rod of full length beside {at} and bond the two; then {at} no longer {at?counts:count} as an [electrode] and may be left out of the file. One that is long enough and stands out of the ground is driven down.',
    because: {
      none: 'No driven rod is in the file.',
      'length unknown': 'The length of {at} is not known well enough.',
      'measure it': 'Look for the mark stamped at the top of {at}, or have it measured; type `length:`.',
      'long enough': '{at} is long enough.',
      short: '{at} is shorter than the clause asks.',
      'stands out': '{at} stands {outLengthM} out of the ground: less of it than the clause asks is in the soil.',
    },
  },
  'rod-spacing-minimum': {
    title: 'Rods stand at least {=6 ft} apart',
    failTitle: 'Rods {at} stand too close',
    why: 'Rods that stand close share the same soil and count as one.',
    met: 'Every pair of neighbours is at least that far apart.',
    remedy:
      'Count {at} as one: drive another rod at least {=6 ft} from all of these and bond it, or move one of them that far away.',
    exempt:
      'Rods that stand close where another of the same system stands {=6 ft} or more from both: those two meet the clause.',
    because: {
      none: 'No two rods stand near each other with known places, and no wire runs straight from one to another.',
      'spacing unknown': 'The spacing of {at} is not known well enough.',
      'measure it': 'Measure between neighbouring rods of {at} and type `spacing:`, `near:` or their places.',
      'far enough': '{at}: far enough apart.',
      near: '{at}: closer than the clause asks.',
      'perhaps as one':
        '{at} stand closer than the clause asks and count as one; whether another rod of the same system stands far enough from them is not known.',
      'measure others':
        'Measure from {at} to the other rods that are bonded to them, and type `near:` or their places.',
      'count as one': '{at} count as one; another rod of the same system stands far enough from them.',
      'short wire':
        'The wire straight from one to the other of {at} is {wireLengthM} long: they stand closer than the clause asks.',
    },
  },
  'rod-spacing-effective': {
    title: 'Paralleled rods stand at least two rod lengths apart',
    failTitle: 'Rods {at} stand closer than two lengths',
    why: 'Two rods one length apart have about 0.57 of the resistance of one, two lengths apart 0.54: closer rods are copper wasted.',
    met: 'Spacing is at least twice the longest rod.',
    remedy: 'Place further rods of {at} at least two lengths away from the others.',
    because: {
      none: 'No two rods stand near each other with known places, and no wire runs straight from one to another.',
      'spacing unknown': 'Spacing or length of {at} is not known well enough.',
      'measure it':
        'Measure between neighbouring rods of {at}, and look for their length; type `spacing:`, `near:` or their places.',
      'far enough': '{at}: at least two lengths apart.',
      near: '{at}: closer than two lengths.',
      'short wire':
        'The wire straight from one to the other of {at} is {wireLengthM} long: they stand closer than two lengths.',
    },
  },
  'single-rod-25-ohm': {
    title: 'A lone rod, pipe or plate measures 25 ohm or less, or has a second [electrode] beside it',
    failTitle: 'Lone rod {at} is not shown to be 25 ohm or less',
    why: 'One rod in poor soil may be hundreds of ohms; the clause leaves it to the owner to show otherwise or to add a second.',
    met: 'A reading of at most 25 ohm, or a second [electrode] of a kind that the clause lists (a wire in a trench only as a closed ring, a water pipe not); with two no resistance is asked.',
    remedy:
      'Drive a second rod at least {=6 ft} from {at} (better two lengths) and bond it, or measure {at} and record method, date and weather.',
    because: {
      none: 'No driven rod is in the file.',
      'not alone': '{at} is not the only [electrode] of its system.',
      'over range': '{at} reads over the range of the instrument.',
      low: '{at} measures low enough.',
      high: '{at} measures too high for a lone rod.',
      wide: 'The reading of {at} is not sharp enough to tell.',
      'measure it':
        'Measure {at} alone by fall of potential, in dry weather; type `resistance:` and `measured: alone`.',
      'perhaps not alone':
        'Whether {at} {at?has:each have} a second [electrode] of a listed kind in {at?its:their} system is not known.',
      trace: 'Look what else is tied to {at}; type each conductor.',
      'not measured': '{at} has no second [electrode] of a kind that the clause lists, and nobody measured it.',
      'not tested':
        '{at} has no second [electrode] of a listed kind and was not tested; the adopted edition asks for a second rod only where the test is high.',
    },
  },
  'ring-is-closed': {
    title: 'A [ground ring] is closed',
    failTitle: 'Ring {at} is not closed',
    why: 'An open ring is a long dead end: every joint in it takes off what lies behind.',
    met: 'The conductor comes back to where it begins.',
    remedy: 'Close {at} with the same conductor and an exothermic or listed joint.',
    because: {
      none: 'No ring is in the file.',
      closed: '{at} is closed.',
      open: '{at} is open.',
      'nobody said': 'Nobody said whether {at} {at?is:are} closed.',
      look: 'Measure continuity once round {at}, or find both ends; type `closed:` of a wire in the soil, `present:` of a conductor or a joint.',
    },
  },
  'galvanised-and-copper-in-soil': {
    title: 'No copper [electrode] is tied to a galvanised anchor or foot in the same soil',
    failTitle: 'Copper in the soil is tied to the galvanised steel of {at}',
    why: 'The zinc and then the steel of the anchor shaft are eaten below ground, where nobody sees it; anchors have failed.',
    met: 'Galvanised or tinned electrodes at anchors and at a foot that is set straight in the soil (`base:`), or none. Wires are followed over bars, and from an anchor over its galvanised rods; what lies behind a tinned wire from such a rod, behind another [electrode], a panel or a mast is left out.',
    remedy:
      'Replace the copper [electrode] at {at} with a galvanised one and bare copper wire with tinned, or have the steel protected; have it looked at below ground.',
    because: {
      none: 'No [guy], and no support that is set straight in the soil, is in the file.',
      'no electrode': 'No [electrode] is tied to {at}.',
      'metal unknown': 'The metal of {at} or of its [electrode] is not known.',
      look: 'Look what the steel and the [electrode] at {at} are made of; type `metal:`.',
      'end unknown':
        'Whether an [electrode] is tied to {at} is not known: a conductor there was not traced, or not all are in the file.',
      trace: 'Look for conductors on {at} below and above the ground, follow each to where it ends, and type it.',
      eaten: 'A copper or copper-clad [electrode] is tied to {at}.',
      'eaten by wire': 'Bare copper wire that lies in the soil is tied to {at}.',
      perhaps: 'A copper or copper-clad [electrode] is tied to {at} if all is there that may be.',
      'wire unknown': 'Whether the wire at {at} is bare copper and lies in the soil is not known.',
      'look at wire':
        'Look whether the wire that leads from {at} runs in the soil, and whether it is bare or tinned copper: type `buried:`, and `insulated`, `bare` or `tinned` in `wire:`.',
      alike: 'The metals at {at} go together.',
    },
  },
} as const satisfies Record<string, RuleWords>;
