import type { RuleWords } from '../rule-words.ts';

const system = {
  'no figure': 'Nobody measured the system, and no soil was typed.',
  'over range': 'The system of {at} reads over the range of the instrument.',
  'reads low': 'The system of {at} reads low enough.',
  'reads high': 'The system of {at} reads higher than the goal.',
  'works out low': 'With the soil that was typed the system of {at} is low enough.',
  'one is low': 'With the soil that was typed the best of {at} is low enough alone; the others only lower that.',
  'works out high': 'With the soil that was typed the system of {at} is higher than the goal.',
  wide: 'What is known of {at} and of the soil leaves it open.',
  'measure the system':
    'Measure the system with everything joined, by fall of potential with far probes, in dry weather; type it under `readings:` with the bar or panel as `electrode:`.',
} as const;
const notClaimed = 'The file claims no standard that asks it.';
const noClass = 'The file claims no class of lightning protection.';
const soilUnknown = 'The resistivity of the soil, on which the length hangs, is not known well enough.';
const measureSoil = 'Take four-pin readings and type them, or the layers under `soil:`.';
const goal =
  'Lay long runs or a ring rather than more rods in one place; short straight ways matter more than the last ohm.';

export const earthResistance = {
  'site-10-ohm': {
    title: 'The whole system of [electrode]s has at most 10 ohm to [ground]',
    failTitle: 'The system of {at} has more than 10 ohm to [ground]',
    why: 'The less the whole site is lifted, the less is driven into the lines that leave it.',
    met: 'Measured with everything joined, or worked out from the soil: a measured figure goes first. It is a goal; shape and short ways matter more.',
    exempt: 'Two rods of any resistance meet the electrical code of the United States; this is another thing.',
    remedy: goal,
    tools: { 'measure the system': 'earth tester' },
    because: { ...system, none: 'No [electrode] is in the file.' },
  },
  'site-3-ohm-wet': {
    title: 'In wet soil the system of an ordnance site has at most 3 ohm to [ground]',
    failTitle: 'The system of {at} has more than 3 ohm to [ground]',
    why: 'Where the soil is wet a low figure is easily had, and explosives stand near.',
    met: 'At most 3 ohm, where the site claims an ordnance standard and its soil is a wet one.',
    remedy: goal,
    tools: { 'measure the system': 'earth tester' },
    because: {
      ...system,
      none: 'No [electrode] is in the file.',
      'not claimed': notClaimed,
      'not wet': 'The soil was not said to be wet.',
    },
  },
  'electrode-10n-ohm': {
    title: 'Each of so many [electrode]s reads at most ten times their number alone',
    failTitle: '{at} alone reads high for its share',
    why: 'Each path takes its share of the stroke; one that is far worse than the others lifts its end of the site.',
    met: 'With five [electrode]s each reads at most 50 ohm alone.',
    remedy: 'Drive {at} deeper or add a run there.',
    tools: { 'measure it': 'earth tester' },
    because: {
      none: 'No [electrode] was measured alone.',
      'over range': '{at} reads over the range of the instrument.',
      low: '{at} reads low enough alone.',
      high: '{at} reads high alone.',
      wide: 'The readings of {at} leave it open.',
      'measure it':
        'Measure {at} alone, by fall of potential, in dry weather; type `resistance:` and `measured: alone`.',
    },
  },
  'loop-50-ohm-trigger': {
    title: 'Where two of any three rods together read over 50 ohm there is a ring',
    failTitle: 'Rods {at} together read over 50 ohm, and there is no ring',
    why: 'In such soil more rods hardly help; a long conductor in the ground does.',
    met: 'The two highest of three rods or more that were measured alone are at most 50 ohm together, or a ring is bonded to them.',
    remedy: 'Lay a ring that joins {at} to the others.',
    tools: { 'measure both': 'earth tester' },
    because: {
      none: 'Fewer than three rods were measured alone.',
      'has a ring': 'A ring is bonded to {at}.',
      low: '{at}, the highest, are low enough together.',
      high: '{at}, the highest, are over 50 ohm together.',
      wide: 'The readings of {at} leave it open.',
      'measure both': 'Measure {at} with the two joined, in dry weather; type it under `readings:`.',
    },
  },
  'type-a-length': {
    title: 'Each [down conductor] has an [electrode] of its own, of the length of its class',
    failTitle: '{at}: an [electrode] is missing, or shorter than the class asks',
    why: 'The first metres in the soil carry the front of the stroke.',
    met: '{=5 m} level or {=2.5 m} upright in classes III and IV; more in classes I and II where the soil is poor. Two [electrode]s at least, and one at the foot of each [down conductor] that is in the file, which no other shares. Any length where it reads below 10 ohm alone.',
    exempt: 'A ring or a footing is the other type, with a condition of its own.',
    remedy:
      'Have a longer [electrode] put in, one more for each [down conductor] that has none of its own, or a ring laid ({at}).',
    tools: { 'count them': 'papers', 'measure it': 'tape', 'measure the soil': 'earth tester' },
    because: {
      none: 'No rod or run serves lightning protection.',
      'not claimed': noClass,
      'a ring': 'A ring or a footing serves the lightning protection.',
      'only one': '{at} is the only one; two at least are asked.',
      'perhaps a ring':
        'Whether {at} comes back to where it begins is not known: a ring is the other type, a single run is one where two at least are asked.',
      'follow it': 'Find out whether {at} closes to a ring; type `closed: yes` or `closed: no`.',
      'perhaps only one':
        '{at} is the only one in the file, and not all [electrode]s were looked at; two at least are asked.',
      'look for others':
        'Look at every [down conductor] for the [electrode] that it leads to, and type those beside {at}.',
      'reads low': '{at} reads below 10 ohm alone: no length is asked.',
      'length unknown': 'The length of {at} is not known.',
      'measure it': 'Look for the mark at {at}, or ask who put it in; type `length:`.',
      'long enough': '{at}: long enough.',
      short: '{at}: shorter than the clause asks.',
      'none at foot': '{at} {at?leads:lead} to no [electrode] at the foot.',
      'foot unknown': 'Whether {at} {at?leads:lead} to an [electrode] at the foot is not known.',
      'follow down':
        'Follow {at} down to the soil, see what {at?it ends:each ends} on, and type that and the [electrode] below it.',
      shared: '{at} lead to {electrodes} alone; one for each is asked.',
      'perhaps shared': 'Whether {electrodes} count as one for each of {at} is not known.',
      'count them':
        'Ask whoever laid {electrodes} how many rods there are, or how long the run is, and which of {at} land on which of it; type each rod or run (`length:`) and where each conductor ends.',
      'soil unknown': soilUnknown,
      'measure the soil': measureSoil,
    },
  },
  'type-b-radius': {
    title: 'A [ground ring] for lightning encloses enough area',
    failTitle: 'Ring {at} encloses too little ground for its class',
    why: 'A small ring has little soil round it.',
    met: 'The radius of a circle of the same area reaches the length of the class ({=5 m} in classes III and IV), or there are at it, one for each [down conductor] and two at least, runs as long as what is missing or rods of half of it.',
    remedy: 'Add a rod or a run at {at} for each [down conductor].',
    tools: { 'measure round it': 'tape', 'measure the others': 'tape', 'measure the soil': 'earth tester' },
    because: {
      none: 'No ring serves lightning protection.',
      'not claimed': noClass,
      'area unknown': 'How much ground {at} encloses is not known.',
      'measure round it': 'Measure the sides of {at}; type `route:` or `area:`.',
      'wide enough': '{at} encloses enough area.',
      'has more': 'Rods or runs at {at} make up for its size.',
      'perhaps more':
        '{at} encloses less than the clause asks; whether rods or runs at it make up for that is not known.',
      'measure the others':
        'Find out how long the rods and runs are that are bonded to {at}, and type each with its `length:`.',
      small: '{at} encloses less than the clause asks, and no rods or runs make up for it.',
      'soil unknown': soilUnknown,
      'measure the soil': measureSoil,
    },
  },
  'unit-sanity': {
    title: 'Readings of a rod are such as soil can give',
    failTitle: 'The reading of {at} is too low for a rod in soil',
    why: 'Below one ohm the instrument most likely read a loop of metal: the rod was not taken off.',
    met: 'One rod alone reads 1 ohm or more (ours: in soil of 3 ohm metres a rod of {=8 ft} has about one).',
    remedy: 'Measure {at} again with its lead taken off, by somebody who knows what else is bonded there.',
    tools: { 'measure alone': 'earth tester' },
    because: {
      none: 'No rod was measured alone.',
      'too low to be': '{at} reads less than soil can give.',
      'can be': '{at} reads as a rod can.',
      wide: 'The readings of {at} leave it open.',
      'measure alone':
        'Leave it to a [electrician] to measure {at} with its lead taken off; type `resistance:` and `measured: alone`.',
    },
  },
  'lightning-rods-not-service-electrode': {
    title: 'The [service] has an [electrode] that is not one of the lightning protection',
    failTitle: 'The [service] has only the [electrode]s of the lightning protection: {at}',
    why: 'What was put in for strokes may be taken off with the lightning protection, and the [service] is left with none.',
    met: 'Beside them at least one [electrode] of its own (that of the supplier is not); the bond between the two is asked for.',
    remedy: 'Drive rods for the [service] and bond them to {at}.',
    because: {
      none: 'No [electrode] of lightning protection is in the file, or where the [service] is [grounded] is not known.',
      'has its own': 'Among {at} is an [electrode] that does not serve lightning protection.',
      perhaps: 'Whether there is one beside {at} is not known.',
      look: 'Look what else the [service] is tied to; type each conductor.',
      'no other': 'All of {at} serve lightning protection.',
    },
  },
  'path-minimum-area': {
    title: 'No conductor further down the way of a mast is thinner than its lead has to be',
    failTitle: '{at}, on the way from a mast to [ground], is thinner than its lead has to be',
    why: 'The thinnest piece of the way melts first, wherever it is.',
    met: 'Each conductor on the way has the section that the lead of a mast must have of its metal. Where there is no figure for a metal (bare aluminium outside the United States and Canada), that is said.',
    exempt: 'The lead itself and the ties of [electrode]s have conditions of their own.',
    remedy: 'Replace {at} with a conductor of the size of the lead, or give the mast a way of its own.',
    tools: { ask: 'papers', 'look at cover': 'eyes' },
    because: {
      none: 'No further conductor is on the way of a mast or antenna to [ground].',
      'size unknown': 'The size is asked about elsewhere.',
      enough: '{at} is large enough.',
      small: '{at} is too small.',
      'measure it': 'Read the print on {at}, or measure across its metal; type `wire:`.',
      'metal not listed': 'No size is named for the metal of {at}.',
      ask: 'Ask the [authority] whether {at} {at?is:are} accepted on the way of a mast to [ground], or lay copper.',
      'bare aluminium':
        '{at} {at?is:are} of bare aluminium, and what is asked of the lead of a mast has a figure of insulated aluminium alone.',
      'cover unknown':
        'Whether the aluminium of {at} is insulated is not known, and what is asked of the lead of a mast has no figure of bare aluminium.',
      'look at cover': 'Look whether {at} {at?is:are} covered and add `insulated` or `bare` to `wire:`.',
      'metal unknown': 'The metal of {at} is not known.',
      'look at it': 'Look what {at} is made of; type it with `wire:`.',
    },
  },
} as const satisfies Record<string, RuleWords>;
