import type { Crossing } from '../../bonding/bonding.ts';
import type { Facts } from '../../facts/facts.ts';
import { partIndex } from '../../facts/part-index.ts';
import type { Answer, Site } from '../../site/site.ts';
import { onceFor } from '../../units/once-for.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { crossingsOf } from './crossing-lines.ts';

/** Lines whose shield comes in from outside. */
const shielded: readonly string[] = ['coax', 'cable tv'];

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'site'>;

export const shieldBondedAtEntry = rule({
  id: 'shield-bonded-at-entry',
  family: 'practice',
  severity: 'hazard',
  codeSets: ['any'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. II', clause: 'waveguide grounding', provenance: 'read' },
  needs: ['header', 'sections', 'bonding', 'site'],
  check(facts) {
    const { bonding } = facts;
    const crossings = bonding.lines.filter((l) => shielded.includes(l.kind)).flatMap((l) => crossingsOf(l, 'shield'));
    if (crossings.length === 0) return nothingThere(facts, 'lines');
    const ofEach = new Map<string, Crossing[]>();
    for (const c of crossings) ofEach.set(c.line, [...(ofEach.get(c.line) ?? []), c]);
    return [...ofEach].map(([line, own]) => ofLine(line, own, facts));
  },
});

function ofLine(line: string, crossings: readonly Crossing[], facts: Asked): Verdict {
  const at = [line];
  const bare = crossings.filter((c) => c.bondedTo === null);
  if (bare.some((c) => c.certain)) return { is: 'not met', at, because: { key: 'bare' } };
  if (bare.length > 0)
    return { is: 'cannot tell', at, because: { key: 'place unknown' }, settle: { key: 'follow it' } };
  const bonds = crossings.map((c) => isGood(c, facts));
  if (bonds.includes('no')) return { is: 'not met', at, because: { key: 'floating' } };
  if (bonds.includes('unknown')) return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'look' } };
  return { is: 'met', at, because: { key: 'bonded', values: { bondedTo: crossings.map((c) => c.bondedTo ?? '') } } };
}

/**
 * Whether the bond at the wall is there and leads on. A bar and an arrester that reach no electrode are findings of their
 * own; what else the shield may be clamped to there is asked here.
 */
function isGood({ line, bondedTo }: Crossing, facts: Asked): Answer {
  const { site, bonding } = facts;
  const part = bondedTo!.split('@')[0]!.split('.')[0]!;
  const hung = hungOf(site);
  const path = pathsOf(site).get(line) ?? [];
  const onWay = path.flatMap((s) => {
    const p = s.is === 'part' && s.at.part !== part ? hung.get(s.at.part ?? '') : undefined;
    return p?.on?.part === part ? [p] : [];
  });
  const isBondTyped = path.some((s) => s.is === 'bond' && s.at.part === part);
  const isByDoubtful = onWay.length > 0 && onWay.every((p) => p.present === 'unknown') && !isBondTyped;
  if (isByDoubtful || hung.get(part)?.present === 'unknown') return 'unknown';
  if (partIndex(site).get(part)?.section !== 'equipment' || bonding.earthBy.bonds.has(part)) return 'yes';
  return bonding.earthBy.perhaps.has(part) || !isWhole(facts, 'conductors') ? 'unknown' : 'no';
}

/** Bars and arresters by their ids. */
const hungOf = onceFor(({ bars, arresters }: Site) => new Map([...bars, ...arresters].map((p) => [p.id, p])));

const pathsOf = onceFor(({ lines }: Site) => new Map(lines.map((l) => [l.id, l.path])));
