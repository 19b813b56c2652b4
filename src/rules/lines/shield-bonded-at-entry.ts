import type { Crossing } from '../../bonding/bonding.ts';
import type { Facts } from '../../facts/facts.ts';
import type { Answer, Site } from '../../site/site.ts';
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
    return [...new Set(crossings.map((c) => c.line))].map((line) =>
      ofLine(
        line,
        crossings.filter((c) => c.line === line),
        facts,
      ),
    );
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
  const hung = [...site.bars, ...site.arresters];
  const onWay = stopsOf(site, line).flatMap(
    (id) => hung.find((p) => p.id === id && p.id !== part && p.on?.part === part) ?? [],
  );
  const isBondTyped = site.lines.some(
    (l) => l.id === line && l.path.some((s) => s.is === 'bond' && s.at.part === part),
  );
  const isByDoubtful = onWay.length > 0 && onWay.every((p) => p.present === 'unknown') && !isBondTyped;
  if (isByDoubtful || hung.some((p) => p.id === part && p.present === 'unknown')) return 'unknown';
  if (!site.equipment.some((e) => e.id === part) || bonding.earthBy.bonds.has(part)) return 'yes';
  return bonding.earthBy.perhaps.has(part) || !isWhole(facts, 'conductors') ? 'unknown' : 'no';
}

function stopsOf({ lines }: Site, line: string): readonly string[] {
  const path = lines.find((l) => l.id === line)?.path ?? [];
  return path.flatMap((s) => (s.is === 'part' && s.at.part !== null ? [s.at.part] : []));
}
