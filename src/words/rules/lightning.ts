import type { RuleWords } from '../rule-words.ts';

const notClaimed = 'The file claims no lightning protection of a building and has no part of one.';
/** One walk settles several conditions. */
const walkRound =
  'Walk round the building and count what leads down from the roof; type each as a conductor with `role: down conductor`, and the corners of the building.';
const follow =
  'Follow the lightning protection from the roof to the soil and see what joins {at} to it; type its conductors (`role: down conductor`) and terminals (`kind: air terminal`), and the distance under `near:` where nothing joins them.';

/** A tie where the two are kept apart leads part of the strike into the building. */
export const askDesigner =
  'Ask whoever designed the lightning protection whether {at} {at?is:are} to be tied to it or kept apart, and change nothing before. To have it worked out, type its class, places and heights, and under `near:` how far {at} {at?is:are} from each terminal and [down conductor].';

const beside = {
  title: 'Metal beside a lightning conductor is bonded to it or keeps its distance',
  failTitle: '{at}: the metal is too near to the lightning conductor, and not bonded to it',
  why: 'A strike jumps from its conductor to metal beside it, and through whoever stands there.',
  remedy: 'Bond the metal to the lightning conductor where they are near each other, or move it away ({at}).',
  tools: { tape: 'tape' },
  because: {
    'not claimed': notClaimed,
    none: 'No metal body, or no conductor that is called a [down conductor], is in the file.',
    'no distance': 'The file gives no distance between metal and a [down conductor].',
    bonded: '{at} are bonded to each other.',
    far: '{at} keep the distance that is asked at any height of the conductor.',
    near: '{at} are nearer than is asked at that height.',
    'bonded lower':
      '{at} are bonded to each other, perhaps at the foot of the building alone, and at that height they are nearer than is asked of metal whose bond is down there.',
    'look up': 'Look whether a conductor joins {at} near the place where they are close to each other; type it.',
    'bond unknown': '{at} are nearer than is asked where no bond joins them; whether one does nobody said.',
    'look for bond': 'Look at {at} for a clamp and a conductor; type `bonded:` or the conductor.',
    'height unknown': 'Whether {at} keep their distance hangs on the height of the place and on what lies between.',
    tape: 'Measure how high above the ground {at} come near each other, and how near; type the height as the third figure of `at:` of the metal, the distance under `near:`, or the bond.',
  },
} as const;

