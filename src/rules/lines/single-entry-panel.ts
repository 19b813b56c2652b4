import type { Crossing, LineFacts } from '../../bonding/bonding.ts';
import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import type { Answer } from '../../site/site.ts';
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
    const lines = facts.bonding.lines.filter(
      (l) => feedLines.includes(l.kind) || (controlLines.includes(l.kind) && comesFromMast(l.id, facts)),
    );
    const all = lines.flatMap((l) => l.crossings).filter((c) => c.certain);
    const crossings = all.filter((c) => panelOf(c, facts) !== null);
    if (crossings.length === 0) return nothingThere(facts, 'lines');
    const buildings = [...new Set(crossings.map((c) => c.building))].sort();
    return buildings.flatMap((b) => {
      const verdict = ofBuilding(b, crossings, facts);
      const besides = lines.filter((l) => passesBy(l, b, facts));
      return verdict.is === 'met' ? [verdict, ...besides.map(ofBare)] : [verdict];
    });
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

/** It certainly goes in there, and nothing bonds it to a bar at that wall. */
function passesBy({ crossings }: LineFacts, building: string, facts: Asked): boolean {
  const here = crossings.filter((c) => c.certain && c.building === building);
  return here.length > 0 && here.every((c) => panelOf(c, facts) === null);
}

/** Which hole it takes nobody typed. What bonds nor protects it anywhere is found by the rule of its kind, and told there. */
function ofBare({ id, kind, crossings, conductors }: LineFacts): Verdict {
  const isBare = crossings.every((c) => c.bondedTo === null) && conductors.every((c) => c.protectedBy.length === 0);
  const finder = controlLines.includes(kind)
    ? 'arrester-on-every-control-line'
    : conductors.some((c) => c.which === 'shield')
      ? 'shield-bonded-at-entry'
      : 'arrester-on-every-feed-line';
  const under = isBare ? { under: `${finder}:${id}` } : {};
  return { is: 'cannot tell', at: [id], because: { key: 'no bar' }, settle: { key: 'follow' }, ...under };
}

function ofBuilding(building: string, crossings: readonly Crossing[], facts: Asked): Verdict {
  const here = crossings.filter((c) => c.building === building);
  const at = [...new Set(here.map((c) => panelOf(c, facts)!))].sort();
  if (at.length === 1) return { is: 'met', at, because: { key: 'one' } };
  if (isOneMetal(at, facts, ['yes'])) return { is: 'met', at, because: { key: 'tied' } };
  if (!isOneMetal(at, facts, ['yes', 'unknown'])) return { is: 'not met', at, because: { key: 'several' } };
  return { is: 'cannot tell', at, because: { key: 'tie unknown' }, settle: { key: 'tape' } };
}

/** Whether ties of these answers join all panels: two that are tied do not speak for a third. */
function isOneMetal(panels: readonly string[], facts: Asked, enough: readonly Answer[]): boolean {
  const reached = new Set(panels.slice(0, 1));
  // a set that grows while it is walked: each panel is looked at once
  for (const a of reached) for (const b of panels) if (enough.includes(tieOf(a, b, facts))) reached.add(b);
  return reached.size === panels.length;
}

/** Bolted one to the other, or joined by a conductor of at most 1 m. */
function tieOf(a: string, b: string, { bonding, conductors, site }: Asked): Answer {
  const isOn = (one: string, other: string) => site.bars.some((bar) => bar.id === one && bar.on?.part === other);
  if ((isOn(a, b) || isOn(b, a)) && bonding.groupOf.get(a) === bonding.groupOf.get(b)) return 'yes';
  const answers = conductors.filter((c) => c.ends.includes(a) && c.ends.includes(b)).map(isShort);
  return answers.includes('yes') ? 'yes' : answers.includes('unknown') ? 'unknown' : 'no';
}

/** One that may not be there is at best a tie that nobody knows. */
function isShort({ lengthM, part }: ConductorFacts): Answer {
  const short = lengthM === null ? 'unknown' : isAtMost(lengthM, longestTieM);
  return short === 'yes' && part.present === 'unknown' ? 'unknown' : short;
}
