import type { RuleWords } from '../rule-words.ts';

/** One look settles several conditions. */
const lookUp =
  'From the ground, and with nothing long in your hands, look where {at} {at?runs:run} and estimate how near a power line comes to anything of the station; type the distance under `near:`. Never measure beside a power line.';

export const surroundings = {
  'antenna-clear-of-overhead-line': {
    title: 'A mast that falls reaches no power line',
    failTitle: '{at}: a mast that falls may reach the power line',
    why: 'People are killed when a mast, an antenna or a wire meets a power line while it is put up, taken down or falls.',
    met: 'The foot of the mast is farther from the power line on the plan than the mast’s height and {=3 m} more. Trees, walls and the supplier’s poles are left out; so is a line in the ground.',
    remedy:
      'Do not raise, lower or climb anything at {at}. Ask the supplier of power what to do; put the mast elsewhere, or lower it for good.',
    tools: { tape: 'tape' },
    because: {
      none: 'No mast, or no power line overhead, is in the file.',
      clear: '{at}: it falls clear of the power line.',
      near: '{at}: the distance exceeds the height of the mast by less than the margin.',
      'distance unknown': 'How far {at} are from each other is not known.',
      'not exact': 'How far {at} are from each other is not known well enough.',
      'look up': lookUp,
      'height unknown': 'The height of the mast is not known ({at}).',
      tape: 'Measure the height of the mast ({at}) from the ground, by its shadow or its sections; type `height:`.',
    },
  },
  'not-on-service-mast': {
    title: 'No antenna or lead-in hangs on the mast or pole of the power service',
    failTitle: '{at} hangs on the mast or pole of the power service',
    why: 'A wire of the antenna that slips, or a pull on the mast, brings power conductors to the antenna.',
    met: 'Every outdoor antenna is held by something else, and no feed line is tied to it.',
    remedy: 'Have a [electrician] take {at} off that mast or pole, and give it a support of its own.',
    because: {
      none: 'No mast or pole of the power service is in the file.',
      'nobody said': 'Nobody said what holds {at}.',
      look: 'Look what holds {at} and type `on:`.',
      attached: '{at} is held by {on}, which belongs to the power service.',
      elsewhere: '{at} is held by {on}.',
    },
  },
  'lead-in-clear-of-power': {
    title: 'Lead-ins keep clear of open power conductors',
    failTitle: '{at}: the lead-in comes too near to the power line',
    why: 'A lead-in that swings or falls against a power conductor makes the radio live.',
    met: 'It cannot swing nearer than {=0.6 m} to conductors of up to 250 V, and {=3 m} above that; a service drop counts.',
    remedy: 'Lead {at} another way, or have a [electrician] or the supplier move the power conductors.',
    tools: { 'ask voltage': 'papers' },
    because: {
      none: 'No lead-in from outdoors, or no power line overhead, is in the file.',
      clear: '{at}: they keep their distance.',
      near: '{at}: they can come nearer than the clause allows.',
      'distance unknown': 'How near {at} come to each other is not known.',
      'look up': lookUp,
      'voltage unknown': 'Which distance is asked hangs on the voltage ({at}).',
      'ask voltage': 'Ask the supplier for the voltage of the power line ({at}) and type `voltage:`.',
    },
  },
} as const satisfies Record<string, RuleWords>;
