/** Words of the terminal's page of a check. */
export const checkWords = {
  bring: 'Bring {bring}.',
  settles: '(Settles {count} conditions.)',
  set: 'ASKED BY: {name}',
  allSets: 'all sets alike',
  noneInSet: 'No listed condition of this set alone failed.',
  agreed: 'AGREED TO STAND',
} as const;
