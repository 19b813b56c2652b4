/** What every condition on the section of a conductor can say of one. */
export const sizeSentences = {
  none: 'No such conductor is in the file.',
  'size unknown': 'The section of {at} is not known well enough.',
  'measure it': 'Measure the bare metal of {at} across with a gauge, or read the print on its covering; type `wire:`.',
  'metal unknown': 'The metal of {at} is not known.',
  'look at it':
    'Scratch {at} where it lies bare, and never cut or loosen it: copper or another metal? Type it with `wire:`.',
  'metal not listed': 'The clause has no figure for the metal of {at}.',
  ask: 'Ask the [authority] whether {at} {at?is:are} accepted.',
  enough: '{at} is thick enough.',
  small: '{at} is thinner than the clause asks.',
} as const;

/** What to bring to settle them. */
export const sizeTools = { 'measure it': 'wire gauge', ask: 'papers' } as const;
