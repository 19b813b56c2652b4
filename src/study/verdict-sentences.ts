import type { Bonding } from '../bonding/bonding.ts';
import { setName } from '../words/code-set-words.ts';
import { type Speech, say, type Values } from '../words/say.ts';
import { type StudyWord, studyWords } from '../words/study.ts';
import type { StudySetCounts } from './study.ts';

/** Counts of one set, and what was agreed to stand in it. */
export interface SetCounts extends StudySetCounts {
  readonly agreed: AgreedCounts;
}

/** How many that failed, and of how many it could not be told. */
export interface AgreedCounts {
  readonly notMet: number;
  readonly cannotTell: number;
}

type Sentence = (key: StudyWord, values?: Values) => string;

/**
 * What failed, how the electrodes hang together, what could not be told, and a sentence for each code of which little is known.
 * With several sets each count says whose it is; that nothing failed or was left is said where it is so of all of them.
 * `agreed`: of all sets, each finding once.
 */
export function verdictSentences(
  sets: readonly SetCounts[],
  agreed: AgreedCounts,
  bonding: Bonding,
  speech: Speech,
): readonly string[] {
  const sentence: Sentence = (key, values = {}) => say(studyWords[key], values, speech);
  const thin = (['ca', 'au'] as const).filter((code) => sets.some((s) => s.codeSet === code));
  return [
    failedSentence(sets, agreed.notMet, sentence),
    bondingSentence(bonding, sentence),
    doubtSentence(sets, agreed.cannotTell, sentence),
    ...thin.map((code) => sentence(`thin ${code}`)),
  ];
}

function failedSentence(sets: readonly SetCounts[], agreed: number, sentence: Sentence): string {
  if (sets.every(isClean))
    return agreed === 0 ? sentence('verdict clean') : sentence('verdict clean agreed', { agreed: String(agreed) });
  const inFull = sets.find((s) => !isClean(s));
  const each = sets.map((s) => [s.codeSet, failedText(s, s === inFull, sentence)] as const);
  return sentence('verdict failed', { list: listOf(each, sets, sentence) });
}

/** In full what each severity means: once, behind the first set that has any. */
function failedText(set: SetCounts, inFull: boolean, sentence: Sentence): string {
  const { hazards, defects, advices, agreed } = set;
  if (!isClean(set)) {
    const values = { hazards: counted(hazards, 'finding', 'findings'), defects: String(defects) };
    return sentence(inFull ? 'verdict hazards' : 'set hazards', { ...values, advices: String(advices) });
  }
  return agreed.notMet === 0 ? sentence('set clean') : sentence('set clean agreed', { agreed: String(agreed.notMet) });
}

function isClean({ hazards, defects, advices }: SetCounts): boolean {
  return hazards + defects + advices === 0;
}

function bondingSentence(bonding: Bonding, sentence: Sentence): string {
  if (bonding.service.is === 'none') return sentence('verdict field');
  if (bonding.groups.every((g) => g.electrodes.length === 0)) return sentence('verdict no electrode');
  const apart = bonding.unbondedElectrodes;
  if (apart === null) return sentence('verdict no service');
  if (apart.length === 1) return sentence('verdict unbonded one', { list: apart });
  if (apart.length > 1) return sentence('verdict unbonded', { count: String(apart.length), list: apart });
  return sentence('verdict bonded');
}

function doubtSentence(sets: readonly SetCounts[], agreed: number, sentence: Sentence): string {
  const open = sets.filter((s) => s.cannotTell > 0);
  if (open.length === 0)
    return agreed === 0
      ? sentence('verdict all told')
      : sentence('verdict all told agreed', { agreed: String(agreed) });
  const each = open.map(({ codeSet, cannotTell }, i) => {
    const cannot = counted(cannotTell, 'condition', 'conditions');
    return [codeSet, i === 0 ? sentence('verdict cannot tell', { cannotTell: cannot }) : String(cannotTell)] as const;
  });
  return sentence('verdict look', { list: listOf(each, sets, sentence) });
}

/** Each behind the name of its set where there are several. */
function listOf(
  each: readonly (readonly [codeSet: string, text: string])[],
  sets: readonly SetCounts[],
  sentence: Sentence,
): string {
  if (sets.length === 1) return each.map(([, text]) => text).join('');
  const named = each.map(([codeSet, text], i) => {
    const name = codeSet !== 'own' ? setName(codeSet) : sentence(i === 0 ? 'By own standard' : 'by own standard');
    return `${name}: ${text}`;
  });
  return named.join('; ');
}

function counted(n: number, one: string, many: string): string {
  return `${n} ${n === 1 ? one : many}`;
}
