import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { forLightning } from './for-lightning.ts';
import { lightningRods } from './iec-lightning-rows.ts';
import { sizeVerdict } from './least-sizes.ts';

export const iecRodDimensions = rule({
  id: 'iec-rod-dimensions',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3; IEC 62561-2', edition: '2010', clause: 'Table 7', provenance: 'memory' },
  limits: [
    { key: 'diameterM', value: 0.015, sense: 'least', of: 'copper, stainless steel' },
    { key: 'diameterM', value: 0.014, sense: 'least', of: 'copper-clad, galvanised steel' },
    { key: 'coatingM', value: 250e-6, sense: 'least', of: 'copper on steel' },
  ],
  needs: ['header', 'sections', 'electrodes', 'conductors', 'site'],
  check(facts) {
    const rods = forLightning(facts).filter((e) => e.part.kind === 'rod' || e.part.kind === 'rods');
    return rods.length === 0 ? nothingThere(facts, 'electrodes') : rods.map((e) => sizeVerdict(e.part, lightningRods));
  },
});
