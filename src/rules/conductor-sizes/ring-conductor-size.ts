import { rule } from '../rule.ts';
import { serviceElectrodeWires } from './service-electrode-size.ts';
import { tableEnds } from './table-250-66.ts';

export const ringConductorSize = rule({
  id: 'ring-conductor-size',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.66(C)', provenance: 'memory' },
  needs: ['sections', 'conductors', 'site'],
  check: (facts) =>
    serviceElectrodeWires(facts, 'ring', (electrodes) => {
      const rings = electrodes.filter((e) => e.closed === 'yes').map((e) => e.wire?.areaM2?.high ?? Infinity);
      // thicker than the thickest of the table is never asked
      return { copper: Math.min(Math.max(...rings), tableEnds.most.copper), aluminium: null };
    }),
});
