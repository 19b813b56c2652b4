import type { Facts } from '../facts/facts.ts';
import type { SiteChange } from '../site/change.ts';
import type { Agreement, SiteHeader } from '../site/site.ts';
import type { OwnerStandard } from '../site/standard/owner-standard.ts';
import { once } from '../units/once.ts';
import { agreedAs } from '../words/agreement-words.ts';
import type { Tool } from '../words/rule-words.ts';
import type { Speech } from '../words/say.ts';
import { askSets } from './ask-sets.ts';
import type { Asked, Faults } from './asked.ts';
import { siteSets } from './code-sets/site-sets.ts';
import { asleepCondition, conditionOf } from './condition-of.ts';
import { headingOf } from './finding-of.ts';
import { foldFindings } from './fold-findings.ts';
import { eachAlone, foundBy, type Headed } from './found-by.ts';
import { rules } from './index.ts';
import { orderFindings } from './order-findings.ts';
import { type OwnRun, ownLimits } from './own/own-limits.ts';
import { ownRules } from './own/own-rules.ts';
import type { CodeSet, Measured, Rule, Severity } from './rule.ts';
import { underCause } from './under-cause.ts';

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
  /** What stands behind it where that is not simply the code of the place: borrowed from abroad, an edition not known; ''. */
  readonly basis: string;
  readonly remedy: string;
  /** The remedy of a doubt with `{at}` for its places: two that differ in nothing else are one look. */
  readonly asks?: string;
  /** What to bring who goes to look; null where it can be told. */
  readonly tool: Tool | null;
  /** A change of the file that would put it right; null where only a person can say. */
  readonly change: readonly SiteChange[] | null;
  /** Parts that nothing ties, where that is why. */
  readonly untied: readonly string[];
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
  /** As in `Finding`. */
  readonly basis: string;
}

/** What stands in small files beside the site's. */
export interface Beside {
  readonly standard?: OwnerStandard | null;
  readonly agreed?: readonly Agreement[];
}

type OwnAsking = { readonly header: SiteHeader; readonly agreed: readonly Agreement[]; readonly speech: Speech };

export interface RulesRun {
  readonly findings: readonly Finding[];
  readonly conditions: readonly Condition[];
  /** Agreements that no finding answers to: what they were about is gone, or was never there. */
  readonly staleAgreements: readonly Agreement[];
  /** Rules that failed by our own fault: their outcome is 'cannot tell'. */
  readonly faults: readonly { readonly rule: string; readonly error: unknown }[];
}

/**
 * Runs every rule of the pack that a code set of the site asks, each by the facts under the header of that set. A rule that throws
 * becomes 'cannot tell' for that rule and is reported as our fault; the run goes on. Findings are in a total order
 * (order-findings.ts); those that one missing bond causes stand under one of them, each code set by itself. Rules that `isAsked`
 * turns down are left out.
 */
export function runRules(
  facts: Facts,
  speech: Speech,
  beside: Beside = {},
  isAsked: (rule: Rule) => boolean = () => true,
): RulesRun {
  const faults: Faults = [];
  const agreed = [...facts.header.agreed, ...(beside.agreed ?? [])];
  const header = { ...facts.header, agreed };
  const asked = askSets(facts, faults, isAsked);
  const [first] = siteSets(header);
  const prefixOf = ({ set, codeSet }: Asked) => (set === first || codeSet === 'any' ? '' : `${set}/`);
  const headed = asked.map((a) => ({ asked: a, heading: headingOf(a, header, speech, prefixOf(a)) }));
  const own = ownRun(facts, asked, { header, agreed, speech, standard: beside.standard ?? null });
  const found = foundBy(headed, own.findings);
  const open = orderFindings(eachAlone(withParents(found.open)), rules);
  const met = orderFindings(found.met, rules);
  const conditions = once(() => conditionsOf(headed, own, speech));
  return {
    findings: [...foldFindings(underCause(open, () => facts.bonding.groupOf)), ...met],
    get conditions() {
      return conditions();
    },
    staleAgreements: agreed.filter((a) => !open.some((f) => answersTo(f, a))),
    faults,
  };
}

/** What the owner's standard asks, beside the code and never mixed with it. */
function ownRun(
  facts: Facts,
  asked: readonly Asked[],
  { standard, ...how }: OwnAsking & { readonly standard: OwnerStandard | null },
): OwnRun {
  if (standard === null) return { findings: [], conditions: [] };
  const asRules = ownRules(asked, { standard, ...how });
  const asLimits = ownLimits(facts, { standard, ...how });
  return {
    findings: [...asRules.findings, ...asLimits.findings],
    conditions: [...asRules.conditions, ...asLimits.conditions],
  };
}

/** In the order of the pack; the owner's own limits last. */
function conditionsOf(headed: readonly Headed[], own: OwnRun, speech: Speech): readonly Condition[] {
  const awake = new Set(headed.map((h) => h.asked.rule.id));
  const asleep = rules.filter((r) => !awake.has(r.id)).map((r) => asleepCondition(r, speech));
  const order = new Map<string, number>(rules.map((r, i) => [r.id, i]));
  const place = (c: Condition) => order.get(c.rule) ?? rules.length;
  const all = [...headed.map((h) => conditionOf(h.asked, h.heading)), ...asleep, ...own.conditions];
  return all.sort((a, b) => place(a) - place(b));
}

/** A parent that all sets share has no prefix. `found`: those that are not met. */
function withParents(found: readonly Finding[]): readonly Finding[] {
  const ids = once(() => new Set(found.map((f) => f.id)));
  return found.map((f) => {
    if (f.under === null || ids().has(f.under)) return f;
    const bare = f.under.replace(/^[a-z]+\//, '');
    return ids().has(bare) ? { ...f, under: bare } : f;
  });
}

function answersTo(f: Finding, { rule, at }: Agreement): boolean {
  return agreedAs(f) === rule && (at === null || f.at.includes(at));
}
