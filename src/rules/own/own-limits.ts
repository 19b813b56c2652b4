import type { Agreement } from '../../site/site.ts';
import type { OwnerStandard, OwnLimit } from '../../site/standard/owner-standard.ts';
import { ownStandardWords as words } from '../../words/own-standard-words.ts';
import { type Speech, say } from '../../words/say.ts';
import { agreedUnder, agreementAt } from '../finding-of.ts';
import type { Condition, Finding } from '../run-rules.ts';
import { OwnFinding, type OwnShared } from './own-finding.ts';
import { conditionOutcome, worst } from './own-outcome.ts';
import { type OwnFacts, type OwnPlace, ownPlaces } from './own-places.ts';
import { sayPlace } from './own-sentence.ts';

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
    const shared = sharedBy(limit, asking);
    const mine = { ...asking, agreed: agreedUnder(shared.rule, asking.agreed) };
    const findings = ownPlaces(limit.of, facts).map((place) => findingOf(limit, place, shared, mine));
    return { findings, condition: conditionOf(limit, findings, shared, asking) };
  });
  return { findings: runs.flatMap((r) => r.findings), conditions: runs.map((r) => r.condition) };
}

function sharedBy({ id, severity, because }: OwnLimit, { standard, speech }: Asking): OwnShared {
  const source = ownSource(standard, id);
  const basis = ownBasis(standard, because, speech);
  return { rule: ownRuleId(id), family: 'practice', codeSet: 'own', severity, source, basis };
}

/** Name and place of a standard, as the source of what it asks: its text lies beside the site file. */
export function ownSource({ name, edition }: OwnerStandard, clause: string | null): Finding['source'] {
  return { document: name, edition, clause, provenance: 'read' };
}

export function ownBasis(standard: OwnerStandard, because: string | null, speech: Speech): string {
  const why = because === null ? '' : say(words.because, { text: because }, speech);
  return say(words.basis, { standard: standard.name, because: why }, speech);
}

function findingOf(limit: OwnLimit, place: OwnPlace, shared: OwnShared, { standard, agreed, speech }: Asking): Finding {
  const outcomes = limit.conditions.map((c) => conditionOutcome(place, c));
  const found = { outcome: worst(outcomes), agreed: agreementAt(place.at, agreed) };
  return new OwnFinding(shared, place, found, (outcome) => {
    const telling = limit.conditions.filter((_, i) => outcomes[i] === outcome);
    return sayPlace(limit, place, { outcome, telling, standard, speech });
  });
}

/** Under which a limit of the owner's is agreed to and counted. */
export function ownRuleId(limit: string): string {
  return `own-${limit}`;
}

function conditionOf(
  limit: OwnLimit,
  findings: readonly Finding[],
  shared: OwnShared,
  { standard, speech }: Asking,
): Condition {
  const count = (outcome: Finding['outcome']) => findings.filter((f) => f.outcome === outcome).length;
  return {
    ...shared,
    title: say(words.title, { limit: limit.id, standard: standard.name }, speech),
    outcome: findings.length === 0 ? 'not applicable' : worst(findings.map((f) => f.outcome)),
    met: count('met'),
    notMet: count('not met'),
    cannotTell: count('cannot tell'),
    because: findings.length === 0 ? words.none : '',
  };
}
