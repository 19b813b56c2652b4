import type { RuleWords } from '../rule-words.ts';
import { leadSentences, leadTools } from './lead-sentences.ts';
import { ownSupplySentences } from './own-supply-sentences.ts';

const followIt =
  'Follow {at} from end to end and type under `path:` each stop, where it goes through the wall, and what it is bonded to there.';
const placeUnknown = 'The file does not say where {at} {at?goes:go} through the wall.';
const unprotected = {
  none: 'No such line comes in from outside.',
  protected: 'Every core of {at} is covered: {by}.',
  'count unknown':
    'It is not known how many wires {at} {at?has:have}, or how many {at?its protector covers:their protectors cover}.',
  'count wires':
    'Count the wires of {at} and the wires that {at?its protector covers:their protectors cover}; type `wires:` and `covers:`.',
  'place unknown': placeUnknown,
  'follow it': followIt,
  bare: 'Nothing protects {at} on its way in from outside.',
  'one for two':
    '{at} {at?goes:go} into {buildings}, and all that covers {at?it:them} is {by}: each building needs its own.',
  partly: 'The protectors of {at} leave out {count} of its conductors.',
} as const;

export const lines = {
  'shield-bonded-at-entry': {
    title: 'Each coax shield is bonded where it goes indoors',
    failTitle: 'The shield of {at} goes indoors without a bond at the wall',
    why: 'A shield that is not bonded at the wall carries the current of a strike into the room and on through the radio to the mains.',
    met: 'Between the last stop outside and the first inside, or at the wall, the shield is bonded to something; a bond at the mast alone is not that. Cable television counts too.',
    remedy:
      'Bond the shield of {at} at an [entry panel] (cable television: a [grounding] block) at the wall, and that to the [electrode system].',
    because: {
      none: 'No coax goes through a wall.',
      bare: 'Nothing bonds the shield of {at} at the wall.',
      'place unknown': placeUnknown,
      'follow it': followIt,
      bonded: 'The shield of {at} is bonded to {bondedTo} before it goes in.',
      floating: 'What the shield of {at} is bonded to at the wall reaches no [electrode].',
      perhaps:
        'Whether what the shield of {at} is bonded to at the wall is there and reaches an [electrode] is not known.',
      look: 'Look at the wall what the shield of {at} is clamped to, follow that to where it ends, and type it as a conductor.',
    },
  },
  'panel-tied-to-service': {
    title: 'Every [entry panel] and bar is tied to the system of the [service]',
    failTitle: '{at} is not tied to the [service]',
    why: 'A panel that floats, or has only a rod of its own, puts the whole difference between two [ground]s across the radio.',
    met: 'Permanent metal leads from the bar to the [service]. A new conductor is {=6 AWG} copper or more; outside the United States and Canada 16 mm².',
    remedy: 'Run a [bonding conductor] of at least {=6 AWG} copper from {at} to the system of the [service].',
    remedyAbroad:
      'Have a [electrician] run a [bonding conductor] of at least 16 mm² copper from {at} to the system of the [service]. Do not make this connection yourself.',
    because: {
      ...ownSupplySentences,
      none: 'No bar is in the file.',
      'field station': 'The station has no power service.',
      'service unknown': 'The file does not say where the power service is.',
      'find service': 'Look where the power service is [grounded] and name it under `site.service`.',
      tied: '{at} is tied to the [service].',
      perhaps: 'Whether {at} {at?is:are} tied to the [service] depends on what is not known.',
      trace:
        'Trace the conductors that end on {at}; where {at?it is:one is} bolted straight to [grounded] metal, type what that is under `on:`, and `bonded: yes`.',
      apart: 'No permanent metal joins {at} to the [service].',
    },
  },
  'arrester-bonded': {
    title: 'Every arrester is bonded to an [electrode]',
    failTitle: 'Arrester {at} is bonded to nothing',
    why: 'An arrester that leads nowhere protects nothing: it can only hand the surge on.',
    met: 'Permanent metal leads from the body of the arrester to an [electrode].',
    remedy: 'Bolt {at} to a bar that is tied to the system of the [service].',
    because: {
      none: 'No arrester is in the file.',
      bonded: '{at} reaches an [electrode] through permanent metal.',
      perhaps: 'Whether {at} {at?is:are} bonded depends on what is not known.',
      look: 'Look at {at} for {at?its bolt or lead:their bolts or leads} and follow {at?it to where it ends:each to where it ends}; type it as `on:` or as a conductor.',
      'supply unknown':
        '{at} {at?is:are} bonded to the [main bar], and whether the supply brings the network operator’s [ground] along (TN) or not (TT) is not known.',
      'find supply':
        'Ask the network operator, or read the label at the meter: TN-S, TN-C-S (PME) or TT; type it under `site.supply`.',
      'supplier only':
        '{at} {at?is:are} bonded to the [main bar], which the network operator [ground]s; no [electrode] of the building is in the file.',
      'ask about earth':
        'Look for an [electrode] of the building (footing, lightning protection) and type it, or have a [electrician] confirm what the local rule accepts for an antenna on this supply.',
      floating: 'No permanent metal leads from {at} to any [electrode].',
    },
  },
  'arrester-on-every-feed-line': {
    title: 'Every feed line that comes in has an arrester on its core',
    failTitle: 'The core of {at} comes in without an arrester',
    why: 'Bonding the shield does not limit the voltage of the core: without an arrester it ends in the receiver.',
    met: 'An arrester stands on the line. A shield that is [grounded] releases the line from the code’s own item, not from this one.',
    remedy: 'Fit an arrester of the right kind on {at}, bolted to the [entry panel] outside.',
    because: unprotected,
  },
  'arrester-on-every-control-line': {
    title: 'Every control, telephone and data line that comes in is protected, wire by wire',
    failTitle: '{at} comes in with wires that nothing protects',
    why: 'One unprotected wire is enough: most damage comes in by lines that are not coax.',
    met: 'Protectors cover every wire of the line; fibre without metal brings nothing in.',
    remedy: 'Fit protectors for every wire of {at} on the same panel as the feed lines, or put fibre in its place.',
    because: unprotected,
  },
  'discharge-unit-place': {
    title: 'Arresters of antenna lines are outdoors, or close to the entry',
    failTitle: 'Arrester {at} is indoors',
    tools: { 'measure it': 'tape' },
    why: 'Indoors, the way to the arrester and away from it runs past people and wiring.',
    met: 'The arrester is outside, or indoors within {=1 m} of where its line comes in (our figure: the code says as near to the entry as practicable). Indoors at a distance that nobody typed (`from_entry:`) is advice: outside is preferred.',
    remedy:
      'Move {at} outside to the [entry panel]; where that cannot be, as near to the point of entry as practicable.',
    because: {
      none: 'No arrester of an antenna line is in the file.',
      'place unknown': 'The file does not say where {at} {at?is:are}.',
      'say where': 'Look where {at} {at?is:are} and type `where:`.',
      outside: '{at} is outside.',
      inside: '{at} is inside a building; how far from where its line comes in is not in the file.',
      'near the entry': '{at} is inside, close to where its line comes in.',
      'far inside': '{at} is inside a building, farther from where its line comes in than is near.',
      'run unknown':
        'How far {at} {at?is:are} from where {at?its line comes:their lines come} in is not known well enough.',
      'measure it': 'Measure along the line from the wall to {at} and type `from_entry:`.',
    },
  },
  'arrester-lead-short': {
    title: 'Arresters are bolted to the bar, not hung on a long wire',
    failTitle: 'Arrester {at} has a long lead',
    why: 'The lead’s inductance adds about a kilovolt for each metre and kiloampere per microsecond to what the arrester lets pass.',
    met: 'Bolted to a bar, or a lead of at most {=0.1 m}; of a surge device of the mains at most {=0.5 m}.',
    remedy: 'Bolt {at} straight to the bar; a surge device of the mains stands so near that its leads need no more.',
    tools: leadTools,
    because: {
      none: 'No arrester is in the file.',
      bolted: '{at} is bolted to a bar.',
      'lead unknown': 'The length of the lead of {at} is not known.',
      ...leadSentences,
      short: 'The lead of {at} is short.',
      long: 'The lead of {at} is longer than it should be.',
    },
  },
  'core-static-drain': {
    title: 'Every feed line’s core has a way for static to drain',
    failTitle: 'The core of {at} floats',
    why: 'Rain, snow and charged clouds load a floating wire until it sparks over in the receiver.',
    met: 'The antenna joins its conductors at DC, or a bleed, choke or stub drains the core.',
    remedy: 'Fit a bleed resistor or choke (or an arrester that drains) on {at}.',
    because: {
      none: 'No line ends on an antenna outdoors.',
      drained: 'The core of {at} drains through {by}.',
      'antenna unknown': 'Nobody said whether the antenna of {at} joins its conductors at DC.',
      'measure it':
        'Unplug {at} in calm weather and measure its core against the shield (a single wire: against [ground]) with an ohmmeter: some ohms is a DC path; type `dc_path:`.',
      floating: 'Nothing on {at} gives its core a DC path.',
    },
  },
  'spare-and-disconnected-lines': {
    title: 'A pulled line ends [grounded] outside, not loose in the room',
    failTitle: '{at} is left loose or too near when it is pulled',
    why: 'A strike bridges a gap of a hand’s width; what hangs loose at the radio brings it in.',
    met: 'In each state of the file the pulled end is [grounded].',
    remedy: 'Give {at} a [grounded] receptacle outside to plug into, and keep the end well away from the radio.',
    because: {
      none: 'No state of the file pulls a line.',
      grounded: 'In state {state} the end of {at} is [grounded].',
      bridged: 'In state {state} the gap of {at} is only {gapLengthM}.',
      loose: 'In state {state} the end of {at} hangs loose; no gap makes up for that.',
      'nobody said': 'For state {state} nobody said where the pulled {at?end:ends} of {at} {at?goes:go}.',
      'say it':
        'Look where the pulled {at?end goes:ends go} and type it in that state: `end: grounded`, or `end: loose` with `gap: 3 ft`.',
    },
  },
  'line-goes-down-before-in': {
    title: 'Lines leave a tower at its foot',
    failTitle: '{at} leaves the tower high up',
    why: 'The tower’s inductance below the exit puts its voltage on the shield: some kilovolts for each metre.',
    met: 'The last point at the tower is at most {=1 m} above grade. Masts on roofs and indoors are left out.',
    remedy: 'Bring {at} down to the foot of the tower, bond its shield there, and go to the house from there.',
    because: {
      none: 'No line comes down a tower.',
      'exit unknown': 'The file does not say where {at} {at?leaves its support:leave their supports}.',
      look: 'Look how high {at} {at?leaves its support:leave their supports} and add a stop there: `{bend: tower@2 ft}` where the line only passes, `{bond: tower@2 ft}` only where its shield is really tied to the tower.',
      low: '{at} leaves the tower low.',
      high: '{at} leaves the tower well above grade.',
    },
  },
  'service-surge-protector': {
    title: 'The mains have a surge protector at the [service]',
    failTitle: 'The mains have no surge protector at the [service]',
    why: 'Most surges come in over the mains, whatever is done for the antennas.',
    met: 'A mains protector is on the [service]’s panel, its meter box, the [main bar] or the [intersystem bar], or the supply passes it before any panel. One at a single room or circuit is good beside it and is not this one.',
    remedy: 'Have a [electrician] fit a [surge protector] at the [service].',
    because: {
      'no mains': 'No mains come in.',
      there: '{protector} stands on the mains.',
      'not looked': 'The arresters were not (all) looked at.',
      look: 'Look at the panel and the meter for a [surge protector]; type it, or `arresters: none`.',
      'place unknown': 'Whether a mains protector is at the [service] is not known.',
      'look where': 'Look where the mains protector is: type `on:` with the panel or bar that it is on.',
      'none there': 'No mains protector at the [service] is in the file.',
    },
  },
} as const satisfies Record<string, RuleWords>;
