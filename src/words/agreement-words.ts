/** What is to be said of findings that were agreed to stand. */
export const agreementWords = {
  at: '{rule} at {at}',
  stale:
    'Agreed to stand, but nothing answers to it: {subject}. What it was about is put right, is called otherwise, or never was; take it out of the file.',
  near: '{stale} Did you mean {near}?',
  nearPart: '{stale} Nothing in the file is called {at}. Did you mean {near}?',
  ofOwner: '{stale} What the owner’s own standard asks there is agreed to as {near}.',
  lacks: 'Agreed to stand without {lacks}: {subject}. Whoever reads this later cannot tell whether it still holds.',
  reason: 'a reason',
  by: 'a name',
  date: 'a date',
  and: ' and ',
} as const;

/** Under which name a finding is agreed to: what an owner asks of a rule of the pack is another matter than what the code asks. */
export function agreedAs({ rule, codeSet }: { readonly rule: string; readonly codeSet: string }): string {
  return codeSet === 'own' && !rule.startsWith('own-') ? `own-${rule}` : rule;
}
