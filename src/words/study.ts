/** Sentences of the study itself: verdict, unknowns, assumptions. `[idea]` and `{name}` as in say.ts. */
export const studyWords = {
  'verdict hazards':
    '{hazards} that can hurt people or start a fire, {defects} that break a clause or are likely to cost equipment, {advices} of advice.',
  'verdict clean': 'No listed condition failed; that is not a promise that damage cannot happen.',
  'verdict unbonded': '{count} of the [electrode]s outside the system of the [service]: {list}.',
  'verdict unbonded one': 'One [electrode] is outside the system of the [service]: {list}.',
  'verdict bonded': 'Every [electrode] in the file hangs together with the [service] through permanent metal.',
  'verdict no service':
    'Where the [service] is tied to earth is not known, so nothing can be shown to be bonded to it.',
  'verdict field': 'The station has no power service; what can be touched together decides.',
  'verdict cannot tell':
    '{cannotTell} could not be told from what the file says; the list of things to look at says how to settle each.',
  'verdict all told': 'Nothing was left that could not be told from what the file says.',
  'action settle': 'Find out: {text}',
  'section not looked at': 'The section was not looked at.',
  'type section': 'Type what is there under `{section}:`, or `{section}: none` if you looked and there is none.',
  'line not asked': 'Whether a {kind} line comes in was not said.',
  'type line': 'Type the {kind} line, or `site.without: [{kind}]` if none comes in.',
  'length unknown': 'The length is not known.',
  'measure length': 'Measure it along its run.',
  'wire unknown': 'Size or metal is not known.',
  'look wire': 'Read the print on it, or measure the metal across.',
  'joint unknown': 'The kind of joint is not known, so its resistance is not.',
  'look joint': 'Look at it and type its kind.',
  'electrode missing': 'Its resistance cannot be worked out: {missing} not known.',
  'electrode settle': 'Look for the mark at its top, ask who drove it, or measure it.',
  'soil unknown': 'The soil is not known, so no resistance to earth can be worked out.',
  'soil settle': 'Take four-pin readings, name the soil with `type:`, or measure the [electrode]s.',
  'undescribed bond': 'It is said to be bonded, by something that nobody described.',
  'describe bond': 'Look for the conductor or strap and type it.',
  'joined unknown': 'Whether its rods are joined is not known; it is counted as one.',
  'look joined': 'Look for the wire between the rods.',
  'end unknown': 'Nobody knows where this end goes.',
  'trace end': 'Trace it, or measure continuity to the parts near it.',
  'default effect': 'Taken because the file does not say.',
  'joints by kind': 'Joints without a reading have the range of resistance of their kind.',
  'at 20 degrees': 'Resistances of metal are at 20 °C (68 °F).',
  'closed forms':
    'Each [electrode] by a closed form in soil that is the same everywhere between its least and its greatest resistivity.',
} as const;

export type StudyWord = keyof typeof studyWords;
