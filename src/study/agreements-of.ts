import type { Finding } from '../rules/run-rules.ts';
import type { Agreement } from '../site/site.ts';
import { nearName } from '../units/near-name.ts';
import { agreedAs, agreementWords as words } from '../words/agreement-words.ts';
import { say } from '../words/say.ts';
import type { StudyAgreement } from './study.ts';

/** Everything that was agreed to stand: what lacks a reason, a name or a date, and what nothing answers to any more. */
export function agreementsOf(
  agreed: readonly Agreement[],
  stale: readonly Agreement[],
  findings: readonly Finding[],
  parts: readonly string[],
): readonly StudyAgreement[] {
  return agreed.map((a) => {
    const isStale = stale.includes(a);
    return { ...a, stale: isStale, text: isStale ? staleText(a, findings, parts) : lacksText(a) };
  });
}

/** With the name that was perhaps meant: of a part, where there is none of that name; else of what stands at the same place. */
function staleText(agreement: Agreement, findings: readonly Finding[], parts: readonly string[]): string {
  const { rule, at } = agreement;
  const stale = say(words.stale, { subject: subjectOf(agreement) }, plainSpeech);
  if (at !== null && !parts.includes(at) && !findings.some((f) => f.at.includes(at))) {
    const near = nearPlace(rule, at, findings, parts);
    return near === null ? stale : say(words.nearPart, { stale, at, near }, plainSpeech);
  }
  const open = findings.filter((f) => f.outcome !== 'met' && (at === null || f.at.includes(at)));
  const names = [...new Set(open.map(agreedAs))];
  const own = agreedAs({ rule, codeSet: 'own' });
  if (names.includes(own)) return say(words.ofOwner, { stale, near: own }, plainSpeech);
  const near = nearName(rule, names);
  return near === null ? stale : say(words.near, { stale, near }, plainSpeech);
}

/** Where the rule finds something first: nobody agrees to what is not found. */
function nearPlace(rule: string, at: string, findings: readonly Finding[], parts: readonly string[]): string | null {
  const found = findings.filter((f) => f.outcome !== 'met' && agreedAs(f) === rule);
  return nearName(at, [...new Set(found.flatMap((f) => f.at))]) ?? nearName(at, parts);
}

function lacksText(agreement: Agreement): string {
  const { reason, by, date } = agreement;
  const lacks = [
    [reason, words.reason],
    [by, words.by],
    [date, words.date],
  ].flatMap(([given, name]) => (given === null || given === '' ? [name!] : []));
  if (lacks.length === 0) return '';
  return say(words.lacks, { subject: subjectOf(agreement), lacks: lacks.join(words.and) }, plainSpeech);
}

function subjectOf({ rule, at }: Agreement): string {
  return at === null ? rule : say(words.at, { rule, at }, plainSpeech);
}

/** No figure and no term of a region stands in these sentences. */
const plainSpeech = { terms: 'us', unitsFirst: 'si' } as const;
