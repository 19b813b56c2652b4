import { readValue } from '../format/read-value.ts';
import type { Problem } from '../problem.ts';
import { below, refuse } from '../reading/report.ts';
import { childOf } from '../reading/tree.ts';
import { agreedFields } from './agreed-format.ts';
import type { AgreementFile } from './owner-standard.ts';
import { sideFile } from './side-file.ts';

/** Reads a file of findings that were agreed to stand; all problems at once. Never throws. */
export function readAgreed(
  content: string,
  file: string,
): { readonly agreements: AgreementFile | null; readonly problems: readonly Problem[] } {
  const { value, problems } = sideFile(content, Object.keys(agreedFields), ({ root, spot }) => {
    const node = childOf(root, 'agreed');
    const read = node === null ? null : readValue(agreedFields.agreed.type, node, below(spot, 'agreed'));
    const nameless = read?.some((a) => a.rule === null) ?? false;
    if (nameless && node !== null) refuse(below(spot, 'agreed'), node.at, 'agreed-without-rule', {});
    return { file, agreed: (read ?? []).flatMap((a) => (a.rule === null ? [] : [{ ...a, rule: a.rule }])) };
  });
  return { agreements: value, problems };
}
