import type { Electrode } from '../../site/site.ts';
import { rule, type Verdict } from '../rule.ts';
import { classOf, serviceElectrodeWires } from './service-electrode-size.ts';
import { tableEnds } from './table-250-66.ts';

export const serviceConductorSize = rule({
  id: 'service-conductor-size',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.66', provenance: 'memory' },
  needs: ['sections', 'conductors', 'site'],
  check(facts) {
    const [strict, mild] = [() => tableEnds.most, asRing].map((cap) => serviceElectrodeWires(facts, 'other', cap));
    return strict!.map((v, i): Verdict => {
      if (v.is !== 'not met' || mild![i]!.is !== 'met') return v;
      return { is: 'cannot tell', at: v.at, because: { key: 'perhaps a ring' }, settle: { key: 'follow ring' } };
    });
  },
});

/** What would be asked if the wires in the trench, of which nobody said it, closed to rings. */
function asRing(electrodes: readonly Electrode[]) {
  const [rings, others] = [true, false].map((isRing) =>
    electrodes.filter((e) => (e.kind === 'buried wire' && e.closed === 'unknown') === isRing),
  );
  if (others!.some((e) => classOf(e) === 'other')) return tableEnds.most;
  const areas = rings!.map((e) => e.wire?.areaM2?.low ?? tableEnds.least.copper);
  return { copper: Math.min(Math.max(...areas), tableEnds.most.copper), aluminium: null };
}
