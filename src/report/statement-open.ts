import { statementWords } from '../words/statement-words.ts';
import { paragraph, type Section } from './block.ts';
import { type CompareContext, wordingOf } from './compare-context.ts';
import { kindName, partName, sayIn } from './page-context.ts';
import { hasUnprotected, isFromOutside } from './statement-cables.ts';
import { alikeEntries, someEntries, standing } from './statement-lists.ts';

const words = statementWords.open;
const mostNotMet = 9;
const mostAgreed = 5;
const mostCannotTell = 7;
const mostUnknowns = 8;

/** As left: cables with nothing on a conductor, what is not met, what was agreed to, what nobody knows. */
export function openSection(page: CompareContext): Section {
  return {
    id: 'open',
    heading: words.heading,
    blocks: [
      paragraph(words.intro[wordingOf(page)]),
      { is: 'list', ordered: false, items: [unprotected(page), ...findings(page), ...unknowns(page), words.still] },
    ],
  };
}

function unprotected({ after }: CompareContext): string {
  const bare = after.study.lines.filter((l) => isFromOutside(after.study, l) && hasUnprotected(after.study, l));
  if (bare.length === 0) return words.noUnprotected;
  const list = bare.map((l) => `${partName(after, l.id)} (${kindName(after, l.kind)})`).join(', ');
  return sayIn(after, words.unprotected, { list });
}

function findings({ after }: CompareContext): readonly string[] {
  const { findings: all } = after.study;
  const agreed = all.filter((f) => f.agreed !== null && f.outcome !== 'met');
  const lists = [
    ['notMet', standing(all, 'not met'), mostNotMet],
    ['agreed', agreed, mostAgreed],
    ['cannotTell', standing(all, 'cannot tell'), mostCannotTell],
  ] as const;
  return lists
    .filter(([, list]) => list.length > 0)
    .map(([key, list, most]) =>
      sayIn(after, words[key], { n: String(list.length), list: someEntries(after, alikeEntries(after, list), most) }),
    );
}

function unknowns({ after }: CompareContext): readonly string[] {
  const paths = [...new Set(after.study.unknowns.map((u) => u.path))];
  if (paths.length === 0) return [];
  return [sayIn(after, words.unknowns, { n: paths.length, list: someEntries(after, paths, mostUnknowns) })];
}
