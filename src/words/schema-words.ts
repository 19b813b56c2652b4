/** Sentences of the JSON Schema that stand in no table of the format. */
export const schemaWords = {
  title: 'A station’s grounding',
  file: 'One radio station: what is there, what joins it, and what is not known. Leave out what nobody knows, or write unknown.',
  unknown: 'Nobody knows. The same as leaving it out: never taken as fine, never as not there.',
  wrapped: 'A value, and how it is known.',
  is: 'The value.',
  known: 'How this one value is known: seen, told, measured, assumed or planned.',
  note: 'Anything worth knowing about this value.',
  none: 'Somebody looked, and there are none.',
  kind: 'What kind it is; left out, nobody knows.',
  member: 'Known elsewhere in the file by this id.',
  id: 'An id: letters of any script, digits, - and _; not a word that the file uses itself.',
  prices: 'What one costs, or one foot or metre of it; currency names the money.',
  kinds: 'For {kinds}.',
  standardTitle: 'A standard of a site’s owner',
  standardFile:
    'What a landlord or a club asks beside the code, in limits and words of its own. `site.standard` names the file.',
  ownLimit: 'A condition of the owner’s own: what it is of, and at least one thing that is asked.',
  agreedTitle: 'Findings that were agreed to stand',
  agreedFile:
    'What was found, and was agreed to stay as it is. `site.agreed_in` names the file; such a finding is counted and never gone.',
} as const;
