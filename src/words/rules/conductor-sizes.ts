import type { RuleWords } from '../rule-words.ts';
import { sizeSentences, sizeTools } from './size-sentences.ts';

const byService = {
  ...sizeSentences,
  'service unknown':
    '{at} is thinner than is never questioned; whether it is enough hangs on the size of the [service] conductors.',
  'read service':
    'Ask the supplier or a [electrician] for the size of the [service] conductors, and type `service_wire:` of the panel. Do not open the panel for it.',
} as const;
const byServiceTools = { ...sizeTools, 'read service': 'electrician' } as const;

const electrodeWire = {
  why: 'The wire from the [service] to its [electrode]s carries fault current and the surges of the supply line; a thin one melts at its clamp.',
  remedy: 'Have a [electrician] replace {at} with the size that the table asks for the [service].',
  tools: byServiceTools,
  because: byService,
} as const;

const claimed = { 'not claimed': 'No lightning protection system is claimed or typed.' } as const;
const standard = { 'not claimed': 'No military or aviation standard is named.' } as const;
const elsewhere = { 'asked elsewhere': 'No size is known; the rule that asks less of it asks for the size.' } as const;
const height = {
  'height unknown': 'Whether {at} {at?is:are} thick enough hangs on the height of the building.',
  'measure height':
    'Measure or estimate the height of the building that {at} {at?belongs:belong} to, and type `height:`.',
} as const;
const mainTools = { ...sizeTools, 'measure height': 'tape' } as const;

