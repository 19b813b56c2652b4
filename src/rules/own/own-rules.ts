import type { Agreement, SiteHeader } from '../../site/site.ts';
import type { OwnerStandard, OwnRule } from '../../site/standard/owner-standard.ts';
import { ownStandardWords as words } from '../../words/own-standard-words.ts';
import { type Speech, say } from '../../words/say.ts';
import type { Asked } from '../asked.ts';
import { conditionOf } from '../condition-of.ts';
import { findingOf, headingOf } from '../finding-of.ts';
import { MetFinding } from '../met-finding.ts';
import type { Measured, Verdict } from '../rule.ts';
import { ownKey } from '../rule-sentence.ts';
import type { Finding } from '../run-rules.ts';
import { type OwnRun, ownBasis, ownSource } from './own-limits.ts';
import { figureOutcome } from './own-outcome.ts';
import { sayFigure } from './own-sentence.ts';

interface Asking {
  readonly standard: OwnerStandard;
  readonly agreed: readonly Agreement[];
  readonly header: SiteHeader;
  readonly speech: Speech;
}

/**
 * Rules of the pack as the owner asks them: at the owner's limit where one is given, with the owner's severity, as findings
 * of the owner's set. What the code says of the same place stands untouched beside them.
 */
export function ownRules(asked: readonly Asked[], asking: Asking): OwnRun {
  const runs = asking.standard.rules.flatMap((own) => {
    const found = asked.find((a) => a.rule.id === own.rule);
    return found === undefined ? [] : [ofRule(own, found, asking)];
  });
  return { findings: runs.flatMap((r) => r.findings), conditions: runs.flatMap((r) => r.conditions) };
}

function ofRule(own: OwnRule, asked: Asked, { standard, header, agreed, speech }: Asking): OwnRun {
  const verdicts = asked.verdicts.map((v) => judged(v, own));
  const severity = own.severity ?? asked.rule.severity;
  const again: Asked = { ...asked, codeSet: 'own', family: 'practice', verdicts };
  const heading = headingOf(again, { ...header, agreed }, speech, 'own/');
  const owned = { source: ownSource(standard, own.rule), basis: ownBasis(standard, own.because, speech) };
  const titled = own.limit === null ? {} : { title: limitTitle(own, standard, speech) };
  const alone = { under: null, untied: [], change: null };
  const findings = verdicts.flatMap((v): readonly Finding[] => {
    const f = findingOf(again, v, heading);
    if (f === null) return [];
    const said = isOver(v, own.limit)
      ? overWords(v.at, own, standard, speech)
      : { title: titleOf(f, own, standard, speech) };
    // a place may be worse than the rule's usual: the owner who says nothing of it takes it as it is
    return [{ ...allOf(f), ...owned, ...alone, ...said, severity: own.severity ?? f.severity }];
  });
  return { findings, conditions: [{ ...conditionOf(again, heading), ...owned, severity, ...titled }] };
}

function allOf(f: Finding): Finding {
  return f instanceof MetFinding ? f.toJSON() : f;
}

/** What is met, or cannot be told, is so at the owner's figure: a title with that of the code would be wrong. */
function titleOf({ outcome, title }: Finding, own: OwnRule, standard: OwnerStandard, speech: Speech): string {
  if (outcome === 'not met') return say(words.ruleFailTitle, { title, standard: standard.name }, speech);
  return own.limit === null ? title : limitTitle(own, standard, speech);
}

function limitTitle({ rule, limit }: OwnRule, { name }: OwnerStandard, speech: Speech): string {
  return say(words.limitTitle, { rule, standard: name, limit: sayAsked(limit!, speech) }, speech);
}

function sayAsked(limit: NonNullable<OwnRule['limit']>, speech: Speech): string {
  const figure = sayFigure(limit, limit.value, speech);
  return say(limit.sense === 'least' ? words.atLeast : words.atMost, { figure }, speech);
}

type NotMet = Extract<Verdict, { is: 'not met' }>;

/** Found against the owner's figure: words that name the one of the code would be wrong. */
function isOver(v: Verdict, limit: OwnRule['limit']): v is NotMet {
  return limit !== null && v.is === 'not met' && v.measured?.key === limit.key;
}

function overWords(at: NotMet['at'], { rule, limit }: OwnRule, { name }: OwnerStandard, speech: Speech) {
  const values = { at, rule, standard: name, limit: sayAsked(limit!, speech) };
  return { title: say(words.limitFailTitle, values, speech), remedy: say(words.limitRemedy, values, speech) };
}

/** The verdict at the owner's limit; one that rests on no figure of the same kind stays as it is. */
function judged(v: Verdict, { limit }: OwnRule): Verdict {
  if (limit === null || v.is === 'not applicable' || v.is === 'not looked at') return v;
  if (v.measured === undefined || v.measured.key !== limit.key) return v;
  const measured: Measured = { ...v.measured, limit: limit.value, sense: limit.sense };
  const value = typeof measured.value === 'number' ? { low: measured.value, high: measured.value } : measured.value;
  const { at } = v;
  const outcome = figureOutcome(value, limit);
  if (outcome === v.is) return { ...v, measured };
  if (outcome === 'not met' && v.is === 'met' && v.below !== undefined) return { is: 'cannot tell', at, ...v.below };
  const own = { key: ownKey };
  if (outcome === 'cannot tell') return { is: outcome, at, because: own, settle: own, measured };
  return { is: outcome, at, because: own, measured };
}
