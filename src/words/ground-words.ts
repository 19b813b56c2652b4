/** What the study says of the ground: its conditions, what was left out of the solve and how much that can matter. */
export const groundWords = {
  conditions: {
    typed: 'soil as typed',
    winter: 'frozen down to {frostM}, wet below it',
    winterWet: 'wet; how deep it freezes was not typed',
    wet: 'wet',
    dry: 'after a long drought, dry down to {depthM}',
    summer: 'in summer, dry down to {depthM}',
  },
  limits: {
    noSoil: 'No soil was typed and none was measured: no [electrode] can be worked out.',
    tooMany:
      'The metal in the soil comes to more pieces than are solved together (3000, and fewer where more than 80 pieces of metal are apart): what the [electrode]s feel of each other is left out. It can only raise a figure.',
    noFigure: 'No figure for {list}: {why}.',
    noPlace:
      'What {list} and other [electrode]s feel of each other through the soil is left out, since a place or a figure is missing. It can only raise a figure: by nothing where they stand far apart, and at most to that of the best one alone.',
    otherSoil:
      '{list} {list?was:were} read lower than the others would lift {list?it:them} through the soil as it is taken: what {list?it and they:they and those} feel of each other is left out.',
    leakNoPlace:
      '{list} {list?is:are} bare and in the soil without a known place: in for the lowest figure, out for the others.',
    leakPerhapsBare:
      'Nobody said whether {list} {list?is:are} bare: taken as bare, and left out of the highest figure.',
    perhaps:
      '{list} may carry current into the soil too, by metal that nobody is sure of: in for the lowest figure, out for the others.',
    perhapsFooting:
      '{list} may carry current into the soil too, by {list?a footing:footings} that nobody typed: for the lowest figure each is taken for a half sphere of metal {=1 m} in radius in the soil at its least, which hardly any footing exceeds; out for the others. Typed as [electrode]s with their size they make the range narrower.',
    perhapsAnchor:
      '{list} may carry current into the soil too, by {list?an anchor:anchors} that nobody typed: for the lowest figure each is taken for a half sphere of metal {=0.4 m} in radius in the soil at its least, which hardly any anchor exceeds; out for the others.',
    perhapsTied:
      'Nobody knows whether {list} {list?is:are} tied to the rest: in for the lowest figure, out for the others.',
    refused:
      'The [electrode]s could not be solved together (at {at} two lie in one place, or one crosses a very thin layer of very bad soil): coupling through the soil is left out.',
    merged:
      'The soil has more layers than are told apart: thin ones were taken together with a neighbour, outwards, so that ranges are wider than they need be.',
    moved:
      'Layers more than a million times apart in resistivity were brought nearer, outwards, so that ranges are wider than they need be.',
  },
  /** Why an electrode of which every figure is known has none itself. */
  unsolved: {
    'figure-missing': 'a figure of it is none that can be worked with',
    'no-metal': 'none of its metal lies in the soil',
    'above-ground': 'a part of it lies above the ground',
    'too-far': 'it is more than 100 km long, or lies more than 20 000 km from where places are counted from',
    'no-length': 'a stretch of it has no length, since two of its points are one',
    'no-radius': 'its metal has no thickness',
    'shorter-than-radius': 'a stretch of it is shorter than its metal is thick',
    'core-outside-sheath': 'its metal is thicker than the concrete or backfill round it',
    'no-sheath-resistivity': 'the concrete or backfill round it has a resistivity below nothing',
    'no body': 'none of it lies in the soil',
    'too many segments': 'it comes to more than 3000 pieces of metal, which is as many as are solved together',
    'not positive definite': 'two stretches of it lie in one place',
    'soil out of reach': 'in soil of less than 0.001 or more than 100000000 ohm m nothing is worked out',
  },
  /** Why there is a range and no likely figure. */
  noLikely: {
    thickness: 'No likely figures, only ranges: how thick layer {layer} of the soil is, is not known.',
    open: 'No likely figures, only ranges: a figure of the soil is open to one side.',
    contrast:
      'No likely figures, only ranges: the layers are more than a million times apart in resistivity, beyond which none is worked out.',
    outOfReach:
      'No likely figures, only ranges: a resistivity is below 0.001 or above 100000000 ohm m, where nothing is worked out.',
  },
  measured: {
    soilOf: '{electrode} was read as {measuredOhm}: in soil alike all through that would be {uniformOhmM}.',
    noUniform:
      'No uniform soil fits {list}; two layers do with a boundary anywhere from {boundaryM} (lower layer {shallowOhmM} to {deepOhmM}).',
    noUniformDrop:
      'No uniform soil fits {list}; two layers do with a boundary anywhere from {boundaryM} (lower layer {shallowOhmM} to {deepOhmM}); with the drop seen at {dropM} it is about {dropOhmM}.',
    noLayers: 'Neither uniform soil nor two layers fit {list}: read again, or look for another reason.',
    reading: '{resistanceOhm} at {lengthM}',
    notTaken:
      '{electrode} was read as {measuredOhm}, and the soil as it is taken gives {computedOhm}: the reading counts, and the soil is another one there.',
  },
  /** Why a reading is not the resistance to earth that it looks like. */
  traps: {
    'no-loop':
      '{reading}: a clamp reads a loop, and nothing else in the soil is tied to {at} here, so its figure is no resistance to [ground].',
    'sum-of-two':
      '{reading}: with one other [electrode] in the loop a clamp reads both one after the other; {at} itself has less.',
    'metal-loop':
      '{reading}: below 1 ohm a clamp has most likely read a loop of metal alone. That shows that {at} is tied, and says nothing of the soil.',
    'too-near':
      '{reading}: the [electrode] nearest to {at} stands nearer than the longer of the two is long, where a clamp reads low.',
    'no-rise':
      '{reading}: its figures at 20, 40 and 60 % of the way to the current probe do not rise from {at} outwards. A probe had bad contact, or metal lies along the line: read again in another direction.',
    'slope-low':
      '{reading}: its figures at 20, 40 and 60 % of the way to the current probe level off more than the slope method is good for. Set the probes again, in another direction.',
    'slope-high':
      '{reading}: its figures at 20, 40 and 60 % of the way to the current probe still rise too steeply: the current probe stands too near {at}. Set it farther away.',
    'probes-disagree':
      '{reading}: its figures at 52, 62 and 72 % of the way to the current probe lie more than 5 % apart, so that none is that of {at} (practice, from memory). Set the current probe farther away.',
  },
} as const;
