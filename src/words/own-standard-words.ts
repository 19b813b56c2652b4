/** Findings by an owner's own standard. `[idea]` and `{name}` as in say.ts. */
export const ownStandardWords = {
  title: '{limit}: as {standard} asks',
  failTitle: '{at} {at?does:do} not meet {limit} of {standard}',
  ruleFailTitle: '{title} (by {standard})',
  limitFailTitle: '{at} {at?is:are} not within the limit of {standard} for {rule}',
  limitTitle: '{rule}: {limit}, as {standard} asks',
  limitRemedy: 'Bring {at} to {limit}, or ask the owner of the standard for an exception in writing.',
  atLeast: 'at least {figure}',
  atMost: 'at most {figure}',
  met: '{at}: {figures}.',
  notMet: '{at}: {figures}.',
  cannotTell: '{at}: {field} is not known, and {limits} is asked.',
  settle: 'Look at {at}, and type its `{field}:`.',
  earth: {
    failTitle: 'The system of {at} does not meet {limit} of {standard}',
    met: '{at}{at?:, joined}, to [ground]: {figures}.',
    notMet: '{at}{at?:, joined}, to [ground]: {figures}.',
    cannotTell: 'The [ground resistance] of {at}{at?:, joined,} is not known well enough, and {limits} is asked.',
    settle:
      'Take a fall-of-potential reading of the whole with everything joined, and type it under `readings:` with the bar or panel as `electrode:`; or type the soil.',
    remedy: 'Make the system of {at} meet {limits}, or ask the owner of the standard for an exception in writing.',
  },
  severalEarths: {
    cannotTell:
      '{at} and other [electrode]s are not known to be joined, so no figure is that of the whole site; {limits} is asked.',
    settle:
      'Join the [electrode]s, or type the `service:`. Then take a fall-of-potential reading of the whole and type it under `readings:`, or type the soil.',
  },
  noEarth: {
    cannotTell: 'No [electrode] in the file is known to be joined to {at}, and {limits} is asked of the whole.',
    settle:
      'Type the [electrode]s of {at}, and the conductors to them. Then take a fall-of-potential reading of the whole and type it under `readings:`, or type the soil.',
  },
  none: 'Nothing of this kind is in the file.',
  remedy: 'Make {at} meet {limits}, or ask the owner of the standard for an exception in writing.',
  basis: 'Asked by {standard}, which is the site owner’s own and no code{because}.',
  because: ' ({text})',
  word: '{field} {found}; {words} is asked',
  figure: '{field} {figure}',
  least: '{field} of at least {figure}',
  most: '{field} of at most {figure}',
  oneOf: '{field} {words}',
  or: ' or ',
} as const;
