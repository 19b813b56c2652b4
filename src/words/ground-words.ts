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
      'The metal in the soil comes to more than 3000 pieces, which is as many as are solved together: what the [electrode]s feel of each other is left out. It can only raise a figure.',
    noFigure:
      'No figure for {list}: more than 3000 pieces of metal, or a resistivity outside 0.001 to 100 000 000 ohm m, of which nothing is worked out.',
    noPlace:
      'What {list} and other [electrode]s feel of each other through the soil is left out, since a place or a figure is missing. It can only raise a figure: by nothing where they stand far apart, and at most to that of the best one alone.',
    otherSoil:
      '{list} {list?was:were} read lower than the others would lift {list?it:them} through the soil as it is taken: what {list?it and they:they and those} feel of each other is left out.',
    leakNoPlace:
      '{list} {list?is:are} bare and in the soil without a known place: in for the lowest figure, out for the others.',
    leakPerhapsBare:
      'Nobody said whether {list} {list?is:are} bare: taken as bare, and left out of the highest figure.',
    perhaps:
      '{list} may carry current into the soil too, by a footing, an anchor or metal that nobody is sure of: in for the lowest figure, out for the others.',
    perhapsTied:
      'Nobody knows whether {list} {list?is:are} tied to the rest: in for the lowest figure, out for the others.',
    refused:
      'The [electrode]s could not be solved together ({at}: two lie in one place): coupling through the soil is left out.',
    merged: 'The soil has more layers than are told apart; thin ones were taken together, outwards.',
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
} as const;
