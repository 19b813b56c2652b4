import type { Facts, MastFacts } from '../../facts/facts.ts';
import { apart } from '../apart.ts';
import { isMainSize, mainSections } from '../conductor-sizes/by-height.ts';
import { iecMain } from '../conductor-sizes/iec-main.ts';
import { structureHeight } from '../conductor-sizes/lightning-mains.ts';
import { reachesSection } from '../conductors/size-rule.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { type LightningSystem, lightningSystem } from './lightning-system.ts';

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'masts' | 'conductors' | 'site'>;

/** Nearer than this, an unbonded mast is struck from the side, metres (6 ft: the older rule; from memory). */
const sideFlashM = 1.8;

export const roofMastBondedToLightningSystem = rule({
  id: 'roof-mast-bonded-to-lightning-system',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us', 'iec'],
  source: { document: 'NFPA 780; IEC 62305-3', edition: null, clause: 'antennas; 5.2, 6.3', provenance: 'memory' },
  limits: [
    { key: 'areaM2', value: mainSections.low.copper, sense: 'least', of: 'copper (United States)' },
    { key: 'areaM2', value: iecMain.copper, sense: 'least', of: 'copper (IEC)' },
  ],
  needs: ['header', 'sections', 'bonding', 'masts', 'conductors', 'site'],
  check(facts) {
    const masts = facts.masts.filter((m) => m.part.kind === 'roof mast' && m.metal !== 'no');
    if (masts.length === 0) return nothingThere(facts, 'supports');
    const system = lightningSystem(facts);
    if (system === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    return masts.map((m) => ofMast(m, system, facts));
  },
});

function ofMast({ id, part }: MastFacts, system: LightningSystem, facts: Asked): Verdict {
  const at = [id];
  const group = facts.bonding.groupOf.get(id);
  if (system.groups.size === 0)
    return { is: 'cannot tell', at, because: { key: 'system not typed' }, settle: { key: 'follow' } };
  if (group !== undefined && system.groups.has(group)) return bySize(id, system, facts);
  const isOpen = facts.bonding.openEnds.has(group ?? '') || part.bonded === 'unknown';
  const near = [...system.terminals.map((t) => t.id), ...system.down.map((c) => c.id)]
    .map((other) => apart(facts.site)(id, other))
    .filter((d) => d !== null);
  if (!isOpen && near.some((d) => d.high < sideFlashM)) return { is: 'not met', at, because: { key: 'apart' } };
  return { is: 'cannot tell', at, because: { key: 'not bonded' }, settle: { key: 'follow' } };
}

/** The thickest wire on the mast: a main conductor of its metal, in the United States by the height of the building. */
function bySize(mast: string, system: LightningSystem, facts: Asked): Verdict {
  const at = [mast];
  const isIec = facts.header.region === 'iec' || facts.header.region === 'uk';
  const heightM = structureHeight(system, facts);
  const own = facts.conductors.filter((c) => c.ends.includes(mast) || c.passes.includes(mast));
  const answers = own.map((c) => (isIec ? reachesSection(c, iecMain) : isMainSize(c, heightM)));
  if (answers.includes('yes')) return { is: 'met', at, because: { key: 'bonded' } };
  if (own.length === 0 || answers.includes('unknown'))
    return { is: 'cannot tell', at, because: { key: 'size unknown' }, settle: { key: 'measure it' } };
  if (answers.includes('by height'))
    return { is: 'cannot tell', at, because: { key: 'height unknown' }, settle: { key: 'measure height' } };
  return { is: 'not met', at, because: { key: 'thin' }, severity: 'defect' };
}
