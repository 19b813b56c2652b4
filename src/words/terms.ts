/**
 * One internal name per idea, two display dictionaries. A message writes `[electrode]` and the reader sees the word of
 * their region; the two are never mixed on a page. Terms: IEC 60050-195 and 60050-826 (from memory) for the IEC side,
 * the electrical code of the United States (from memory) for the other.
 */
export type Terms = 'us' | 'iec';

const table = {
  electrode: ['grounding electrode', 'earth electrode'],
  rod: ['ground rod', 'earth rod'],
  'electrode system': ['grounding electrode system', 'earth-termination system'],
  'electrode conductor': ['grounding electrode conductor', 'earthing conductor'],
  'bonding conductor': ['bonding conductor', 'equipotential bonding conductor'],
  'protective conductor': ['equipment grounding conductor', 'protective conductor'],
  'main bar': ['grounding bus of the service', 'main earthing terminal'],
  'entry panel': ['entry panel', 'entry bonding bar'],
  'intersystem bar': ['intersystem bonding termination', 'equipotential bonding bar'],
  ground: ['ground', 'earth'],
  grounded: ['grounded', 'earthed'],
  grounding: ['grounding', 'earthing'],
  bonding: ['bonding', 'equipotential bonding'],
  'ground resistance': ['resistance to ground', 'earth resistance'],
  'ground ring': ['ground ring', 'ring earth electrode'],
  'concrete-encased electrode': ['concrete-encased electrode', 'foundation earth electrode'],
  'down conductor': ['down conductor', 'down-conductor'],
  'surge protector': ['surge protective device', 'SPD'],
  'antenna protector': ['antenna discharge unit', 'surge protective device of the antenna line'],
  'separation distance': ['bonding distance', 'separation distance'],
  'remote ground': ['remote ground', 'remote earth'],
  authority: ['authority having jurisdiction', 'local authority or network operator'],
  electrician: ['licensed electrician', 'qualified electrician'],
  listed: ['listed', 'tested to its standard'],
  guy: ['guy', 'stay'],
  neutral: ['neutral (grounded conductor)', 'neutral'],
  service: ['service', 'supply intake'],
  'service panel': ['service panel', 'main distribution board'],
  enclosure: ['enclosure', 'enclosure'],
} as const satisfies Record<string, readonly [us: string, iec: string]>;

export type Term = keyof typeof table;

/** The word of a region for an idea. */
export function term(name: Term, terms: Terms): string {
  return table[name][terms === 'us' ? 0 : 1];
}

/** Whether a bracketed word of a message is a term of the table. */
export function isTerm(name: string): name is Term {
  return Object.hasOwn(table, name);
}

/** All terms with both words, in the order of the table; for the glossary of a page. */
export function allTerms(): readonly { readonly idea: Term; readonly us: string; readonly iec: string }[] {
  return Object.entries(table).map(([idea, [us, iec]]) => ({ idea: idea as Term, us, iec }));
}

/** Which dictionary a region reads: the United States and Canada the one, everybody else the other. */
export function termsOf(region: string): Terms {
  return region === 'us' || region === 'ca' || region === 'unknown' ? 'us' : 'iec';
}
