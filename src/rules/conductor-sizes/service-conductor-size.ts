import { rule } from '../rule.ts';
import { serviceElectrodeWires } from './service-electrode-size.ts';
import { tableEnds } from './table-250-66.ts';

export const serviceConductorSize = rule({
  id: 'service-conductor-size',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.66', provenance: 'memory' },
  needs: ['sections', 'conductors', 'site'],
  check: (facts) => serviceElectrodeWires(facts, 'other', () => tableEnds.most),
});
