import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import { heatAtLevels } from '../../facts/strike-facts.ts';
import type { Wire } from '../../materials/wire.ts';
import { exact, type Interval } from '../../units/interval.ts';
import { claimsOf } from '../claims.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** The greatest first positive stroke of the two lowest levels: 100 kA 10/350, 2.5 MJ/ohm. */
const level = 'IV';

export const onlyBondStandsStrike = rule({
  id: 'only-bond-stands-strike',
  family: 'strike',
  severity: 'advice',
  codeSets: ['any'],
  source: {
    document: 'IEC 62305-1, figures of levels III and IV; temperature rise of annex D.4.1.1',
    edition: '2010',
    clause: 'table 3; annex D',
    provenance: 'memory',
  },
  needs: ['header', 'isAmerican', 'sections', 'conductors', 'bonding', 'site'],
  check(facts) {
    const { sections, conductors, bonding, site } = facts;
    const struck = new Set([...site.supports, ...site.antennas].map((part) => part.id));
    const weak = bonding.weakPoints.filter((w) => w.kind === 'conductor' && w.losesEarth.some((id) => struck.has(id)));
    const isLead = (c: ConductorFacts) => c.role === 'mast lead' || weak.some((w) => w.at === c.id);
    // of one that leads nowhere another rule asks where it goes
    const reaches = (parts: ReadonlySet<string>) => (c: ConductorFacts) =>
      [...c.ends, ...c.passes].some((id) => id !== null && parts.has(id));
    const { bonds, perhaps } = bonding.earthBy;
    const leads = conductors.filter((c) => isLead(c) && reaches(new Set([...bonds, ...perhaps]))(c));
    if (leads.length === 0) return nothingThere({ sections }, 'conductors');
    return leads.map((c) => {
      const own = weak.find((w) => w.at === c.id);
      const v = ofLead(c, own, reaches(bonds)(c));
      return v.is === 'not met' ? { ...v, ...underSize(c, facts) } : v;
    });
  },
});

type WeakPoint = Facts['bonding']['weakPoints'][number];

/** Of one that is the only bond of what is struck, taken to carry the whole stroke. */
function ofLead(c: ConductorFacts, weak: WeakPoint | undefined, reachesSoil: boolean): Verdict {
  const at = [c.id];
  if (weak === undefined && reachesSoil) return { is: 'met', at, because: { key: 'shares' } };
  if (c.wire === null || c.areaM2 === null)
    return { is: 'cannot tell', at, because: { key: 'size unknown' }, settle: { key: 'measure it' } };
  if (c.wire.metal === null)
    return { is: 'cannot tell', at, because: { key: 'metal unknown' }, settle: { key: 'look at it' } };
  if (c.wire.metal.heating === null)
    return { is: 'cannot tell', at, because: { key: 'metal not listed' }, settle: { key: 'compare it' } };
  const melts = meltsOver(c.wire, c.areaM2);
  if (melts === 'no') return { is: 'met', at, because: { key: 'stands' } };
  if (melts === 'unknown')
    return { is: 'cannot tell', at, because: { key: 'size unknown' }, settle: { key: 'measure it' } };
  if (weak === undefined || !weak.certain)
    return { is: 'cannot tell', at, because: { key: 'perhaps not alone' }, settle: { key: 'look for second' } };
  return { is: 'not met', at, because: { key: 'melts', values: { areaM2: c.areaM2 } } };
}

/**
 * What a clause finds too thin is one finding, where the section that it asks stands a stroke. The 10 AWG that the United
 * States and Canada ask of such a lead melts too: what asks for more stands beside it.
 */
function underSize(
  { id, role }: ConductorFacts,
  { header, isAmerican }: Pick<Facts, 'header' | 'isAmerican'>,
): { readonly under?: string } {
  if (isAmerican) return {};
  if (role === 'mast lead') return { under: `antenna-earthing-size-iec:${id}` };
  if (role !== 'down conductor') return { under: `path-minimum-area:${id}` };
  return { under: `${claimsOf(header).lightning ? 'down-conductor-size-iec' : 'antenna-earthing-size-iec'}:${id}` };
}

/** Whether it melts over the range of its section. */
function meltsOver(wire: Wire, areaM2: Interval): 'yes' | 'no' | 'unknown' {
  const melts = (area: number) =>
    area > 0 && heatAtLevels({ ...wire, areaM2: exact(area) }, 1).find((heat) => heat.level === level)?.melts === false
      ? 'no'
      : 'yes';
  const ends = [melts(areaM2.low), melts(areaM2.high)] as const;
  return ends[0] === ends[1] ? ends[0] : 'unknown';
}
