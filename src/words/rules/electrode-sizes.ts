import type { RuleWords } from '../rule-words.ts';

/** Said by every condition on the size of an electrode. */
const sizes = {
  'as asked': '{at} has the size that is asked.',
  less: 'The {figure} of {at} is less than the clause asks.',
  'metal not listed': 'The clause gives no size for {metal}, of which {at} is made.',
  'figure unknown': 'Not known well enough of {at}: {figures}.',
  'measure it':
    'Look for the mark at the top of {at}, ask who put {at?it:them} in, or measure; type {fields} of {at?it:each}.',
  'ask for plan': 'Ask who poured {at}, or look at the plan of the building; type {fields} of {at?it:each}.',
  'ask who laid it':
    'Ask who put {at} in, look at the plan, or measure where {at?it comes:they come} to light; type {fields} of {at?it:each}.',
  'measure wire':
    'Measure {at} where {at?it comes:they come} to light, or ask who laid {at?it:them}; type {fields} of {at?it:each} (such as `wire: 50 mm2 copper` or `wire: round 10 mm galvanised steel`).',
  'metal unknown': 'The metal of {at} is not known.',
  'look at it': 'Look what {at} {at?is:are} made of: a file scratch and a magnet tell; type `metal:`.',
} as const;

const tools = {
  'measure it': 'tape',
  'ask for plan': 'papers',
  'ask who laid it': 'tape',
  'measure wire': 'wire gauge',
} as const;
const larger =
  'Put in one of the size that is asked beside {at} and bond the two; then {at} no longer {at?counts:count} as an [electrode] and may be left out of the file.';
const noRod = 'No rod that this is asked of is in the file.';
const forLightning = 'The site claims no lightning protection, or no such [electrode] serves it.';

