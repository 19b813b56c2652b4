import type { RuleWords } from '../rule-words.ts';

/** One look at an open line where it goes in settles both. */
const lookAtOpenLine =
  'Look at {at} where {at?it goes:they go} in: how far insulators hold the wires off the wall (at least {=75 mm} is asked, and {=50 mm} round them in a hole), and whether anybody can touch them; type `standoff:` and `guarded:`.';

export const leadIns = {
  'discharge-unit-present': {
    title: 'Each wire of an outdoor lead-in has a discharge unit, or a [grounded] shield round it',
    failTitle: 'Nothing leads the charge of {at} off before it goes in',
    why: 'Wind, dry snow and near strokes charge an antenna until the charge finds its own way, through a person or a radio.',
    met: 'The lead-in is in a shield that is bonded to something [grounded]; or a protector covers each of its wires; or an antenna that is itself [grounded] drains it, or, where it feeds something that sends, a bleed, choke or stub.',
    remedy:
      'Fit a [listed] [antenna protector] on each wire of {at} where it goes in, bonded to the [electrode system].',
    exempt:
      'A [grounded] shield releases a line from this clause, not from a surge on its center conductor: an arrester on every feed line is asked of its own.',
    because: {
      none: 'No lead-in from an outdoor antenna goes indoors in the file.',
      shield: 'The shield round {at} is bonded to something [grounded].',
      unit: 'A protector covers each wire of {at}.',
      drained: 'The wires of {at} are drained of static.',
      nothing: '{at} has no protector on each of its wires, no [grounded] shield and no drain.',
      'perhaps grounded':
        'Whether what would lead the charge of {at} off (its shield, or its antenna) reaches an [electrode] is not known.',
      trace:
        'Follow the conductor from the antenna of {at}, and from what its shield is bonded to, to where each ends; type them.',
      'count unknown': 'How many wires of {at} the protector covers is not known.',
      'count wires': 'Count the wires of {at} and those on the protector; type `wires:` and `covers:`.',
    },
  },
  'transmit-lead-in-standoff': {
    title: 'An open lead-in of a sender is held off the wall',
    failTitle: '{at} {at?is:are} held too near to the wall',
    why: 'An open wire of a sender arcs to what it comes near, and sets fire to a wall.',
    met: 'Insulators hold the wires at least {=75 mm} off the wall; they go in by a tube, a hole with {=50 mm} round them, or a drilled pane. Coax is left out.',
    remedy: 'Hold {at} off on longer insulators, and lead {at?it:them} in through a tube or a drilled pane.',
    tools: { look: 'tape' },
    because: {
      none: 'No open lead-in of a sender comes from outdoors in the file.',
      unknown: 'How far {at} {at?is:are} held off the wall is not known.',
      look: lookAtOpenLine,
      'held off': '{at} {at?is:are} held off the wall.',
      'near the wall': '{at} {at?is:are} nearer to the wall than the clause allows.',
    },
  },
  'transmitter-contact-guard': {
    title: 'Nobody can easily touch an open lead-in of a sender',
    failTitle: 'Anybody can touch {at}',
    why: 'An open wire of a sender burns whoever touches it while it sends.',
    met: 'The lead-in hangs out of reach or is guarded. Coax is left out.',
    remedy: 'Hang {at} higher or put a guard before {at?it:them}.',
    tools: { look: 'tape' },
    because: {
      none: 'No open lead-in of a sender comes from outdoors in the file.',
      guarded: 'Nobody can easily touch {at}.',
      open: 'People can touch {at}.',
      unknown: 'Whether people can touch {at} is not known.',
      look: lookAtOpenLine,
    },
  },
  'canada-coax-shield-grounded': {
    title: 'The shield of a coax line that comes in is [grounded]',
    failTitle: 'The shield of {at} comes in without a way to ground',
    why: 'A shield that comes in without a bond brings the voltage of the antenna to the radio.',
    met: 'At the wall its shield is bonded to something from which permanent metal leads to an [electrode].',
    remedy: 'Bond the shield of {at} at the wall, and that to an [electrode] by permanent metal.',
    because: {
      none: 'No coax line comes in from outdoors in the file.',
      grounded: 'The shield of {at} is bonded at the wall to something [grounded].',
      perhaps: 'Whether what the shield of {at} is bonded to reaches an [electrode] is not known.',
      trace: 'Follow the conductor from where {at} {at?goes:go} in to where it ends, and type it.',
      bare: 'No permanent metal leads from the shield of {at} at the wall to an [electrode].',
    },
  },
} as const satisfies Record<string, RuleWords>;
