import type { Crossing } from '../../bonding/bonding.ts';
import type { Facts } from '../../facts/facts.ts';
import { isAtMost } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { controlLines, feedLines } from './crossing-lines.ts';

/** Longest conductor that still makes one panel of two, metres. Ours. */
const longestTieM = 1;

type Asked = Pick<Facts, 'sections' | 'bonding' | 'conductors' | 'site'>;

export const singleEntryPanel = rule({
  id: 'single-entry-panel',
  family: 'practice',
  severity: 'defect',
  codeSets: ['any'],
  source: {
    document: 'common practice; IEC 62305-4',
    edition: null,
    clause: 'bonding at the boundary of a zone',
    provenance: 'memory',
  },
  limits: [{ key: 'tieLengthM', value: longestTieM, sense: 'most' }],
  needs: ['sections', 'bonding', 'conductors', 'site'],
  check(facts) {
    const crossings = facts.bonding.lines
      .filter((l) => feedLines.includes(l.kind) || (controlLines.includes(l.kind) && comesFromMast(l.id, facts)))
      .flatMap((l) => l.crossings)
      .filter((c) => c.certain && panelOf(c, facts) !== null);
    if (crossings.length === 0) return nothingThere(facts, 'lines');
    const buildings = [...new Set(crossings.map((c) => c.building))].sort();
    return buildings.map((b) => ofBuilding(b, crossings, facts));
  },
});

/** Telephone and mains come in where their supplier brings them; a line of a mast goes where the feed lines go. */
function comesFromMast(line: string, { site }: Asked): boolean {
  const stops = site.lines.find((l) => l.id === line)?.path ?? [];
  return stops.every((s) => s.is !== 'street');
}

/** The bar that the line is bonded to at the wall, by itself or by its protector; a line without one is asked elsewhere. */
function panelOf({ bondedTo, protector }: Crossing, { site }: Asked): string | null {
  const part = bondedTo?.split('@')[0]?.split('.')[0] ?? null;
  const bars = new Set(site.bars.map((b) => b.id));
  if (part !== null && bars.has(part)) return part;
  const on = site.arresters.find((a) => a.id === (protector ?? part))?.on?.part ?? null;
  return on !== null && bars.has(on) ? on : null;
}

function ofBuilding(building: string, crossings: readonly Crossing[], facts: Asked): Verdict {
  const here = crossings.filter((c) => c.building === building);
  const at = [...new Set(here.map((c) => panelOf(c, facts)!))].sort();
  if (at.length === 1) return { is: 'met', at, because: { key: 'one' } };
  const answers = at.slice(1).map((panel) => isTied(panel, at, facts));
  if (answers.every((a) => a === 'yes')) return { is: 'met', at, because: { key: 'tied' } };
  if (answers.includes('no')) return { is: 'not met', at, because: { key: 'several' } };
  return { is: 'cannot tell', at, because: { key: 'tie unknown' }, settle: { key: 'tape' } };
}

/** A conductor of at most 1 m from this panel to another of them. */
function isTied(panel: string, all: readonly string[], { conductors }: Asked): 'yes' | 'no' | 'unknown' {
  const others = all.filter((p) => p !== panel);
  const ties = conductors.filter((c) => c.ends.includes(panel) && c.ends.some((e) => e !== null && others.includes(e)));
  const answers = ties.map((c) => (c.lengthM === null ? 'unknown' : isAtMost(c.lengthM, longestTieM)));
  return answers.includes('yes') ? 'yes' : answers.includes('unknown') ? 'unknown' : 'no';
}
