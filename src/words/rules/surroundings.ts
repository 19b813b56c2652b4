import type { RuleWords } from '../rule-words.ts';

const pool = {
  title: 'Fixed metal beside a pool is in the pool’s bond',
  failTitle: '{at}: metal beside the pool is not in its bond',
  why: 'A wet person bridges any difference of voltage between the water and metal in reach of it.',
  remedy:
    'Have a [electrician] take {at} into one bond, or move the metal away from the pool. Drive no rod beside a pool.',
  tools: { tape: 'tape', 'measure it': 'wire gauge' },
  because: {
    none: 'No pool is in the file.',
    'no metal': 'No fixed metal is in the file beside the pool.',
    beyond: '{at}: they are farther apart than the clause looks.',
    bonded: '{at} are one piece of metal by their bonds.',
    'distance unknown': 'How far {at} are from each other is not known well enough.',
    tape: 'Measure along the ground from the edge of the water to the metal ({at}); type the distance under `near:`.',
    'bond unknown': 'Whether {at} are bonded to each other is not known.',
    look: 'Look for a clamp and a conductor between {at}; type the conductor.',
    apart: '{at} are near each other and no bond joins them.',
    'size unknown': 'How thick the bonds between {at} are, or of what metal, is not known.',
    'measure it':
      'Measure the bare metal of each bond on the way between {at} across with a gauge, and look whether it is solid copper; type its `wire:`.',
  },
} as const;

/** One look settles several conditions. */
const lookUp =
  'Standing, and with nothing long in your hands, look where {at} {at?runs:run} and estimate how near a power line comes to anything of the station; type the distance under `near:`. Never measure beside a power line.';

