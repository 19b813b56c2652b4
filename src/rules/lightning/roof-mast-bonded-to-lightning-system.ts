import type { Facts, MastFacts } from '../../facts/facts.ts';
import { apart } from '../apart.ts';
import { isMainSize, mainSections } from '../conductor-sizes/by-height.ts';
import { iecMain } from '../conductor-sizes/iec-main.ts';
import { structureHeight } from '../conductor-sizes/lightning-mains.ts';
import { reachesSection } from '../conductors/size-rule.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { type LightningSystem, lightningSystem } from './lightning-system.ts';
import { standsApart } from './stands-apart.ts';

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'masts' | 'conductors' | 'site'>;

/** United States: nearer than this, an unbonded mast is struck from the side, metres (6 ft: the older rule; from memory). */
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

function ofMast(mast: MastFacts, system: LightningSystem, facts: Asked): Verdict {
  const at = [mast.id];
  if (system.groups.size === 0)
    return { is: 'cannot tell', at, because: { key: 'system not typed' }, settle: { key: 'follow' } };
  return isByIec(facts) ? ofIecMast(mast, system, facts) : ofUsMast(mast, system, facts);
}

const isByIec = ({ header }: Asked) => header.region === 'iec' || header.region === 'uk';

/** Tied to something of the lightning protection, be it at the foot of the building alone. */
const isTied = (id: string, system: LightningSystem, { bonding }: Asked) =>
  system.groups.has(bonding.groupOf.get(id) ?? '');

/** Whether something ties it hangs on what nobody typed. */
const isOpen = ({ id, part }: MastFacts, { bonding }: Asked) =>
  bonding.openEnds.has(bonding.groupOf.get(id) ?? '') || part.bonded === 'unknown';

function ofUsMast(mast: MastFacts, system: LightningSystem, facts: Asked): Verdict {
  const { id } = mast;
  const at = [id];
  if (isTied(id, system, facts)) return bySize(id, system, facts);
  const near = [...system.terminals.map((t) => t.id), ...system.down.map((c) => c.id)]
    .map((other) => apart(facts.site)(id, other))
    .filter((d) => d !== null);
  if (!isOpen(mast, facts) && near.some((d) => d.high < sideFlashM))
    return { is: 'not met', at, because: { key: 'apart' } };
  return { is: 'cannot tell', at, because: { key: 'not bonded' }, settle: { key: 'follow' } };
}

/** Under the terminals and apart it is as it should be: a tie would lead part of the strike into the building. */
function ofIecMast(mast: MastFacts, system: LightningSystem, facts: Asked): Verdict {
  const at = [mast.id];
  const { zone, separation } = standsApart(mast.part, system, facts);
  if (zone === 'yes' && separation === 'yes') return { is: 'met', at, because: { key: 'stands apart' } };
  const mayBe = zone !== 'no' && separation !== 'no';
  const v = isTied(mast.id, system, facts) ? bySize(mast.id, system, facts) : null;
  if (v !== null && (v.is !== 'not met' || !mayBe)) return v;
  if (v === null && !mayBe && !isOpen(mast, facts))
    return { is: 'not met', at, because: { key: separation === 'no' ? 'too near' : 'outside zone' } };
  return { is: 'cannot tell', at, because: { key: 'may stand apart' }, settle: { key: 'ask designer' } };
}

/** The thickest wire on the mast: a main conductor of its metal, in the United States by the height of the building. */
function bySize(mast: string, system: LightningSystem, facts: Asked): Verdict {
  const at = [mast];
  const heightM = structureHeight(system, facts);
  const own = facts.conductors.filter((c) => c.ends.includes(mast) || c.passes.includes(mast));
  const answers = own.map((c) => (isByIec(facts) ? reachesSection(c, iecMain) : isMainSize(c, heightM)));
  if (answers.includes('yes')) return { is: 'met', at, because: { key: 'bonded' } };
  if (own.length === 0 || answers.includes('unknown'))
    return { is: 'cannot tell', at, because: { key: 'size unknown' }, settle: { key: 'measure it' } };
  if (answers.includes('by height'))
    return { is: 'cannot tell', at, because: { key: 'height unknown' }, settle: { key: 'measure height' } };
  return { is: 'not met', at, because: { key: 'thin' }, severity: 'defect' };
}
