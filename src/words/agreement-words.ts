/** What is to be said of findings that were agreed to stand. */
export const agreementWords = {
  at: '{rule} at {at}',
  stale:
    'Agreed to stand, but nothing answers to it: {subject}. What it was about is put right, is called otherwise, or never was; take it out of the file.',
  lacks: 'Agreed to stand without {lacks}: {subject}. Whoever reads this later cannot tell whether it still holds.',
  reason: 'a reason',
  by: 'a name',
  date: 'a date',
  and: ' and ',
} as const;
