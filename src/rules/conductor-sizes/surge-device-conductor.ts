import type { ConductorFacts } from '../../facts/facts.ts';
import type { Arrester } from '../../site/site.ts';
import { sectionVerdict } from '../conductors/size-rule.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

const copper = (areaM2: number) => ({ copper: areaM2, aluminium: null, steel: null, cladSteel: null });
/** By the class that the protector was tested to. */
const byClass = { I: copper(16e-6), II: copper(6e-6), III: copper(1e-6) } as const;

export const surgeDeviceConductor = rule({
  id: 'surge-device-conductor',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-4', edition: '2010', clause: 'Table 1', provenance: 'second-hand' },
  limits: Object.entries(byClass).map(
    ([name, { copper: value }]) => ({ key: 'areaM2', value, sense: 'least', of: `copper, class ${name}` }) as const,
  ),
  needs: ['sections', 'conductors', 'site'],
  check({ sections, conductors, site }) {
    const devices = site.arresters.filter((a) => a.kind === 'mains protector' && a.present !== 'no');
    const verdicts = devices.flatMap((a) => conductors.filter((c) => c.ends.includes(a.id)).map((c) => ofLead(c, a)));
    return verdicts.length > 0 ? verdicts : nothingThere({ sections }, 'arresters');
  },
});

function ofLead(c: ConductorFacts, { testClass = null }: Arrester): Verdict {
  if (testClass !== null) return sectionVerdict(c, byClass[testClass], 'mm2');
  const strictest = sectionVerdict(c, byClass.I, 'mm2');
  if (strictest.is !== 'not met') return strictest;
  const least = sectionVerdict(c, byClass.III, 'mm2');
  if (least.is === 'not met') return least;
  return { is: 'cannot tell', at: [c.id], because: { key: 'class unknown' }, settle: { key: 'read class' } };
}
