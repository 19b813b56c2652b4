import type { RuleWords } from '../rule-words.ts';
import { askDesigner } from './lightning.ts';
import { sizeSentences, sizeTools } from './size-sentences.ts';

const measureBend = 'Look at each bend of {at} and type `bends:` with angle and radius.';

export const conductors = {
  'antenna-electrode-bond-size': {
    title: 'What joins the [electrode] of an antenna to the system of the [service] is at least {=6 AWG} copper',
    failTitle: 'Bond {at} is too thin',
    why: 'A bond between [electrode]s shares the current of a strike and of a fault; a thin one melts or breaks.',
    met: '{=6 AWG} copper or more in each conductor between the two, and in ties between rods. No length limit is given.',
    exempt:
      'The lead of a mast or an [entry panel] without an [electrode] of its own, and the bond of a radio, a fence or a pipe, have conditions of their own.',
    remedy: 'Replace {at} with {=6 AWG} copper or more.',
    because: sizeSentences,
  },
  'mast-ground-size': {
    title:
      'Leads of masts, arresters and [entry panel]s are at least {=10 AWG} copper, {=8 AWG} aluminium or {=17 AWG} copper-clad steel or bronze',
    failTitle: 'Lead {at} is too thin',
    why: 'This is a minimum for static and contact, not a lightning conductor: {=10 AWG} melts at the lowest protection level when it is the only way.',
    met: 'The least section of its metal, or more.',
    remedy: 'Replace {at} with at least {=10 AWG} copper; better {=6 AWG} or a strap.',
    because: sizeSentences,
  },
  'antenna-earthing-size-iec': {
    title:
      'The [electrode conductor] of an antenna is at least 16 mm² copper (25 mm² insulated aluminium, 50 mm² steel)',
    failTitle: '{at} is too thin for an antenna',
    why: '16 mm² of copper carries the current of a strike; a thinner one melts.',
    met: 'The least section of its metal; for bare aluminium the clause has none. On the face of a building, well below the edge of the roof and close to the wall, none is asked, nor of a mast indoors whose antennas are all indoors. What a lightning protection leads down has a condition of its own.',
    remedy: 'Replace {at} with at least 16 mm² copper.',
    tools: { ...sizeTools, 'look at cover': 'eyes', 'ask designer': 'papers' },
    because: {
      ...sizeSentences,
      'bare aluminium': '{at} {at?is:are} of bare aluminium; the figure of the clause is one of insulated aluminium.',
      'cover unknown': 'Whether the aluminium of {at} is insulated, as the figure of the clause asks, is not known.',
      'look at cover': 'Look whether {at} {at?is:are} covered and add `insulated` or `bare` to `wire:`.',
      'on facade':
        '{at} {at?is:are} thinner than asked, and {at?leads:lead} from the face of a building: at least {=2 m} below the edge of the roof and at most {=1.5 m} out from the wall no such conductor is asked, only the bond of shield and metal ({=4 mm2}).',
      'measure facade':
        'Measure from the edge of the roof down to the top of the antenna, and out from the wall to its farthest point. Type them as `below_roof:` and `from_wall:` of the antenna.',
      'under terminals':
        '{at} {at?is:are} thinner than asked, and {at?leads:lead} from a mast under the air terminals of the building. Where it keeps the [separation distance] from them, {=4 mm2} is enough.',
      'ask designer': askDesigner,
      exempt:
        '{at} {at?leads:lead} from an antenna close to the wall and well below the roof, where no section is asked.',
    },
  },
  'main-bonding-size-iec': {
    title: 'Main [bonding conductor]s are at least 6 mm² copper (16 mm² aluminium, 50 mm² steel)',
    failTitle: '[Bonding conductor] {at} is too thin',
    why: 'A main bond carries fault current; local supplies may ask for more.',
    met: 'The least section of its metal; TN-C-S supplies in the United Kingdom ask for at least 10 mm² copper, also of the wire from the [main bar] to an [electrode]; a TT part of its own (`supply: tt` on its panel) keeps the plain sizes. A main [bonding conductor] ends on the [main bar], on an [electrode] or on metal of the building; what joins a box to a bar of the station is none.',
    remedy: 'Have a [electrician] replace {at} with the section that the supply asks for.',
    tools: { ...sizeTools, 'ask supply': 'electrician', 'ask which part': 'electrician' },
    because: {
      ...sizeSentences,
      'supply unknown':
        '{at} {at?is:are} thick enough for a TN-S or TT supply and too thin for a TN-C-S supply in the United Kingdom; which of them comes in is not known.',
      'ask supply':
        'Ask the network operator or a [electrician] how the supply is [grounded] and type `supply:` under `site`. Do not open anything for it.',
      'which part':
        '{at} {at?is:are} thick enough for the TT part at {panel} and too thin for a TN-C-S supply in the United Kingdom; which of the two {at?it belongs:they belong} to is not known.',
      'ask which part':
        'Have a [electrician] say whether {at} {at?belongs:belong} to the TT part at {panel}, and type the conductor that shows it.',
    },
  },
  'bend-radius': {
    title: 'Bends of a lightning path have a radius of at least {=0.2 m}',
    failTitle: '{at} is bent too tightly',
    why: 'Force tries to straighten a tight bend and the voltage jumps across it; the bend’s own inductance hardly matters.',
    met: 'Each bend has that radius or more. On wires thinner than {=6 AWG}, for which the electrical code gives no radius, it is advice.',
    remedy: 'Lay {at} anew with bends of at least {=0.2 m} radius.',
    because: {
      none: 'No conductor of a lightning path has a bend in the file.',
      'not typed': 'Nobody typed the bends of a lightning path (`bends:`; `none` where it is straight).',
      tight: 'A bend of {at} is tighter than asked.',
      wide: 'The bends of {at} are wide enough.',
      'radius unknown': 'The radius of a bend of {at} is not known.',
      'measure it': measureBend,
    },
  },
  'bend-angle': {
    title: 'A lightning path nowhere turns by more than a right angle',
    failTitle: '{at} turns back on itself',
    why: 'A conductor that turns back invites a flash across the open side.',
    met: 'Each bend turns by at most 90 degrees (the included angle is at least 90).',
    remedy: 'Lay {at} anew without turning back.',
    because: {
      none: 'No conductor of a lightning path has a bend in the file.',
      'not typed': 'Nobody typed the bends of a lightning path (`bends:`; `none` where it is straight).',
      sharp: 'A bend of {at} turns by more than a right angle.',
      gentle: 'No bend of {at} turns by more than a right angle.',
      'angle unknown': 'The angle of a bend of {at} is not known.',
      'measure it': measureBend,
    },
  },
  'dead-end-length': {
    title: 'A tower’s lead that is its only way is at most {=16 ft} long',
    failTitle: '{at} is a long dead end',
    why: 'With one way only the whole strike runs through it; two ways halve the current and one may fail.',
    met: 'A second way exists, or the run is short. Slender masts are left out.',
    remedy: 'Give the tower a second way to [ground] beside {at}.',
    because: {
      none: 'No lead of a tower is in the file.',
      'second way': 'A second way exists beside {at}.',
      'length unknown': 'The length of {at} is not known well enough.',
      'measure it': 'Measure {at} along its run and type `length:`.',
      'perhaps second': '{at} {at?is:are} long, and whether a second way exists beside {at?it:them} is not known.',
      trace: 'Look at the foot of the tower for other conductors than {at}, follow each to where it ends, and type it.',
      short: '{at} is short.',
      long: '{at} is the only way and long.',
    },
  },
  'bond-run-short': {
    title: 'The way from panel and arrester to an [electrode] is short',
    failTitle: 'The way from {at} to its [electrode] is long',
    why: 'Each metre adds about a microhenry: more than a kilovolt at one kiloampere per microsecond.',
    met: 'At most {=1 m} of conductor; more is advice, more than {=20 ft} a defect. Protectors of the mains are left out.',
    remedy:
      'Mount {at} lower, or lead it straight to the nearest [electrode]; where none is near, drive one {=2 ft} or more from the wall and {=6 ft} or more from the others, and bond it to these.',
    because: {
      none: 'No [entry panel] or arrester reaches an [electrode].',
      'length unknown': 'The length of the way from {at} to {electrode} is not known.',
      'measure it': 'Measure the conductors from {at} down to the [electrode]; type `length:` of each.',
      short: 'The way from {at} to {electrode} is short.',
      long: 'From {at} to {electrode} the straight run has {inductanceH}.',
      far: 'From {at} to {electrode} it is farther than {=20 ft}; the straight run has {inductanceH}.',
    },
  },
  'bond-between-groups-long': {
    title: 'Bonds between groups are short enough to hold both ends together',
    failTitle:
      'Bond {at} is long: it clears faults and shares current, but does not hold its ends at one voltage in a strike',
    why: 'At power frequency a long bond is as good as a short one and is asked for; in a strike its inductance keeps the ends apart.',
    met: 'At most {=20 ft}.',
    remedy:
      'Keep {at}. Protect every cable that runs between what it joins at both ends, or bring those cables in beside the [service]; rods along it help.',
    because: {
      none: 'No bond between groups is in the file.',
      'length unknown': 'The length of {at} is not known well enough.',
      'measure it': 'Measure {at} along its run and type `length:`.',
      short: '{at} is short.',
      long: 'The straight run of {at} has {inductanceH}.',
    },
  },
  'no-lightning-path-through-building': {
    title: 'No lightning path runs through a building',
    failTitle: '{at} leads a strike through the building',
    why: 'A conductor that carries a strike indoors flashes to wiring, pipes and people beside it.',
    met: 'Every tie between [electrode]s, and every conductor on the best way to [ground] of a mast, antenna, arrester or panel, is outside. The code itself allows an indoor run of its minimum conductor.',
    remedy: 'Lay a way outside and take {at} out of the path.',
    because: {
      none: 'No conductor of a lightning path is in the file.',
      'rod indoors': '{at} was driven indoors.',
      'runs indoors': '{at} runs indoors.',
      outside: '{at} runs outside.',
      'nobody said': 'The file does not say whether {at} {at?runs:run} indoors.',
      'say where': 'Follow {at} and type `where:` for {at?it or for its:them or for their} ends.',
    },
  },
} as const satisfies Record<string, RuleWords>;
