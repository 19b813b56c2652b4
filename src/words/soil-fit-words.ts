/** What is said of layers fitted to four-pin readings. */
export const soilFitWords = {
  uniform: 'The readings {list} are those of soil alike all through, {resistivity}.',
  layers: 'The readings {list} are those of {count} layers: {layers}.',
  layer: '{resistivity} for {thickness}',
  lastLayer: '{resistivity} below',
  resistivity: '{valueOhmM} ({rangeOhmM})',
  resistivityOpen: 'a resistivity that is not resolved ({rangeOhmM})',
  resistivityFree: 'a resistivity that is not resolved (any fits)',
  thickness: '{valueM}, in the range {rangeM}',
  thicknessOpen: 'a thickness that is not resolved, {rangeM}',
  thicknessFree: 'a thickness that is not resolved (any fits)',
  settled: {
    'thickness times resistivity':
      'a layer of which neither thickness nor resistivity is resolved, only the one times the other: {value} ohm square metre ({low} to {high})',
    'thickness over resistivity':
      'a layer of which neither thickness nor resistivity is resolved, only the one over the other: {value} siemens ({low} to {high})',
  },
  settledToo: {
    'thickness times resistivity':
      'Of layer {layer} thickness times resistivity is resolved: {value} ohm square metre ({low} to {high}).',
    'thickness over resistivity':
      'Of layer {layer} thickness over resistivity is resolved: {value} siemens ({low} to {high}).',
  },
  ranges:
    'Ranges hold with 95 %; the fit misses the readings by {percent} % on the whole, and each is taken as good to {noise} %.',
  exact:
    'These layers have {figures} figures to choose, and there are readings at {spacings} spacings: so many readings always fit so many figures, and that they meet proves nothing. A reading at one more spacing would show whether the soil is like that. Ranges hold with 95 %, each reading taken as good to {noise} %.',
  notResolved:
    'Not resolved: what the readings allow runs over more than one to ten, or has no end. Any figure in it does as well.',
  tried: 'With {count} the fit would miss them by {percent} %.',
  counts: { 1: 'one layer', 2: 'two layers', 3: 'three layers' },
  typedWins: 'The soil as typed is used; this is what the readings say by themselves.',
  used: 'This is the soil that is used here.',
  reasons: {
    'reading not above zero': 'A reading is not above zero: take it again.',
    'pins not usable': 'A row of pins cannot be used: two in one place, or driven deeper than they stand apart.',
    'no resistivity of soil':
      'A reading means {apparentOhmM}, which no soil has: a unit or a decimal point may have slipped.',
    'over range': 'Every reading is over range: no figure stands for it.',
    'too few readings':
      '{readings} {readings?reading:readings} are too few to tell anything: take at least {needed}, at different spacings.',
    'one spacing':
      'All readings are at one spacing: they say what the soil is down to about that depth, and nothing of layers. Take more, from a third of it to three times it.',
    'too few spacings': '{spacings} spacings are too few: take at least {needed}.',
    'readings contradict': 'Readings with the same pins lie {timesApart} times apart: take them again.',
    misfit:
      'Neither uniform soil nor two or three level layers give these readings: the best misses them by {percent} % (up to {limit} % would do). The soil is not level, or something of metal lies beside the pins: measure along another line.',
    'no better': 'More layers do no better than {layers}.',
    'markedly worse': '{layers} layers fit markedly better.',
    'not needed': '{layers} do.',
  },
} as const;
