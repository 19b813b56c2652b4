import type { Facts } from '../../facts/facts.ts';
import type { Support } from '../../site/site.ts';
import { claimsOf } from '../claims.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { hasAnchorRod, rodsAt } from './rods-at.ts';

/** Rods: self-supporting; guyed, at its base; guyed, at each anchor. Edition F has no figure for anchors. */
const least = { G: { alone: 6, base: 3, anchor: 1 }, F: { alone: 3, base: 2, anchor: 0 } } as const;
/** Another system that reads as little serves instead. */
const insteadOhm = 10;

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'electrodes' | 'site'>;

export const towerRodsCount = rule({
  id: 'tower-rods-count',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'TIA-222-G', edition: '2006', clause: 'protective grounding', provenance: 'second-hand' },
  limits: [
    { key: 'count', value: least.G.alone, sense: 'least', of: 'rods of a self-supporting tower' },
    { key: 'count', value: least.G.base, sense: 'least', of: 'rods at the base of a guyed one' },
    { key: 'resistanceOhm', value: insteadOhm, sense: 'most', of: 'another system instead' },
  ],
  needs: ['header', 'sections', 'bonding', 'electrodes', 'site'],
  check(facts) {
    const { tower } = claimsOf(facts.header);
    if (tower === null) return [{ is: 'not applicable', because: { key: 'not claimed' } }];
    const kinds = ['lattice tower', 'mast', 'tower', 'crank-up tower', 'tilt-over mast'];
    const towers = facts.site.supports.filter(
      (s) => kinds.includes(s.kind) && s.present === 'yes' && s.metal !== 'none',
    );
    return towers.length === 0 ? nothingThere(facts, 'supports') : towers.map((t) => ofTower(t, tower, facts));
  },
});

function ofTower(t: Support, edition: string, facts: Asked): Verdict {
  const at = [t.id];
  const asked = edition === 'F' ? least.F : edition === 'G' ? least.G : null;
  if (asked === null)
    return { is: 'cannot tell', at, because: { key: 'edition unknown' }, settle: { key: 'look it up' } };
  const read = readingAt(t.id, facts);
  if (read !== null && read <= insteadOhm) {
    const measured = { key: 'resistanceOhm', value: read, limit: insteadOhm, sense: 'most' } as const;
    return { is: 'met', at, because: { key: 'reads low' }, measured };
  }
  const isGuyed = t.guys.length > 0;
  const base = rodsAt(t.id, facts, 0);
  const needed = isGuyed ? asked.base : asked.alone;
  const values = { rods: base.least, needed };
  const measured = { key: 'count', value: base.least, limit: needed, sense: 'least' } as const;
  if (base.most < needed) return { is: 'not met', at, because: { key: 'too few', values }, measured };
  const anchors = asked.anchor === 0 ? [] : t.guys.map((g) => ({ id: g.id, rod: hasAnchorRod(g.id, facts) }));
  const bare = anchors.filter((a) => a.rod === 'no').map((a) => a.id);
  if (bare.length > 0) return { is: 'not met', at, because: { key: 'anchor without', values: { anchors: bare } } };
  const isEnough = base.least >= needed && anchors.every((a) => a.rod === 'yes');
  if (isEnough) return { is: 'met', at, because: { key: 'enough' }, measured };
  return { is: 'cannot tell', at, because: { key: 'rods unknown' }, settle: { key: 'look' } };
}

/** The highest reading taken at the tower itself, ohm; Infinity: over range; null: none. */
function readingAt(tower: string, { site }: Asked): number | null {
  const read = site.readings.filter((r) => r.kind === 'fall of potential' && r.on?.part === tower);
  const ohms = read.flatMap((r) => r.resistance);
  return ohms.length === 0 ? null : Math.max(...ohms.map((r) => (r.overRange ? Infinity : r.ohm.high)));
}
