import type { Bonding } from '../bonding/bonding.ts';
import type { Finding } from '../rules/run-rules.ts';
import { type Speech, say } from '../words/say.ts';
import { studyWords } from '../words/study.ts';
import type { Study, StudySetCounts } from './study.ts';
import { type AgreedCounts, verdictSentences } from './verdict-sentences.ts';

/**
 * Counts of what stands alone (folded findings are not counted again) in the first of the site's sets, and of each where there
 * are several; three sentences and one for each set of which little is known, and the first three actions.
 */
export function verdictOf(
  findings: readonly Finding[],
  sets: readonly string[],
  bonding: Bonding,
  speech: Speech,
): Study['verdict'] {
  const alone = findings.filter((f) => f.under === null);
  const agreed = findings.filter((f) => f.agreed !== null && f.outcome !== 'met');
  const ofSet = (all: readonly Finding[], set: string) => all.filter((f) => isOfSet(f, set, sets));
  const bySet = sets.map((codeSet): StudySetCounts => ({ codeSet, ...countsOf(ofSet(alone, codeSet)) }));
  const [first = ''] = sets;
  const said = bySet.map((set) => ({ ...set, agreed: agreedCounts(ofSet(agreed, set.codeSet)) }));
  return {
    ...countsOf(ofSet(alone, first)),
    agreed: agreed.length,
    ...(sets.length > 1 ? { bySet } : {}),
    text: verdictSentences(said, agreedCounts(agreed), bonding, speech),
    actions: actionsOf(alone, (f) => isOfSet(f, first, sets), speech),
  };
}

/** What a set asks: its own findings and those of all sets. The first takes what is no other's. */
function isOfSet({ codeSet }: Finding, set: string, sets: readonly string[]): boolean {
  if (codeSet === set) return true;
  if (set === 'own') return false;
  return codeSet === 'any' || (set === sets[0] && !sets.includes(codeSet));
}

type Counts = Pick<Study['verdict'], 'hazards' | 'defects' | 'advices' | 'cannotTell'>;

function countsOf(alone: readonly Finding[]): Counts {
  const standing = alone.filter((f) => f.outcome === 'not met' && f.agreed === null);
  const count = (severity: Finding['severity']) => standing.filter((f) => f.severity === severity).length;
  const doubts = alone.filter((f) => f.outcome === 'cannot tell' && f.agreed === null);
  return {
    hazards: count('hazard'),
    defects: count('defect'),
    advices: count('advice'),
    cannotTell: doubts.length,
  };
}

function agreedCounts(agreed: readonly Finding[]): AgreedCounts {
  const notMet = agreed.filter((f) => f.outcome === 'not met').length;
  return { notMet, cannotTell: agreed.length - notMet };
}

/**
 * What to do first: the hazards of all sets, then what else the first of them found, then the rest. Of those by severity;
 * within one, what is wrong before what is to be found out, except where the order of the findings puts a doubt first because
 * everything else hangs on it.
 */
function actionsOf(
  alone: readonly Finding[],
  isOfFirst: (f: Finding) => boolean,
  speech: Speech,
): Study['verdict']['actions'] {
  const open = alone.filter((f) => f.outcome !== 'met' && f.agreed === null);
  const firstWrong = open.findIndex((f) => f.outcome === 'not met');
  const order = ['hazard', 'defect', 'advice'];
  const ranked = open
    .map((f, i) => ({
      f,
      i,
      other: f.severity === 'hazard' || isOfFirst(f) ? 0 : 1,
      late: f.outcome === 'cannot tell' && i > firstWrong ? 1 : 0,
    }))
    .sort(
      (a, b) =>
        a.other - b.other || order.indexOf(a.f.severity) - order.indexOf(b.f.severity) || a.late - b.late || a.i - b.i,
    );
  const byText = new Map<string, string>();
  for (const { f } of ranked) {
    const text = actionText(f, speech);
    // two conditions may hang on one thing to find out
    if (!byText.has(text)) byText.set(text, f.id);
    if (byText.size === 3) break;
  }
  return [...byText].map(([text, finding]) => ({ finding, text }));
}

function actionText(f: Finding, speech: Speech): string {
  return f.outcome === 'not met' ? f.remedy : say(studyWords['action settle'], { text: f.remedy }, speech);
}
