import type { Facts } from '../facts/facts.ts';
import type { Agreement, Region } from '../site/site.ts';
import { lazily } from '../units/lazily.ts';
import type { RuleWords } from '../words/rule-words.ts';
import { ruleWords } from '../words/rules/index.ts';
import { type Speech, say } from '../words/say.ts';
import { familyIn } from './family-in.ts';
import { foldFindings } from './fold-findings.ts';
import { gatherDoubts } from './gather-doubts.ts';
import { rules } from './index.ts';
import type { Because, CodeSet, Measured, Rule, Severity, Verdict } from './rule.ts';
import { sayMeasured } from './say-measured.ts';

export interface Finding {
  readonly id: string;
  readonly rule: string;
  readonly family: Rule['family'];
  readonly codeSet: CodeSet;
  readonly severity: Severity;
  readonly outcome: 'met' | 'not met' | 'cannot tell';
  readonly at: readonly string[];
  readonly under: string | null;
  readonly title: string;
  readonly because: { readonly key: string; readonly values: Readonly<Record<string, unknown>>; readonly text: string };
  readonly measured: {
    readonly value: Measured['value'];
    readonly unit: string;
    readonly limit: number;
    readonly text: string;
  } | null;
  readonly source: Rule['source'];
  readonly remedy: string;
  readonly agreed: { readonly reason: string | null; readonly by: string | null; readonly date: string | null } | null;
}

export interface Condition {
  readonly rule: string;
  readonly family: Rule['family'];
  readonly codeSet: CodeSet;
  readonly severity: Severity;
  readonly title: string;
  readonly source: Rule['source'];
  readonly outcome: Finding['outcome'] | 'not applicable' | 'not looked at';
  readonly met: number;
  readonly notMet: number;
  readonly cannotTell: number;
  readonly because: string;
}

export interface RulesRun {
  readonly findings: readonly Finding[];
  readonly conditions: readonly Condition[];
  /** Rules that failed by our own fault: their outcome is 'cannot tell'. */
  readonly faults: readonly { readonly rule: string; readonly error: unknown }[];
}

const severityOrder: readonly Severity[] = ['hazard', 'defect', 'advice'];
const outcomeOrder = ['not met', 'cannot tell', 'met'] as const;

/**
 * Runs every rule of the pack that the site's region asks, handing each only the facts that it needs. A rule that throws
 * becomes 'cannot tell' for that rule and is reported as our fault; the run goes on. Findings are in a total order:
 * outcome (not met, cannot tell, met), severity, order of the pack, place.
 */
export function runRules(facts: Facts, speech: Speech): RulesRun {
  const faults: { rule: string; error: unknown }[] = [];
  const looked = rules
    .filter((r) => asks(r, facts.header.region))
    .map((r) => ({ rule: r, verdicts: verdictsOf(r, facts, faults) }));
  const findings = looked.flatMap(({ rule, verdicts }) => verdicts.flatMap((v) => findingOf(rule, v, facts, speech)));
  const asleep = rules.filter((r) => !asks(r, facts.header.region)).map((r) => otherRegion(r, speech));
  const awake = looked.map(({ rule, verdicts }) => conditionOf(rule, verdicts, facts, speech));
  const order = new Map<string, number>(rules.map((r, i) => [r.id, i]));
  const first = new Set<string>(rules.filter((r) => r.first).map((r) => r.id));
  return {
    findings: foldFindings([...findings].sort((a, b) => compareFindings(a, b, order, first))),
    conditions: [...awake, ...asleep].sort((a, b) => order.get(a.rule)! - order.get(b.rule)!),
    faults,
  };
}

/** 'any' is asked everywhere; a region that nobody gave is asked the US set, as the commonest; the UK is asked the IEC set too. */
function asks(r: Rule, region: Region): boolean {
  const sets: readonly CodeSet[] =
    region === 'uk' ? ['any', 'uk', 'iec'] : region === 'unknown' ? ['any', 'us'] : ['any', region];
  return r.codeSets.some((set) => sets.includes(set));
}

function verdictsOf(r: Rule, facts: Facts, faults: { rule: string; error: unknown }[]): readonly Verdict[] {
  try {
    return gatherDoubts(r.check(handed(r, facts) as never));
  } catch (error) {
    faults.push({ rule: r.id, error });
    const because = { key: 'rule failed' };
    return [{ is: 'cannot tell', at: [], because, settle: because }];
  }
}

/** What the rule names, each worked out when the rule reads it: one that stops early costs nothing. */
function handed(r: Rule, facts: Facts) {
  return lazily(Object.fromEntries(r.needs.map((name) => [name, () => facts[name]])));
}

