import type { Facts } from '../../facts/facts.ts';
import type { Conductor, Electrode, Guy, Support } from '../../site/site.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { wiresOn } from '../wires-on.ts';

export const galvanisedAndCopperInSoil = rule({
  id: 'galvanised-and-copper-in-soil',
  family: 'code',
  severity: 'defect',
  codeSets: ['any'],
  source: { document: 'TIA-222', edition: 'F, G', clause: 'protective grounding', provenance: 'second-hand' },
  needs: ['header', 'sections', 'site'],
  check(facts) {
    const { supports } = facts.site;
    const guys = supports.flatMap((s) => (s.present === 'no' ? [] : s.guys)).filter((g) => g.metal !== 'none');
    const bases = supports.filter((s) => s.present !== 'no' && s.metal !== 'none' && standsInSoil(s));
    if (guys.length === 0 && bases.length === 0) return nothingThere(facts, 'supports');
    return [...guys, ...bases].map((p) => ofSteel(p, facts));
  },
});

/** The owner's words on what it stands in: set straight in the soil, not in a block. */
function standsInSoil({ base = null }: Support): boolean {
  return base !== null && /\b(?:soil|earth|buried|direct)/i.test(base) && !/concrete|block|footing/i.test(base);
}

type Asked = Pick<Facts, 'header' | 'sections' | 'site'>;
type Steel = Pick<Support, 'id'> & { readonly metal: Guy['metal'] };

/** The shaft or the foot in the soil is what is eaten, so only what conductors join to it counts, at once or by a bar. */
function ofSteel({ id, metal: typed }: Steel, facts: Asked): Verdict {
  const at = [id];
  const { electrodes, isTraced } = tiedTo(id, facts);
  const metals = electrodes.map((e) => (e.metal ?? e.wire?.metal)?.name ?? null);
  const metal = typed === 'none' ? null : typed;
  const eaten = metal?.name === 'galvanised steel' || metal?.name === 'steel';
  const copper = metals.some((name) => name !== null && /copper/.test(name) && !/tinned/.test(name));
  if (eaten && copper) return { is: 'not met', at, because: { key: 'eaten' } };
  if (!isTraced) return { is: 'cannot tell', at, because: { key: 'end unknown' }, settle: { key: 'trace' } };
  if (metals.length === 0) return { is: 'met', at, because: { key: 'no electrode' } };
  if (metal === null || metals.includes(null))
    return { is: 'cannot tell', at, because: { key: 'metal unknown' }, settle: { key: 'look' } };
  return { is: 'met', at, because: { key: 'alike' } };
}

interface Tied {
  readonly electrodes: readonly Electrode[];
  /** false: a wire there ends nobody knows where, or not all wires were typed. */
  readonly isTraced: boolean;
}

function tiedTo(id: string, facts: Asked): Tied {
  const { conductors, bars, electrodes } = facts.site;
  const wires = wiresOn(conductors);
  const through = new Set([id]);
  const reached = new Set<string | null>();
  // a set that grows while it is walked: each bar is looked at once
  for (const from of through) {
    const present = (wires.get(from) ?? []).filter((c) => c.present !== 'no');
    for (const part of present.flatMap(pointsOf)) {
      reached.add(part);
      if (bars.some((b) => b.id === part)) through.add(part!);
    }
  }
  const isTraced = !reached.has(null) && isWhole(facts, 'conductors');
  return { electrodes: electrodes.filter((e) => e.present !== 'no' && reached.has(e.id)), isTraced };
}

const pointsOf = (c: Conductor) => [c.from, c.to, ...c.passes.map((p) => p.at)].map((p) => p.part);
