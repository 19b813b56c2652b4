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
    guys: '[Guy]s are left out: {list}. They carry some of the current to their anchors, which lowers the figures here.',
    cores: 'Cores of {list} are left out: only the shield carries current.',
    perhaps: 'Whether these carry current too is not known, and they are not counted: {list}.',
    protectors: 'Protectors are taken as open: {list}. One that fires ties its line to its bar from then on.',
    gap: 'Level of {list} is not known: taken to fire at {levelV}.',
    outside:
      'What comes in from outside ({list}) is taken to stay at the potential of [remote ground] until a protector fires.',
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
    tooLarge:
      'The site has more conductors and lines than a strike is worked out for unasked; `evenground strike` works one out, and takes its time.',
    noMetal: '{part}: nothing of it is metal that carries the current of a strike. Name what it hangs on.',
    closePieces:
      '{a} and {b} are so close together that what is typed of their places and thickness cannot be right; their inductances contradict each other. Look at the places of both.',
    noInductance: 'A loop of {list} has neither length nor inductance, so its current is not defined; type a length.',
  },
} as const;