export const surroundings = {
  'antenna-clear-of-overhead-line': {
    title: 'A mast that falls reaches no power line',
    failTitle: '{at}: a mast that falls may reach the power line',
    why: 'People are killed when a mast, an antenna or a wire meets a power line while it is put up, taken down or falls.',
    met: 'The foot of the mast is farther from the power line on the plan than the mast’s height and {=3 m} more, with what stands upright on it where its `height:` or `length:` is typed. Trees, walls and the supplier’s poles are left out; so is a line in the soil.',
    remedy:
      'Do not raise, lower or climb anything at {at}. Ask the supplier of power what to do; put the mast elsewhere, or lower it for good.',
    tools: { tape: 'tape', 'look up': 'eyes' },
    because: {
      none: 'No mast, or no power line overhead, is in the file.',
      clear: '{at}: it falls clear of the power line.',
      near: '{at}: the distance exceeds the height of the mast by less than the margin.',
      'in reach': '{at}: the mast is taller than it stands from the power line. Distance less height:',
      'distance unknown': 'How far {at} are from each other is not known.',
      'not exact': 'How far {at} are from each other is not known well enough.',
      'look up': lookUp,
      'height unknown': 'The height of the mast is not known ({at}).',
      tape: 'Measure the height of the mast ({at}) from its foot, by its shadow or its sections; type `height:`.',
    },
  },
  'not-on-service-mast': {
    title: 'No antenna or lead-in hangs on the mast or pole of the power supply',
    failTitle: '{at} hangs on the mast or pole of the power supply',
    why: 'A wire of the antenna that slips, or a pull on the mast, brings power conductors to the antenna.',
    met: 'Every outdoor antenna is held by something else, and no feed line is tied to it.',
    remedy: 'Have a [electrician] take {at} off that mast or pole, and give it a support of its own.',
    because: {
      none: 'No mast or pole of the power supply is in the file.',
      'nobody said': 'Nobody said what holds {at}.',
      look: 'Look what holds {at} and type `on:`.',
      attached: '{at} is held by {on}, which belongs to the power supply.',
      elsewhere: '{at} is held by {on}.',
    },
  },
  'lead-in-clear-of-power': {
    title: 'Lead-ins keep clear of open power conductors',
    failTitle: '{at}: the lead-in comes too near to the power line',
    why: 'A lead-in that swings or falls against a power conductor makes the radio live.',
    met: 'It cannot swing nearer than {=0.6 m} to conductors of up to 250 V, and {=3 m} above that; the overhead supply counts.',
    remedy: 'Lead {at} another way, or have a [electrician] or the supplier move the power conductors.',
    tools: { 'ask voltage': 'papers', 'look up': 'eyes' },
    because: {
      none: 'No lead-in from outdoors, or no power line overhead, is in the file.',
      clear: '{at}: they keep their distance.',
      near: '{at}: they can come nearer than the clause allows.',
      'distance unknown': 'How near the lead-in and the power line ({at}) come to each other is not known.',
      'look up': lookUp,
      'voltage unknown': 'Which distance is asked hangs on the voltage ({at}).',
      'ask voltage': 'Ask the supplier for the voltage of the power line ({at}) and type `voltage:`.',
    },
  },
  'step-and-touch-zone': {
    title: 'Nobody stands beside a mast in a storm',
    failTitle: 'Anybody may stand beside {at} in a storm',
    why: 'When a mast is struck, the ground round it and the mast itself are at voltages that differ within one step and within arm’s reach.',
    met: 'Within {=3 m} of it there is a fence, a warning, or a layer that insulates: {=5 cm} of asphalt or {=15 cm} of gravel. Masts on roofs are left out.',
    remedy: 'Fence {at} off at {=3 m}, warn people there, or lay {=5 cm} of asphalt or {=15 cm} of gravel round it.',
    exempt: 'A crowd beside a mast at a field day is what it is about; nothing of this makes it right to stay there.',
    because: {
      none: 'No mast of metal has a foot in the soil.',
      fenced: 'A fence keeps people from {at}.',
      signed: 'A warning stands at {at}.',
      surfaced: 'The ground round {at} is covered by what insulates.',
      open: 'Anybody may walk up to {at}, and nothing insulates the ground there.',
      'nobody said': 'Who may come near {at} and what covers the ground there is not known.',
      look: 'Look within {=3 m} of {at} for a fence, a warning, asphalt or gravel; type `reach:` and `insulating_surface:`.',
      'surface unknown': 'Anybody may walk up to {at}, and what covers the ground there is not known.',
      'look down':
        'Look within {=3 m} of {at} for {=5 cm} of asphalt or {=15 cm} of gravel; type `insulating_surface:`.',
      'reach unknown': 'Nothing insulates the ground round {at}, and who may come near is not known.',
      'look about': 'Look within {=3 m} of {at} for a fence or a warning; type `reach:`.',
    },
  },
  'pool-fixed-metal-bonded': {
    ...pool,
    met: 'It is more than {=5 ft} from the water on the plan, or in one group with the pool by bonds of at least {=8 AWG} solid copper all the way.',
    exempt:
      'Metal of which every point is typed more than {=3.7 m} above the soil is not asked; the pool’s bond itself needs no rod and no way to a panel.',
    because: {
      ...pool.because,
      thin: 'On each way between {at} a bond is thinner than {=8 AWG}, or stranded.',
    },
  },
  'pool-zone-bonding-iec': {
    ...pool,
    met: 'It is more than {=3.5 m} from the water on the plan (outside zone 2), or in one group with the pool.',
    because: { ...pool.because, thin: 'The bond between {at} is too thin.' },
  },
  'earth-rod-clear-of-buried-services': {
    title: 'Buried pipes and cables are located before anybody digs or drives',
    failTitle: 'Nobody has located buried pipes and cables yet ({at})',
    why: 'A rod driven into a cable or a gas pipe kills.',
    met: 'The file says that buried services were located (`site.services_located: yes`).',
    remedy:
      'Have buried pipes and cables marked before work on {at} begins; in many places that is law and free of charge.',
    because: {
      none: 'Nothing that has to be dug or driven is planned.',
      located: 'Buried pipes and cables were located before work on {at}.',
      'not located': '{at} {at?is:are} planned, and buried pipes and cables were not located.',
      'nobody said': '{at} {at?is:are} planned, and nobody said whether buried pipes and cables were located.',
      locate:
        'Have buried pipes and cables marked before digging or driving {at}; then type `services_located: yes` under `site`.',
    },
  },
} as const satisfies Record<string, RuleWords>;
