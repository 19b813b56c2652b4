import type { RuleWords } from '../rule-words.ts';
import { sizeSentences } from './size-sentences.ts';

/** One tape settles what two countries ask. */
const tapePipe =
  'Measure along the pipe from where it comes into the building (or from its meter) to the clamp on {at}; type `clamp_from_entry:`.';

export const groundPoints = {
  'ground-to-intersystem-bar-first': {
    title: 'The antenna’s [ground] lands on the [intersystem bar] where the building has one',
    failTitle: 'The antenna’s [ground] does not land on {at}',
    why: 'All that comes in from outside is held to one voltage where it meets one bar.',
    met: 'A conductor from a mast, an entry panel or an arrester of a lead-in ends on the bar.',
    remedy: 'Run a conductor of {=6 AWG} from the entry panel to {at}, outside the building.',
    because: {
      none: 'No [intersystem bar] is in the file.',
      'no ground': 'Nothing of the antenna is [grounded]; that is asked of its own.',
      there: '{by} {by?ends:end} on {at}.',
      perhaps: 'Not all conductors are in the file; one may lead from the antenna’s side to {at}.',
      trace: 'Look at {at} and follow each conductor on it to where it comes from; type them.',
      'own electrode':
        'The antenna has an [electrode] of its own that is bonded to the [service], a way that the code knows too; no conductor from it ends on {at}, which an inspector may ask for as well.',
      elsewhere: 'The antenna is [grounded] elsewhere and no conductor from it ends on {at}.',
    },
  },
  'ground-point-allowed': {
    title: 'Without such a bar the antenna’s [ground] lands on a point of the list',
    failTitle: 'The [ground] of {at} lands on a point that is not on the list',
    why: 'A tap, a radiator or a gutter may end in plastic; what is on the list does not.',
    met: 'It lands on an [electrode], the panel, meter box, raceway (`kind: service raceway`) or main bar of the [service], or a steel frame; the conduit of a branch does not count. Water pipes are asked of their own.',
    remedy: 'Lead the [ground] of {at} to the [electrode system] instead.',
    tools: { ask: 'electrician', 'look at pipe': 'electrician' },
    because: {
      none: 'No conductor leads from a mast, an entry panel or an arrester to a point of the building.',
      'bar first': 'The building has an [intersystem bar]; that comes first.',
      'other metal': 'It lands on metal that is bonded there, or on a pipe; both are asked of their own.',
      listed: 'The [ground] of {at} lands on {on}.',
      'sub-panel': 'The [ground] of {at} lands on {on}, which counts only where it is the disconnect of its building.',
      raceway:
        'The [ground] of {at} lands on {on}: of conduits only the rigid metal one of the [service] counts, not that of a branch.',
      'look at pipe':
        'Have a [electrician] say whether the conduit that {at} {at?lands:land} on is the rigid metal one that the wires of the [service] come in by. If so, type it as `kind: service raceway`; if not, lead the [ground] elsewhere.',
      ask: 'Have a [electrician] say whether the panel that {at} {at?lands:land} on is the disconnect of that building.',
      'not listed': 'The [ground] of {at} lands on {on} and on nothing of the list.',
    },
  },
  'water-pipe-5-ft': {
    title: 'A water pipe is a point to [ground] at only near where it comes in',
    failTitle: '{at}: the clamp is too far from where the pipe comes in',
    why: 'Farther in, a plastic repair parts the pipe and nobody notices.',
    met: 'The clamp is at most {=5 ft} from where the pipe comes into the building. A bond from the panel to the pipe is another thing.',
    remedy:
      'Move the clamp on {at} to within {=5 ft} of where the pipe comes in, or lead the conductor to an [electrode].',
    exempt: 'In supervised commercial buildings an exposed pipe may be used farther in.',
    tools: { tape: 'tape' },
    because: {
      none: 'No water pipe is in the file.',
      'not used': 'No antenna or [electrode] hangs on a water pipe.',
      near: 'The clamp on {at} is near where the pipe comes in.',
      far: 'The clamp on {at} is farther in than the clause allows.',
      unknown: 'How far the clamp on {at} is from where the pipe comes in is not known.',
      tape: tapePipe,
    },
  },
  'uk-service-pipe-bond': {
    title: 'Gas, water and oil pipes are bonded where they come in',
    failTitle: '{at}: the bond is too far from where the pipe comes in',
    why: 'A branch or a meter before the clamp leaves part of the pipe outside the bond.',
    met: 'The clamp is within {=0.6 m} of the meter or the point of entry, before any branch. Whether the pipe is bonded at all, and by what size, is asked of its own.',
    remedy: 'Have a [electrician] move the clamp on {at} to within {=0.6 m} of the meter or entry, before any branch.',
    tools: { tape: 'tape' },
    because: {
      none: 'No gas, water or oil pipe is in the file.',
      'not bonded': 'No such pipe is known to be bonded; that is asked of its own.',
      near: '{at} {at?is:are} bonded where the pipe comes in.',
      far: '{at} {at?is:are} bonded farther from the meter or entry than the clause allows.',
      unknown: 'How far the clamp on {at} is from where the pipe comes in is not known.',
      tape: tapePipe,
    },
  },
  'ground-point-no-service': {
    title: 'Without a supply the antenna has an [electrode] of the list',
    failTitle: 'The antenna stands on no [electrode] of the list ({at})',
    why: 'A building without power has no [electrode] of its own to lean on.',
    met: 'Its group holds a rod, pipe, plate, ring, footing, well casing, water pipe or steel frame.',
    remedy: 'Drive a rod beside {at} and bond it to {at}.',
    because: {
      none: 'Nothing of an antenna reaches an [electrode].',
      'has service': 'The site has a [service], or nobody knows whether it has one.',
      listed: 'One of {at} is on the list.',
      'kind unknown': 'What kind {at} {at?is:are} is not known.',
      look: 'Look what {at} {at?is:are} and type `kind:` (`closed:` of a wire).',
      'not listed': 'None of {at} is on the list.',
    },
  },
  'not-on-cover-or-door': {
    title: 'No [ground] lands on a cover or a door',
    failTitle: '{at} {at?sits:sit} on a cover or a door',
    why: 'Whoever takes the cover off takes the [ground] away.',
    met: 'The bar is fixed to a part that stays (`on_cover: no`). A screw of a meter’s cover is one of a cover.',
    remedy: 'Move {at} to a part of the [enclosure] that stays, or to the wall.',
    because: {
      none: 'No bar is fixed to a box or stands at the [service].',
      'fixed part': '{at} is fixed to a part that stays.',
      'on cover': '{at} is fixed to a part that comes off or opens.',
      'nobody said': 'Nobody said whether {at} {at?is:are} fixed to a part that comes off.',
      look: 'Look whether {at} would come off with a cover or swing with a door; type `on_cover:`.',
    },
  },
  'intersystem-bar-present': {
    title: 'The building has an [intersystem bar] for three conductors or more',
    failTitle: 'The building has no sufficient [intersystem bar]',
    why: 'Telephone, cable and antenna find one place to be bonded, and find it without opening a panel.',
    met: 'A bar outside [enclosure]s has at least three terminals and hangs on the [service] by {=6 AWG} or more, or is fixed to metal of it. Buildings with their bonds in place before 2008 are left out; it is asked where `code:` names the edition.',
    remedy: 'Have a [electrician] fit an [intersystem bar] at the [service panel] or meter.',
    because: {
      none: 'Bars were not looked at.',
      'no service': 'The site has no [service].',
      'no edition': 'No bar of that kind is in the file, and no edition that asks for one.',
      'none there': 'No bar of that kind is in the file.',
      thin: 'On each way from {at} to the [service] a conductor is thinner than {=6 AWG}.',
      apart: 'No permanent metal leads from {at} to the [service].',
      'not counted': 'Nobody counted the terminals of {at}.',
      count: 'Count the terminals of {at} and type `terminals:`.',
      few: '{at} has fewer terminals than the clause asks.',
      enough: '{at} has enough terminals and a tie of the size that is asked.',
      'tie unknown': 'What ties {at} to the [service] is not in the file.',
      trace:
        'Look which conductor leads from {at} to the [service], or whether {at} is screwed to the box itself (`on:`); type it.',
      'size unknown': sizeSentences['size unknown'],
      'measure it': sizeSentences['measure it'],
      'metal unknown': sizeSentences['metal unknown'],
      'look at it': sizeSentences['look at it'],
      'metal not listed': sizeSentences['metal not listed'],
      ask: sizeSentences.ask,
    },
    tools: { 'measure it': 'wire gauge', ask: 'papers' },
  },
} as const satisfies Record<string, RuleWords>;
