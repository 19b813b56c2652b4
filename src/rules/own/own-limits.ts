import type { Agreement } from '../../site/site.ts';
import type { OwnerStandard, OwnFigure, OwnLimit } from '../../site/standard/owner-standard.ts';
import { ownStandardWords as words } from '../../words/own-standard-words.ts';
import { type Speech, say } from '../../words/say.ts';
import { agreementOf } from '../finding-of.ts';
import type { Condition, Finding } from '../run-rules.ts';
import { sayMeasured } from '../say-measured.ts';
import { conditionOutcome, worst } from './own-outcome.ts';
import { type OwnFacts, type OwnPlace, ownPlaces } from './own-places.ts';
import { sayFound, sayLimit } from './own-sentence.ts';

export interface OwnRun {
  readonly findings: readonly Finding[];
  readonly conditions: readonly Condition[];
}

interface Asking {
  readonly standard: OwnerStandard;
  readonly agreed: readonly Agreement[];
  readonly speech: Speech;
}

/** Every limit of the owner's own at every part that it is about. */
export function ownLimits(facts: OwnFacts, asking: Asking): OwnRun {
  const runs = asking.standard.limits.map((limit) => {
    const findings = ownPlaces(limit.of, facts).map((place) => findingOf(limit, place, asking));
    return { findings, condition: conditionOf(limit, findings, asking) };
  });
  return { findings: runs.flatMap((r) => r.findings), conditions: runs.map((r) => r.condition) };
}

/** Name and place of a standard, as the source of what it asks: its text lies beside the site file. */
export function ownSource({ name, edition }: OwnerStandard, clause: string | null): Finding['source'] {
  return { document: name, edition, clause, provenance: 'read' };
}

export function ownBasis(standard: OwnerStandard, because: string | null, speech: Speech): string {
  const why = because === null ? '' : say(words.because, { text: because }, speech);
  return say(words.basis, { standard: standard.name, because: why }, speech);
}

function findingOf(limit: OwnLimit, place: OwnPlace, { standard, agreed, speech }: Asking): Finding {
  const outcomes = limit.conditions.map((c) => conditionOutcome(place, c));
  const outcome = worst(outcomes);
  const telling = limit.conditions.filter((_, i) => outcomes[i] === outcome);
  const at = [place.at];
  const limits = telling.map((c) => sayLimit(c, speech)).join(', ');
  const figures = telling.map((c) => sayFound(place, c, speech)).join(', ');
  const values = { at, limit: limit.id, standard: standard.name, field: telling[0]!.field, limits, figures };
  const key = outcome === 'not met' ? 'notMet' : outcome === 'met' ? 'met' : 'cannotTell';
  const rule = ownRuleId(limit.id);
  return {
    id: `own/${rule}:${place.at}`,
    rule,
    family: 'practice',
    codeSet: 'own',
    severity: limit.severity,
    outcome,
    at,
    under: null,
    title: say(outcome === 'not met' ? words.failTitle : words.title, values, speech),
    because: { key, values: {}, text: say(words[key], values, speech) },
    measured: measuredOf(telling, place, speech),
    source: ownSource(standard, limit.id),
    basis: ownBasis(standard, limit.because, speech),
    remedy: remedyOf(limit, outcome, say(words[outcome === 'cannot tell' ? 'settle' : 'remedy'], values, speech)),
    tool: outcome === 'cannot tell' ? 'eyes' : null,
    change: null,
    untied: [],
    agreed: agreementOf(rule, at, agreed),
  };
}

/** Under which a limit of the owner's is agreed to and counted. */
export function ownRuleId(limit: string): string {
  return `own-${limit}`;
}

function remedyOf({ remedy }: OwnLimit, outcome: Finding['outcome'], usual: string): string {
  if (outcome === 'met') return '';
  return outcome === 'not met' ? (remedy ?? usual) : usual;
}

function measuredOf(telling: OwnLimit['conditions'], place: OwnPlace, speech: Speech): Finding['measured'] {
  const figure = telling.find((c): c is OwnFigure => c.is === 'figure');
  const value = figure === undefined ? null : (place.figures[figure.field] ?? null);
  if (figure === undefined || value === null) return null;
  return sayMeasured({ key: figure.key, value, limit: figure.value, sense: figure.sense }, speech);
}

function conditionOf(limit: OwnLimit, findings: readonly Finding[], { standard, speech }: Asking): Condition {
  const count = (outcome: Finding['outcome']) => findings.filter((f) => f.outcome === outcome).length;
  const values = { limit: limit.id, standard: standard.name };
  return {
    rule: ownRuleId(limit.id),
    family: 'practice',
    codeSet: 'own',
    severity: limit.severity,
    title: say(words.title, values, speech),
    source: ownSource(standard, limit.id),
    outcome: findings.length === 0 ? 'not applicable' : worst(findings.map((f) => f.outcome)),
    met: count('met'),
    notMet: count('not met'),
    cannotTell: count('cannot tell'),
    because: findings.length === 0 ? words.none : '',
    basis: ownBasis(standard, limit.because, speech),
  };
}
