import { agreementFields } from '../format/agreement.ts';
import { listOfKnown, record } from '../format/collections.ts';
import { field } from '../format/field.ts';
import { text } from '../format/words.ts';

/** As under `agreed` of a site; places are not looked up: one that nothing answers to is said to be stale. */
const agreement = record(agreementFields(text()));
/** Without its rule an entry says nothing. */
const named = { ...agreement, schema: { ...agreement.schema, required: ['rule'] } };

/** The keys of a file of findings that were agreed to stand. */
export const agreedFields = {
  agreed: field(listOfKnown(named), 'Findings that were agreed to stand, each with its reason, by whom and when.'),
  note: field(text(), 'Anything worth knowing; it is not read further.'),
};