export const conductorSizes = {
  'rod-only-conductor-size': {
    ...electrodeWire,
    title:
      'The wire from the [service] to rods, pipes or plates is as thick as the table asks, at most {=6 AWG} copper',
    failTitle: 'The wire {at} from the [service] to its rods is too thin',
    met: '{=6 AWG} copper or {=4 AWG} aluminium, whatever the [service]; less where the table allows less. A wire that goes on to another kind of [electrode] is judged by that one.',
  },
  'concrete-only-conductor-size': {
    ...electrodeWire,
    title:
      'The wire from the [service] to a [concrete-encased electrode] is as thick as the table asks, at most {=4 AWG} copper',
    failTitle: 'The wire {at} from the [service] to the footing is too thin',
    met: '{=4 AWG} copper, whatever the [service]; less where the table allows less.',
  },
  'ring-conductor-size': {
    ...electrodeWire,
    title: 'The wire from the [service] to a [ground ring] is as thick as the table asks, at most as thick as the ring',
    failTitle: 'The wire {at} from the [service] to the ring is too thin',
    met: 'As thick as the wire of the ring, whatever the [service]; less where the table allows less.',
    tools: { ...byServiceTools, 'measure ring': 'wire gauge' },
    because: {
      ...byService,
      'ring unknown': 'Whether {at} {at?is:are} thick enough hangs on the wire of the ring, whose size is not known.',
      'measure ring': 'Measure the bare wire of the ring that {at} {at?lands:land} on and type its `wire:`.',
    },
  },
  'service-conductor-size': {
    ...electrodeWire,
    title: 'The wire from the [service] to a water pipe, a frame or another [electrode] has the size of the table',
    failTitle: 'The wire {at} from the [service] is thinner than the table asks',
    met: 'The size that the table gives for the [service] conductors: from {=8 AWG} to {=3/0 AWG} copper. Leave this one to a [electrician].',
    tools: { ...byServiceTools, 'follow ring': 'eyes' },
    because: {
      ...byService,
      'perhaps a ring':
        '{at} {at?is:are} thick enough if the wire in the soil closes to a ring, and too thin if it does not; which it is, is not known.',
      'follow ring':
        'Look on the drawing, or at both ends of the wire in the soil that {at} {at?lands:land} on, and type `closed:`.',
    },
  },
  'communications-conductor-size': {
    title: 'The lead of a telephone, cable or network protector is at least {=14 AWG} copper',
    failTitle: 'The lead {at} of a protector is too thin',
    why: 'The lead carries what the protector takes off the line; what melts there leaves the line without one.',
    met: '{=14 AWG} copper or more, and what the shield of a cable can carry; more than {=6 AWG} is never asked.',
    remedy: 'Replace {at} with {=14 AWG} copper or more; {=6 AWG} is never questioned.',
    exempt: 'Leads of antennas, masts and their arresters are judged by mast-ground-size.',
    tools: sizeTools,
    because: sizeSentences,
  },
  'comms-electrode-bond-size': {
    title: 'An [electrode] of telephone, cable or network is tied to the others by at least {=6 AWG} copper',
    failTitle: 'The tie {at} of the telephone or cable [electrode] is too thin',
    why: 'Two [electrode]s in one soil stand at different voltages in a storm; the tie carries the current that evens them out.',
    met: '{=6 AWG} copper or more.',
    remedy: 'Replace {at} with {=6 AWG} copper or more.',
    tools: sizeTools,
    because: sizeSentences,
  },
  'down-conductor-size-us': {
    title: 'Main conductors of a lightning protection system are at least {=29 mm2} copper or {=50 mm2} aluminium',
    failTitle: 'Lightning conductor {at} is too thin',
    why: 'A main conductor may carry the whole strike; a thin one melts or is torn from its fixings.',
    met: 'That section up to a height of {=75 ft}; 58 mm² copper or 97 mm² aluminium above.',
    remedy: 'Replace {at} with a main conductor of the lightning protection system.',
    exempt: 'Sites that claim no lightning protection system and have no air terminal or [down conductor].',
    tools: mainTools,
    because: { ...sizeSentences, ...claimed, ...height },
  },
  'common-bond-main-size': {
    title: 'The tie between the lightning [electrode]s and the others is of main conductor size',
    failTitle: 'The tie {at} to the lightning [electrode]s is too thin',
    why: 'A strike raises the lightning [electrode]s; what evens them out with power, telephone and antenna carries a great part of it.',
    met: '29 mm² copper or 50 mm² aluminium up to a height of {=75 ft}, twice that above. Stricter than the {=6 AWG} of the electrical code. The wire from the [service] to a lightning [electrode] is such a tie.',
    remedy: 'Replace {at} with a main conductor of the lightning protection system.',
    exempt: 'Sites that claim no lightning protection system.',
    tools: mainTools,
    because: { ...sizeSentences, ...claimed, ...height, ...elsewhere },
  },
  'bonding-conductor-size-us': {
    title: 'Bonds from a lightning protection system to metal are at least {=6 AWG} copper or 21 mm² aluminium',
    failTitle: 'The bond {at} of the lightning protection is too thin',
    why: 'The bond keeps a strike from jumping to the metal; it carries the share that would have jumped.',
    met: '{=6 AWG} copper or more; 20.8 mm² aluminium.',
    remedy: 'Replace {at} with {=6 AWG} copper or more.',
    exempt: 'Sites that claim no lightning protection system.',
    tools: sizeTools,
    because: { ...sizeSentences, ...claimed },
  },
  'down-conductor-size-iec': {
    title: 'Conductors from the air terminals down have at least {=50 mm2} (an aluminium tape {=70 mm2})',
    failTitle: '[Down conductor] {at} is too thin',
    why: 'It has to stand the force and the heat of a strike, and the weather of decades.',
    met: '50 mm² of copper, aluminium or steel: a round wire of 8 mm. Thinner copper is allowed only where strength does not matter.',
    remedy: 'Replace {at} with a round wire of 8 mm or a tape.',
    exempt: 'Sites that claim no lightning protection system and have no air terminal or [down conductor].',
    tools: sizeTools,
    because: { ...sizeSentences, ...claimed },
  },
  'au-down-conductor': {
    title: '[Down conductor]s are at least 35 mm² copper or 70 mm² aluminium',
    failTitle: '[Down conductor] {at} is thinner than advised',
    why: 'It has to stand the force and the heat of a strike, and the weather of decades.',
    met: 'That section or more.',
    remedy: 'Replace {at} with at least 35 mm² copper or 70 mm² aluminium.',
    exempt: 'Sites that claim no lightning protection system and have no air terminal or [down conductor].',
    tools: sizeTools,
    because: { ...sizeSentences, ...claimed },
  },
  'transmit-protective-ground-size': {
    title:
      'At a transmitting station the lead of mast and arrester is at least {=10 AWG}, and as thick as an open lead-in',
    failTitle: 'The lead {at} is too thin for a transmitting station',
    why: 'The lead has to carry what the lead-in can bring.',
    met: '{=10 AWG} copper, bronze or copper-clad steel, and no thinner than an open lead-in. A coaxial lead-in asks for {=10 AWG} alone.',
    remedy:
      'Replace {at} with {=10 AWG} copper, or as thick as an open lead-in where that is thicker; better {=6 AWG} or a strap.',
    tools: sizeTools,
    because: {
      ...sizeSentences,
      ...elsewhere,
      'lead-in unknown':
        '{at} {at?has:have} {=10 AWG} or more; whether {at?it is:they are} as thick as the open lead-in ({lines}) is not known.',
      'read it': 'Read or measure the wires of {lines} and type their size under `cable:`, such as `14 AWG copper`.',
    },
  },
  'transmit-operating-ground-size': {
    title: 'The lead from a transmitter or tuner to its bar or [electrode] is at least {=14 AWG} copper',
    failTitle: 'The lead {at} of the transmitter is too thin',
    why: 'A thread of wire at the back of a radio is broken by the first pull.',
    met: '{=14 AWG} copper or more. A lead that is also the lead of a mast or arrester has to meet what is asked of that.',
    remedy: 'Replace {at} with {=14 AWG} copper or more; better a strap.',
    tools: sizeTools,
    because: { ...sizeSentences, ...elsewhere },
  },
  'panel-to-rod-conductor': {
    title: 'From the [entry panel] to its [electrode] leads a strap at least {=1.5 in} wide, or {=6 AWG}',
    failTitle: 'The lead {at} of the [entry panel] is thin',
    why: 'A wide strap has less inductance than a wire: the panel stays closer to [ground] in a strike. Its thickness matters little.',
    met: 'A strap of {=1.5 in} or wider, or {=6 AWG} or more. Straight down is best.',
    remedy: 'Replace {at} with a copper strap, straight down.',
    tools: sizeTools,
    because: {
      none: 'No conductor leads from an [entry panel] to an [electrode].',
      enough: '{at} is wide or thick enough.',
      small: '{at} is neither wide nor thick.',
      'size unknown': 'The size of {at} is not known well enough.',
      'measure it': sizeSentences['measure it'],
      ...elsewhere,
    },
  },
  'size-by-length': {
    title: 'Bonds of the station are 2000 circular mils thick for each foot of length (3.3 mm² for each metre)',
    failTitle: 'Bond {at} is thin for its length',
    why: 'A long bond needs more metal for the same resistance.',
    met: 'That section for its length: at {=10 ft}, 10 mm². Asked where a military or aviation standard is named.',
    remedy: 'Replace {at} with a thicker conductor or a strap.',
    exempt: 'Sites that name no such standard under `code:` or `claims:`.',
    tools: { 'measure it': 'tape' },
    because: {
      none: sizeSentences.none,
      ...standard,
      enough: '{at} is thick enough for its length.',
      small: '{at} is thinner than asked for its length.',
      'size unknown': 'Section or length of {at} is not known well enough.',
      'measure it': 'Measure {at} along its run, and its metal across; type `length:` and `wire:`.',
    },
  },
  'facility-ring-size': {
    title: 'Rings and ties of a facility are at least {=1/0 AWG} copper ({=4/0 AWG} in aviation)',
    failTitle: '{at} is thinner than the standard of the facility advises',
    why: 'A ring in the soil has to last for decades and carry strikes in the meantime.',
    met: '{=1/0 AWG} copper where a military standard is named, {=4/0 AWG} where one of aviation is.',
    remedy: 'Lay a thicker conductor when {at} is dug up next.',
    exempt: 'Sites that name no such standard under `code:` or `claims:`.',
    tools: sizeTools,
    because: { ...sizeSentences, ...standard },
  },
  'tower-lead-size': {
    title: 'Leads from the legs of a tower are at least {=2/0 AWG} tinned copper',
    failTitle: 'Lead {at} of the tower is not as the standard advises',
    why: 'The leads of the legs share a whole strike.',
    met: '{=2/0 AWG} tinned copper by edition G of the standard, {=6 AWG} by edition F; H was not read. Asked where the standard is named.',
    remedy: 'Replace {at} with {=2/0 AWG} tinned copper ({=6 AWG} by edition F).',
    exempt: 'Sites that do not name TIA-222 under `code:` or `claims:`.',
    tools: { ...sizeTools, 'ask edition': 'papers' },
    because: {
      ...sizeSentences,
      'not claimed': 'TIA-222 is not named in an edition whose figure is known.',
      'not tinned': '{at} is thick enough, and not of tinned copper.',
      'edition unknown': 'Whether {at} {at?is:are} thick enough hangs on the edition of TIA-222.',
      'ask edition': 'Look on the drawing of the tower for the edition of TIA-222 and type it under `code:`.',
    },
  },
  'tactical-conductor-size': {
    title: 'A temporary station’s [grounding] wire is at least {=6 AWG} copper',
    failTitle: 'The wire {at} of the temporary station is thin',
    why: 'Wire that is rolled out and in again breaks strand by strand.',
    met: '{=6 AWG} copper or more. Asked of a temporary station.',
    remedy: 'Use {=6 AWG} stranded copper for {at}.',
    exempt: 'Stations that are not temporary.',
    tools: sizeTools,
    because: { ...sizeSentences, ...elsewhere, 'not claimed': 'The station is not temporary.' },
  },
  'earthing-conductor-size-iec': {
    title:
      'The [electrode conductor] from the main bar is at least 6 mm² copper or 50 mm² steel; bare in soil 25 mm² copper',
    failTitle: '[Electrode conductor] {at} is too thin',
    why: 'The one conductor to the [electrode] carries fault current, and corrodes where it enters the soil.',
    met: '6 mm² copper or 50 mm² steel; 16 mm² copper where lightning protection shares it; bare copper in the soil 25 mm².',
    remedy: 'Have a [electrician] replace {at} with 25 mm² copper or 50 mm² steel.',
    tools: sizeTools,
    because: {
      ...sizeSentences,
      'soil unknown':
        '{at} {at?is:are} thick enough above ground and too thin bare in the soil; where {at?it runs:they run} is not known.',
      'cover unknown':
        '{at} {at?lies:lie} in the soil and {at?is:are} thick enough covered and too thin bare; which it is, is not known.',
      'say buried':
        'Look where {at} {at?goes:go} and type `buried:` (no, or how deep); add `insulated` or `bare` to `wire:`.',
    },
  },
  'antenna-bonding-size-iec': {
    title: 'Bonds of cable screens and arresters are at least 4 mm² copper, 2.5 mm² where protected',
    failTitle: 'The bond {at} of the antenna line is too thin',
    why: 'The bond keeps the screen from rising; a thin wire in the open breaks.',
    met: '4 mm² copper, or 2.5 mm² in a pipe or in a wall. Where lightning current may run, antenna-earthing-size-iec asks more.',
    remedy: 'Replace {at} with 4 mm² copper or more.',
    tools: sizeTools,
    because: {
      ...sizeSentences,
      'shelter unknown': '{at} would do in a pipe and is too thin in the open; how {at?it runs:they run} is not known.',
      look: 'Look whether {at} {at?runs:run} in a pipe or in the open; type `enclosure:` or `runs:`.',
    },
  },
  'bar-to-bar-bond-iec': {
    title:
      'Bonds between bars, and from a bar to [ground], are at least 16 mm² copper, 25 mm² aluminium or 50 mm² steel (14, 22 and 50 in 2006)',
    failTitle: 'The bond {at} between bars is too thin',
    why: 'With lightning protection on the building these bonds carry a share of the strike.',
    met: 'That section; 14 and 22 mm² where the 2006 edition applies.',
    remedy: 'Replace {at} with 16 mm² copper or more.',
    exempt: 'Sites that claim no lightning protection system.',
    tools: sizeTools,
    because: { ...sizeSentences, ...claimed },
  },
  'body-to-bar-bond-iec': {
    title:
      'Bonds from metal indoors to a bar are at least 6 mm² copper, 10 mm² aluminium or 16 mm² steel (5, 8 and 16 in 2006)',
    failTitle: 'The bond {at} to the bar is too thin',
    why: 'With lightning protection on the building even bonds indoors carry some of the strike.',
    met: 'That section; 5 and 8 mm² where the 2006 edition applies.',
    remedy: 'Replace {at} with 6 mm² copper or more.',
    exempt: 'Sites that claim no lightning protection system.',
    tools: sizeTools,
    because: { ...sizeSentences, ...claimed },
  },
  'bar-section-iec': {
    title: 'A bar has a section of at least 50 mm² copper or zinc-coated steel',
    failTitle: 'The bar {at} is too thin',
    why: 'All shares of a strike meet on the bar.',
    met: '50 mm² of copper or zinc-coated steel.',
    remedy: 'Replace {at} with a bar of 50 mm² or more.',
    exempt: 'Sites that claim no lightning protection system.',
    tools: { 'measure it': 'tape', ask: 'papers' },
    because: {
      ...claimed,
      none: 'No bar is in the file.',
      enough: '{at} is thick enough.',
      small: '{at} has less section than asked.',
      'not known': 'Section or metal of {at} is not known.',
      'measure it': 'Measure width and thickness of {at}; type `section:` and `metal:`.',
      'metal not listed': sizeSentences['metal not listed'],
      ask: sizeSentences.ask,
    },
  },
  'surge-device-conductor': {
    title: 'The lead of a [surge protector] is at least 16 mm² (class I), 6 mm² (class II) or 1 mm² copper (class III)',
    failTitle: 'The lead {at} of the protector is too thin',
    why: 'The lead carries what the protector takes off the mains.',
    met: 'The section of its class. 16 mm² does for any.',
    remedy: 'Have a [electrician] replace {at} with the section of its class.',
    tools: sizeTools,
    because: {
      ...sizeSentences,
      'class unknown': 'Whether {at} {at?is:are} thick enough hangs on the class that the protector was tested to.',
      'read class':
        'Read the class on the protector of {at} (T1, T2, T3, or I, II, III) and type `test_class:`. Do not open the panel for it.',
    },
  },
} as const satisfies Record<string, RuleWords>;
