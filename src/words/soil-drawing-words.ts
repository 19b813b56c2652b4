/** Prose of the charts and the contour map of soil and electrodes. `[idea]` and `{name}` as in say.ts. */
export const soilDrawingWords = {
  legend: 'Legend',
  ohm: 'Resistance, ohm',
  asTyped: 'as typed',
  unknown: 'unknown',
  trace: 'under 0.1 %',
  sounding: {
    title: 'Four-pin readings of {site} and the layers that fit them',
    description:
      '{points} readings of apparent resistivity against the spacing of the pins, with the curve of the {layers} layers that fit them, and those layers as steps of resistivity against depth. The tables below it give the figures.',
    descriptionUnfitted:
      '{points} readings of apparent resistivity against the spacing of the pins. No layers fit them.',
    spacing: 'Spacing of the pins',
    apparent: 'Apparent resistivity, ohm m',
    resistivity: 'Resistivity, ohm m',
    depth: 'Depth',
    reading: 'reading {reading}',
    fitted: 'what the layers give',
    layers: 'the layers',
    open: 'a resistivity that is not resolved',
    range: '95 % range of a layer; bar: of its lower edge',
  },
  depth: {
    title: 'Resistance of {list} alone, at other lengths',
    description:
      'Resistance of {list} alone against the length, one curve for each condition of the soil, with the range of the first as a strip. {now}',
    now: 'At the length as it is: {list}.',
    nowOf: '{electrode} {condition} {ohm} at {lengthM}',
    length: 'Length in the soil',
    own: 'as it is',
    strip: 'range of the soil {condition}',
  },
  season: {
    title: 'Resistance in each condition of the soil',
    description: 'A bar from the least to the greatest resistance, for the whole and for each group: {list}.',
    entry: '{of}, {condition}: {ohm}',
    whole: 'The whole, at the [service]',
    group: 'Group of {group}',
    bar: 'from least to greatest',
    likely: 'likely figure',
    open: 'no upper bound is known',
    resistance: 'Resistance to [remote ground], ohm',
  },
  spacing: {
    title: 'What a second one brings, by its distance',
    description:
      'How much lower the resistance of two joined ones is than that of one alone, against the distance between them, in per cent. {list}.',
    entry: '{electrode}: {gain} at {distanceM}',
    distance: 'Distance between the two',
    gain: 'Lower by, %',
    apart: '50 %: as if they did not feel each other',
  },
  contour: {
    title: 'Potential of the surface round the group of {group}',
    description:
      'Map of the surface with lines of equal potential at {levels} per cent of what the group of {group} rises to, over its [electrode]s, supports and buildings. Along the line from A to B the worst step of {=1 m} takes {step} of the rise, beginning {atM} from A.',
    level: 'equal potential, in % of the rise',
    edge: 'edge of what was worked out',
    line: 'line looked at for the worst step',
    step: 'worst step of {=1 m} on that line',
    scale: 'Scale 1:{ratio} on {paper} paper at full size',
    scaleInches: 'Scale 1 in = {feet} ft (1:{ratio}) on {paper} paper at full size',
    condition: 'Condition of the soil: {condition}',
    from: 'A',
    to: 'B',
  },
  profile: {
    description: 'Along the line from A to B, by the distance from A: {list}.',
    entry: '{share} at {distanceM}',
    distance: 'Distance from A',
    share: 'Potential, % of the rise',
  },
} as const;
