import type { BoxFacts, Facts } from '../../facts/facts.ts';
import { addRod } from '../changes/add-rod.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { electrodesAtBuilding } from './electrodes-at-building.ts';
import { feedersOf } from './feeders-of.ts';
import { homeOfService } from './home-of-service.ts';

type Asked = Pick<Facts, 'header' | 'isAmerican' | 'sections' | 'bonding' | 'boxes' | 'site'>;

export const separateBuildingElectrode = rule({
  id: 'separate-building-electrode',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.32', provenance: 'second-hand' },
  needs: ['header', 'isAmerican', 'sections', 'bonding', 'boxes', 'site'],
  check(facts) {
    const home = homeOfService(facts);
    const fed = facts.boxes.filter((b) => b.part.kind === 'sub-panel');
    const elsewhere = fed.filter((b) => b.where === null || b.where !== home);
    if (elsewhere.length === 0) return nothingThere(facts, 'equipment');
    return elsewhere.map((b): Verdict => {
      const electrode = electrodeOf(b, home, facts);
      return electrode.is === 'met' ? (ofFeeders(b.id, facts) ?? electrode) : electrode;
    });
  },
});

/** Of what the building is asked: no more than is missing. */
function whichPlace(
  { where }: BoxFacts,
  home: string | null,
): 'say where both' | 'say where' | 'say where the service is' {
  if (where !== null) return 'say where the service is';
  return home === null ? 'say where both' : 'say where';
}

function electrodeOf(b: BoxFacts, home: string | null, facts: Asked): Verdict {
  const { bonding } = facts;
  const at = [b.id];
  const byFeeder = bonding.groups.find((g) => g.parts.includes(b.id))?.byFeeder ?? [];
  const way = bonding.ways.find((w) => w.part === b.id)?.toElectrode ?? null;
  const found = electrodesAtBuilding(b, facts, 'certain');
  if (found.some((e) => !e.shared)) return { is: 'met', at, because: { key: 'own electrode' } };
  if (b.where === null || home === null) {
    return { is: 'cannot tell', at, because: { key: 'place unknown' }, settle: { key: whichPlace(b, home) } };
  }
  const [shared] = found;
  if (shared !== undefined) {
    const values = { electrode: shared.electrode.id };
    return { is: 'cannot tell', at, because: { key: 'shared', values }, settle: { key: 'say where it lies', values } };
  }
  const mayOwn = electrodesAtBuilding(b, facts, 'perhaps').length > 0;
  const isOpen = bonding.earthBy.perhaps.has(b.id) && way === null && byFeeder.length === 0;
  if (mayOwn || isOpen || !isWhole(facts, 'electrodes') || !isWhole(facts, 'conductors')) {
    return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'look' } };
  }
  const change = addRod(facts, b.id);
  return { is: 'not met', at, because: { key: 'no electrode' }, change };
}

/** The second half of the clause: a protective conductor with each feeder. null: nothing to say of them. */
function ofFeeders(id: string, facts: Asked): Verdict | null {
  const has = feedersOf(id, facts).map((l) => l.protectiveConductor);
  if (has.includes('no')) return { is: 'not met', at: [id], because: { key: 'no conductor with the feeder' } };
  if (has.includes('unknown'))
    return { is: 'cannot tell', at: [id], because: { key: 'feeder unknown' }, settle: { key: 'open it' } };
  return null;
}
