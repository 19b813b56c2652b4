import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { forLightning } from './for-lightning.ts';
import { sizeVerdict } from './least-sizes.ts';

const solidM = 0.5;
const latticeM = 0.6;
const metals = ['copper', 'tinned copper', 'hard-drawn copper', 'steel', 'galvanised steel', 'stainless steel'];
const square = (sideM: number) =>
  [
    {
      metals,
      least: [
        { figure: 'width', limit: sideM },
        { figure: 'height', limit: sideM },
      ],
    },
  ] as const;

export const iecPlateDimensions = rule({
  id: 'iec-plate-dimensions',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 62305-3', edition: '2010', clause: 'Table 7', provenance: 'memory' },
  limits: [
    { key: 'widthM', value: solidM, sense: 'least', of: 'a solid plate' },
    { key: 'widthM', value: latticeM, sense: 'least', of: 'a lattice' },
  ],
  needs: ['header', 'sections', 'electrodes', 'conductors', 'site'],
  check(facts) {
    const plates = forLightning(facts).filter((e) => e.part.kind === 'plate');
    if (plates.length === 0) return nothingThere(facts, 'electrodes');
    return plates.map(({ part }) => sizeVerdict(part, square(part.lattice === 'yes' ? latticeM : solidM)));
  },
});
