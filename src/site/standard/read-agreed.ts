import { listOfKnown, record } from '../format/collections.ts';
import { field } from '../format/field.ts';
import { readValue } from '../format/read-value.ts';
import { date, text } from '../format/words.ts';
import type { Problem } from '../problem.ts';
import { below, refuse } from '../reading/report.ts';
import { childOf } from '../reading/tree.ts';
import type { AgreementFile } from './owner-standard.ts';
import { sideFile } from './side-file.ts';

/** As under `agreed` of a site; places are not looked up: one that nothing answers to is said to be stale. */
const agreements = listOfKnown(
  record({
    rule: field(text(), 'The rule whose finding was agreed to stand.'),
    at: field(text(), 'The part that it is about.'),
    reason: field(text(), 'Why it may stand.'),
    by: field(text(), 'Who agreed.'),
    date: field(date, 'When.'),
  }),
);

/** Reads a file of findings that were agreed to stand; all problems at once. Never throws. */
export function readAgreed(
  content: string,
  file: string,
): { readonly agreements: AgreementFile | null; readonly problems: readonly Problem[] } {
  const { value, problems } = sideFile(content, ['agreed', 'note'], ({ root, spot }) => {
    const node = childOf(root, 'agreed');
    const read = node === null ? null : readValue(agreements, node, below(spot, 'agreed'));
    const nameless = read?.some((a) => a.rule === null) ?? false;
    if (nameless && node !== null) refuse(below(spot, 'agreed'), node.at, 'agreed-without-rule', {});
    return { file, agreed: (read ?? []).flatMap((a) => (a.rule === null ? [] : [{ ...a, rule: a.rule }])) };
  });
  return { agreements: value, problems };
}
