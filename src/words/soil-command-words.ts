/** What the command `soil` says. `[idea]` is a term of the region, `{name}` a value (see say.ts). */
export const soilCommandWords = {
  title: '{site}: soil and [electrode]s',
  unnamed: 'Unnamed site',
  inState: ', state {state}',
  headings: {
    soil: 'SOIL',
    first: 'FIRST',
    readings: 'WHAT READINGS OF [electrode]S SAY',
    resistance: 'OHM TO [remote ground]',
    help: 'WHAT WOULD HELP',
    outside: 'THROUGH THE SOIL',
    surface: 'ON THE SURFACE',
    limits: 'LEFT OUT, AND HOW EXACT',
  },
  soil: {
    typed: 'As typed: {layers}.',
    typedKnown: 'As typed ({known}): {layers}.',
    preset:
      'Neither typed nor measured. Taken as {type}, which tables have at {range}: so wide is all that a name carries.',
    layer: '{resistivityOhmM} for {thicknessM}',
    layerOpen: '{resistivityOhmM}, of unknown thickness',
    layerBelow: '{resistivityOhmM} below that',
    layerOnly: '{resistivityOhmM} all the way down',
    unknownLayers:
      'A layer stands there without its resistivity, so nothing can be worked out: type a range, however wide.',
    unknown: 'Not known: neither typed nor measured, so nothing in it can be worked out.',
    fitHead: { spacing: 'Pins apart', measured: 'Read, ohm m', fitted: 'Layers give' },
    moreReadings: '... and {count} more; --json has them all.',
    name: 'Name the soil; it takes no tools: `soil: {type: clay}`. A table then gives a wide range, and everything is worked out over it. Kinds: {list}, and more.',
    measure:
      'Measure it: four pins in a straight line, evenly spaced, no deeper than a twentieth of their distance (from memory: IEEE Std 81), away from buried metal; read once each at {list} apart. Then type under `readings:`',
    measureLine: ['r1: {kind: four-pin, spacing: [{list}],', 'resistance: [... ohm, one for each]}'],
    fromElectrode:
      'Or begin with what {electrode} says, as a guess and no more: longer rods, more of them and the seasons are then worked out as if the soil were alike all through.',
    fromElectrodeLine: 'soil: {layers: [{resistivity: about {ohmM} ohm m}], known: assumed}',
  },
  noElectrodes: 'The file has no [electrode], so there is nothing to work out.',
  table: {
    whole: 'At the [service]',
    group: 'Group {group}',
    alone: 'Each alone:',
    share: 'Its share of the current:',
    unknown: 'unknown',
    conditions: 'Conditions: {list}.',
    condition: '{id}: {says}',
    likely: 'At the [service] most likely {ohm}, {condition}.',
    ranges:
      'Ranges run from the soil at its least resistivity everywhere to its greatest. A figure without a range was typed, or follows from soil typed without one; no soil is known that well.',
    joints:
      'The figures of groups and of the whole have joints in them; one whose kind nobody typed may add up to {jointOhm}.',
    stated: 'Typed or read, not worked out: {list}.',
    noFigure: 'No figure for {id}.',
    noFigureSince: '{id}: {why}',
  },
  deeper: {
    one: 'Deeper, by calculation: one rod like {electrode}, alone, has {list}.',
    now: '{ohm} at {length}, as it is',
    at: '{ohm} at {length}',
    reach: '{limit} or less (what the US code asks of a lone rod, from memory): {list}.',
    reachAt: 'from {length} on ({condition})',
    already: 'as it is ({condition})',
    perhaps: 'perhaps from {length} on, but in the worst of the soil not even at {longest} ({condition})',
    never: 'at no length up to {longest} ({condition})',
    barely: 'Deeper hardly helps: the soil below conducts worse. Lay wire or drive more rods, wide apart.',
  },
  more: {
    one: 'One more rod like {electrode}, tied to it, takes off {list}. Two that did not feel each other at all: {half}.',
    at: '{gain} at {distanceM}',
    useful:
      'The nearest distance tried that brings nine tenths of that is {distanceM}: {both} for the two ({condition}).',
    notUseful: 'No distance that was tried brings nine tenths of that.',
    line: 'Rods like {electrode} in a straight line, {distanceM} apart and joined, by the likely figures: {list} ohm for 1 to {count} of them ({condition}).',
    enough: '{limit} takes about {count}.',
    atLeast:
      '{limit} takes more than these: at least {count}, since joined rods never do better than to share the ohms among them.',
  },
  outOfReach:
    'Neither length nor number that was tried brings {limit} here. The US code asks for a second [electrode] then, and for no figure of the two (from memory: NEC 250.53(A)(2)). What stands between two boxes in a strike hangs on how they are tied to each other far more than on these ohms: tie all of it to one system first (common practice, no source).',
  frost: {
    unknown: 'No frost depth was typed. With `frost:` under `soil:` the winter is worked out too.',
    worse: 'Frost to {frost} raises resistance: {list}.',
    whole: 'the whole at the [service]',
    item: '{what} about {times} times',
    inside: 'Nearly lost in winter, because it lies in what freezes: {list}.',
    deep: 'Frost to {frost} does little here: most of the metal lies below it.',
  },
  outside: {
    intro:
      'When a group rises in a fault or a strike, an [electrode] that is not tied to it takes on this share through the soil; the rest stands between the two.',
    item: '{electrode}: {share} of the rise of {group}',
    more: '... and {count} smaller ones (--json has them all).',
    range: '{from} to {to}',
  },
  surface: {
    step: 'Group {group}: on a line outwards from its outermost metal a step of {=1 m} takes up to {share} of the rise, {at} ({condition}).',
    atMetal: 'right at the metal',
    from: 'beginning {at} from it',
    touch: 'From {part} to the ground {=1 m} away: up to {share} of the rise.',
    caution:
      'Per cent of the rise, for each volt of it. A strike can lift a station by many thousand volts, so a small share can kill; how high the rise is, is not worked out here. Stay away from [electrode]s, masts and down leads when a storm is near.',
  },
  limits: {
    solved:
      'The metal was cut into {segments} pieces; cut ever finer, figures would fall by about {error}{worst}. The soil is less well known than that.',
    worst: ', most at {at}',
    leaking: 'Bare wires in the soil that carry current too, and were worked out: {list}.',
    level:
      'Layers are taken as level and alike to all sides; rock, fill, pipes and foundations that nobody typed are not in it.',
    services:
      'Other metal that comes into the house (neutral, pipes, cable shields) would lower the figures and is not counted.',
  },
  caution:
    'Worked out from what somebody typed; no inspection, no measurement, and no promise that damage cannot happen. Local code, the [authority] and a [electrician] decide. Never open a [ground] connection to measure it, and never in or near a storm.',
  next: {
    again: 'Next: with the soil typed, evenground soil {file}',
    report: 'Next: evenground report {file} -o report',
    check: 'Next: evenground check {file}',
  },
} as const;
