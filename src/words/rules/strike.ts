import type { RuleWords } from '../rule-words.ts';
import { leadSentences, leadTools } from './lead-sentences.ts';
import { sizeSentences } from './size-sentences.ts';

export const strike = {
  'arrester-fits-power': {
    title: 'Arresters of feed lines fit the power on their line',
    failTitle: '{at} does not fit the power on its line',
    why: 'One that fires too low is fired by the transmitter itself, holds its arc and wears out; one that fires far too high lets more of a strike through to the radio than it has to.',
    met: 'Lowest spark-over at least 1.5 times the peak voltage of the line at its power and SWR (a rule of the trade), and at most four times that (ours; of a line that only receives: at most 360 V). A single typed voltage is taken as its middle, 20 percent either way. Where only its power is typed: at least the power of the line.',
    remedy:
      'Put in an arrester made for the power and SWR of this line: its lowest spark-over at least 1.5 times the peak voltage of the line, and no more than the next step of the trade above that.',
    because: {
      none: 'No arrester on a coax line with a box is in the file.',
      'power unknown': 'How much power goes through {at} is not known.',
      'type power': 'Read the output power off the radio or amplifier; type `power:`.',
      'level unknown':
        'At what voltage {at} {at?fires:fire} is not known, nor for what power {at?it is:they are} made.',
      'read it': 'Read the spark-over or the power off {at} or its sheet; type `sparkover:` or `rated_power:`.',
      low: '{at} is meant to fire too near the peak of {peakV} that {powerW} makes on its line, or below it.',
      'swr unknown': 'Whether {at} {at?stands:stand} the power hangs on the SWR of the line.',
      'type swr': 'Read the highest SWR off the radio or a meter; type `swr:` at the radio.',
      high: '{at} fires far above the peak of {peakV} that its line ever has.',
      fits: '{at} fires well above what the line has, and not far above it.',
      rated: '{at} is made for this power.',
      'rated less': '{at} is made for less than {powerW}.',
      receives: 'Nothing on its line sends.',
    },
  },
  'only-bond-stands-strike': {
    title: 'A conductor that alone bonds what lightning strikes does not melt',
    failTitle: '{at} melts in a strike, and is the only bond',
    why: 'The least section that a code asks is for static and contact. One that carries all of a strong stroke and melts throws hot metal about and leaves the rest of the stroke to the feed lines and the house.',
    met: 'It stands all of a first positive stroke of 100 kA 10/350 (2.5 MJ/ohm, levels III and IV) without melting, or it has a second bond beside it. What shields carry is not counted on.',
    remedy:
      'Replace {at} with {=6 AWG} copper, or with the larger section that another finding asks of it; or run a second conductor of its own beside it.',
    remedyAbroad:
      'Replace {at} with 16 mm² copper, or with the larger section that another finding asks of it; or run a second conductor of its own beside it.',
    because: {
      none: 'No conductor of a support or an antenna to the soil is in the file.',
      shares: '{at} {at?is:are} not the only way: another bond takes its part.',
      stands: '{at} {at?gets:get} hot but {at?does:do} not melt in a stroke of 100 kA 10/350.',
      melts:
        '{at}, {areaM2}, is the only bond of what lightning strikes there, and a stroke of 100 kA 10/350 melts it.',
      'size unknown': 'Whether {at} {at?melts:melt} hangs on a section that is not known well enough.',
      'measure it':
        'Measure the bare metal of {at} across with a gauge, or read the print on its covering; type `wire:`.',
      'metal unknown': 'The metal of {at} is not known.',
      'look at it': sizeSentences['look at it'],
      'metal not listed': 'Nobody gives the constants by which the metal of {at} heats.',
      'compare it': 'Lay copper beside {at}, or ask the maker what current it stands.',
      'perhaps not alone':
        '{at} {at?melts:melt} if it is the only bond, and whether it is, or whether a second one is there, is not known.',
      'look for second':
        'Look at the ties that are typed as unknown at the foot of what {at} {at?bonds:bond}, and where {at} {at?ends:end}; type `present:`, `from:` and `to:` as found.',
    },
  },
  'protector-lead-volts': {
    title: 'Leads of protectors add little to what they let through',
    failTitle: 'The lead of {at} adds more volts than it should',
    why: 'What is behind a protector sees its level and, on top, the voltage along its lead: about a kilovolt for each metre in a surge that rises by 1 kA in a microsecond.',
    met: 'At most 500 V along the lead at 1 kA/µs (8 kA 8/20), which is half a metre; of a lead without a known wire 1 µH/m is taken. An arrester bolted to its bar has no lead.',
    remedy: 'Move {at} to its bar, bolted, or bring the bar to it: the line makes the way, not the lead.',
    tools: leadTools,
    because: {
      none: 'No bonded arrester is in the file.',
      bolted: '{at} {at?is:are} fixed to {at?its:their} bar.',
      short: 'The lead of {at} adds little.',
      long: 'The lead of {at} adds {leadV} in a surge that rises by 1 kA in a microsecond.',
      'lead unknown': 'How long the lead of {at} is, is not known.',
      ...leadSentences,
    },
  },
  'boxes-held-together': {
    title: 'Bonds hold boxes together that a signal line joins or a person reaches',
    failTitle: 'The bonds do not hold {at} together in a strike',
    why: 'Metal holds two boxes together in a slow fault; in a strike each metre of it has about a kilovolt for each kA/µs. The line that joins the boxes, or the hand that lies on both, then bridges what the bond does not hold.',
    met: 'At most 2.5 kV between the two in the median first negative stroke into the highest support, in the likely soil: what the insulation of usual mains kit stands. A port stands less where its maker says so. Judged in the likely soil alone: a check does not work the strike out for the whole range of it, which the table of differences shows. What stands on a support, and what the panel and a box at the end of its mains cord differ by, are not judged here; they are in that table. The protective conductor of a feeder is no bond for a strike.',
    remedy:
      'Bring {at} to one bar by short wide leads of their own, with every line that joins them over that bar; or part the line by fibre.',
    because: {
      none: 'There is nothing to strike, or no two boxes that a signal line joins or a person reaches.',
      held: 'The bonds hold {at} together.',
      'held by a line':
        'No bond joins {at}; the shields and cords that do hold them together for as long as they are plugged in.',
      'by feeder':
        'Nothing but the protective conductor of a feeder bonds {at}; it runs among other wires through the building, and a strike is not counted on it.',
      apart: '{at} come {peakV} apart in a median stroke: {wayM} of metal lie between the two.',
      'no metal': '{at} come {peakV} apart in a median stroke: no metal joins the two.',
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
    },
  },
} as const satisfies Readonly<Record<string, RuleWords>>;
