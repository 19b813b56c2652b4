import type { RuleWords } from '../rule-words.ts';

export const entry = {
  'single-entry-panel': {
    title: 'All lines of the station come in at one panel',
    failTitle: 'Lines come in at several panels that nothing short joins: {at}',
    why: 'Between two panels a strike stands across whatever in the room is plugged into both.',
    met: 'The lines from masts and antennas that go into a building are bonded at one bar, or at bars that a conductor of at most {=1 m} joins. Lines that nothing bonds at the wall, mains and telephone are asked of their own.',
    remedy: 'Bring all lines in at one of {at}, or join them by a short wide strap.',
    tools: { tape: 'tape' },
    because: {
      none: 'No line that is bonded at a wall comes in from a mast.',
      one: 'All lines come in at {at}.',
      tied: '{at} are joined by a short conductor.',
      several: '{at} are not joined by a conductor of at most {=1 m}.',
      'tie unknown': 'How long the conductor between {at} is, is not known.',
      tape: 'Measure the conductor between {at} and type `length:`.',
    },
  },
  'drip-loop': {
    title: 'Lines have a low point outside before they go in',
    failTitle: '{at} {at?goes:go} in without a low point',
    why: 'Rain runs along a line into the wall and into connectors and protectors.',
    met: 'Each line that comes in above the ground hangs lower outside than where it goes in (`drip_loop: yes`). Lines in the soil are left out.',
    remedy: 'Let {at} hang in a loop below the hole before {at?it goes:they go} in.',
    because: {
      none: 'No line comes in above the ground.',
      'not typed': 'Nobody looked at low points of lines.',
      loop: '{at} hangs in a loop before it goes in.',
      'no loop': '{at} has no low point before it goes in.',
      'nobody said': 'Whether {at} {at?has:have} a low point outside is not known.',
      look: 'Look at {at} outside where {at?it goes:they go} in and type `drip_loop:`.',
    },
  },
  'arrester-listed': {
    title: 'Protectors of lead-ins are [listed]',
    failTitle: '{at} is not [listed]',
    why: 'A device that nobody tested may stay a short, or burn, after the first surge.',
    met: 'Each protector of a feed line carries a mark of a test house (`listed: yes`). Asked from the edition of 2014 on.',
    remedy: 'Replace {at} with a [listed] one.',
    because: {
      none: 'No protector of a feed line is in the file.',
      listed: '{at} is [listed].',
      'not listed': '{at} carries no mark.',
      'nobody said': 'Nobody said whether {at} {at?is:are} [listed].',
      look: 'Look for a mark of a test house on {at} or in its papers; type `listed:`.',
    },
  },
  'discharge-unit-away-from-fuel': {
    title: 'No discharge unit is near what burns easily',
    failTitle: '{at} is near what burns easily',
    why: 'A unit that fires or fails throws sparks.',
    met: 'Nothing that burns easily (fuel, hay, thatch) is near it (`near_fuel: no`). Asked of units indoors, on a thatched building, and where somebody typed it.',
    remedy: 'Move {at} outdoors and away from fuel, hay and thatch.',
    because: {
      none: 'No protector of a feed line is in the file.',
      'nothing burns': 'The units are outside, and the file has nothing there that burns easily.',
      'nothing near': 'Nothing that burns easily is near {at}.',
      'near fuel': 'Something that burns easily is near {at}.',
      'nobody said': 'Whether something that burns easily is near {at} is not known.',
      look: 'Look round {at} for fuel, hay, thatch and the like; type `near_fuel:`.',
    },
  },
} as const satisfies Record<string, RuleWords>;
