import type { Agreement, SiteHeader } from '../site/site.ts';
import { agreedAs } from '../words/agreement-words.ts';
import { type Speech, say } from '../words/say.ts';
import { toolFor } from '../words/tool-words.ts';
import type { Asked } from './asked.ts';
import { basisOf, sourceIn } from './basis-of.ts';
import { MetFinding } from './met-finding.ts';
import { placeOf, type Rule, type Verdict } from './rule.ts';
import { remedyIn, ruleSentence, wordsOf } from './rule-sentence.ts';
import type { Finding } from './run-rules.ts';
import { sayMeasured } from './say-measured.ts';

/** What all findings of one rule in one code set share. */
export interface Heading {
  /** Its id before the places. */
  readonly name: string;
  /** Those that let findings of this rule stand. */
  readonly agreed: readonly Agreement[];
  readonly speech: Speech;
  /** What keeps the ids of a second code set apart from those of the first. */
  readonly prefix: string;
  readonly source: Finding['source'];
  readonly basis: string;
}

export function headingOf(asked: Asked, header: SiteHeader, speech: Speech, prefix: string): Heading {
  const { rule, codeSet } = asked;
  return {
    name: `${prefix}${rule.id}`,
    agreed: agreedUnder(agreedAs({ rule: rule.id, codeSet }), header.agreed),
    speech,
    prefix,
    source: sourceIn(asked, header),
    basis: basisOf(asked, header, speech),
  };
}

/** A verdict as a finding, in words; null for one that says nothing of a place. */
export function findingOf(asked: Asked, v: Verdict, heading: Heading): Finding | null {
  if (v.is === 'not applicable' || v.is === 'not looked at') return null;
  const { name } = heading;
  const id = v.at.length === 0 ? name : `${name}:${placeOf(v)}`;
  const agreed = agreementAt(v.at, heading.agreed);
  if (v.is === 'met') return new MetFinding(asked, v, heading, id, agreed);
  return v.is === 'not met' ? notMet(asked, v, heading, { id, agreed }) : doubt(asked, v, heading, { id, agreed });
}

type Known = Pick<Finding, 'id' | 'agreed'>;

function notMet(
  { rule: r, set, family, codeSet }: Asked,
  v: Extract<Verdict, { is: 'not met' }>,
  { prefix, source, basis, speech }: Heading,
  { id, agreed }: Known,
): Finding {
  const words = wordsOf(r);
  const values = { at: v.at, ...v.because.values };
  return {
    id,
    agreed,
    rule: r.id,
    family: v.family ?? family,
    codeSet,
    severity: v.severity ?? r.severity,
    outcome: v.is,
    at: v.at,
    under: v.under === undefined ? null : `${prefix}${v.under}`,
    source,
    basis,
    tool: null,
    change: v.change ?? null,
    untied: v.untied ?? [],
    title: say(words.failTitle, values, speech),
    because: becauseOf(r, v, speech),
    measured: v.measured === undefined ? null : sayMeasured(v.measured, speech),
    remedy: say(remedyIn(r, set), values, speech),
  };
}

function doubt(
  { rule: r, family, codeSet }: Asked,
  v: Extract<Verdict, { is: 'cannot tell' }>,
  { prefix, source, basis, speech }: Heading,
  { id, agreed }: Known,
): Finding {
  const words = wordsOf(r);
  return {
    id,
    agreed,
    rule: r.id,
    family,
    codeSet,
    severity: r.severity,
    outcome: v.is,
    at: v.at,
    under: v.under === undefined ? null : `${prefix}${v.under}`,
    source,
    basis,
    tool: toolFor(words, v.settle.key),
    change: null,
    untied: [],
    title: say(words.title, { at: v.at, ...v.because.values }, speech),
    because: becauseOf(r, v, speech),
    measured: v.measured === undefined ? null : sayMeasured(v.measured, speech),
    remedy: ruleSentence(r, v.settle, speech, v.at),
    // read by the list of looks alone
    get asks() {
      return ruleSentence(r, v.settle, speech, ['{at}']);
    },
  };
}

function becauseOf(r: Rule, { because, at }: Extract<Verdict, { at: unknown }>, speech: Speech): Finding['because'] {
  return { key: because.key, values: because.values ?? {}, text: ruleSentence(r, because, speech, at) };
}

/** The agreements to findings of one name. */
export function agreedUnder(name: string, agreed: readonly Agreement[]): readonly Agreement[] {
  return agreed.filter((a) => a.rule === name);
}

/** The agreement, of those to findings of its name, that lets a finding at these places stand. */
export function agreementAt(at: readonly string[], agreed: readonly Agreement[]): Finding['agreed'] {
  const found = agreed.find((a) => a.at === null || at.includes(a.at));
  return found === undefined ? null : { reason: found.reason, by: found.by, date: found.date };
}
