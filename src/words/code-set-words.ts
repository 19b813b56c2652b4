/** Names of the sets of conditions, and what stands behind a condition where it is not simply the code of the place. */
export const codeSetWords = {
  names: {
    us: 'United States',
    ca: 'Canada',
    iec: 'IEC and EN',
    uk: 'United Kingdom',
    au: 'Australia',
    any: 'everywhere',
    own: 'own standard',
    unknown: 'United States (no region is named)',
  },
  /** Where a document binds. */
  homes: {
    us: 'the United States',
    ca: 'Canada',
    iec: 'IEC countries',
    uk: 'the United Kingdom',
    au: 'Australia',
    unknown: 'another country',
  },
  borrowed: 'Common practice here: the figure comes from {clause}, which binds in {home} and not here.',
  borrowedAnywhere: 'Common practice here: the figure comes from {clause}, which does not bind here.',
  elsewhere: 'Asked in {sets} only.',
  sinceLater: 'Asked since edition {since} of {document}; edition {year} is adopted here.',
  sinceUnknown: 'Asked since edition {since} of {document}; which edition is adopted here was not said.',
  ownLimit: 'Here the owner’s own limit decides for {at}.',
  fault: 'This condition could not be worked out because of an error of the program.',
} as const;

/** Name of a set; one that is none stands as it is. */
export function setName(set: string): string {
  return Object.hasOwn(codeSetWords.names, set) ? codeSetWords.names[set as keyof typeof codeSetWords.names] : set;
}
