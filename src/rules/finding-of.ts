import type { Agreement, SiteHeader } from '../site/site.ts';
import { type Speech, say } from '../words/say.ts';
import { toolFor } from '../words/tool-words.ts';
import type { Asked } from './asked.ts';
import { basisOf, sourceIn } from './basis-of.ts';
import type { Rule, Verdict } from './rule.ts';
import { ruleSentence, wordsOf } from './rule-sentence.ts';
import type { Finding } from './run-rules.ts';
import { sayMeasured } from './say-measured.ts';

/** What all findings of one rule in one code set share. */
export interface Heading {
  readonly agreed: readonly Agreement[];
  readonly speech: Speech;
  /** What keeps the ids of a second code set apart from those of the first. */
  readonly prefix: string;
  readonly source: Finding['source'];
  readonly basis: string;
}

export function headingOf(asked: Asked, header: SiteHeader, speech: Speech, prefix: string): Heading {
  const { agreed } = header;
  return { agreed, speech, prefix, source: sourceIn(asked.rule, header), basis: basisOf(asked, header, speech) };
}

/** A verdict as a finding, in words. */
export function findingOf(
  asked: Asked,
  v: Verdict,
  { agreed, speech, prefix, source, basis }: Heading,
): readonly Finding[] {
  if (v.is === 'not applicable' || v.is === 'not looked at') return [];
  const { rule: r } = asked;
  const words = wordsOf(r);
  const isMet = v.is === 'met';
  const said = {
    title: () => say(v.is === 'not met' ? words.failTitle : words.title, { at: v.at, ...v.because.values }, speech),
    because: () => ({
      key: v.because.key,
      values: v.because.values ?? {},
      text: ruleSentence(r, v.because, speech, v.at),
    }),
    measured: () => (v.measured === undefined ? null : sayMeasured(v.measured, speech)),
    remedy: () => remedyOf(r, v, speech),
  };
  const rest = {
    id: `${prefix}${v.at.length === 0 ? r.id : `${r.id}:${v.at.join('+')}`}`,
    rule: r.id,
    family: asked.family,
    codeSet: asked.codeSet,
    severity: v.is === 'not met' ? (v.severity ?? r.severity) : r.severity,
    outcome: v.is,
    at: v.at,
    under: isMet || v.under === undefined ? null : `${prefix}${v.under}`,
    source,
    basis,
    tool: v.is === 'cannot tell' ? toolFor(words, v.settle.key) : null,
    change: v.is === 'not met' ? (v.change ?? null) : null,
    untied: v.is === 'not met' ? (v.untied ?? []) : [],
    agreed: agreementOf(r.id, v.at, agreed),
  };
  return [isMet ? saidWhenRead(rest, said) : { ...rest, ...saidNow(said) }];
}

type Said = Pick<Finding, 'title' | 'because' | 'measured' | 'remedy'>;
type Sayings = { readonly [Name in keyof Said]: () => Said[Name] };

function saidNow({ title, because, measured, remedy }: Sayings): Said {
  return { title: title(), because: because(), measured: measured(), remedy: remedy() };
}

/** Of the many places that meet a condition a check says nothing; their sentences are made when somebody reads them. */
function saidWhenRead(rest: Omit<Finding, keyof Said>, said: Sayings): Finding {
  return {
    ...rest,
    get title() {
      return said.title();
    },
    get because() {
      return said.because();
    },
    get measured() {
      return said.measured();
    },
    get remedy() {
      return said.remedy();
    },
  };
}

/** What puts it right, or what would settle it. */
function remedyOf(r: Rule, v: Verdict, speech: Speech): string {
  if (v.is === 'cannot tell') return ruleSentence(r, v.settle, speech, v.at);
  return v.is === 'not met' ? say(wordsOf(r).remedy, { at: v.at, ...v.because.values }, speech) : '';
}

/** The agreement that lets a finding of a rule stand at these places. */
export function agreementOf(rule: string, at: readonly string[], agreed: readonly Agreement[]): Finding['agreed'] {
  const found = agreed.find((a) => a.rule === rule && (a.at === null || at.includes(a.at)));
  return found === undefined ? null : { reason: found.reason, by: found.by, date: found.date };
}
