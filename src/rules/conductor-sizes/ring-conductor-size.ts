import type { Electrode } from '../../site/site.ts';
import { rule, type Verdict } from '../rule.ts';
import { serviceElectrodeWires } from './service-electrode-size.ts';
import { tableEnds } from './table-250-66.ts';

export const ringConductorSize = rule({
  id: 'ring-conductor-size',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.66(C)', provenance: 'memory' },
  needs: ['sections', 'conductors', 'site'],
  check(facts) {
    const [strict, mild] = [Infinity, tableEnds.least.copper].map((unknownM2) =>
      serviceElectrodeWires(facts, 'ring', (electrodes) => capOf(electrodes, unknownM2)),
    );
    return strict!.map((v, i): Verdict => {
      if (v.is !== 'not met' || mild![i]!.is !== 'met') return v;
      return { is: 'cannot tell', at: v.at, because: { key: 'ring unknown' }, settle: { key: 'measure ring' } };
    });
  },
});

/** As thick as the ring, whose section nobody may know; thicker than the thickest of the table is never asked. */
function capOf(electrodes: readonly Electrode[], unknownM2: number) {
  const rings = electrodes.filter((e) => e.closed === 'yes').map((e) => e.wire?.areaM2?.high ?? unknownM2);
  return { copper: Math.min(Math.max(...rings), tableEnds.most.copper), aluminium: null };
}