export const lightning = {
  'down-conductor-count': {
    title: 'Lightning protection that is claimed leads down at enough places',
    failTitle: 'The lightning protection leads down at too few places',
    why: 'Each further way down halves what one of them carries and what flashes over from it.',
    met: 'At least two [down conductor]s; in the United States one more for every {=30 m} of perimeter beyond {=75 m}. A slender mast or pole needs one.',
    remedy: 'Have another [down conductor] led down on the far side of the building.',
    because: {
      'not claimed': notClaimed,
      'no building': 'The site has no building: one way down is enough for a slender mast or pole.',
      'how far round': 'How many are asked hangs on the way round the building, which is not known ({at}).',
      enough: 'It leads down by {at}.',
      'not typed': 'Not every [down conductor] is in the file.',
      'walk round': walkRound,
      few: 'It leads down by {at} alone.',
    },
  },
  'down-conductor-spacing-iec': {
    title: 'Ways down of a lightning protection stand as close as its class asks',
    failTitle: 'The ways down of the lightning protection stand too far apart',
    why: 'Between ways down that are far apart more voltage stands, and more metal has to be bonded.',
    met: 'The way round the building for each [down conductor] is about {=10 m} (classes I and II), {=15 m} (III) or {=20 m} (IV); a fifth more is accepted.',
    remedy: 'Have more [down conductor]s led down between {at}.',
    tools: { 'ask class': 'papers', 'walk round': 'tape' },
    because: {
      'not claimed': notClaimed,
      'no building': 'The site has no building.',
      'class unknown': 'The class of the lightning protection is not known.',
      'ask class': 'Ask whoever installed the lightning protection for its class and type it: `claims: class III`.',
      'not typed': 'Not every [down conductor], or not every corner of the one building, is in the file.',
      'walk round': walkRound,
      wide: 'The building is long round for {at}.',
      'close enough': 'The ways down stand close enough.',
    },
  },
  'claimed-standard-named': {
    title: 'Lightning protection that is claimed has a name and a certificate',
    failTitle: 'Lightning protection is claimed, and the file names neither who installed it nor a certificate',
    why: 'An insurer and the next owner believe paper; a mast with a wire is no protection of a building.',
    met: '`site.certificate` names who installed it and its certificate.',
    remedy: 'Ask for the certificate and type it under `site.certificate`, or take the claim back.',
    tools: { 'ask for it': 'papers' },
    because: {
      'not claimed': notClaimed,
      named: 'The file names the certificate.',
      'nobody knows':
        'Nobody knows who installed the lightning protection that is claimed, or whether it has a certificate.',
      'ask for it':
        'Ask the owner and the installer for the certificate and type it under `site.certificate`; where there is none, type `none`.',
      'not named': 'The file claims lightning protection without a certificate.',
    },
  },
  'roof-mast-bonded-to-lightning-system': {
    title: 'A metal mast on a protected roof is bonded to the lightning protection',
    failTitle: '{at} stands beside the lightning protection and nothing joins them',
    why: 'A mast beside a lightning conductor is struck from it through the air, and the feed line carries that into the room.',
    met: 'The mast is in one group with the lightning protection by a conductor of main size (in the United States copper of {=29 mm2} or aluminium of {=50 mm2}, above {=75 ft} twice that; {=50 mm2} by IEC), or lies inside the protected zone with the [separation distance] kept.',
    remedy:
      'Have whoever designs the lightning protection join {at} to it by a conductor of main size. By IEC {at} can also be set under its terminals and apart.',
    tools: { 'ask designer': 'papers', 'measure it': 'wire gauge', 'measure height': 'tape' },
    because: {
      none: 'No metal mast stands on a roof.',
      'not claimed': notClaimed,
      'system not typed': 'Lightning protection is claimed, and no part of it is in the file.',
      'not bonded':
        'No bond between {at} and the lightning protection is in the file, and how far they are from each other is not known well enough.',
      follow,
      apart: 'No bond joins {at} to the lightning protection, which is nearer than {=1.8 m}.',
      'stands apart':
        '{at} {at?lies:lie} under the air terminals and {at?keeps:keep} the [separation distance] from them and from each [down conductor]: no tie is asked.',
      'too near': 'No bond joins {at} to the lightning protection, which is nearer than the [separation distance].',
      'outside zone':
        '{at} {at?stands:stand} outside the zone that the air terminals protect, and no bond joins {at?it:them} to the lightning protection.',
      'may stand apart':
        'No main conductor joins {at} to the lightning protection. None is asked under its terminals and apart from it, and whether {at} {at?stands:stand} so is not known.',
      'ask designer': askDesigner,
      bonded: '{at} is bonded to the lightning protection.',
      'size unknown': 'How thick the bond of {at} to the lightning protection is, or of what metal, is not known.',
      'measure it': 'Measure the conductor on {at}, look what metal it is of, and type `wire:`.',
      'height unknown': 'Whether the bond of {at} is of main size hangs on the height of the building.',
      'measure height': 'Measure or estimate the height of the building under {at}, and type `height:`.',
      thin: '{at} is bonded to the lightning protection by less than a main conductor.',
    },
  },
  'lead-in-clear-of-lightning-conductor': {
    title: 'Lead-ins and lightning conductors keep their distance, or are bonded',
    failTitle: '{at}: lead-in and lightning conductor are too near to each other',
    why: 'A strike jumps from the lightning conductor to a lead-in beside it.',
    met: 'They are at least {=1.8 m} apart, or the shield of the lead-in is bonded to the lightning protection (earlier editions release the distance then).',
    remedy: 'Lead {at} {=1.8 m} apart, or bond the shield to the lightning protection outdoors.',
    tools: { tape: 'tape' },
    because: {
      none: 'No lead-in, or no conductor that is called a [down conductor], is in the file.',
      clear: '{at} keep their distance.',
      bonded: '{at} are bonded to each other.',
      near: '{at} are nearer than the clause allows, and not bonded.',
      'distance unknown': 'How near {at} come to each other is not known.',
      tape: 'Measure how near {at} come to each other and type it under `near:`.',
    },
  },
  'antenna-in-protected-zone': {
    title: 'Where lightning protection is claimed, every antenna lies under an air terminal',
    failTitle: '{at} {at?stands:stand} outside the zone that the air terminals protect',
    why: 'An antenna that stands out is what is struck, and its feed line is the way in.',
    met: 'A rolling sphere ({=46 m} in the United States; {=20 m}, {=30 m}, {=45 m} or {=60 m} for classes I to IV) that rests on the ground and on an air terminal {=0.25 m} higher does not meet it.',
    remedy:
      'Have a higher terminal put up beside {at}, or treat {at} as what is struck: bond the mast and fit arresters.',
    because: {
      none: 'No antenna stands outdoors.',
      'not claimed': notClaimed,
      under: '{at} lies under an air terminal.',
      'not typed': 'Places, heights or the class of the air terminals over {at} are not known.',
      survey:
        'Ask whoever installed the lightning protection for its plan; type its class, each `air terminal` with place and height, and the height of {at}.',
      several:
        'No one air terminal covers {at}; whether several of them, or one and a roof, do so together does not follow from the file.',
      outside: 'A rolling sphere meets {at}.',
    },
  },
  'mast-as-strike-termination': {
    title: 'A mast that stands in for an air terminal is thick enough',
    failTitle: 'The wall of {at} is too thin to stand in for an air terminal',
    why: 'A strike burns through a thin tube.',
    met: 'The wall of the tube is at least {=4.8 mm}. Asked where lightning protection is claimed and no air terminal is in the file.',
    remedy: 'Put an air terminal on {at}, or have one put up beside {at?it:them}.',
    tools: { measure: 'tape' },
    because: {
      none: 'No metal tube is among the supports.',
      'not claimed': 'No lightning protection is claimed, or it has air terminals of its own.',
      unknown: 'The thickness of the wall of {at} is not known.',
      measure: 'Measure the wall of {at} at an open end, or look up the tube; type `wall:`.',
      thick: 'The wall of {at} is thick enough.',
      thin: 'The wall of {at} is thinner than the clause asks.',
    },
  },
  'side-flash-distance-us': {
    ...beside,
    met: 'The metal is bonded to the lightning protection, or farther from the conductor than its height above the nearest bond divided by 6 (one [down conductor] within {=100 ft} of the metal), 9 (two) or 13.5 (three and more); half of that through a wall.',
  },
  'separation-distance-iec': {
    ...beside,
    title: 'Metal and wiring beside a lightning conductor are bonded to it or keep their distance',
    failTitle: '{at} are nearer to each other than the [separation distance], and not bonded to each other',
    why: 'A strike jumps from its conductor to metal or wiring beside it, and through whoever stands there.',
    met: 'The metal is bonded to the lightning protection, or metal or wiring is farther from the conductor than the [separation distance]: the length to the nearest bond times 0.08, 0.06 or 0.04 (class I, II, III and IV), times 1, 0.66 or 0.44 (one, two, three [down conductor]s), doubled through a wall. Lines that lie in the soil outdoors alone are left out.',
    remedy:
      'Have an installer of lightning protection bond the metal, or the wiring through a protector, where they are near each other, or move it away ({at}).',
    tools: { ...beside.tools, 'tape wiring': 'tape', 'tape wiring bond': 'tape' },
    because: {
      ...beside.because,
      'no distance': 'The file gives no distance between metal or wiring and a [down conductor].',
      'wiring not placed': 'How far {at} {at?runs:run} from the [down conductor]s is not known.',
      'tape wiring':
        'Look where {at} {at?runs:run} along the inside and the outside of the walls that a [down conductor] goes down, and measure how near {at?it:each} comes to it; type the distance under `near:` of the line.',
      'wiring perhaps bonded':
        '{at} are nearer to each other than the [separation distance]; whether the wiring is bonded to the lightning protection, or has a protector there, is not known.',
      'type sections':
        'Look for what bonds the wiring ({at}) or protects it; type that under {fields}, or `none` where nothing of it is there.',
      'follow wiring':
        'Follow the wiring ({at}) from end to end; type its stops under `path:`, with each bond of its shield and each protector, and take out of `site.incomplete` what was looked at.',
      'wiring bonded':
        'The wiring is bonded to the lightning protection, or has a protector there; whether {at} keep their distance hangs on the length of the conductor from the place where they are near down to that bond.',
      'tape wiring bond':
        'Measure how near {at} come to each other and the length of the conductor from there down to the bond; the wiring has to keep the [separation distance] for that length. Ask an installer of lightning protection.',
    },
  },
} as const satisfies Record<string, RuleWords>;
