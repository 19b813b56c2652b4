import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import { limitsOf } from '../conductors/size-rule.ts';
import { purposesOf } from '../electrodes/purposes-of.ts';
import { lightningSystem } from '../lightning/lightning-system.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import type { RuleId } from '../rule-ids.ts';
import { mainSections, mainVerdict } from './by-height.ts';
import { structureHeight } from './lightning-mains.ts';
import { electrodesOn, mostAsking } from './service-electrode-size.ts';
import { sizedElsewhere } from './sized-elsewhere.ts';

export const commonBondMainSize = rule({
  id: 'common-bond-main-size',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'UL 96A; NFPA 780', edition: '2007', clause: '9.4.1; 4.14', provenance: 'memory' },
  limits: limitsOf(mainSections.low),
  needs: ['header', 'sections', 'conductors', 'site', 'bonding'],
  check(facts) {
    const system = lightningSystem(facts);
    if (system === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const serves = facts.site.electrodes.filter((e) => purposesOf(e, facts).has('lightning')).map((e) => e.id);
    const ties = facts.conductors.filter((c) => isTie(c) && joinsToOthers(c, new Set(serves)));
    if (ties.length === 0) return nothingThere(facts, 'conductors');
    const heightM = structureHeight(system, facts);
    const lesserOf = new Map(ties.map((c) => [c.id, lesserRule(c, facts)]));
    return sizedElsewhere(
      ties.map((c) => mainVerdict(c, heightM)),
      (id) => lesserOf.get(id) ?? bondRule,
    );
  },
});

/** What leads from the service to a lightning electrode ties it to the grounds of power. */
function isTie({ role }: ConductorFacts): boolean {
  return role === 'electrode tie' || role === 'bond' || role === 'service electrode wire';
}

/** Meets an electrode of the lightning protection, and something that is none. */
function joinsToOthers({ ends, passes }: ConductorFacts, lightning: ReadonlySet<string>): boolean {
  const met = [...ends, ...passes].flatMap((id) => (id === null ? [] : [lightning.has(id)]));
  return met.includes(true) && met.includes(false);
}

const bondRule = 'antenna-electrode-bond-size';
const serviceRules = {
  rod: 'rod-only-conductor-size',
  concrete: 'concrete-only-conductor-size',
  ring: 'ring-conductor-size',
  other: 'service-conductor-size',
} as const;

/** The rule that asks less of the same wire, and asks about a size that nobody knows. */
function lesserRule(c: ConductorFacts, { site }: Pick<Facts, 'site'>): RuleId {
  return c.role === 'service electrode wire' ? serviceRules[mostAsking(electrodesOn(c, site)) ?? 'other'] : bondRule;
}
