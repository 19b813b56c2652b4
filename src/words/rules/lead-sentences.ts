import type { Tool } from '../rule-words.ts';

/** How the lead of an arrester is measured: one look settles every condition on it. */
export const leadSentences = {
  'measure it': 'Measure the lead from {at} to the bar along the wire; type `lead:` (0 in when it is bolted on).',
  'measure mains':
    'With the cover on, or by a [electrician], measure the leads of {at} on the side of the line and on that of the bar; type `line_lead:` and `lead:`.',
} as const;

/** What to bring for it. */
export const leadTools = { 'measure it': 'tape', 'measure mains': 'tape' } as const satisfies Record<string, Tool>;
