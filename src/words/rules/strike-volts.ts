import type { RuleWords } from '../rule-words.ts';

/** Where the usual strike has no figures; see `strikeDoubt`. */
const doubts = {
  'no soil': 'Nothing is known of the soil, so no volts can be worked out.',
  'type soil': 'Name the soil, such as `soil: {type: clay}`, or take a four-pin reading.',
  'electrode unknown': 'What {at} {at?has:have} to the soil is not known, so no volts can be worked out.',
  'type fields': 'Find out and type {fields} of {at}; or measure {at} alone and type `resistance:`.',
  'measure alone': 'Measure {at} alone by fall of potential, in dry weather; type `resistance:`.',
  'too large': 'The site has more wires than a check works a strike out for.',
  'no figures': 'The volts of a strike cannot be worked out, because of {at}.',
  'ask strike': '`evenground strike` says why, and what to type.',
  'no electrode': 'No metal that is known leads from the station into the soil, so no volts can be worked out.',
  'type electrode':
    'Look for what goes into the soil (a rod, a pipe, a footing); type it under `electrodes:`, and under `conductors:` the conductor that leads to it.',
  'metal guessed': 'The volts hang on what is not known of {at}.',
  'measure it':
    'Measure the length of {at} and type `length:`, or look whether {at?it is:they are} there and tied and type `present:`.',
  'pieces guessed': 'The volts hang on how long the pieces of {at} are.',
  'measure pieces':
    'Measure {at} from each stop to the next, and type one length a piece under `lengths:`. The whole `length:` is not enough.',
} as const;

export const strikeVolts = {
  'entry-lead-volts': {
    title: 'The lead of an [entry panel] adds little to its rise in a strike',
    failTitle: 'The lead of {at} lifts it far above the soil in a strike',
    why: 'The panel is where all lines meet. By the volts along its lead it rises above the soil round the house, with every box that hangs on it; what hangs on another way to the soil is left behind, and sparks jump between the two.',
    met: 'At most 15 kV between the panel and the first metal in the soil that it comes to, in the median first negative stroke into the highest support, in the likely soil: what three centimetres of air about the panel stand (ours).',
    remedy:
      'Make the lead of {at} shorter, or lay a wide strap or a second lead beside it at some distance; and give what is struck its own ways into the soil, so that less of the stroke comes to the panel by the lines.',
    because: {
      none: 'No [entry panel] is in the file, or nothing that is struck.',
      'no lead': 'No panel has a way into the soil by metal.',
      short: 'The lead of {at} adds little.',
      long: 'The lead of {at} is {lengthM} long, and {leadV} stand along it in a median stroke.',
      ...doubts,
    },
  },
  'line-loop-volts': {
    title: 'Lines make no wide loop with the bonds of the boxes that they join',
    failTitle: 'The line between {at} makes a loop in which a strike is felt',
    why: 'A line and the bond beside it are a loop of one turn. The field of a stroke that runs down elsewhere induces volts round it, and they stand at the ports at its ends even where the bond itself carries nothing.',
    met: 'Where the bonds hold the two boxes within 2.5 kV, or where at most that is induced round the loop of a straight line and the shortest metal between them by the currents of all other metal and of the lightning, in the median first negative stroke.',
    exempt: 'Mains lines, and what stands on a support.',
    remedy:
      'Lay the line along the bond that joins {at}, or a bond along the line, so that nothing lies between the two; or part the line by fibre.',
    because: {
      none: 'No signal line joins two boxes, or nothing is there that is struck.',
      held: 'What joins {at} holds them together.',
      'no loop': 'No metal joins {at}, so there is no loop.',
      small: 'What {at} come apart is not for the loop between line and bond.',
      couples: '{loopV} are induced round the loop of the line between {at} and {wayM} of metal.',
      'no places': 'How wide the loop of the line between {at} is, is not known.',
      'type places': 'Type where {at} stand, by `at:`.',
      ...doubts,
    },
  },
  'pulled-gap-holds': {
    title: 'The gap of a pulled line is wider than a strike jumps',
    failTitle: 'A strike can jump the gap of {at}',
    why: 'A line that is pulled for the storm parts the radio from the mast only as long as no spark crosses. The whole difference of the two sides stands across the gap.',
    met: 'At most 5 kV for each centimetre of the gap, in the median first negative stroke, in the state that is looked at and in the likely soil. Looked at where both sides hang on metal that reaches the soil.',
    remedy:
      'Pull {at} farther away, or lay the pulled end on the bar of the [entry panel]: then nothing stands across the gap.',
    tools: { 'measure it': 'tape' },
    because: {
      none: 'No line is pulled in this state whose two sides both reach the soil by metal.',
      wide: 'The gap of {at} is wider than the strike jumps.',
      narrow: '{gapV} stand across the gap of {at}, which is {gapLengthM}.',
      'gap unknown': '{gapV} stand across the gap of {at}, and how wide it is, is not known well enough.',
      ...doubts,
      'measure it': 'Measure how far the pulled end of {at} is from what it was pulled off; type `gap:` in the state.',
    },
  },
  'buried-run-effective': {
    title: 'Buried wires are no longer than a strike can use',
    failTitle: '{at} {at?is:are} longer than a strike can use',
    why: 'In the front of a stroke the inductance of a buried wire keeps the current out of its far end: beyond its effective length more wire lowers nothing. Several short ones from one point do more than one long one.',
    met: 'From where a stroke comes in to the farthest end at most the effective length for a front of 1 µs and 30 kA in the soil there, by the longest of the published definitions; shorter ones come out at a third of it. Where no soil is named: that of wet clay.',
    exempt: 'Rings. What lies beyond still lowers the resistance that an instrument reads.',
    remedy: 'Put what is beyond {usefulM} of {at} into more arms that start where the down lead comes in.',
    tools: { 'measure it': 'tape', 'measure soil': 'earth tester' },
    because: {
      none: 'No buried wire with an open end is in the file.',
      short: 'A strike can use all of {at}.',
      long: '{at} {at?runs:run} {armM} from where a stroke comes in; it can use {usefulM} of that in this soil.',
      near: '{at} {at?runs:run} {armM} from where a stroke comes in, and it can use {usefulM} of that in this soil.',
      'length unknown': 'How long {at} {at?is:are}, is not known.',
      'measure it': 'Measure {at} from where the lead comes in to the end; type `length:` or `route:`.',
      'no soil': 'Whether a strike can use {armM} of {at} hangs on the soil, of which nothing is known.',
      'type soil': 'Name the soil, such as `soil: {type: clay}`, or take a four-pin reading.',
      'measure soil': 'Take a four-pin reading beside {at}; type it under `readings:`.',
    },
  },
} as const satisfies Readonly<Record<string, RuleWords>>;
