import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { sizeVerdict } from './least-sizes.ts';

/** 2 square feet; 1/4 in of iron or steel, 0.06 in (1.5 mm) of others; 30 in (0.75 m) deep. */
const areaM2 = 0.1858;
const steelM = 0.00635;
const otherM = 0.001524;
const depthM = 0.762;
const size = [
  { figure: 'area', limit: areaM2 },
  { figure: 'depth', limit: depthM, printed: 0.75 },
] as const;
const steels = ['steel', 'galvanised steel', 'iron', 'stainless steel', 'copper-clad steel'];
const others = [
  'copper',
  'tinned copper',
  'hard-drawn copper',
  'bronze',
  'brass',
  'high brass',
  'lead',
  'nickel',
  'titanium',
];
const rows = [
  { metals: steels, least: [...size, { figure: 'thickness', limit: steelM }] },
  { metals: others, least: [...size, { figure: 'thickness', limit: otherM, printed: 1.5e-3 }] },
] as const;

export const plateUs = rule({
  id: 'plate-us',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2017', clause: '250.52(A)(7), 250.53(H)', provenance: 'memory' },
  clauses: [
    { from: 0, clause: '250.52(A)(7), 250.53(H)' },
    { from: 2020, clause: '250.52(A)(7), 250.53(A)(5)' },
  ],
  limits: [
    { key: 'plateAreaM2', value: areaM2, sense: 'least' },
    { key: 'depthM', value: depthM, sense: 'least' },
    { key: 'thicknessM', value: steelM, sense: 'least', of: 'iron or steel' },
    { key: 'thicknessM', value: otherM, sense: 'least', of: 'other metals' },
  ],
  needs: ['sections', 'electrodes'],
  check({ sections, electrodes }) {
    const plates = electrodes.filter((e) => e.part.kind === 'plate');
    return plates.length === 0
      ? nothingThere({ sections }, 'electrodes')
      : plates.map((e) => sizeVerdict(e.part, rows));
  },
});
