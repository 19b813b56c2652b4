import type { ConductorFacts } from '../../facts/facts.ts';
import { limitsOf } from '../conductors/size-rule.ts';
import { purposesOf } from '../electrodes/purposes-of.ts';
import { lightningSystem } from '../lightning/lightning-system.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { mainSections, mainVerdict } from './by-height.ts';
import { structureHeight } from './lightning-mains.ts';
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
    return sizedElsewhere(
      ties.map((c) => mainVerdict(c, heightM)),
      'antenna-electrode-bond-size',
    );
  },
});

function isTie({ role }: ConductorFacts): boolean {
  return role === 'electrode tie' || role === 'bond';
}

/** One end on an electrode of the lightning protection, the other on something that is none. */
function joinsToOthers({ ends }: ConductorFacts, lightning: ReadonlySet<string>): boolean {
  const [from, to] = ends;
  return from !== null && to !== null && lightning.has(from) !== lightning.has(to);
}
