import type { Agreement } from '../site/site.ts';
import { agreementWords as words } from '../words/agreement-words.ts';
import { say } from '../words/say.ts';
import type { StudyAgreement } from './study.ts';

/** Everything that was agreed to stand: what lacks a reason, a name or a date, and what nothing answers to any more. */
export function agreementsOf(agreed: readonly Agreement[], stale: readonly Agreement[]): readonly StudyAgreement[] {
  return agreed.map((a) => ({ ...a, stale: stale.includes(a), text: textOf(a, stale.includes(a)) }));
}

function textOf({ rule, at, reason, by, date }: Agreement, isStale: boolean): string {
  const subject = at === null ? rule : say(words.at, { rule, at }, plainSpeech);
  if (isStale) return say(words.stale, { subject }, plainSpeech);
  const lacks = [
    [reason, words.reason],
    [by, words.by],
    [date, words.date],
  ].flatMap(([given, name]) => (given === null || given === '' ? [name!] : []));
  return lacks.length === 0 ? '' : say(words.lacks, { subject, lacks: lacks.join(words.and) }, plainSpeech);
}

/** No figure and no term of a region stands in these sentences. */
const plainSpeech = { terms: 'us', unitsFirst: 'si' } as const;
