/** Sentences of the study itself: verdict, unknowns, assumptions. `[idea]` and `{name}` as in say.ts. */
export const studyWords = {
  'verdict hazards':
    '{hazards} that can hurt people or start a fire, {defects} that break a clause or are likely to cost equipment, {advices} of advice.',
  'verdict clean': 'No listed condition failed; that is not a promise that damage cannot happen.',
  'verdict unbonded': '{count} [electrode]s are outside the system of the [service]: {list}.',
  'verdict unbonded one': 'One [electrode] is outside the system of the [service]: {list}.',
  'verdict no electrode': 'No [electrode] is in the file.',
  'verdict bonded': 'Permanent metal joins every [electrode] in the file to the [service].',
  'verdict no service':
    'Where the [service] is tied to [ground] is not known, so nothing can be shown to be bonded to it.',
  'verdict field': 'The station has no power service; what can be touched together decides.',
  'verdict cannot tell':
    '{cannotTell} could not be told from what the file says; the list of things to look at says how to settle each.',
  'verdict all told': 'Nothing was left that could not be told from what the file says.',
  'thin ca':
    'Of the codes of Canada this program holds little: no size or number of [electrode]s, and no size of conductors. What it does not ask may still be asked: look in your copy, or ask the authority.',
  'thin au':
    'Of the codes of Australia this program holds little: no size of conductors but those of lightning protection. What it does not ask may still be asked: look in your copy, or ask the authority.',
  'action settle': 'Find out: {text}',
  'section not looked at': 'The section was not looked at.',
  'type section': 'Type what is there under `{section}:`, or `{section}: none` if you looked and there is none.',
  'section incomplete': 'The section holds only some of what is there.',
  'complete section': 'Type the rest under `{section}:`, then take it off `site.incomplete`.',
  'service unknown': 'Where the [service] is tied to [ground] is not known.',
  'find service': 'Follow the conductor from the panel; have a [electrician] open what has to be opened.',
  'supply unknown': 'How the supply is [grounded] is not known.',
  'find supply': 'Ask the network operator or a [electrician], and type it under `site.supply`.',
  'stop unknown': 'Part of its way is not known.',
  'follow line': 'Follow it from end to end and type each place where it is joined, bonded or unplugged.',
  'perhaps there': 'Nobody knows whether it is there.',
  'look there': 'Go and look, and type `present: yes` or `present: no`.',
  'line not asked': 'Whether a {kind} line comes in was not said.',
  'type line': 'Type the {kind} line, or `site.without: [{kind}]` if none comes in.',
  'length unknown': 'The length is not known.',
  'measure length': 'Measure it along its run.',
  'wire unknown': 'Size or metal is not known.',
  'look wire': 'Read the print on it, or measure the metal across.',
  'joint unknown': 'The kind of joint is not known, so its resistance is not.',
  'look joint': 'Look at it and type its kind.',
  'electrode missing': 'Its resistance cannot be worked out; not known, or out of reason: {missing}.',
  'electrode settle': 'Look for the mark at its top, ask who drove it, or measure it.',
  'soil unknown': 'The soil is not known, so no [ground resistance] can be worked out.',
  'soil settle': 'Take four-pin readings, name the soil with `type:`, or measure the [electrode]s.',
  'undescribed bond': 'It is said to be bonded, by something that nobody described.',
  'describe bond': 'Look for the conductor or strap and type it.',
  'joined unknown': 'Whether its rods are joined is not known; it is counted as one.',
  'look joined': 'Look for the wire between the rods.',
  'end unknown': 'Nobody knows where this end goes.',
  'trace end': 'Trace it, or measure continuity to the parts near it.',
  'joints by kind': 'Joints without a reading have the range of resistance of their kind.',
  'edition taken':
    '{document}: no edition is named under `code:`, so the newest figures that are known here are asked ({edition}).',
  'edition matters': 'An older edition may ask less, or number its clauses otherwise; a later one was not seen.',
  'at 20 degrees': 'Resistances of metal are at 20 °C (68 °F).',
  'closed forms':
    'Each [electrode] by boundary elements in level layers of soil, from the soil at its least resistivity everywhere to its greatest.',
} as const;

/** Figures of an electrode by the name under which they are typed. */
export const figureNames: Readonly<Record<string, string>> = {
  lengthM: 'length',
  armLengthM: 'length',
  diameterM: 'diameter',
  radiusM: 'wire',
  joiningRadiusM: 'wire',
  coreDiameterM: 'wire',
  topM: 'top',
  angleDeg: 'angle',
  depthM: 'depth',
  joiningDepthM: 'depth',
  widthM: 'width',
  heightM: 'height',
  spacingM: 'spacing',
  holeDiameterM: 'hole',
  backfillOhmM: 'backfill_resistivity',
  count: 'count',
  layout: 'layout',
  stands: 'stands',
};

export type StudyWord = keyof typeof studyWords;
