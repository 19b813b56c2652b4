import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { forLightning } from './for-lightning.ts';
import { lightningTapes, lightningWires } from './iec-lightning-rows.ts';
import { sizeVerdict } from './least-sizes.ts';

export const iecBuriedConductorDimensions = rule({
  id: 'iec-buried-conductor-dimensions',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: 'Table 7', provenance: 'memory' },
  limits: [
    { key: 'areaM2', value: 50e-6, sense: 'least', of: 'copper' },
    { key: 'areaM2', value: 78e-6, sense: 'least', of: 'round galvanised or stainless steel' },
    { key: 'areaM2', value: 90e-6, sense: 'least', of: 'galvanised tape' },
    { key: 'areaM2', value: 100e-6, sense: 'least', of: 'stainless tape' },
  ],
  needs: ['header', 'sections', 'electrodes', 'conductors', 'site'],
  check(facts) {
    const wires = forLightning(facts).filter((e) => e.part.kind === 'buried wire' || e.part.kind === 'radial');
    if (wires.length === 0) return nothingThere(facts, 'electrodes');
    return wires.map(({ part }) => sizeVerdict(part, part.wire?.form === 'strap' ? lightningTapes : lightningWires));
  },
});
