import type { Bar } from '../../site/site.ts';
import { isAtLeast } from '../../units/interval.ts';
import { lightningSystem } from '../lightning/lightning-system.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** Copper or galvanised steel, square metres. */
const leastM2 = 50e-6;

export const barSectionIec = rule({
  id: 'bar-section-iec',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-4', edition: '2010', clause: 'Table 1', provenance: 'memory' },
  limits: [{ key: 'areaM2', value: leastM2, sense: 'least' }],
  needs: ['header', 'sections', 'conductors', 'site', 'bonding'],
  check(facts) {
    if (lightningSystem(facts) === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const bars = facts.site.bars.filter((b) => b.present !== 'no');
    return bars.length === 0 ? nothingThere(facts, 'bars') : bars.map(ofBar);
  },
});

const listed: readonly string[] = ['copper', 'tinned copper', 'hard-drawn copper', 'galvanised steel'];

function ofBar({ id, sectionM2 = null, metal = null }: Bar): Verdict {
  const at = [id];
  const enough = sectionM2 === null ? 'unknown' : isAtLeast(sectionM2, leastM2 * (1 - 3e-3));
  const measured =
    sectionM2 === null
      ? {}
      : { measured: { key: 'areaM2', value: sectionM2, limit: leastM2, sense: 'least' } as const };
  if (enough === 'no') return { is: 'not met', at, because: { key: 'small' }, ...measured };
  if (enough === 'unknown' || metal === null)
    return { is: 'cannot tell', at, because: { key: 'not known' }, settle: { key: 'measure it' } };
  if (listed.includes(metal.name)) return { is: 'met', at, because: { key: 'enough' }, ...measured };
  return { is: 'cannot tell', at, because: { key: 'metal not listed' }, settle: { key: 'ask' } };
}
