import { rule } from '../rule.ts';
import { serviceElectrodeWires } from './service-electrode-size.ts';

/** 4 AWG copper. */
const cap = { copper: 21.2e-6, aluminium: null };

export const concreteOnlyConductorSize = rule({
  id: 'concrete-only-conductor-size',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.66(B)', provenance: 'second-hand' },
  limits: [{ key: 'areaM2', value: cap.copper, sense: 'least', of: 'copper' }],
  needs: ['sections', 'conductors', 'site'],
  check: (facts) => serviceElectrodeWires(facts, 'concrete', () => cap),
});
