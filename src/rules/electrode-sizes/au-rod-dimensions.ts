import type { Electrode } from '../../site/site.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { forLightning } from './for-lightning.ts';
import { sizeVerdict } from './least-sizes.ts';

/** Rod 2.4 m by 16 mm; ring of 25 mm² copper at 0.6 m. */
const lengthM = 2.4;
const diameterM = 0.016;
const areaM2 = 25e-6;
const depthM = 0.6;
const rods = [
  {
    metals: 'any',
    least: [
      { figure: 'length', limit: lengthM },
      { figure: 'diameter', limit: diameterM },
    ],
  },
] as const;
const rings = [
  {
    metals: 'any',
    least: [
      { figure: 'wire', limit: areaM2 },
      { figure: 'depth', limit: depthM },
    ],
  },
] as const;

export const auRodDimensions = rule({
  id: 'au-rod-dimensions',
  family: 'practice',
  severity: 'advice',
  codeSets: ['au'],
  source: { document: 'AS/NZS 1768', edition: '2021', clause: 'as a trade page sums it up', provenance: 'second-hand' },
  limits: [
    { key: 'runLengthM', value: lengthM, sense: 'least', of: 'rod' },
    { key: 'diameterM', value: diameterM, sense: 'least', of: 'rod' },
    { key: 'areaM2', value: areaM2, sense: 'least', of: 'ring' },
    { key: 'depthM', value: depthM, sense: 'least', of: 'ring' },
  ],
  needs: ['header', 'sections', 'electrodes', 'conductors', 'site'],
  check(facts) {
    const asked = forLightning(facts).filter((e) => isRod(e.part) || isRing(e.part));
    if (asked.length === 0) return nothingThere(facts, 'electrodes');
    return asked.map(({ part }) => sizeVerdict(part, isRing(part) ? rings : rods));
  },
});

const isRod = (e: Electrode) => e.kind === 'rod' || e.kind === 'rods';
const isRing = (e: Electrode) => e.kind === 'buried wire' && e.closed === 'yes';
