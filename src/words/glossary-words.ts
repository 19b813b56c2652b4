import type { Term } from './terms.ts';

/** Meanings of the region's terms, in the order of the page. */
export const termMeanings: readonly (readonly [term: Term, meaning: string])[] = [
  ['electrode', 'metal in the soil, or in concrete in the soil, that lets current into it'],
  ['electrode system', 'all [electrode]s of a site that are bonded together'],
  ['electrode conductor', 'the conductor from the [service] to its [electrode]'],
  ['bonding conductor', 'a conductor whose only task is to hold metal parts together electrically'],
  [
    'protective conductor',
    'the conductor of a circuit that carries fault current back so that the breaker or fuse opens',
  ],
  ['main bar', 'where all [grounding] conductors of a supply come together'],
  ['entry panel', 'the metal plate or bar where lines come into a building and are bonded'],
  ['intersystem bar', 'a bar where telephone, television and antenna conductors are bonded to the [service]'],
  ['ground resistance', 'what an [electrode] opposes to current on its way into distant soil'],
  ['remote ground', 'soil so far away that the site does not change its voltage'],
  ['ground ring', 'a bare conductor buried round a building or tower and closed on itself'],
  ['concrete-encased electrode', 'steel or copper inside a foundation that stands in soil'],
  ['down conductor', 'a conductor meant to carry a strike down to the [electrode]s'],
  ['surge protector', 'a device that joins two conductors while the voltage between them is too high'],
  ['antenna protector', 'a device that does so for the line of an antenna'],
  ['separation distance', 'the gap below which a strike jumps across to other metal'],
  ['authority', 'the office or body that says what is asked at this place'],
  ['electrician', 'a person whom the local rules allow to do this work'],
  ['listed', 'marked as examined for its use by a body that the local rules recognise'],
];

/** Words of this page's own. */
export const houseMeanings: readonly (readonly [word: string, meaning: string])[] = [
  ['bond', 'a tie of permanent metal'],
  ['tie', 'any way in which two parts are joined, cables and gaps included'],
  ['group', 'parts that bonds join'],
  ['way', 'a path through metal from one part to another'],
  ['weak point', 'a joint, conductor or part whose loss alone undoes something'],
  ['joint', 'where a conductor meets a part: a clamp, a lug, a weld'],
  ['state', 'how the site is switched or plugged at the time, such as “unplugged for the storm”'],
  ['side flash', 'an arc from a struck conductor to other metal near it'],
  ['cannot tell', 'the answer depends on something that the file does not say'],
];

export const glossaryWords = { heading: 'Words used' } as const;
