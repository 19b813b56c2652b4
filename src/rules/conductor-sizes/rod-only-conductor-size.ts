import { rule } from '../rule.ts';
import { serviceElectrodeWires } from './service-electrode-size.ts';

/** 6 AWG copper, 4 AWG aluminium. */
const cap = { copper: 13.3e-6, aluminium: 21.2e-6 };

export const rodOnlyConductorSize = rule({
  id: 'rod-only-conductor-size',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.66(A)', provenance: 'second-hand' },
  limits: [
    { key: 'areaM2', value: cap.copper, sense: 'least', of: 'copper' },
    { key: 'areaM2', value: cap.aluminium, sense: 'least', of: 'aluminium' },
  ],
  needs: ['sections', 'conductors', 'site'],
  check: (facts) => serviceElectrodeWires(facts, 'rod', () => cap),
});