function wordsOf(r: Rule): RuleWords {
  const words = ruleWords[r.id];
  if (words === undefined) throw new Error(`rule ${r.id} has no words`);
  return words;
}

/** `{at}` of a sentence is the list of places. */
function sentence(r: Rule, because: Because, speech: Speech, at: readonly string[] = []): string {
  if (because.key === 'rule failed')
    return 'This condition could not be worked out because of an error of the program.';
  const template = wordsOf(r).because[because.key];
  if (template === undefined) throw new Error(`rule ${r.id} has no sentence '${because.key}'`);
  return say(template, { at, ...because.values }, speech);
}

function findingOf(r: Rule, v: Verdict, facts: Facts, speech: Speech): readonly Finding[] {
  if (v.is === 'not applicable' || v.is === 'not looked at') return [];
  const words = wordsOf(r);
  const values = { at: v.at, ...v.because.values };
  return [
    {
      id: v.at.length === 0 ? r.id : `${r.id}:${v.at.join('+')}`,
      rule: r.id,
      family: familyIn(r, facts.header.region),
      codeSet: codeSetOf(r, facts.header.region),
      severity: v.is === 'not met' ? (v.severity ?? r.severity) : r.severity,
      outcome: v.is,
      at: v.at,
      under: v.is === 'met' ? null : (v.under ?? null),
      title: say(v.is === 'not met' ? words.failTitle : words.title, values, speech),
      because: { key: v.because.key, values: v.because.values ?? {}, text: sentence(r, v.because, speech, v.at) },
      measured: v.measured === undefined ? null : sayMeasured(v.measured, speech),
      source: r.source,
      remedy: remedyOf(r, v, speech),
      agreed: agreementOf(r, v.at, facts.header.agreed),
    },
  ];
}

/** What puts it right, or what would settle it. */
function remedyOf(r: Rule, v: Verdict, speech: Speech): string {
  if (v.is === 'cannot tell') return sentence(r, v.settle, speech, v.at);
  return v.is === 'not met' ? say(wordsOf(r).remedy, { at: v.at, ...v.because.values }, speech) : '';
}

function agreementOf(r: Rule, at: readonly string[], agreed: readonly Agreement[]): Finding['agreed'] {
  const found = agreed.find((a) => a.rule === r.id && (a.at === null || at.includes(a.at)));
  return found === undefined ? null : { reason: found.reason, by: found.by, date: found.date };
}

function codeSetOf(r: Rule, region: Region): CodeSet {
  return r.codeSets.find((set) => set === region) ?? r.codeSets[0]!;
}

function conditionOf(r: Rule, verdicts: readonly Verdict[], facts: Facts, speech: Speech): Condition {
  const count = (is: Verdict['is']) => verdicts.filter((v) => v.is === is).length;
  const outcome =
    outcomeOrder.find((o) => count(o) > 0) ?? (count('not looked at') > 0 ? 'not looked at' : 'not applicable');
  const silent = verdicts.find((v) => v.is === outcome && (v.is === 'not applicable' || v.is === 'not looked at'));
  return {
    ...head(r, speech),
    family: familyIn(r, facts.header.region),
    codeSet: codeSetOf(r, facts.header.region),
    outcome,
    met: count('met'),
    notMet: count('not met'),
    cannotTell: count('cannot tell'),
    because: silent === undefined ? '' : sentence(r, silent.because, speech),
  };
}

function otherRegion(r: Rule, speech: Speech): Condition {
  const because = `Asked in ${r.codeSets.map((set) => set.toUpperCase()).join(', ')} only.`;
  return {
    ...head(r, speech),
    codeSet: r.codeSets[0]!,
    outcome: 'not applicable',
    met: 0,
    notMet: 0,
    cannotTell: 0,
    because,
  };
}

function head(r: Rule, speech: Speech) {
  const title = say(wordsOf(r).title, {}, speech);
  return { rule: r.id, family: r.family, severity: r.severity, title, source: r.source };
}

function compareFindings(
  a: Finding,
  b: Finding,
  order: ReadonlyMap<string, number>,
  first: ReadonlySet<string>,
): number {
  const leads = (f: Finding) => f.outcome !== 'met' && f.agreed === null && first.has(f.rule);
  return (
    Number(leads(b)) - Number(leads(a)) ||
    outcomeOrder.indexOf(a.outcome) - outcomeOrder.indexOf(b.outcome) ||
    Number(a.agreed !== null) - Number(b.agreed !== null) ||
    severityOrder.indexOf(a.severity) - severityOrder.indexOf(b.severity) ||
    order.get(a.rule)! - order.get(b.rule)! ||
    (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)
  );
}
