/**
 * What a strike was worked out with, and why one could not be. `[idea]` is a term of the region, `{name}` a value (see say.ts).
 * None of it says where in the file: the id of the part does.
 */
export const strikeWords = {
  /** Name of the stroke by its wave, where nothing else was asked for. */
  strokes: {
    '10/350': 'first positive stroke',
    '1/200': 'first negative stroke',
    '0.25/100': 'subsequent stroke of a flash',
    '8/20': 'surge of a test generator',
    '1.2/50': 'surge of a test generator, with the wave of its voltage',
  },
  medianNegative: 'first negative stroke, median of all',

  /** Taken because nobody typed it, or left out. */
  assumed: {
    channel:
      'The lightning comes down as a straight vertical wire above {at}, and couples into everything; there is no image of it in the soil.',
    alongLine:
      'The surge comes in along {at} and goes into the first thing that this line meets; a protector there is taken to conduct from the first instant. What the line outside induces into the site is left out, since its way is not known.',
    nearby:
      'The lightning strikes the ground beside the site ({at} of the middle of its metal): a straight vertical wire of 300 m that only induces. What its current lifts the soil of the site by is left out.',
    coupled:
      'Wires of which only the length is known are uncoupled in the figures; the ranges marked for it also hold them coupled closely (k = 0.6).',
    ionised:
      'The soil breaks down at {fieldVPerM}: each [electrode] has for the whole stroke the resistance that goes with its own peak, R / sqrt(1 + I / Ig) with Ig = E rho / (2 pi R^2) (CIGRE TB 63, from memory). Late in the tail it has more again, and what [electrode]s feel of each other stays.',
    length: 'Length of {list} taken as {lengthM}: neither length nor place is known.',
    lengthOnly:
      'The way of {list} is not known: taken by length alone, coupled to nothing, so volts along {list?it:them} are an upper estimate.',
    heights:
      'Heights on {list} are not known: what meets {list?it:them} there is taken to meet {list?it:them} at the foot, and the volts along that metal are missing.',
    wire: 'Wire of {list} is not known: taken as round, {diameterM} thick.',
    tower: '{part} is taken as one tube, {diameterM} across, with whatever legs and bracing it has.',
    bundle: 'Lines in one trench or bundle are taken two cable diameters apart: {list}.',
    onFace: 'On a support, {list} {list?is:are} taken to run down its face.',
    joints:
      'Joints without a reading have the likely resistance of their kind; those of which nothing is known have none.',
    electrodes:
      'What {list} {list?has:have} to the soil is not known, so {list?it takes:they take} no current here; that leaves volts too high rather than too low.',
    hangFree:
      'Hangs on nothing that reaches the soil by metal, so no figure names it: {list}. Where such a thing stands in a strike is not defined; near metal it can be flashed over to.',
    guys: '[Guy]s that carry nothing here: {list}. One carries where it is of metal, has no insulators (`insulators: no`), and a wire leads from its lower end to an [electrode]; it lowers the figures.',
    guysIn: '[Guy]s carry from the top of their support down to the wire at their anchors: {list}.',
    cores:
      'Cores of {list} lie within their shields and are taken as tied to them at the outer end; where an antenna leaves its core open, volts and currents of the core are at most these. Where nobody typed more: 50 ohm, a braid that leaks 1 nH per metre, a core of 2 mm² of copper.',
    perhaps: 'Whether these carry current too is not known, and they are not counted: {list}.',
    tubes:
      'A tube or gap ({list}) is taken to fire at the upper end of what its kind does on a rise of that steepness, and to hold its arc volts from then on: typed, or those of its kind.',
    varistors:
      'A varistor ({list}) is taken to follow one curve through its typed volts, which rise as the 0.04th power of the current.',
    stubs: 'A shorted stub ({list}) is taken as metal with the inductance of its length: of its band, or of 50 MHz.',
    bleeds: 'A bleed resistor or choke ({list}) drains static and carries nothing here.',
    open: 'Protectors are taken as open, because no state was found in which they stay: {list}.',
    gap: 'Level of {list} is not known: taken to fire at {levelV}.',
    outside:
      'What comes in from outside ({list}) is taken to stay at the potential of [remote ground] until a protector fires, and then to hang on it by the impedance of a long line: {overheadOhm}, buried {buriedOhm}.',
    neutral:
      'The neutral and other metal that leads away from the site carry nothing here; they would lower the figures.',
    ionisation: 'The soil does not break down round the [electrode]s; where it does, their volts are lower.',
    skin: 'Current keeps to the skin of the metal: inductances without an inner part, resistances higher than for direct current.',
    defaultStroke: 'No stroke was asked for: {name}, {peakA}, {wave} µs.',
    struck: 'No place was asked for: taken at the top of the highest support.',
    struckAntenna: 'No place was asked for, and no support is typed: taken at the first antenna.',
  },

  /** No figure can be named. Each says what to do where there is something to do. */
  refused: {
    nothingToStrike:
      'There is no support and no antenna that lightning could be taken to strike: name a part with --at.',
    noSoil: 'No soil is known, so nothing can be said of volts; name the soil, such as `soil: {type: clay}`.',
    noElectrode: 'Nothing of the site reaches the soil by metal that is known, so a potential is not defined.',
    electrodeUnknown:
      'What {list} has to the soil is not known, so nothing can be said of volts; type {list?its length:their lengths}, or a reading as `resistance:`.',
    noWayToSoil:
      '{part} has no way to the soil by metal: it would flash over to something, and nobody can tell to what.',
    notNear:
      'A strike near by couples into metal whose place is known, and stands outside the site: type positions, or a distance farther than the site reaches from its middle.',
    tooLarge:
      'The site has more conductors and lines than a strike is worked out for unasked; `evenground strike` works one out, and takes its time.',
    noMetal: '{part}: nothing of it is metal that carries the current of a strike. Name what it hangs on.',
    closePieces:
      '{a} and {b} are so close together that what is typed of their places and thickness cannot be right; their inductances contradict each other. Look at the places of both.',
    noInductance: 'A loop of {list} has neither length nor inductance, so its current is not defined; type a length.',
  },
} as const;
