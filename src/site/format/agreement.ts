import { type FieldType, field } from './field.ts';
import { date, text } from './words.ts';

/** A finding that was agreed to stand, in a site file or in a file beside it; `at` says how the place is read there. */
export function agreementFields<T>(at: FieldType<T>) {
  return {
    rule: field(
      text(),
      'The rule whose finding was agreed to stand; of what the owner’s own standard asks, with own- before it.',
    ),
    at: field(at, 'The part that it is about.'),
    reason: field(text(), 'Why it may stand.'),
    by: field(text(), 'Who agreed.'),
    date: field(date, 'When.'),
  };
}
