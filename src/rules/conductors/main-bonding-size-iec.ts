import type { ConductorFacts } from '../../facts/facts.ts';
import type { Site } from '../../site/site.ts';
import { onceFor } from '../../units/once-for.ts';
import { earthingWires } from '../conductor-sizes/earthing-wires.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { limitsOf, sectionVerdict } from './size-rule.ts';

/** 6 mm² copper, 16 mm² aluminium, 50 mm² steel. */
const least = { copper: 6e-6, aluminium: 16e-6, steel: 50e-6, cladSteel: null };
/** Where the neutral is earthed many times (TN-C-S) in the United Kingdom: BS 7671 544.1, second-hand. */
const onMultipleEarth = { ...least, copper: 10e-6 };

export const mainBondingSizeIec = rule({
  id: 'main-bonding-size-iec',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 60364-5-54', edition: '2011', clause: '544.1', provenance: 'second-hand' },
  limits: [
    ...limitsOf(least),
    { key: 'areaM2', value: onMultipleEarth.copper, sense: 'least', of: 'copper on a TN-C-S supply, United Kingdom' },
  ],
  needs: ['header', 'sections', 'conductors', 'site'],
  check({ header, sections, conductors, site }) {
    // earthing conductors are asked by a clause of their own
    const others = new Set(earthingWires(conductors, site).map((c) => c.id));
    const bonds = conductors.filter((c) => isMainBond(c, site) && !others.has(c.id));
    if (bonds.length === 0) return nothingThere({ sections }, 'conductors');
    if (header.region !== 'uk') return bonds.map((c) => sectionVerdict(c, least, 'mm2'));
    if (header.supply === 'unknown') return bonds.map(onUnknownSupply);
    return bonds.map((c) => sectionVerdict(c, header.supply === 'tn-c-s' ? onMultipleEarth : least, 'mm2'));
  },
});

/** The supply matters to copper between the two figures. */
function onUnknownSupply(c: ConductorFacts): Verdict {
  const v = sectionVerdict(c, onMultipleEarth, 'mm2');
  if (v.is !== 'not met') return v;
  const lesser = sectionVerdict(c, least, 'mm2');
  if (lesser.is === 'not met') return lesser;
  return { is: 'cannot tell', at: [c.id], because: { key: 'supply unknown' }, settle: { key: 'ask supply' } };
}

/** To the main bar or the service, to an electrode, or from metal of the building; what joins boxes to a bar of theirs is none. */
function isMainBond({ role, ends, passes }: ConductorFacts, site: Site): boolean {
  if (role === 'electrode tie') return true;
  if (role !== 'bond') return false;
  const ids = mainMetal(site);
  return [...ends, ...passes].some((id) => id !== null && (ids.has(id) || id === site.header.service));
}

const mainMetal = onceFor(({ bars, electrodes, metalwork }: Site): ReadonlySet<string> => {
  const main = bars.filter((b) => b.kind === 'main earthing bar');
  return new Set([...main, ...electrodes, ...metalwork].map((p) => p.id));
});