export const electrodeSizes = {
  'rod-diameter-us': {
    title: 'Rods are at least {=5/8 in} thick, or {=1/2 in} where [listed]; pipes {=3/4 in}',
    failTitle: '{at}: too thin for a driven rod or pipe',
    why: 'A thin rod bends while it is driven and is eaten through sooner.',
    met: '{=5/8 in} of any metal, or {=1/2 in} with a mark that it is [listed]. A pipe is of trade size 3/4, and of iron or steel galvanised.',
    exempt: 'A rod of a telephone or data protector alone has a figure of its own.',
    remedy: larger,
    tools,
    because: {
      ...sizes,
      none: noRod,
      'perhaps listed': '{at}: thick enough only if {at?it is:they are} [listed].',
      'read the mark': 'Look for a mark of a test house near the top of {at}; type `listed: yes` or `no`.',
    },
  },
  'comms-rod-size-us': {
    title: 'A rod for a communications protector alone is at least {=5 ft} by {=1/2 in}',
    failTitle: 'Rod {at} is too small even for a communications protector',
    why: 'A shorter rod has more resistance and ends in soil that dries and freezes.',
    met: 'Length and diameter are reached.',
    exempt: 'A rod that serves an antenna or the power [service] too has to be longer.',
    remedy: larger,
    tools,
    because: { ...sizes, none: 'No rod in the file serves a communications protector alone.' },
  },
  'lightning-rod-size-us': {
    title: 'Rods of a lightning protection system are {=8 ft} by {=1/2 in}, of copper, copper-clad or stainless steel',
    failTitle: 'Rod {at} of the lightning protection is not as asked',
    why: 'The rod carries the whole stroke into the soil and has to last as long as the building.',
    met: 'Length, diameter and metal are as asked; galvanised steel is not in the list.',
    remedy: larger,
    tools,
    because: { ...sizes, none: 'No rod in the file serves a lightning protection system.' },
  },
  'tower-rod-size': {
    title: 'Rods of a tower are {=5/8 in} by {=10 ft}, all in the soil',
    failTitle: 'Tower rod {at} is too small',
    why: 'A tower is struck; its rods carry most of the stroke.',
    met: 'Length and diameter are reached, where the site is built to edition G of the tower standard.',
    exempt: 'Edition F asks for no such length; edition H was not seen: check against your copy.',
    remedy: larger,
    tools: { ...tools, 'look it up': 'papers' },
    because: {
      ...sizes,
      none: noRod,
      'not claimed': 'The file claims no edition of the tower standard that asks it.',
      'edition unknown': 'Which edition {at} {at?was:were} put in to is not known, or it is one that was not seen.',
      'look it up':
        'Look at the drawing of the tower for the edition, and into your copy of it for the rods ({at}); type `site.claims`.',
    },
  },
  'military-rod-size': {
    title: 'Rods of an electronics facility are {=3/4 in} by {=10 ft}, copper or copper-clad',
    failTitle: 'Rod {at} is smaller than the facility standard advises',
    why: 'A longer rod reaches soil that stays moist.',
    met: 'Length, diameter and metal are as advised.',
    remedy: larger,
    tools,
    because: { ...sizes, none: noRod, 'not claimed': 'The file claims no military or facility standard.' },
  },
  'ring-us': {
    title: 'A [ground ring] is bare copper of at least {=2 AWG}, at least {=20 ft} long',
    failTitle: 'Ring {at} is not as asked',
    why: 'A thin ring is cut by the first spade and eaten first.',
    met: 'Section, metal and length are as asked. A ring round a tower or an antenna alone is no [ground ring] of the clause.',
    remedy: 'Lay a second conductor of the size that is asked beside {at}, or drive rods at its corners and bond them.',
    tools,
    because: {
      ...sizes,
      none: 'No ring round a building is in the file.',
      covered: '{at} is insulated, so it makes no contact with the soil.',
    },
  },
  'concrete-encased-us': {
    title: 'A [concrete-encased electrode] has {=20 ft} of bar or of bare copper in concrete that touches the soil',
    failTitle: 'The footing {at} is no [electrode] of the clause',
    why: 'Concrete in moist soil is one of the best contacts there is, unless a sheet or a skin lies between.',
    met: '{=20 ft} of bars of {=1/2 in}, or of bare copper of {=4 AWG}, in {=2 in} of concrete; no vapour barrier or insulation below, no epoxy on the bars.',
    remedy: 'Do not count {at}: drive rods and bond them, and leave the bond to {at} where it is.',
    tools: { ...tools, 'ask who poured it': 'papers' },
    because: {
      ...sizes,
      none: 'No [concrete-encased electrode] is in the file.',
      membrane: 'A vapour barrier or insulation lies between {at} and the soil.',
      'coated bars': 'The bars of {at} have a skin that does not conduct.',
      'thin concrete': 'The concrete round the metal of {at} is thinner than the clause asks.',
      'not seen':
        'Whether {at} touches the soil, how thick its concrete is and whether its bars are bare is not known.',
      'ask who poured it':
        'Ask who poured {at}, or look at the papers: sheet below it, epoxy on the bars, concrete round them; type `membrane:`, `painted:` and `concrete:`.',
    },
  },
  'water-pipe-electrode': {
    title: 'A water pipe that counts as an [electrode] has at least {=10 ft} of metal in the soil',
    failTitle: 'Water pipe {at} does not count as an [electrode]',
    why: 'A short pipe, or one with a piece of plastic in it, has hardly any contact with the soil.',
    met: '{=10 ft} of metal in the soil with no plastic piece.',
    remedy: 'Do not count {at}: drive rods and bond them; the bond to the pipe stays.',
    tools,
    because: {
      ...sizes,
      none: 'No water pipe in the file counts as an [electrode].',
      plastic: 'A plastic piece is in {at}.',
      'perhaps plastic': 'Whether {at} is metal all along in the soil is not known.',
      'ask about plastic':
        'Ask the water supplier or whoever repaired {at} whether plastic was put in; type `continuous:`.',
    },
  },
  'water-pipe-supplemented': {
    title: 'A water pipe is never the only [electrode]',
    failTitle: 'Water pipe {at} is the only [electrode] of its system',
    why: 'The supplier may put in a plastic piece on any day, and nobody in the house notices.',
    met: 'An [electrode] of another kind that the code lists is bonded to it: rods, a footing, a closed ring; radials and an open wire are none.',
    remedy: 'Drive rods and bond them to the system of {at}.',
    because: {
      none: 'No water pipe in the file counts as an [electrode].',
      another: 'An [electrode] of another kind is bonded to {at}.',
      perhaps: 'Whether an [electrode] of another kind is bonded to {at} is not known.',
      trace: 'Look what else is tied to {at}; type each conductor.',
      alone: 'No [electrode] of another listed kind is bonded to {at}.',
    },
  },
  'plate-us': {
    title: 'A plate has {=0.186 m2} (2 square feet), is thick enough and lies {=30 in} deep',
    failTitle: 'Plate {at} is not as asked',
    why: 'A small or shallow plate lies in soil that dries out, and a thin one is eaten through.',
    met: 'Area and depth are reached; {=1/4 in} of iron or steel, {=0.06 in} of other metals.',
    remedy: larger,
    tools,
    because: { ...sizes, none: 'No plate is in the file.' },
  },
  'iec-rod-dimensions': {
    title: 'Rods for lightning have the diameter of their metal',
    failTitle: 'Rod {at} is too thin for lightning',
    why: 'The rod carries the whole stroke into the soil and has to last as long as the building.',
    met: 'Copper and stainless steel {=15 mm}, copper-clad and galvanised steel {=14 mm}, the copper on steel {=0.25 mm}.',
    remedy: larger,
    tools,
    because: { ...sizes, none: forLightning },
  },
  'iec-buried-conductor-dimensions': {
    title: 'Conductors in the soil for lightning have the section of their metal',
    failTitle: 'Buried conductor {at} is too small for lightning',
    why: 'Soil eats thin metal, and nobody sees it.',
    met: 'Copper {=50 mm2}; galvanised or stainless steel round {=10 mm}; tape {=90 mm2} galvanised, {=100 mm2} stainless. Aluminium is not admitted in soil.',
    remedy: larger,
    tools,
    because: { ...sizes, none: forLightning },
  },
  'iec-plate-dimensions': {
    title: 'A plate for lightning has sides of {=0.5 m}, a lattice of {=0.6 m}',
    failTitle: 'Plate {at} is too small for lightning',
    why: 'A small plate has more resistance than a rod.',
    met: 'Both sides are reached.',
    remedy: larger,
    tools,
    because: { ...sizes, none: forLightning },
  },
  'iec-power-electrode-dimensions': {
    title: 'The [electrode] of the supply has the size of its metal',
    failTitle: 'The [electrode] of the supply, {at}, is too small',
    why: 'It has to last as long as the installation; nobody sees what the soil has left of it.',
    met: 'Copper wire {=25 mm2}, copper tape {=50 mm2}, galvanised or stainless rod {=16 mm}, copper-clad rod {=14 mm} with {=0.25 mm} of copper.',
    exempt: 'What serves an antenna, a tower or lightning alone has conditions of its own.',
    remedy: larger,
    tools,
    because: { ...sizes, none: 'No rod or wire in the file serves the supply.' },
  },
  'iec-antenna-electrode-minimum': {
    title: 'The [electrode] of an antenna is large enough',
    failTitle: 'The [electrode] of the antenna, {at}, is too small',
    why: 'A short rod lifts the whole station far above the neighbourhood when the antenna is struck.',
    met: 'A [concrete-encased electrode], a rod of {=2.5 m}, two rods of {=1.5 m} that stand {=3 m} apart, or two level runs of {=2.5 m} that spread by more than 60 degrees, of {=50 mm2} copper or {=90 mm2} steel (a ring is such runs); or the [electrode] of the lightning protection of the building.',
    remedy: 'Drive a rod of {=2.5 m}, or lay two runs of {=2.5 m} away from each other, and bond them to {at}.',
    exempt:
      'Antennas indoors, and those on the face of a building at least {=2 m} below the edge of the roof and at most {=1.5 m} out from the wall.',
    tools: { measure: 'tape', 'measure facade': 'tape' },
    because: {
      none: 'No antenna or mast of which this is asked leads to an [electrode] in the file.',
      'on facade':
        '{at}: none of the arrangements of the clause; whether the antenna stays so close to the wall and so far below the roof that none is asked is not known.',
      'measure facade':
        'Measure from the edge of the roof down to the top of the antenna, and out from the wall to its farthest point. Type them as `below_roof:` and `from_wall:` of the antenna ({at}).',
      enough: '{at}: one of the arrangements of the clause.',
      perhaps: 'Whether {at} {at?makes:make} one of the arrangements of the clause is not known.',
      measure:
        'Find out how long {at} {at?is:are}, where {at?it runs:they run} and how far from each other, and what else is in the soil; type `length:`, and `at:` or `route:`.',
      'too little': '{at}: none of the arrangements of the clause.',
    },
  },
  'au-rod-dimensions': {
    title: 'Rods are {=2.4 m} by {=16 mm}, rings {=25 mm2} and {=0.6 m} deep',
    failTitle: '{at}: smaller than advised for lightning',
    why: 'Thin and shallow metal is eaten or dug up first.',
    met: 'The figures are reached, where lightning protection is claimed.',
    remedy: larger,
    tools,
    because: { ...sizes, none: forLightning },
  },
  'aluminium-never-electrode': {
    title: 'No [electrode] is of aluminium',
    failTitle: '{at} is an [electrode] of aluminium',
    why: 'Soil and concrete eat aluminium in a few years.',
    met: 'Copper, copper-clad, galvanised or stainless steel in the soil.',
    remedy: 'Put in an [electrode] of another metal, bond it, and take {at} off.',
    because: {
      none: 'No metal of an [electrode] is in the file.',
      'metal unknown': 'The metal of {at} is not known.',
      'look at it': sizes['look at it'],
      aluminium: '{at} is of aluminium or clad aluminium.',
      'other metal': '{at} is of another metal.',
    },
  },
  'pool-shell-never-electrode': {
    title: 'No pool serves as an [electrode]',
    failTitle: 'Pool {at} serves as an [electrode]',
    why: 'What comes down the mast comes out at the people in the water.',
    met: 'No mast, antenna or arrester finds its only way to [ground] in the pool. A bond between the pool and metal beside it is another thing and is asked for.',
    remedy: 'Bring the lead to an [electrode] of the system, and have a [electrician] look at the bond of {at}.',
    because: {
      none: 'No pool is in the file.',
      'not used': 'Nothing has its only way to [ground] over {at}.',
      used: 'With no other way to [ground], to {at} goes: {by}.',
      'other way': 'To {at} goes: {by}; whether there is another way to [ground] than the pool is not known.',
      trace:
        'Follow every other conductor from what is bonded to {at} to where it ends, and say which are there (`present:`).',
      perhaps: 'Nothing that was typed leads to {at}, and the conductors were not (all) looked at.',
      look: 'Look round {at} for clamps; type each conductor that ends there.',
    },
  },
  'electrode-bare-clean': {
    title: 'An [electrode] is bare metal',
    failTitle: '{at}: the metal does not touch the soil',
    why: 'Paint, tar or insulation keeps the current out of the soil.',
    met: 'No paint, enamel, tar or insulation on what is in the soil.',
    remedy: 'Put in a bare [electrode] beside {at} and bond it.',
    because: {
      none: 'Of no [electrode] was it said how its surface is.',
      painted: '{at} has a skin that does not conduct.',
      'covered wire': 'The wire of {at} is insulated.',
      bare: '{at} is bare.',
      'not seen': 'Whether {at} is bare is not known.',
      'look at it': 'Dig down a hand at {at} and look; type `painted:`.',
    },
  },
} as const satisfies Record<string, RuleWords>;
