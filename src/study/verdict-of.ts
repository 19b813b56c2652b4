import type { Bonding } from '../bonding/bonding.ts';
import type { Finding } from '../rules/run-rules.ts';
import { type Speech, say, type Values } from '../words/say.ts';
import { type StudyWord, studyWords } from '../words/study.ts';
import type { Study } from './study.ts';

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
  const [first = ''] = sets;
  const alone = findings.filter((f) => f.under === null && isOfSet(f, first, sets));
  const counts = countsOf(alone);
  const agreed = findings.filter((f) => f.agreed !== null && f.outcome !== 'met').length;
  const bySet = sets.map((codeSet) => ({
    codeSet,
    ...countsOf(findings.filter((f) => f.under === null && isOfSet(f, codeSet, sets))),
  }));
  return {
    ...counts,
    agreed,
    ...(sets.length > 1 ? { bySet } : {}),
    text: [...sentences(counts, bonding, speech), ...thinSets(sets, speech)],
    actions: actionsOf(alone, speech),
  };
}

/** What a set asks: its own findings and those of all sets. The first takes what is no other's. */
function isOfSet({ codeSet }: Finding, set: string, sets: readonly string[]): boolean {
  if (codeSet === set) return true;
  if (set === 'own') return false;
  return codeSet === 'any' || (set === sets[0] && !sets.includes(codeSet));
}

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

type Counts = Pick<Study['verdict'], 'hazards' | 'defects' | 'advices' | 'cannotTell'>;

function sentences(counts: Counts, bonding: Bonding, speech: Speech): readonly string[] {
  const sentence = (key: StudyWord, values: Values = {}) => say(studyWords[key], values, speech);
  const { hazards, defects, advices, cannotTell } = counts;
  const nothing = hazards + defects + advices === 0;
  const first = nothing
    ? sentence('verdict clean')
    : sentence('verdict hazards', {
        hazards: counted(hazards, 'finding', 'findings'),
        defects: String(defects),
        advices: String(advices),
      });
  const third =
    cannotTell === 0
      ? sentence('verdict all told')
      : sentence('verdict cannot tell', { cannotTell: counted(cannotTell, 'condition', 'conditions') });
  return [first, bondingSentence(bonding, sentence), third];
}

/** Codes of which too little is known for silence to mean anything. */
function thinSets(sets: readonly string[], speech: Speech): readonly string[] {
  return (['ca', 'au'] as const).filter((s) => sets.includes(s)).map((s) => say(studyWords[`thin ${s}`], {}, speech));
}

function bondingSentence(bonding: Bonding, sentence: (key: StudyWord, values?: Values) => string): string {
  if (bonding.service.is === 'none') return sentence('verdict field');
  if (bonding.groups.every((g) => g.electrodes.length === 0)) return sentence('verdict no electrode');
  const apart = bonding.unbondedElectrodes;
  if (apart === null) return sentence('verdict no service');
  if (apart.length === 1) return sentence('verdict unbonded one', { list: apart });
  if (apart.length > 1) return sentence('verdict unbonded', { count: String(apart.length), list: apart });
  return sentence('verdict bonded');
}

const counted = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/**
 * What to do first: by severity; within one, what is wrong before what is to be found out, except where the order of the
 * findings puts a doubt first because everything else hangs on it.
 */
function actionsOf(alone: readonly Finding[], speech: Speech): Study['verdict']['actions'] {
  const open = alone.filter((f) => f.outcome !== 'met' && f.agreed === null);
  const firstWrong = open.findIndex((f) => f.outcome === 'not met');
  const order = ['hazard', 'defect', 'advice'];
  const ranked = open
    .map((f, i) => ({ f, i, late: f.outcome === 'cannot tell' && i > firstWrong ? 1 : 0 }))
    .sort((a, b) => order.indexOf(a.f.severity) - order.indexOf(b.f.severity) || a.late - b.late || a.i - b.i);
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
