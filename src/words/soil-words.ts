/** Prose of the report's section on soil and electrodes. `[idea]` is a term of the region, `{name}` a value (see say.ts). */
export const soilWords = {
  heading: 'Soil and [electrode]s',
  intro:
    'What the soil does with the [electrode]s. Each range runs from the soil’s least resistivity everywhere to its greatest; soil that was only assumed makes figures that are only assumed.',
  fit: {
    heading: 'Soil that fits the four-pin readings',
    found:
      '{count} {count?layer fits:layers fit} the {list?reading:readings} {list}: what {count?it gives:they give} lies {misfit} off the readings (root mean square).',
    none: 'No layers fit the {list?reading:readings} {list}.',
    tried: 'Tried: {list}.',
    triedOne: '{count} {count?layer:layers}, {misfit} off',
    figure:
      'Left: what was read, and the curve that the layers give. Right: the layers, with the range in which each figure lies in 95 of 100 cases.',
    figureUnfitted: 'What was read. No layers fit it.',
    layersCaption: 'Layers that fit, from the surface down',
    layer: 'Layer',
    resistivity: 'Resistivity',
    thickness: 'Thickness',
    below: 'without end',
    range: '95 % range: {range}',
    notResolved: 'not resolved',
    settled: {
      'thickness times resistivity': 'resolved: thickness times resistivity, {range} ohm square metre',
      'thickness over resistivity': 'resolved: thickness over resistivity, {range} siemens',
    },
    settledRange: '{value} ({low} to {high})',
    pointsCaption: 'Readings, and what the layers give',
    reading: 'Reading',
    spacing: 'Spacing of the pins',
    measured: 'Measured',
    fitted: 'Layers give',
    off: 'Off by',
  },
  measured: {
    heading: 'What measured [electrode]s say of the soil',
    contradictions: 'Readings that contradict each other or the soil',
  },
  conditions: {
    heading: 'In each condition of the soil',
    intro:
      'The same [electrode]s in the soil as it was typed or measured, and as frost or drought leaves it. The worst season counts where a limit has to hold all year.',
    soilCaption: 'The soil in each condition',
    soilOhmCaption: 'The soil in each condition, and the resistance to [remote ground]',
    condition: 'Condition',
    means: 'What it means',
    layers: 'Layers, from the surface down',
    layer: '{resistivity} for {thickness}',
    layerOpen: '{resistivity} of unknown thickness',
    layerBelow: '{resistivity} below that',
    layerOnly: '{resistivity} all the way down',
    ohmCaption: 'Resistance to [remote ground] in each condition',
    whole: 'The whole, at the [service]',
    group: 'Group of {group}',
    figure: 'The same as bars. Where figures differ tenfold and more, the scale is logarithmic.',
    part: '{caption} Part {part}.',
    tablePart: '{caption}, part {part}',
  },
  electrodes: {
    caption: 'Each [electrode]: ohm alone, and in brackets its share of the current',
    electrode: '[Electrode]',
    within: 'Among others',
    aloneAndShare: '{alone} ({share})',
    intro:
      'Alone: as if nothing else stood in the soil. Among the others, about: the voltage of the [service]’s bar over the current that this one carries while all that is bonded carries current together, in the soil of the first column. It is higher than alone, because each stands in soil that the others have lifted.',
  },
  transferred: {
    heading: 'What unbonded [electrode]s take on through the soil',
    intro:
      'When a group rises in a fault or a strike, an [electrode] that is not bonded to it rises with the soil round it by this share. The rest of the rise stands between the two.',
    caption: 'Share of a group’s rise that an [electrode] outside it takes on',
    group: 'When this group rises',
    share: 'it takes on',
    range: '{from} to {to}',
    more: '{count} more pairs are not listed here: none takes on more than {share}. The study beside this page has them.',
  },
  depth: {
    heading: 'How deep?',
    now: '{list} alone, {condition}: {now} at {lengthM}, as it is; {others}.',
    nowNot: '{list} alone, {condition}: {others}.',
    at: '{ohm} at {lengthM}',
    caption: 'Resistance alone at other lengths: {list}',
    condition: 'Condition',
    rowOf: '{electrode}, {condition}',
    figure: '{first} in each condition: resistance alone at other lengths. Dotted upright: as it is.',
    figureMore:
      '{first} in each condition, {list} as typed: resistance alone at other lengths. Dotted upright: as it is.',
  },
  spacing: {
    heading: 'How far apart?',
    gains:
      'A second one like {list}, joined to it, lowers its resistance {others}; 50 % would be without mutual influence.',
    at: 'by {gain} at {distanceM}',
    figure: 'What a second one brings, by its distance from the first.',
  },
  lines: {
    heading: 'How many?',
    caption: 'As many in one straight line, joined: resistance in the likely soil',
    apart: 'Apart',
    about: 'about {ohm}',
    intro:
      'Each further one brings less, because all stand in soil that the others have lifted. Before driving more, see what a longer one does.',
  },
  surface: {
    heading: 'Voltage on the surface',
    intro:
      'All figures here are in per cent of the rise: the voltage between a group and [remote ground] while current flows into the soil. How high the rise is hangs on the current of the fault or the strike, which is not worked out in this section.',
    caution:
      'The voltage falls fastest right at the metal, so the distance from the [electrode] decides. Keep people and animals away from [electrode]s, from what is tied to them and from fences near them while a storm is near. A small share of a great rise can kill.',
    step: 'Group of {group}, {condition}: on the line from A to B the worst step of {=1 m} takes {share} of the rise; it begins {atM} from A.',
    stepAtA:
      'Group of {group}, {condition}: on the line from A to B the worst step of {=1 m} takes {share} of the rise; it begins at A.',
    touch: 'From {part} to the surface {=1 m} away there stands up to {share} of the rise.',
    alike: 'The same holds for {count?the group:the groups} of {list}, each at its own place.',
    figure:
      'Group of {group}: lines of equal potential, in per cent of its rise, between points {stepM} apart; nearer to the metal than that the surface rises towards 100 %. At the right the potential along the line from A to B; shaded: the worst step.',
  },
  limits: {
    heading: 'What was left out, and how much it can matter',
    leaking: 'Bare metal in the soil that carries current too and was worked out with the [electrode]s: {list}.',
  },
  method: {
    solve:
      '[Electrode]s: metal in the soil is cut into {segments} straight pieces, each of which lets current out evenly; soil in layers is taken as images of each piece. Cut ever finer, a figure would fall by about {error}{worst}.',
    worst: ', most at {at}',
    bounds:
      'Ranges of soil: resistance rises with resistivity wherever that rises, so that the soil at its least and at its greatest everywhere bounds the truth. A season changes the layers, not the result.',
  },
} as const;
