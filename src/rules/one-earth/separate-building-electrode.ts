import { isWhole, nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const separateBuildingElectrode = rule({
  id: 'separate-building-electrode',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us', 'ca'],
  source: { document: 'NFPA 70', edition: null, clause: '250.32', provenance: 'second-hand' },
  needs: ['header', 'sections', 'bonding', 'boxes'],
  check(facts) {
    const { bonding, boxes } = facts;
    const service = boxes.find((b) => b.id === bonding.service.part);
    const panels = boxes.filter((b) => b.part.kind === 'sub-panel');
    const elsewhere = panels.filter((b) => b.where === null || b.where !== (service?.where ?? null));
    if (elsewhere.length === 0) return nothingThere(facts, 'equipment');
    return elsewhere.map((b): Verdict => {
      const at = [b.id];
      const byFeeder = bonding.groups.find((g) => g.parts.includes(b.id))?.byFeeder ?? [];
      const way = bonding.ways.find((w) => w.part === b.id)?.toElectrode ?? null;
      if (way !== null && !way.byFeeder) return { is: 'met', at, because: { key: 'own electrode' } };
      if (b.where === null || service === undefined || service.where === null) {
        return { is: 'cannot tell', at, because: { key: 'place unknown' }, settle: { key: 'say where' } };
      }
      if (bonding.earthBy.perhaps.has(b.id) && way === null && byFeeder.length === 0) {
        return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'look' } };
      }
      if (!isWhole(facts, 'electrodes') || !isWhole(facts, 'conductors')) {
        return { is: 'cannot tell', at, because: { key: 'perhaps' }, settle: { key: 'look' } };
      }
      return { is: 'not met', at, because: { key: 'no electrode' } };
    });
  },
});
