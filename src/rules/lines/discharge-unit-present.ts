import type { LineConductor, LineFacts } from '../../bonding/bonding.ts';
import type { Facts } from '../../facts/facts.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { crossingsOf } from './crossing-lines.ts';
import { isSending, outdoorLeads } from './outdoor-leads.ts';

type Asked = Pick<Facts, 'bonding' | 'site' | 'sections'>;

export const dischargeUnitPresent = rule({
  id: 'discharge-unit-present',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2008', clause: '810.57; 810.20(A) from memory', provenance: 'read' },
  needs: ['sections', 'bonding', 'site'],
  check(facts) {
    const leads = new Map(outdoorLeads(facts.site).map((l) => [l.id, isSending(l, facts.site)]));
    const lines = facts.bonding.lines.filter((l) => leads.has(l.id) && crossingsOf(l, 'core').length > 0);
    const verdicts = lines.flatMap((l) => ofLine(l, leads.get(l.id)!, facts));
    return verdicts.length > 0 ? verdicts : nothingThere(facts, 'lines');
  },
});

/** A shield that is grounded releases the line; else a unit on each wire, or for a sender whatever drains static. */
function ofLine(line: LineFacts, sends: boolean, facts: Asked): readonly Verdict[] {
  const at = [line.id];
  const shield = line.conductors.filter((c) => c.which === 'shield');
  if (shield.some((c) => isGrounded(c, facts.bonding.earthBy.bonds)))
    return [{ is: 'met', at, because: { key: 'shield' } }];
  const cores = line.conductors.filter((c) => c.which === 'core');
  if (cores.every((c) => c.unprotected === 0)) return [{ is: 'met', at, because: { key: 'unit' } }];
  const { bonds, perhaps } = facts.bonding.earthBy;
  if (cores.every((c) => drains(c, sends, facts, bonds))) return [{ is: 'met', at, because: { key: 'drained' } }];
  // where it goes in, and whether its shield is bonded there, is asked of every shielded line already
  if (shield.length > 0 && crossingsOf(line, 'shield').every((c) => !c.certain)) return [];
  if (cores.some((c) => c.unprotected === null))
    return [{ is: 'cannot tell', at, because: { key: 'count unknown' }, settle: { key: 'count wires' } }];
  if (shield.some((c) => isGrounded(c, perhaps)) || cores.every((c) => drains(c, sends, facts, perhaps)))
    return [{ is: 'cannot tell', at, because: { key: 'perhaps grounded' }, settle: { key: 'trace' } }];
  const under = shield.length > 0 ? { under: `shield-bonded-at-entry:${line.id}` } : {};
  return [{ is: 'not met', at, because: { key: 'nothing' }, ...under }];
}

function isGrounded({ bondedAt }: LineConductor, earthed: ReadonlySet<string>): boolean {
  return bondedAt.some((point) => earthed.has(point.split('@')[0]!.split('.')[0]!));
}

/** A bleed drains the static of a sender; an antenna drains it only where it is itself grounded. */
function drains({ drainedBy }: LineConductor, sends: boolean, { site }: Asked, earthed: ReadonlySet<string>): boolean {
  const antennas = new Set(site.antennas.map((a) => a.id));
  return drainedBy.some((id) => (antennas.has(id) ? earthed.has(id) : sends));
}
