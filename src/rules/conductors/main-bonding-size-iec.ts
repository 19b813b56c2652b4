import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import type { Site, SiteHeader } from '../../site/site.ts';
import { onceFor } from '../../units/once-for.ts';
import { earthingWires } from '../conductor-sizes/earthing-wires.ts';
import { nothingThere } from '../looked-at.ts';
import { type OwnSupply, ownSupplyOf } from '../one-earth/own-supply.ts';
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
  needs: ['header', 'sections', 'conductors', 'site', 'bonding'],
  check(facts) {
    const { header, sections, conductors, site } = facts;
    const earthing = new Set(earthingWires(conductors, site).map((c) => c.id));
    const mayBeMultiple = header.region === 'uk' && ['tn-c-s', 'unknown'].includes(header.supply);
    // earthing conductors are asked by a clause of their own; on multiple earthing they are to be as thick as a main bond too
    const asked = (c: ConductorFacts) => (earthing.has(c.id) ? mayBeMultiple : isMainBond(c, site));
    const ofTt = new Map(conductors.filter(asked).map((c) => [c, mayBeMultiple ? ttOf(c, facts) : null]));
    const bonds = [...ofTt.keys()].filter((c) => !(earthing.has(c.id) && ofTt.get(c)?.is === 'own'));
    if (bonds.length === 0) return nothingThere({ sections }, 'conductors');
    return bonds.map((c) => {
      const v = ofBond(c, header, ofTt.get(c) ?? null);
      return earthing.has(c.id) ? asEarthing(v, header) : v;
    });
  },
});

function ofBond(c: ConductorFacts, { region, supply }: SiteHeader, tt: OwnSupply | null): Verdict {
  if (tt?.is === 'own') return sectionVerdict(c, least, 'mm2');
  if (tt !== null) return inDoubt(c, ofWhichPart(c, tt));
  if (region === 'uk' && supply === 'unknown') return inDoubt(c, ofUnknownSupply(c));
  return sectionVerdict(c, region === 'uk' && supply === 'tn-c-s' ? onMultipleEarth : least, 'mm2');
}

/** Neutral current of the street may come through it (uk-multiple-earth-rf-rod-bond); too thin anyway is the other clause's. */
function asEarthing(v: Verdict, { supply }: SiteHeader): Verdict {
  if (v.is !== 'not met' && v.is !== 'cannot tell') return v;
  const under = `earthing-conductor-size-iec:${v.at[0]}`;
  return v.is === 'not met' && supply === 'tn-c-s' ? { ...v, under, severity: 'hazard' } : { ...v, under };
}

/** The supply matters to copper between the two figures. */
function inDoubt(c: ConductorFacts, doubt: Verdict): Verdict {
  const v = sectionVerdict(c, onMultipleEarth, 'mm2');
  if (v.is !== 'not met') return v;
  const lesser = sectionVerdict(c, least, 'mm2');
  if (lesser.is === 'not met') return lesser;
  return doubt;
}

function ofUnknownSupply({ id }: ConductorFacts): Verdict {
  return { is: 'cannot tell', at: [id], because: { key: 'supply unknown' }, settle: { key: 'ask supply' } };
}

function ofWhichPart({ id }: ConductorFacts, { panel }: OwnSupply): Verdict {
  const values = { panel };
  return {
    is: 'cannot tell',
    at: [id],
    because: { key: 'which part', values },
    settle: { key: 'ask which part', values },
  };
}

/** The TT part that a wire lies in or may lie in: the neutral of the street is none of its matter. One end tells of both. */
function ttOf({ ends, passes }: ConductorFacts, facts: Pick<Facts, 'bonding' | 'site'>): OwnSupply | null {
  const found = [...ends, ...passes].flatMap((id) => (id === null ? [] : (ownSupplyOf(id, facts) ?? [])));
  return found.find((s) => s.is === 'own') ?? found[0] ?? null;
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
